// Units of pressure: difference, absolute, gauge. One list of factors, three closed lists of spellings that never
// overlap. Factors: NIST SP 811 (2008), appendix B. psi = lbf/in2 and the columns are exact in their definitions: water
// 1000 kg/m3 (conventional), mercury 13595.1 kg/m3 (conventional), standard gravity.
#pragma once

#include <cutwater/unit.hpp>

namespace cutwater {

namespace pressure_factor {
inline constexpr double psi_numerator = 44482216152605, psi_denominator = 6451600000;
inline constexpr double mmhg_numerator = 133322387415, mmhg_denominator = 1000000000;
inline constexpr double inhg_numerator = 3386388640341, inhg_denominator = 1000000000;
}  // namespace pressure_factor

template <>
struct UnitTable<PressureDifference> {
    static constexpr const char* type = "PressureDifference";
    static constexpr const char* name = "pressure difference or stress";
    static constexpr const char* hint = "a difference is neither gauge nor absolute: bar, kPa, psi";
    static constexpr UnitInfo units[] = {
        {"bar", "bar", "bar", "bars|bar diff|bard|bar(d)", 100000, 1},
        {"Pa", "Pa", "Pa", "pascal|pascals|N/m2|N/m²"},
        {"kPa", "kPa", "kPa", "kN/m2|kN/m²", 1000, 1},
        {"MPa", "MPa", "MPa", "MN/m2", 1000000, 1},
        {"GPa", "GPa", "GPa", "kN/mm2|kN/mm²", 1e9, 1},
        {"N/mm2", "Nmm2", "N/mm2", "N/mm²|N/mm^2", 1000000, 1},
        {"mbar", "mbar", "mbar", "millibar|hPa", 100, 1},
        {"psi", "psi", "[psi]", "lbf/in2|lbf/in²|lbf/sq in|lb/in2|lb/in²|p.s.i.|psid|psi(d)",
         pressure_factor::psi_numerator, pressure_factor::psi_denominator},
        {"ksi", "ksi", "", "kip/in2", 44482216152605, 6451600},
        {"atm", "atm", "atm", "standard atmosphere", 101325, 1},
        {"kgf/cm2", "kgfcm2", "att", "kgf/cm²|kg/cm2|kg/cm²|kp/cm2|technical atmosphere", 980665, 10},
        {"mmHg", "mmHg", "", "mm Hg", pressure_factor::mmhg_numerator,
         pressure_factor::mmhg_denominator},  // UCUM's is 133.322
        {"inHg", "inHg", "", "in Hg|\"Hg", pressure_factor::inhg_numerator, pressure_factor::inhg_denominator},
        {"mH2O", "mH2O", "m[H2O]", "m H2O|mWC|m WC|mWS|m WG|m CE|mca", 980665, 100},
        {"mmH2O", "mmH2O", "mm[H2O]", "mm H2O|mmWC|mm WC|mmWS", 980665, 100000},
        {"ftH2O", "ftH2O", "", "ft H2O|ftWC|ft WC", 298906692, 100000},
        {"inH2O", "inH2O", "[in_i'H2O]", "in H2O|inWC|in WC|\"WC|\"WG", 24908891, 100000},
    };
};

/// How much a liquid shrinks under pressure, (1/v) dv/dp.
using Compressibility = decltype(Ratio() / PressureDifference());

template <>
struct UnitTable<Compressibility> {
    static constexpr const char* type = "Compressibility";
    static constexpr const char* name = "compressibility";
    static constexpr const char* hint = "the inverse of a bulk modulus: 1/GPa, 1/bar";
    static constexpr UnitInfo units[] = {
        {"1/GPa", "perGPa", "/GPa", "GPa-1|/GPa", 1, 1000000000},
        {"1/MPa", "perMPa", "/MPa", "MPa-1|/MPa", 1, 1000000},
        {"1/bar", "perbar", "/bar", "bar-1|/bar", 1, 100000},
        {"1/Pa", "perPa", "/Pa", "Pa-1|/Pa"},
        {"1/psi", "perpsi", "/[psi]", "psi-1|/psi", pressure_factor::psi_denominator, pressure_factor::psi_numerator},
    };
};

template <>
struct UnitTable<AbsolutePressure> {
    static constexpr const char* type = "AbsolutePressure";
    static constexpr const char* name = "absolute pressure";
    static constexpr const char* hint = "say that it is absolute: bara, kPa(a), psia";
    static constexpr UnitInfo units[] = {
        {"bara", "bara", "bar", "bar(a)|bar a|bar abs|bar absolute", 100000, 1},
        {"Pa(a)", "Paa", "Pa", "Pa abs|Pa absolute"},
        {"kPa(a)", "kPaa", "kPa", "kPa abs|kPa absolute", 1000, 1},
        {"MPa(a)", "MPaa", "MPa", "MPa abs|MPa absolute", 1000000, 1},
        {"mbar(a)", "mbara", "mbar", "mbar abs|mbar absolute|hPa(a)|hPa abs", 100, 1},
        {"psia", "psia", "[psi]", "psi(a)|p.s.i.a.|psi abs|psi absolute|lbf/in2 abs|lbf/in2(a)",
         pressure_factor::psi_numerator, pressure_factor::psi_denominator},
        {"atm(a)", "atma", "atm", "atm abs|atm absolute|ata(phys)", 101325, 1},
        {"kgf/cm2(a)", "kgfcm2a", "att", "kgf/cm2 abs|kg/cm2(a)|kg/cm2 abs|ata", 980665, 10},
        {"mmHg(a)", "mmHga", "", "mmHg abs|mmHg absolute", pressure_factor::mmhg_numerator,
         pressure_factor::mmhg_denominator},
        {"inHg(a)", "inHga", "", "inHg abs|inHg absolute", pressure_factor::inhg_numerator,
         pressure_factor::inhg_denominator},
        {"torr", "torr", "", "Torr|torr(a)|torr abs", 101325, 760},  // in use for absolute pressures only
    };
};

template <>
struct UnitTable<GaugePressure> {
    static constexpr const char* type = "GaugePressure";
    static constexpr const char* name = "gauge pressure";
    static constexpr const char* hint = "say that it is gauge: barg, kPa(g), psig";
    static constexpr UnitInfo units[] = {
        {"barg", "barg", "", "bar(g)|bar g|bar gauge", 100000, 1},
        {"kPa(g)", "kPag", "", "kPa gauge", 1000, 1},
        {"MPa(g)", "MPag", "", "MPa gauge", 1000000, 1},
        {"mbar(g)", "mbarg", "", "mbar gauge|hPa(g)", 100, 1},
        {"Pa(g)", "Pag", "", "Pa gauge"},
        {"psig", "psig", "", "psi(g)|p.s.i.g.|psi gauge|lbf/in2 gauge|lbf/in2(g)", pressure_factor::psi_numerator,
         pressure_factor::psi_denominator},
        {"kgf/cm2(g)", "kgfcm2g", "", "kg/cm2(g)|kgf/cm2 gauge|kg/cm2 gauge|atg|atu", 980665, 10},
        {"mmHg(g)", "mmHgg", "", "mmHg gauge", pressure_factor::mmhg_numerator, pressure_factor::mmhg_denominator},
        {"inHg(g)", "inHgg", "", "inHg gauge", pressure_factor::inhg_numerator, pressure_factor::inhg_denominator},
    };
};

}  // namespace cutwater
