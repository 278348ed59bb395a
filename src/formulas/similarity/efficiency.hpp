// Efficiency that law asks of a pump of a given shape, and that which good design attains.
#pragma once

#include "elementary/elementary.hpp"
#include "formulas/similarity/specific_speed.hpp"

#include <tuple>

namespace cutwater::formulas {

enum class WaterPump { esob, escc, escci, ms_v, mss };

}  // namespace cutwater::formulas

template <>
inline constexpr cutwater::Words<5> cutwater::words_of<cutwater::formulas::WaterPump>{"ESOB", "ESCC", "ESCCi", "MS-V",
                                                                                      "MSS"};

namespace cutwater::formulas {

namespace eu_547 {

struct Constants {
    double at_1450[2];  // for an index of 0.1 and of 0.4; 0 where the regulation has none
    double at_2900[2];
};

inline constexpr Constants constants[] = {
    {{132.58, 128.07}, {135.60, 130.27}},  // ESOB
    {{132.74, 128.46}, {135.93, 130.77}},  // ESCC
    {{136.67, 132.30}, {139.45, 133.69}},  // ESCCi
    {{0, 0}, {138.19, 133.95}},            // MS-V
    {{0, 0}, {134.31, 128.79}},            // MSS
};

inline bool near(double x, double nominal) { return std::abs(x - nominal) <= 1e-9 * nominal; }
inline bool fast(RotationalSpeed speed) { return near(units::rpm.in(speed), 2900); }
inline bool end_suction(WaterPump type)
{
    return (type == WaterPump::esob) | (type == WaterPump::escc) | (type == WaterPump::escci);
}

/// The specific speed has m3/s in it, the logarithm of the flow m3/h.
inline Fraction best_efficiency(Flow flow, Head head, RotationalSpeed speed, WaterPump type, Ratio index, Count stages)
{
    const double x = elementary::log(shape::metric(speed, flow, head, {1}, stages));
    const double y = elementary::log(units::m3h.in(flow));
    const Constants& of_type = constants[static_cast<int>(type)];
    const auto by_index = [&](const double(&two)[2]) {
        return elementary::select(index.value() > 0.25, two[1], two[0]);
    };
    const double c = elementary::select(fast(speed), by_index(of_type.at_2900), by_index(of_type.at_1450));
    return {(88.59 * x + 13.46 * y - 11.48 * x * x - 0.85 * y * y - 0.38 * x * y - c) / 100};
}

inline constexpr auto speed_is_nominal = relation<"nominal_speed">(
    [](RotationalSpeed n) { return near(units::rpm.in(n), 1450) | fast(n); },
    "the regulation knows the nominal speeds 1450 and 2900 1/min only");
inline constexpr auto speed_suits_type = relation<"nominal_speed", "pump_type">(
    [](RotationalSpeed n, WaterPump type) { return end_suction(type) | fast(n); },
    "MS-V and MSS pumps are judged at 2900 1/min only");
inline constexpr auto index_is_listed = relation<"minimum_efficiency_index">(
    [](Ratio index) { return near(index.value(), 0.1) | near(index.value(), 0.4); },
    "the regulation gives constants for an index of 0.1 and 0.4 only");
inline constexpr auto stages_suit_type = relation<"stages", "pump_type">(
    [](Count z, WaterPump type) { return !end_suction(type) | (z.value == 1); },
    "end suction pumps have one stage in the regulation");
inline constexpr auto flow_in_scope = relation<"flow", "pump_type">(
    [](Flow q, WaterPump type) {
        const double m3h = units::m3h.in(q);
        return (!end_suction(type) | (m3h >= 6 * (1 - 1e-12))) &
               ((type != WaterPump::ms_v) | (m3h <= 100 * (1 + 1e-12)));
    },
    "the regulation covers end suction pumps from 6 m3/h and MS-V pumps up to 100 m3/h");
inline constexpr auto head_in_scope = relation<"head", "nominal_speed", "pump_type">(
    [](Head h, RotationalSpeed n, WaterPump type) {
        return !end_suction(type) | (units::metre.in(h) <= elementary::select(fast(n), 140, 90));
    },
    "the regulation covers end suction pumps up to 90 m at 1450 1/min and 140 m at 2900 1/min");
inline constexpr auto shape_in_scope = relation<"head", "flow", "nominal_speed", "pump_type", "stages">(
    [](Head h, Flow q, RotationalSpeed n, WaterPump type, Count z) {
        const double shape_number = shape::metric(n, q, h, {1}, z);
        return (!end_suction(type)) | ((shape_number >= 6) & (shape_number <= 80));
    },
    "the regulation covers end suction pumps with a specific speed of 6 to 80 (1/min, m3/s, m)");
inline constexpr auto result_is_sensible =
    relation<"head", "flow", "nominal_speed", "pump_type", "minimum_efficiency_index", "stages">(
        [](Head h, Flow q, RotationalSpeed n, WaterPump type, Ratio index, Count z) {
            const double eta = best_efficiency(q, h, n, type, index, z).value;
            return (eta > 0) & (eta < 1);
        },
        "the regulation's formula gives no efficiency between 0 and 1 for this flow and head");

}  // namespace eu_547

inline std::tuple<Fraction, Fraction, Fraction> minimum_efficiency_eu(Flow flow, Head head, RotationalSpeed speed,
                                                                      WaterPump type, Ratio index, Count stages,
                                                                      Steps steps)
{
    const Fraction best = eu_547::best_efficiency(flow, head, speed, type, index, stages);
    steps("n_s", "n sqrt(Q)/(H/z)^(3/4)", SpecificSpeed{shape::metric(speed, flow, head, {1}, stages)},
          units::specific_speed);
    return {Fraction{best.value}, {0.947 * best.value}, {0.985 * best.value}};
}

inline constexpr auto minimum_efficiency_eu_record = record<&minimum_efficiency_eu>(
    {.name = "minimum_efficiency_eu",
     .meaning = "Least hydraulic efficiency of a water pump under Regulation (EU) No 547/2012",
     .also = "MEI|minimum efficiency index|ecodesign|547/2012",
     .inputs = {input("flow", "Q", units::m3h, above(0),
                      "flow at best efficiency, full diameter, at the nominal speed"),
                input("head", "H", units::metre, above(0), "head of all stages at that flow"),
                input("nominal_speed", "n", units::rpm, above(0),
                      "1450 or 2900 1/min, to which the performance is converted"),
                choice<WaterPump>("pump_type", "type",
                                  "ESOB, ESCC, ESCCi: end suction with own bearings, close coupled, close coupled "
                                  "in-line; MS-V: vertical multistage; MSS: "
                                  "submersible multistage"),
                input("minimum_efficiency_index", "MEI", units::number, between(0.1, 0.7),
                      "0.1 (in force from 2013) or 0.4 (from 2015)", 0.4),
                input("stages", "z", units::count, between(1, 100), "stages that share the head; 1 for end suction",
                      1)},
     .results = {output("best_efficiency_limit", "eta_BEP", units::fraction,
                        "least efficiency at best-efficiency flow"),
                 output("part_load_limit", "eta_PL", units::fraction, "least efficiency at 75 % of that flow"),
                 output("overload_limit", "eta_OL", units::fraction, "least efficiency at 110 % of that flow")},
     .equation = "eta_BEP = (88.59 x + 13.46 y - 11.48 x^2 - 0.85 y^2 - 0.38 x y - C)/100; x = ln(n_s), n_s = n sqrt(Q "
                 "m3/s)/(H/z)^(3/4); "
                 "y = ln(Q m3/h); eta_PL = 0.947 eta_BEP; eta_OL = 0.985 eta_BEP",
     .source =
         "Commission Regulation (EU) No 547/2012: constants C of Annex III and scope of Article 2 (excerpt read); "
         "coefficients of the formula, 0.947 and 0.985 (from memory of it; the coefficients agree with those of "
         "10 CFR 431, subpart Y, appendix A, read in 80 FR 22939, turned into US units, the flow taken to 60 Hz "
         "by a factor of 1.2)",
     .cautions = {"No legal finding. Further limits of scope: 16 bar and 150 kW for end suction, 25 bar for MS-V, 4 "
                  "and 6 in and 90 degC for MSS, clean water of -10 to 120 degC; check the "
                  "regulation in force and its exceptions."},
     .sound_within_intervals = true,
     .example = {R"(100, 32, 1450, "ESOB", 0.4, 1)", "0.70939, 0.67179, 0.69875",
                 "hand calculation: n_s = 17.96, C = 128.07"}},
    eu_547::speed_is_nominal, eu_547::speed_suits_type, eu_547::index_is_listed, eu_547::stages_suit_type,
    eu_547::flow_in_scope, eu_547::head_in_scope, eu_547::shape_in_scope, eu_547::result_is_sensible);

namespace attainable {

inline constexpr double reference_flow_m3s = 1;

inline double shape_of(Flow flow, Head head, RotationalSpeed speed)
{
    return shape::metric(speed, flow, head, {1}, {1});
}

}  // namespace attainable

inline Fraction attainable_efficiency(Flow flow, Head head, RotationalSpeed speed, Steps steps)
{
    // An empirical correlation: m3/s, and the specific speed in 1/min, m3/s, m.
    const double size = attainable::reference_flow_m3s / units::m3s.in(flow);
    const double shape_number = attainable::shape_of(flow, head, speed);
    const double large = size >= 1 ? 1 : 0.5;
    const double m = 0.1 * large * elementary::positive_pow(size, 0.15) *
                     elementary::positive_pow(45 / shape_number, 0.06);
    const double away = 0.35 - elementary::log10(shape_number / 23);
    steps("n_s", "n sqrt(Q)/H^(3/4)", SpecificSpeed{shape_number}, units::specific_speed);
    steps("m", "0.1 a (1/Q)^0.15 (45/n_s)^0.06", Ratio(m), units::number);
    return {1 - 0.095 * elementary::positive_pow(size, m) - 0.3 * away * away * elementary::positive_pow(size, 0.05)};
}

inline constexpr auto attainable_efficiency_record = record<&attainable_efficiency>(
    {.name = "attainable_efficiency",
     .meaning = "Best efficiency that a good single-stage radial pump of that duty attains: a guide",
     .also = "expected efficiency|typical efficiency|what efficiency to expect",
     .inputs = {input("flow", "Q", units::m3h, between(18, 36000), "flow at best efficiency"),
                input("head", "H", units::metre, above(0), "head at best efficiency, of one stage"),
                input("speed", "n", units::rpm, limits::speed_rpm, "speed of rotation")},
     .results = {output("efficiency", "eta", units::fraction, "efficiency at best efficiency")},
     .equation = "eta = 1 - 0.095 (1/Q)^m - 0.3 (0.35 - log10(n_s/23))^2 (1/Q)^0.05; m = 0.1 a (1/Q)^0.15 "
                 "(45/n_s)^0.06; Q in m3/s; "
                 "a = 1 up to 1 m3/s, 0.5 above",
     .source = "J. F. Guelich, Centrifugal Pumps, 3rd edition, Springer 2014, table 3.8, single-stage radial pumps "
               "(from memory of it); "
               "limits of flow and specific speed: set here",
     .scatter = {plus_minus_in_unit("efficiency", 0.05)},
     .cautions = {"A guide to what good pumps attain: single pumps scatter by 3 to 5 points, more below a specific "
                  "speed of 15.",
                  "Below 18 m3/h it is not used: usual_efficiency reaches down to 11.4 m3/h, what law asks at least "
                  "(minimum_efficiency_eu) to 6 m3/h; below that only a test tells.",
                  caution::guide_only},
     .sound_anywhere = true,
     .example = {"100, 50, 2900", "0.78818", "hand calculation: n_s = 25.705, m = 0.17703"}},
    relation<"head", "flow", "speed">(
        [](Head head, Flow flow, RotationalSpeed speed) {
            const double shape_number = attainable::shape_of(flow, head, speed);
            return (shape_number >= 7) & (shape_number <= 100);
        },
        "the correlation is used here for specific speeds of 7 to 100 (1/min, m3/s, m) only"));

inline Fraction usual_efficiency(Flow flow)
{
    const double y = elementary::log(units::us_gpm.in(flow));  // an empirical fit in US gal/min
    return {-0.316 + 0.24015 * y - 0.01199 * y * y};
}

inline constexpr Record<&usual_efficiency> usual_efficiency_record{
    .name = "usual_efficiency",
    .meaning = "Efficiency to be expected of a usual centrifugal pump by its flow alone: an estimate for costs",
    .also = "expected efficiency|typical pump efficiency",
    .inputs = {input("flow", "Q", units::m3h, between(11.4, 1135), "flow at the duty; 50 to 5000 US gal/min")},
    .results = {output("efficiency", "eta", units::fraction, "pump efficiency to be expected")},
    .equation = "eta = -0.316 + 0.24015 ln Q - 0.01199 (ln Q)^2, Q in US gal/min",
    .source = "A. B. Corripio, K. S. Chrien and L. B. Evans, Chemical Engineering 89 (1982), as in W. D. Seider et "
              "al., Product and Process Design Principles (from memory of both; read and run in the open-source "
              "library fluids 1.0.22)",
    .cautions = {"An estimate for budgets, made from pumps of about 1980: head, speed and shape do not enter. "
                 "attainable_efficiency takes them, from 18 m3/h on.",
                 caution::guide_only},
    .sound_anywhere = true,
    .example = {"104.71", "0.7059", "hand calculation: 461 US gal/min, ln 461 = 6.1334"}};

}  // namespace cutwater::formulas
