#include "catalogue/erased.hpp"
#include "formulas/acceptance/records.hpp"

namespace cutwater {

using namespace formulas;

constexpr const FunctionInfo* acceptance_functions[] = {
    entry<acceptance_tolerances_record>,      entry<acceptance_limits_record>,
    entry<acceptance_verdict_record>,         entry<acceptance_verdict_efficiency_record>,
    entry<acceptance_verdict_power_record>,   entry<acceptance_margin_record>,
    entry<acceptance_margins_record>,         entry<test_to_rated_speed_record>,
    entry<test_points_to_rated_speed_record>, entry<random_uncertainty_record>,
    entry<measurement_uncertainty_record>,    entry<efficiency_uncertainty_record>,
    entry<allowed_uncertainty_record>,
};

extern const Family acceptance_family;  // a const without this would stay inside this file
constinit const Family acceptance_family{"acceptance", "Acceptance test", 90, acceptance_functions};

}  // namespace cutwater
