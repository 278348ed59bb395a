// Bores of steel pipes by nominal size and schedule.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "formulas/limits.hpp"

#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdint>
#include <tuple>

namespace cutwater::formulas {

enum class PipeSchedule {
    s5,
    s10,
    s20,
    s30,
    s40,
    s60,
    s80,
    s100,
    s120,
    s140,
    s160,
    std,
    xs,
    xxs,
    s5s,
    s10s,
    s40s,
    s80s
};

}  // namespace cutwater::formulas

template <>
inline constexpr cutwater::Words<18> cutwater::words_of<cutwater::formulas::PipeSchedule>{
    "5", "10", "20", "30", "40", "60", "80", "100", "120", "140", "160", "STD", "XS", "XXS", "5S", "10S", "40S", "80S"};

namespace cutwater::formulas {

namespace nominal {

/// Outside diameters and walls in mm; 0 where the standard has no such wall.
struct Size {
    int dn;
    double outside;
    double wall[18];  // in the order of the schedules' words
};

inline constexpr Size sizes[] = {
    {6, 10.3, {0, 1.24, 0, 1.45, 1.73, 0, 2.41, 0, 0, 0, 0, 1.73, 2.41, 0, 0, 1.24, 1.73, 2.41}},
    {8, 13.7, {0, 1.65, 0, 1.85, 2.24, 0, 3.02, 0, 0, 0, 0, 2.24, 3.02, 0, 0, 1.65, 2.24, 3.02}},
    {10, 17.1, {0, 1.65, 0, 1.85, 2.31, 0, 3.2, 0, 0, 0, 0, 2.31, 3.2, 0, 0, 1.65, 2.31, 3.2}},
    {15, 21.3, {1.65, 2.11, 0, 2.41, 2.77, 0, 3.73, 0, 0, 0, 4.78, 2.77, 3.73, 7.47, 1.65, 2.11, 2.77, 3.73}},
    {20, 26.7, {1.65, 2.11, 0, 2.41, 2.87, 0, 3.91, 0, 0, 0, 5.56, 2.87, 3.91, 7.82, 1.65, 2.11, 2.87, 3.91}},
    {25, 33.4, {1.65, 2.77, 0, 2.9, 3.38, 0, 4.55, 0, 0, 0, 6.35, 3.38, 4.55, 9.09, 1.65, 2.77, 3.38, 4.55}},
    {32, 42.2, {1.65, 2.77, 0, 2.97, 3.56, 0, 4.85, 0, 0, 0, 6.35, 3.56, 4.85, 9.7, 1.65, 2.77, 3.56, 4.85}},
    {40, 48.3, {1.65, 2.77, 0, 3.18, 3.68, 0, 5.08, 0, 0, 0, 7.14, 3.68, 5.08, 10.15, 1.65, 2.77, 3.68, 5.08}},
    {50, 60.3, {1.65, 2.77, 0, 3.18, 3.91, 0, 5.54, 0, 0, 0, 8.74, 3.91, 5.54, 11.07, 1.65, 2.77, 3.91, 5.54}},
    {65, 73, {2.11, 3.05, 0, 4.78, 5.16, 0, 7.01, 0, 0, 0, 9.53, 5.16, 7.01, 14.02, 2.11, 3.05, 5.16, 7.01}},
    {80, 88.9, {2.11, 3.05, 0, 4.78, 5.49, 0, 7.62, 0, 0, 0, 11.13, 5.49, 7.62, 15.24, 2.11, 3.05, 5.49, 7.62}},
    {90, 101.6, {2.11, 3.05, 0, 4.78, 5.74, 0, 8.08, 0, 0, 0, 0, 5.74, 8.08, 0, 2.11, 3.05, 5.74, 8.08}},
    {100, 114.3, {2.11, 3.05, 0, 4.78, 6.02, 0, 8.56, 0, 11.13, 0, 13.49, 6.02, 8.56, 17.12, 2.11, 3.05, 6.02, 8.56}},
    {125, 141.3, {2.77, 3.4, 0, 0, 6.55, 0, 9.53, 0, 12.7, 0, 15.88, 6.55, 9.53, 19.05, 2.77, 3.4, 6.55, 9.53}},
    {150, 168.3, {2.77, 3.4, 0, 0, 7.11, 0, 10.97, 0, 14.27, 0, 18.26, 7.11, 10.97, 21.95, 2.77, 3.4, 7.11, 10.97}},
    {200,
     219.1,
     {2.77, 3.76, 6.35, 7.04, 8.18, 10.31, 12.7, 15.09, 18.26, 20.62, 23.01, 8.18, 12.7, 22.23, 2.77, 3.76, 8.18,
      12.7}},
    {250,
     273,
     {3.4, 4.19, 6.35, 7.8, 9.27, 12.7, 15.09, 18.26, 21.44, 25.4, 28.58, 9.27, 12.7, 25.4, 3.4, 4.19, 9.27, 12.7}},
    {300,
     323.8,
     {3.96, 4.57, 6.35, 8.38, 10.31, 14.27, 17.48, 21.44, 25.4, 28.58, 33.32, 9.53, 12.7, 25.4, 3.96, 4.57, 9.53,
      12.7}},
    {350,
     355.6,
     {3.96, 6.35, 7.92, 9.53, 11.13, 15.09, 19.05, 23.83, 27.79, 31.75, 35.71, 9.53, 12.7, 0, 3.96, 4.78, 9.53, 12.7}},
    {400,
     406.4,
     {4.19, 6.35, 7.92, 9.53, 12.7, 16.66, 21.44, 26.19, 30.96, 36.53, 40.49, 9.53, 12.7, 0, 4.19, 4.78, 9.53, 12.7}},
    {450,
     457,
     {4.19, 6.35, 7.92, 11.13, 14.27, 19.05, 23.83, 29.36, 34.93, 39.67, 45.24, 9.53, 12.7, 0, 4.19, 4.78, 9.53, 12.7}},
    {500,
     508,
     {4.78, 6.35, 9.53, 12.7, 15.09, 20.62, 26.19, 32.54, 38.1, 44.45, 50.01, 9.53, 12.7, 0, 4.78, 5.54, 9.53, 12.7}},
    {550, 559, {4.78, 6.35, 9.53, 12.7, 0, 22.23, 28.58, 34.93, 41.28, 47.63, 53.98, 9.53, 12.7, 0, 4.78, 5.54, 0, 0}},
    {600,
     610,
     {5.54, 6.35, 9.53, 14.27, 17.48, 24.61, 30.96, 38.89, 46.02, 52.37, 59.54, 9.53, 12.7, 0, 5.54, 6.35, 9.53, 12.7}},
    {650, 660, {0, 7.92, 12.7, 0, 0, 0, 0, 0, 0, 0, 0, 9.53, 12.7, 0, 0, 0, 0, 0}},
    {700, 711, {0, 7.92, 12.7, 15.88, 0, 0, 0, 0, 0, 0, 0, 9.53, 12.7, 0, 0, 0, 0, 0}},
    {750, 762, {6.35, 7.92, 12.7, 15.88, 0, 0, 0, 0, 0, 0, 0, 9.53, 12.7, 0, 6.35, 7.92, 0, 0}},
    {800, 813, {0, 7.92, 12.7, 15.88, 17.48, 0, 0, 0, 0, 0, 0, 9.53, 12.7, 0, 0, 0, 0, 0}},
    {850, 864, {0, 7.92, 12.7, 15.88, 17.48, 0, 0, 0, 0, 0, 0, 9.53, 12.7, 0, 0, 0, 0, 0}},
    {900, 914, {0, 7.92, 12.7, 15.88, 19.05, 0, 0, 0, 0, 0, 0, 9.53, 12.7, 0, 0, 0, 0, 0}},
    {950, 965, {0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 9.53, 12.7, 0, 0, 0, 0, 0}},
    {1000, 1016, {0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 9.53, 12.7, 0, 0, 0, 0, 0}},
    {1050, 1067, {0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 9.53, 12.7, 0, 0, 0, 0, 0}},
    {1100, 1118, {0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 9.53, 12.7, 0, 0, 0, 0, 0}},
    {1150, 1168, {0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 9.53, 12.7, 0, 0, 0, 0, 0}},
    {1200, 1219, {0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 9.53, 12.7, 0, 0, 0, 0, 0}},
};

/// Where each nominal size stands among them, -1: nowhere. Looked up and not searched for, as rows of an array can be.
inline constexpr auto places = [] {
    std::array<std::int32_t, 1201> made{};
    made.fill(-1);
    std::int32_t place = 0;
    for (const Size& size : sizes) made[static_cast<std::size_t>(size.dn)] = place++;
    return made;
}();

inline std::int32_t place_of(Count dn)
{
    return places[static_cast<std::size_t>(static_cast<std::int32_t>(dn.value))];  // up to 1200 by the record
}

/// Its line in a table that begins with the first of them, or a later one. Of none the table's first: a row of an array
/// is computed first and judged after.
inline std::size_t line_of(std::int32_t place, std::int32_t first = 0)
{
    return static_cast<std::size_t>(std::max(place, first) - first);
}

inline NoValue no_such_size(Count dn)
{
    return {
        CUTWATER_NO_ANSWER,
        "nominal_diameter",
        "DN {0} is no nominal size of the standard: 6, 8, 10, 15, 20, 25, 32, 40, 50, 65, 80, 90, 100, 125, 150, 200, "
        "250, 300, then by 50 to 1200",
        {{dn.value, ""}}};
}

inline NoValue no_such_wall(Count dn)
{
    return {CUTWATER_NO_ANSWER, "schedule", "the standard has no wall of that schedule for DN {0}", {{dn.value, ""}}};
}

/// The table column by column, a schedule's walls one after another: a row of an array takes its number by one index.
struct Columns {
    std::array<double, std::size(sizes)> outside;
    std::array<double, std::size(sizes) * words_of<PipeSchedule>.size()> walls;
};
inline constexpr Columns columns = [] {
    Columns made{};
    for (std::size_t place = 0; place < std::size(sizes); ++place) {
        made.outside[place] = sizes[place].outside;
        for (std::size_t schedule = 0; schedule < std::size(sizes[0].wall); ++schedule)
            made.walls[schedule * std::size(sizes) + place] = sizes[place].wall[schedule];
    }
    return made;
}();

}  // namespace nominal

inline Outcome<std::tuple<Length, Length, Length>> nominal_pipe_bore(Count nominal_diameter, PipeSchedule schedule)
{
    const std::int32_t place = nominal::place_of(nominal_diameter);
    const std::size_t listed = nominal::line_of(place);
    const double outside = nominal::columns.outside[listed];
    const double wall = nominal::columns.walls[static_cast<std::size_t>(schedule) * std::size(nominal::sizes) + listed];
    const bool holds = (place >= 0) & (wall > 0);
    return {std::tuple(units::mm(outside - 2 * wall), units::mm(outside), units::mm(wall)), holds,
            place < 0 ? nominal::no_such_size(nominal_diameter) : nominal::no_such_wall(nominal_diameter)};
}

inline constexpr Record<&nominal_pipe_bore> nominal_pipe_bore_record{
    .name = "nominal_pipe_bore",
    .meaning = "Inside diameter of a steel pipe by its nominal size and schedule",
    .also = "pipe ID|inside diameter|NPS|DN|schedule 40|schedule 80|pipe table|wall thickness of a pipe",
    .inputs = {input("nominal_diameter", "DN", units::count, between(6, 1200),
                     "nominal size DN: 100 for NPS 4, 50 for NPS 2, 25 for NPS 1"),
               choice<PipeSchedule>("schedule", "schedule", "schedule or weight class; with S for stainless steel",
                                    PipeSchedule::s40)},
    .results = {output("bore", "d", units::mm, "inside diameter of the nominal wall"),
                output("outside_diameter", "D", units::mm, "outside diameter"),
                output("wall", "t", units::mm, "nominal wall")},
    .equation = "d = D - 2 t",
    .source = "ASME B36.10M and B36.19M dimensions (as the open library fluids 1.0.22 carries them, read)",
    .cautions = {"Mill tolerance on the wall is 12.5 %: a bore may be larger or smaller. Lined, plastic and metric (EN "
                 "10220) pipes are "
                 "other pipes."},
    .example = {"100, \"40\"", "102.26, 114.3, 6.02", "hand calculation: 114.3 - 2 x 6.02"}};

}  // namespace cutwater::formulas
