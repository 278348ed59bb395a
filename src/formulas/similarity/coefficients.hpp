// Tip speed, dimensionless coefficients, and the impeller's form.
#pragma once

#include "formulas/similarity/specific_speed.hpp"

namespace cutwater::formulas {

namespace shape {

constexpr auto diameter() { return input("diameter", "D", units::mm, between(5, 10000), "impeller outside diameter"); }

}  // namespace shape

inline Velocity tip_speed(Length diameter, RotationalSpeed speed)
{
    return std::numbers::pi * diameter * speed.revolutions();
}

inline constexpr Record<&tip_speed> tip_speed_record{
    .name = "tip_speed",
    .meaning = "Peripheral speed of an impeller's outside diameter",
    .also = "peripheral velocity|rim speed",
    .inputs = {shape::diameter(), shape::speed()},
    .results = {output("tip_speed", "u_2", units::ms, "peripheral speed")},
    .equation = "u_2 = pi D n",
    .source = "definition; ISO 17769-1:2012, peripheral velocity (from memory of it)",
    .sound_anywhere = true,
    .example = {"250, 2900", "37.9609", "hand calculation: pi x 0.25 x 48.3333"}};

inline Ratio head_coefficient(Head head, Length diameter, RotationalSpeed speed)
{
    const Velocity tip = tip_speed(diameter, speed);
    return standard_gravity * head / (tip * tip);
}

inline constexpr Record<&head_coefficient> head_coefficient_record{
    .name = "head_coefficient",
    .meaning = "Head coefficient of an impeller, psi = g H/u2^2",
    .inputs = {input("head", "H", units::metre, from(0), "head of one stage"), shape::diameter(), shape::speed()},
    .results = {output("head_coefficient", "psi", units::number, "head coefficient")},
    .equation = "psi = g H/u_2^2, u_2 = pi D n",
    .source = "definition as in ANSI/HI 1.3 (from memory of it)",
    .cautions = {"Many European books define it with a factor of 2 (psi = 2 g H/u2^2): twice this value."},
    .example = {"80, 250, 2900", "0.544424", "hand calculation: 784.532/37.9609^2"}};

inline Ratio flow_coefficient(Flow flow, Length diameter, Length width, RotationalSpeed speed)
{
    return flow / (std::numbers::pi * diameter * width * tip_speed(diameter, speed));
}

inline constexpr Record<&flow_coefficient> flow_coefficient_record{
    .name = "flow_coefficient",
    .meaning = "Flow coefficient of an impeller, phi = c2m/u2",
    .inputs = {input("flow", "Q", units::m3h, from(0), "flow through the impeller"), shape::diameter(),
               input("width", "b_2", units::mm, between(0.5, 5000),
                     "outlet width of the impeller; of both halves with double suction"),
               shape::speed()},
    .results = {output("flow_coefficient", "phi", units::number, "flow coefficient, blockage by the vanes left out")},
    .equation = "phi = Q/(pi D b_2 u_2), u_2 = pi D n",
    .source = "definition; J. F. Guelich, Centrifugal Pumps, 3rd edition, 2014 (from memory of it)",
    .cautions = {"Other books divide by D^2 u2 or n D^3 instead: compare only numbers of one definition."},
    .example = {"100, 250, 12, 2900", "0.0776408", "hand calculation: 0.0277778/(0.00942478 x 37.9609)"}};

inline Ratio specific_diameter(Flow flow, Head head, Length diameter)
{
    const auto energy_root = square_root(standard_gravity * head);
    return diameter * square_root(energy_root) / square_root(flow);
}

inline constexpr Record<&specific_diameter> specific_diameter_record{
    .name = "specific_diameter",
    .meaning = "Specific diameter of an impeller, without units",
    .inputs = {input("flow", "Q", units::m3h, above(0), "flow at best efficiency"),
               input("head", "H", units::metre, above(0), "head of one stage at best efficiency"), shape::diameter()},
    .results = {output("specific_diameter", "D_s", units::number, "specific diameter")},
    .equation = "D_s = D (g H)^(1/4)/sqrt(Q)",
    .source = "O. Cordier (1953); O. E. Balje, Turbomachines, 1981 (from memory of both)",
    .example = {"100, 80, 250", "7.93860", "hand calculation: 0.25 x 5.29240/0.166667"}};

enum class ImpellerForm { radial, mixed, axial };

}  // namespace cutwater::formulas

template <>
inline constexpr cutwater::Words<3> cutwater::words_of<cutwater::formulas::ImpellerForm>{"radial", "mixed", "axial"};

namespace cutwater::formulas {

inline ImpellerForm impeller_form(SpecificSpeed specific_speed)
{
    return specific_speed.value < 40    ? ImpellerForm::radial
           : specific_speed.value < 175 ? ImpellerForm::mixed
                                        : ImpellerForm::axial;
}

inline constexpr Record<&impeller_form> impeller_form_record{
    .name = "impeller_form",
    .meaning = "Form of impeller that suits a specific speed",
    .also = "radial|mixed flow|Francis|axial|propeller",
    .inputs = {input("specific_speed", "n_s", units::specific_speed, between(5, 500),
                     "metric specific speed (1/min, m3/s, m), per eye and stage")},
    .results = {output_word<ImpellerForm>("form", "form", "radial, mixed (Francis and mixed flow) or axial")},
    .equation = "radial: n_s < 40; mixed: 40 <= n_s < 175; axial: n_s >= 175 (US units 2000 and 9000)",
    .source = "common practice; the bands of the trade's books overlap",
    .cautions = {"The bounds are gradual: near them both forms are built."},
    .example = {"25", R"("radial")", "the bands as stated"}};

}  // namespace cutwater::formulas
