// Where to look first when nothing is known of a function but its interval.
#pragma once

#include "catalogue/interval.hpp"

#include <vector>

namespace cutwater {

/// Rising points of the interval, its closed ends among them. Between two ends that are near to each other in size:
/// evenly; else from the smaller one, or towards one that is infinite: by powers of ten of the distance, 1e-9 to 1e12
/// in the input's unit, four a decade from 0.01 to 1e6; without ends: both signs so, and 0. Whole numbers only, when
/// whole.
std::vector<double> search_points(const Interval& where, bool whole);

/// From x towards 0, to the smallest numbers there are: by ever longer steps, for a function that has any it is nearly
/// a power there.
std::vector<double> towards_zero(double x);

/// Rising points close to each finite end, by powers of ten of the interval's width.
std::vector<double> beside_ends(const Interval& where);

/// The point between two others: by ratio where they have one sign and differ much, else the middle.
double point_between(double a, double b) noexcept;

}  // namespace cutwater
