// Suction from a boiling vessel whose pressure falls: the suction line still holds the hotter liquid of a while ago.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "formulas/limits.hpp"
#include "formulas/pairs.hpp"
#include "formulas/system/suction.hpp"

#include <algorithm>
#include <tuple>

namespace cutwater::formulas {

namespace duty {

/// The vessel's pressure, straight between the points; before the first it stood still.
class Decay {
public:
    Decay(const Series<Time>& times, const Series<AbsolutePressure>& pressures) : t_(times), p_(pressures) {}

    double last() const { return t(t_.size() - 1); }
    double t(std::size_t i) const { return t_[i].value(); }
    double pressure(double time) const
    {
        if (time <= t(0)) return p(0);
        std::size_t i = 1;
        while (i + 1 < t_.size() && t(i) < time) ++i;
        return p(i - 1) + (p(i) - p(i - 1)) * ((time - t(i - 1)) / (t(i) - t(i - 1)));
    }

private:
    double p(std::size_t i) const { return p_[i].above_zero().value(); }
    const Series<Time>& t_;
    const Series<AbsolutePressure>& p_;
};

}  // namespace duty

inline Outcome<std::tuple<Head, Time, Time>> npsh_in_pressure_decay(Series<Time> times,
                                                                    Series<AbsolutePressure> vessel_pressures,
                                                                    Length liquid_level, Head friction,
                                                                    Volume line_volume, Flow flow, Density density)
{
    const duty::Decay vessel(times, vessel_pressures);
    const Time on_the_way = line_volume / flow;
    const double delay = on_the_way.value();
    if (vessel.last() - vessel.t(0) < delay)
        return NoValue{.status = CUTWATER_NO_ANSWER,
                       .argument = "times",
                       .sentence = "the pressures end at {0}, before the line is rid of the hot liquid, which takes "
                                   "{1}: give them for so long at least",
                       .numbers = {number_in(times.back(), units::second), number_in(on_the_way, units::second)}};
    double least = 0;
    double at = vessel.t(0);
    const auto look = [&](double time) {  // the first of the least ones, rounding apart
        if (time > vessel.last()) return;
        const double above_vapour = vessel.pressure(time) - vessel.pressure(time - delay);
        if (above_vapour < least - 1e-6) {
            least = above_vapour;
            at = time;
        } else if (above_vapour < least + 1e-6) {
            at = std::min(at, time);
        }
    };
    // Both pressures are straight between the points and the points a delay later: the least lies at one of those.
    for (std::size_t i = 0; i < times.size(); ++i) {
        look(vessel.t(i));
        look(vessel.t(i) + delay);
    }
    const Head lost = PressureDifference::from_value(least) / (density * standard_gravity);
    return std::tuple(Head(liquid_level - friction + lost), Time::from_value(at), on_the_way);
}

inline constexpr auto npsh_in_pressure_decay_record = record<&npsh_in_pressure_decay>(
    {.name = "npsh_in_pressure_decay",
     .meaning =
         "Least NPSH available while a boiling vessel loses its pressure and the suction line still holds hot liquid",
     .also = "deaerator transient|pressure decay|load rejection|flashing in the suction line|boiler feed pump "
             "NPSH|shut-down transient",
     .inputs = {series("times", "t_i", units::second, from(0),
                       "times of the vessel's pressures, from the beginning of the fall on", 2, Order::rising),
                series("vessel_pressures", "p_i", units::bara, limits::surface_bara,
                       "pressures in the vessel, its liquid boiling all the while", 2),
                input("liquid_level", "z", units::metre, limits::head_m, "lowest surface above the pump's NPSH datum"),
                input("friction_head", "h_f", units::metre, limits::head_from_0_m,
                      "losses of the suction line at that flow"),
                input("line_volume", "V", units::m3, above(0),
                      "volume of the suction line from the vessel to the pump"),
                input("flow", "Q", units::m3h, above(0),
                      "flow through the line meanwhile: the least of it keeps the hot liquid longest"),
                input("density", "rho", units::kgm3, limits::density_kgm3, "density of the liquid")},
     .results = {output("least_npsh", "NPSHA_min", units::metre, "least net positive suction head available"),
                 output("at_time", "t", units::second, "when it is least, for the first time"),
                 output("line_time", "tau", units::second, "time that the liquid takes from the vessel to the pump")},
     .equation = "NPSHA(t) = z - h_f + [p(t) - p(t - tau)]/(rho g), tau = V/Q; p straight between the points",
     .source = "the liquid at the pump has the vapour pressure of the vessel a line's time ago: articles of a power "
               "engineers' magazine on deaerators (excerpts "
               "read); definition of NPSH as in npsh_available",
     .cautions =
         {"Flow that stops or falls meanwhile leaves hot liquid in the line for longer: take the least flow of "
          "the event.",
          "The vessel's pressure over time comes from a heat balance or a measurement; a relief valve or cold "
          "make-up makes it fall faster. Heat held by the pipe's wall and mixing in the line are left out.",
          "Give points closer together than the line's time where the pressure falls fastest, mostly at first: a "
          "straight line over a longer step hides the steepest fall and flatters.",
          suction::negative, caution::npsh_margin, caution::hot_or_toxic},
     .example = {"[0, 100], [5, 4], 15, 1, 1, 180, 920", "11.783, 20, 20",
                 "hand calculation: 14 - 20 s x 1000 Pa/s/(920 x 9.80665)"}},
    pairs::equal_length<"vessel_pressures", "times">());

}  // namespace cutwater::formulas
