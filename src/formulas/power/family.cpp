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
};

extern const Family power_family;  // a const without this would stay inside this file
constinit const Family power_family{"power", "Power, motor, energy", power_functions};

}  // namespace cutwater
