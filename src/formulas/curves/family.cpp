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
};

extern const Family curves_family;  // a const without this would stay inside this file
constinit const Family curves_family{"curves", "Curves", curves_functions};

}  // namespace cutwater
