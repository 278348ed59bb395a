// The faces of a mechanical seal: load, speed, their product and the heat.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "formulas/limits.hpp"

#include <numbers>
#include <tuple>

namespace cutwater::formulas {

enum class PressureSide { outside, inside };

}  // namespace cutwater::formulas

namespace cutwater {

template <>
inline constexpr Words<2> words_of<formulas::PressureSide>{"outside", "inside"};

}  // namespace cutwater

namespace cutwater::formulas {

namespace seal {

inline constexpr const char* face_source = "ISO 21049:2004 / API 682, annex F (from memory of it), the same as I. J. "
                                           "Karassik et al., Pump Handbook, mechanical seals (excerpt read)";
inline constexpr const char* makers_limits =
    "The seal maker's limits for the pair of face materials, the liquid and the cooling go before any general figure.";
inline constexpr const char* wider = "it must be less than the outer diameter of the faces";

constexpr auto outer()
{
    return input("face_outer_diameter", "D_o", units::mm, above_up_to(0, 1000),
                 "outer diameter of the contact of the faces");
}
constexpr auto inner()
{
    return input("face_inner_diameter", "D_i", units::mm, above_up_to(0, 1000),
                 "inner diameter of the contact of the faces");
}

inline bool less(Length smaller, Length larger) { return smaller < larger; }
inline Area face_area(Length outer, Length inner) { return (std::numbers::pi / 4) * (outer * outer - inner * inner); }
inline Length mean_diameter(Length outer, Length inner) { return (outer + inner) / 2.0; }
inline Velocity mean_speed(Length outer, Length inner, RotationalSpeed speed)
{
    return std::numbers::pi * mean_diameter(outer, inner) * speed.revolutions();
}

}  // namespace seal

inline Ratio seal_balance_ratio(Length outer, Length inner, Length balance, PressureSide side)
{
    const Area loaded = side == PressureSide::outside ? Area(outer * outer - balance * balance)
                                                      : Area(balance * balance - inner * inner);
    return loaded / Area(outer * outer - inner * inner);
}

inline constexpr auto seal_balance_ratio_record = record<&seal_balance_ratio>(
    {.name = "seal_balance_ratio",
     .meaning = "Part of the sealed pressure that closes the faces of a mechanical seal",
     .also = "seal balance|hydraulic balance|closing area over face area",
     .inputs = {seal::outer(), seal::inner(),
                input("balance_diameter", "D_b", units::mm, above_up_to(0, 1000),
                      "diameter on which the sliding ring is sealed; bellows: their effective diameter"),
                choice<PressureSide>("pressure_side", "side",
                                     "where the sealed pressure stands: outside of the faces, or inside",
                                     PressureSide::outside)},
     .results = {output("balance_ratio", "B", units::number,
                        "loaded area over the area of the faces; above 1 the seal is unbalanced")},
     .equation = "B = (D_o^2 - D_b^2)/(D_o^2 - D_i^2) outside; B = (D_b^2 - D_i^2)/(D_o^2 - D_i^2) inside",
     .source = seal::face_source,
     .cautions = {"A bellows' effective diameter moves with pressure: take the seal maker's."},
     .sound_anywhere = true,
     .example = {"61.6, 48.9, 52.4", "0.747355", "ISO 21049 annex F, example (from memory of it)"}},
    relation<"face_inner_diameter", "face_outer_diameter">(&seal::less, seal::wider),
    relation<"balance_diameter", "face_outer_diameter", "pressure_side">(
        [](Length b, Length o, PressureSide side) { return (side == PressureSide::inside) | (b < o); }, seal::wider),
    relation<"balance_diameter", "face_inner_diameter", "pressure_side">(
        [](Length b, Length i, PressureSide side) { return (side == PressureSide::outside) | (b > i); },
        "under pressure from inside it must exceed the inner diameter of the faces"));

inline Velocity seal_face_speed(Length outer, Length inner, RotationalSpeed speed)
{
    return seal::mean_speed(outer, inner, speed);
}

inline constexpr auto seal_face_speed_record = record<&seal_face_speed>(
    {.name = "seal_face_speed",
     .meaning = "Rubbing speed of the faces at their mean diameter",
     .also = "seal face velocity|rubbing velocity|sliding speed",
     .inputs = {seal::outer(), seal::inner(), input("speed", "n", units::rpm, limits::speed_rpm, "rotational speed")},
     .results = {output("face_speed", "v", units::ms, "speed at the mean diameter")},
     .equation = "v = pi n (D_o + D_i)/2",
     .source = seal::face_source,
     .cautions =
         {"From about 23 m/s (4500 ft/min) up the flexible part should stand still (API 682, from memory of it)."},
     .sound_anywhere = true,
     .example = {"61.6, 48.9, 3000", "8.67865", "hand calculation"}},
    relation<"face_inner_diameter", "face_outer_diameter">(&seal::less, seal::wider));

inline Outcome<std::tuple<PressureDifference, PressureDifference, Area>> seal_face_pressure(PressureDifference sealed,
                                                                                            Ratio balance, Force spring,
                                                                                            Length outer, Length inner,
                                                                                            Ratio drop)
{
    const Area area = seal::face_area(outer, inner);
    const PressureDifference from_spring = spring / area;
    const PressureDifference total = sealed * (balance - drop) + from_spring;
    if (!(total.value() > 0))
        return NoValue{CUTWATER_NO_ANSWER,
                       "balance_ratio",
                       "the faces would be pressed together by {0}: they open, and the seal leaks",
                       {number_in(total, units::bar)}};
    return std::tuple(total, from_spring, area);
}

inline constexpr auto seal_face_pressure_record = record<&seal_face_pressure>(
    {.name = "seal_face_pressure",
     .meaning = "Pressure between the faces of a mechanical seal that the film does not carry",
     .also = "face load|closing pressure|net face pressure",
     .inputs = {input("sealed_pressure", "dp", units::bar, from(0),
                      "pressure across the faces: the chamber's over what stands on their other side"),
                input("balance_ratio", "B", units::number, between(0, 3),
                      "part of it that closes the faces, as from seal_balance_ratio"),
                input("spring_force", "F_sp", units::newton, from(0), "force of spring or bellows at working length"),
                seal::outer(), seal::inner(),
                input("pressure_drop_coefficient", "K", units::number, between(0, 1),
                      "mean pressure in the film over the sealed one: 0.5 for flat faces and a liquid that stays one, "
                      "0.5 to 0.8 when it flashes",
                      0.5)},
     .results = {output("face_pressure", "p_f", units::bar, "net pressure on the area of the faces"),
                 output("spring_pressure", "p_sp", units::bar, "the spring's part of it"),
                 output("face_area", "A", units::mm2, "area of the faces")},
     .equation = "p_f = dp (B - K) + F_sp/A, A = (pi/4)(D_o^2 - D_i^2)",
     .source = seal::face_source,
     .cautions =
         {"Distortion by heat and pressure moves K either way; a flashing liquid raises it until the faces part.",
          seal::makers_limits},
     .sound_anywhere = true,
     .example = {"20, 0.747355, 190, 61.6, 48.9", "6.67094, 1.72384, 1102.189",
                 "ISO 21049 annex F, example (from memory of it)"}},
    relation<"face_inner_diameter", "face_outer_diameter">(&seal::less, seal::wider));

inline auto seal_pressure_velocity(PressureDifference face_pressure, Velocity face_speed)
{
    return HeatFlux(face_pressure * face_speed);
}

inline constexpr auto seal_pressure_velocity_record = record<&seal_pressure_velocity>(
    {.name = "seal_pressure_velocity",
     .meaning = "Product of face pressure and face speed, the measure of a seal's wear",
     .also = "PV value|p v factor",
     .inputs = {input("face_pressure", "p_f", units::bar, from(0),
                      "net pressure between the faces, as from seal_face_pressure"),
                input("face_speed", "v", units::ms, from(0), "rubbing speed, as from seal_face_speed")},
     .results = {output("pressure_velocity", "p v", units::bar_ms,
                        "to compare with the limit for the pair of materials")},
     .equation = "p v = p_f v",
     .source = seal::face_source,
     .cautions =
         {"Makers' limits differ in what they call p: some take the whole sealed pressure. Compare like with like.",
          seal::makers_limits},
     .sound_anywhere = true,
     .example = {"6.67094, 8.67865", "57.8948", "hand calculation"}});

inline std::tuple<Power, Torque, Torque> seal_face_heat(PressureDifference face_pressure, Length outer, Length inner,
                                                        RotationalSpeed speed, Ratio friction, Ratio start_factor)
{
    const Force drag = friction * face_pressure * seal::face_area(outer, inner);
    const double torque =
        Ratio(drag * seal::mean_diameter(outer, inner) / 2.0 / (Force::from_value(1) * Length::from_value(1))).value();
    return {Power(drag * seal::mean_speed(outer, inner, speed)), Torque::from_value(torque),
            Torque::from_value(torque * start_factor.value())};
}

inline constexpr auto seal_face_heat_record = record<&seal_face_heat>(
    {.name = "seal_face_heat",
     .meaning = "Heat that one pair of faces makes, and the seal's torque",
     .also = "seal generated heat|seal power|seal torque|face friction heat",
     .inputs = {input("face_pressure", "p_f", units::bar, from(0),
                      "net pressure between the faces, as from seal_face_pressure"),
                seal::outer(), seal::inner(), input("speed", "n", units::rpm, limits::speed_rpm, "rotational speed"),
                input("friction_coefficient", "f", units::number, above_up_to(0, 1),
                      "of the pair of faces in this liquid; 0.07 in the standard's example"),
                input("start_factor", "c_st", units::number, between(1, 10), "torque at start over the running one",
                      5)},
     .results = {output("heat", "P", units::kW, "heat of one pair of faces"),
                 output("torque", "T", units::Nm, "running torque of one pair"),
                 output("start_torque", "T_st", units::Nm, "torque to break it away")},
     .equation = "P = f p_f A v; T = f p_f A (D_o + D_i)/4; T_st = c_st T",
     .source = "ISO 21049:2004 / API 682, annex F (from memory of it); starting power about five times the running "
               "one: Pump Handbook (excerpt read), 3 to 5 in annex F",
     .cautions = {"The friction coefficient carries +-50 %: higher in oil, and it grows when the film boils.",
                  "A double seal makes the heat of both pairs.", seal::makers_limits},
     .example = {"6.67094, 61.6, 48.9, 3000, 0.07", "0.446677, 1.42182, 7.10908",
                 "ISO 21049 annex F, example (from memory of it)"}},
    relation<"face_inner_diameter", "face_outer_diameter">(&seal::less, seal::wider));

}  // namespace cutwater::formulas
