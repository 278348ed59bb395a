// The liquid's side of the inlet: submergence, sump volume, priming.
#pragma once

#include "elementary/elementary.hpp"
#include "formulas/system/pipe.hpp"

namespace cutwater::formulas {

inline Length minimum_submergence(Flow flow, Length inlet_diameter, Steps steps)
{
    const Velocity velocity = pipe_velocity(flow, inlet_diameter);
    const Ratio froude = velocity / square_root(standard_gravity * inlet_diameter);
    steps("V", "Q/(pi/4 D^2)", velocity, units::ms);
    steps("F_D", "V/sqrt(g D)", froude, units::number);
    return inlet_diameter * (1.0 + 2.3 * froude.value());
}

inline constexpr Record<&minimum_submergence> minimum_submergence_record{
    .name = "minimum_submergence",
    .meaning = "Least depth of an inlet below the surface, against vortices that draw air",
    .also = "vortex|air entrainment|sump level|intake|minimum liquid level|bell|submergence|suction bell|sump",
    .inputs = {input("flow", "Q", units::m3h, from(0), "flow into the inlet"),
               input("inlet_diameter", "D", units::mm, limits::bore_mm,
                     "outside diameter of the bell, or inside diameter of a plain pipe's end")},
    .results = {output("submergence", "S", units::metre,
                       "lowest surface above the bell's lip or above the centre of a horizontal pipe's end")},
    .equation = "S = D (1 + 2.3 F_D), F_D = V/sqrt(g D), V = Q/(pi/4 D^2)",
    .source =
        "ANSI/HI 9.8, required submergence against vortices (from memory of it, after Hecker 1987); formula read in "
        "Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.E.1 and 1.E.2 (excerpt read)",
    .cautions = {"Look at the velocity V at the bell too, shown in the working: about 1.7 m/s is usual (ANSI/HI 9.8, "
                 "from memory), 1.5 m/s a limit for wet wells (US Unified Facilities Criteria 4-832-01N, read). A bell "
                 "too small wants more depth and still draws vortices.",
                 "Holds for even approach flow; a poor sump draws vortices at any depth. NPSH may ask for more."},
    .example = {"1000, 500", "1.23472", "hand calculation: 0.5 (1 + 2.3 x 1.41471/2.21434)"}};

inline Volume wet_well_volume(Flow flow, Frequency starts) { return flow / (4.0 * starts); }

inline constexpr Record<&wet_well_volume> wet_well_volume_record{
    .name = "wet_well_volume",
    .meaning = "Least sump volume between the start and stop levels of one pump",
    .also = "sump volume|starts per hour|pit size|lift station",
    .inputs = {input("flow", "Q", units::m3h, above(0), "the pump's flow"),
               input("starts", "Z", units::per_hour, above_up_to(0, 60),
                     "starts that the motor and its gear allow in an hour")},
    .results = {output("volume", "V", units::m3, "volume between the start and stop levels")},
    .equation = "V = T Q/4, T = 1/Z; the shortest cycle comes at an inflow of Q/2",
    .source = "ANSI/HI 9.8, minimum sump volume of a constant-speed pump (from memory of it); the least of T = V/q + "
              "V/(Q - q) is at q = Q/2",
    .cautions = {"For one pump alone. Pumps that take turns may share it; pumps that start one after another need a "
                 "step each."},
    .sound_anywhere = true,
    .example = {"100, 10", "2.5", "hand calculation: 360 s x 100/3600/4"}};

inline Time priming_time(Volume pipe_volume, Flow air_rate, Length lift, AbsolutePressure ambient, Density density,
                         Steps steps)
{
    const PressureDifference final_pressure = ambient.above_zero() - density * standard_gravity * lift;
    const Ratio depth = ambient.above_zero() / final_pressure;
    const Time emptied_once = pipe_volume / air_rate;
    steps("p_1", "p_amb - rho g L", AbsolutePressure::at(final_pressure), units::bara);
    steps("t_1", "(V/S) ln(p_amb/p_1), the line evacuated to the lift", emptied_once * elementary::log(depth.value()),
          units::second);
    steps("t_2", "V/S, the air displaced by liquid", emptied_once, units::second);
    return emptied_once * (1.0 + elementary::log(depth.value()));
}

inline constexpr auto priming_time_record = record<&priming_time>(
    {.name = "priming_time",
     .meaning = "Time to draw the air out of a suction line, the liquid rising after it",
     .also = "self-priming|prime|evacuate the suction line",
     .inputs = {input("pipe_volume", "V", units::m3, above(0), "air in the suction line and pump before priming"),
                input("air_handling_rate", "S", units::m3h, above(0),
                      "air drawn, measured at the line's own pressure; take the mean over the lift"),
                input("lift", "L", units::metre, from(0),
                      "height from the liquid's surface to the highest point to be filled"),
                input("ambient_pressure", "p_amb", units::bara, between(0.1, 10),
                      "pressure on the liquid's surface, and of the air at first", 1.01325),
                input("density", "rho", units::kgm3, limits::density_kgm3, "density of the liquid", 998.2)},
     .results = {output("time", "t", units::second, "time until the line is full")},
     .equation = "t = (V/S)(1 + ln(p_amb/(p_amb - rho g L)))",
     .source = "mass balance of ideal isothermal air at a constant volume rate, all of it above the lift (the slowest "
               "case); own model, "
               "checked against a numerical march",
     .cautions = {"The vacuum needed must lie within what the priming device reaches, and the pressure at the top "
                  "above the liquid's vapour pressure.",
                  "Makers often state the rate of free air, or one that falls with the vacuum: convert it before use. "
                  "Leaks are left out."},
     .sound_anywhere = true,
     .example = {"0.05, 20, 4", "13.3963", "hand calculation: 9 s x (1 + ln(1.01325/0.621684))"}},
    relation<"lift", "ambient_pressure", "density">(
        [](Length lift, AbsolutePressure ambient, Density density) {
            return density * standard_gravity * lift < ambient.above_zero();
        },
        "the lift must be less than the head of the ambient pressure: no vacuum raises the liquid so far"));

}  // namespace cutwater::formulas
