// Measured values: translation to the guaranteed speed, and their uncertainty.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "elementary/elementary.hpp"
#include "formulas/limits.hpp"

#include <boost/math/distributions/students_t.hpp>

#include <cmath>

namespace cutwater::formulas {

enum class UncertaintyGrade { one, two, three };
enum class MeasuredQuantity {
    flow,
    speed,
    torque,
    head,
    driver_power,
    power_from_torque,
    power_from_driver,
    efficiency_from_torque,
    efficiency_from_driver
};

}  // namespace cutwater::formulas

namespace cutwater {

template <>
inline constexpr Words<3> words_of<formulas::UncertaintyGrade>{"1", "2", "3"};
template <>
inline constexpr Words<9> words_of<formulas::MeasuredQuantity>{"flow",
                                                               "speed",
                                                               "torque",
                                                               "head",
                                                               "driver power",
                                                               "power from torque and speed",
                                                               "power from driver power",
                                                               "efficiency from torque and speed",
                                                               "efficiency from driver power"};

}  // namespace cutwater

namespace cutwater::formulas {

namespace acceptance {

/// The ends are permitted, and conversion and division must not round a test at exactly 80 or 120 % out.
inline bool speed_within(RotationalSpeed test, RotationalSpeed rated, double low)
{
    const double ratio = Ratio(test / rated).value();
    return (ratio >= low * (1 - 1e-12)) & (ratio <= 1.2 * (1 + 1e-12));
}

inline constexpr const char* uncertainty_source = "ISO 9906:2012, 4.3 (from memory of it)";
inline constexpr const char* thin_liquids =
    "For thin liquids only: a viscous test liquid or rated liquid needs the viscosity correction.";
inline constexpr const char* near_speed = "More than 20 % from the rated speed the efficiency itself shifts, and with "
                                          "it the translated power (ISO 9906, from memory).";
inline constexpr Interval percentages = between(0, 100);

}  // namespace acceptance

inline std::tuple<Flow, Head, Power, Head> test_to_rated_speed(Flow flow, Head head, Power power, Head npsh3,
                                                               RotationalSpeed test_speed, RotationalSpeed rated_speed,
                                                               Density test_density, Density rated_density,
                                                               Ratio npsh_exponent)
{
    const Ratio ratio = rated_speed / test_speed;
    return {flow * ratio, head * ratio * ratio, power * ratio * ratio * ratio * (rated_density / test_density),
            npsh3 * elementary::positive_pow(ratio.value(), npsh_exponent.value())};
}

inline constexpr auto test_to_rated_speed_record = record<&test_to_rated_speed>(
    {.name = "test_to_rated_speed",
     .meaning = "Measured values translated to the rated speed and density",
     .also = "ISO 9906|speed correction of a test",
     .inputs = {input("flow", "Q", units::m3h, from(0), "measured flow"),
                input("head", "H", units::metre, any, "measured head"),
                input("power", "P", units::kW, from(0), "measured power input"),
                input("npsh3", "NPSH3", units::metre, from(0), "measured NPSH3; 0 when it was not measured"),
                input("test_speed", "n", units::rpm, limits::speed_rpm, "speed at the test"),
                input("rated_speed", "n_sp", units::rpm, limits::speed_rpm, "rated speed"),
                input("test_density", "rho", units::kgm3, limits::density_kgm3, "density of the test liquid"),
                input("rated_density", "rho_sp", units::kgm3, limits::density_kgm3, "density of the rated liquid"),
                input("npsh_exponent", "x", units::number, between(1.3, 2),
                      "2 while speed and flow lie within the standard's limits; down to 1.3 otherwise, by agreement",
                      2)},
     .results = {output("rated_flow", "Q_T", units::m3h, "flow at the rated speed"),
                 output("rated_head", "H_T", units::metre, "head at the rated speed"),
                 output("rated_power", "P_T", units::kW, "power input at the rated speed and density"),
                 output("rated_npsh3", "NPSH3_T", units::metre, "NPSH3 at the rated speed")},
     .equation = "Q_T = Q n_sp/n; H_T = H (n_sp/n)^2; P_T = P (n_sp/n)^3 rho_sp/rho; NPSH3_T = NPSH3 (n_sp/n)^x; the "
                 "efficiency stays",
     .source = "ISO 9906:2012, 6.1.2, translation of the test results (from memory of it)",
     .cautions =
         {acceptance::thin_liquids, acceptance::near_speed,
          "The square flatters NPSH3 when the test ran faster than rated: agree the exponent, see npsh3_at_speed."},
     .sound_anywhere = true,
     .example = {"100, 50, 20, 3, 1480, 1450, 998, 998", "97.973, 47.994, 18.808, 2.8796", "independent computation"}},
    relation<"test_speed", "rated_speed">(
        [](RotationalSpeed n, RotationalSpeed rated) { return acceptance::speed_within(n, rated, 0.5); },
        "the test must run at 50 to 120 % of the rated speed"),
    relation<"test_speed", "npsh3", "rated_speed">(
        [](RotationalSpeed n, Head npsh3, RotationalSpeed rated) {
            return (npsh3 == Head{}) | acceptance::speed_within(n, rated, 0.8);
        },
        "a test of NPSH must run at 80 to 120 % of the rated speed"));

namespace acceptance {

inline bool has_a_mean(Series<Ratio> readings)
{
    const double count = static_cast<double>(readings.size());
    double mean = 0, size = 0;
    for (std::size_t i = 0; i < readings.size(); ++i) {
        mean += readings[i].value() / count;
        size += std::abs(readings[i].value()) / count;
    }
    return std::abs(mean) > 1e-12 * size;  // 0.1 + 0.2 - 0.3 is 0 but for rounding
}

}  // namespace acceptance

/// Student's t for 95 % of both sides together.
inline Ratio random_uncertainty(Series<Ratio> readings, Steps steps)
{
    const double count = static_cast<double>(readings.size());
    double mean = 0, squares = 0;
    for (std::size_t i = 0; i < readings.size(); ++i) mean += readings[i].value() / count;
    for (std::size_t i = 0; i < readings.size(); ++i) {
        const double apart = (readings[i].value() - mean) /
                             mean;  // in parts of the mean, lest squares of tiny readings vanish
        squares += apart * apart;
    }
    const double deviation = std::sqrt(squares / (count - 1));
    using namespace boost::math::policies;
    using Quiet = policy<domain_error<ignore_error>, overflow_error<ignore_error>, evaluation_error<ignore_error>>;
    const double t = boost::math::quantile(boost::math::students_t_distribution<double, Quiet>(count - 1), 0.975);
    steps("mean", "mean of the readings", Ratio(mean), units::number);
    steps("s", "standard deviation of the readings", Ratio(deviation * std::abs(mean)), units::number);
    steps("t", "Student's t, 95 %, two-sided", Ratio(t), units::number);
    return Ratio(t * deviation / std::sqrt(count));
}

inline constexpr auto random_uncertainty_record = record<&random_uncertainty>(
    {.name = "random_uncertainty",
     .meaning = "Random part of a measured value's uncertainty, from repeated readings",
     .also = "scatter of readings|repeatability",
     .inputs = {series("readings", "x_i", units::number, any, "repeated readings of one quantity, in any unit", 3)},
     .results = {output("random", "e_R", units::number_percent, "per cent of the mean, at a confidence of 95 %")},
     .equation = "e_R = 100 t s/(mean sqrt(N)), t by Student, 95 %, N - 1 degrees of freedom",
     .source = acceptance::uncertainty_source,
     .example = {"[100.2, 99.8, 100.1]", "0.51694", "independent computation, SciPy's Student's t"}},
    relation<"readings">(&acceptance::has_a_mean,
                         "the mean of the readings must not be 0: the uncertainty is a part of it"));

inline Ratio measurement_uncertainty(Ratio systematic, Ratio random)
{
    return Ratio(elementary::hypot(systematic.value(), random.value()));
}

inline constexpr Record<&measurement_uncertainty> measurement_uncertainty_record{
    .name = "measurement_uncertainty",
    .meaning = "Overall uncertainty of a measured value",
    .also = "accuracy of measurement|instrument error",
    .inputs = {input("systematic", "e_S", units::number_percent, acceptance::percentages,
                     "systematic part, of instrument and method"),
               input("random", "e_R", units::number_percent, acceptance::percentages,
                     "random part, as from random_uncertainty")},
    .results = {output("overall", "e", units::number_percent, "overall uncertainty")},
    .equation = "e = sqrt(e_S^2 + e_R^2)",
    .source = acceptance::uncertainty_source,
    .example = {"1.5, 0.8", "1.7", "hand calculation"}};

inline Ratio efficiency_uncertainty(Ratio flow, Ratio head, Ratio power, Ratio speed)
{
    return Ratio(std::sqrt(flow.value() * flow.value() + head.value() * head.value() + power.value() * power.value() +
                           speed.value() * speed.value()));
}

inline constexpr Record<&efficiency_uncertainty> efficiency_uncertainty_record{
    .name = "efficiency_uncertainty",
    .meaning = "Uncertainty of a measured efficiency, from those of what it is made of",
    .also = "accuracy of efficiency",
    .inputs = {input("flow_uncertainty", "e_Q", units::number_percent, acceptance::percentages,
                     "overall uncertainty of the flow"),
               input("head_uncertainty", "e_H", units::number_percent, acceptance::percentages,
                     "overall uncertainty of the head"),
               input("power_uncertainty", "e_P", units::number_percent, acceptance::percentages,
                     "overall uncertainty of the power, or of the torque"),
               input("speed_uncertainty", "e_n", units::number_percent, acceptance::percentages,
                     "overall uncertainty of the speed, when the torque is measured", 0)},
    .results = {output("efficiency_uncertainty", "e_eta", units::number_percent,
                       "overall uncertainty of the efficiency, as a part of it")},
    .equation = "e_eta = sqrt(e_Q^2 + e_H^2 + e_P^2 + e_n^2)",
    .source = acceptance::uncertainty_source,
    .example = {"2, 1.5, 2", "3.2", "the standard's Table 7, grade 1"}};

namespace acceptance {

// Grade 1, and grades 2 and 3; in the order of the quantities' words.
inline constexpr double uncertainty_percent[][2] = {{2.0, 3.5}, {0.5, 2.0}, {1.4, 3.0}, {1.5, 3.5}, {1.5, 3.5},
                                                    {1.5, 3.5}, {2.0, 4.0}, {2.9, 6.1}, {3.2, 6.4}};

}  // namespace acceptance

inline Ratio allowed_uncertainty(UncertaintyGrade grade, MeasuredQuantity quantity)
{
    return Ratio(
        acceptance::uncertainty_percent[static_cast<std::size_t>(quantity)][grade == UncertaintyGrade::one ? 0 : 1] /
        100);
}

inline constexpr Record<&allowed_uncertainty> allowed_uncertainty_record{
    .name = "allowed_uncertainty",
    .meaning = "Greatest overall uncertainty that an acceptance test may have",
    .also = "ISO 9906|instrument accuracy",
    .inputs = {choice<UncertaintyGrade>("test_grade", "grade", "grade of the test: 1, 2 or 3"),
               choice<MeasuredQuantity>("quantity", "quantity", "what is measured")},
    .results = {output("overall", "e", units::number_percent, "greatest overall uncertainty")},
    .equation = "by the table; grades 2 and 3 have the same",
    .source = "ISO 9906:2012, 4.3, Table 7 (from memory of it; the values for power and efficiency follow from the "
              "others by root-sum-square)",
    .example = {"1, \"flow\"", "2", "the standard's table, from memory"}};

}  // namespace cutwater::formulas
