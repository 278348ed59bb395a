// Values read from a curve that is given by its points.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/once_for_rows.hpp"
#include "catalogue/record.hpp"
#include "formulas/curves/inputs.hpp"
#include "formulas/curves/table.hpp"
#include "formulas/limits.hpp"

#include <cmath>
#include <limits>

namespace cutwater::formulas {

namespace curves {

/// A curve says nothing outside its points: the refusal names the nearer end.
template <class X>
NoValue outside(double x, double first, double last, const char* argument, Unit<X> unit)
{
    NoValue why{.status = CUTWATER_OUT_OF_INTERVAL,
                .argument = argument,
                .numbers = {number_in(Si<X>::make(x), unit), number_in(Si<X>::make(x < first ? first : last), unit)}};
    why.sentence = x < first ? "{0} lies below the curve's first point, {1}: a curve is not extrapolated; give a curve "
                               "that reaches so far down"
                             : "{0} lies beyond the curve's last point, {1}: a curve is not extrapolated; give a curve "
                               "that reaches so far";
    return why;
}

/// A curve made from another one comes back through its units, and its end with a last bit changed: that is still the
/// end.
inline double snapped_to(double end, double x)
{
    return std::abs(x - end) <= 4 * std::numeric_limits<double>::epsilon() * std::abs(end) ? end : x;
}

inline constexpr auto value_read = [](const auto& points, double x) { return value_at(points, x); };
inline constexpr auto slope_read = [](const auto& points, double x) { return slope_of(points, x); };

/// A value or slope of what has points: a series and its partner, or their table.
template <class Result, class X, class Points>
Outcome<Result> read_from(const Points& points, X at, const char* argument, Unit<X> unit, auto what)
{
    const double x = snapped_to(points.last(), snapped_to(points.first(), Si<X>::value(at)));
    if (!(x >= points.first() && x <= points.last())) return outside(x, points.first(), points.last(), argument, unit);
    return Si<Result>::make(what(points, x));
}

/// Where the curve is known to reach, but for a rounding of its end: at a duty that was found on it.
template <class X, class Y>
Y read_within(const Series<X>& xs, const Series<Y>& ys, X at)
{
    const Knots<X, Y> points(xs, ys);
    return Si<Y>::make(value_at(points, snapped_to(points.last(), snapped_to(points.first(), Si<X>::value(at)))));
}

template <class X, class Y>
Outcome<Y> read(const Series<X>& xs, const Series<Y>& ys, X at, const char* argument, Unit<X> unit)
{
    return read_from<Y>(Knots<X, Y>(xs, ys), at, argument, unit, value_read);
}

/// The same for all rows of an array.
template <class Y>
struct ReadAtFlow {
    Table table;
    ReadAtFlow(const Series<Flow>& flows, const Series<Y>& ys) : table(flows, ys) {}
    Outcome<Y> operator()(Flow flow) const { return read_from<Y>(table, flow, "flow", units::m3h, value_read); }
};
template <const auto& What>
struct ReadAtX {
    Table table;
    ReadAtX(const Series<Ratio>& xs, const Series<Ratio>& ys) : table(xs, ys) {}
    Outcome<Ratio> operator()(Ratio x) const { return read_from<Ratio>(table, x, "x", units::number, What); }
};

inline constexpr const char* interpolation_source =
    "F. N. Fritsch and J. Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300-304, slopes inside; C. Moler, Numerical "
    "Computing with MATLAB "
    "(2004), 3.4, slopes at the ends (from memory of both; agrees with SciPy's PchipInterpolator)";
inline constexpr const char* interpolation_equation =
    "cubic between neighbouring points, with slopes that keep their rise and fall; exact at the points";

}  // namespace curves

inline Outcome<Ratio> curve_value(Series<Ratio> xs, Series<Ratio> ys, Ratio x)
{
    return curves::read(xs, ys, x, "x", units::number);
}

inline constexpr auto curve_value_record = record<&curve_value>(
    {.name = "curve_value",
     .meaning = "Value of any curve between its points, in plain numbers",
     .inputs = {series("x_values", "x_i", units::number, any, "the points' abscissas, in any one unit", 2,
                       Order::rising),
                series("y_values", "y_i", units::number, any, "the points' ordinates, in any one unit", 2),
                input("x", "x", units::number, any, "where to read the curve; between the first and the last point")},
     .results = {output("y", "y", units::number, "ordinate of the curve there")},
     .equation = curves::interpolation_equation,
     .source = curves::interpolation_source,
     .example = {"[0, 50, 100], [40, 38, 30], 75", "34.975",
                 "hand calculation: slopes -0.064 at 50 and -0.22 at 100, middle of the piece"}},
    pairs::equal_length<"y_values", "x_values">());

inline Outcome<Ratio> curve_slope(Series<Ratio> xs, Series<Ratio> ys, Ratio at)
{
    return curves::read_from<Ratio>(curves::Knots<Ratio, Ratio>(xs, ys), at, "x", units::number, curves::slope_read);
}

inline constexpr auto curve_slope_record = record<&curve_slope>(
    {.name = "curve_slope",
     .meaning = "Slope of any curve between its points, in plain numbers",
     .inputs = {series("x_values", "x_i", units::number, any, "the points' abscissas, in any one unit", 2,
                       Order::rising),
                series("y_values", "y_i", units::number, any, "the points' ordinates, in any one unit", 2),
                input("x", "x", units::number, any, "where to take the slope; between the first and the last point")},
     .results = {output("slope", "dy/dx", units::number, "rise of the ordinate for one unit of the abscissa")},
     .equation = "dy/dx of the curve that curve_value reads",
     .source = curves::interpolation_source,
     .example = {"[0, 50, 100], [40, 38, 30], 50", "-0.064", "hand calculation: harmonic mean of -0.04 and -0.16"}},
    pairs::equal_length<"y_values", "x_values">());

inline Outcome<Head> curve_head(Series<Flow> flows, Series<Head> heads, Flow flow)
{
    return curves::read(flows, heads, flow, "flow", units::m3h);
}

inline constexpr auto curve_head_record = record<&curve_head>(
    {.name = "curve_head",
     .meaning = "Head of a pump at a flow, from its curve",
     .also = "pump curve|performance curve|H-Q curve",
     .inputs = {curves::flows(), curves::heads(), curves::read_at()},
     .results = {output("head", "H", units::metre, "total head at that flow")},
     .equation = curves::interpolation_equation,
     .source = curves::interpolation_source,
     .example = {"[0, 50, 100], [40, 38, 30], 75", "34.975", "hand calculation, as for curve_value"}},
    pairs::equal_length<"heads", "flows">());

inline Outcome<Power> curve_power(Series<Flow> flows, Series<Power> powers, Flow flow)
{
    return curves::read(flows, powers, flow, "flow", units::m3h);
}

inline constexpr auto curve_power_record = record<&curve_power>(
    {.name = "curve_power",
     .meaning = "Pump power input at a flow, from its curve",
     .also = "BHP curve|power curve|performance curve",
     .inputs = {curves::flows(), series("powers", "P_i", units::kW, from(0), "power inputs of the curve's points", 2),
                curves::read_at()},
     .results = {output("power", "P", units::kW, "pump power input at that flow")},
     .equation = curves::interpolation_equation,
     .source = curves::interpolation_source,
     .example = {"[0, 50, 100], [4, 6, 7], 50", "6", "the curve goes through its points"}},
    pairs::equal_length<"powers", "flows">());

inline Outcome<Fraction> curve_efficiency(Series<Flow> flows, Series<Fraction> efficiencies, Flow flow)
{
    return curves::read(flows, efficiencies, flow, "flow", units::m3h);
}

inline constexpr auto curve_efficiency_record = record<&curve_efficiency>(
    {.name = "curve_efficiency",
     .meaning = "Pump efficiency at a flow, from its curve",
     .also = "efficiency curve|performance curve",
     .inputs = {curves::flows(),
                series("efficiencies", "eta_i", units::fraction, between(0, 1), "efficiencies of the curve's points",
                       2),
                curves::read_at()},
     .results = {output("efficiency", "eta", units::fraction, "pump efficiency at that flow")},
     .equation = curves::interpolation_equation,
     .source = curves::interpolation_source,
     .example = {"[0, 50, 100], [0, 0.6, 0.7], 50", "0.6", "the curve goes through its points"}},
    pairs::equal_length<"efficiencies", "flows">());

inline Outcome<Head> curve_npsh3(Series<Flow> flows, Series<Head> npsh3_values, Flow flow)
{
    return curves::read(flows, npsh3_values, flow, "flow", units::m3h);
}

inline constexpr auto curve_npsh3_record = record<&curve_npsh3>(
    {.name = "curve_npsh3",
     .meaning = "NPSH3 of a pump at a flow, from its curve",
     .also = "NPSHR|NPSH required|NPSH curve|suction safe|cavitation",
     .inputs = {curves::flows(),
                series("npsh3_values", "NPSH3_i", units::metre, limits::head_from_0_m, "NPSH3 of the curve's points",
                       2),
                curves::read_at()},
     .results = {output("npsh3", "NPSH3", units::metre, "net positive suction head at 3 % head drop")},
     .equation = curves::interpolation_equation,
     .source = curves::interpolation_source,
     .cautions = {caution::npsh_margin},
     .example = {"[20, 50, 100], [2, 2.5, 5], 50", "2.5", "the curve goes through its points"}},
    pairs::equal_length<"npsh3_values", "flows">());

}  // namespace cutwater::formulas

namespace cutwater {

template <>
struct OnceForRows<&formulas::curve_value> : formulas::curves::ReadAtX<formulas::curves::value_read> {
    using ReadAtX::ReadAtX;
};
template <>
struct OnceForRows<&formulas::curve_slope> : formulas::curves::ReadAtX<formulas::curves::slope_read> {
    using ReadAtX::ReadAtX;
};
template <>
struct OnceForRows<&formulas::curve_head> : formulas::curves::ReadAtFlow<Head> {
    using ReadAtFlow::ReadAtFlow;
};
template <>
struct OnceForRows<&formulas::curve_power> : formulas::curves::ReadAtFlow<Power> {
    using ReadAtFlow::ReadAtFlow;
};
template <>
struct OnceForRows<&formulas::curve_efficiency> : formulas::curves::ReadAtFlow<Fraction> {
    using ReadAtFlow::ReadAtFlow;
};
template <>
struct OnceForRows<&formulas::curve_npsh3> : formulas::curves::ReadAtFlow<Head> {
    using ReadAtFlow::ReadAtFlow;
};

}  // namespace cutwater
