// The list of every quantity.
#include <cutwater/unit_table.hpp>

namespace cutwater {

namespace {

constexpr const QuantityInfo* quantities[] = {
    &quantity_info<Length>,
    &quantity_info<InverseLength>,
    &quantity_info<Area>,
    &quantity_info<SecondMoment>,
    &quantity_info<Volume>,
    &quantity_info<Time>,
    &quantity_info<Velocity>,
    &quantity_info<Acceleration>,
    &quantity_info<Mass>,
    &quantity_info<Force>,
    &quantity_info<Stiffness>,
    &quantity_info<Angle>,
    &quantity_info<MomentOfInertia>,
    &quantity_info<Unbalance>,
    &quantity_info<Flow>,
    &quantity_info<MassFlow>,
    &quantity_info<Density>,
    &quantity_info<DynamicViscosity>,
    &quantity_info<KinematicViscosity>,
    &quantity_info<SystemResistance>,
    &quantity_info<PressureDifference>,
    &quantity_info<Compressibility>,
    &quantity_info<AbsolutePressure>,
    &quantity_info<GaugePressure>,
    &quantity_info<Temperature>,
    &quantity_info<TemperatureDifference>,
    &quantity_info<TemperatureRate>,
    &quantity_info<ThermalExpansion>,
    &quantity_info<SpecificHeat>,
    &quantity_info<HeatCapacity>,
    &quantity_info<HeatTransfer>,
    &quantity_info<ThermalConductivity>,
    &quantity_info<ThermalConductance>,
    &quantity_info<HeatFlux>,
    &quantity_info<TemperatureCoefficient>,
    &quantity_info<HeatPerLength>,
    &quantity_info<SpecificEnergy>,
    &quantity_info<Energy>,
    &quantity_info<Power>,
    &quantity_info<Torque>,
    &quantity_info<RotationalSpeed>,
    &quantity_info<AngularVelocity>,
    &quantity_info<Frequency>,
    &quantity_info<EnergyPerVolume>,
    &quantity_info<MassPerEnergy>,
    &quantity_info<ElectricCurrent>,
    &quantity_info<Voltage>,
    &quantity_info<MagneticFluxDensity>,
    &quantity_info<ElectricalConductivity>,
    &quantity_info<ElectricalResistivity>,
    &quantity_info<Ratio>,
    &quantity_info<Fraction>,
    &quantity_info<Count>,
    &quantity_info<Money>,
    &quantity_info<SpecificSpeed>,
    &quantity_info<SpecificSpeedUs>,
    &quantity_info<SayboltSeconds>,
    &quantity_info<ValveCoefficient>,
};

}  // namespace

std::span<const QuantityInfo* const> all_quantities() noexcept { return quantities; }

}  // namespace cutwater
