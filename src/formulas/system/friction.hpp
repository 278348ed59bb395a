// Losses of pipes and fittings.
#pragma once

#include "elementary/elementary.hpp"
#include "formulas/system/pipe.hpp"

namespace cutwater::formulas {

namespace friction {

inline constexpr double laminar_up_to = 2000;  // the lower end of the critical zone
inline constexpr double highest_reynolds = 1e9;
inline constexpr double roughest = 0.05;  // eps/d at the end of Moody's chart

inline constexpr const char* critical_zone = "Between Re 2000 and 4000 the flow may be laminar, turbulent or change "
                                             "between them: the factor returned there is the "
                                             "turbulent one, which is the higher. Just above Re 2000 it jumps.";
inline constexpr const char* scatter = "Friction factors of commercial pipe scatter by 10 to 15 %, and roughness grows "
                                       "with age: add a margin for an old or fouled line.";
inline constexpr const char* rough_enough =
    "the roughness must be at most 0.05 of the bore, the end of the method's range";

/// Colebrook and White, solved for x = 1/sqrt(f) by steps of fourth order (Householder's, with the third derivative,
/// which costs no second logarithm) on x + 2 log10(a + b x). From an explicit start within 6 % the first leaves 2e-7
/// and the second rounding error over the whole permitted range. The count is fixed so that rows of an array take the
/// same path.
inline double colebrook_white(double reynolds, double relative_roughness)
{
    constexpr double two_over_ln10 = 0.868588963806503655302;
    const double a = relative_roughness / 3.7;
    const double b = 2.51 / reynolds;
    double x = -two_over_ln10 * elementary::log(a + 14 / reynolds);
    for (int step = 0; step < 2; ++step) {
        const double inside = a + b * x;
        const double u = b / inside;
        const double slope = 1 + two_over_ln10 * u;
        const double newton = (x + two_over_ln10 * elementary::log(inside)) / slope;
        const double second = -two_over_ln10 * u * u / (2 * slope);    // second derivative over twice the first
        const double third = two_over_ln10 * u * u * u / (3 * slope);  // third over six times the first
        x -= newton * (1 + newton * (second + newton * (2 * second * second - third)));
    }
    return 1 / (x * x);
}

}  // namespace friction

inline Ratio friction_factor(Ratio reynolds_number, Length roughness, Length bore)
{
    const double reynolds = reynolds_number.value();
    const double turbulent = friction::colebrook_white(std::max(reynolds, friction::laminar_up_to),
                                                       Ratio(roughness / bore).value());
    return reynolds <= friction::laminar_up_to ? Ratio(64 / reynolds) : Ratio(turbulent);
}

inline constexpr auto friction_factor_record = record<&friction_factor>(
    {.name = "friction_factor",
     .meaning = "Friction factor of a round pipe as Darcy defines it (four times Fanning's)",
     .also = "Darcy friction factor|Moody|Colebrook|roughness",
     .inputs = {input("reynolds_number", "Re", units::number, above_up_to(0, friction::highest_reynolds),
                      "Reynolds number on the bore"),
                input("roughness", "eps", units::mm, from(0),
                      "roughness of the wall: new commercial steel 0.046, drawn tube and plastic 0.0015, galvanised "
                      "0.15, cast iron 0.26"),
                input("bore", "d", units::mm, limits::bore_mm, "inside diameter, not the nominal size")},
     .results = {output("friction_factor", "f", units::number, "Darcy friction factor")},
     .equation = "Re <= 2000: f = 64/Re; above: 1/sqrt(f) = -2 log10(eps/(3.7 d) + 2.51/(Re sqrt(f)))",
     .source = "C. F. Colebrook, J. Inst. Civ. Eng. 11 (1939) 133 (from memory of it); Hydraulic Institute, "
               "Engineering Data Book, "
               "2nd edition, Eq. 3.A.2 and 3.A.5, table of roughness and critical zone (excerpt read)",
     .cautions = {friction::critical_zone, friction::scatter},
     .example = {"149000, 0.0457, 102.26", "0.01912888417",
                 "Lambert W solution of the same equation, mpmath 1.2.1 at 40 digits"}},
    relation<"roughness", "bore">([](Length roughness, Length bore) { return roughness <= friction::roughest * bore; },
                                  friction::rough_enough));

inline Head pipe_friction_head(Flow flow, Length bore, Length length, Length roughness, KinematicViscosity viscosity,
                               Steps steps)
{
    const Velocity velocity = pipe_velocity(flow, bore);
    const Ratio reynolds = velocity * bore / viscosity;
    const Ratio in_range(std::max(reynolds.value(), friction::laminar_up_to));
    const Ratio turbulent_factor(friction::colebrook_white(in_range.value(), Ratio(roughness / bore).value()));
    const bool laminar = reynolds.value() <= friction::laminar_up_to;
    steps("v", "Q/(pi/4 d^2)", velocity, units::ms);
    steps("Re", "v d/nu", reynolds, units::number);
    if (!laminar)
        steps("f", "Colebrook-White", turbulent_factor, units::number);
    else if (reynolds.value() > 0)
        steps("f", "64/Re", Ratio(64.0 / reynolds), units::number);
    // 64/Re put in: no division by the flow, which may be nil.
    const Head in_laminar = 32.0 * viscosity * length * velocity / (standard_gravity * bore * bore);
    const Head in_turbulent = turbulent_factor * (length / bore) * head_of_velocity(velocity);
    return Head::from_value(elementary::select(laminar, in_laminar.value(), in_turbulent.value()));
}

inline constexpr auto pipe_friction_head_record = record<&pipe_friction_head>(
    {.name = "pipe_friction_head",
     .meaning = "Head lost by friction in a straight round pipe",
     .also = "pipe loss|friction loss|line loss|pressure drop in pipe|Darcy-Weisbach|head loss",
     .inputs = {input("flow", "Q", units::m3h, from(0), "volume flow"),
                input("bore", "d", units::mm, limits::bore_mm, "inside diameter, not the nominal size"),
                input("length", "L", units::metre, from(0), "length of straight pipe"),
                input("roughness", "eps", units::mm, from(0),
                      "roughness of the wall: new commercial steel 0.046, drawn tube and plastic 0.0015, galvanised "
                      "0.15, cast iron 0.26"),
                input("kinematic_viscosity", "nu", units::mm2s, limits::kinematic_viscosity_mm2s,
                      "kinematic viscosity at the temperature in the pipe")},
     .results = {output("friction_head", "h_f", units::metre, "head lost, of the liquid that flows")},
     .equation = "h_f = f (L/d) v^2/(2 g); Re <= 2000: f = 64/Re; above: f by Colebrook-White",
     .source = "Darcy and Weisbach; Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 3.A.1 to 3.A.5 "
               "(excerpt read)",
     .cautions = {friction::critical_zone, friction::scatter},
     .given_once = {"bore", "length", "roughness", "kinematic_viscosity"},
     .example = {"100, 150, 200, 0.0457, 1.0034", "2.92787",
                 "the factor by Lambert W (mpmath 1.2.1), the rest by hand"}},
    relation<"roughness", "bore">([](Length roughness, Length bore) { return roughness <= friction::roughest * bore; },
                                  friction::rough_enough),
    relation<"flow", "bore", "kinematic_viscosity">(
        [](Flow flow, Length bore, KinematicViscosity viscosity) {
            return reynolds_number(flow, bore, viscosity).value() <= friction::highest_reynolds;
        },
        "the Reynolds number must be at most 1e9, the end of the method's range"));

inline Head fitting_head(Flow flow, Length bore, Ratio loss_coefficient)
{
    return loss_coefficient * head_of_velocity(pipe_velocity(flow, bore));
}

inline constexpr Record<&fitting_head> fitting_head_record{
    .name = "fitting_head",
    .meaning = "Head lost in fittings, from their loss coefficient",
    .also = "minor losses|K factor|resistance coefficient|elbow|tee|entrance loss|head loss",
    .inputs = {input("flow", "Q", units::m3h, from(0), "volume flow"),
               input("bore", "d", units::mm, limits::bore_mm, "the bore that the loss coefficient refers to"),
               input("loss_coefficient", "K", units::number, from(0),
                     "loss coefficient, or the sum of several on one bore")},
    .results = {output("head_loss", "h", units::metre, "head lost, of the liquid that flows")},
    .equation = "h = K v^2/(2 g), v = Q/(pi/4 d^2)",
    .source = "Hydraulic Institute, Engineering Data Book, 2nd edition, losses of fittings (excerpt read)",
    .cautions =
        {"Loss coefficients hold for turbulent flow; in viscous liquid below about Re 2000 a fitting loses far more."},
    .example = {"100, 150, 0.31", "0.0390536", "hand calculation: 0.31 x 0.125979"}};

}  // namespace cutwater::formulas
