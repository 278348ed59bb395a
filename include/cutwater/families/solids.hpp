// generated from the catalogue by cutwater-generate; do not edit.
// Solids-bearing liquids.
#pragma once

#include <cutwater/families/solids.h>
#include <cutwater/refused.hpp>
#include <cutwater/unit_table.hpp>

#include <cstddef>
#include <vector>

namespace cutwater {

/// Head of a pump in metres of slurry over its head in metres of water at the same flow: 1 - K; Engin and Gur: K = 2.705 C_w (s - 1)^0.64 (d50/D)^0.313; Cave: K = 0.0385 (s - 1)(1 + 4/s) C_w ln(d50/0.0227 mm). Source: T. Engin and M. Gur, J. Fluids Eng. 125 (2003) 149-157 (abstract read, formula from memory); I. Cave, Hydrotransport 4, BHRA 1976, paper H3 (from memory).
inline Ratio slurry_head_ratio(Fraction solids_mass_fraction, Ratio solids_relative_density, Length median_size, Length impeller_diameter, const char* correlation = "Engin and Gur")
{
    cutwater_refusal refusal;
    double head_ratio_out;
    detail::check(cutwater_slurry_head_ratio(detail::number_in(unit<Fraction>(""), solids_mass_fraction), detail::number_in(unit<Ratio>(""), solids_relative_density), detail::number_in(unit<Length>("mm"), median_size), detail::number_in(unit<Length>("mm"), impeller_diameter), correlation, &head_ratio_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), head_ratio_out);
}

/// Efficiency of a pump on slurry over its efficiency on water; both authors take the head ratio for it: 1 - K; Engin and Gur: K = 2.705 C_w (s - 1)^0.64 (d50/D)^0.313; Cave: K = 0.0385 (s - 1)(1 + 4/s) C_w ln(d50/0.0227 mm). Source: T. Engin and M. Gur, J. Fluids Eng. 125 (2003) 149-157 (abstract read, formula from memory); I. Cave, Hydrotransport 4, BHRA 1976, paper H3 (from memory).
inline Ratio slurry_efficiency_ratio(Fraction solids_mass_fraction, Ratio solids_relative_density, Length median_size, Length impeller_diameter, const char* correlation = "Engin and Gur")
{
    cutwater_refusal refusal;
    double efficiency_ratio_out;
    detail::check(cutwater_slurry_efficiency_ratio(detail::number_in(unit<Fraction>(""), solids_mass_fraction), detail::number_in(unit<Ratio>(""), solids_relative_density), detail::number_in(unit<Length>("mm"), median_size), detail::number_in(unit<Length>("mm"), impeller_diameter), correlation, &efficiency_ratio_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), efficiency_ratio_out);
}

struct slurry_power_results {
    Power power;  // pump power input
    Length slurry_head;  // head in metres of slurry
    Fraction slurry_efficiency;  // efficiency on slurry
};

/// Power, head and efficiency of a pump on slurry, from a point of its curve on water: H_m = HR H_w; eta_m = ER eta_w; P = rho_m g Q H_m/eta_m. Source: ISO 17769-1:2012, pump power input (from memory of it), with the ratios put in.
inline slurry_power_results slurry_power(Flow flow, Length water_head, Fraction water_efficiency, Density slurry_density, Ratio head_ratio, Ratio efficiency_ratio)
{
    cutwater_refusal refusal;
    double power_out;
    double slurry_head_out;
    double slurry_efficiency_out;
    detail::check(cutwater_slurry_power(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("m"), water_head), detail::number_in(unit<Fraction>(""), water_efficiency), detail::number_in(unit<Density>("kg/m3"), slurry_density), detail::number_in(unit<Ratio>(""), head_ratio), detail::number_in(unit<Ratio>(""), efficiency_ratio), &power_out, &slurry_head_out, &slurry_efficiency_out, &refusal), refusal);
    return {detail::quantity_of(unit<Power>("kW"), power_out), detail::quantity_of(unit<Length>("m"), slurry_head_out), detail::quantity_of(unit<Fraction>(""), slurry_efficiency_out)};
}

struct curve_slurry_results {
    std::vector<Flow> slurry_flows;  // flows of the points on the slurry: those on water
    std::vector<Length> slurry_heads;  // heads in metres of slurry
    std::vector<Fraction> slurry_efficiencies;  // efficiencies on the slurry
};

