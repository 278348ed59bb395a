#include "catalogue/erased.hpp"
#include "formulas/process_liquids/records.hpp"

namespace cutwater {

using namespace formulas;

constexpr const FunctionInfo* process_liquids_functions[] = {
    entry<solution_density_record>,
    entry<solution_dynamic_viscosity_record>,
    entry<strong_sulphuric_acid_density_record>,
    entry<strong_caustic_soda_density_record>,
    entry<caustic_soda_vapour_pressure_record>,
    entry<sea_water_density_record>,
    entry<sea_water_dynamic_viscosity_record>,
    entry<glycol_freezing_point_record>,
    entry<glycol_density_record>,
    entry<glycol_dynamic_viscosity_record>,
    entry<glycol_specific_heat_record>,
    entry<suspension_viscosity_record>,
};

extern const Family process_liquids_family;  // a const without this would stay inside this file
constinit const Family process_liquids_family{"process_liquids", "Process liquids", 15, process_liquids_functions};

}  // namespace cutwater
