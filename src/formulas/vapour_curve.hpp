// A liquid's vapour-pressure curve by its points; ln p is taken linear in 1/T between neighbours, as Clausius and
// Clapeyron have it.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/series.hpp"
#include "elementary/elementary.hpp"

#include <cstddef>
#include <tuple>
#include <vector>

namespace cutwater::formulas {

/// The points as the caller keeps them.
class VapourPoints {
public:
    VapourPoints(const Series<Temperature>& temperatures, const Series<AbsolutePressure>& pressures)
        : t_(temperatures), p_(pressures)
    {
    }

    std::size_t size() const { return t_.size(); }
    double t(std::size_t i) const { return t_[i].above_zero().value(); }
    double p(std::size_t i) const { return p_[i].above_zero().value(); }
    double inverse(std::size_t i) const { return 1 / t(i); }
    double log_ratio(std::size_t i) const { return elementary::log(p(i + 1) / p(i)); }

private:
    Series<Temperature> t_;
    Series<AbsolutePressure> p_;
};

/// The same for all rows of an array, with what is computed of them alone.
class KeptVapourPoints {
public:
    KeptVapourPoints(const Series<Temperature>& temperatures, const Series<AbsolutePressure>& pressures)
    {
        const VapourPoints points(temperatures, pressures);
        points_.reserve(points.size());
        for (std::size_t i = 0; i < points.size(); ++i)
            points_.push_back(
                {points.t(i), points.p(i), points.inverse(i), i + 1 < points.size() ? points.log_ratio(i) : 0.0});
    }

    std::size_t size() const { return points_.size(); }
    double t(std::size_t i) const { return points_[i].t; }
    double p(std::size_t i) const { return points_[i].p; }
    double inverse(std::size_t i) const { return points_[i].inverse; }
    double log_ratio(std::size_t i) const { return points_[i].log_ratio; }

private:
    struct Point {
        double t, p, inverse, log_ratio;
    };
    std::vector<Point> points_;
};

template <class Points>
class VapourCurve {
public:
    VapourCurve(const Series<Temperature>& temperatures, const Series<AbsolutePressure>& pressures)
        : of_(temperatures, pressures)
    {
    }

    AbsolutePressure pressure(Temperature temperature) const
    {
        const double kelvin = temperature.above_zero().value();
        std::size_t i = 0;
        while (i + 2 < of_.size() && of_.t(i + 1) < kelvin) ++i;
        const double part = (of_.inverse(i) - 1 / kelvin) / (of_.inverse(i) - of_.inverse(i + 1));
        return absolute(of_.p(i) * elementary::exp(of_.log_ratio(i) * part));
    }
    Temperature temperature(AbsolutePressure pressure) const
    {
        const double pascal = pressure.above_zero().value();
        std::size_t i = 0;
        while (i + 2 < of_.size() && of_.p(i + 1) < pascal) ++i;
        const double part = elementary::log(pascal / of_.p(i)) / of_.log_ratio(i);
        return kelvin(1 / (of_.inverse(i) - (of_.inverse(i) - of_.inverse(i + 1)) * part));
    }
    Temperature coldest() const { return kelvin(of_.t(0)); }
    Temperature warmest() const { return kelvin(of_.t(of_.size() - 1)); }
    AbsolutePressure lowest() const { return absolute(of_.p(0)); }
    AbsolutePressure highest() const { return absolute(of_.p(of_.size() - 1)); }
    bool holds(Temperature t) const { return !(t < coldest()) && !(t > warmest()); }

private:
    static Temperature kelvin(double x) { return Temperature::at(TemperatureDifference::from_value(x)); }
    static AbsolutePressure absolute(double x) { return AbsolutePressure::at(PressureDifference::from_value(x)); }
    Points of_;
};

using GivenVapourCurve = VapourCurve<VapourPoints>;

/// For OnceForRows of a formula that shares its curve, and perhaps a word, among all rows: Formula takes the curve, the
/// word and what a row gives.
template <class Formula, class... Word>
class WithVapourCurve {
public:
    WithVapourCurve(const Series<Temperature>& temperatures, const Series<AbsolutePressure>& pressures, Word... word)
        : curve_(temperatures, pressures), word_(word...)
    {
    }
    template <class... Q>
    auto operator()(Q... of_row) const
    {
        return std::apply([&](Word... word) { return Formula()(curve_, word..., of_row...); }, word_);
    }

private:
    VapourCurve<KeptVapourPoints> curve_;
    std::tuple<Word...> word_;
};

}  // namespace cutwater::formulas