/// Curves of head and efficiency on a slurry, from those on water: Q = Q; H_m = HR H_w; eta_m = ER eta_w. Source: definition of the head and efficiency ratios at equal flow and speed, ANSI/HI 12.1-12.6 (from memory of it); the same at every flow: common practice.
inline curve_slurry_results curve_slurry(const std::vector<Flow>& flows, const std::vector<Length>& heads, const std::vector<Fraction>& efficiencies, Ratio head_ratio, Ratio efficiency_ratio)
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    const std::vector<double> efficiencies_numbers = detail::numbers(unit<Fraction>(""), efficiencies);
    cutwater_refusal refusal;
    std::vector<double> slurry_flows_out;
    std::size_t slurry_flows_count = 0;
    std::vector<double> slurry_heads_out;
    std::size_t slurry_heads_count = 0;
    std::vector<double> slurry_efficiencies_out;
    std::size_t slurry_efficiencies_count = 0;
    cutwater_status status = cutwater_curve_slurry(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), efficiencies_numbers.data(), efficiencies_numbers.size(), detail::number_in(unit<Ratio>(""), head_ratio), detail::number_in(unit<Ratio>(""), efficiency_ratio), slurry_flows_out.data(), slurry_flows_out.size(), &slurry_flows_count, slurry_heads_out.data(), slurry_heads_out.size(), &slurry_heads_count, slurry_efficiencies_out.data(), slurry_efficiencies_out.size(), &slurry_efficiencies_count, &refusal);
    if (status == CUTWATER_BUFFER_TOO_SMALL) {  // the first call told the lengths
        slurry_flows_out.resize(slurry_flows_count);
        slurry_heads_out.resize(slurry_heads_count);
        slurry_efficiencies_out.resize(slurry_efficiencies_count);
        status = cutwater_curve_slurry(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), efficiencies_numbers.data(), efficiencies_numbers.size(), detail::number_in(unit<Ratio>(""), head_ratio), detail::number_in(unit<Ratio>(""), efficiency_ratio), slurry_flows_out.data(), slurry_flows_out.size(), &slurry_flows_count, slurry_heads_out.data(), slurry_heads_out.size(), &slurry_heads_count, slurry_efficiencies_out.data(), slurry_efficiencies_out.size(), &slurry_efficiencies_count, &refusal);
    }
    detail::check(status, refusal);
    return {detail::quantities(unit<Flow>("m3/h"), slurry_flows_out), detail::quantities(unit<Length>("m"), slurry_heads_out), detail::quantities(unit<Fraction>(""), slurry_efficiencies_out)};
}

struct settling_velocity_results {
    Velocity velocity;  // velocity of sinking, alone and far from walls
    Ratio reynolds_number;  // Reynolds number of the sphere
    Ratio drag_coefficient;  // drag coefficient of the sphere
};

/// Velocity at which a single sphere sinks in still liquid: w = sqrt(4 g d (rho_s - rho_l)/(3 C_D rho_l)), C_D = 24/Re (1 + 0.1806 Re^0.6459) + 0.4251/(1 + 6880.95/Re). Source: A. Haider and O. Levenspiel, Powder Technology 58 (1989) 63-70 (from memory of it; coefficients agree with the open-source library fluids 1.0.22).
inline settling_velocity_results settling_velocity(Length particle_size, Density solids_density, Density liquid_density, DynamicViscosity dynamic_viscosity)
{
    cutwater_refusal refusal;
    double velocity_out;
    double reynolds_number_out;
    double drag_coefficient_out;
    detail::check(cutwater_settling_velocity(detail::number_in(unit<Length>("mm"), particle_size), detail::number_in(unit<Density>("kg/m3"), solids_density), detail::number_in(unit<Density>("kg/m3"), liquid_density), detail::number_in(unit<DynamicViscosity>("mPa s"), dynamic_viscosity), &velocity_out, &reynolds_number_out, &drag_coefficient_out, &refusal), refusal);
    return {detail::quantity_of(unit<Velocity>("m/s"), velocity_out), detail::quantity_of(unit<Ratio>(""), reynolds_number_out), detail::quantity_of(unit<Ratio>(""), drag_coefficient_out)};
}

