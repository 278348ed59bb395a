"""The seal-chamber chain: pressure by arrangement, heat, temperature, margin to boiling, flush and barrier, solids and gas."""
from .build import DOUBLE, HOLES, OPEN, VANES
from .side_by_side import Pairs, SideBySide, Taken, bound, found, given

TITLE = "Seal chamber"
_FRACTION = "CW.SEAL_CHAMBER_FRACTION({arrangement})"
_BACK = "{density_used};{speed};{impeller};{back_vane_outer};{back_vane_inner};{back_vane_height}"
_CURVE = "{vapour_t};{vapour_p}"
_KEEP = "{criterion};{face_rise};{margin_pressure};{margin_ratio};{margin_temperature}"
_ORIFICE = "CW.SEAL_FLUSH_ORIFICE_BORE({flush_asked};{orifice_drop};{density_used})"
_NEEDED = "CW.SEAL_FLUSH_NEEDED({face_heat};{temperature};{exchange};{conductance};{allowed_temperature};{flush_temperature};{density_used};{heat_used})"
_HEAT = "CW.SEAL_FACE_HEAT({face_pressure};{face_outer};{face_inner};{speed};{friction})"
_LIQUID = "{density_used};{dynamic_viscosity};{speed}"


def vane_chamber(rim, gap):
    return f"CW.BACK_VANE_CHAMBER_PRESSURE({{suction_barg}};{rim};{_BACK};{gap};{{core_rotation}};{{ambient}})"


def hole_chamber(clearance):
    return f"CW.BALANCE_HOLE_CHAMBER_PRESSURE({{suction_barg}};{{ring_pressure}};{{back_ring}};{clearance};{{holes}};{{hole}};1;{{ambient}})"


RULE = "CW.SEAL_CHAMBER_PRESSURE({suction_barg};{discharge_barg};{fraction};{ambient})"


def _chamber(key, text, rim, clearance):
    cases = ((VANES, vane_chamber(rim, "{back_gap_set}")), (HOLES, hole_chamber(clearance)), (None, RULE))
    return (
        found(f"{key}_barg", f"{text}: pressure", "bar(g)", 3, *((when, call, 1) for when, call in cases)),
        found(f"{key}_bara", "the same, absolute", "bar(a)", 3, *((when, call, 2) for when, call in cases)),
    )


def margin(key, chamber, text):
    """Three measures, and the verdict by the one that is chosen."""
    call = f"CW.SEAL_TEMPERATURE_MARGIN({{{chamber}}};{{chamber_temperature}};{_CURVE};{{face_rise}})"
    verdict = f"CW.SEAL_MARGIN_VERDICT({{{chamber}}};{{chamber_temperature}};{_CURVE};{_KEEP})"
    return (
        found(f"{key}_bar", f"{text}: over the vapour pressure", "bar", 3, (call, 2)),
        found(f"{key}_ratio", "as a ratio", "–", 2, (call, 3)),
        found(f"{key}_kelvin", "below boiling", "K", 1, (call, 5)),
        found(
            f"{key}_verdict",
            f"{text}: margin to boiling",
            "",
            0,
            (verdict, 1),
            words=True,
            verdict=("word", ("enough",)),
        ),
    )


def _clearing(key, text, size, density, bore):
    call = f"CW.SEAL_CHAMBER_CLEARING({size};{density};{_LIQUID};{{chamber_at_faces}};{bore};{{chamber_length}};{{inward}})"
    return found(key, text, "", 0, (call, 1), words="long")


