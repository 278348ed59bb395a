// An orifice plate that lets the least flow back to the suction vessel.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "formulas/least_flow/orifice.hpp"
#include "formulas/limits.hpp"

#include <limits>

namespace cutwater::formulas {

enum class OrificeState { none, cavitating, choked, flashing };
enum class OrificeFlow { free, choked };

}  // namespace cutwater::formulas

namespace cutwater {

template <>
inline constexpr Words<4> words_of<formulas::OrificeState>{"none", "cavitating", "choked", "flashing"};
template <>
inline constexpr Words<2> words_of<formulas::OrificeFlow>{"not choked", "choked"};

}  // namespace cutwater

namespace cutwater::formulas {

namespace least_flow {

inline constexpr const char* coefficient_meaning = "0: by ISO 5167-2, within its limits; else that of a plain orifice, "
                                                   "0.5 to below 1 (sharp about 0.61, thick plate about 0.8)";
inline constexpr const char* coefficient_sentence = "it must be 0, for ISO 5167-2, or from 0.5 to below 1";
inline constexpr const char* plate_caution = "A plate that takes tens of bar is thicker than ISO 5167-2 has it and "
                                             "erodes: take several in series and check bypass_orifice_cavitation.";
inline constexpr const char* choking_source =
    "ISO 5167-2:2003, 5.3 and 5.4, tappings at D and D/2 (from memory of it; its coefficients agree with those of the "
    "open-source library fluids 1.0.22); choked flow: IEC 60534-2-1:2011, limiting pressure drop F_L^2 (p_1 - F_F p_v) "
    "(its worked examples read in that library's tests), F_L^2 from the plate's pressure loss, F_F taken as 1";
inline constexpr const char* choked_caution =
    "Choked, the liquid boils in the jet and a lower pressure behind the plate lets no more through. F_F = 1 tells the "
    "least flow: near its critical point, or gassy, a liquid may pass more.";
inline constexpr const char* small_plates =
    "Small plates, below 12.5 mm of bore or 50 mm of pipe, lie outside of ISO 5167-2: give the coefficient of the "
    "plate's own calibration.";

// What ISO 5167-2 asks of the plate; 748.5 mm is 0.75 of 998 mm, but for rounding.
inline constexpr double less = 1 - 1e-9, more = 1 + 1e-9;
inline constexpr double least_pipe = less * 0.05, greatest_pipe = more * 1, least_bore = less * 0.0125;
inline constexpr double least_beta = less * 0.1, greatest_beta = more * 0.75;

inline bool fit_pipe(const orifice::Plate& plate) { return (plate.pipe >= least_pipe) & (plate.pipe <= greatest_pipe); }
inline bool fit(const orifice::Plate& plate)
{
    return fit_pipe(plate) & (plate.bore >= least_bore) & (plate.beta() >= least_beta) &
           (plate.beta() <= greatest_beta);
}

inline NoValue unfit(const orifice::Plate& plate)
{
    const auto length = [](double metres) { return number_in(Length::from_value(metres), units::mm); };
    if (!fit_pipe(plate))
        return {CUTWATER_OUT_OF_INTERVAL,
                "pipe_bore",
                "{0} lies outside ISO 5167-2, 50 to 1000 mm; give a discharge coefficient for a plain orifice",
                {length(plate.pipe)}};
    if (!(plate.bore >= least_bore))
        return {CUTWATER_OUT_OF_INTERVAL,
                "orifice_bore",
                "{0} lies below ISO 5167-2's least bore, 12.5 mm; give a discharge coefficient for a plain orifice",
                {length(plate.bore)}};
    return {CUTWATER_OUT_OF_INTERVAL,
            "orifice_bore",
            "{0} is {1} of the pipe bore; ISO 5167-2 holds from 0.10 to 0.75",
            {length(plate.bore), {plate.beta(), ""}}};
}

/// Below it no coefficient from 0.5 up holds: viscosity rules the flow. Set here.
inline constexpr double least_bore_reynolds = 1000;

inline NoValue too_viscous(double bore_reynolds)
{
    return {CUTWATER_NO_ANSWER,
            "viscosity",
            "the bore's Reynolds number would be {0}; a given coefficient is relied upon here from {1} on only",
            {{bore_reynolds, ""}, {least_bore_reynolds, ""}}};
}

inline bool fits(Length bore, Length pipe) { return bore <= 0.75 * (1 + 1e-9) * pipe; }
inline bool known(Ratio coefficient) { return (coefficient.value() == 0) | (coefficient.value() >= 0.5); }
inline constexpr const char* fits_sentence = "it must not exceed 0.75 of the pipe bore";

inline bool below(AbsolutePressure lower, AbsolutePressure higher) { return lower < higher; }
inline constexpr const char* downhill = "it must be lower than the upstream pressure";
inline constexpr const char* boils_before =
    "it must be lower than the upstream pressure: the liquid would boil before the plate";

constexpr auto pipe_bore()
{
    return input("pipe_bore", "D", units::mm, limits::bore_mm, "inside diameter of the pipe");
}
constexpr auto upstream()
{
    return input("upstream_pressure", "p_1", units::bara, above_up_to(0, 1000), "pressure before the plate");
}
constexpr auto downstream()
{
    return input("downstream_pressure", "p_2", units::bara, between(0, 1000), "recovered pressure behind the plate");
}
constexpr auto vapour()
{
    return input("vapour_pressure", "p_v", units::bara, limits::vapour_bara,
                 "vapour pressure at the liquid's temperature before the plate");
}
constexpr auto density() { return input("density", "rho", units::kgm3, limits::density_kgm3, "density of the liquid"); }
constexpr auto viscosity()
{
    return input("viscosity", "nu", units::mm2s, limits::kinematic_viscosity_mm2s, "kinematic viscosity of the liquid");
}
constexpr auto coefficient()
{
    return input("discharge_coefficient", "C_given", units::number, from_below(0, 1), coefficient_meaning, 0);
}

inline NoValue too_slow(double reynolds, double least)
{
    return {CUTWATER_NO_ANSWER,
            "viscosity",
            "the pipe's Reynolds number would be {0}, below the {1} from which ISO 5167-2 holds",
            {{reynolds, ""}, {least, ""}}};
}

inline bool is_standard(Ratio coefficient) { return coefficient.value() == 0; }

/// Whether Reynolds number, of the pipe, lets the coefficient be relied upon.
inline bool fast_enough(double reynolds, double beta, bool standard)
{
    return (standard & (reynolds >= orifice::least_reynolds(beta))) |
           (!standard & (reynolds >= beta * least_bore_reynolds));
}

inline NoValue not_fast_enough(double reynolds, double beta, bool standard)
{
    return standard ? too_slow(reynolds, orifice::least_reynolds(beta)) : too_viscous(reynolds / beta);
}

inline orifice::Passing passing(const orifice::Plate& plate, PressureDifference lost, PressureDifference most,
                                Density density, KinematicViscosity viscosity, Ratio coefficient)
{
    return orifice::passing(plate, {lost.value(), most.value()}, density.value(), viscosity.value(),
                            coefficient.value());
}

/// Whether what was found to pass can be relied upon, and why not.
inline bool sound(const orifice::Plate& plate, const orifice::Passing& found, bool standard)
{
    return (!standard | fit(plate)) & fast_enough(found.reynolds, plate.beta(), standard);
}
inline NoValue unsound(const orifice::Plate& plate, const orifice::Passing& found, bool standard)
{
    return standard && !fit(plate) ? unfit(plate) : not_fast_enough(found.reynolds, plate.beta(), standard);
}

}  // namespace least_flow

inline Outcome<std::tuple<Flow, Ratio, Ratio, PressureDifference, OrificeFlow>> bypass_flow(
    Length bore, Length pipe, AbsolutePressure upstream, AbsolutePressure downstream, AbsolutePressure vapour,
    Density density, KinematicViscosity viscosity, Ratio coefficient)
{
    const orifice::Plate plate{bore.value(), pipe.value()};
    const bool standard = least_flow::is_standard(coefficient);
    const PressureDifference loss = upstream - downstream, above = upstream - vapour;
    const orifice::Passing found = least_flow::passing(plate, loss, above, density, viscosity, coefficient);
    const PressureDifference limit = found.loss_ratio * above;
    return {std::tuple(Flow::from_value(found.flow), Ratio(found.c), Ratio(found.reynolds), limit,
                       loss >= limit ? OrificeFlow::choked : OrificeFlow::free),
            least_flow::sound(plate, found, standard), least_flow::unsound(plate, found, standard)};
}

inline constexpr auto bypass_flow_record = record<&bypass_flow>(
    {.name = "bypass_flow",
     .meaning = "Flow that an orifice plate in a bypass lets through, choked or not",
     .also = "minimum flow line|recirculation orifice|restriction orifice",
     .inputs = {input("orifice_bore", "d", units::mm, above(0), "bore of the plate"), least_flow::pipe_bore(),
                least_flow::upstream(), least_flow::downstream(), least_flow::vapour(), least_flow::density(),
                least_flow::viscosity(), least_flow::coefficient()},
     .results = {output("flow", "Q", units::m3h, "flow through the plate"),
                 output("coefficient", "C", units::number, "discharge coefficient"),
                 output("reynolds_number", "Re_D", units::number, "Reynolds number of the pipe"),
                 output("limiting_pressure_drop", "dp_max", units::bar,
                        "pressure lost for good from which on the flow grows no more"),
                 output_word<OrificeFlow>("choking", "choking",
                                          "whether the liquid boils in the jet and the flow is held")},
     .equation =
         "Q = C/sqrt(1 - b^4) (pi/4) d^2 sqrt(2 dp/rho); dp_l = dp (r - C b^2)/(r + C b^2), r = sqrt(1 - b^4 (1 "
         "- C^2)), b = d/D; dp_l = p_1 - p_2, at most dp_max = (dp_l/dp)(p_1 - p_v)",
     .source = least_flow::choking_source,
     .cautions = {least_flow::choked_caution, least_flow::plate_caution, least_flow::small_plates,
                  caution::pressure_containment},
     .example = {"20, 52.5, 12, 2, 0.023, 998, 1", "33.720, 0.60323, 227159, 10.0368, \"not choked\"",
                 "independent computation with fluids 1.0.22"}},
    relation<"orifice_bore", "pipe_bore">([](Length bore, Length pipe) { return least_flow::fits(bore, pipe); },
                                          least_flow::fits_sentence),
    relation<"downstream_pressure", "upstream_pressure">(&least_flow::below, least_flow::downhill),
    relation<"vapour_pressure", "upstream_pressure">(&least_flow::below, least_flow::boils_before),
    relation<"discharge_coefficient">([](Ratio c) { return least_flow::known(c); }, least_flow::coefficient_sentence));

inline Outcome<std::tuple<Length, OrificeFlow>> bypass_orifice_bore(Flow flow, Length pipe, AbsolutePressure upstream,
                                                                    AbsolutePressure downstream,
                                                                    AbsolutePressure vapour, Density density,
                                                                    KinematicViscosity viscosity, Ratio coefficient)
{
    const bool standard = least_flow::is_standard(coefficient);
    const double reynolds = orifice::reynolds(pipe.value(), flow.value(), viscosity.value());
    const double low = elementary::select(standard, 0.1, 0.01), high = 0.75;
    const orifice::Drive drive((upstream - downstream).value(), (upstream - vapour).value());
    // The flow goes with s gain(s) sqrt(dp_l) or, choked, with s sqrt(dp): each is solved for s at once.
    const double per_root = orifice::flow_per_root(pipe.value(), density.value()), part = flow.value() / per_root;
    const double unhindered = part / drive.free;
    const double s_free = unhindered / std::sqrt(1 + 2 * unhindered), s_choked = part / drive.choked;
    const bool choked = s_choked >= s_free;
    constexpr double least_reynolds = orifice::least_reynolds(0);
    const double beta = orifice::beta_for(elementary::select(choked, s_choked, s_free), pipe.value(),
                                          elementary::select(reynolds > least_reynolds, reynolds, least_reynolds),
                                          coefficient.value(), low, high);
    const orifice::Plate plate{beta * pipe.value(), pipe.value()};
    const bool small = beta<least_flow::less * low, large = beta> least_flow::more * high;
    const bool holds = !small & !large & (!standard | least_flow::fit(plate)) &
                       least_flow::fast_enough(reynolds, beta, standard);
    const auto why = [&]() -> NoValue {
        if (standard && !least_flow::fit_pipe(plate)) return least_flow::unfit(plate);
        if (standard && reynolds < least_reynolds) return least_flow::too_slow(reynolds, least_reynolds);
        const auto passes = [&](double end) {
            const orifice::Coefficient of_end(end, pipe.value(), coefficient.value());
            const double s = of_end.at(orifice::Coefficient::y(reynolds)) * orifice::Plate{end, 1}.opening();
            return number_in(Flow::from_value(per_root * s * drive.root(s)), units::m3h);
        };
        if (small)
            return {CUTWATER_NO_ANSWER,
                    "flow",
                    "the flow is too small for this pipe: the least bore, {0} of the pipe's, already passes {1}; take "
                    "a smaller pipe",
                    {{low, ""}, passes(low)}};
        if (large)
            return {CUTWATER_NO_ANSWER,
                    "flow",
                    "the flow is too large for this pipe: the greatest bore, 0.75 of the pipe's, passes only {0}; "
                    "take a larger pipe",
                    {passes(high)}};
        if (standard && !least_flow::fit(plate))
            return {CUTWATER_NO_ANSWER,
                    "flow",
                    "the flow would need a bore of {0}, below ISO 5167-2's least, 12.5 mm; give a discharge "
                    "coefficient for a plain orifice",
                    {number_in(Length::from_value(plate.bore), units::mm)}};
        return least_flow::not_fast_enough(reynolds, beta, standard);
    };
    return {std::tuple(Length::from_value(plate.bore), choked ? OrificeFlow::choked : OrificeFlow::free), holds, why()};
}

inline constexpr auto bypass_orifice_bore_record = record<&bypass_orifice_bore>(
    {.name = "bypass_orifice_bore",
     .meaning = "Bore of an orifice plate that lets a bypass flow through, choked or not",
     .also = "minimum flow line|recirculation orifice|restriction orifice|RO",
     .inputs = {input("flow", "Q", units::m3h, above(0), "flow to be let through"), least_flow::pipe_bore(),
                least_flow::upstream(), least_flow::downstream(), least_flow::vapour(), least_flow::density(),
                least_flow::viscosity(), least_flow::coefficient()},
     .results = {output("orifice_bore", "d", units::mm, "bore of the plate"),
                 output_word<OrificeFlow>("choking", "choking",
                                          "whether the liquid boils in its jet and the flow is held")},
     .equation = "the d for which bypass_flow gives Q",
     .source = least_flow::choking_source,
     .cautions = {least_flow::choked_caution, least_flow::plate_caution, least_flow::small_plates,
                  caution::pressure_containment},
     .example = {"30, 52.5, 12, 2, 0.023, 998, 1", "18.974, \"not choked\"",
                 "independent computation, agrees with fluids 1.0.22"}},
    relation<"downstream_pressure", "upstream_pressure">(&least_flow::below, least_flow::downhill),
    relation<"vapour_pressure", "upstream_pressure">(&least_flow::below, least_flow::boils_before),
    relation<"discharge_coefficient">([](Ratio c) { return least_flow::known(c); }, least_flow::coefficient_sentence));

/// Judged as a control valve would be: the plate's own recovery gives its F_L.
inline Outcome<std::tuple<Ratio, Ratio, OrificeState>> bypass_orifice_cavitation(
    Length bore, Length pipe, AbsolutePressure upstream, AbsolutePressure downstream, AbsolutePressure vapour,
    Density density, KinematicViscosity viscosity, Ratio coefficient, Steps steps)
{
    const orifice::Plate plate{bore.value(), pipe.value()};
    const bool standard = least_flow::is_standard(coefficient);
    const PressureDifference loss = upstream - downstream;
    constexpr auto no_end = PressureDifference::from_value(std::numeric_limits<double>::infinity());
    const orifice::Passing found = least_flow::passing(plate, loss, no_end, density, viscosity, coefficient);
    const double recovered = found.loss_ratio;  // F_L squared
    const double kv = units::m3h.in(Flow::from_value(found.flow))*std::sqrt(density.value() / 1000 /
                                                                            units::bar.in(loss));
    const double cv = units::cv.in(units::kv(kv));  // the constant 1.17 goes with it
    const double share = (loss / (upstream - vapour)).value();
    const double at_6_bar = 0.90 / std::sqrt(1 + 3 * std::sqrt(cv / (1.17 * std::sqrt(recovered))));
    const double eighth_root = std::sqrt(std::sqrt(std::sqrt(6 / units::bara.in(upstream))));
    const double onset = at_6_bar * eighth_root;
    steps("F_L", "root of the plate's dp_l/dp", Ratio(std::sqrt(recovered)), units::number);
    steps("Cv", "flow coefficient of the plate", ValveCoefficient(units::cv(cv)), units::cv);
    steps("x_Fz", "onset at 6 bara", Ratio(at_6_bar), units::number);
    const PressureDifference at_taps = loss / recovered;
    const auto worse = [](bool is, OrificeState state, double otherwise) {
        return elementary::select(is, static_cast<double>(state), otherwise);
    };
    const double state = worse(
        downstream <= vapour, OrificeState::flashing,
        worse(upstream - at_taps <= vapour, OrificeState::choked,
              worse(share >= onset, OrificeState::cavitating, static_cast<double>(OrificeState::none))));
    return {std::tuple(Ratio(share), Ratio(onset), static_cast<OrificeState>(state)),
            least_flow::sound(plate, found, standard), least_flow::unsound(plate, found, standard)};
}

inline constexpr auto bypass_orifice_cavitation_record = record<&bypass_orifice_cavitation>(
    {.name = "bypass_orifice_cavitation",
     .meaning = "Whether a bypass's orifice plate cavitates",
     .also = "restriction orifice|noise|choked flow",
     .inputs = {input("orifice_bore", "d", units::mm, above(0), "bore of the plate"), least_flow::pipe_bore(),
                least_flow::upstream(), least_flow::downstream(), least_flow::vapour(), least_flow::density(),
                least_flow::viscosity(), least_flow::coefficient()},
     .results = {output("pressure_ratio", "x_F", units::number,
                        "share of the pressure above vapour pressure that the plate takes"),
                 output("onset_ratio", "x_Fzp1", units::number,
                        "that share at which cavitation is expected to begin, at this upstream pressure"),
                 output_word<OrificeState>(
                     "cavitation", "state",
                     "none, cavitating, choked (boiling in the jet) or flashing (boiling behind it)")},
     .equation = "x_F = (p_1 - p_2)/(p_1 - p_v); x_Fzp1 = x_Fz (6 bara/p_1)^0.125, x_Fz = 0.90/sqrt(1 + 3 F_d "
                 "sqrt(Cv/(1.17 F_L))), F_d = 1, F_L^2 = dp_l/dp of the plate; choked when p_1 - dp <= p_v",
     .source = "IEC 60534-8-4:2015, estimate of the onset for a valve without test, and its correction for the inlet "
               "pressure, as read in the open-source library fluids 1.0.22, which states that it meets the standard's "
               "three examples; F_d = 1 for one round hole, applied to a plate with the pressure loss of ISO "
               "5167-2:2003 (from memory of it)",
     .cautions = {"A guide: the onset is estimated from a rule for valves. A plate that cavitates is noisy and erodes.",
                  least_flow::small_plates, caution::guide_only},
     .example = {"20, 52.5, 12, 8, 0.023, 998, 1", "0.33397, 0.24686, \"cavitating\"",
                 "independent computation with fluids 1.0.22"}},
    relation<"orifice_bore", "pipe_bore">([](Length bore, Length pipe) { return least_flow::fits(bore, pipe); },
                                          least_flow::fits_sentence),
    relation<"downstream_pressure", "upstream_pressure">(&least_flow::below, least_flow::downhill),
    relation<"vapour_pressure", "upstream_pressure">(&least_flow::below, least_flow::boils_before),
    relation<"discharge_coefficient">([](Ratio c) { return least_flow::known(c); }, least_flow::coefficient_sentence));

}  // namespace cutwater::formulas
