// The inputs that most functions of curves take, and the conditions on them.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "formulas/pairs.hpp"
#include "formulas/limits.hpp"

namespace cutwater::formulas::curves {

constexpr auto flows(const char* meaning = "flows of the curve's points")
{
    return series("flows", "Q_i", units::m3h, from(0), meaning, 2, Order::rising);
}
constexpr auto heads(const char* meaning = "heads of the curve's points")
{
    return series("heads", "H_i", units::metre, limits::head_m, meaning, 2);
}
constexpr auto pump_flows() { return flows("flows of the pump curve's points"); }
constexpr auto pump_heads() { return heads("heads of the pump curve's points"); }

/// The curve of one pump of several.
template <int Pump>
constexpr auto flows_of(const char* meaning)
{
    constexpr const char* names[] = {"flows_1", "flows_2", "flows_3"};
    constexpr const char* symbols[] = {"Q_1,i", "Q_2,i", "Q_3,i"};
    return series(names[Pump - 1], symbols[Pump - 1], units::m3h, from(0), meaning, 2, Order::rising);
}
template <int Pump>
constexpr auto heads_of(const char* meaning)
{
    constexpr const char* names[] = {"heads_1", "heads_2", "heads_3"};
    constexpr const char* symbols[] = {"H_1,i", "H_2,i", "H_3,i"};
    return series(names[Pump - 1], symbols[Pump - 1], units::metre, limits::head_m, meaning, 2);
}
template <int Pump>
constexpr auto flows_of()
{
    constexpr const char* meanings[] = {"flows of pump 1, from 0 on", "flows of pump 2, from 0 on",
                                        "flows of pump 3, from 0 on"};
    return flows_of<Pump>(meanings[Pump - 1]);
}
template <int Pump>
constexpr auto falling_heads_of()
{
    constexpr const char* meanings[] = {"heads of pump 1, falling", "heads of pump 2, falling",
                                        "heads of pump 3, falling"};
    return heads_of<Pump>(meanings[Pump - 1]);
}

constexpr auto read_at()
{
    return input("flow", "Q", units::m3h, from(0), "where to read the curve; between the first and the last point");
}

constexpr auto static_head(const char* meaning = "head of the system at no flow")
{
    return input("static_head", "H_s", units::metre, limits::head_m, meaning);
}
constexpr auto resistance()
{
    return input("resistance", "k", units::h2m5, limits::resistance_h2m5,
                 "system resistance: friction head over flow squared");
}

inline bool falling(const Series<Head>& heads)
{
    for (std::size_t i = 1; i < heads.size(); ++i)
        if (!(heads[i] < heads[i - 1])) return false;
    return true;
}

template <Name Heads>
constexpr auto falls()
{
    return relation<Heads>(
        &falling, "the head must fall from point to point: on a drooping curve the flow at one head is not one; "
                  "give the falling part from closed valve on");
}
template <Name Flows>
constexpr auto begins_at_closed_valve()
{
    return relation<Flows>([](const Series<Flow>& flows) { return flows.front() == Flow{}; },
                           "the curve must begin at closed valve, flow 0");
}

}  // namespace cutwater::formulas::curves
