#include "catalogue/erased.hpp"
#include "formulas/clearance/records.hpp"

namespace cutwater {

using namespace formulas;

constexpr const FunctionInfo* clearance_functions[] = {
    entry<ring_head_difference_record>,     entry<ring_clearance_leakage_record>,
    entry<vane_edge_leakage_record>,        entry<vane_clearance_head_loss_record>,
    entry<clearance_head_ratio_record>,     entry<clearance_efficiency_ratio_record>,
    entry<leakage_efficiency_ratio_record>, entry<head_with_leakage_record>,
    entry<clearance_power_penalty_record>,  entry<field_head_check_record>,
    entry<field_efficiency_check_record>,   entry<clearance_from_head_loss_record>,
    entry<clearance_adjustment_record>,     entry<hot_running_clearance_record>,
    entry<clearance_wear_record>,           entry<clearance_payback_record>,
    entry<clearance_reset_interval_record>, entry<corrosion_rate_record>,
    entry<corrosion_life_record>,           entry<wall_needed_record>,
};

extern const Family clearance_family;  // a const without this would stay inside this file
constinit const Family clearance_family{"clearance", "Running clearance, wear and wall", 110, clearance_functions};

}  // namespace cutwater
