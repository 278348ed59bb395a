#include "catalogue/erased.hpp"
#include "formulas/special_builds/records.hpp"

namespace cutwater {

using namespace formulas;

constexpr const FunctionInfo* special_builds_functions[] = {
    entry<line_shaft_stretch_record>,      entry<column_stretch_record>,
    entry<line_shaft_clearance_record>,    entry<line_shaft_critical_speed_record>,
    entry<line_shaft_bearing_span_record>, entry<pressure_at_inlet_record>,
    entry<self_priming_lift_record>,       entry<impeller_from_coefficients_record>,
    entry<shaft_end_temperature_record>,
};

extern const Family special_builds_family;  // a const without this would stay inside this file
constinit const Family special_builds_family{
    "special_builds", "Vertical, self-priming, recessed and close-coupled pumps", 160, special_builds_functions};

}  // namespace cutwater
