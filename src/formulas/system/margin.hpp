// NPSH offered against NPSH needed.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "elementary/elementary.hpp"
#include "formulas/limits.hpp"

namespace cutwater::formulas {

inline Head npsh_margin(Head npsh_available, Head npsh3) { return npsh_available - npsh3; }

inline constexpr Record<&npsh_margin> npsh_margin_record{
    .name = "npsh_margin",
    .meaning = "NPSH margin as a difference",
    .also = "NPSHA less NPSHR|suction margin|suction safe|is it safe on suction|cavitation|"
            "safety margin on suction",
    .inputs = {input("npsh_available", "NPSHA", units::metre, any, "net positive suction head available"),
               input("npsh3", "NPSH3", units::metre, above(0), "the pump's NPSH at 3 % head drop, at the same flow")},
    .results = {output("margin", "m", units::metre, "what is left above NPSH3; negative: too little")},
    .equation = "m = NPSHA - NPSH3",
    .source = "ANSI/HI 9.6.1-2012, NPSH margin (from memory of it)",
    .cautions = {caution::npsh_margin},
    .sound_anywhere = true,
    .example = {"6, 3.5", "2.5", "hand calculation"}};

inline Ratio npsh_margin_ratio(Head npsh_available, Head npsh3) { return npsh_available / npsh3; }

inline constexpr Record<&npsh_margin_ratio> npsh_margin_ratio_record{
    .name = "npsh_margin_ratio",
    .meaning = "NPSH margin as a ratio",
    .also = "NPSHA over NPSHR|NPSH ratio|suction margin|suction safe|cavitation",
    .inputs = {input("npsh_available", "NPSHA", units::metre, any, "net positive suction head available"),
               input("npsh3", "NPSH3", units::metre, above(0), "the pump's NPSH at 3 % head drop, at the same flow")},
    .results = {output("margin_ratio", "NPSHA/NPSH3", units::number, "available over NPSH3; below 1: too little")},
    .equation = "ratio = NPSHA/NPSH3",
    .source = "ANSI/HI 9.6.1-2012, NPSH margin ratio (from memory of it)",
    .cautions = {caution::npsh_margin, "The ratio to ask for grows with suction energy and by service, from about 1.1 "
                                       "to 2.5 and more (ANSI/HI 9.6.1, from memory)."},
    .sound_anywhere = true,
    .example = {"6, 3.5", "1.71429", "hand calculation"}};

enum class Inlet { end_suction, side_suction };

}  // namespace cutwater::formulas

template <>
inline constexpr cutwater::Words<2> cutwater::words_of<cutwater::formulas::Inlet>{"end suction", "side suction"};

namespace cutwater::formulas {

inline Head npsh3_with_viscosity(Head npsh3, Head best_efficiency_npsh3, Ratio head_ratio, Flow best_efficiency_flow,
                                 RotationalSpeed speed, Inlet inlet, Steps steps)
{
    // An empirical correlation: m, m3/h and 1/min.
    const double inlet_factor = inlet == Inlet::end_suction ? 0.1 : 0.5;
    const double correction = 1 + inlet_factor * (1 / head_ratio.value() - 1) * 274000 *
                                      units::metre.in(best_efficiency_npsh3) /
                                      (elementary::positive_pow(units::m3h.in(best_efficiency_flow), 0.667) *
                                       elementary::positive_pow(units::rpm.in(speed), 1.33));
    steps("C_NPSH", "1 + A (1/C_H - 1) 274000 NPSH3_BEP/(Q_BEP^0.667 n^1.33)", Ratio(correction), units::number);
    return correction * npsh3;
}

inline constexpr Record<&npsh3_with_viscosity> npsh3_with_viscosity_record{
    .name = "npsh3_with_viscosity",
    .meaning = "NPSH3 on a viscous liquid from NPSH3 on water, an estimate of the trend",
    .also = "NPSHR on viscous liquid|NPSH required",
    .inputs = {input("npsh3", "NPSH3_W", units::metre, above(0), "NPSH3 on water at the flow asked about"),
               input("best_efficiency_npsh3", "NPSH3_BEP", units::metre, above(0), "NPSH3 on water at best efficiency"),
               input("head_ratio", "C_H", units::number, above_up_to(0.1, 1),
                     "viscous over water head at best efficiency, from viscous_head_ratio"),
               input("best_efficiency_flow", "Q_BEP", units::m3h, above(0),
                     "the pump's whole flow on water at best efficiency"),
               input("speed", "n", units::rpm, limits::speed_rpm, "speed of rotation"),
               choice<Inlet>(
                   "inlet", "A",
                   "end suction: straight into the impeller, A = 0.1; side suction: turned before it, A = 0.5")},
    .results = {output("viscous_npsh3", "NPSH3_vis", units::metre, "NPSH3 on the viscous liquid, gas-free")},
    .equation = "NPSH3_vis = NPSH3_W (1 + A (1/C_H - 1) 274000 NPSH3_BEP/(Q_BEP^0.667 n^1.33)); m, m3/h, 1/min",
    .source = "ISO/TR 17766:2005 and ANSI/HI 9.6.7-2010, NPSH3 on viscous liquids (from memory of both; "
              "the metric constant agrees with the 225 000 of the US form within 0.3 %)",
    .cautions =
        {"Little test data lie behind this correction; dissolved or entrained gas raises the true need well above it.",
         "With a double-suction impeller it is doubtful whether the whole flow is meant; the whole flow is taken here.",
         caution::npsh_margin},
    .sound_anywhere = true,
    .example = {R"(4.1, 4.1, 0.959, 110, 2950, "side suction")", "4.20394", "hand calculation"}};

}  // namespace cutwater::formulas
