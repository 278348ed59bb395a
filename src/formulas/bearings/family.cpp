#include "catalogue/erased.hpp"
#include "formulas/bearings/records.hpp"

namespace cutwater {

using namespace formulas;

constexpr const FunctionInfo* bearings_functions[] = {
    entry<deep_groove_equivalent_load_record>,
    entry<angular_contact_equivalent_load_record>,
    entry<bearing_set_rating_record>,
    entry<static_equivalent_load_record>,
    entry<static_safety_record>,
    entry<bearing_life_hours_record>,
    entry<bearing_pair_life_record>,
    entry<bearing_system_life_record>,
    entry<mean_bearing_load_record>,
    entry<reference_viscosity_record>,
    entry<fatigue_load_limit_record>,
    entry<contamination_factor_record>,
    entry<life_modification_factor_record>,
    entry<modified_bearing_life_record>,
    entry<bearing_loads_record>,
    entry<bearing_frequencies_record>,
    entry<relubrication_interval_record>,
    entry<grease_quantity_record>,
    entry<bearing_friction_heat_record>,
    entry<bearing_housing_temperature_record>,
    entry<bearing_temperature_record>,
};

extern const Family bearings_family;  // a const without this would stay inside this file
constinit const Family bearings_family{"bearings", "Rolling bearings", 110, bearings_functions};

}  // namespace cutwater
