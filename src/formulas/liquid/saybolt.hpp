// Saybolt Universal viscosity to and from kinematic viscosity.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"

namespace cutwater::formulas {

namespace saybolt {

struct Seconds {
    double value;
    double slope;
};

/// Seconds at 100 degF from mm2/s. Dimensional: the efflux time of one instrument.
inline Seconds at_100F(double nu)
{
    const double over = 1 + 0.03264 * nu;
    const double under = (3930.2 + nu * (262.7 + nu * (23.97 + nu * 1.646))) * 1e-5;
    const double under_slope = (262.7 + nu * (2 * 23.97 + nu * 3 * 1.646)) * 1e-5;
    return {4.6324 * nu + over / under, 4.6324 + (0.03264 * under - over * under_slope) / (under * under)};
}

/// The instrument itself grows with temperature.
inline double growth(Temperature t) { return 1 + 0.000061 * (units::degF.in(t)-100); }

// 0 to 350 degF; the number in degC is rounded outwards, so that 350 degF as text is within.
inline constexpr Input<Temperature> temperature_input = input(
    "temperature", "t", units::degC, between(-17.78, 176.67),
    "temperature at which both viscosities hold, 0 to 350 degF");

inline constexpr const char* universal_only =
    "Saybolt Universal seconds; Saybolt Furol seconds are another scale, about a tenth in number.";
inline constexpr const char* relation_source = "ASTM D2161-93 (1999), equations for Saybolt Universal viscosity (from "
                                               "memory of them, excerpts of clauses 1 and 5 read; "
                                               "constants found alike in several public programs)";

}  // namespace saybolt

inline SayboltSeconds saybolt_from_viscosity(KinematicViscosity kinematic_viscosity, Temperature temperature)
{
    return {saybolt::at_100F(units::mm2s.in(kinematic_viscosity)).value * saybolt::growth(temperature)};
}

inline constexpr Record<&saybolt_from_viscosity> saybolt_from_viscosity_record{
    .name = "saybolt_from_viscosity",
    .meaning = "Saybolt Universal viscosity from kinematic viscosity at the same temperature",
    .also = "SSU|SUS|Saybolt seconds|SSU from cSt",
    .inputs = {input("kinematic_viscosity", "nu", units::mm2s, between(1.81, 1e5),
                     "kinematic viscosity at the temperature"),
               saybolt::temperature_input},
    .results = {output("saybolt", "U", units::saybolt, "Saybolt Universal viscosity at the temperature")},
    .equation = "U = (1 + 0.000061 (t - 100)) (4.6324 nu + (1 + 0.03264 nu) 1e5/(3930.2 + 262.7 nu + 23.97 nu^2 + "
                "1.646 nu^3)), "
                "t in degF, nu in mm2/s",
    .source = saybolt::relation_source,
    .cautions = {saybolt::universal_only},
    .example = {"500, \"100 degF\"", "2316",
                "ASTM D2161, 5.2 (excerpt read): 4.632 times the kinematic viscosity above 75 mm2/s"},
    .turns = true};

inline KinematicViscosity viscosity_from_saybolt(SayboltSeconds seconds, Temperature temperature, Steps steps)
{
    const double wanted = seconds.value / saybolt::growth(temperature);
    steps("U_100", "U/(1 + 0.000061 (t - 100)), t in degF", SayboltSeconds{wanted}, units::saybolt);
    // Newton's steps from the line that the seconds approach for thick liquids. After four of them only rounding error
    // is left, also at the thin end, where the first leaves 4 %; their count is fixed so that rows of an array take the
    // same path.
    double nu = wanted / 4.6324;
    for (int step = 0; step < 4; ++step) {
        const saybolt::Seconds at = saybolt::at_100F(nu);
        nu -= (at.value - wanted) / at.slope;
    }
    return units::mm2s(nu);
}

inline constexpr Record<&viscosity_from_saybolt> viscosity_from_saybolt_record{
    .name = "viscosity_from_saybolt",
    .meaning = "Kinematic viscosity from Saybolt Universal viscosity at the same temperature",
    .also = "SSU|SUS|Saybolt seconds|cSt from SSU",
    .inputs = {input("saybolt", "U", units::saybolt, between(32, 460000),
                     "Saybolt Universal viscosity at the temperature"),
               saybolt::temperature_input},
    .results = {output("kinematic_viscosity", "nu", units::mm2s, "kinematic viscosity at the temperature")},
    .equation =
        "solves U = (1 + 0.000061 (t - 100)) (4.6324 nu + (1 + 0.03264 nu) 1e5/(3930.2 + 262.7 nu + 23.97 nu^2 + "
        "1.646 nu^3)) for nu; t in degF, nu in mm2/s",
    .source = saybolt::relation_source,
    .cautions = {saybolt::universal_only},
    .example = {"2316, \"100 degF\"", "500",
                "ASTM D2161, 5.2 (excerpt read): 4.632 times the kinematic viscosity above 75 mm2/s"},
    .turns = true};

}  // namespace cutwater::formulas
