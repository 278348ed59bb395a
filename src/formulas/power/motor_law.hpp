// The efficiency class that the European Union's law asks of a motor.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "formulas/power/motor_efficiency.hpp"

namespace cutwater::formulas {

enum class MotorKind { three_phase, brake, ex_eb, other_ex, single_phase };
enum class LawStep { july_2021, july_2023 };
enum class LeastClass { none, ie2, ie3, ie4 };

}  // namespace cutwater::formulas

namespace cutwater {

template <>
inline constexpr Words<5> words_of<formulas::MotorKind>{"three-phase", "brake motor", "Ex eb", "other Ex",
                                                        "single-phase"};
template <>
inline constexpr Words<2> words_of<formulas::LawStep>{"1 July 2021", "1 July 2023"};
template <>
inline constexpr Words<4> words_of<formulas::LeastClass>{"none", "IE2", "IE3", "IE4"};

}  // namespace cutwater

namespace cutwater::formulas {

inline LeastClass motor_class_required_eu(Power rated_power, Count poles, MotorKind kind, LawStep step)
{
    const double kw = units::kW.in(rated_power);
    const bool later = step == LawStep::july_2023;
    const bool apart = (kind == MotorKind::ex_eb) | (kind == MotorKind::single_phase);
    const bool middle = (kw >= 75) & (kw <= 200) & (poles.value <= 6);
    const bool highest = later & middle & (kind == MotorKind::three_phase);
    return apart       ? (later ? LeastClass::ie2 : LeastClass::none)
           : kw < 0.75 ? LeastClass::ie2
           : highest   ? LeastClass::ie4
                       : LeastClass::ie3;
}

inline constexpr auto motor_class_required_eu_record = record<&motor_class_required_eu>(
    {.name = "motor_class_required_eu",
     .meaning = "Least efficiency class that Regulation (EU) 2019/1781 asks of a motor placed on the market",
     .also = "IE class by law|minimum energy performance standard|MEPS|ecodesign",
     .inputs = {input("rated_power", "P_N", units::kW, between(0.12, 1000),
                      "rated output of the motor, within the regulation's 0.12 to 1000 kW"),
                input("poles", "2p", units::count, between(2, 8), "number of poles: 2, 4, 6 or 8"),
                choice<MotorKind>("kind", "kind",
                                  "three-phase; brake motor; Ex eb, increased safety; other Ex, other "
                                  "explosion-protected; single-phase",
                                  MotorKind::three_phase),
                choice<LawStep>("in_force_from", "step", "which of the regulation's steps", LawStep::july_2023)},
     .results = {output_word<LeastClass>("efficiency_class", "class", "least class; none: not yet asked at that step")},
     .equation =
         "from 1 July 2021: IE2 below 0.75 kW, IE3 from 0.75 kW, but for Ex eb and single-phase; from 1 July "
         "2023: IE2 for these, IE4 for three-phase motors of 75 to 200 kW with 2, 4 or 6 poles that are neither "
         "brake nor explosion-protected motors",
     .source = "Commission Regulation (EU) 2019/1781, Annex I, as amended by (EU) 2021/341: its steps as told by the "
               "IEA's Electric Motor Systems Annex and by trade notices (read); its scope, article 2 (excerpt read)",
     .cautions = {"No legal finding: it holds for single-speed motors on the mains, 50 to 1000 V, continuous duty; "
                  "check the regulation in force, its exceptions, and the law of other countries: in the United States "
                  "10 CFR 431.25."},
     .example = {R"(90, 4)", R"("IE4")", "by inspection of the regulation's second step"}},
    relation<"poles">(&motor::even, motor::even_poles));

}  // namespace cutwater::formulas