/// Velocity at which solids sink among each other: w_h = w (1 - C_v)^m, m = (4.7 + 0.41 Re^0.75)/(1 + 0.175 Re^0.75). Source: J. F. Richardson and W. N. Zaki 1954, exponent by P. N. Rowe, Chem. Eng. Sci. 42 (1987) 2795 (from memory of both).
inline Velocity hindered_settling_velocity(Velocity settling_velocity, Fraction volume_fraction, Ratio reynolds_number)
{
    cutwater_refusal refusal;
    double velocity_out;
    detail::check(cutwater_hindered_settling_velocity(detail::number_in(unit<Velocity>("m/s"), settling_velocity), detail::number_in(unit<Fraction>(""), volume_fraction), detail::number_in(unit<Ratio>(""), reynolds_number), &velocity_out, &refusal), refusal);
    return detail::quantity_of(unit<Velocity>("m/s"), velocity_out);
}

struct deposition_velocity_results {
    Velocity velocity;  // deposition velocity
    Ratio factor;  // Durand's factor as used
};

/// Mean velocity in a horizontal pipe below which solids settle out: V_D = F_L sqrt(2 g D (s - 1)), F_L = 1.3 C_v^0.125 (1 - e^(-6.9 d50/mm)). Source: R. Durand and E. Condolios 1952; F_L by R. E. Schiller and P. E. Herbich, Handbook of Dredging Engineering, 1991 (as reproduced in a public program, checked against B. E. Abulnaga, Slurry Systems Handbook, 2002, example 4-2).
inline deposition_velocity_results deposition_velocity(Length pipe_bore, Ratio solids_relative_density, Fraction volume_fraction, Length median_size, Ratio durand_factor = unit<Ratio>("")(0))
{
    cutwater_refusal refusal;
    double velocity_out;
    double factor_out;
    detail::check(cutwater_deposition_velocity(detail::number_in(unit<Length>("mm"), pipe_bore), detail::number_in(unit<Ratio>(""), solids_relative_density), detail::number_in(unit<Fraction>(""), volume_fraction), detail::number_in(unit<Length>("mm"), median_size), detail::number_in(unit<Ratio>(""), durand_factor), &velocity_out, &factor_out, &refusal), refusal);
    return {detail::quantity_of(unit<Velocity>("m/s"), velocity_out), detail::quantity_of(unit<Ratio>(""), factor_out)};
}

struct slurry_pipe_friction_results {
    Length friction_head;  // head lost, in metres of slurry
    Length liquid_head;  // the same loss in metres of the liquid
    PressureDifference pressure_drop;  // the same loss as a pressure
    Ratio gradient_ratio;  // loss over that of the liquid alone
    Velocity velocity;  // mean velocity
    const char* regime;  // heterogeneous, where the relation holds; saltation: the solids leap along the bottom and the result is only a guess; pseudo-homogeneous: the solids are carried evenly, and the loss of a liquid as heavy as the slurry is given
};

/// Friction of a settling slurry in a horizontal pipe, by Durand and Condolios: h = h_l max(1 + K C_v psi^-1.5, rho_m/rho_l), psi = v^2 sqrt(C_D)/(g D (s - 1)), s = rho_s/rho_l; h_l by Darcy-Weisbach for the liquid alone; h_m = h rho_l/rho_m; saltation below v_s = sqrt(40 g D C_v (s - 1)/sqrt(C_D)). Source: R. Durand and E. Condolios 1952 (from memory of it; its range, bore 20 to 600 mm, grains 0.1 to 25 mm, 0.6 to 6 m/s, read in excerpt). K = 150 and v_s: J. S. Arora's slurry pipeline exercise as an open solution codes it (read); Durand's own 180 for sand, with V^2 sqrt(C_x)/(g D), C_x = g d/w^2, comes to 153 in C_D and s - 1 (by hand); 82 in another open code (read), 81 and 82 of I. Zandi and of E. J. Wasp (from memory); the floor rho_m/rho_l: the model of an equivalent liquid (common practice; the greatest loss in the homogeneous part of an open dredging code, read).
inline slurry_pipe_friction_results slurry_pipe_friction(Flow flow, Length pipe_bore, Length length, Length roughness, KinematicViscosity liquid_viscosity, Density liquid_density, Density solids_density, Fraction volume_fraction, Ratio drag_coefficient, Ratio durand_constant = unit<Ratio>("")(150))
{
    cutwater_refusal refusal;
    double friction_head_out;
    double liquid_head_out;
    double pressure_drop_out;
    double gradient_ratio_out;
    double velocity_out;
    const char* regime_out;
    detail::check(cutwater_slurry_pipe_friction(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("mm"), pipe_bore), detail::number_in(unit<Length>("m"), length), detail::number_in(unit<Length>("mm"), roughness), detail::number_in(unit<KinematicViscosity>("mm2/s"), liquid_viscosity), detail::number_in(unit<Density>("kg/m3"), liquid_density), detail::number_in(unit<Density>("kg/m3"), solids_density), detail::number_in(unit<Fraction>(""), volume_fraction), detail::number_in(unit<Ratio>(""), drag_coefficient), detail::number_in(unit<Ratio>(""), durand_constant), &friction_head_out, &liquid_head_out, &pressure_drop_out, &gradient_ratio_out, &velocity_out, &regime_out, &refusal), refusal);
    return {detail::quantity_of(unit<Length>("m"), friction_head_out), detail::quantity_of(unit<Length>("m"), liquid_head_out), detail::quantity_of(unit<PressureDifference>("bar"), pressure_drop_out), detail::quantity_of(unit<Ratio>(""), gradient_ratio_out), detail::quantity_of(unit<Velocity>("m/s"), velocity_out), regime_out};
}

