#include "catalogue/erased.hpp"
#include "formulas/viscous/records.hpp"

namespace cutwater {

using namespace formulas;

constexpr const FunctionInfo* viscous_functions[] = {
    entry<viscosity_parameter_record>,   entry<viscosity_parameter_from_duty_record>, entry<viscous_flow_ratio_record>,
    entry<viscous_head_ratio_record>,    entry<viscous_efficiency_ratio_record>,      entry<viscous_performance_record>,
    entry<water_equivalent_duty_record>,
};

extern const Family viscous_family;  // a const without this would stay inside this file
constinit const Family viscous_family{"viscous", "Viscous liquids", 50, viscous_functions};

}  // namespace cutwater
