// Viscosity of an oil at a temperature, from two points on its ASTM D341 line.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "elementary/elementary.hpp"
#include "formulas/liquid/rising_root.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace cutwater::formulas {

namespace walther {

// The standard's terms C to H, which straighten the line below 2 mm2/s: sign exp(p - q nu), nu in mm2/s.
struct Term {
    double sign;
    double p;
    double q;
};
inline constexpr Term terms[] = {{+1, -1.14883, 2.65868}, {-1, -0.0038138, 12.5645}, {+1, 5.46491, 37.6289},
                                 {-1, 13.0458, 74.6851},  {+1, 37.4619, 192.643},    {-1, 80.4945, 400.468}};
inline constexpr double offset = 0.7;
inline constexpr double ln_10 = 2.302585092994045684, ln_ln_10 = 0.834032445247956181;

struct Z {
    double value;
    double slope;
};

// The standard leaves terms out range by range where they no longer matter; here where they vanish in rounding, so that
// there are no steps.
inline Z z_of(double nu)
{
    Z terms_alone{0, 0};  // added up before nu, which would round each of them
    for (const Term& t : terms) {
        if (t.q * nu - t.p > 40) break;  // this one and those after it
        const double term = t.sign * elementary::exp(t.p - t.q * nu);
        terms_alone.value += term;
        terms_alone.slope -= t.q * term;
    }
    return {nu + offset + terms_alone.value, 1 + terms_alone.slope};
}

inline constexpr double least = 0.21;  // mm2/s; Z rises with nu from here on and only from here on
inline constexpr double most = 2e7;

inline double viscosity_of(double z)
{
    // The terms never add up to less than nothing, so that nu is at most z - 0.7. The standard's own way back is a
    // start good to a per cent where the liquid is not very thin.
    const double w = std::max(z - offset, least);
    const double rough = w - elementary::exp(-0.7487 - w * (3.295 - w * (0.6119 - w * 0.3193)));
    return rising_root(
        [z](double nu) {
            const Z at = z_of(nu);
            return Z{at.value - z, at.slope};
        },
        least, w, std::clamp(rough, least, w));
}

// From here on all terms but the first vanish in rounding, and Z is undone without steps.
inline constexpr double thick = 3;             // mm2/s
inline constexpr double z_of_thick = 3.70011;  // Z there, rounded up

inline double thick_z(double nu) { return nu + offset + elementary::exp(terms[0].p - terms[0].q * nu); }

/// By Lambert's function, -W(-u) = u + u^2 + 3/2 u^3 + 8/3 u^4 + …, whose argument is below 3e-4 here.
inline double thick_viscosity_of(double z)
{
    const double w = z - offset;
    const double u = terms[0].q * elementary::exp(terms[0].p - terms[0].q * w);
    return w - u * (1 + u * (1 + u * (1.5 + u * (8.0 / 3)))) / terms[0].q;
}

struct Point {
    Temperature temperature;
    KinematicViscosity viscosity;
};
/// ln ln Z = constant - slope ln T, and Z at a temperature: the standard's line has the same slope.
struct Line {
    double constant, slope, z;

    /// A of log10 log10 Z = A - B log10 T.
    double a() const { return (constant - ln_ln_10) / ln_10; }
};

inline double z_on(double constant, double slope, Temperature temperature)
{
    return elementary::exp(elementary::exp(constant - slope * elementary::log(units::kelvin.in(temperature))));
}

template <class ZOf>
Line line(const Point& first, const Point& second, Temperature temperature, ZOf z)
{
    const auto height = [&](const Point& p) {
        return elementary::log(elementary::log(z(units::mm2s.in(p.viscosity))));
    };
    const auto across = [](Temperature t) { return elementary::log(units::kelvin.in(t)); };
    const double at_first = height(first);
    const double slope = (at_first - height(second)) / (across(second.temperature) - across(first.temperature));
    const double constant = at_first + slope * across(first.temperature);
    return {constant, slope, z_on(constant, slope, temperature)};
}

inline bool is_thick(const Point& p) { return units::mm2s.in(p.viscosity) >= thick; }

/// The lines of an oil that is asked for many temperatures: what viscosity_at_temperature gives, bit for bit.
class Oil {
public:
    Oil(const Point& first, const Point& second)
        : thick_(is_thick(first) & is_thick(second)),
          of_thick_(line(first, second, first.temperature, [](double x) { return thick_z(x); })),
          general_(line(first, second, first.temperature, [](double x) { return z_of(x).value; }))
    {
    }

