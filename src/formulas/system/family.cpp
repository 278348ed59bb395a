#include "catalogue/erased.hpp"
#include "formulas/system/records.hpp"

namespace cutwater {

using namespace formulas;

constexpr const FunctionInfo* system_functions[] = {
    entry<pipe_velocity_record>,
    entry<bore_for_velocity_record>,
    entry<velocity_head_record>,
    entry<reynolds_number_record>,
    entry<friction_factor_record>,
    entry<pipe_friction_head_record>,
    entry<fitting_head_record>,
    entry<valve_head_loss_record>,
    entry<system_resistance_record>,
    entry<system_head_record>,
    entry<total_head_from_gauges_record>,
    entry<npsh_available_record>,
    entry<npsh_available_from_gauge_record>,
    entry<npsh_at_datum_record>,
    entry<npsh_margin_record>,
    entry<npsh_margin_ratio_record>,
    entry<npsh3_with_viscosity_record>,
    entry<greatest_suction_lift_record>,
    entry<minimum_submergence_record>,
    entry<wet_well_volume_record>,
    entry<priming_time_record>,
    entry<pressure_surge_record>,
    entry<pressure_wave_speed_record>,
    entry<surge_period_record>,
    entry<closure_surge_record>,
    entry<line_packing_surge_record>,
};

extern const Family system_family;  // a const without this would stay inside this file
constinit const Family system_family{"system", "System and suction", 20, system_functions};

}  // namespace cutwater
