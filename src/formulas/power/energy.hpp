// Wire to water, and what a year of running takes.
#pragma once

#include "catalogue/as_given.hpp"
#include "formulas/pairs.hpp"
#include "formulas/power/hydraulic.hpp"

#include <tuple>

namespace cutwater::formulas {

namespace energy {

inline constexpr double hours_in_a_year = 8784;  // a leap year's
inline constexpr const char* year = "the hours must add up to at most a year, 8784 h";

inline double total_hours(const Series<Time>& hours)
{
    double total = 0;
    for (std::size_t i = 0; i < hours.size(); ++i) total += units::hour.in(hours[i]);
    return total;
}
inline bool within_a_year(const Series<Time>& hours) { return total_hours(hours) <= hours_in_a_year * (1 + 1e-12); }

constexpr auto hours()
{
    return series("hours", "t_i", units::hour, from(0), "hours a year at each point of the profile", 1);
}
constexpr auto overall()
{
    return input("overall_efficiency", "eta", units::fraction, above_up_to(0, 1),
                 "wire to water: pump, motor and drive together");
}

}  // namespace energy

inline Fraction overall_efficiency(Fraction pump_efficiency, Fraction motor_efficiency, Fraction drive_efficiency)
{
    return {pump_efficiency.value * motor_efficiency.value * drive_efficiency.value};
}

inline constexpr Record<&overall_efficiency> overall_efficiency_record{
    .name = "overall_efficiency",
    .meaning = "Efficiency from wire to water, of pump, motor and drive together",
    .also = "wire to water|wire-to-water",
    .inputs = {input("pump_efficiency", "eta_P", units::fraction, above_up_to(0, 1),
                     "efficiency of the pump at the duty"),
               input("motor_efficiency", "eta_M", units::fraction, above_up_to(0, 1),
                     "efficiency of the motor at that load"),
               input("drive_efficiency", "eta_D", units::fraction, above_up_to(0, 1),
                     "efficiency of the converter or gear; 1 without one", 1)},
    .results = {output("overall_efficiency", "eta", units::fraction,
                       "power given to the liquid over power from the mains")},
    .equation = "eta = eta_P eta_M eta_D",
    .source = "ISO 17769-1:2012, overall efficiency (from memory of it)",
    .sound_anywhere = true,
    .example = {"0.75, 0.914, 0.97", "0.664935", "hand calculation"}};

inline Fraction wire_to_water_efficiency(Flow flow, Head head, Density density, Power electrical_power)
{
    return {Ratio(hydraulic_power(flow, head, density) / electrical_power).value()};
}

inline constexpr auto wire_to_water_efficiency_record = record<&wire_to_water_efficiency>(
    {.name = "wire_to_water_efficiency",
     .meaning = "Efficiency from wire to water as measured: flow and head against power from the mains",
     .also = "wire to water|wire-to-water",
     .inputs = {power::flow(), power::head(), power::density(),
                input("electrical_power", "P_el", units::kW, above(0), "power drawn from the mains")},
     .results = {output("overall_efficiency", "eta", units::fraction,
                        "power given to the liquid over power from the mains")},
     .equation = "eta = rho g Q H/P_el",
     .source = "ISO 17769-1:2012, overall efficiency (from memory of it)",
     .example = {"100, 50, 998.2, 20.4", "0.666462", "hand calculation: 13.59583/20.4"}},
    relation<"electrical_power", "flow", "head", "density">(
        [](Power electrical, Flow flow, Head head, Density density) {
            return hydraulic_power(flow, head, density) <= electrical;
        },
        "the power from the mains must be at least the power given to the liquid, rho g Q H"));

inline EnergyPerVolume specific_energy(Head head, Density density, Fraction overall)
{
    return EnergyPerVolume(bu::quantity<EnergyPerVolumeUnit>(density * standard_gravity * head / overall.value));
}

inline constexpr Record<&specific_energy> specific_energy_record{
    .name = "specific_energy",
    .meaning = "Energy from the mains for each cubic metre pumped",
    .also = "kWh per cubic metre|energy per volume",
    .inputs = {power::head(), power::density(), energy::overall()},
    .results = {output("specific_energy", "e", units::kWhm3, "energy for each volume")},
    .equation = "e = rho g H/eta",
    .source = "ISO 17769-1:2012, pump power output over flow (from memory of it); common practice",
    .sound_anywhere = true,
    .example = {"50, 998.2, 0.66", "0.205997", "hand calculation: 998.2 x 9.80665 x 50/0.66/3.6e6"}};

inline AsGiven<units::kWhm3> specific_energy_from_power(AsGiven<units::kW> electrical_power, AsGiven<units::m3h> flow)
{
    return quotient<units::kWhm3>(electrical_power, flow);
}

inline constexpr Record<&specific_energy_from_power> specific_energy_from_power_record{
    .name = "specific_energy_from_power",
    .meaning = "Energy for each cubic metre pumped, from power and flow as measured",
    .also = "kWh per cubic metre|energy per volume",
    .inputs = {input("electrical_power", "P_el", units::kW, from(0), "power drawn from the mains"),
               input("flow", "Q", units::m3h, above(0), "flow delivered")},
    .results = {output("specific_energy", "e", units::kWhm3, "energy for each volume")},
    .equation = "e = P_el/Q",
    .source = "definition; common practice",
    .sound_anywhere = true,
    .example = {"20.4, 100", "0.204", "hand calculation"}};

inline std::tuple<Energy, Volume, EnergyPerVolume> annual_energy(Series<Flow> flows, Series<Head> heads,
                                                                 Series<Fraction> efficiencies, Series<Time> hours,
                                                                 Density density)
{
    Energy energy{};
    Volume volume{};
    for (std::size_t i = 0; i < flows.size(); ++i) {
        energy += hydraulic_power(flows[i], heads[i], density) / efficiencies[i].value * hours[i];
        volume += flows[i] * hours[i];
    }
    return {energy, volume, EnergyPerVolume(bu::quantity<EnergyPerVolumeUnit>(energy / volume))};
}

inline constexpr auto annual_energy_record = record<&annual_energy>(
    {.name = "annual_energy",
     .meaning = "Energy that a year's duty profile takes from the mains",
     .also = "energy use|kWh a year|consumption",
     .inputs = {series("flows", "Q_i", units::m3h, from(0), "flow at each point of the profile", 1),
                series("heads", "H_i", units::metre, from(0), "pump total head at each point", 1),
                series("overall_efficiencies", "eta_i", units::fraction, above_up_to(0, 1),
                       "wire-to-water efficiency at each point", 1),
                energy::hours(),
                input("density", "rho", units::kgm3, limits::density_kgm3, "density of the liquid", 998.2)},
     .results = {output("energy", "E", units::kWh, "energy from the mains in the year"),
                 output("volume", "V", units::m3, "volume pumped in the year"),
                 output("specific_energy", "E/V", units::kWhm3, "energy for each volume, mean of the year")},
     .equation = "E = sum(rho g Q_i H_i/eta_i t_i); V = sum(Q_i t_i)",
     .source = "Hydraulic Institute, Europump and US Department of Energy, Pump Life Cycle Costs, 2001, energy costs "
               "(from memory of it)",
     .cautions = {"At closed valve a pump takes power that this sum does not hold: add those hours with "
                  "annual_energy_from_power."},
     .example = {"[100, 60], [50, 55], [0.66, 0.6], [4000, 3000], 998.2", "127265.2, 580000, 0.219423",
                 "hand calculation: 20.59974 x 4000 + 14.95541 x 3000"}},
    pairs::equal_length<"heads", "flows">("there must be as many heads as flows"),
    pairs::equal_length<"overall_efficiencies", "flows">("there must be as many efficiencies as flows"),
    pairs::equal_length<"hours", "flows">("there must be as many hours as flows"),
    relation<"hours">([](Series<Time> t) { return energy::within_a_year(t); }, energy::year),
    relation<"flows", "hours">(
        [](Series<Flow> q, Series<Time> t) {
            bool any_volume = false;
            for (std::size_t i = 0; i < q.size(); ++i)
                any_volume = any_volume || (q[i].value() > 0 && t[i].value() > 0);
            return any_volume;
        },
        "the profile must pump something: give at least one flow above 0 with hours above 0"));

inline Energy annual_energy_from_power(Series<Power> powers, Series<Time> hours)
{
    Energy energy{};
    for (std::size_t i = 0; i < powers.size(); ++i) energy += powers[i] * hours[i];
    return energy;
}

inline constexpr auto annual_energy_from_power_record = record<&annual_energy_from_power>(
    {.name = "annual_energy_from_power",
     .meaning = "Energy of a year from the power drawn at each point of the duty profile",
     .inputs = {series("electrical_powers", "P_i", units::kW, from(0), "power drawn from the mains at each point", 1),
                energy::hours()},
     .results = {output("energy", "E", units::kWh, "energy from the mains in the year")},
     .equation = "E = sum(P_i t_i)",
     .source = "Hydraulic Institute, Europump and US Department of Energy, Pump Life Cycle Costs, 2001, energy costs "
               "(from memory of it)",
     .example = {"[20, 12.5], [4000, 2000]", "105000", "hand calculation: 80000 + 25000"}},
    pairs::equal_length<"hours", "electrical_powers">("there must be as many hours as powers"),
    relation<"hours">([](Series<Time> t) { return energy::within_a_year(t); }, energy::year));

inline Mass carbon_emission(Energy energy, MassPerEnergy factor) { return energy * factor; }

inline constexpr Record<&carbon_emission> carbon_emission_record{
    .name = "carbon_emission",
    .meaning = "Carbon dioxide that goes with an amount of energy",
    .also = "CO2|carbon footprint|greenhouse gas",
    .inputs = {input("energy", "E", units::kWh, from(0), "energy from the mains"),
               input("emission_factor", "f", units::kgkWh, between(0, 5),
                     "emissions of the supply for each unit of energy, of its year and country")},
    .results = {output("emission", "m", units::kg, "mass of carbon dioxide")},
    .equation = "m = f E",
    .source = "definition; common practice",
    .cautions = {"Emission factors change from year to year and by the way they are drawn up: state which was taken."},
    .sound_anywhere = true,
    .example = {"100000, 0.25", "25000", "hand calculation"}};

}  // namespace cutwater::formulas
