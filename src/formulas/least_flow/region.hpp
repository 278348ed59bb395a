// Where on its curve a pump may run.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "formulas/limits.hpp"
#include "formulas/pairs.hpp"

#include <numbers>

namespace cutwater::formulas {

enum class OperatingRegion { preferred, allowable, outside };

}  // namespace cutwater::formulas

namespace cutwater {

template <>
inline constexpr Words<3> words_of<formulas::OperatingRegion>{"preferred", "allowable", "outside"};

}  // namespace cutwater

namespace cutwater::formulas {

namespace least_flow {

/// ANSI/HI 9.6.3: the region narrows above a US specific speed of 4500.
inline std::tuple<Flow, Flow> preferred(Flow best, SpecificSpeed n_s)
{
    const bool broad = n_s.value <= 87.1;
    return {(broad ? 0.70 : 0.80) * best, (broad ? 1.20 : 1.15) * best};
}

inline constexpr Interval specific_speeds = between(1, 500);
inline constexpr const char* region_source =
    "ANSI/HI 9.6.3-2012, preferred operating region: 70 to 120 % of best efficiency flow for most pumps (clause "
    "9.6.3.1 as quoted by a trade magazine, excerpt read; the Hydraulic Institute's Engineering Data Book, read, spans "
    "90 to 110 % up to 70 to 120 % by specific speed), above a US specific speed of 4500 (87.1 in 1/min, m3/s, m) 80 "
    "to 115 % (from memory of it)";
inline constexpr const char* specific_speed_meaning =
    "specific speed n Q^0.5/H^0.75 in 1/min, m3/s, m of a stage, at best efficiency, with the whole flow of a "
    "double-suction impeller, as the Hydraulic Institute defines it: 1.414 times the number per eye";
inline constexpr const char* narrower =
    "For the highest specific speeds the region is narrower, down to 90 to 110 %. Above 4500 (US) what is read of the "
    "upper end differs: 110, 115 and 120 %.";
inline constexpr const char* small_exempt =
    "Small pumps, up to about 4 kW, are exempt from it (ANSI/HI 9.6.3, from memory) and commonly run well below: ask "
    "the pump maker.";
inline constexpr const char* makers_to_tell =
    "The allowable region, its least continuous stable flow with it, is the pump maker's to tell; no formula here "
    "gives it.";

}  // namespace least_flow

inline std::tuple<Flow, Flow> preferred_region(Flow best, SpecificSpeed n_s)
{
    return least_flow::preferred(best, n_s);
}

inline constexpr Record<&preferred_region> preferred_region_record{
    .name = "preferred_region",
    .meaning = "Flows between which a pump is best run",
    .also = "POR|preferred operating region|AOR|allowable operating region|70 to 120 per cent of BEP",
    .inputs = {input("best_efficiency_flow", "Q_BEP", units::m3h, above(0),
                     "best efficiency flow at the actual speed and diameter"),
               input("specific_speed", "n_s", units::specific_speed, least_flow::specific_speeds,
                     least_flow::specific_speed_meaning)},
    .results = {output("least_preferred_flow", "Q_1", units::m3h, "lower end of the preferred region"),
                output("greatest_preferred_flow", "Q_2", units::m3h, "upper end of the preferred region")},
    .equation = "n_s <= 87.1: 0.70 Q_BEP to 1.20 Q_BEP; above: 0.80 Q_BEP to 1.15 Q_BEP",
    .source = least_flow::region_source,
    .cautions = {least_flow::narrower, least_flow::small_exempt, least_flow::makers_to_tell},
    .example = {"100, 30", "70, 120", "by inspection"}};

inline std::tuple<OperatingRegion, Flow, Flow> operating_region(Flow flow, Flow best, SpecificSpeed n_s,
                                                                Flow allowable_low, Flow allowable_high)
{
    constexpr double less = 1 - 1e-9,
                     more = 1 + 1e-9;  // the ends belong to a region: 69.3 m3/h is 0.70 of 99 m3/h, but for rounding
    const auto [low, high] = least_flow::preferred(best, n_s);
    const bool allowable = (flow >= less * allowable_low) & (flow <= more * allowable_high);
    const bool preferred = (flow >= less * low) & (flow <= more * high);
    return {!allowable  ? OperatingRegion::outside
            : preferred ? OperatingRegion::preferred
                        : OperatingRegion::allowable,
            low, high};
}

inline constexpr auto operating_region_record = record<&operating_region>(
    {.name = "operating_region",
     .meaning = "Region of its curve in which a pump runs",
     .also = "POR|preferred operating region|AOR|left of BEP|right of BEP|run-out|runout|allowable operating region|"
             "minimum continuous stable flow|MCSF",
     .inputs = {input("flow", "Q", units::m3h, from(0), "flow at which the pump runs"),
                input("best_efficiency_flow", "Q_BEP", units::m3h, above(0),
                      "best efficiency flow at the actual speed and diameter"),
                input("specific_speed", "n_s", units::specific_speed, least_flow::specific_speeds,
                      least_flow::specific_speed_meaning),
                input("allowable_minimum_flow", "Q_min", units::m3h, from(0),
                      "least continuous flow that the pump maker allows"),
                input("allowable_maximum_flow", "Q_max", units::m3h, above(0),
                      "greatest continuous flow that the pump maker allows")},
     .results = {output_word<OperatingRegion>(
                     "region", "region",
                     "preferred, allowable but not preferred, or outside of both; the ends belong to a region"),
                 output("least_preferred_flow", "Q_1", units::m3h, "lower end of the preferred region"),
                 output("greatest_preferred_flow", "Q_2", units::m3h, "upper end of the preferred region")},
     .equation = "preferred: n_s <= 87.1: 0.70 to 1.20 Q_BEP, above: 0.80 to 1.15 Q_BEP, within the allowable; "
                 "allowable: Q_min to Q_max",
     .source = least_flow::region_source,
     .cautions = {least_flow::narrower, least_flow::small_exempt, least_flow::makers_to_tell, caution::guide_only},
     .example = {"69, 100, 30, 40, 130", "\"allowable\", 70, 120", "by inspection"}},
    relation<"allowable_maximum_flow", "allowable_minimum_flow">([](Flow high, Flow low) { return high > low; },
                                                                 "it must exceed the allowable minimum flow"));

inline Outcome<Flow> falling_head_flow(Series<Flow> flows, Series<Head> heads)
{
    if (flows.front() > 0.05 * flows.back())
        return NoValue{CUTWATER_BAD_SERIES,
                       "flows",
                       "the curve begins at {0}; give it down to closed valve, at most 5 % of its last flow, {1}",
                       {number_in(flows.front(), units::m3h), number_in(flows.back(), units::m3h)}};
    std::size_t from = flows.size() - 1;  // from here on the head falls from point to point
    while (from > 0 && heads[from - 1] > heads[from]) --from;
    if (from + 1 == flows.size())
        return NoValue{CUTWATER_NO_ANSWER,
                       "heads",
                       "the head does not fall to the curve's last point, {0}: the curve has no stable part",
                       {number_in(flows.back(), units::m3h)}};
    return from == 0 ? Flow{} : flows[from];
}

inline constexpr auto falling_head_flow_record = record<&falling_head_flow>(
    {.name = "falling_head_flow",
     .meaning = "Flow from which a pump's head falls all the way: below it a drooping curve, or one with a dip, is "
                "unstable",
     .also = "stable minimum flow|stable flow|drooping curve|unstable curve|head dip|hunting",
     .inputs = {series("flows", "Q_i", units::m3h, from(0), "flows of the curve's points, from closed valve on", 3,
                       Order::rising),
                series("heads", "H_i", units::metre, above(0), "heads of the curve's points", 3)},
     .results = {output("flow", "Q_st", units::m3h,
                        "listed flow from which every head is less than the one before it; 0 for a curve that falls "
                        "from closed valve on")},
     .equation = "Q_st = least Q_i from which every further H is less than the one before it",
     .source = "definition of a stable and an unstable curve, ISO 17769-1:2012 and EN 12723 (from memory of both); "
               "ANSI/HI 9.6.3-2012 treats drooping curves "
               "and curves with a dip (notice of it read)",
     .cautions =
         {"A result of 0 says that the curve's shape sets no least flow, not that the pump may run there: it is "
          "no permission to run at or near closed valve, and not the least continuous stable flow that the pump "
          "maker states.",
          "Judged by the listed points: a droop or a dip between them is not seen, and a measured point that is "
          "a little high counts as a rise.",
          "No published rule turns suction specific speed into a least flow by formula; above about 213 (1/min, m3/s, "
          "m, per eye; 11 000 "
          "in US units) the stable range is narrower (J. L. Hallam, Hydrocarbon Processing, April 1982; from memory).",
          "Recirculation may set a larger least flow: see suction_recirculation_flow and the pump maker's data."},
     .example = {"[0, 10, 20, 30, 40], [40, 41.5, 41, 38, 33]", "10", "by inspection"}},
    pairs::equal_length<"heads", "flows">());

inline Flow suction_recirculation_flow(Length eye, Length hub, RotationalSpeed speed, Ratio velocity_ratio, Count eyes)
{
    const Velocity rim = std::numbers::pi * eye * speed.revolutions();
    const Area inlet = std::numbers::pi / 4 * (eye * eye - hub * hub);
    return eyes.value * velocity_ratio * rim * inlet;
}

inline constexpr auto suction_recirculation_flow_record = record<&suction_recirculation_flow>(
    {.name = "suction_recirculation_flow",
     .meaning = "Flow below which the impeller's inlet recirculates",
     .also = "min flow|minimum flow|recirculation|surging|rumbling",
     .inputs = {input("eye_diameter", "D_1", units::mm, limits::bore_mm, "diameter of the impeller eye"),
                input("hub_diameter", "h", units::mm, from(0), "hub or shaft diameter in the eye; 0 for an open eye"),
                input("speed", "n", units::rpm, limits::speed_rpm, "rotational speed"),
                input("velocity_ratio", "V_e/U_1", units::number, between(0.01, 0.6),
                      "inlet velocity over rim speed at which recirculation begins, read from Fraser's chart by the "
                      "inlet vane angle"),
                input("eyes", "z", units::count, between(1, 2), "2 for a double-suction impeller", 1)},
     .results = {output("flow", "Q_sr", units::m3h, "flow of the whole impeller at the onset")},
     .equation = "Q_sr = z (V_e/U_1) (pi D_1 n) (pi/4)(D_1^2 - h^2)",
     .source = "W. H. Fraser, Recirculation in centrifugal pumps, ASME winter annual meeting 1981 (from memory of it; "
               "its US constant 93.6 follows "
               "from the geometry)",
     .cautions = {"The onset is no limit by itself: small pumps run well below it, large and high-head ones should not "
                  "(Fraser; from memory).",
                  caution::guide_only},
     .example = {"120, 0, 2950, 0.15", "113.20", "hand calculation"}},
    relation<"hub_diameter", "eye_diameter">([](Length hub, Length eye) { return hub < eye; },
                                             "it must be less than the eye diameter"));

}  // namespace cutwater::formulas