    /// No number where the relation has ended.
    double viscosity_mm2s(Temperature temperature) const
    {
        if (thick_) {
            const double z = z_on(of_thick_.constant, of_thick_.slope, temperature);
            if (z >= z_of_thick) return z <= most ? thick_viscosity_of(z) : no_number;
        }
        const double z = z_on(general_.constant, general_.slope, temperature);
        return z >= z_of_least_ && z <= most ? viscosity_of(z) : no_number;
    }

private:
    static constexpr double no_number = std::numeric_limits<double>::quiet_NaN();
    bool thick_;
    Line of_thick_, general_;
    double z_of_least_ = z_of(least).value;
};

inline NoValue beyond(Temperature temperature, const char* sentence, double end)
{
    return {.status = CUTWATER_NO_ANSWER,
            .argument = "temperature",
            .sentence = sentence,
            .numbers = {number_in(temperature, units::degC), {end, units::mm2s.info->symbol}}};
}
inline constexpr const char* too_thin =
    "temperature_degC is {0}, but there the liquid would be thinner than {1}, where the relation ends";
inline constexpr const char* too_thick =
    "temperature_degC is {0}, but there the liquid would be thicker than {1}, where the relation ends";

}  // namespace walther

inline Outcome<KinematicViscosity> viscosity_at_temperature(Temperature first_temperature,
                                                            KinematicViscosity first_viscosity,
                                                            Temperature second_temperature,
                                                            KinematicViscosity second_viscosity,
                                                            Temperature temperature, Steps steps)
{
    const walther::Point first{first_temperature, first_viscosity}, second{second_temperature, second_viscosity};
    walther::Line line = walther::line(first, second, temperature, [](double x) { return walther::thick_z(x); });
    const bool thick = walther::is_thick(first) & walther::is_thick(second) & (line.z >= walther::z_of_thick);
    const double nu = walther::thick_viscosity_of(line.z);
    const bool holds = thick & (line.z <= walther::most);
    if (steps.in_rows()) return {units::mm2s(nu), holds, NoValue{}, !thick};
    if (!thick) line = walther::line(first, second, temperature, [](double x) { return walther::z_of(x).value; });
    steps("A", "log10 log10 Z_1 + B log10 T_1", Ratio(line.a()), units::number);
    steps("B", "(log10 log10 Z_1 - log10 log10 Z_2)/(log10 T_2 - log10 T_1)", Ratio(line.slope), units::number);
    steps("Z", "10^(10^(A - B log10 T))", Ratio(line.z), units::number);
    if (!(line.z >= walther::z_of(walther::least).value))
        return walther::beyond(temperature, walther::too_thin, walther::least);
    if (!(line.z <= walther::most)) return walther::beyond(temperature, walther::too_thick, walther::most);
    return units::mm2s(thick ? nu : walther::viscosity_of(line.z));
}

inline constexpr auto viscosity_at_temperature_record = record<&viscosity_at_temperature>(
    {.name = "viscosity_at_temperature",
     .meaning = "Kinematic viscosity of a petroleum liquid at a temperature, from two known points",
     .also = "ASTM D341|Walther|cold oil|hot oil|thick oil|viscosity at pumping temperature",
     .inputs = {input("first_temperature", "T_1", units::degC, between(-70, 370), "temperature of the first point"),
                input("first_viscosity", "nu_1", units::mm2s, between(walther::least, walther::most),
                      "kinematic viscosity at the first point"),
                input("second_temperature", "T_2", units::degC, between(-70, 370), "temperature of the second point"),
                input("second_viscosity", "nu_2", units::mm2s, between(walther::least, walther::most),
                      "kinematic viscosity at the second point"),
                input("temperature", "T", units::degC, between(-70, 370), "temperature of the liquid")},
     .results = {output("kinematic_viscosity", "nu", units::mm2s, "kinematic viscosity at the temperature")},
     .equation = "log10 log10 Z = A - B log10 T, Z = nu + 0.7 + C - D + E - F + G - H, nu in mm2/s, T in kelvin",
     .source = "ASTM D341-09 (reapproved 2015), general relation with the terms C to H for low viscosities (from "
               "memory of it; "
               "constants found alike in several public programs); at least 5 K between the points: common practice",
     .cautions =
         {"For petroleum liquids between cloud point and initial boiling point that flow as Newton's liquids do; not "
          "for "
          "water solutions, silicones, or oils thickened with polymers.",
          "Between the two points it is good to a few per cent; outside them it is less certain the further it goes.",
          caution::viscous_method},
     .given_once = {"first_temperature", "first_viscosity", "second_temperature", "second_viscosity"},
     .example = {"40, 32, 100, 5.4, 80", "8.5", "published worked sheet for ASTM D341"}},
    relation<"second_temperature", "first_temperature">(
        [](Temperature t2, Temperature t1) { return std::abs(units::kelvin_difference.in(t2 - t1)) >= 5 - 1e-6; },
        "the two points must lie at least 5 K apart"),
    relation<"second_viscosity", "first_temperature", "first_viscosity", "second_temperature">(
        [](KinematicViscosity nu2, Temperature t1, KinematicViscosity nu1, Temperature t2) {
            return (((t2 > t1) & (nu2 < nu1)) | ((t2 < t1) & (nu2 > nu1)));
        },
        "the warmer point must have the lower viscosity"));

}  // namespace cutwater::formulas
