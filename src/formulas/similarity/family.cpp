#include "catalogue/erased.hpp"
#include "formulas/similarity/records.hpp"

namespace cutwater {

using namespace formulas;

constexpr const FunctionInfo* similarity_functions[] = {
    entry<flow_at_speed_record>,
    entry<head_at_speed_record>,
    entry<power_at_speed_record>,
    entry<npsh3_at_speed_record>,
    entry<flow_at_trim_record>,
    entry<head_at_trim_record>,
    entry<power_at_trim_record>,
    entry<point_at_small_trim_record>,
    entry<npsh3_at_trim_record>,
    entry<specific_speed_record>,
    entry<specific_speed_us_record>,
    entry<type_number_record>,
    entry<specific_speed_from_us_record>,
    entry<specific_speed_from_type_number_record>,
    entry<specific_speed_us_from_metric_record>,
    entry<specific_speed_us_from_type_number_record>,
    entry<type_number_from_specific_speed_record>,
    entry<type_number_from_us_record>,
    entry<suction_specific_speed_record>,
    entry<suction_specific_speed_us_record>,
    entry<tip_speed_record>,
    entry<head_coefficient_record>,
    entry<flow_coefficient_record>,
    entry<specific_diameter_record>,
    entry<impeller_form_record>,
    entry<minimum_efficiency_eu_record>,
    entry<attainable_efficiency_record>,
    entry<usual_efficiency_record>,
};

extern const Family similarity_family;  // a const without this would stay inside this file
constinit const Family similarity_family{"similarity", "Similarity and shape", 30, similarity_functions};

}  // namespace cutwater
