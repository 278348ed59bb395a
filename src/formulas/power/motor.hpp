// Speed, current and power of a three-phase motor and its drive.
#pragma once

#include "formulas/power/motor_efficiency.hpp"

#include <algorithm>
#include <iterator>
#include <numbers>

namespace cutwater::formulas {

namespace motor {

constexpr auto frequency()
{
    return input("frequency", "f", units::hertz, between(1, 400), "frequency of the supply or of the drive's output");
}
constexpr auto poles() { return input("poles", "2p", units::count, between(2, 48), "number of poles, an even number"); }
constexpr auto shaft_power() { return input("shaft_power", "P", units::kW, from(0), "power at the motor's shaft"); }
constexpr auto efficiency()
{
    return input("motor_efficiency", "eta_M", units::fraction, above_up_to(0, 1),
                 "efficiency of the motor at that load");
}

}  // namespace motor

namespace motor {

/// Losses over the rated output: a constant part, and a part that goes with the torque squared.
inline double losses(double rated_efficiency, double constant_share, double torque)
{
    return (1 / rated_efficiency - 1) * (constant_share + (1 - constant_share) * torque * torque);
}

constexpr auto constant_loss_share()
{
    return input("constant_loss_share", "c", units::fraction, between(0, 1),
                 "share of the motor's full-load losses that does not change with load; 0.36 puts its best efficiency "
                 "at 75 % load",
                 0.36);
}

inline constexpr const char* part_load_source =
    "motor losses a constant part and a part with the square of the load: IEC TS 60034-31, efficiency at part load "
    "(from memory of it); best efficiency near "
    "75 % load: US Department of Energy, Determining Electric Motor Load and Efficiency (from memory of it), common "
    "practice";

}  // namespace motor

inline Fraction motor_efficiency_at_load(Fraction rated_efficiency, Fraction load, Fraction constant_share)
{
    return {load.value / (load.value + motor::losses(rated_efficiency.value, constant_share.value, load.value))};
}

inline constexpr Record<&motor_efficiency_at_load> motor_efficiency_at_load_record{
    .name = "motor_efficiency_at_load",
    .meaning = "Efficiency of a motor at part load and full speed, from that at its rated output",
    .also = "part load efficiency",
    .inputs = {input("rated_efficiency", "eta_N", units::fraction, above_up_to(0, 1),
                     "efficiency at the rated output, as from motor_efficiency or the plate"),
               input("load", "x", units::fraction, above_up_to(0, 1.25), "shaft power over rated output"),
               motor::constant_loss_share()},
    .results = {output("efficiency", "eta_M", units::fraction, "efficiency at that load")},
    .equation = "eta_M = x/(x + (1/eta_N - 1)(c + (1 - c) x^2))",
    .source = motor::part_load_source,
    .cautions = {"The share of constant losses differs from motor to motor: take the maker's efficiencies at 50, 75 "
                 "and 100 % where they are known.",
                 "On a frequency converter at reduced speed the losses differ: see duty_profile_energy."},
    .example = {"0.92, 0.5", "0.91707", "hand calculation: 0.5/(0.5 + 0.0869565 x 0.52)"}};

inline RotationalSpeed synchronous_speed(Frequency frequency, Count poles)
{
    return RotationalSpeed::revolutions(2.0 * frequency / poles.value);
}

inline constexpr auto synchronous_speed_record = record<&synchronous_speed>(
    {.name = "synchronous_speed",
     .meaning = "Speed of the turning field of a motor",
     .also = "poles|RPM of the motor|frequency",
     .inputs = {motor::frequency(), motor::poles()},
     .results = {output("speed", "n_s", units::rpm, "synchronous speed")},
     .equation = "n_s = 2 f/(2p), 120 f/(2p) in 1/min",
     .source = "IEC 60034-1, synchronous speed (from memory of it)",
     .sound_anywhere = true,
     .example = {"50, 4", "1500", "hand calculation"},
     .turns = true},
    relation<"poles">([](Count poles) { return motor::even(poles); }, motor::even_poles));

inline RotationalSpeed motor_speed(Frequency frequency, Count poles, Fraction slip)
{
    return synchronous_speed(frequency, poles) * Ratio(1 - slip.value);
}

inline constexpr auto motor_speed_record = record<&motor_speed>(
    {.name = "motor_speed",
     .meaning = "Speed of an induction motor with its slip",
     .also = "slip|full load RPM",
     .inputs = {motor::frequency(), motor::poles(),
                input("slip", "s", units::fraction, between(0, 0.2),
                      "slip at the load, from the motor's plate; 0 for a synchronous motor")},
     .results = {output("speed", "n", units::rpm, "speed of rotation")},
     .equation = "n = (1 - s) 2 f/(2p)",
     .source = "IEC 60034-1, slip (from memory of it)",
     .cautions =
         {"Slip grows about in proportion to the load, from nil at no load to the plate's value at rated output."},
     .sound_anywhere = true,
     .example = {"50, 4, 0.02", "1470", "hand calculation: 1500 x 0.98"}},
    relation<"poles">([](Count poles) { return motor::even(poles); }, motor::even_poles));

inline ElectricCurrent motor_current(Power shaft_power, Voltage voltage, Fraction motor_efficiency,
                                     Fraction power_factor)
{
    return shaft_power / (std::numbers::sqrt3 * voltage * motor_efficiency.value * power_factor.value);
}

inline constexpr Record<&motor_current> motor_current_record{
    .name = "motor_current",
    .meaning = "Line current of a three-phase motor",
    .also = "amps|ampere|full load amps|FLA",
    .inputs = {motor::shaft_power(), input("voltage", "U", units::volt, above_up_to(0, 20000), "voltage between lines"),
               motor::efficiency(),
               input("power_factor", "cos phi", units::fraction, above_up_to(0, 1), "power factor at that load")},
    .results = {output("current", "I", units::ampere, "line current")},
    .equation = "I = P/(sqrt(3) U eta_M cos phi)",
    .source = "three-phase power; common practice",
    .cautions = {"Running current at that load; the starting current is several times as large. Cables and protection "
                 "follow local codes."},
    .example = {"11, 400, 0.914, 0.85", "20.4365", "hand calculation: 11000/(1.732051 x 400 x 0.914 x 0.85)"}};

inline Power electrical_power(Power shaft_power, Fraction motor_efficiency, Fraction drive_efficiency)
{
    return shaft_power / (motor_efficiency.value * drive_efficiency.value);
}

inline constexpr Record<&electrical_power> electrical_power_record{
    .name = "electrical_power",
    .meaning = "Power drawn from the mains for a power at the shaft",
    .also = "kW from the mains|input power",
    .inputs = {motor::shaft_power(), motor::efficiency(),
               input("drive_efficiency", "eta_D", units::fraction, above_up_to(0, 1),
                     "efficiency of the frequency converter; 1 without one", 1)},
    .results = {output("electrical_power", "P_el", units::kW, "power drawn from the mains")},
    .equation = "P_el = P/(eta_M eta_D)",
    .source = "definition of efficiency; IEC 60034-1 (from memory of it)",
    .sound_anywhere = true,
    .example = {"8.2, 0.914, 0.97", "9.24902", "hand calculation: 8.2/0.88658"}};

namespace drive {

inline constexpr double loads[] = {0.016, 0.125, 0.25, 0.42, 0.5, 0.75, 1};
inline constexpr double ratings_hp[] = {3, 5, 10, 20, 30, 50, 60, 75, 100, 200, 400};
inline constexpr double percent[std::size(ratings_hp)][std::size(loads)] = {
    {31, 77, 86, 90, 91, 93, 94}, {35, 80, 88, 91, 92, 94, 95}, {41, 83, 90, 93, 94, 95, 96},
    {47, 86, 93, 94, 95, 96, 97}, {50, 88, 93, 95, 95, 96, 97}, {46, 86, 92, 95, 95, 96, 97},
    {51, 87, 92, 95, 95, 96, 97}, {47, 86, 93, 95, 96, 97, 97}, {55, 89, 94, 95, 96, 97, 97},
    {61, 91, 95, 96, 96, 97, 97}, {61, 91, 95, 96, 96, 97, 97}};

/// The piece of a rising list that holds x, and how far along it x lies; x beyond an end counts as the end.
template <std::size_t N>
std::pair<std::size_t, double> place(const double (&list)[N], double x)
{
    std::size_t i = 0;
    while (i + 2 < N && x >= list[i + 1]) ++i;
    return {i, std::clamp((x - list[i]) / (list[i + 1] - list[i]), 0.0, 1.0)};
}

}  // namespace drive

inline Fraction drive_efficiency(Power rated_power, Fraction load)
{
    const auto [i, u] = drive::place(drive::ratings_hp, units::hp.in(rated_power));
    const auto [k, v] = drive::place(drive::loads, load.value);
    const auto along = [k = k, v = v](const double(&row)[std::size(drive::loads)]) {
        return row[k] + v * (row[k + 1] - row[k]);
    };
    const double lower = along(drive::percent[i]);
    const double upper = along(drive::percent[i + 1]);
    return {(lower + u * (upper - lower)) / 100};
}

inline constexpr Record<&drive_efficiency> drive_efficiency_record{
    .name = "drive_efficiency",
    .meaning = "Efficiency of a frequency converter at part load: a representative value",
    .also = "VFD losses|inverter|frequency converter|variable frequency drive",
    .inputs = {input("rated_power", "P_D", units::kW, between(2.2, 300),
                     "rated output of the converter; its 3 to 400 hp are taken as 2.2 to 300 kW"),
               input("load", "P/P_D", units::fraction, between(0.016, 1), "output over rated output")},
    .results = {output("efficiency", "eta_D", units::fraction, "efficiency of the converter")},
    .equation = "table of efficiency by rating and load, straight lines between its points",
    .source = "US Department of Energy, Motor Systems Tip Sheet 11, Adjustable Speed Drive Part-Load Efficiency, table "
              "1, pulse-width modulated drives "
              "(from memory of it; python3-fluids 1.0.22 holds the same values)",
    .cautions = {"Representative of drives of about 2010, no standard's limit: take the maker's losses (IEC 61800-9-2) "
                 "where they are known."},
    .example = {R"("10 hp", 1)", "0.96", "the table's own value"}};

}  // namespace cutwater::formulas
