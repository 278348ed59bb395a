// A polynomial through measured points by least squares. Built from orthogonal polynomials (Forsythe), so that no
// normal equations lose the digits; their recurrence is run again for each point, so that nothing is copied.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "elementary/elementary.hpp"
#include "formulas/curves/value.hpp"

#include <algorithm>
#include <array>
#include <utility>

namespace cutwater::formulas {

namespace curves {

inline constexpr std::size_t greatest_degree = 6;

class Polynomial {
public:
    Polynomial(const Series<Ratio>& xs, const Series<Ratio>& ys, std::size_t degree)
        : degree_(degree), centre_(0.5 * (xs.front().value() + xs.back().value())),
          half_(0.5 * (xs.back().value() - xs.front().value()))
    {
        double norm_before = 1;
        for (std::size_t k = 0; k <= degree_; ++k) {
            double norm = 0, moment = 0, share = 0;
            for (std::size_t i = 0; i < xs.size(); ++i) {
                const double t = scaled(xs[i].value());
                const auto [p, before] = pair(k, t);
                const double remains = ys[i].value() - partial(k, t);  // from the remainder: keeps the digits
                norm += p * p;
                moment += t * p * p;
                share += remains * p;
            }
            coefficient_[k] = share / norm;
            alpha_[k] = moment / norm;
            beta_[k] = k == 0 ? 0 : norm / norm_before;
            norm_before = norm;
        }
    }

    double operator()(double x) const { return partial(degree_ + 1, scaled(x)); }

    /// The value of the polynomial of a lower degree through the same points: its terms are the first of this one's.
    /// Without a branch, and with the bits of that polynomial.
    double of_degree(double degree, double x) const
    {
        const double t = scaled(x);
        double sum = 0;
        Pair p{1, 0};
        const auto add = [&](std::size_t j) {
            sum += elementary::select(static_cast<double>(j) <= degree, coefficient_[j] * p.now, 0.0);
            p = {(t - alpha_[j]) * p.now - beta_[j] * p.before, p.now};
        };
        [&]<std::size_t... J>(std::index_sequence<J...>) {
            (add(J), ...);
        }(std::make_index_sequence<greatest_degree + 1>());
        return sum;
    }

    /// Coefficients of 1, x, x^2, …
    Points<Ratio> plain() const
    {
        std::array<double, greatest_degree + 1> sum{}, now{1}, before{};
        for (std::size_t k = 0; k <= degree_; ++k) {
            for (std::size_t j = 0; j <= k; ++j) sum[j] += coefficient_[k] * now[j];
            std::array<double, greatest_degree + 1> next{};
            for (std::size_t j = 0; j <= degree_; ++j)
                next[j] = (j ? now[j - 1] : 0) - alpha_[k] * now[j] - beta_[k] * before[j];
            before = now;
            now = next;
        }
        // From t = (x - centre)/half to x, by Horner's scheme on polynomials.
        Points<Ratio> out(degree_ + 1, Ratio(0.0));
        for (std::size_t k = degree_ + 1; k-- > 0;) {
            for (std::size_t j = degree_; j > 0; --j) out[j] = (out[j - 1] - out[j] * centre_) / half_;
            out[0] = out[0] * (-centre_ / half_) + Ratio(sum[k]);
        }
        return out;
    }

private:
    double scaled(double x) const { return (x - centre_) / half_; }

    struct Pair {
        double now, before;
    };
    Pair pair(std::size_t k, double t) const
    {
        Pair p{1, 0};
        for (std::size_t j = 0; j < k; ++j) p = {(t - alpha_[j]) * p.now - beta_[j] * p.before, p.now};
        return p;
    }
    /// The sum of the first few terms.
    double partial(std::size_t terms, double t) const
    {
        double sum = 0;
        Pair p{1, 0};
        for (std::size_t j = 0; j < terms; ++j) {
            sum += coefficient_[j] * p.now;
            p = {(t - alpha_[j]) * p.now - beta_[j] * p.before, p.now};
        }
        return sum;
    }

