// Units of electricity and magnetism, for motors and for sealed drives.
#pragma once

#include <cutwater/unit.hpp>

#include <boost/units/systems/si.hpp>

namespace cutwater {

using ElectricCurrent = bu::quantity<si::current>;
using Voltage = bu::quantity<si::electric_potential>;
using MagneticFluxDensity = bu::quantity<si::magnetic_flux_density>;
using ElectricalConductivity = bu::quantity<si::conductivity>;
using ElectricalResistivity = bu::quantity<si::resistivity>;

template <>
struct UnitTable<ElectricCurrent> {
    static constexpr const char* type = "ElectricCurrent";
    static constexpr const char* name = "electric current";
    static constexpr const char* hint = "";
    static constexpr UnitInfo units[] = {
        {"A", "A", "A", "amp|amps|ampere|amperes"},
        {"kA", "kA", "kA", "", 1000, 1},
        {"mA", "mA", "mA", "", 1, 1000},
    };
};

template <>
struct UnitTable<Voltage> {
    static constexpr const char* type = "Voltage";
    static constexpr const char* name = "voltage";
    static constexpr const char* hint = "";
    static constexpr UnitInfo units[] = {
        {"V", "V", "V", "volt|volts"},
        {"kV", "kV", "kV", "", 1000, 1},
        {"mV", "mV", "mV", "", 1, 1000},
    };
};

template <>
struct UnitTable<MagneticFluxDensity> {
    static constexpr const char* type = "MagneticFluxDensity";
    static constexpr const char* name = "magnetic flux density";
    static constexpr const char* hint = "";
    static constexpr UnitInfo units[] = {
        {"T", "T", "T", "tesla"},
        {"mT", "mT", "mT", "", 1, 1000},
        {"G", "gauss", "G", "gauss|Gs", 1, 10000},
    };
};

template <>
struct UnitTable<ElectricalConductivity> {
    static constexpr const char* type = "ElectricalConductivity";
    static constexpr const char* name = "electrical conductivity";
    static constexpr const char* hint = "";
    static constexpr UnitInfo units[] = {
        {"MS/m", "MSm", "MS/m", "m/(ohm mm2)|S m/mm2", 1000000, 1},
        {"S/m", "Sm", "S/m", "1/(ohm m)"},
    };
};

template <>
struct UnitTable<ElectricalResistivity> {
    static constexpr const char* type = "ElectricalResistivity";
    static constexpr const char* name = "electrical resistivity";
    static constexpr const char* hint = "";
    static constexpr UnitInfo units[] = {
        {"uohm m", "uohmm", "uOhm.m", "ohm mm2/m", 1, 1000000},
        {"uohm cm", "uohmcm", "uOhm.cm", "", 1, 100000000},
        {"ohm m", "ohmm", "Ohm.m", ""},
    };
};

}  // namespace cutwater
