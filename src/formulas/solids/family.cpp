#include "catalogue/erased.hpp"
#include "formulas/solids/records.hpp"

namespace cutwater {

using namespace formulas;

constexpr const FunctionInfo* solids_functions[] = {
    entry<slurry_head_ratio_record>,   entry<slurry_efficiency_ratio_record>, entry<slurry_power_record>,
    entry<curve_slurry_record>,        entry<settling_velocity_record>,       entry<hindered_settling_velocity_record>,
    entry<deposition_velocity_record>, entry<slurry_pipe_friction_record>,    entry<slurry_friction_from_v50_record>,
    entry<wear_life_ratio_record>,
};

extern const Family solids_family;  // a const without this would stay inside this file
constinit const Family solids_family{"solids", "Solids-bearing liquids", 60, solids_functions};

}  // namespace cutwater
