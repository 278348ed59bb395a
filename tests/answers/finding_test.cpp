// Words of the trade, as someone types them who does not know the names: what must be among the first five found.
// The words are common practice; which function they stand for is our own reading of them.
#include <catch2/catch.hpp>

#include "answers/finding.hpp"
#include "catalogue/families.hpp"

#include <algorithm>
#include <initializer_list>
#include <string>

using namespace cutwater;

namespace {

struct Asked {
    const char* words;
    std::initializer_list<const char*> wanted;
};

const Asked asked[] = {
    {"suction safe", {"npsh_margin", "npsh_available"}},
    {"is it safe on suction", {"npsh_margin"}},
    {"NPSHR", {"curve_npsh3"}},
    {"npsha", {"npsh_available"}},
    {"NPSH required at another speed", {"npsh3_at_speed"}},
    {"dead head", {"closed_valve_heating_rate", "shutoff_head_rise"}},
    {"deadheaded", {"closed_valve_heating_rate"}},
    {"how long can it run against a shut valve", {"time_to_temperature"}},
    {"cavitation", {"npsh_available", "npsh_margin"}},
    {"wire to water", {"wire_to_water_efficiency", "overall_efficiency"}},
    {"specific gravity", {"relative_density", "density_from_relative"}},
    {"shut-off head", {"shutoff_head_rise"}},
    {"brake horsepower", {"pump_power_input"}},
    {"BHP", {"pump_power_input"}},
    {"motor size", {"motor_rating_needed"}},
    {"which motor do I need", {"motor_rating_needed"}},
    {"viscosity correction", {"viscous_performance", "viscosity_parameter"}},
    {"pumping cold oil", {"viscosity_at_temperature"}},
    {"minimum flow", {"thermal_minimum_flow"}},
    {"min flow", {"thermal_minimum_flow"}},
    {"impeller trim", {"trim_for_duty", "head_at_trim"}},
    {"trimmed impeller diameter for a duty", {"trim_for_duty"}},
    {"affinity laws", {"flow_at_speed", "head_at_speed"}},
    {"VFD savings", {"speed_control_saving"}},
    {"slow it down", {"speed_for_duty", "curve_at_speed"}},
    {"water hammer", {"pressure_surge"}},
    {"friction loss in pipe", {"pipe_friction_head"}},
    {"elbow loss", {"fitting_head"}},
    {"system curve", {"system_head", "system_resistance"}},
    {"duty point", {"duty_flow", "duty_head"}},
    {"two pumps in parallel", {"two_curves_in_parallel"}},
    {"BEP", {"best_efficiency_flow"}},
    {"preferred operating region", {"preferred_region", "operating_region"}},
    {"cSt from SSU", {"viscosity_from_saybolt"}},
    {"vapor pressure of water", {"water_vapour_pressure"}},
    {"psig to psia", {"absolute_from_gauge"}},
    {"acceptance test", {"acceptance_verdict"}},
    {"Nss", {"suction_specific_speed"}},
    {"tip speed", {"tip_speed"}},
    {"life cycle cost", {"life_cycle_cost"}},
    {"payback", {"payback_time"}},
    {"motor amps", {"motor_current"}},
    {"sump vortex", {"minimum_submergence"}},
    {"how high can it lift", {"greatest_suction_lift"}},
    {"slurry derating", {"slurry_head_ratio"}},
    {"settling of solids in the line", {"deposition_velocity"}},
    {"priming", {"priming_time"}},
    {"drooping curve", {"curve_is_stable"}},
    {"CO2", {"carbon_emission"}},
    {"TDH", {"total_head_from_gauges", "system_head"}},
    {"cavitaton", {"npsh_available"}},  // misspelt
    {"specfic speed", {"specific_speed"}},
};

}  // namespace

TEST_CASE("Words of the trade find their functions")
{
    for (const Asked& one : asked) {
        const auto found = find_functions(one.words);
        for (const char* wanted : one.wanted) {
            std::string shown;
            bool met = false;
            for (std::size_t i = 0; i < std::min<std::size_t>(found.size(), 5); ++i) {
                const std::string name = function_at(static_cast<std::size_t>(found[i])).name;
                shown += " " + name;
                met = met || name == wanted;
            }
            INFO(one.words << " ->" << shown);
            CHECKED_ELSE(met) { FAIL_CHECK(wanted << " is not among the first five"); }
        }
    }
}

TEST_CASE("A function's own name finds it first, however it is written")
{
    for (std::size_t i = 0; i < function_count(); ++i) {
        std::string name = function_at(i).name;
        const auto found = find_functions(name);
        INFO(name);
        REQUIRE_FALSE(found.empty());
        CHECK(function_at(static_cast<std::size_t>(found.front())).name == name);
        std::replace(name.begin(), name.end(), '_', ' ');
        CHECK(find_functions(name) == found);
    }
}

TEST_CASE("Words that stand for nothing find nothing")
{
    for (const char* words : {"", "   ", "?!", "the of and", "xyzzyqq", "\xff\xfe"})
        CHECK(find_functions(words).empty());
}

TEST_CASE("A plural finds what the singular finds")
{
    for (const auto& [plural, singular] : {std::pair{"stuffing boxes", "stuffing box"},
                                           {"losses", "loss"},
                                           {"viscosities", "viscosity"},
                                           {"bearings", "bearing"}}) {
        INFO(plural);
        CHECK(!find_functions(singular).empty());
        CHECK(find_functions(plural) == find_functions(singular));
    }
}