    std::size_t degree_;
    double centre_, half_;
    std::array<double, greatest_degree + 1> coefficient_{}, alpha_{}, beta_{};
};

struct Goodness {
    double determination;  // R^2
    double deviation;      // standard deviation of the points about the curve; 0 when it goes through all of them
};

inline Goodness goodness(const Series<Ratio>& xs, const Series<Ratio>& ys, const Polynomial& curve, std::size_t degree)
{
    const double count = static_cast<double>(ys.size());
    double mean = 0, about_curve = 0, about_mean = 0;
    for (std::size_t i = 0; i < ys.size(); ++i) mean += ys[i].value() / count;
    for (std::size_t i = 0; i < ys.size(); ++i) {
        const double off = ys[i].value() - curve(xs[i].value());
        about_curve += off * off;
        about_mean += (ys[i].value() - mean) * (ys[i].value() - mean);
    }
    const std::size_t freedom = ys.size() - degree - 1;
    return {about_mean > 0 ? 1 - about_curve / about_mean : 1,
            freedom ? std::sqrt(about_curve / static_cast<double>(freedom)) : 0};
}

inline std::size_t whole(Count degree) { return static_cast<std::size_t>(degree.value); }

inline constexpr const char* enough_points = "it must be less than the number of points";
inline constexpr const char* fit_source = "least squares by orthogonal polynomials, G. E. Forsythe, J. SIAM 5 (1957) "
                                          "74-88 (from memory of it; agrees with NumPy's polyfit)";

}  // namespace curves

inline std::tuple<Points<Ratio>, Ratio, Ratio> curve_fit(Series<Ratio> xs, Series<Ratio> ys, Count degree)
{
    const std::size_t n = curves::whole(degree);
    const curves::Polynomial curve(xs, ys, n);
    const curves::Goodness good = curves::goodness(xs, ys, curve, n);
    return {curve.plain(), Ratio(good.determination), Ratio(good.deviation)};
}

inline constexpr auto curve_fit_record = record<&curve_fit>(
    {.name = "curve_fit",
     .meaning = "Polynomial through measured points by least squares, with its goodness of fit",
     .also = "regression|polynomial|trend line",
     .inputs = {series("x_values", "x_i", units::number, any, "the points' abscissas, in any one unit", 2,
                       Order::rising),
                series("y_values", "y_i", units::number, any, "the points' ordinates, in any one unit", 2),
                input("degree", "m", units::count, between(1, 6), "greatest power of x")},
     .results =
         {output_series<Ratio>("coefficients", "a_0 … a_m", units::number, "y = a_0 + a_1 x + a_2 x^2 + …"),
          output("determination", "R^2", units::number, "1 when the curve goes through every point"),
          output("deviation", "s", units::number,
                 "standard deviation of the points about the curve, in the unit of y; 0 when no point is to spare")},
     .equation = "sum of (y_i - y(x_i))^2 least; R^2 = 1 - sum (y_i - y(x_i))^2/sum (y_i - mean)^2; s^2 = sum (y_i - "
                 "y(x_i))^2/(N - m - 1)",
     .source = curves::fit_source,
     .cautions = {"A high degree swings between the points: look at the curve before using it; outside the points it "
                  "says nothing."},
     .example = {"[0, 1, 2, 3], [1, 3, 7, 13], 2", "[1, 1, 1], 1, 0", "the points lie on 1 + x + x^2"}},
    pairs::equal_length<"y_values", "x_values">(),
    relation<"degree", "x_values">([](Count m, Series<Ratio> x) { return m.value < static_cast<double>(x.size()); },
                                   curves::enough_points));

namespace curves {

/// value(x), where the points reach.
template <class Value>
Outcome<Ratio> read_fitted(Ratio first, Ratio last, Ratio at, Value value)
{
    const double x = snapped_to(last.value(), snapped_to(first.value(), at.value()));
    return {Ratio(value(x)), bool((x >= first.value()) & (x <= last.value())),
            outside(x, first.value(), last.value(), "x", units::number)};
}

}  // namespace curves

inline Outcome<Ratio> fitted_value(Series<Ratio> xs, Series<Ratio> ys, Count degree, Ratio at)
{
    return curves::read_fitted(xs.front(), xs.back(), at, curves::Polynomial(xs, ys, curves::whole(degree)));
}

inline constexpr auto fitted_value_record = record<&fitted_value>(
    {.name = "fitted_value",
     .meaning = "Value of the least-squares polynomial through measured points",
     .also = "regression|polynomial",
     .inputs = {series("x_values", "x_i", units::number, any, "the points' abscissas, in any one unit", 2,
                       Order::rising),
                series("y_values", "y_i", units::number, any, "the points' ordinates, in any one unit", 2),
                input("degree", "m", units::count, between(1, 6), "greatest power of x"),
                input("x", "x", units::number, any, "where to read the curve; between the first and the last point")},
     .results = {output("y", "y", units::number, "ordinate of the fitted curve there")},
     .equation = "y(x) of the polynomial that curve_fit finds",
     .source = curves::fit_source,
     .cautions = {"A high degree swings between the points: look at the curve before using it."},
     .sound_anywhere = true,
     .example = {"[0, 1, 2, 3], [1, 3, 7, 13], 2, 2.5", "9.75", "the points lie on 1 + x + x^2"}},
    pairs::equal_length<"y_values", "x_values">(),
    relation<"degree", "x_values">([](Count m, Series<Ratio> x) { return m.value < static_cast<double>(x.size()); },
                                   curves::enough_points));

}  // namespace cutwater::formulas

namespace cutwater {

/// Fitted once, with the greatest degree that the points allow.
template <>
class OnceForRows<&formulas::fitted_value> {
public:
    static constexpr bool straight = true;

    OnceForRows(Series<Ratio> xs, Series<Ratio> ys)
        : first_(xs.front()), last_(xs.back()),
          curve_(xs, ys, std::min(formulas::curves::greatest_degree, xs.size() - 1))
    {
    }

    Outcome<Ratio> operator()(Count degree, Ratio at) const
    {
        return formulas::curves::read_fitted(first_, last_, at,
                                             [&](double x) { return curve_.of_degree(degree.value, x); });
    }

private:
    Ratio first_, last_;
    formulas::curves::Polynomial curve_;
};

}  // namespace cutwater
