#include "catalogue/erased.hpp"
#include "formulas/containment/records.hpp"

namespace cutwater {

using namespace formulas;

constexpr const FunctionInfo* containment_functions[] = {
    entry<shutoff_pressure_record>,
    entry<casing_pressure_record>,
    entry<hydrostatic_test_pressure_record>,
    entry<flange_rating_record>,
    entry<flange_check_record>,
    entry<flange_test_pressure_record>,
    entry<rating_at_temperature_record>,
    entry<nozzle_load_limits_record>,
    entry<nozzle_load_check_record>,
    entry<wall_needed_from_bore_record>,
    entry<corrosion_life_from_readings_record>,
    entry<trapped_liquid_pressure_rise_record>,
    entry<trapped_water_pressure_record>,
};

extern const Family containment_family;  // a const without this would stay inside this file
constinit const Family containment_family{"containment", "Containment: casing, flanges, walls, loads", 130,
                                          containment_functions};

}  // namespace cutwater
