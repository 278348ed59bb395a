// ASME B16.5-2009, tables 2: working gauge pressures in bar by temperature, class and material group.
// Read: 1.1 the standard's page; 1.2 its page to 50 degC and a valve-trade page of the same ratings to 300 degC; 2.1
// to 2.3 the whole data files of an open BSD-licensed library of Oregon State University, which agree with a second
// one.
#pragma once

#include <algorithm>
#include <array>
#include <cstddef>
#include <iterator>
#include <span>

namespace cutwater::formulas::flange {

struct Row {
    double degc;
    std::array<double, 3> bar;  // classes 150, 300, 600; 0: not held
};

inline constexpr Row group_1_1[] = {
    {38, {19.6, 51.1, 102.1}}, {50, {19.2, 50.1, 100.2}}, {100, {17.7, 46.6, 93.2}}, {150, {15.8, 45.1, 90.2}},
    {200, {13.8, 43.8, 87.6}}, {250, {12.1, 41.9, 83.9}}, {300, {10.2, 39.8, 79.6}}, {325, {9.3, 38.7, 77.4}},
    {350, {8.4, 37.6, 75.1}},  {375, {7.4, 36.4, 72.7}},  {400, {6.5, 34.7, 69.4}},  {425, {5.5, 28.8, 57.5}},
    {450, {4.6, 23.0, 46.0}},  {475, {3.7, 17.4, 34.9}},  {500, {2.8, 11.8, 23.5}},  {538, {1.4, 5.9, 11.8}},
};
inline constexpr Row group_1_2[] = {
    {38, {19.8, 51.7, 0}},  {50, {19.5, 51.7, 0}},  {100, {17.7, 51.5, 0}}, {150, {15.8, 50.2, 0}},
    {200, {13.8, 48.6, 0}}, {250, {12.1, 46.3, 0}}, {300, {10.2, 42.9, 0}},
};
inline constexpr Row group_2_1[] = {
    {38, {19.0, 49.6, 99.3}},  {50, {18.3, 47.8, 95.6}},  {100, {15.7, 40.9, 81.7}}, {150, {14.2, 37.0, 74.0}},
    {200, {13.2, 34.5, 69.0}}, {250, {12.1, 32.5, 65.0}}, {300, {10.2, 30.9, 61.8}}, {325, {9.3, 30.2, 60.4}},
    {350, {8.4, 29.6, 59.3}},  {375, {7.4, 29.0, 58.1}},  {400, {6.5, 28.4, 56.9}},  {425, {5.5, 28.0, 56.0}},
    {450, {4.6, 27.4, 54.8}},  {475, {3.7, 26.9, 53.9}},  {500, {2.8, 26.5, 53.0}},  {538, {1.4, 24.4, 48.9}},
};
inline constexpr Row group_2_2[] = {
    {38, {19.0, 49.6, 99.3}},  {50, {18.4, 48.1, 96.2}},  {100, {16.2, 42.2, 84.4}}, {150, {14.8, 38.5, 77.0}},
    {200, {13.7, 35.7, 71.3}}, {250, {12.1, 33.4, 66.8}}, {300, {10.2, 31.6, 63.2}}, {325, {9.3, 30.9, 61.8}},
    {350, {8.4, 30.3, 60.7}},  {375, {7.4, 29.9, 59.8}},  {400, {6.5, 29.4, 58.9}},  {425, {5.5, 29.1, 58.3}},
    {450, {4.6, 28.8, 57.7}},  {475, {3.7, 28.7, 57.3}},  {500, {2.8, 28.2, 56.5}},  {538, {1.4, 25.2, 50.0}},
};
inline constexpr Row group_2_3[] = {
    {38, {15.9, 41.4, 82.7}},  {50, {15.3, 40.0, 80.0}},  {100, {13.3, 34.8, 69.6}}, {150, {12.0, 31.4, 62.8}},
    {200, {11.2, 29.2, 58.3}}, {250, {10.5, 27.5, 54.9}}, {300, {10.0, 26.1, 52.1}}, {325, {9.3, 25.5, 51.0}},
    {350, {8.4, 25.1, 50.1}},  {375, {7.4, 24.8, 49.5}},  {400, {6.5, 24.3, 48.6}},  {425, {5.5, 23.9, 47.7}},
    {450, {4.6, 23.4, 46.8}},
};

inline constexpr double coldest_degc = -29;  // the first row's pressure holds from here

inline constexpr std::span<const Row> groups[] = {group_1_1, group_1_2, group_2_1, group_2_2, group_2_3};

/// The tables one after another, class by class, each filled up to the longest with its last row.
inline constexpr std::size_t longest = std::size(group_1_1);
struct Columns {
    std::array<double, 5 * longest> degc;
    std::array<double, 15 * longest> bar;
};
inline constexpr Columns columns = [] {
    Columns made{};
    for (std::size_t i = 0; i < made.bar.size(); ++i) {
        const std::size_t line = i % longest, group = i / longest / 3;
        const Row& row = groups[group][std::min(line, groups[group].size() - 1)];
        made.bar[i] = row.bar[i / longest % 3];
        made.degc[group * longest + line] = row.degc;
    }
    return made;
}();

}  // namespace cutwater::formulas::flange
