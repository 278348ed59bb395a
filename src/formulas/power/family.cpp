#include "catalogue/erased.hpp"
#include "formulas/power/records.hpp"

namespace cutwater {

using namespace formulas;

constexpr const FunctionInfo* power_functions[] = {
    entry<hydraulic_power_record>,
    entry<pump_power_input_record>,
    entry<pump_efficiency_record>,
    entry<shaft_torque_record>,
    entry<motor_power_margin_record>,
    entry<motor_rating_needed_record>,
    entry<motor_efficiency_record>,
    entry<motor_class_required_eu_record>,
    entry<motor_efficiency_at_load_record>,
    entry<synchronous_speed_record>,
    entry<motor_speed_record>,
    entry<motor_current_record>,
    entry<electrical_power_record>,
    entry<drive_efficiency_record>,
    entry<overall_efficiency_record>,
    entry<wire_to_water_efficiency_record>,
    entry<specific_energy_record>,
    entry<specific_energy_from_power_record>,
    entry<annual_energy_record>,
    entry<annual_energy_from_power_record>,
    entry<annual_energy_cost_record>,
    entry<carbon_emission_record>,
    entry<present_value_factor_record>,
    entry<life_cycle_cost_record>,
    entry<payback_time_record>,
    entry<throttling_power_loss_record>,
    entry<speed_control_saving_record>,
    entry<duty_profile_energy_record>,
    entry<cube_law_power_record>,
};

extern const Family power_family;  // a const without this would stay inside this file
constinit const Family power_family{"power", "Power, motor, energy", 40, power_functions};

}  // namespace cutwater