struct slurry_friction_from_v50_results {
    Length friction_head;  // head lost, in metres of slurry
    Length liquid_head;  // the same loss in metres of the liquid
    PressureDifference pressure_drop;  // the same loss as a pressure
    Ratio gradient_ratio;  // loss over that of the liquid alone
    Velocity velocity;  // mean velocity
};

/// Friction of a settling slurry in a horizontal pipe, from the velocity at which half of the solids are carried by turbulence: h = max[h_l + L (mu_s/2) C_v (s - 1)(V_50/v)^M, h_l rho_m/rho_l], s = rho_s/rho_l; h_l by Darcy-Weisbach for the liquid alone; h_m = h rho_l/rho_m. Source: K. C. Wilson, G. R. Addie, A. Sellgren and R. Clift, Slurry Transport Using Centrifugal Pumps (not read; relation and 0.22 in a pump handbook's slurry chapter, excerpt read; case study 6.1 as an open code tests against it, read); the floor: see slurry_pipe_friction.
inline slurry_friction_from_v50_results slurry_friction_from_v50(Flow flow, Length pipe_bore, Length length, Length roughness, KinematicViscosity liquid_viscosity, Density liquid_density, Density solids_density, Fraction volume_fraction, Velocity half_carried_velocity, Ratio exponent, Ratio added_gradient = unit<Ratio>("")(0.22))
{
    cutwater_refusal refusal;
    double friction_head_out;
    double liquid_head_out;
    double pressure_drop_out;
    double gradient_ratio_out;
    double velocity_out;
    detail::check(cutwater_slurry_friction_from_v50(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("mm"), pipe_bore), detail::number_in(unit<Length>("m"), length), detail::number_in(unit<Length>("mm"), roughness), detail::number_in(unit<KinematicViscosity>("mm2/s"), liquid_viscosity), detail::number_in(unit<Density>("kg/m3"), liquid_density), detail::number_in(unit<Density>("kg/m3"), solids_density), detail::number_in(unit<Fraction>(""), volume_fraction), detail::number_in(unit<Velocity>("m/s"), half_carried_velocity), detail::number_in(unit<Ratio>(""), exponent), detail::number_in(unit<Ratio>(""), added_gradient), &friction_head_out, &liquid_head_out, &pressure_drop_out, &gradient_ratio_out, &velocity_out, &refusal), refusal);
    return {detail::quantity_of(unit<Length>("m"), friction_head_out), detail::quantity_of(unit<Length>("m"), liquid_head_out), detail::quantity_of(unit<PressureDifference>("bar"), pressure_drop_out), detail::quantity_of(unit<Ratio>(""), gradient_ratio_out), detail::quantity_of(unit<Velocity>("m/s"), velocity_out)};
}

/// Life against erosion at another speed, over the life now: L'/L = (n'/n)^-x. Source: erosive wear goes with a power of velocity, W. Wiedenroth 1984 (as quoted in trade literature, excerpt read); common practice.
inline Ratio wear_life_ratio(Ratio speed_ratio, Ratio exponent = unit<Ratio>("")(2.5))
{
    cutwater_refusal refusal;
    double life_ratio_out;
    detail::check(cutwater_wear_life_ratio(detail::number_in(unit<Ratio>(""), speed_ratio), detail::number_in(unit<Ratio>(""), exponent), &life_ratio_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), life_ratio_out);
}

}  // namespace cutwater
