// Valves, and the system's own curve.
#pragma once

#include "formulas/system/pipe.hpp"
#include "formulas/limits.hpp"

#include <tuple>

namespace cutwater::formulas {

/// Water at 15 degC, on which flow coefficients rest.
inline constexpr Density valve_reference_density = Density::from_value(999.1);

/// The head does not depend on the density, the pressure does.
inline std::tuple<Head, PressureDifference> valve_head_loss(Flow flow, ValveCoefficient flow_coefficient,
                                                            Ratio relative_density)
{
    // Kv is the flow in m3/h at 1 bar: a number with its units agreed upon.
    const double share = units::m3h.in(flow) / flow_coefficient.value;
    const PressureDifference water_loss = share * share * units::bar(1);
    return {water_loss / (valve_reference_density * standard_gravity), relative_density * water_loss};
}

inline constexpr Record<&valve_head_loss> valve_head_loss_record{
    .name = "valve_head_loss",
    .meaning = "Head and pressure lost in a valve, from its flow coefficient",
    .also = "Cv|Kv|control valve|pressure drop across a valve|throttle valve",
    .inputs = {input("flow", "Q", units::m3h, from(0), "volume flow"),
               input("flow_coefficient", "Kv", units::kv, above(0),
                     "flow coefficient of the valve at its opening; text may say 46 Cv"),
               input("relative_density", "d", units::number, between(0.05, 25),
                     "density of the liquid over that of water at 15 degC", 1)},
    .results = {output("head_loss", "h", units::metre,
                       "head lost, of the liquid that flows; the density cancels out of it"),
                output("pressure_loss", "dp", units::bar, "pressure lost")},
    .equation = "dp = d (Q/Kv)^2 bar with Q in m3/h; h = dp/(d rho_0 g), rho_0 = 999.1 kg/m3",
    .source = "IEC 60534-2-1:2011, 7.1, turbulent incompressible flow, N1 = 1, no reducers (from memory of it); "
              "density of water at 15 degC: IAPWS-IF97",
    .cautions =
        {"Holds for turbulent flow that neither flashes nor chokes: the pressure loss must stay below the valve's "
         "limiting pressure drop (recovery factor F_L of the valve's maker).",
         "Reducers at the valve lower its flow coefficient."},
    .sound_anywhere = true,
    .example = {"50, 100, 0.85", "2.55159, 0.2125", "hand calculation: 1e5 x 0.25/(999.1 x 9.80665); 0.85 x 0.25"}};

inline SystemResistance system_resistance(Flow flow, Head friction_head) { return friction_head / (flow * flow); }

inline constexpr Record<&system_resistance> system_resistance_record{
    .name = "system_resistance",
    .meaning = "Resistance of a system from its losses at one flow",
    .also = "system curve|resistance curve",
    .inputs = {input("flow", "Q", units::m3h, above(0), "flow at which the losses are known"),
               input("friction_head", "h_f", units::metre, from(0),
                     "all losses of pipes, fittings and equipment at that flow")},
    .results = {output("resistance", "k", units::h2m5, "losses over the square of the flow")},
    .equation = "k = h_f/Q^2",
    .source = "Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.A.7 and 1.A.8 (excerpt read)",
    .cautions = {"Losses grow with the square of the flow in turbulent flow only; in laminar flow they grow with the "
                 "flow itself."},
    .sound_anywhere = true,
    .example = {"100, 12", "0.0012", "hand calculation: 12/100^2"}};

inline Head system_head(Head static_head, SystemResistance resistance, Flow flow)
{
    return static_head + resistance * (flow * flow);
}

inline constexpr Record<&system_head> system_head_record{
    .name = "system_head",
    .meaning = "Head that a system asks for at a flow",
    .also = "system curve|total dynamic head|TDH|head required",
    .inputs = {input("static_head", "H_s", units::metre, any,
                     "head at no flow: difference of levels and of the vessels' pressures as head; negative when it "
                     "runs downhill"),
               input("resistance", "k", units::h2m5, limits::resistance_h2m5, "losses over the square of the flow"),
               input("flow", "Q", units::m3h, from(0), "flow through the system")},
    .results = {output("head", "H", units::metre, "system head")},
    .equation = "H = H_s + k Q^2",
    .source = "Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.A.8 (excerpt read)",
    .cautions = {"Losses grow with the square of the flow in turbulent flow only; in laminar flow they grow with the "
                 "flow itself."},
    .sound_anywhere = true,
    .example = {"80.77, 0.0012, 50", "83.77", "hand calculation: 80.77 + 0.0012 x 2500"}};

inline Head total_head_from_gauges(GaugePressure discharge, GaugePressure suction, Length discharge_elevation,
                                   Length suction_elevation, Length discharge_bore, Length suction_bore, Flow flow,
                                   Density density, Steps steps)
{
    const Head pressure = (discharge - suction) / (density * standard_gravity);
    const Head elevation = discharge_elevation - suction_elevation;
    const Head velocity = head_of_velocity(pipe_velocity(flow, discharge_bore)) -
                          head_of_velocity(pipe_velocity(flow, suction_bore));
    steps("(p_2 - p_1)/(rho g)", "head of the pressure difference", pressure, units::metre);
    steps("z_2 - z_1", "difference of the gauges' elevations", elevation, units::metre);
    steps("(v_2^2 - v_1^2)/(2 g)", "difference of the velocity heads", velocity, units::metre);
    return pressure + elevation + velocity;
}

inline constexpr Record<&total_head_from_gauges> total_head_from_gauges_record{
    .name = "total_head_from_gauges",
    .meaning = "Total head of a pump from its discharge and suction gauges",
    .also = "total dynamic head|TDH|differential head|field test|pressure gauges",
    .inputs = {input("discharge_pressure", "p_2", units::barg, limits::gauge_barg, "discharge gauge reading"),
               input("suction_pressure", "p_1", units::barg, limits::suction_barg,
                     "suction gauge reading; negative for a vacuum"),
               input("discharge_gauge_elevation", "z_2", units::metre, any,
                     "centre of the discharge gauge above the datum"),
               input("suction_gauge_elevation", "z_1", units::metre, any,
                     "centre of the suction gauge above the same datum"),
               input("discharge_bore", "d_2", units::mm, limits::bore_mm, "bore at the discharge tapping"),
               input("suction_bore", "d_1", units::mm, limits::bore_mm, "bore at the suction tapping"),
               input("flow", "Q", units::m3h, from(0), "flow through both"),
               input("density", "rho", units::kgm3, limits::density_kgm3,
                     "density of the liquid, the same in the gauge lines")},
    .results = {output("total_head", "H", units::metre, "pump total head between the tappings")},
    .equation = "H = (p_2 - p_1)/(rho g) + z_2 - z_1 + (v_2^2 - v_1^2)/(2 g)",
    .source =
        "ISO 9906:2012, pump total head (from memory of it); Hydraulic Institute, Engineering Data Book, 2nd edition, "
        "Eq. 1.A.3 to 1.A.6 (excerpt read)",
    .cautions = {"Gauge lines must be full of the liquid; with an air-filled line take the tapping's elevation. "
                 "Losses between tappings and flanges are to be added."},
    .example = {"5, 0.2, 0.8, 0.1, 100, 150, 120, 998.2", "50.4716", "hand calculation: 49.0344 + 0.7 + 0.7372"}};

}  // namespace cutwater::formulas
