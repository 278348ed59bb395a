#include "catalogue/erased.hpp"
#include "formulas/rotor/records.hpp"

namespace cutwater {

using namespace formulas;

constexpr const FunctionInfo* rotor_functions[] = {
    entry<radial_thrust_coefficient_record>,
    entry<radial_thrust_record>,
    entry<rim_pressure_record>,
    entry<shroud_pressure_record>,
    entry<shroud_force_record>,
    entry<back_vane_core_rotation_record>,
    entry<back_vane_relief_record>,
    entry<balance_hole_pressure_record>,
    entry<back_force_with_ring_record>,
    entry<back_force_with_vanes_record>,
    entry<back_vane_gap_change_record>,
    entry<inlet_momentum_force_record>,
    entry<shaft_end_force_record>,
    entry<vane_side_force_record>,
    entry<axial_thrust_record>,
    entry<thrust_row_record>,
    entry<shaft_deflection_at_seal_record>,
    entry<shaft_deflection_record>,
    entry<shaft_stiffness_ratio_record>,
    entry<first_critical_speed_record>,
    entry<critical_speed_separation_record>,
    entry<shaft_shear_stress_record>,
    entry<shaft_combined_stress_record>,
    entry<shaft_endurance_limit_record>,
    entry<shaft_fatigue_safety_record>,
    entry<key_pressure_record>,
    entry<coupling_torque_record>,
    entry<starting_torque_record>,
    entry<run_up_time_record>,
    entry<vibration_zone_record>,
    entry<vibration_alarm_trip_record>,
    entry<vane_passing_frequency_record>,
    entry<permissible_unbalance_record>,
    entry<balance_grade_record>,
    entry<unbalance_force_record>,
};

extern const Family rotor_family;  // a const without this would stay inside this file
constinit const Family rotor_family{"rotor", "Rotor: thrusts, shaft, vibration", 100, rotor_functions};

}  // namespace cutwater
