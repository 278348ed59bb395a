// generated from the catalogue by cutwater-generate; do not edit.
// Pipes, fittings and tanks.
#pragma once

#include <cutwater/families/piping.h>
#include <cutwater/refused.hpp>
#include <cutwater/unit_table.hpp>

#include <cstddef>
#include <vector>

namespace cutwater {

/// Static head of a system from the levels and pressures of its two vessels: H_s = z_2 - z_1 + (p_2 - p_1)/(rho g). Source: Bernoulli's equation between two surfaces at rest; Hydraulic Institute, Engineering Data Book, system curves (public text read).
inline Length static_head_from_levels(Length suction_level, Length discharge_level, AbsolutePressure suction_surface_pressure, AbsolutePressure discharge_surface_pressure, Density density)
{
    cutwater_refusal refusal;
    double static_head_out;
    detail::check(cutwater_static_head_from_levels(detail::number_in(unit<Length>("m"), suction_level), detail::number_in(unit<Length>("m"), discharge_level), detail::number_in(unit<AbsolutePressure>("bara"), suction_surface_pressure), detail::number_in(unit<AbsolutePressure>("bara"), discharge_surface_pressure), detail::number_in(unit<Density>("kg/m3"), density), &static_head_out, &refusal), refusal);
    return detail::quantity_of(unit<Length>("m"), static_head_out);
}

struct nominal_pipe_bore_results {
    Length bore;  // inside diameter of the nominal wall
    Length outside_diameter;  // outside diameter
    Length wall;  // nominal wall
};

/// Inside diameter of a steel pipe by its nominal size and schedule: d = D - 2 t. Source: ASME B36.10M and B36.19M dimensions (as the open library fluids 1.0.22 carries them, read).
inline nominal_pipe_bore_results nominal_pipe_bore(Count nominal_diameter, const char* schedule = "40")
{
    cutwater_refusal refusal;
    double bore_out;
    double outside_diameter_out;
    double wall_out;
    detail::check(cutwater_nominal_pipe_bore(detail::number_in(unit<Count>(""), nominal_diameter), schedule, &bore_out, &outside_diameter_out, &wall_out, &refusal), refusal);
    return {detail::quantity_of(unit<Length>("mm"), bore_out), detail::quantity_of(unit<Length>("mm"), outside_diameter_out), detail::quantity_of(unit<Length>("mm"), wall_out)};
}

/// Loss coefficient of a fitting or valve by the method of two constants, laminar flow included: K = K_1/Re + K_inf (1 + 1/d), d in inches. Source: W. B. Hooper, Chem. Eng. 88 (1981) no. 17, 96-100 (constants as the open library fluids 1.0.22 carries them, read).
inline Ratio fitting_loss_coefficient(const char* fitting, Ratio reynolds_number, Length bore)
{
    cutwater_refusal refusal;
    double loss_coefficient_out;
    detail::check(cutwater_fitting_loss_coefficient(fitting, detail::number_in(unit<Ratio>(""), reynolds_number), detail::number_in(unit<Length>("mm"), bore), &loss_coefficient_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), loss_coefficient_out);
}

/// Loss coefficient of a fitting or valve by the method of three constants, which follows the size better: K = K_m/Re + K_i (1 + K_d/D_n^0.3), D_n the NPS of that DN, in inches. Source: R. Darby, Chem. Eng. 108 (2001) no. 4, 127-130 (constants as the open library fluids 1.0.22 carries them, read).
inline Ratio fitting_loss_coefficient_by_size(const char* fitting, Ratio reynolds_number, Count nominal_diameter)
{
    cutwater_refusal refusal;
    double loss_coefficient_out;
    detail::check(cutwater_fitting_loss_coefficient_by_size(fitting, detail::number_in(unit<Ratio>(""), reynolds_number), detail::number_in(unit<Count>(""), nominal_diameter), &loss_coefficient_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), loss_coefficient_out);
}

/// Loss coefficient of a pipe's entrance flush with the vessel's wall, sharp or rounded: K = 0.0696 (1 - 0.569 r/d) x^2 + (x - 1)^2, x = 1 + 0.622 (1 - 0.30 sqrt(r/d) - 0.70 r/d)^4; r/d at most 1. Source: D. C. Rennels and H. M. Hudson, Pipe Flow, Wiley 2012 (as the open library fluids 1.0.22 carries it, read).
inline Ratio entrance_loss_coefficient(Length bore, Length rounding_radius = unit<Length>("mm")(0))
{
    cutwater_refusal refusal;
    double loss_coefficient_out;
    detail::check(cutwater_entrance_loss_coefficient(detail::number_in(unit<Length>("mm"), bore), detail::number_in(unit<Length>("mm"), rounding_radius), &loss_coefficient_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), loss_coefficient_out);
}

/// Loss coefficient of a pipe's entrance that projects into the vessel: K = 1.12 - 22 t/d + 216 (t/d)^2 + 80 (t/d)^3; t/d at most 0.05. Source: D. C. Rennels and H. M. Hudson, Pipe Flow, Wiley 2012 (as the open library fluids 1.0.22 carries it, read).
inline Ratio projecting_entrance_loss_coefficient(Length bore, Length wall)
{
    cutwater_refusal refusal;
    double loss_coefficient_out;
    detail::check(cutwater_projecting_entrance_loss_coefficient(detail::number_in(unit<Length>("mm"), bore), detail::number_in(unit<Length>("mm"), wall), &loss_coefficient_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), loss_coefficient_out);
}

/// Loss coefficient of a sudden enlargement of the bore: K = (1 - (d_1/d_2)^2)^2. Source: Borda and Carnot, momentum balance, any textbook of hydraulics; the open library fluids 1.0.22 agrees.
inline Ratio enlargement_loss_coefficient(Length bore, Length larger_bore)
{
    cutwater_refusal refusal;
    double loss_coefficient_out;
    detail::check(cutwater_enlargement_loss_coefficient(detail::number_in(unit<Length>("mm"), bore), detail::number_in(unit<Length>("mm"), larger_bore), &loss_coefficient_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), loss_coefficient_out);
}

/// Loss coefficient of a sudden contraction of the bore: K = 0.0696 (1 - b^5) x^2 + (x - 1)^2, x = 1 + 0.622 (1 - 0.215 b^2 - 0.785 b^5), b = d_2/d_1. Source: D. C. Rennels and H. M. Hudson, Pipe Flow, Wiley 2012 (as the open library fluids 1.0.22 carries it, read).
inline Ratio contraction_loss_coefficient(Length larger_bore, Length bore)
{
    cutwater_refusal refusal;
    double loss_coefficient_out;
    detail::check(cutwater_contraction_loss_coefficient(detail::number_in(unit<Length>("mm"), larger_bore), detail::number_in(unit<Length>("mm"), bore), &loss_coefficient_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), loss_coefficient_out);
}

/// Loss coefficient that goes with the velocity head in another bore: K' = K (d'/d)^4. Source: continuity: the same head lost, the same flow.
inline Ratio loss_coefficient_at_bore(Ratio loss_coefficient, Length bore, Length other_bore)
{
    cutwater_refusal refusal;
    double other_loss_coefficient_out;
    detail::check(cutwater_loss_coefficient_at_bore(detail::number_in(unit<Ratio>(""), loss_coefficient), detail::number_in(unit<Length>("mm"), bore), detail::number_in(unit<Length>("mm"), other_bore), &other_loss_coefficient_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), other_loss_coefficient_out);
}

/// Head lost by friction of cold water in a pipe by the formula of Hazen and Williams: h_f = 10.6668 L (Q/C)^1.852/d^4.871 with Q in m3/s, L and d in m. Source: G. S. Williams and A. Hazen, Hydraulic Tables, with the constants of the open network library WNTR and EPANET (read); textbooks print 10.67 and 4.87, up to 0.3 % apart.
inline Length hazen_williams_head(Flow flow, Length bore, Length length, Ratio roughness_coefficient)
{
    cutwater_refusal refusal;
    double friction_head_out;
    detail::check(cutwater_hazen_williams_head(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("mm"), bore), detail::number_in(unit<Length>("m"), length), detail::number_in(unit<Ratio>(""), roughness_coefficient), &friction_head_out, &refusal), refusal);
    return detail::quantity_of(unit<Length>("m"), friction_head_out);
}

