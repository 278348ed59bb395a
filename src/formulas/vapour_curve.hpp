// A liquid's vapour-pressure curve by its points; ln p is taken linear in 1/T between neighbours, as Clausius and
// Clapeyron have it.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/series.hpp"
#include "elementary/elementary.hpp"

#include <algorithm>
#include <cstddef>
#include <limits>
#include <tuple>
#include <utility>

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
    std::size_t place_of_temperature(double kelvin) const
    {
        std::size_t i = 0;
        while (i + 2 < size() && t(i + 1) < kelvin) ++i;
        return i;
    }
    std::size_t place_of_pressure(double pascal) const
    {
        std::size_t i = 0;
        while (i + 2 < size() && p(i + 1) < pascal) ++i;
        return i;
    }

private:
    Series<Temperature> t_;
    Series<AbsolutePressure> p_;
};

/// The same for all rows of an array, with what is computed of them alone. Where the points are few a place is found
/// without a branch, so that rows become vectors.
class KeptVapourPoints {
public:
    static constexpr std::size_t few = 16;

    KeptVapourPoints(const Series<Temperature>& temperatures, const Series<AbsolutePressure>& pressures)
        : given_(temperatures, pressures), size_(given_.size())
    {
        constexpr double infinity = std::numeric_limits<double>::infinity();
        std::fill_n(inner_t_, few, infinity);
        std::fill_n(inner_p_, few, infinity);
        if (!are_few()) return;
        for (std::size_t i = 0; i < size_; ++i)
            t_[i] = given_.t(i), p_[i] = given_.p(i), inverse_[i] = given_.inverse(i);
        for (std::size_t i = 0; i + 1 < size_; ++i) log_ratio_[i] = given_.log_ratio(i);
        for (std::size_t i = 1; i + 1 < size_; ++i) inner_t_[i - 1] = t_[i], inner_p_[i - 1] = p_[i];
    }

    bool are_few() const { return size_ <= few; }
    const VapourPoints& given() const { return given_; }

    std::size_t size() const { return size_; }
    double t(std::size_t i) const { return t_[i]; }
    double p(std::size_t i) const { return p_[i]; }
    double inverse(std::size_t i) const { return inverse_[i]; }
    double log_ratio(std::size_t i) const { return log_ratio_[i]; }
    std::size_t place_of_temperature(double kelvin) const { return below(inner_t_, kelvin); }
    std::size_t place_of_pressure(double pascal) const { return below(inner_p_, pascal); }

private:
    static std::size_t below(const double* inner, double x)
    {
        return [&]<std::size_t... I>(std::index_sequence<I...>) {
            return (std::size_t{inner[I] < x} + ...);
        }(std::make_index_sequence<few - 2>());
    }

    VapourPoints given_;
    std::size_t size_;
    double t_[few]{}, p_[few]{}, inverse_[few]{}, log_ratio_[few]{}, inner_t_[few], inner_p_[few];
};

template <class Points>
class VapourCurve {
public:
    explicit VapourCurve(const Points& of) : of_(of) {}

    AbsolutePressure pressure(Temperature temperature) const
    {
        const double kelvin = temperature.above_zero().value();
        const std::size_t i = of_.place_of_temperature(kelvin);
        const double part = (of_.inverse(i) - 1 / kelvin) / (of_.inverse(i) - of_.inverse(i + 1));
        return absolute(of_.p(i) * elementary::exp(of_.log_ratio(i) * part));
    }
    Temperature temperature(AbsolutePressure pressure) const
    {
        const double pascal = pressure.above_zero().value();
        const std::size_t i = of_.place_of_pressure(pascal);
        const double part = elementary::log(pascal / of_.p(i)) / of_.log_ratio(i);
        return kelvin(1 / (of_.inverse(i) - (of_.inverse(i) - of_.inverse(i + 1)) * part));
    }
    Temperature coldest() const { return kelvin(of_.t(0)); }
    Temperature warmest() const { return kelvin(of_.t(of_.size() - 1)); }
    AbsolutePressure lowest() const { return absolute(of_.p(0)); }
    AbsolutePressure highest() const { return absolute(of_.p(of_.size() - 1)); }
    bool holds(Temperature t) const { return !(t < coldest()) & !(t > warmest()); }
    bool holds(AbsolutePressure p) const { return !(p < lowest()) & !(p > highest()); }

private:
    static Temperature kelvin(double x) { return Temperature::at(TemperatureDifference::from_value(x)); }
    static AbsolutePressure absolute(double x) { return AbsolutePressure::at(PressureDifference::from_value(x)); }
    const Points& of_;
};

/// A formula of a curve, given the caller's points.
template <class Formula, class... Q>
auto on_vapour_curve(Formula formula, const Series<Temperature>& temperatures,
                     const Series<AbsolutePressure>& pressures, Q... given)
{
    const VapourPoints points(temperatures, pressures);
    return formula(VapourCurve<VapourPoints>(points), given...);
}

/// For OnceForRows of a formula that shares its curve, and perhaps a word, among all rows: Formula takes the curve, the
/// word and what a row gives.
template <class Formula, class... Word>
class WithVapourCurve {
public:
    static constexpr bool straight = true;

    WithVapourCurve(const Series<Temperature>& temperatures, const Series<AbsolutePressure>& pressures, Word... word)
        : points_(temperatures, pressures), word_(word...)
    {
    }

    bool fits_vectors() const { return points_.are_few(); }
    template <class... Q>
    auto in_vectors(Q... of_row) const
    {
        return on(points_, of_row...);
    }
    template <class... Q>
    auto operator()(Q... of_row) const
    {
        return on(points_.given(), of_row...);
    }

private:
    template <class Points, class... Q>
    auto on(const Points& points, Q... of_row) const
    {
        return [&]<std::size_t... I>(std::index_sequence<I...>) {
            return Formula()(VapourCurve<Points>(points), std::get<I>(word_)..., of_row...);
        }(std::index_sequence_for<Word...>());
    }

    KeptVapourPoints points_;
    std::tuple<Word...> word_;
};

}  // namespace cutwater::formulas
