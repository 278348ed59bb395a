// Functions that are in no catalogue: shapes that solving must tell apart, and the worked examples of JCGM 100 and 101.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/erased.hpp"
#include "catalogue/record.hpp"

#include <cmath>

namespace cutwater::test {

using Triple = std::tuple<Ratio, Ratio, Ratio>;

inline Ratio parabola(Ratio x) { return (x - Ratio(3)) * (x - Ratio(5)); }
inline Ratio reciprocal(Ratio x) { return Ratio(1) / x; }
inline Ratio staircase(Ratio x) { return Ratio(std::floor(x.value())); }
inline Ratio shelf(Ratio x) { return Ratio(std::max(0.0, x.value() - 5)); }
inline Ratio square_root(Ratio x) { return Ratio(std::sqrt(x.value())); }
inline Ratio resistance_curve(Ratio head, Ratio k, Ratio flow) { return head + k * flow * flow; }
inline Ratio of_count(Ratio each, Count number) { return each * number.value; }
inline Ratio power_of_one_plus(Ratio x) { return Ratio(std::pow(1 + x.value(), 10)); }
inline Ratio wave(Ratio x) { return Ratio(std::sin(x.value())); }
inline Ratio square_in_steps(Ratio x) { return Ratio(std::floor(x.value() * x.value())); }
inline Ratio halved(Count number) { return Ratio(std::floor(number.value / 2)); }
inline Ratio logarithm(Ratio x) { return Ratio(std::log(x.value())); }
/// Rises all the way but for a peak of a hundredth's width.
inline Ratio narrow_peak(Ratio x) { return 0.01 * x + Ratio(std::exp(-std::pow((x.value() - 3.7234) / 0.01, 2))); }
inline Ratio rating(Ratio x, Ratio margin) { return Ratio(std::ceil(x.value() * margin.value())); }
inline Outcome<Ratio> with_a_hole(Ratio x)
{
    if (x > Ratio(2) && x < Ratio(4)) return NoValue{CUTWATER_NO_ANSWER, "x", "nothing is known between 2 and 4", {}};
    return x * x;
}

inline Ratio additive(Ratio a, Ratio b, Ratio c, Ratio d) { return a + b + c + d; }
inline Ratio stepped_sum(Ratio a, Ratio b) { return b + Ratio(a.value() > 1.9 ? 0.2 : 0.0); }
/// A corner where the sum of both is 2.3, which neither alone reaches within two.
inline Ratio corner_of_sum(Ratio a, Ratio b) { return a + b + Ratio(2 * std::max(0.0, a.value() + b.value() - 2.3)); }
inline Ratio mass_calibration(Ratio reference, Ratio correction, Ratio air, Ratio density, Ratio reference_density)
{
    return (reference + correction) *
               (Ratio(1) + (air - Ratio(1.2)) * (Ratio(1) / density - Ratio(1) / reference_density)) -
           Ratio(100000);
}
inline Ratio microwave(Ratio x1, Ratio x2) { return x1 * x1 + x2 * x2; }
inline Length gauge_block(Length standard, Length difference, ThermalExpansion expansion,
                          TemperatureDifference deviation, ThermalExpansion expansion_difference,
                          TemperatureDifference temperature_difference)
{
    return standard + difference - standard * (expansion_difference * deviation + expansion * temperature_difference);
}
inline Triple impedance(Ratio v, Ratio i, Ratio phi)
{
    const Ratio z = v / i;
    return {z * std::cos(phi.value()), z * std::sin(phi.value()), z};
}

template <class Made>
constexpr Input<Ratio> plain(Made name, Interval where = any)
{
    return input(name, name, units::number, where, "a number");
}
constexpr Output<Ratio> answer(const char* name = "y") { return output(name, name, units::number, "the answer"); }

#define CUTWATER_TEST_RECORD(formula_name, ...)                                                                        \
    inline constexpr Record<&formula_name> formula_name##_record{.name = #formula_name,                                \
                                                                 .meaning = "a test",                                  \
                                                                 .inputs = {__VA_ARGS__},                              \
                                                                 .results = {answer()},                                \
                                                                 .equation = "y = f(x)",                               \
                                                                 .source = "none",                                     \
                                                                 .example = {}};