/// Time in which an upright open tank empties by gravity from one level to another: t = A/(C a) sqrt(2/g) (sqrt(z_1) - sqrt(z_2)), a = pi/4 d^2. Source: Torricelli's law integrated over the level, any textbook of hydraulics.
inline Time tank_discharge_time(Area surface, Length first_level, Length last_level, Length outlet_bore, Ratio discharge_coefficient)
{
    cutwater_refusal refusal;
    double time_out;
    detail::check(cutwater_tank_discharge_time(detail::number_in(unit<Area>("m2"), surface), detail::number_in(unit<Length>("m"), first_level), detail::number_in(unit<Length>("m"), last_level), detail::number_in(unit<Length>("mm"), outlet_bore), detail::number_in(unit<Ratio>(""), discharge_coefficient), &time_out, &refusal), refusal);
    return detail::quantity_of(unit<Time>("s"), time_out);
}

/// Time in which a volume fills, or empties, by steady flows in and out: t = V/(Q_in - Q_out). Source: volume balance.
inline Time filling_time(Volume volume, Flow inflow, Flow outflow = unit<Flow>("m3/h")(0))
{
    cutwater_refusal refusal;
    double time_out;
    detail::check(cutwater_filling_time(detail::number_in(unit<Volume>("m3"), volume), detail::number_in(unit<Flow>("m3/h"), inflow), detail::number_in(unit<Flow>("m3/h"), outflow), &time_out, &refusal), refusal);
    return detail::quantity_of(unit<Time>("min"), time_out);
}

}  // namespace cutwater