SECTIONS = (
    (
        "Given",
        (
            *given(
                """seal_form face_outer face_inner balance spring friction pv_allowed rotating_length
            rotating_conductivity stationary_length stationary_conductivity stationary_film prandtl conductivity
            exchange soak flush_from flush_flow flush_temperature flush_pressure throat_bore throat_shaft
            criterion margin_pressure margin_ratio margin_temperature barrier_margin barrier_held particle
            particle_density bubble chamber_at_faces chamber_at_impeller chamber_length inward clearance_now
            vane_width head_slope"""
            ),
            Pairs("vapour_t", "vapour_p", "Vapour pressure, point {}: °C; bar(a)"),
        ),
    ),
    (
        "Known of the pump",
        (
            Taken("temperature", "Temperature at the pump", "°C", 1),
            Taken("heat_used", "Specific heat", "kJ/(kg K)", 3),
            Taken("viscosity_used", "Kinematic viscosity", "mm²/s", 2),
        ),
    ),
    (
        "|Pressure in the chamber",
        (
            found(
                "discharge_rise",
                "Pressure rise at the duty",
                "bar",
                3,
                "CW.PRESSURE_FROM_HEAD({duty_head};{density_used})",
            ),
            found("discharge_barg", "Discharge pressure", "bar(g)", 3, "{suction_barg}+{discharge_rise}"),
            found("fraction", "Part in the chamber, rule of thumb", "–", 2, (_FRACTION, 1)),
            found("fraction_low", "its low end", "–", 2, (_FRACTION, 2)),
            found("fraction_high", "its high end", "–", 2, (_FRACTION, 3)),
            found(
                "rule_low",
                "Chamber by that rule, low end",
                "bar(g)",
                3,
                ("CW.SEAL_CHAMBER_PRESSURE({suction_barg};{discharge_barg};{fraction_low};{ambient})", 1),
            ),
            found(
                "rule_high",
                "Chamber by that rule, high end",
                "bar(g)",
                3,
                ("CW.SEAL_CHAMBER_PRESSURE({suction_barg};{discharge_barg};{fraction_high};{ambient})", 1),
            ),
            found(
                "head_ratio",
                "Open: head now, over that as set",
                "–",
                3,
                (OPEN, "CW.CLEARANCE_HEAD_RATIO({clearance_now};{clearance_set};{vane_width};{head_slope})", None),
            ),
            found(
                "rim_now",
                "Pressure at the rim now",
                "bar",
                3,
                (OPEN, "CW.RIM_PRESSURE({duty_head}*{head_ratio};{density_used};{static_part})", None),
                "{rim}",
            ),
            *_chamber("chamber_set", "Clearance as set", "{rim}", "{clearance_set}"),
            *_chamber("chamber_now", "Clearance as now", "{rim_now}", "{clearance_now}"),
            found(
                "chamber_high",
                "The higher of both, for the seal",
                "bar(g)",
                3,
                "MAX({chamber_set_barg};{chamber_now_barg})",
            ),
            found(
                "barrier",
                "Double: barrier pressure, at least",
                "bar(g)",
                3,
                (DOUBLE, "CW.SEAL_BARRIER_PRESSURE({chamber_high};{barrier_margin};{ambient})", 1),
                verdict=("≤", bound("barrier_held", "barg")),
            ),
        ),
    ),
    (
        "Faces",
        (
            found(
                "balance_ratio", "Balance ratio", "–", 3, "CW.SEAL_BALANCE_RATIO({face_outer};{face_inner};{balance})"
            ),
            found(
                "sealed",
                "Pressure across the faces; double: barrier's",
                "bar",
                3,
                (DOUBLE, 'CW.QUANTITY({barrier_margin};"bar")', None),
                "{chamber_high}",
            ),
            found(
                "face_pressure",
                "Pressure between the faces",
                "bar",
                2,
                ("CW.SEAL_FACE_PRESSURE({sealed};{balance_ratio};{spring};{face_outer};{face_inner})", 1),
            ),
            found("face_speed", "Face speed", "m/s", 2, "CW.SEAL_FACE_SPEED({face_outer};{face_inner};{speed})"),
            found(
                "pv",
                "Product p·v",
                "bar m/s",
                1,
                "CW.SEAL_PRESSURE_VELOCITY({face_pressure};{face_speed})",
                verdict=("≤", bound("pv_allowed", "bar m/s")),
            ),
            found("face_heat", "Heat of the faces", "kW", 3, (_HEAT, 1)),
            found("seal_start", "Torque to break the seal away", "N m", 2, (_HEAT, 3)),
            found(
                "film",
                "Heat transfer at the rotating ring",
                "W/(m² K)",
                0,
                (
                    "CW.ROTATING_RING_FILM_COEFFICIENT({face_outer};{speed};{viscosity_used};{prandtl};{conductivity})",
                    1,
                ),
            ),
            found(
                "face_rise",
                "Faces over the liquid in the chamber",
                "K",
                1,
                (
                    (
                        "CW.SEAL_FACE_TEMPERATURE_RISE({face_heat};{face_outer};{face_inner};{film};{rotating_length};{rotating_conductivity};{stationary_film};{stationary_length};"
                        "{stationary_conductivity})"
                    ),
                    1,
                ),
            ),
        ),
    ),
    (
        "Temperature in the chamber, and margin to boiling",
        (
            found(
                "conductance",
                "Conductance, chamber and pump",
                "W/K",
                2,
                ("CW.SEAL_HEAT_SOAK({soak};{balance};{temperature};{temperature})", 2),
            ),
            found(
                "flush_used",
                "Flush led in",
                "L/min",
                2,
                ('{flush_from}="none"', "0", None),
                'CW.QUANTITY({flush_flow};"l/min")',
            ),
            found(
                "flush_in",
                "Flush: temperature",
                "°C",
                1,
                ('{flush_from}="outside"', 'CW.QUANTITY({flush_temperature};"degC")', None),
                'CW.QUANTITY({temperature};"degC")',
            ),
            found(
                "chamber_temperature",
                "Temperature in the chamber",
                "°C",
                1,
                "CW.SEAL_CHAMBER_TEMPERATURE({face_heat};{temperature};{exchange};{conductance};{flush_used};{flush_in};{density_used};{heat_used})",
            ),
            *margin("set", "chamber_set_bara", "As set"),
            *margin("now", "chamber_now_bara", "As now"),
        ),
    ),
    (
        "Flush",
        (
            found(
                "chamber_low", "The lower chamber pressure", "bar(a)", 3, "MIN({chamber_set_bara};{chamber_now_bara})"
            ),
            found(
                "allowed_temperature",
                "Temperature that keeps the margin at it",
                "°C",
                1,
                (f"CW.SEAL_ALLOWED_TEMPERATURE({{chamber_low}};{_CURVE};{_KEEP})", 1),
            ),
            found("flush_need", "Whether a flush is needed", "", 0, (_NEEDED, 2), words=True),
            found("flush_needed", "Flush of the given temperature, at least", "L/min", 2, (_NEEDED, 1)),
            found("flush_asked", "The greater: needed, or led in", "L/min", 2, "MAX({flush_needed};{flush_used})"),
            found(
                "orifice_drop",
                "Pressure from its source to the chamber",
                "bar",
                2,
                'CW.QUANTITY({flush_pressure};"barg")-{chamber_high}',
            ),
            found("orifice", "Orifice for it, one", "mm", 2, ("{flush_asked}>0", _ORIFICE, 1)),
            found(
                "orifice_size",
                "Size of the orifice",
                "",
                0,
                ("{flush_asked}>0", _ORIFICE, 2),
                words=True,
                verdict=("word", ("large enough",), ("may block",)),
            ),
            found(
                "throat",
                "Its velocity through the throat bush",
                "m/s",
                2,
                ("{flush_asked}>0", "CW.SEAL_THROAT_VELOCITY({flush_asked};{throat_bore};{throat_shaft})", None),
            ),
        ),
    ),
    (
        "Solids and gas: a single grain or bubble in a swirl, a simple model",
        (
            found(
                "dynamic_viscosity",
                "Dynamic viscosity",
                "mPa s",
                3,
                "CW.DYNAMIC_FROM_KINEMATIC({viscosity_used};{density_used})",
            ),
            _clearing(
                "grain_cylinder", "Grain, cylindrical chamber", "{particle}", "{particle_density}", "{chamber_at_faces}"
            ),
            _clearing(
                "grain_taper", "Grain, chamber as given", "{particle}", "{particle_density}", "{chamber_at_impeller}"
            ),
            _clearing("bubble_taper", "Gas bubble, chamber as given", "{bubble}", "1", "{chamber_at_impeller}"),
            found(
                "drift",
                "Grain's drift across, outwards positive",
                "mm/s",
                1,
                (
                    "CW.SEAL_CHAMBER_CLEARING({particle};{particle_density};{density_used};{dynamic_viscosity};{speed};{chamber_at_faces};{chamber_at_impeller};{chamber_length};{inward})",
                    2,
                ),
            ),
        ),
    ),
)
SOURCES = (
    (
        "Chamber pressure: Pope 1997 for the rule of thumb; balance holes as orifices in series; back vanes after"
        " Stepanoff 1957. Faces, heat soak, barrier: ISO 21049 / API 682 (from memory of it). Heat: balance of face"
        " heat, exchange and flush. Grain and bubble: centrifugal force against drag."
    ),
    (
        "Vapour pressures between the points given: interpolated. Edition, page and whether it was read:"
        " docs/functions, pages seal and rotor."
    ),
)
CAUTIONS = (
    (
        "The chamber's pressure scatters as the low and high end of the rule show: read the chamber's own gauge. As"
        " now: of an open impeller the worn vanes lower the rim's pressure while the back vanes pump as before, so the"
        " chamber falls; of balance holes a worn back ring lets it rise."
    ),
    (
        "Friction of the faces, exchange with the pump and heat transfer are rough inputs: find the margin at their"
        " worst. Flashing at the faces destroys a seal at once and lets the liquid out: hot, toxic and flammable"
        " liquids ask for the seal maker's review and a licensed engineer's judgement."
    ),
)


class SealChamber(SideBySide):
    def __init__(self, plant, places, rotor):
        super().__init__("Seal", TITLE, SECTIONS, SOURCES, CAUTIONS, plant, places, (rotor,))
