#include "catalogue/erased.hpp"
#include "formulas/least_flow/records.hpp"

namespace cutwater {

using namespace formulas;

constexpr const FunctionInfo* least_flow_functions[] = {
    entry<temperature_rise_record>,
    entry<compression_temperature_rise_record>,
    entry<total_temperature_rise_record>,
    entry<temperature_rise_at_flow_record>,
    entry<thermal_minimum_flow_record>,
    entry<allowed_temperature_rise_record>,
    entry<thermal_minimum_flow_from_npsh_record>,
    entry<closed_valve_heating_rate_record>,
    entry<time_to_temperature_record>,
    entry<falling_head_flow_record>,
    entry<suction_recirculation_flow_record>,
    entry<preferred_region_record>,
    entry<operating_region_record>,
    entry<bypass_flow_record>,
    entry<bypass_orifice_bore_record>,
    entry<bypass_orifice_cavitation_record>,
};

extern const Family least_flow_family;  // a const without this would stay inside this file
constinit const Family least_flow_family{"least_flow", "Least flow and heating", 70, least_flow_functions};

}  // namespace cutwater
