// Units of temperature and heat. Btu: International Table, 1055.05585262 J exactly (NIST SP 811, appendix B.9).
#pragma once

#include <cutwater/unit.hpp>

namespace cutwater {

template <>
struct UnitTable<Temperature> {
    static constexpr const char* type = "Temperature";
    static constexpr const char* name = "temperature";
    static constexpr const char* hint = "write degC, degF or K";
    static constexpr UnitInfo units[] = {
        {"degC", "degC", "Cel", "°C|C|deg C|Cel|celsius|degree C|degrees C|degrees celsius", 1, 1, 273.15},
        {"degF", "degF", "[degF]", "°F|F|deg F|fahrenheit|degree F|degrees F|degrees fahrenheit", 5, 9, 459.67},
        {"K", "K", "K", "kelvin|kelvins|deg K"},
        {"degR", "degR", "[degR]", "°R|R|deg R|rankine", 5, 9},
    };
};

template <>
struct UnitTable<TemperatureDifference> {
    static constexpr const char* type = "TemperatureDifference";
    static constexpr const char* name = "temperature difference";
    static constexpr const char* hint = "write a temperature difference in K";
    static constexpr UnitInfo units[] = {
        {"K", "K", "K",
         "kelvin|kelvins|delta K|K diff|K difference|delta degC|delta C|degC diff|degC difference|C difference|C deg"},
        {"delta degF", "deltadegF", "[degF]", "delta F|degF diff|degF difference|F difference|F deg", 5, 9},
    };
};

template <>
struct UnitTable<TemperatureRate> {
    static constexpr const char* type = "TemperatureRate";
    static constexpr const char* name = "rate of temperature";
    static constexpr const char* hint = "";
    static constexpr UnitInfo units[] = {
        {"K/min", "Kmin", "K/min", "degC/min|C/min|K min-1", 1, 60},
        {"K/s", "Ks", "K/s", "degC/s|C/s|K s-1"},
        {"K/h", "Kh", "K/h", "degC/h|C/h|K/hr|degC/hr|K h-1", 1, 3600},
        {"degF/min", "degFmin", "[degF]/min", "F/min", 5, 540},
        {"degF/h", "degFh", "[degF]/h", "F/h|degF/hr", 5, 32400},
    };
};

template <>
struct UnitTable<ThermalExpansion> {
    static constexpr const char* type = "ThermalExpansion";
    static constexpr const char* name = "thermal expansion";
    static constexpr const char* hint = "";
    static constexpr UnitInfo units[] = {
        {"1/K", "perK", "/K", "K-1|/K|1/degC|1/C|/degC|m/(m K)"},
        {"1e-6/K", "umperK", "", "10-6/K|ppm/K|um/(m K)|um/m/K|um/(m degC)|ppm/degC", 1, 1000000},
        {"1/degF", "perdegF", "/[degF]", "degF-1|/degF|1/F|in/(in degF)", 9, 5},
    };
};

template <>
struct UnitTable<SpecificHeat> {
    static constexpr const char* type = "SpecificHeat";
    static constexpr const char* name = "specific heat capacity";
    static constexpr const char* hint = "";
    static constexpr UnitInfo units[] = {
        {"kJ/(kg K)", "kJkgK", "kJ/(kg.K)", "kJ/kg/K|kJ/kg degC|kJ/kg/degC|kJ kg-1 K-1|J/(g K)|J/g/K", 1000, 1},
        {"J/(kg K)", "JkgK", "J/(kg.K)", "J/kg/K|J/kg degC|J/kg/degC|J kg-1 K-1"},
        {"Btu/(lb degF)", "btulbF", "[Btu_IT]/([lb_av].[degF])", "Btu/lb/degF|Btu/(lb F)|Btu/lb/F|Btu/(lbm degF)",
         41868, 10},
        {"kcal/(kg K)", "kcalkgK", "kcal_IT/(kg.K)", "kcal/kg/K|kcal/(kg degC)|kcal/kg/degC|cal/(g K)|cal/g/K", 41868,
         10},
    };
};

template <>
struct UnitTable<HeatCapacity> {
    static constexpr const char* type = "HeatCapacity";
    static constexpr const char* name = "heat capacity";
    static constexpr const char* hint = "";
    static constexpr UnitInfo units[] = {
        {"kJ/K", "kJK", "kJ/K", "kJ/degC", 1000, 1},
        {"J/K", "JK", "J/K", "J/degC"},
        {"Btu/degF", "btuF", "[Btu_IT]/[degF]", "Btu/F", 474775133679, 250000000},
    };
};

template <>
struct UnitTable<HeatTransfer> {
    static constexpr const char* type = "HeatTransfer";
    static constexpr const char* name = "heat transfer coefficient";
    static constexpr const char* hint = "";
    static constexpr UnitInfo units[] = {
        {"W/(m2 K)", "Wm2K", "W/(m2.K)", "W/(m² K)|W/m2/K|W/m²/K|W/(m2 degC)|W m-2 K-1"},
        {"kW/(m2 K)", "kWm2K", "kW/(m2.K)", "kW/(m² K)|kW/m2/K", 1000, 1},
        {"Btu/(h ft2 degF)", "btuhft2F", "[Btu_IT]/(h.[sft_i].[degF])",
         "Btu/(hr ft2 F)|Btu/(h ft² °F)|Btu/h/ft2/F|Btu/(ft2 h F)", 105505585262, 18580608000},
    };
};

using ThermalConductivity = decltype(Power() / (Length() * TemperatureDifference()));

template <>
struct UnitTable<ThermalConductivity> {
    static constexpr const char* type = "ThermalConductivity";
    static constexpr const char* name = "thermal conductivity";
    static constexpr const char* hint = "";
    static constexpr UnitInfo units[] = {
        {"W/(m K)", "WmK", "W/(m.K)", "W/m/K|W/(m degC)|W/m/degC|W m-1 K-1"},
        {"W/(mm K)", "WmmK", "W/(mm.K)", "W/mm/K|W/(mm degC)|W/mm/degC", 1000, 1},
        {"Btu/(h ft degF)", "btuhftF", "[Btu_IT]/(h.[ft_i].[degF])", "Btu/(hr ft F)|Btu/h/ft/F|Btu/(h ft F)",
         52752792631, 30480000000},
    };
};

using ThermalConductance = decltype(Power() / TemperatureDifference());

template <>
struct UnitTable<ThermalConductance> {
    static constexpr const char* type = "ThermalConductance";
    static constexpr const char* name = "thermal conductance";
    static constexpr const char* hint = "heat flow for each kelvin of difference, U A; write W/K";
    static constexpr UnitInfo units[] = {
        {"W/K", "WK", "W/K", "W/degC|W K-1"},
        {"kW/K", "kWK", "kW/K", "kW/degC", 1000, 1},
        {"Btu/(h degF)", "btuhF", "[Btu_IT]/(h.[degF])", "Btu/h/degF|Btu/(h F)|Btu/(hr F)|Btu/h/F", 52752792631,
         100000000000},
    };
};

using HeatFlux = decltype(Power() / Area());

template <>
struct UnitTable<HeatFlux> {
    static constexpr const char* type = "HeatFlux";
    static constexpr const char* name = "power over an area, or pressure times velocity";
    static constexpr const char* hint = "";
    static constexpr UnitInfo units[] = {
        {"W/m2", "Wm2", "W/m2", "W/m²|W m-2"},
        {"kW/m2", "kWm2", "kW/m2", "kW/m²", 1000, 1},
        {"W/mm2", "Wmm2", "W/mm2", "W/mm²", 1000000, 1},
        {"bar m/s", "barms", "bar.m/s", "bar*m/s|bar·m/s", 100000, 1},
        {"MPa m/s", "MPams", "MPa.m/s", "MPa*m/s|MPa·m/s|N/mm2 m/s|N/(mm s)", 1000000, 1},
        {"psi ft/min", "psiftmin", "[psi].[ft_i]/min", "psi fpm|psi*ft/min", 8896443230521, 254000000000},
    };
};

/// How much a property changes with temperature, as a part of itself; negative where it falls.
using TemperatureCoefficient = Apart<struct TemperatureCoefficientTag, ThermalExpansion>;

template <>
struct UnitTable<TemperatureCoefficient> {
    static constexpr const char* type = "TemperatureCoefficient";
    static constexpr const char* name = "temperature coefficient";
    static constexpr const char* hint = "per cent a kelvin, with its sign";
    static constexpr UnitInfo units[] = {
        {"%/K", "percentperK", "%/K", "%/degC|% per K|% per degC|percent/K", 1, 100},
        {"1/K", "perK", "/K", "K-1|/K|1/degC"},
        {"ppm/K", "ppmperK", "[ppm]/K", "1e-6/K|ppm/degC", 1, 1000000},
    };
};

using HeatPerLength = decltype(Power() / Length());

template <>
struct UnitTable<HeatPerLength> {
    static constexpr const char* type = "HeatPerLength";
    static constexpr const char* name = "heat flow per length";
    static constexpr const char* hint = "";
    static constexpr UnitInfo units[] = {
        {"W/m", "Wm", "W/m", "W m-1"},
        {"kW/m", "kWm", "kW/m", "", 1000, 1},
        {"Btu/(h ft)", "btuhft", "[Btu_IT]/(h.[ft_i])", "Btu/(hr ft)|Btu/h/ft|Btu/hr/ft|Btu/(ft h)", 52752792631,
         54864000000},
    };
};

using SpecificEnergy = decltype(Energy() / Mass());

template <>
struct UnitTable<SpecificEnergy> {
    static constexpr const char* type = "SpecificEnergy";
    static constexpr const char* name = "energy per mass";
    static constexpr const char* hint = "";
    static constexpr UnitInfo units[] = {
        {"kJ/kg", "kJkg", "kJ/kg", "kJ kg-1|J/g", 1000, 1},
        {"J/kg", "Jkg", "J/kg", "J kg-1|m2/s2"},
        {"Btu/lb", "btulb", "[Btu_IT]/[lb_av]", "Btu/lbm|BTU/lb", 2326, 1},  // exact with the International Table Btu
        {"kcal/kg", "kcalkg", "kcal_IT/kg", "cal/g", 41868, 10},
    };
};

}  // namespace cutwater
