#include "catalogue/erased.hpp"
#include "formulas/duty/records.hpp"

namespace cutwater {

using namespace formulas;

constexpr const FunctionInfo* duty_functions[] = {
    entry<whole_duty_record>,
    entry<whole_duty_on_system_points_record>,
    entry<duty_on_system_points_record>,
    entry<duty_on_mixed_friction_record>,
    entry<mixed_friction_heads_record>,
    entry<line_heads_record>,
    entry<flow_balance_on_system_points_record>,
    entry<energy_by_profile_heads_record>,
    entry<rated_against_best_record>,
    entry<greatest_power_on_curve_record>,
    entry<least_speed_against_static_head_record>,
    entry<greatest_flow_by_suction_record>,
    entry<greatest_flow_by_suction_points_record>,
    entry<greatest_speed_by_suction_record>,
    entry<npsh3_expected_record>,
    entry<deaerator_decay_record>,
    entry<npsh_in_pressure_decay_record>,
    entry<npsh3_curve_at_speed_record>,
    entry<efficiency_curve_at_speed_record>,
    entry<npsh3_curve_at_trim_record>,
    entry<efficiency_curve_at_trim_record>,
    entry<gas_share_at_pressure_record>,
    entry<npsh3_with_gas_record>,
    entry<head_with_gas_record>,
    entry<starting_torque_curve_record>,
    entry<run_up_time_on_torques_record>,
    entry<npsh3_from_test_record>,
    entry<npsh3_verdict_record>,
    entry<two_offers_record>,
};

extern const Family duty_family;  // a const without this would stay inside this file
constinit const Family duty_family{"duty", "The whole duty", 85, duty_functions};

}  // namespace cutwater
