// Ratios by which a viscous liquid lowers a pump's flow, head and efficiency on water.
#pragma once

#include "elementary/elementary.hpp"
#include "formulas/viscous/parameter.hpp"

#include <algorithm>

namespace cutwater::formulas {

enum class NearOne { as_printed, safe };

}  // namespace cutwater::formulas

template <>
inline constexpr cutwater::Words<2> cutwater::words_of<cutwater::formulas::NearOne>{"as printed", "safe"};

namespace cutwater::formulas {

namespace viscous {

/// For flow at any point and for head at best efficiency. The base is 2.71 as the standard prints it, not e.
inline double flow_ratio(double b)
{
    // Up to 1 the logarithm would be negative under a broken power: the ratio stays 1.
    return elementary::positive_pow(2.71, -0.165 * elementary::positive_pow(elementary::log10(std::max(b, 1.0)), 3.15));
}

inline double head_ratio(double b, double share_of_best_flow)
{
    return 1 - (1 - flow_ratio(b)) * elementary::positive_pow(share_of_best_flow, 0.75);
}

inline double thin_efficiency_ratio(double best_efficiency, double viscosity_ratio)
{
    return (1 - (1 - best_efficiency) * elementary::positive_pow(viscosity_ratio, 0.07)) / best_efficiency;
}

/// What the branch up to B = 1 gives, and above it, what it ends with. B goes with the root of the viscosity; a liquid
/// as thin as the water of the test loses nothing.
inline double up_to_one(double b, double best_efficiency, double viscosity_ratio)
{
    const double at_one = std::max(viscosity_ratio / (b * b), 1.0);
    return thin_efficiency_ratio(best_efficiency, elementary::select(b > 1, at_one, viscosity_ratio));
}

inline double efficiency_ratio(double b, double best_efficiency, double viscosity_ratio, NearOne near)
{
    const double thin = up_to_one(b, best_efficiency, viscosity_ratio);
    const double thick = elementary::positive_pow(b, -0.0547 * elementary::positive_pow(b, 0.69));
    return elementary::select(b > 1, elementary::select(near == NearOne::safe, std::min(thick, thin), thick), thin);
}

/// Above 1, or an efficiency above 0: of two comparisons one would be the formula's own, and such a pair GCC keeps out
/// of vectors.
inline bool leaves_efficiency(double b, double best_efficiency, double viscosity_ratio, NearOne near)
{
    const double thin = up_to_one(b, best_efficiency, viscosity_ratio);
    return elementary::select(b > 1, elementary::select(near == NearOne::safe, thin, 1.0), thin) > 0;
}

constexpr auto near_one()
{
    return choice<NearOne>("near_one", "branch",
                           "as printed: the two branches, which jump at B = 1; safe: above B = 1 no higher than the "
                           "other branch ends there",
                           NearOne::as_printed);
}

inline constexpr Interval parameters = inside(0, 40);
inline constexpr Interval flow_shares = between(0, 1.5);
inline constexpr const char* parameter_meaning =
    "viscosity parameter B; from 40 on the correction is too uncertain and the losses have to be analysed one by one";
inline constexpr const char* jump =
    "The method's two branches do not join: above B = 1 the efficiency ratio begins again at 1, higher by (1 - "
    "eta_BEP)((nu/nu_W)^0.07 - 1)/eta_BEP, which is 3 % at eta_BEP 0.8 and 5 mm2/s, 17 % at 0.5 and 10 mm2/s. Near B = "
    "1 take near_one as safe, which is never above the standard's value.";
inline constexpr const char* nothing_left =
    "the method's formula for B up to 1 leaves no efficiency with so low a best efficiency";
inline constexpr const char* thinner_than_water =
    "the liquid must not be thinner than the water of the pump's test: no correction is needed then";

}  // namespace viscous

inline Ratio viscous_flow_ratio(Ratio parameter) { return Ratio(viscous::flow_ratio(parameter.value())); }

inline constexpr Record<&viscous_flow_ratio> viscous_flow_ratio_record{
    .name = "viscous_flow_ratio",
    .meaning = "Flow of a pump on a viscous liquid over its flow on water",
    .also = "CQ|flow correction factor",
    .inputs = {input("viscosity_parameter", "B", units::number, viscous::parameters, viscous::parameter_meaning)},
    .results = {output("flow_ratio", "C_Q", units::number, "also the ratio of heads at best efficiency")},
    .equation = "C_Q = 2.71^(-0.165 (log10 B)^3.15) for B > 1; 1 for B <= 1",
    .source = viscous::method,
    .cautions = {caution::viscous_method, viscous::tested_range},
    .sound_anywhere = true,
    .example = {"5.52", "0.938", "the standard's first example"}};

inline Ratio viscous_head_ratio(Ratio parameter, Ratio flow_share)
{
    return Ratio(viscous::head_ratio(parameter.value(), flow_share.value()));
}

inline constexpr Record<&viscous_head_ratio> viscous_head_ratio_record{
    .name = "viscous_head_ratio",
    .meaning = "Head of a pump on a viscous liquid over its head on water, at a point of its curve",
    .also = "CH|head correction factor",
    .inputs = {input("viscosity_parameter", "B", units::number, viscous::parameters, viscous::parameter_meaning),
               input("flow_ratio", "Q_W/Q_BEP", units::number, viscous::flow_shares,
                     "the point's flow on water over the best efficiency flow on water", 1)},
    .results = {output("head_ratio", "C_H", units::number, "1 at closed valve, falling with the flow")},
    .equation = "C_H = 1 - (1 - C_Q)(Q_W/Q_BEP)^0.75 for B > 1; 1 for B <= 1",
    .source = viscous::method,
    .cautions = {caution::viscous_method, viscous::tested_range},
    .sound_anywhere = true,
    .example = {"5.52, 0.6", "0.958", "the standard's first example at 60 % of the best efficiency flow"}};

inline Ratio viscous_efficiency_ratio(Ratio parameter, Fraction best_efficiency, KinematicViscosity viscosity,
                                      KinematicViscosity water_viscosity, NearOne near)
{
    return Ratio(viscous::efficiency_ratio(parameter.value(), best_efficiency.value,
                                           (viscosity / water_viscosity).value(), near));
}

inline constexpr auto viscous_efficiency_ratio_record = record<&viscous_efficiency_ratio>(
    {.name = "viscous_efficiency_ratio",
     .meaning = "Efficiency of a pump on a viscous liquid over its efficiency on water",
     .also = "CE|C eta|efficiency correction factor",
     .inputs = {input("viscosity_parameter", "B", units::number, viscous::parameters, viscous::parameter_meaning),
                input("best_efficiency", "eta_BEP", units::fraction, inside(0, 1),
                      "best efficiency on water; counts for B up to 1, and above for the safe branch"),
                input(
                    "viscosity", "nu", units::mm2s, viscous::viscosities,
                    "kinematic viscosity at pumping temperature; counts for B up to 1, and above for the safe branch"),
                input("water_viscosity", "nu_W", units::mm2s, between(0.2, 2),
                      "kinematic viscosity of the water that the pump was tested on", 1),
                viscous::near_one()},
     .results = {output("efficiency_ratio", "C_eta", units::number, "the same at every flow")},
     .equation = "C_eta = B^(-0.0547 B^0.69) for B > 1; [1 - (1 - eta_BEP)(nu/nu_W)^0.07]/eta_BEP for B <= 1; "
                 "safe, B > 1: at most that value with nu/B^2, where B would be 1",
     .source = "ISO/TR 17766:2005, clause 6, the same method as ANSI/HI 9.6.7-2004 (from memory of it; the branch for "
               "B > 1 checked against "
               "its worked examples, the branch for B up to 1 not)",
     .cautions = {caution::viscous_method, viscous::tested_range, viscous::jump},
     .sound_anywhere = true,
     .example = {"5.52, 0.68, 120", "0.738", "the standard's first example"}},
    relation<"viscosity", "water_viscosity">(
        [](KinematicViscosity nu, KinematicViscosity water) { return nu >= water; }, viscous::thinner_than_water),
    relation<"best_efficiency", "viscosity_parameter", "viscosity", "water_viscosity", "near_one">(
        [](Fraction eta, Ratio b, KinematicViscosity nu, KinematicViscosity water, NearOne near) {
            return viscous::leaves_efficiency(b.value(), eta.value, (nu / water).value(), near);
        },
        viscous::nothing_left));

}  // namespace cutwater::formulas
