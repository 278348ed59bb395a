// For programs of the units alone: the ways between quantities that the catalogue would tell.
#include <cutwater/unit_table.hpp>

#include "units/turning.hpp"

namespace cutwater {

const char* function_between(const QuantityInfo& from, const QuantityInfo& to) noexcept
{
    const struct {
        const QuantityInfo& from;
        const QuantityInfo& to;
        const char* function;
    } ways[] = {{quantity_info<GaugePressure>, quantity_info<AbsolutePressure>, "absolute_from_gauge"},
                {quantity_info<AbsolutePressure>, quantity_info<GaugePressure>, "gauge_from_absolute"},
                {quantity_info<Ratio>, quantity_info<Density>, "density_from_relative"},
                {quantity_info<DynamicViscosity>, quantity_info<KinematicViscosity>, "kinematic_from_dynamic"},
                {quantity_info<KinematicViscosity>, quantity_info<DynamicViscosity>, "dynamic_from_kinematic"},
                {quantity_info<SayboltSeconds>, quantity_info<KinematicViscosity>, "viscosity_from_saybolt"},
                {quantity_info<KinematicViscosity>, quantity_info<SayboltSeconds>, "saybolt_from_viscosity"},
                {quantity_info<PressureDifference>, quantity_info<Head>, "head_from_pressure"},
                {quantity_info<Frequency>, quantity_info<RotationalSpeed>, "synchronous_speed"}};
    for (const auto& way : ways)
        if (&from == &way.from && &to == &way.to) return way.function;
    return nullptr;
}

}  // namespace cutwater