CUTWATER_TEST_RECORD(parabola, plain("x"))
CUTWATER_TEST_RECORD(reciprocal, plain("x"))
CUTWATER_TEST_RECORD(staircase, plain("x", between(0, 10)))
CUTWATER_TEST_RECORD(shelf, plain("x", from(0)))
CUTWATER_TEST_RECORD(square_root, plain("x", from(0)))
CUTWATER_TEST_RECORD(resistance_curve, plain("head"), plain("k", from(0)), plain("flow", from(0)))
CUTWATER_TEST_RECORD(of_count, plain("each"), input("number", "n", units::count, between(1, 50), "how many"))
CUTWATER_TEST_RECORD(power_of_one_plus, plain("x", between(-0.2, 1)))
CUTWATER_TEST_RECORD(wave, plain("x", between(0, 30)))
CUTWATER_TEST_RECORD(square_in_steps, plain("x", between(-4, 4)))
CUTWATER_TEST_RECORD(halved, input("number", "n", units::count, between(1, 50), "how many"))
CUTWATER_TEST_RECORD(logarithm, plain("x", above(0)))
CUTWATER_TEST_RECORD(narrow_peak, plain("x", between(0, 10)))
CUTWATER_TEST_RECORD(rating, plain("x", from(0)), plain("margin", from(0)))
CUTWATER_TEST_RECORD(with_a_hole, plain("x", from(0)))
CUTWATER_TEST_RECORD(additive, plain("a"), plain("b"), plain("c"), plain("d"))
CUTWATER_TEST_RECORD(stepped_sum, plain("a"), plain("b"))
CUTWATER_TEST_RECORD(corner_of_sum, plain("a"), plain("b"))
CUTWATER_TEST_RECORD(mass_calibration, plain("reference"), plain("correction"), plain("air"),
                     plain("density", above(0)), plain("reference_density", above(0)))
CUTWATER_TEST_RECORD(microwave, plain("x1"), plain("x2"))
#undef CUTWATER_TEST_RECORD

inline constexpr Record<&gauge_block> gauge_block_record{
    .name = "gauge_block",
    .meaning = "a test",
    .inputs = {input("standard", "l_S", units::mm, any, "length of the standard"),
               input("difference", "d", units::mm, any, "measured difference"),
               input("expansion", "alpha_S", unit<ThermalExpansion>("1/K"), any, "expansion of the standard"),
               input("deviation", "theta", unit<TemperatureDifference>("K"), any, "from 20 degC"),
               input("expansion_difference", "d_alpha", unit<ThermalExpansion>("1/K"), any, "of the two blocks"),
               input("temperature_difference", "d_theta", unit<TemperatureDifference>("K"), any, "of the two blocks")},
    .results = {output("length", "l", units::mm, "of the block")},
    .equation = "l = l_S + d - l_S (d_alpha theta + alpha_S d_theta)",
    .source = "JCGM 100:2008, H.1",
    .example = {}};
inline constexpr Record<&impedance> impedance_record{.name = "impedance",
                                                     .meaning = "a test",
                                                     .inputs = {plain("v"), plain("i", above(0)), plain("phi")},
                                                     .results = {answer("r"), answer("x"), answer("z")},
                                                     .equation = "r = v/i cos(phi)",
                                                     .source = "JCGM 100:2008, H.2",
                                                     .example = {}};

inline cutwater_value number(double x) { return {CUTWATER_NUMBER, x, nullptr, nullptr, 0, 1}; }
inline cutwater_value text(const char* t) { return {CUTWATER_TEXT, 0, t, nullptr, 0, 1}; }

}  // namespace cutwater::test
