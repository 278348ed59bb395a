#include "catalogue/erased.hpp"
#include "formulas/curves/records.hpp"

namespace cutwater {

using namespace formulas;

constexpr const FunctionInfo* curves_functions[] = {
    entry<curve_value_record>,
    entry<curve_slope_record>,
    entry<curve_head_record>,
    entry<curve_power_record>,
    entry<curve_efficiency_record>,
    entry<curve_npsh3_record>,
    entry<duty_flow_record>,
    entry<duty_head_record>,
    entry<speed_for_duty_record>,
    entry<trim_for_duty_record>,
    entry<small_trim_for_duty_record>,
    entry<best_efficiency_flow_record>,
    entry<best_efficiency_record>,
    entry<curve_at_speed_record>,
    entry<power_curve_at_speed_record>,
    entry<curve_at_trim_record>,
    entry<power_curve_at_trim_record>,
    entry<curve_viscous_record>,
    entry<curve_in_parallel_record>,
    entry<curve_in_series_record>,
    entry<two_curves_in_parallel_record>,
    entry<two_curves_in_series_record>,
    entry<flow_balance_record>,
    entry<flow_balance_of_three_record>,
    entry<flow_at_head_record>,
    entry<flow_through_bore_record>,
    entry<shutoff_head_rise_record>,
    entry<curve_is_stable_record>,
    entry<curve_fit_record>,
    entry<fitted_value_record>,
};

extern const Family curves_family;  // a const without this would stay inside this file
constinit const Family curves_family{"curves", "Curves", 80, curves_functions};

}  // namespace cutwater
