// Quantities: Boost.Units in SI, and types of their own where a dimension is shared by things that must not be mixed.
#pragma once

#include <boost/units/cmath.hpp>
#include <boost/units/systems/si.hpp>

#include <cmath>

namespace cutwater {

namespace bu = boost::units;
namespace si = boost::units::si;

// Dimensions that Boost.Units' SI system does not name.
using ThermalExpansionUnit = decltype(si::dimensionless() / si::kelvin);
using SpecificHeatUnit = decltype(si::joule / (si::kilogram * si::kelvin));
using HeatCapacityUnit = decltype(si::joule / si::kelvin);
using VolumeFlowUnit = decltype(si::cubic_meter / si::second);
using MassFlowUnit = decltype(si::kilogram / si::second);
using SystemResistanceUnit = decltype(si::meter / ((si::cubic_meter / si::second) * (si::cubic_meter / si::second)));
using EnergyPerVolumeUnit = decltype(si::joule / si::cubic_meter);
using TemperatureRateUnit = decltype(si::kelvin / si::second);
using HeatTransferUnit = decltype(si::watt / (si::square_meter * si::kelvin));
using StiffnessUnit = decltype(si::newton / si::meter);

using Ratio = bu::quantity<si::dimensionless>;
using Length = bu::quantity<si::length>;  // heads too: a head is a length of liquid
using Head = Length;
using Area = bu::quantity<si::area>;
using Volume = bu::quantity<si::volume>;
using Time = bu::quantity<si::time>;
using Velocity = bu::quantity<si::velocity>;
using Acceleration = bu::quantity<si::acceleration>;
using Mass = bu::quantity<si::mass>;
using Force = bu::quantity<si::force>;
using Flow = bu::quantity<VolumeFlowUnit>;
using MassFlow = bu::quantity<MassFlowUnit>;
using Density = bu::quantity<si::mass_density>;
using PressureDifference = bu::quantity<si::pressure>;
using Stress = PressureDifference;
using TemperatureDifference = bu::quantity<si::temperature>;
using TemperatureRate = bu::quantity<TemperatureRateUnit>;
using DynamicViscosity = bu::quantity<si::dynamic_viscosity>;
using KinematicViscosity = bu::quantity<si::kinematic_viscosity>;
using ThermalExpansion = bu::quantity<ThermalExpansionUnit>;
using SpecificHeat = bu::quantity<SpecificHeatUnit>;
using HeatCapacity = bu::quantity<HeatCapacityUnit>;
using Energy = bu::quantity<si::energy>;
using Power = bu::quantity<si::power>;
using Torque = bu::quantity<si::torque>;  // energy per angle, hence no energy
using AngularVelocity = bu::quantity<si::angular_velocity>;
using Frequency = bu::quantity<si::frequency>;
using SystemResistance = bu::quantity<SystemResistanceUnit>;
using HeatTransfer = bu::quantity<HeatTransferUnit>;
using Stiffness = bu::quantity<StiffnessUnit>;

/// A quantity whose zero is a convention: two of a kind differ by a Difference, nothing else may be done with them.
template <class Tag, class Difference>
class Point {
public:
    constexpr Point() = default;
    static constexpr Point at(Difference above_zero) { return Point(above_zero); }
    constexpr Difference above_zero() const { return above_zero_; }

    friend constexpr Difference operator-(Point a, Point b) { return a.above_zero_ - b.above_zero_; }
    friend constexpr Point operator+(Point a, Difference d) { return Point(a.above_zero_ + d); }
    friend constexpr Point operator-(Point a, Difference d) { return Point(a.above_zero_ - d); }
    friend constexpr bool operator==(Point a, Point b) { return a.above_zero_ == b.above_zero_; }
    // Written out: one comparison each, where <=> would cost a row of an array four.
    friend constexpr bool operator<(Point a, Point b) { return a.above_zero_.value() < b.above_zero_.value(); }
    friend constexpr bool operator<=(Point a, Point b) { return a.above_zero_.value() <= b.above_zero_.value(); }
    friend constexpr bool operator>(Point a, Point b) { return a.above_zero_.value() > b.above_zero_.value(); }
    friend constexpr bool operator>=(Point a, Point b) { return a.above_zero_.value() >= b.above_zero_.value(); }

private:
    constexpr explicit Point(Difference above_zero) : above_zero_(above_zero) {}
    Difference above_zero_{};
};

using AbsolutePressure = Point<struct AbsolutePressureTag, PressureDifference>;  // zero: vacuum
using GaugePressure = Point<struct GaugePressureTag, PressureDifference>;        // zero: the ambient pressure
using Temperature = Point<struct TemperatureTag, TemperatureDifference>;         // zero: absolute zero

/// A quantity that must not be mixed with others of its dimension.
template <class Tag, class Same>
class Apart {
public:
    constexpr Apart() = default;
    explicit constexpr Apart(Same same) : same_(same) {}
    constexpr Same plain() const { return same_; }

