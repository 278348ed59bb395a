// A vessel of boiling water whose heating steam fails: its pressure falls as cold water comes in.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "elementary/elementary.hpp"
#include "formulas/limits.hpp"
#include "formulas/liquid/water_saturation.hpp"

#include <tuple>

namespace cutwater::formulas {

inline std::tuple<Points<Temperature>, Points<AbsolutePressure>, Time> deaerator_decay(Series<Time> times,
                                                                                       AbsolutePressure first_pressure,
                                                                                       Volume stored, Flow feed,
                                                                                       Temperature feed_temperature)
{
    const Time constant = stored / feed;
    const Temperature first = water::saturation_temperature(first_pressure);
    std::tuple<Points<Temperature>, Points<AbsolutePressure>, Time> decay{{}, {}, constant};
    for (std::size_t i = 0; i < times.size(); ++i) {
        const double left = elementary::exp(-Ratio(times[i] / constant).value());
        const Temperature now = feed_temperature + left * (first - feed_temperature);
        std::get<0>(decay).push_back(now);
        std::get<1>(decay).push_back(water::saturation_pressure(now));
    }
    return decay;
}

inline constexpr auto deaerator_decay_record = record<&deaerator_decay>(
    {.name = "deaerator_decay",
     .meaning = "Pressure of a vessel of boiling water over time once its heating steam fails and cold water still "
                "comes in",
     .also = "deaerator pressure decay|load rejection|turbine trip|shut-down transient|feed water tank|pegging steam "
             "lost",
     .inputs = {series("times", "t_i", units::second, from(0), "times since the steam failed", 1),
                input("first_pressure", "p_0", units::bara, between(0.02, 100), "pressure in the vessel before"),
                input("stored_volume", "V", units::m3, above(0), "boiling water in the vessel, its level held"),
                input("feed_flow", "Q", units::m3h, above(0), "cold water that comes in, as much as goes out"),
                input("feed_temperature", "T_c", units::degC, between(0, 300), "temperature of the cold water")},
     .results = {output_series<Temperature>("temperatures", "T_i", units::degC, "temperatures in the vessel"),
                 output_series<AbsolutePressure>("pressures", "p_i", units::bara,
                                                 "pressures in the vessel: for npsh_in_pressure_decay"),
                 output("time_constant", "tau", units::second, "time in which the difference falls to 37 %")},
     .equation = "T = T_c + (T_0 - T_c) e^(-t/tau), tau = V/Q; T_0 and p on the saturation line",
     .source =
         "heat balance of a well mixed vessel, one specific heat; saturation line: IAPWS-IF97, region 4. Articles "
         "of a power engineers' magazine on deaerators tell the event (excerpts read)",
     .cautions =
         {"Water alone, and all of it mixed at once. A balance by enthalpies gives up to 2 % more pressure. "
          "But cold water that reaches only the spray zone pulls the "
          "pressure down faster at first. The metal's heat and the flashing water, left out, slow it down.",
          "For npsh_in_pressure_decay give times closer together than the suction line's time, at first above all: "
          "wide steps hide the steepest fall and flatter.",
          "Steam that still comes, or a blanket of gas, holds the pressure up; do not count on it.",
          caution::hot_or_toxic},
     .example = {"[0, 600], 5, 60, 180, 40", "[151.836, 107.832], [5, 1.33244], 1200",
                 "computed apart: 40 + 111.836 e^(-0.5); saturation pressure by python3-iapws"}},
    relation<"feed_temperature", "first_pressure">(
        [](Temperature cold, AbsolutePressure p) { return cold < water::saturation_temperature(p); },
        "it must be colder than the boiling water in the vessel"));

}  // namespace cutwater::formulas
