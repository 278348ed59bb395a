// Pipe loads on a pump's branches held against what the branches may bear.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/lookup.hpp"
#include "catalogue/record.hpp"
#include "formulas/limits.hpp"
#include "formulas/pairs.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <iterator>
#include <tuple>

namespace cutwater::formulas {

enum class NozzlePosition { top, side, end };
enum class NozzleRule { iso_5199, iso_13709 };
enum class NozzleVerdict { within, open, exceeded };

}  // namespace cutwater::formulas

template <>
inline constexpr cutwater::Words<3> cutwater::words_of<cutwater::formulas::NozzlePosition>{"top", "side", "end"};
template <>
inline constexpr cutwater::Words<2> cutwater::words_of<cutwater::formulas::NozzleRule>{"ISO 5199", "ISO 13709"};
template <>
inline constexpr cutwater::Words<3> cutwater::words_of<cutwater::formulas::NozzleVerdict>{"within", "open", "exceeded"};

namespace cutwater::formulas {

namespace nozzle {

// Newtons and newton metres of a top nozzle; the greatest force of a size acts along the nozzle's axis, the middle one
// along the shaft or across.
struct Size {
    double dn;
    double along, middle, least;
    double moment_x, moment_y, moment_z;
};
inline constexpr Size sizes[] = {
    {50, 890, 710, 580, 460, 230, 350},         {80, 1330, 1070, 890, 950, 470, 720},
    {100, 1780, 1420, 1160, 1330, 680, 1000},   {150, 3110, 2490, 2050, 2300, 1180, 1760},
    {200, 4890, 3780, 3110, 3530, 1760, 2580},  {250, 6670, 5340, 4450, 5020, 2440, 3800},
    {300, 8000, 6670, 5340, 6100, 2980, 4610},  {350, 8900, 7120, 5780, 6370, 3120, 4750},
    {400, 10230, 8450, 6670, 7320, 3660, 5420},
};

/// The table with a column of sizes, and the lines of loads one after another: a row of an array takes one by its
/// index.
struct Columns {
    std::array<double, std::size(sizes)> dn;
    std::array<double, 6 * std::size(sizes)> loads;  // along, middle, least, then the moments
};
inline constexpr Columns columns = [] {
    Columns made{};
    for (std::size_t i = 0; i < std::size(sizes); ++i) {
        const Size& s = sizes[i];
        const double loads[] = {s.along, s.middle, s.least, s.moment_x, s.moment_y, s.moment_z};
        made.dn[i] = s.dn;
        std::copy(std::begin(loads), std::end(loads), &made.loads[6 * i]);
    }
    return made;
}();

inline bool is_size(Count dn) { return is_one_of<std::size(sizes)>(columns.dn.data(), dn.value); }

/// Which of a line's forces acts along x, y and z.
inline constexpr std::size_t forces_by_position[3][3] = {{1, 2, 0}, {1, 0, 2}, {0, 1, 2}};  // top, side, end

template <class Q>
struct Sums {
    Ratio largest;     // of the components' ratios
    Ratio components;  // sum of magnitudes over sum of allowables
    Ratio resultants;  // the same of each branch's resultant
};

template <class Q>
Sums<Q> sums(const Series<Q>& applied, const Series<Q>& allowed)
{
    Sums<Q> s{};
    double sum = 0, sum_allowed = 0, resultants = 0, resultants_allowed = 0;
    for (std::size_t i = 0; i < applied.size(); i += 3) {
        double square = 0, square_allowed = 0;
        for (std::size_t k = i; k < i + 3; ++k) {
            const double a = std::abs(Si<Q>::value(applied[k])), m = Si<Q>::value(allowed[k]);
            s.largest = std::max(s.largest, Ratio(a / m));
            sum += a;
            sum_allowed += m;
            square += a * a;
            square_allowed += m * m;
        }
        resultants += std::sqrt(square);
        resultants_allowed += std::sqrt(square_allowed);
    }
    s.components = sum / sum_allowed;
    s.resultants = resultants / resultants_allowed;
    return s;
}

/// Of one branch, which begins at i.
template <class Q>
Ratio resultant_share(const Series<Q>& applied, const Series<Q>& allowed, std::size_t i)
{
    double square = 0, square_allowed = 0;
    for (std::size_t k = i; k < i + 3; ++k) {
        const double a = Si<Q>::value(applied[k]), m = Si<Q>::value(allowed[k]);
        square += a * a;
        square_allowed += m * m;
    }
    return Ratio(std::sqrt(square / square_allowed));
}

/// F.1.2.2 is asked of each flange, its force with its own moment.
inline Ratio worst_branch(const Series<Force>& forces, const Series<Force>& allowed_forces,
                          const Series<Torque>& moments, const Series<Torque>& allowed_moments)
{
    Ratio worst{};
    for (std::size_t i = 0; i < forces.size(); i += 3)
        worst = std::max(
            worst, (resultant_share(forces, allowed_forces, i) + resultant_share(moments, allowed_moments, i)) / 1.5);
    return worst;
}

inline constexpr const char* three_each =
    "give three components of each branch, one branch after another: 3, 6, 9 values";

template <class Q>
bool in_threes(Series<Q> s)
{
    return s.size() % 3 == 0;
}

constexpr double most_component(NozzleRule rule) { return rule == NozzleRule::iso_5199 ? 1.4 : 2.0; }

/// Of ISO 5199: components or resultants, the stricter.
inline Ratio squares(const Sums<Force>& f, const Sums<Torque>& m)
{
    const Ratio by_components = f.components * f.components + m.components * m.components;
    const Ratio by_resultants = f.resultants * f.resultants + m.resultants * m.resultants;
    return std::max(by_components, by_resultants);
}

}  // namespace nozzle

inline std::tuple<Force, Force, Force, Torque, Torque, Torque> nozzle_load_limits(Count size, NozzlePosition position)
{
    const std::size_t line = 6 * passed<std::size(nozzle::sizes) - 1>(nozzle::columns.dn.data(), size.value);
    const auto& axis = nozzle::forces_by_position[static_cast<std::size_t>(position)];
    const auto force = [&](std::size_t at) { return Force::from_value(nozzle::columns.loads[line + axis[at]]); };
    const auto moment = [&](std::size_t at) { return Torque::from_value(nozzle::columns.loads[line + 3 + at]); };
    return {force(0), force(1), force(2), moment(0), moment(1), moment(2)};
}

inline constexpr auto nozzle_load_limits_record = record<&nozzle_load_limits>(
    {.name = "nozzle_load_limits",
     .meaning = "Forces and moments that each branch of an ISO 13709 pump bears, in steel",
     .also = "allowable nozzle loads|API 610 nozzle loads|API 610 table 5|table 4|flange loads|piping loads",
     .inputs = {input("nominal_size", "DN", units::count, between(50, 400),
                      "50, 80, 100, 150, 200, 250, 300, 350 or 400"),
                choice<NozzlePosition>("position", "position",
                                       "where the branch points: top, side, or end along the shaft")},
     .results = {output("force_x", "F_X", units::newton, "along the shaft"),
                 output("force_y", "F_Y", units::newton, "across the shaft, horizontal"),
                 output("force_z", "F_Z", units::newton, "vertical"),
                 output("moment_x", "M_X", units::Nm, "about the shaft's direction"),
                 output("moment_y", "M_Y", units::Nm, "about the horizontal across it"),
                 output("moment_z", "M_Z", units::Nm, "about the vertical")},
     .equation = "table of the standard by size and position; either sign",
     .source = "ISO 13709:2003, table 4 (= API 610 9th and 10th edition; table 5 of the 2009 edition from memory): "
               "forces and US moments as printed in "
               "W. E. Forsthoffer, Best Practice Handbook for Rotating Machinery, 2011, tables 2.20.1 and 2.20.2 "
               "(read); SI moments from memory, agree with the US ones",
     .cautions =
         {"For steel and alloy steel pumps built to that standard. ISO 5199 and ASME B73.1 pumps bear less, "
          "and other materials less again: ask the pump maker.",
          "The axes are those of horizontal pumps. Vertical in-line pumps (twice the values of a side nozzle) and "
          "vertical suspended ones differ (from memory).",
          "A pump is no pipe support: check alignment with the pipes bolted and unbolted, cold and hot.",
          caution::guide_only},
     .example = {R"(100, "end")", "1780, 1420, 1160, 1330, 680, 1000",
                 "ISO 13709:2003, table 4, as printed by Forsthoffer (read)"}},
    relation<"nominal_size">([](Count dn) { return nozzle::is_size(dn); },
                             "the table has the sizes 50, 80, 100, 150, 200, 250, 300, 350 and 400"));

inline std::tuple<NozzleVerdict, Ratio, Ratio, Ratio> nozzle_load_check(NozzleRule rule, Series<Force> forces,
                                                                        Series<Force> allowed_forces,
                                                                        Series<Torque> moments,
                                                                        Series<Torque> allowed_moments)
{
    const nozzle::Sums<Force> f = nozzle::sums(forces, allowed_forces);
    const nozzle::Sums<Torque> m = nozzle::sums(moments, allowed_moments);
    const bool iso_13709 = rule == NozzleRule::iso_13709;
    const Ratio combined = iso_13709 ? nozzle::worst_branch(forces, allowed_forces, moments, allowed_moments)
                                     : nozzle::squares(f, m);
    constexpr double rounding = 1 + 1e-9;  // loads equal to the limits are within
    const Ratio largest = std::max(f.largest, m.largest);
    const bool kept = largest <= nozzle::most_component(rule) * rounding && combined <= 2 * rounding;
    const bool in_table = !iso_13709 || largest <= rounding;
    const NozzleVerdict verdict = !kept      ? NozzleVerdict::exceeded
                                  : in_table ? NozzleVerdict::within
                                             : NozzleVerdict::open;
    return {verdict, combined, f.largest, m.largest};
}

inline constexpr auto nozzle_load_check_record = record<&nozzle_load_check>(
    {.name = "nozzle_load_check",
     .meaning = "Pipe forces and moments on a pump's branches against the allowable ones, by the combined rule",
     .also = "nozzle load ratio|nozzle load check|branch loads|flange loads|piping loads|Annex F|combined nozzle loads",
     .inputs = {choice<NozzleRule>("rule", "rule",
                                   "ISO 5199: squares of both sums; ISO 13709: resultants of each branch, up to twice "
                                   "the table"),
                series("forces", "F_i", units::newton, any,
                       "applied forces: x, y, z of the suction branch, then of the discharge branch", 3),
                series("allowed_forces", "F_max,i", units::newton, above(0),
                       "allowable forces in the same order, as the pump maker or the standard states", 3),
                series("moments", "M_i", units::Nm, any, "applied moments in the same order", 3),
                series("allowed_moments", "M_max,i", units::Nm, above(0), "allowable moments in the same order", 3)},
     .results = {output_word<NozzleVerdict>(
                     "verdict", "verdict",
                     "within: the rule holds; exceeded: it does not; open: ISO 13709 F.1.2.1 and "
                     "F.1.2.2 hold, F.1.2.3 (all loads at the pump's centre) is still to be "
                     "shown"),
                 output("combined", "U", units::number, "combined load; may be 2"),
                 output("largest_force", "max F/F_max", units::number,
                        "largest component's share; may be 1.4 (ISO 5199) or 2 (ISO 13709)"),
                 output("largest_moment", "max M/M_max", units::number, "the same of the moments")},
     .equation = "ISO 5199: U = (sum|F|/sum F_max)^2 + (sum|M|/sum M_max)^2, of components or of resultants, the "
                 "greater, all branches together; "
                 "ISO 13709: U = (F_R/F_R,max + M_R/M_R,max)/1.5 of each branch, the greatest",
     .source = "ISO 5199:2002 Annex B (place of it read, rule from memory; whether it sums components or resultants "
               "could not be read, the stricter is taken); "
               "ISO 13709:2009 Annex F, F.1.2.1 and F.1.2.2 (from memory of it)",
     .cautions = {"Above its table ISO 13709 also asks for all loads moved to the pump's centre (F.1.2.3), and for a "
                  "baseplate that was tested: this is not that check.",
                  "A load within the rule still misaligns: the shaft's displacement at the coupling decides.",
                  caution::guide_only},
     .example = {R"("ISO 5199", [1000, 500, 800], [1350, 1500, 1650], [600, 500, 400], [900, 1050, 1300])",
                 R"("within", 0.49189, 0.7407, 0.6667)",
                 "hand calculation: by resultants (1374.77/2606.72)^2 + (877.50/1898.03)^2; by components it is "
                 "0.4743"}},
    pairs::equal_length<"allowed_forces", "forces">(), pairs::equal_length<"moments", "forces">(),
    pairs::equal_length<"allowed_moments", "forces">(),
    relation<"forces">([](Series<Force> s) { return nozzle::in_threes(s); }, nozzle::three_each));

}  // namespace cutwater::formulas