    friend constexpr bool operator==(Apart a, Apart b) { return a.same_ == b.same_; }
    friend constexpr auto operator<=>(Apart a, Apart b) { return a.same_.value() <=> b.same_.value(); }

private:
    Same same_{};
};

using EnergyPerVolume = Apart<struct EnergyPerVolumeTag, bu::quantity<EnergyPerVolumeUnit>>;  // a pressure's dimension

/// Revolutions in a time. Not a Frequency, which counts anything, and not an AngularVelocity, which counts radians.
class RotationalSpeed {
public:
    constexpr RotationalSpeed() = default;
    static constexpr RotationalSpeed revolutions(Frequency f) { return RotationalSpeed(f); }
    constexpr Frequency revolutions() const { return revolutions_; }
    constexpr AngularVelocity angular() const
    {
        return AngularVelocity::from_value(6.283185307179586476925 * revolutions_.value());
    }

    friend constexpr Ratio operator/(RotationalSpeed a, RotationalSpeed b) { return a.revolutions_ / b.revolutions_; }
    friend constexpr RotationalSpeed operator*(RotationalSpeed a, Ratio r)
    {
        return RotationalSpeed(a.revolutions_ * r);
    }
    friend constexpr bool operator==(RotationalSpeed a, RotationalSpeed b) { return a.revolutions_ == b.revolutions_; }
    friend constexpr bool operator<(RotationalSpeed a, RotationalSpeed b)
    {
        return a.revolutions_.value() < b.revolutions_.value();
    }
    friend constexpr bool operator<=(RotationalSpeed a, RotationalSpeed b)
    {
        return a.revolutions_.value() <= b.revolutions_.value();
    }
    friend constexpr bool operator>(RotationalSpeed a, RotationalSpeed b)
    {
        return a.revolutions_.value() > b.revolutions_.value();
    }
    friend constexpr bool operator>=(RotationalSpeed a, RotationalSpeed b)
    {
        return a.revolutions_.value() >= b.revolutions_.value();
    }

private:
    constexpr explicit RotationalSpeed(Frequency f) : revolutions_(f) {}
    Frequency revolutions_{};
};

/// A number that carries a convention instead of a dimension that arithmetic could use.
template <class Tag>
struct Conventional {
    double value = 0;
    friend constexpr bool operator==(Conventional a, Conventional b) { return a.value == b.value; }
    friend constexpr bool operator<(Conventional a, Conventional b) { return a.value < b.value; }
    friend constexpr bool operator<=(Conventional a, Conventional b) { return a.value <= b.value; }
    friend constexpr bool operator>(Conventional a, Conventional b) { return a.value > b.value; }
    friend constexpr bool operator>=(Conventional a, Conventional b) { return a.value >= b.value; }
};

using SpecificSpeed = Conventional<struct SpecificSpeedTag>;      // n Q^(1/2)/H^(3/4) in 1/min, m3/s, m
using SpecificSpeedUs = Conventional<struct SpecificSpeedUsTag>;  // the same in 1/min, US gal/min, ft
using SayboltSeconds =
    Conventional<struct SayboltSecondsTag>;  // Saybolt Universal seconds, efflux time of an instrument
using ValveCoefficient = Conventional<struct ValveCoefficientTag>;  // Kv: m3/h of water at 1 bar
using Money = Conventional<struct MoneyTag>;                        // in whatever currency the caller keeps
using Fraction = Conventional<struct FractionTag>;                  // a part of a whole; text may say "72 %"
using Count = Conventional<struct CountTag>;                        // a whole number of things

inline constexpr Acceleration standard_gravity = Acceleration::from_value(9.80665);  // ISO 80000-3, exact

/// Square root and three-quarter power: Boost.Units would call pow() for both.
template <class Unit>
auto square_root(bu::quantity<Unit> q)
{
    using Root = typename bu::root_typeof_helper<bu::quantity<Unit>, bu::static_rational<2>>::type;
    return Root::from_value(std::sqrt(q.value()));
}

template <class Unit>
auto three_quarter_power(bu::quantity<Unit> q)
{
    using Raised = typename bu::power_typeof_helper<bu::quantity<Unit>, bu::static_rational<3, 4>>::type;
    const double root = std::sqrt(q.value());
    return Raised::from_value(root * std::sqrt(root));
}

/// The number in SI (revolutions per second for a rotational speed) that stands for a quantity, and back.
template <class Q>
struct Si;

template <class Unit>
struct Si<bu::quantity<Unit>> {
    static constexpr bu::quantity<Unit> make(double v) { return bu::quantity<Unit>::from_value(v); }
    static constexpr double value(bu::quantity<Unit> q) { return q.value(); }
};

template <class Tag, class Difference>
struct Si<Point<Tag, Difference>> {
    static constexpr Point<Tag, Difference> make(double v)
    {
        return Point<Tag, Difference>::at(Difference::from_value(v));
    }
    static constexpr double value(Point<Tag, Difference> p) { return p.above_zero().value(); }
};

template <class Tag, class Same>
struct Si<Apart<Tag, Same>> {
    static constexpr Apart<Tag, Same> make(double v) { return Apart<Tag, Same>(Same::from_value(v)); }
    static constexpr double value(Apart<Tag, Same> a) { return a.plain().value(); }
};

template <>
struct Si<RotationalSpeed> {
    static constexpr RotationalSpeed make(double v) { return RotationalSpeed::revolutions(Frequency::from_value(v)); }
    static constexpr double value(RotationalSpeed n) { return n.revolutions().value(); }
};

template <class Tag>
struct Si<Conventional<Tag>> {
    static constexpr Conventional<Tag> make(double v) { return {v}; }
    static constexpr double value(Conventional<Tag> c) { return c.value; }
};

}  // namespace cutwater
