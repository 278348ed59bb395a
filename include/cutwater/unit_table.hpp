// Every unit as a typed constant: 50 * units::m3h is a Flow and nothing else.
#pragma once

#include <cutwater/tables/conventions.hpp>
#include <cutwater/tables/electrical.hpp>
#include <cutwater/tables/fluids.hpp>
#include <cutwater/tables/mechanics.hpp>
#include <cutwater/tables/power.hpp>
#include <cutwater/tables/pressure.hpp>
#include <cutwater/tables/thermal.hpp>

#include <span>

namespace cutwater {

/// Every quantity with its units, for tools that walk them.
std::span<const QuantityInfo* const> all_quantities() noexcept;

namespace units {

// mechanics
inline constexpr Unit<Length> metre = unit<Length>("m");
inline constexpr Unit<Length> mm = unit<Length>("mm");
inline constexpr Unit<Length> cm = unit<Length>("cm");
inline constexpr Unit<Length> um = unit<Length>("um");
inline constexpr Unit<Length> km = unit<Length>("km");
inline constexpr Unit<Length> ft = unit<Length>("ft");
inline constexpr Unit<Length> in = unit<Length>("in");
inline constexpr Unit<Length> thou = unit<Length>("thou");
inline constexpr Unit<InverseLength> per_mm = unit<InverseLength>("1/mm");
inline constexpr Unit<InverseLength> per_m = unit<InverseLength>("1/m");
inline constexpr Unit<InverseLength> per_in = unit<InverseLength>("1/in");
inline constexpr Unit<Area> m2 = unit<Area>("m2");
inline constexpr Unit<Area> mm2 = unit<Area>("mm2");
inline constexpr Unit<Area> cm2 = unit<Area>("cm2");
inline constexpr Unit<Area> ft2 = unit<Area>("ft2");
inline constexpr Unit<Area> in2 = unit<Area>("in2");
inline constexpr Unit<SecondMoment> mm4 = unit<SecondMoment>("mm4");
inline constexpr Unit<SecondMoment> cm4 = unit<SecondMoment>("cm4");
inline constexpr Unit<SecondMoment> m4 = unit<SecondMoment>("m4");
inline constexpr Unit<Volume> m3 = unit<Volume>("m3");
inline constexpr Unit<Volume> litre = unit<Volume>("l");
inline constexpr Unit<Volume> ml = unit<Volume>("ml");
inline constexpr Unit<Volume> us_gal = unit<Volume>("US gal");
inline constexpr Unit<Volume> imp_gal = unit<Volume>("imp gal");
inline constexpr Unit<Volume> ft3 = unit<Volume>("ft3");
inline constexpr Unit<Volume> in3 = unit<Volume>("in3");
inline constexpr Unit<Volume> bbl = unit<Volume>("bbl");
inline constexpr Unit<Time> second = unit<Time>("s");
inline constexpr Unit<Time> minute = unit<Time>("min");
inline constexpr Unit<Time> hour = unit<Time>("h");
inline constexpr Unit<Time> day = unit<Time>("d");
inline constexpr Unit<Time> month = unit<Time>("month");
inline constexpr Unit<Time> year = unit<Time>("year");
inline constexpr Unit<Time> ms_time = unit<Time>("ms");
inline constexpr Unit<Velocity> ms = unit<Velocity>("m/s");
inline constexpr Unit<Velocity> mms = unit<Velocity>("mm/s");
inline constexpr Unit<Velocity> kmh = unit<Velocity>("km/h");
inline constexpr Unit<Velocity> fts = unit<Velocity>("ft/s");
inline constexpr Unit<Velocity> ftmin = unit<Velocity>("ft/min");
inline constexpr Unit<Velocity> ins = unit<Velocity>("in/s");
inline constexpr Unit<Velocity> mm_year = unit<Velocity>("mm/year");
inline constexpr Unit<Velocity> thou_year = unit<Velocity>("thou/year");
inline constexpr Unit<Acceleration> ms2 = unit<Acceleration>("m/s2");
inline constexpr Unit<Acceleration> mms2 = unit<Acceleration>("mm/s2");
inline constexpr Unit<Acceleration> gn = unit<Acceleration>("gn");
inline constexpr Unit<Acceleration> fts2 = unit<Acceleration>("ft/s2");
inline constexpr Unit<Mass> kg = unit<Mass>("kg");
inline constexpr Unit<Mass> gram = unit<Mass>("g");
inline constexpr Unit<Mass> tonne = unit<Mass>("t");
inline constexpr Unit<Mass> lb = unit<Mass>("lb");
inline constexpr Unit<Mass> us_ton = unit<Mass>("US ton");
inline constexpr Unit<Mass> imp_ton = unit<Mass>("imp ton");
inline constexpr Unit<Force> newton = unit<Force>("N");
inline constexpr Unit<Force> kN = unit<Force>("kN");
inline constexpr Unit<Force> daN = unit<Force>("daN");
inline constexpr Unit<Force> lbf = unit<Force>("lbf");
inline constexpr Unit<Force> kgf = unit<Force>("kgf");
inline constexpr Unit<Stiffness> Nm_stiff = unit<Stiffness>("N/m");
inline constexpr Unit<Stiffness> Nmm_stiff = unit<Stiffness>("N/mm");
inline constexpr Unit<Stiffness> kNmm_stiff = unit<Stiffness>("kN/mm");
inline constexpr Unit<Stiffness> lbfin_stiff = unit<Stiffness>("lbf/in");
inline constexpr Unit<Angle> deg = unit<Angle>("deg");
inline constexpr Unit<Angle> rad = unit<Angle>("rad");
inline constexpr Unit<MomentOfInertia> kgm2 = unit<MomentOfInertia>("kg m2");
inline constexpr Unit<MomentOfInertia> lbft2 = unit<MomentOfInertia>("lb ft2");
inline constexpr Unit<MomentOfInertia> lbin2 = unit<MomentOfInertia>("lb in2");
inline constexpr Unit<Unbalance> gmm = unit<Unbalance>("g mm");
inline constexpr Unit<Unbalance> kgmm = unit<Unbalance>("kg mm");
inline constexpr Unit<Unbalance> kgm = unit<Unbalance>("kg m");
inline constexpr Unit<Unbalance> ozin = unit<Unbalance>("oz in");

// fluids
inline constexpr Unit<Flow> m3h = unit<Flow>("m3/h");
inline constexpr Unit<Flow> m3s = unit<Flow>("m3/s");
inline constexpr Unit<Flow> m3min = unit<Flow>("m3/min");
inline constexpr Unit<Flow> m3d = unit<Flow>("m3/d");
inline constexpr Unit<Flow> ls = unit<Flow>("l/s");
inline constexpr Unit<Flow> lmin = unit<Flow>("l/min");
inline constexpr Unit<Flow> lh = unit<Flow>("l/h");
inline constexpr Unit<Flow> megalitre_d = unit<Flow>("Ml/d");
inline constexpr Unit<Flow> us_gpm = unit<Flow>("US gpm");
inline constexpr Unit<Flow> imp_gpm = unit<Flow>("imp gpm");
inline constexpr Unit<Flow> ft3s = unit<Flow>("ft3/s");
inline constexpr Unit<Flow> ft3min = unit<Flow>("ft3/min");
inline constexpr Unit<Flow> bbl_d = unit<Flow>("bbl/d");
inline constexpr Unit<Flow> us_mgd = unit<Flow>("US mgd");
inline constexpr Unit<MassFlow> kgs = unit<MassFlow>("kg/s");
inline constexpr Unit<MassFlow> kgh = unit<MassFlow>("kg/h");
inline constexpr Unit<MassFlow> kgmin = unit<MassFlow>("kg/min");
inline constexpr Unit<MassFlow> th = unit<MassFlow>("t/h");
inline constexpr Unit<MassFlow> lbh = unit<MassFlow>("lb/h");
inline constexpr Unit<MassFlow> lbs = unit<MassFlow>("lb/s");
inline constexpr Unit<Density> kgm3 = unit<Density>("kg/m3");
inline constexpr Unit<Density> gcm3 = unit<Density>("g/cm3");
inline constexpr Unit<Density> lbft3 = unit<Density>("lb/ft3");
inline constexpr Unit<Density> lbgal = unit<Density>("lb/US gal");
inline constexpr Unit<Density> lbimpgal = unit<Density>("lb/imp gal");
inline constexpr Unit<DynamicViscosity> mPas = unit<DynamicViscosity>("mPa s");
inline constexpr Unit<DynamicViscosity> Pas = unit<DynamicViscosity>("Pa s");
inline constexpr Unit<DynamicViscosity> poise = unit<DynamicViscosity>("P");
inline constexpr Unit<DynamicViscosity> uPas = unit<DynamicViscosity>("uPa s");
inline constexpr Unit<DynamicViscosity> lbfsft2 = unit<DynamicViscosity>("lbf s/ft2");
inline constexpr Unit<KinematicViscosity> mm2s = unit<KinematicViscosity>("mm2/s");
inline constexpr Unit<KinematicViscosity> m2s = unit<KinematicViscosity>("m2/s");
inline constexpr Unit<KinematicViscosity> stokes = unit<KinematicViscosity>("St");
inline constexpr Unit<KinematicViscosity> ft2s = unit<KinematicViscosity>("ft2/s");
inline constexpr Unit<SystemResistance> h2m5 = unit<SystemResistance>("h2/m5");
inline constexpr Unit<SystemResistance> s2m5 = unit<SystemResistance>("s2/m5");

// pressure
inline constexpr Unit<PressureDifference> bar = unit<PressureDifference>("bar");
inline constexpr Unit<PressureDifference> Pa = unit<PressureDifference>("Pa");
inline constexpr Unit<PressureDifference> kPa = unit<PressureDifference>("kPa");
inline constexpr Unit<PressureDifference> MPa = unit<PressureDifference>("MPa");
inline constexpr Unit<PressureDifference> GPa = unit<PressureDifference>("GPa");
inline constexpr Unit<PressureDifference> Nmm2 = unit<PressureDifference>("N/mm2");
inline constexpr Unit<PressureDifference> mbar = unit<PressureDifference>("mbar");
inline constexpr Unit<PressureDifference> psi = unit<PressureDifference>("psi");
inline constexpr Unit<PressureDifference> ksi = unit<PressureDifference>("ksi");
inline constexpr Unit<PressureDifference> atm = unit<PressureDifference>("atm");
inline constexpr Unit<PressureDifference> kgfcm2 = unit<PressureDifference>("kgf/cm2");
inline constexpr Unit<PressureDifference> mmHg = unit<PressureDifference>("mmHg");
inline constexpr Unit<PressureDifference> inHg = unit<PressureDifference>("inHg");
inline constexpr Unit<PressureDifference> mH2O = unit<PressureDifference>("mH2O");
inline constexpr Unit<PressureDifference> mmH2O = unit<PressureDifference>("mmH2O");
inline constexpr Unit<PressureDifference> ftH2O = unit<PressureDifference>("ftH2O");
inline constexpr Unit<PressureDifference> inH2O = unit<PressureDifference>("inH2O");
inline constexpr Unit<Compressibility> per_GPa = unit<Compressibility>("1/GPa");
inline constexpr Unit<Compressibility> per_MPa = unit<Compressibility>("1/MPa");
inline constexpr Unit<Compressibility> per_bar = unit<Compressibility>("1/bar");
inline constexpr Unit<Compressibility> per_Pa = unit<Compressibility>("1/Pa");
inline constexpr Unit<Compressibility> per_psi = unit<Compressibility>("1/psi");
inline constexpr Unit<AbsolutePressure> bara = unit<AbsolutePressure>("bara");
inline constexpr Unit<AbsolutePressure> Pa_a = unit<AbsolutePressure>("Pa(a)");
inline constexpr Unit<AbsolutePressure> kPa_a = unit<AbsolutePressure>("kPa(a)");
inline constexpr Unit<AbsolutePressure> MPa_a = unit<AbsolutePressure>("MPa(a)");
inline constexpr Unit<AbsolutePressure> mbar_a = unit<AbsolutePressure>("mbar(a)");
inline constexpr Unit<AbsolutePressure> psia = unit<AbsolutePressure>("psia");
inline constexpr Unit<AbsolutePressure> atm_a = unit<AbsolutePressure>("atm(a)");
inline constexpr Unit<AbsolutePressure> kgfcm2_a = unit<AbsolutePressure>("kgf/cm2(a)");
inline constexpr Unit<AbsolutePressure> mmHg_a = unit<AbsolutePressure>("mmHg(a)");
inline constexpr Unit<AbsolutePressure> inHg_a = unit<AbsolutePressure>("inHg(a)");
inline constexpr Unit<AbsolutePressure> torr_a = unit<AbsolutePressure>("torr");
inline constexpr Unit<GaugePressure> barg = unit<GaugePressure>("barg");
inline constexpr Unit<GaugePressure> kPa_g = unit<GaugePressure>("kPa(g)");
inline constexpr Unit<GaugePressure> MPa_g = unit<GaugePressure>("MPa(g)");
inline constexpr Unit<GaugePressure> mbar_g = unit<GaugePressure>("mbar(g)");
inline constexpr Unit<GaugePressure> Pa_g = unit<GaugePressure>("Pa(g)");
inline constexpr Unit<GaugePressure> psig = unit<GaugePressure>("psig");
inline constexpr Unit<GaugePressure> kgfcm2_g = unit<GaugePressure>("kgf/cm2(g)");
inline constexpr Unit<GaugePressure> mmHg_g = unit<GaugePressure>("mmHg(g)");
inline constexpr Unit<GaugePressure> inHg_g = unit<GaugePressure>("inHg(g)");

// thermal
inline constexpr Unit<Temperature> degC = unit<Temperature>("degC");
inline constexpr Unit<Temperature> degF = unit<Temperature>("degF");
inline constexpr Unit<Temperature> kelvin = unit<Temperature>("K");
inline constexpr Unit<Temperature> degR = unit<Temperature>("degR");
inline constexpr Unit<TemperatureDifference> kelvin_difference = unit<TemperatureDifference>("K");
inline constexpr Unit<TemperatureDifference> degF_difference = unit<TemperatureDifference>("delta degF");
inline constexpr Unit<TemperatureRate> K_min = unit<TemperatureRate>("K/min");
inline constexpr Unit<TemperatureRate> K_s = unit<TemperatureRate>("K/s");
inline constexpr Unit<TemperatureRate> K_h = unit<TemperatureRate>("K/h");
inline constexpr Unit<TemperatureRate> degF_min = unit<TemperatureRate>("degF/min");
inline constexpr Unit<TemperatureRate> degF_h = unit<TemperatureRate>("degF/h");
inline constexpr Unit<ThermalExpansion> per_K = unit<ThermalExpansion>("1/K");
inline constexpr Unit<ThermalExpansion> um_per_K = unit<ThermalExpansion>("1e-6/K");
inline constexpr Unit<ThermalExpansion> per_degF = unit<ThermalExpansion>("1/degF");
inline constexpr Unit<SpecificHeat> kJkgK = unit<SpecificHeat>("kJ/(kg K)");
inline constexpr Unit<SpecificHeat> JkgK = unit<SpecificHeat>("J/(kg K)");
inline constexpr Unit<SpecificHeat> btulbF = unit<SpecificHeat>("Btu/(lb degF)");
inline constexpr Unit<SpecificHeat> kcalkgK = unit<SpecificHeat>("kcal/(kg K)");
inline constexpr Unit<HeatCapacity> kJK = unit<HeatCapacity>("kJ/K");
inline constexpr Unit<HeatCapacity> JK = unit<HeatCapacity>("J/K");
inline constexpr Unit<HeatCapacity> btuF = unit<HeatCapacity>("Btu/degF");
inline constexpr Unit<HeatTransfer> Wm2K = unit<HeatTransfer>("W/(m2 K)");
inline constexpr Unit<HeatTransfer> kWm2K = unit<HeatTransfer>("kW/(m2 K)");
inline constexpr Unit<HeatTransfer> btuhft2F = unit<HeatTransfer>("Btu/(h ft2 degF)");
inline constexpr Unit<ThermalConductivity> WmK = unit<ThermalConductivity>("W/(m K)");
inline constexpr Unit<ThermalConductivity> WmmK = unit<ThermalConductivity>("W/(mm K)");
inline constexpr Unit<ThermalConductivity> btuhftF = unit<ThermalConductivity>("Btu/(h ft degF)");
inline constexpr Unit<ThermalConductance> WK = unit<ThermalConductance>("W/K");
inline constexpr Unit<ThermalConductance> kWK = unit<ThermalConductance>("kW/K");
inline constexpr Unit<ThermalConductance> btuhF = unit<ThermalConductance>("Btu/(h degF)");
inline constexpr Unit<TemperatureCoefficient> percent_per_K = unit<TemperatureCoefficient>("%/K");
inline constexpr Unit<TemperatureCoefficient> part_per_K = unit<TemperatureCoefficient>("1/K");
inline constexpr Unit<TemperatureCoefficient> ppm_per_K = unit<TemperatureCoefficient>("ppm/K");
inline constexpr Unit<HeatPerLength> Wm = unit<HeatPerLength>("W/m");
inline constexpr Unit<HeatPerLength> kWm = unit<HeatPerLength>("kW/m");
inline constexpr Unit<HeatPerLength> btuhft = unit<HeatPerLength>("Btu/(h ft)");
inline constexpr Unit<SpecificEnergy> kJkg = unit<SpecificEnergy>("kJ/kg");
inline constexpr Unit<SpecificEnergy> Jkg = unit<SpecificEnergy>("J/kg");
inline constexpr Unit<SpecificEnergy> btulb = unit<SpecificEnergy>("Btu/lb");
inline constexpr Unit<SpecificEnergy> kcalkg = unit<SpecificEnergy>("kcal/kg");
inline constexpr Unit<HeatFlux> Wm2 = unit<HeatFlux>("W/m2");
inline constexpr Unit<HeatFlux> kWm2 = unit<HeatFlux>("kW/m2");
inline constexpr Unit<HeatFlux> Wmm2 = unit<HeatFlux>("W/mm2");
inline constexpr Unit<HeatFlux> bar_ms = unit<HeatFlux>("bar m/s");
inline constexpr Unit<HeatFlux> MPa_ms = unit<HeatFlux>("MPa m/s");
inline constexpr Unit<HeatFlux> psi_ftmin = unit<HeatFlux>("psi ft/min");

// power
inline constexpr Unit<Energy> kWh = unit<Energy>("kWh");
inline constexpr Unit<Energy> MWh = unit<Energy>("MWh");
inline constexpr Unit<Energy> Wh = unit<Energy>("Wh");
inline constexpr Unit<Energy> kJ = unit<Energy>("kJ");
inline constexpr Unit<Energy> MJ = unit<Energy>("MJ");
inline constexpr Unit<Energy> GJ = unit<Energy>("GJ");
inline constexpr Unit<Energy> joule = unit<Energy>("J");
inline constexpr Unit<Energy> btu = unit<Energy>("Btu");
inline constexpr Unit<Energy> kcal = unit<Energy>("kcal");
inline constexpr Unit<Power> kW = unit<Power>("kW");
inline constexpr Unit<Power> watt = unit<Power>("W");
inline constexpr Unit<Power> MW = unit<Power>("MW");
inline constexpr Unit<Power> hp = unit<Power>("hp");
inline constexpr Unit<Power> metric_hp = unit<Power>("PS");
inline constexpr Unit<Power> electrical_hp = unit<Power>("hp(E)");
inline constexpr Unit<Power> btuh = unit<Power>("Btu/h");
inline constexpr Unit<Power> kcalh = unit<Power>("kcal/h");
inline constexpr Unit<Torque> Nm = unit<Torque>("N m");
inline constexpr Unit<Torque> kNm = unit<Torque>("kN m");
inline constexpr Unit<Torque> Nmm = unit<Torque>("N mm");
inline constexpr Unit<Torque> lbfft = unit<Torque>("lbf ft");
inline constexpr Unit<Torque> lbfin = unit<Torque>("lbf in");
inline constexpr Unit<Torque> kgfm = unit<Torque>("kgf m");
inline constexpr Unit<RotationalSpeed> rpm = unit<RotationalSpeed>("1/min");
inline constexpr Unit<RotationalSpeed> rps = unit<RotationalSpeed>("1/s");
inline constexpr Unit<RotationalSpeed> rad_s = unit<RotationalSpeed>("rad/s");
inline constexpr Unit<AngularVelocity> radian_per_second = unit<AngularVelocity>("rad/s");
inline constexpr Unit<AngularVelocity> degree_per_second = unit<AngularVelocity>("deg/s");
inline constexpr Unit<Frequency> hertz = unit<Frequency>("Hz");
inline constexpr Unit<Frequency> kHz = unit<Frequency>("kHz");
inline constexpr Unit<Frequency> per_minute = unit<Frequency>("1/min");
inline constexpr Unit<Frequency> per_hour = unit<Frequency>("1/h");
inline constexpr Unit<EnergyPerVolume> kWhm3 = unit<EnergyPerVolume>("kWh/m3");
inline constexpr Unit<EnergyPerVolume> Whm3 = unit<EnergyPerVolume>("Wh/m3");
inline constexpr Unit<EnergyPerVolume> Jm3 = unit<EnergyPerVolume>("J/m3");
inline constexpr Unit<EnergyPerVolume> kJm3 = unit<EnergyPerVolume>("kJ/m3");
inline constexpr Unit<EnergyPerVolume> MJm3 = unit<EnergyPerVolume>("MJ/m3");
inline constexpr Unit<EnergyPerVolume> kWh_us_gal = unit<EnergyPerVolume>("kWh/US gal");
inline constexpr Unit<MassPerEnergy> kgkWh = unit<MassPerEnergy>("kg/kWh");
inline constexpr Unit<MassPerEnergy> gkWh = unit<MassPerEnergy>("g/kWh");
inline constexpr Unit<MassPerEnergy> kgGJ = unit<MassPerEnergy>("kg/GJ");
inline constexpr Unit<MassPerEnergy> lbMWh = unit<MassPerEnergy>("lb/MWh");

// electrical
inline constexpr Unit<ElectricCurrent> ampere = unit<ElectricCurrent>("A");
inline constexpr Unit<ElectricCurrent> kA = unit<ElectricCurrent>("kA");
inline constexpr Unit<ElectricCurrent> mA = unit<ElectricCurrent>("mA");
inline constexpr Unit<Voltage> volt = unit<Voltage>("V");
inline constexpr Unit<Voltage> kV = unit<Voltage>("kV");
inline constexpr Unit<Voltage> mV = unit<Voltage>("mV");
inline constexpr Unit<MagneticFluxDensity> tesla = unit<MagneticFluxDensity>("T");
inline constexpr Unit<MagneticFluxDensity> millitesla = unit<MagneticFluxDensity>("mT");
inline constexpr Unit<MagneticFluxDensity> gauss = unit<MagneticFluxDensity>("G");
inline constexpr Unit<ElectricalConductivity> MSm = unit<ElectricalConductivity>("MS/m");
inline constexpr Unit<ElectricalConductivity> Sm = unit<ElectricalConductivity>("S/m");
inline constexpr Unit<ElectricalResistivity> uohmm = unit<ElectricalResistivity>("uohm m");
inline constexpr Unit<ElectricalResistivity> uohmcm = unit<ElectricalResistivity>("uohm cm");
inline constexpr Unit<ElectricalResistivity> ohmm = unit<ElectricalResistivity>("ohm m");

// conventions
inline constexpr Unit<Ratio> number = unit<Ratio>("");
inline constexpr Unit<Ratio> number_percent = unit<Ratio>("%");
inline constexpr Unit<Fraction> fraction = unit<Fraction>("");
inline constexpr Unit<Fraction> percent = unit<Fraction>("%");
inline constexpr Unit<Fraction> ppm = unit<Fraction>("ppm");
inline constexpr Unit<Count> count = unit<Count>("");
inline constexpr Unit<Money> money = unit<Money>("");
inline constexpr Unit<SpecificSpeed> specific_speed = unit<SpecificSpeed>("");
inline constexpr Unit<SpecificSpeedUs> specific_speed_us = unit<SpecificSpeedUs>("");
inline constexpr Unit<SayboltSeconds> saybolt = unit<SayboltSeconds>("SUS");
inline constexpr Unit<ValveCoefficient> kv = unit<ValveCoefficient>("Kv");
inline constexpr Unit<ValveCoefficient> cv = unit<ValveCoefficient>("Cv");

}  // namespace units
}  // namespace cutwater

#include <cutwater/trade_names.hpp>
