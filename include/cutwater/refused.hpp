// What the typed C++ door throws, and how it turns series of quantities into numbers and back.
#pragma once

#include <cutwater/base.h>
#include <cutwater/unit.hpp>

#include <charconv>
#include <cmath>
#include <limits>
#include <stdexcept>
#include <vector>

namespace cutwater {

/// A refusal with everything that the C API told of it.
class Refused : public std::invalid_argument {
public:
    explicit Refused(const cutwater_refusal& refusal) : std::invalid_argument(refusal.message), refusal_(refusal) {}
    cutwater_status status() const noexcept { return static_cast<cutwater_status>(refusal_.status); }
    const cutwater_refusal& refusal() const noexcept { return refusal_; }

private:
    cutwater_refusal refusal_;
};

namespace detail {

inline void check(cutwater_status status, const cutwater_refusal& refusal)
{
    if (status != CUTWATER_OK) throw Refused(refusal);
}

/// Of start and its nearest neighbours the one that the conversion turns into target; start itself when none does.
template <class Convert>
double inverse(double start, double target, Convert&& convert)
{
    if (convert(start) == target) return start;
    double below = start;
    double above = start;
    for (int step = 0; step < 2; ++step) {
        below = std::nextafter(below, -std::numeric_limits<double>::infinity());
        above = std::nextafter(above, std::numeric_limits<double>::infinity());
        if (convert(below) == target) return below;
        if (convert(above) == target) return above;
    }
    return start;
}

/// The number in a unit that stands for exactly this quantity: 0.1 m3/h made into a Flow goes to the C API as 0.1
/// again, so that the typed door gives the same bits as every other. Where several do (15 deg and its neighbour are one
/// number of radians), the one that was typed is the one with few digits.
template <class Q>
double number_in(Unit<Q> unit, Q quantity)
{
    const double target = Si<Q>::value(quantity);
    const auto convert = [unit](double x) { return unit.info->to_si(x); };
    const double exact = inverse(unit.info->from_si(target), target, convert);
    char digits[40];
    const auto written = std::to_chars(digits, digits + sizeof digits, exact, std::chars_format::general, 15);
    double rounded = exact;
    std::from_chars(digits, written.ptr, rounded);
    return rounded != exact && convert(rounded) == target ? rounded : exact;
}

/// The quantity that reads back as exactly this number in the unit.
template <class Q>
Q quantity_of(Unit<Q> unit, double number)
{
    return Si<Q>::make(inverse(unit.info->to_si(number), number, [unit](double v) { return unit.info->from_si(v); }));
}

template <class Q>
std::vector<double> numbers(Unit<Q> unit, const std::vector<Q>& series)
{
    std::vector<double> made;
    made.reserve(series.size());
    for (const Q& q : series) made.push_back(number_in(unit, q));
    return made;
}

template <class Q>
std::vector<Q> quantities(Unit<Q> unit, const std::vector<double>& numbers)
{
    std::vector<Q> made;
    made.reserve(numbers.size());
    for (const double x : numbers) made.push_back(quantity_of(unit, x));
    return made;
}

}  // namespace detail
}  // namespace cutwater
