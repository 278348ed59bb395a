#include "catalogue/erased.hpp"
#include "formulas/liquid/records.hpp"

namespace cutwater {

using namespace formulas;

constexpr const FunctionInfo* liquid_functions[] = {
    entry<water_density_record>,
    entry<water_vapour_pressure_record>,
    entry<water_boiling_temperature_record>,
    entry<water_dynamic_viscosity_record>,
    entry<water_kinematic_viscosity_record>,
    entry<water_specific_heat_record>,
    entry<water_thermal_expansion_record>,
    entry<water_bulk_modulus_record>,
    entry<vapour_pressure_antoine_record>,
    entry<vapour_pressure_two_point_record>,
    entry<viscosity_at_temperature_record>,
    entry<viscosity_from_saybolt_record>,
    entry<saybolt_from_viscosity_record>,
    entry<density_at_temperature_record>,
    entry<density_two_point_record>,
    entry<relative_density_record>,
    entry<density_from_relative_record>,
    entry<density_from_api_gravity_record>,
    entry<api_gravity_from_density_record>,
    entry<kinematic_from_dynamic_record>,
    entry<dynamic_from_kinematic_record>,
    entry<slurry_density_record>,
    entry<slurry_volume_fraction_record>,
    entry<slurry_mass_fraction_record>,
    entry<barometric_pressure_record>,
    entry<absolute_from_gauge_record>,
    entry<gauge_from_absolute_record>,
    entry<head_from_pressure_record>,
    entry<pressure_from_head_record>,
};

extern const Family liquid_family;
constinit const Family liquid_family{"liquid", "Liquid properties, pressure and head", 10, liquid_functions};

}  // namespace cutwater
