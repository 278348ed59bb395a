// Power of the liquid and of the shaft.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "formulas/limits.hpp"

#include <numbers>

namespace cutwater::formulas {

namespace power {

constexpr auto flow() { return input("flow", "Q", units::m3h, from(0), "flow delivered"); }
constexpr auto head() { return input("head", "H", units::metre, from(0), "pump total head"); }
constexpr auto density() { return input("density", "rho", units::kgm3, limits::density_kgm3, "density of the liquid"); }

}  // namespace power

inline Power hydraulic_power(Flow flow, Head head, Density density) { return density * standard_gravity * flow * head; }

inline constexpr Record<&hydraulic_power> hydraulic_power_record{
    .name = "hydraulic_power",
    .meaning = "Power that a pump gives to the liquid (pump power output)",
    .also = "water horsepower|WHP|liquid power|pump power output",
    .inputs = {power::flow(), power::head(), power::density()},
    .results = {output("hydraulic_power", "P_u", units::kW, "pump power output")},
    .equation = "P_u = rho g Q H",
    .source = "ISO 17769-1:2012, pump power output (from memory of it); Hydraulic Institute, Engineering Data Book, "
              "2nd edition, Eq. 1.B.3 (excerpt read)",
    .example = {"100, 50, 998.2", "13.59583", "hand calculation: 998.2 x 9.80665 x 50/36000"}};

inline Power pump_power_input(Flow flow, Head head, Density density, Fraction efficiency, Steps steps)
{
    const Power output = hydraulic_power(flow, head, density);
    steps("P_u", "rho g Q H", output, units::kW);
    return output / efficiency.value;
}

inline constexpr Record<&pump_power_input> pump_power_input_record{
    .name = "pump_power_input",
    .meaning = "Power that a pump takes at its shaft",
    .also = "brake horsepower|BHP|shaft power|absorbed power|power at the coupling",
    .inputs = {power::flow(), power::head(), power::density(),
               input("efficiency", "eta", units::fraction, above_up_to(0, 1), "pump efficiency at that flow")},
    .results = {output("power_input", "P", units::kW, "pump power input")},
    .equation = "P = rho g Q H/eta",
    .source = "ISO 17769-1:2012, pump power input (from memory of it); Hydraulic Institute, Engineering Data Book, 2nd "
              "edition, Eq. 1.B.4 (excerpt read)",
    .cautions = {"At no flow the formula gives no power; the true shut-off power is read from the pump's curve."},
    .sound_anywhere = true,
    .example = {"100, 50, 998.2, 0.75", "18.12777", "hand calculation: 13.59583/0.75"}};

inline Fraction pump_efficiency(Flow flow, Head head, Density density, Power power_input)
{
    return {Ratio(hydraulic_power(flow, head, density) / power_input).value()};
}

inline constexpr auto pump_efficiency_record = record<&pump_efficiency>(
    {.name = "pump_efficiency",
     .meaning = "Efficiency of a pump from its flow, head and shaft power",
     .also = "wire power|field efficiency|efficiency from readings",
     .inputs = {power::flow(), power::head(), power::density(),
                input("power_input", "P", units::kW, above(0), "power at the pump's shaft")},
     .results = {output("efficiency", "eta", units::fraction, "pump efficiency")},
     .equation = "eta = rho g Q H/P",
     .source = "ISO 17769-1:2012, pump efficiency (from memory of it); Hydraulic Institute, Engineering Data Book, 2nd "
               "edition, Eq. 1.B.5 (excerpt read)",
     .example = {"100, 50, 998.2, 18.5", "0.734910", "hand calculation: 13.59583/18.5"}},
    relation<"power_input", "flow", "head", "density">(
        [](Power power_input, Flow flow, Head head, Density density) {
            return hydraulic_power(flow, head, density) <= power_input;
        },
        "the shaft power must be at least the power given to the liquid, rho g Q H: no pump gives out more than it "
        "takes"));

inline Torque shaft_torque(Power power_input, RotationalSpeed speed)
{
    // Energy per radian; the types keep torque and energy apart.
    return power_input / speed.angular();
}

inline constexpr Record<&shaft_torque> shaft_torque_record{
    .name = "shaft_torque",
    .meaning = "Torque of a shaft from its power and speed",
    .also = "torque|coupling torque|horsepower to torque",
    .inputs = {input("power_input", "P", units::kW, from(0), "power at the shaft"),
               input("speed", "n", units::rpm, limits::speed_rpm, "speed of rotation")},
    .results = {output("torque", "T", units::Nm, "torque")},
    .equation = "T = P/(2 pi n)",
    .source = "mechanics; common practice",
    .example = {"18.5, 2900", "60.9179", "hand calculation: 18500/303.687"}};

}  // namespace cutwater::formulas
