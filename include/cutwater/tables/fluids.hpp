// Units of flow and of a liquid's properties. Factors: NIST SP 811 (2008), appendix B; gallons, pound and foot exact.
#pragma once

#include <cutwater/unit.hpp>

namespace cutwater {

template <>
struct UnitTable<Flow> {
    static constexpr const char* type = "Flow";
    static constexpr const char* name = "volume flow";
    static constexpr const char* hint = "say which gallon: US gpm or imp gpm";
    static constexpr UnitInfo units[] = {
        {"m3/h", "m3h", "m3/h", "m³/h|m^3/h|m3/hr|m3 h-1|cbm/h|cmh|cu m/h|m3ph", 1, 3600},
        {"m3/s", "m3s", "m3/s", "m³/s|m^3/s|m3/sec|m3 s-1|cumec|cumecs"},
        {"l/s", "ls", "L/s", "L/s|lps|dm3/s|l/sec|l s-1|litre/s", 1, 1000},
        {"l/min", "lmin", "L/min", "L/min|lpm|dm3/min|l min-1|litre/min", 1, 60000},
        {"US gpm", "usgpm", "[gal_us]/min", "US gal/min|gal/min US|gpm US|US gallon/min|US gallons/min", 3785411784,
         6e13},
        {"imp gpm", "impgpm", "[gal_br]/min", "imp gal/min|gal/min imp|gpm imp|imperial gpm|UK gpm|UK gal/min|igpm",
         454609, 6000000000},
        {"ft3/s", "ft3s", "[cft_i]/s", "ft³/s|ft^3/s|cfs|cusec|cu ft/s", 28316846592, 1e12},
        {"ft3/min", "ft3min", "[cft_i]/min", "ft³/min|ft^3/min|cfm|cu ft/min", 28316846592, 6e13},
        {"m3/min", "m3min", "m3/min", "m³/min|m^3/min|cmm", 1, 60},
        {"m3/d", "m3d", "m3/d", "m³/d|m^3/d|m3/day|cmd", 1, 86400},
        {"l/h", "lh", "L/h", "L/h|lph|dm3/h|l/hr", 1, 3600000},
        {"Ml/d", "megalitred", "ML/d", "ML/d|MLD|Ml/day|megalitre/day", 1000, 86400},
        {"bbl/d", "bbld", "[bbl_us]/d", "bpd|bbl/day|barrel/day|barrels/day", 158987294928, 86400e12},
        {"US mgd", "usmgd", "", "US Mgal/d|Mgal/d US|mgd US|million US gallons/day", 3785411784, 86400000000},
    };
};

template <>
struct UnitTable<MassFlow> {
    static constexpr const char* type = "MassFlow";
    static constexpr const char* name = "mass flow";
    static constexpr const char* hint = "";
    static constexpr UnitInfo units[] = {
        {"kg/s", "kgs", "kg/s", "kg s-1|kg/sec"},
        {"kg/h", "kgh", "kg/h", "kg h-1|kg/hr", 1, 3600},
        {"kg/min", "kgmin", "kg/min", "", 1, 60},
        {"t/h", "th", "t/h", "t h-1|t/hr|tph|tonne/h|tonnes/h", 1000, 3600},
        {"lb/h", "lbh", "[lb_av]/h", "lb/hr|pph|lbm/h|lbs/h", 45359237, 360000000000},
        {"lb/s", "lbs", "[lb_av]/s", "lb/sec|lbm/s", 45359237, 100000000},
    };
};

template <>
struct UnitTable<Density> {
    static constexpr const char* type = "Density";
    static constexpr const char* name = "density";
    static constexpr const char* hint = "a relative density has no unit";
    static constexpr const char* mistaken = "Ratio";
    static constexpr UnitInfo units[] = {
        {"kg/m3", "kgm3", "kg/m3", "kg/m³|kg/m^3|kg m-3|g/l|g/L"},
        {"g/cm3", "gcm3", "g/cm3", "g/cm³|g/cm^3|g cm-3|g/cc|g/ml|kg/l|kg/L|kg/dm3|kg/dm³|t/m3|t/m³", 1000, 1},
        {"lb/ft3", "lbft3", "[lb_av]/[cft_i]", "lb/ft³|lb/ft^3|lbm/ft3|pcf|lb/cu ft", 453592370000, 28316846592},
        {"lb/US gal", "lbgal", "[lb_av]/[gal_us]", "lb/gal US|ppg US|lbm/US gal", 453592370000, 3785411784},
        {"lb/imp gal", "lbimpgal", "[lb_av]/[gal_br]", "lb/gal imp|lb/UK gal", 45359237, 454609},
    };
};

template <>
struct UnitTable<DynamicViscosity> {
    static constexpr const char* type = "DynamicViscosity";
    static constexpr const char* name = "dynamic viscosity";
    static constexpr const char* hint = "";
    static constexpr UnitInfo units[] = {
        {"mPa s", "mPas", "mPa.s", "mPa·s|mPa*s|cP|centipoise|cps", 1, 1000},
        {"Pa s", "Pas", "Pa.s", "Pa·s|Pa*s|N s/m2|kg/(m s)"},
        {"P", "P", "P", "poise|Po", 1, 10},
        {"uPa s", "uPas", "uPa.s", "µPa·s|µPa s", 1, 1000000},
        {"lbf s/ft2", "lbfsft2", "[lbf_av].s/[sft_i]", "lbf·s/ft²", 44482216152605, 929030400000},
    };
};

template <>
struct UnitTable<KinematicViscosity> {
    static constexpr const char* type = "KinematicViscosity";
    static constexpr const char* name = "kinematic viscosity";
    static constexpr const char* hint = "Saybolt seconds are not a viscosity";
    static constexpr const char* mistaken = "SayboltSeconds";
    static constexpr UnitInfo units[] = {
        {"mm2/s", "mm2s", "mm2/s", "mm²/s|mm^2/s|mm2 s-1|cSt|centistokes|centistoke", 1, 1000000},
        {"m2/s", "m2s", "m2/s", "m²/s|m^2/s|m2 s-1"},
        {"St", "St", "St", "stokes|stoke|cm2/s|cm²/s", 1, 10000},
        {"ft2/s", "ft2s", "[sft_i]/s", "ft²/s|ft^2/s", 9290304, 100000000},
    };
};

template <>
struct UnitTable<SystemResistance> {
    static constexpr const char* type = "SystemResistance";
    static constexpr const char* name = "system resistance";
    static constexpr const char* hint = "head over flow squared: h2/m5 is m per (m3/h)2";
    static constexpr UnitInfo units[] = {
        {"h2/m5", "h2m5", "h2/m5", "h²/m⁵|m/(m3/h)2|m/(m³/h)²|m h2/m6", 12960000, 1},
        {"s2/m5", "s2m5", "s2/m5", "s²/m⁵|m/(m3/s)2|m/(m³/s)²|m s2/m6"},
    };
};

}  // namespace cutwater
