// Every unit's factor against UDUNITS-2. Where UDUNITS holds a rounded factor (gallon, lbf, Btu) the definition is
// spelled out for its parser instead, so that both sides start from the definition and neither from the other's
// arithmetic.
#include "units/definitions.hpp"

#include <catch2/catch.hpp>

#include <cmath>

namespace cutwater::tests {

namespace {

#define USGAL "(231 in^3)"
#define IMPGAL "(4.54609 l)"
#define LBF "(lb gravity)"
#define PSI "(lb gravity/in^2)"
#define MMHG "(1e-3 m 13595.1 kg/m^3 gravity)"
#define INHG "(in 13595.1 kg/m^3 gravity)"
#define WATER "(1000 kg/m^3 gravity)"
#define BTU "(1055.05585262 J)"
#define YEAR "(365 day)"

const Definitions all[] = {
    {&quantity_info<Length>,
     "m",
     {{"m", "m"}, {"mm", "mm"}, {"cm", "cm"}, {"um", "um"}, {"km", "km"}, {"ft", "ft"}, {"in", "in"}, {"thou", "mil"}}},
    {&quantity_info<InverseLength>, "m^-1", {{"1/mm", "mm^-1"}, {"1/m", "m^-1"}, {"1/in", "in^-1"}}},
    {&quantity_info<Area>, "m^2", {{"m2", "m^2"}, {"mm2", "mm^2"}, {"cm2", "cm^2"}, {"ft2", "ft^2"}, {"in2", "in^2"}}},
    {&quantity_info<SecondMoment>, "m^4", {{"mm4", "mm^4"}, {"cm4", "cm^4"}, {"m4", "m^4"}}},
    {&quantity_info<Volume>,
     "m^3",
     {{"m3", "m^3"},
      {"l", "l"},
      {"ml", "ml"},
      {"US gal", USGAL},
      {"imp gal", IMPGAL},
      {"ft3", "ft^3"},
      {"in3", "in^3"},
      {"bbl", "42 " USGAL}}},
    {&quantity_info<Time>,
     "s",
     {{"s", "s"}, {"min", "min"}, {"h", "h"}, {"d", "day"}, {"month", YEAR "/12"}, {"year", YEAR}, {"ms", "ms"}}},
    {&quantity_info<Velocity>,
     "m/s",
     {{"m/s", "m/s"},
      {"mm/s", "mm/s"},
      {"km/h", "km/h"},
      {"ft/s", "ft/s"},
      {"ft/min", "ft/min"},
      {"in/s", "in/s"},
      {"mm/year", "mm/" YEAR},
      {"thou/year", "mil/" YEAR}}},
    {&quantity_info<Acceleration>,
     "m/s^2",
     {{"m/s2", "m/s^2"}, {"mm/s2", "mm/s^2"}, {"gn", "gravity"}, {"ft/s2", "ft/s^2"}}},
    {&quantity_info<Mass>,
     "kg",
     {{"kg", "kg"}, {"g", "g"}, {"t", "tonne"}, {"lb", "lb"}, {"US ton", "short_ton"}, {"imp ton", "long_ton"}}},
    {&quantity_info<Force>, "N", {{"N", "N"}, {"kN", "kN"}, {"daN", "daN"}, {"lbf", LBF}, {"kgf", "kg gravity"}}},
    {&quantity_info<Stiffness>, "N/m", {{"N/m", "N/m"}, {"N/mm", "N/mm"}, {"kN/mm", "kN/mm"}, {"lbf/in", LBF "/in"}}},
    {&quantity_info<Angle>, "rad", {{"deg", "arc_degree"}, {"rad", "rad"}}},
    {&quantity_info<MomentOfInertia>, "kg m^2", {{"kg m2", "kg m^2"}, {"lb ft2", "lb ft^2"}, {"lb in2", "lb in^2"}}},
    {&quantity_info<Unbalance>,
     "kg m",
     {{"g mm", "g mm"}, {"kg mm", "kg mm"}, {"kg m", "kg m"}, {"oz in", "(lb/16) in"}}},
    {&quantity_info<Flow>,
     "m^3/s",
     {{"m3/h", "m^3/h"},
      {"m3/s", "m^3/s"},
      {"m3/min", "m^3/min"},
      {"m3/d", "m^3/day"},
      {"l/s", "l/s"},
      {"l/min", "l/min"},
      {"l/h", "l/h"},
      {"Ml/d", "Ml/day"},
      {"US gpm", USGAL "/min"},
      {"imp gpm", IMPGAL "/min"},
      {"ft3/s", "ft^3/s"},
      {"ft3/min", "ft^3/min"},
      {"bbl/d", "42 " USGAL "/day"},
      {"US mgd", "1e6 " USGAL "/day"}}},
    {&quantity_info<MassFlow>,
     "kg/s",
     {{"kg/s", "kg/s"},
      {"kg/h", "kg/h"},
      {"kg/min", "kg/min"},
      {"t/h", "tonne/h"},
      {"lb/h", "lb/h"},
      {"lb/s", "lb/s"}}},
    {&quantity_info<Density>,
     "kg/m^3",
     {{"kg/m3", "kg/m^3"},
      {"g/cm3", "g/cm^3"},
      {"lb/ft3", "lb/ft^3"},
      {"lb/US gal", "lb/" USGAL},
      {"lb/imp gal", "lb/" IMPGAL}}},
    {&quantity_info<DynamicViscosity>,
     "Pa s",
     {{"mPa s", "centipoise"}, {"Pa s", "Pa s"}, {"P", "poise"}, {"uPa s", "uPa s"}, {"lbf s/ft2", LBF " s/ft^2"}}},
    {&quantity_info<KinematicViscosity>,
     "m^2/s",
     {{"mm2/s", "centistokes"}, {"m2/s", "m^2/s"}, {"St", "stokes"}, {"ft2/s", "ft^2/s"}}},
    {&quantity_info<SystemResistance>, "s^2/m^5", {{"h2/m5", "h^2/m^5"}, {"s2/m5", "s^2/m^5"}}},
    {&quantity_info<PressureDifference>,
     "Pa",
     {{"bar", "bar"},
      {"Pa", "Pa"},
      {"kPa", "kPa"},
      {"MPa", "MPa"},
      {"GPa", "GPa"},
      {"N/mm2", "N/mm^2"},
      {"mbar", "mbar"},
      {"psi", PSI},
      {"ksi", "1000 " PSI},
      {"atm", "atm"},
      {"kgf/cm2", "kg gravity/cm^2"},
      {"mmHg", MMHG},
      {"inHg", INHG},
      {"mH2O", "m " WATER},
      {"mmH2O", "mm " WATER},
      {"ftH2O", "ft " WATER},
      {"inH2O", "in " WATER}}},
    {&quantity_info<Compressibility>,
     "Pa^-1",
     {{"1/GPa", "GPa^-1"}, {"1/MPa", "MPa^-1"}, {"1/bar", "bar^-1"}, {"1/Pa", "Pa^-1"}, {"1/psi", PSI "^-1"}}},
    {&quantity_info<AbsolutePressure>,
     "Pa",
     {{"bara", "bar"},
      {"Pa(a)", "Pa"},
      {"kPa(a)", "kPa"},
      {"MPa(a)", "MPa"},
      {"mbar(a)", "mbar"},
      {"psia", PSI},
      {"atm(a)", "atm"},
      {"kgf/cm2(a)", "kg gravity/cm^2"},
      {"mmHg(a)", MMHG},
      {"inHg(a)", INHG},
      {"torr", "atm/760"}}},
    {&quantity_info<GaugePressure>,
     "Pa",
     {{"barg", "bar"},
      {"kPa(g)", "kPa"},
      {"MPa(g)", "MPa"},
      {"mbar(g)", "mbar"},
      {"Pa(g)", "Pa"},
      {"psig", PSI},
      {"kgf/cm2(g)", "kg gravity/cm^2"},
      {"mmHg(g)", MMHG},
      {"inHg(g)", INHG}}},
    {&quantity_info<Temperature>, "K", {{"degC", "degC"}, {"degF", "degF"}, {"K", "K"}, {"degR", "degR"}}},
    {&quantity_info<TemperatureDifference>, "K", {{"K", "K"}, {"delta degF", "degR"}}},
    {&quantity_info<TemperatureRate>,
     "K/s",
     {{"K/min", "K/min"}, {"K/s", "K/s"}, {"K/h", "K/h"}, {"degF/min", "degR/min"}, {"degF/h", "degR/h"}}},
    {&quantity_info<ThermalExpansion>, "K^-1", {{"1/K", "K^-1"}, {"1e-6/K", "1e-6 K^-1"}, {"1/degF", "degR^-1"}}},
    {&quantity_info<SpecificHeat>,
     "J/kg/K",
     {{"kJ/(kg K)", "kJ/kg/K"},
      {"J/(kg K)", "J/kg/K"},
      {"Btu/(lb degF)", BTU "/lb/degR"},
      {"kcal/(kg K)", "4.1868 kJ/kg/K"}}},
    {&quantity_info<HeatCapacity>, "J/K", {{"kJ/K", "kJ/K"}, {"J/K", "J/K"}, {"Btu/degF", BTU "/degR"}}},
    {&quantity_info<HeatTransfer>,
     "W/m^2/K",
     {{"W/(m2 K)", "W/m^2/K"}, {"kW/(m2 K)", "kW/m^2/K"}, {"Btu/(h ft2 degF)", BTU "/h/ft^2/degR"}}},
    {&quantity_info<ThermalConductivity>,
     "W/m/K",
     {{"W/(m K)", "W/m/K"}, {"W/(mm K)", "W/mm/K"}, {"Btu/(h ft degF)", BTU "/h/ft/degR"}}},
    {&quantity_info<ThermalConductance>, "W/K", {{"W/K", "W/K"}, {"kW/K", "kW/K"}, {"Btu/(h degF)", BTU "/h/degR"}}},
    {&quantity_info<HeatFlux>,
     "W/m^2",
     {{"W/m2", "W/m^2"},
      {"kW/m2", "kW/m^2"},
      {"W/mm2", "W/mm^2"},
      {"bar m/s", "bar m/s"},
      {"MPa m/s", "MPa m/s"},
      {"psi ft/min", PSI " ft/min"}}},
    {&quantity_info<TemperatureCoefficient>, "K^-1", {{"%/K", "percent/K"}, {"1/K", "K^-1"}, {"ppm/K", "1e-6 K^-1"}}},
    {&quantity_info<HeatPerLength>, "W/m", {{"W/m", "W/m"}, {"kW/m", "kW/m"}, {"Btu/(h ft)", BTU "/h/ft"}}},
    {&quantity_info<SpecificEnergy>,
     "J/kg",
     {{"kJ/kg", "kJ/kg"}, {"J/kg", "J/kg"}, {"Btu/lb", BTU "/lb"}, {"kcal/kg", "4186.8 J/kg"}}},
    {&quantity_info<Energy>,
     "J",
     {{"kWh", "kW h"},
      {"MWh", "MW h"},
      {"Wh", "W h"},
      {"kJ", "kJ"},
      {"MJ", "MJ"},
      {"GJ", "GJ"},
      {"J", "J"},
      {"Btu", BTU},
      {"kcal", "4186.8 J"}}},
    {&quantity_info<Power>,
     "W",
     {{"kW", "kW"},
      {"W", "W"},
      {"MW", "MW"},
      {"hp", "550 ft " LBF "/s"},
      {"PS", "75 kg gravity m/s"},
      {"hp(E)", "746 W"},
      {"Btu/h", BTU "/h"},
      {"kcal/h", "4186.8 J/h"}}},
    {&quantity_info<Torque>,
     "N m",
     {{"N m", "N m"},
      {"kN m", "kN m"},
      {"N mm", "N mm"},
      {"lbf ft", LBF " ft"},
      {"lbf in", LBF " in"},
      {"kgf m", "kg gravity m"}}},
    {&quantity_info<RotationalSpeed>, "s^-1", {{"1/min", "min^-1"}, {"1/s", "s^-1"}, {"rad/s", "s^-1/(2 pi)"}}},
    {&quantity_info<AngularVelocity>, "rad/s", {{"rad/s", "rad/s"}, {"deg/s", "arc_degree/s"}}},
    {&quantity_info<Frequency>, "Hz", {{"Hz", "Hz"}, {"kHz", "kHz"}, {"1/min", "min^-1"}, {"1/h", "h^-1"}}},
    {&quantity_info<EnergyPerVolume>,
     "J/m^3",
     {{"kWh/m3", "kW h/m^3"},
      {"Wh/m3", "W h/m^3"},
      {"J/m3", "J/m^3"},
      {"kJ/m3", "kJ/m^3"},
      {"MJ/m3", "MJ/m^3"},
      {"kWh/US gal", "kW h/" USGAL}}},
    {&quantity_info<MassPerEnergy>,
     "kg/J",
     {{"kg/kWh", "kg/(kW h)"}, {"g/kWh", "g/(kW h)"}, {"kg/GJ", "kg/GJ"}, {"lb/MWh", "lb/(MW h)"}}},
    {&quantity_info<ElectricCurrent>, "A", {{"A", "A"}, {"kA", "kA"}, {"mA", "mA"}}},
    {&quantity_info<Voltage>, "V", {{"V", "V"}, {"kV", "kV"}, {"mV", "mV"}}},
    {&quantity_info<MagneticFluxDensity>, "T", {{"T", "T"}, {"mT", "mT"}, {"G", "gauss"}}},
    {&quantity_info<ElectricalConductivity>, "S/m", {{"MS/m", "MS/m"}, {"S/m", "S/m"}}},
    {&quantity_info<ElectricalResistivity>,
     "ohm m",
     {{"uohm m", "uohm m"}, {"uohm cm", "uohm cm"}, {"ohm m", "ohm m"}}},
    {&quantity_info<Ratio>, "1", {{"", "1"}, {"%", "percent"}}},
    {&quantity_info<Fraction>, "1", {{"", "1"}, {"%", "percent"}, {"ppm", "1e-6"}}},
    {&quantity_info<Count>, "1", {{"", "1"}}},
};

}  // namespace

const Definitions* definitions_of(const QuantityInfo* quantity)
{
    for (const Definitions& candidate : all)
        if (candidate.quantity == quantity) return &candidate;
    return nullptr;
}

bool is_convention(const QuantityInfo* q)
{
    return q == &quantity_info<Money> || q == &quantity_info<SpecificSpeed> || q == &quantity_info<SpecificSpeedUs> ||
           q == &quantity_info<SayboltSeconds> || q == &quantity_info<ValveCoefficient>;
}

System::System()
{
    ut_set_error_message_handler(ut_ignore);
    system.reset(ut_read_xml(nullptr));
}

double by_udunits(const System& system, const char* from, const char* to, double x)
{
    std::unique_ptr<ut_unit, void (*)(ut_unit*)> a(system.parse(from), ut_free), b(system.parse(to), ut_free);
    if (!a || !b) return std::nan("");
    std::unique_ptr<cv_converter, void (*)(cv_converter*)> converter(ut_get_converter(a.get(), b.get()), cv_free);
    return converter ? cv_convert_double(converter.get(), x) : std::nan("");
}

}  // namespace cutwater::tests

using namespace cutwater;
using namespace cutwater::tests;

TEST_CASE("every unit agrees with UDUNITS-2")
{
    const System system;
    REQUIRE(system.system);
    std::size_t compared = 0;
    for (const QuantityInfo* quantity : all_quantities()) {
        if (is_convention(quantity)) continue;
        const Definitions* definitions = definitions_of(quantity);
        INFO(quantity->name);
        REQUIRE(definitions);
        REQUIRE(definitions->units.size() == quantity->count);
        for (const UnitInfo& unit : *quantity) {
            INFO(unit.symbol);
            const auto row = definitions->units.find(unit.symbol);
            REQUIRE(row != definitions->units.end());
            for (const double x : {1.0, 0.1, 68.0, 12345.678}) {
                const double expected = by_udunits(system, row->second, definitions->si, x);
                INFO(x << " " << row->second);
                REQUIRE(std::isfinite(expected));
                // UDUNITS multiplies its way through the definition: a few roundings
                CHECK(std::abs(unit.to_si(x) - expected) <= 2e-15 * std::abs(expected));
                CHECK(std::abs(unit.from_si(expected) - x) <= 2e-15 * (std::abs(x) + unit.offset));
                ++compared;
            }
        }
    }
    CHECK(compared > 700);
}
