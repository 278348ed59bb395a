// Setting the clearance: how far to move, what heat leaves of it, how fast it is worn away.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/as_given.hpp"
#include "catalogue/record.hpp"

#include <cmath>
#include <tuple>

namespace cutwater::formulas {

enum class SettingMove { close, open, leave };

}  // namespace cutwater::formulas

namespace cutwater {

template <>
inline constexpr Words<3> words_of<formulas::SettingMove>{"close", "open", "leave"};

}  // namespace cutwater

namespace cutwater::formulas {

namespace setting {

inline constexpr Interval expansions = between(-20, 300);  // 1e-6/K
inline constexpr Interval temperatures_degC = between(-270, 1200);
inline constexpr const char* pump_makers_setting =
    "The clearance to set is the pump maker's, cold or for the pumping temperature as he states; isolate, lock off and "
    "drain before the shaft is turned.";

constexpr auto temperature(const char* name, const char* symbol, const char* meaning)
{
    return input(name, symbol, units::degC, temperatures_degC, meaning);
}
constexpr auto expansion(const char* name, const char* symbol, const char* meaning)
{
    return input(name, symbol, units::um_per_K, expansions, meaning);
}

}  // namespace setting

inline std::tuple<SettingMove, Length, Ratio, Ratio, Length> clearance_adjustment(Length now, Length wanted,
                                                                                  Length lead, Count divisions)
{
    const Length move = now - wanted;
    const double turns = Ratio(move / lead).value();
    // Down, so that less than the wanted clearance is never set; what fails to be whole by rounding alone is whole.
    const double whole = std::floor(turns * divisions.value + 1e-9);
    const SettingMove which = whole > 0 ? SettingMove::close : whole < 0 ? SettingMove::open : SettingMove::leave;
    return {which, move, Ratio(turns * divisions.value), Ratio(whole), now - whole / divisions.value * lead};
}

inline constexpr auto clearance_adjustment_record = record<&clearance_adjustment>(
    {.name = "clearance_adjustment",
     .meaning =
         "Turn of a threaded bearing carrier, or of adjusting nuts, that brings an axial clearance to its setting",
     .also = "impeller adjustment|axial adjustment|micrometer adjustment|lift adjustment|bearing carrier divisions",
     .inputs = {input("clearance", "e", units::mm, between(0, 50),
                      "clearance as it is; 0 when turned until it touches"),
                input("wanted_clearance", "e_w", units::mm, between(0, 50), "clearance to set"),
                input("thread_lead", "P", units::mm, between(0.1, 25),
                      "axial movement of one turn: the pitch of a single thread"),
                input("divisions", "N", units::count, between(1, 360), "marks, lugs or flats in one turn", 1)},
     .results = {output_word<SettingMove>("direction", "direction", "close, open, or leave as it is"),
                 output("move", "x", units::mm, "axial movement, positive when it closes"),
                 output("exact_divisions", "m", units::number, "divisions to turn"),
                 output("whole_divisions", "m_w", units::number,
                        "the same, whole, so that no less than the wanted clearance is set"),
                 output("set_clearance", "e_s", units::mm, "clearance after the whole divisions")},
     .equation = "x = e - e_w; m = N x/P, m_w = floor(m); e_s = e - m_w P/N",
     .source = "geometry of a thread; H. P. Bloch and F. K. Geitner, Major Process Equipment Maintenance and Repair, "
               "p. 93: 12 threads an inch and 12 places, 0.007 in each (page read)",
     .cautions = {setting::pump_makers_setting, "Tightening the lock screws takes up the thread's play and moves the "
                                                "shaft once more: measure again with a dial gauge."},
     .example = {"0.95, 0.4, 2, 20", "\"close\", 0.55, 5.5, 5, 0.45", "hand calculation"}});

inline Outcome<std::tuple<Length, Length>> hot_running_clearance(Length cold, Length dimension,
                                                                 ThermalExpansion turning, Temperature turning_at,
                                                                 ThermalExpansion still, Temperature still_at,
                                                                 Temperature cold_at)
{
    const Length change = dimension * (still * (still_at - cold_at) - turning * (turning_at - cold_at));
    const Length hot = cold + change;
    if (!(hot.value() > 0))
        return NoValue{CUTWATER_NO_ANSWER,
                       "cold_clearance",
                       "the parts would touch: a cold clearance of {0} changes by {1}",
                       {number_in(cold, units::mm), number_in(change, units::mm)}};
    return std::tuple(hot, change);
}

inline constexpr auto hot_running_clearance_record = record<&hot_running_clearance>(
    {.name = "hot_running_clearance",
     .meaning = "Running clearance that is left when rotor and casing have warmed",
     .also = "hot clearance|differential expansion|thermal growth|cold setting",
     .inputs = {input("cold_clearance", "e_c", units::mm, above_up_to(0, 50), "clearance as set or measured cold"),
                input("dimension", "L", units::mm, above_up_to(0, 20000),
                      "length from the thrust bearing to an axial clearance, or the diameter of a ring with its "
                      "diametral clearance"),
                setting::expansion("rotor_expansion", "a_r",
                                   "mean expansion of the turning part; 16 to 16.5 for austenitic, 13 for duplex, 10.5 "
                                   "to 11 for 13 % chromium steel"),
                setting::temperature("rotor_temperature", "T_r", "its mean temperature over that dimension"),
                setting::expansion("casing_expansion", "a_s", "mean expansion of the stationary part"),
                setting::temperature("casing_temperature", "T_s", "its mean temperature over that dimension"),
                input("cold_temperature", "T_0", units::degC, setting::temperatures_degC,
                      "temperature at which the clearance was set", 20)},
     .results = {output("hot_clearance", "e_h", units::mm, "clearance running"),
                 output("change", "de", units::mm, "what heat adds; negative when it closes")},
     .equation = "e_h = e_c + L [a_s (T_s - T_0) - a_r (T_r - T_0)]",
     .source = "linear expansion; mean coefficients from 20 degC: EN 10088-1 as tabled by the British Stainless Steel "
               "Association (excerpt read)",
     .cautions =
         {"Where the rotor grows towards the stationary part. For the gap on its other side exchange the two parts.",
          "A warming rotor runs ahead of its casing: the least clearance comes at start and at a sudden change, not in "
          "steady running.",
          setting::pump_makers_setting},
     .sound_anywhere = true,
     .example = {"0.5, 150, 16.5, 200, 13.5, 200", "0.419, -0.081", "hand calculation"}});

inline std::tuple<AsGiven<units::mm_year>, AsGiven<units::month>> clearance_wear(AsGiven<units::mm> set,
                                                                                 AsGiven<units::mm> now,
                                                                                 AsGiven<units::month> since,
                                                                                 AsGiven<units::mm> limit)
{
    const auto rate = quotient<units::mm_year>(now - set, since);
    return {rate, quotient<units::month>(limit - now, rate)};
}

inline constexpr auto clearance_wear_record = record<&clearance_wear>(
    {.name = "clearance_wear",
     .meaning = "Rate at which a clearance grows, and the time until it reaches a limit",
     .also = "wear rate|time to reset|remaining life of wear rings",
     .inputs = {input("set_clearance", "e_0", units::mm, between(0, 50), "clearance as set or as new"),
                input("clearance", "e", units::mm, above_up_to(0, 50), "clearance as it is"),
                input("time_since", "T", units::month, above_up_to(0, 1200),
                      "time since it was set; running time when the pump stands much"),
                input("limit", "e_l", units::mm, above_up_to(0, 50),
                      "clearance not to be exceeded; twice that of new rings is common practice")},
     .results = {output("rate", "r", units::mm_year, "growth in a year"),
                 output("time_left", "T_l", units::month, "time until the limit, at that rate")},
     .equation = "r = (e - e_0)/T; T_l = (e_l - e)/r",
     .source = "straight line through two measurements; wearing rings to be renewed when their clearance has doubled: "
               "Pump Handbook (page read)",
     .cautions = {"Abrasion grows with leakage: the last part goes faster than the first."},
     .sound_anywhere = true,
     .example = {"0.4, 0.7, 18, 1.0", "0.2, 18", "hand calculation"}},
    relation<"clearance", "set_clearance">([](AsGiven<units::mm> e, AsGiven<units::mm> set) { return e > set; },
                                           "it must exceed the set clearance: without wear there is no rate"),
    relation<"limit", "clearance">([](AsGiven<units::mm> l, AsGiven<units::mm> e) { return l >= e; },
                                   "it must not be less than the clearance: the limit is passed already"));

}  // namespace cutwater::formulas
