"""Bearings on the sheet Rotor: loads, equivalent loads, static safety, life, lubrication, temperature."""
from .build import GREASE
from .side_by_side import bound, found, limit

_LOADS = 'CW.BEARING_LOADS({radial};{overhang};{span};{rotor_weight};{weight_place};{drive_force};{drive_place};{unbalance};"worst")'
_WARM = (
    "CW.BEARING_TEMPERATURE({speed};{pitch};{friction_f0};{load_torque};{other_heat};{oil_t1};{oil_1};{oil_t2};{oil_2};{housing_area};"
    "{housing_transfer};{air})"
)


def _length(key, points):
    return "+".join(f'IF({{{key}_{i}}}="";0;CW.QUANTITY({{{key}_{i}}};"mm"))' for i in range(1, points + 1))


def _life(bearing, rating, load, static):
    call = f"CW.MODIFIED_BEARING_LIFE({{{rating}}};{{{load}}};{{speed}};{{viscosity_ratio}};{{contamination}};{{{bearing}_fatigue}})"
    return (
        found(f"{bearing}_fatigue", "Fatigue load limit", "N", 0, f"CW.FATIGUE_LOAD_LIMIT({{{static}}};{{pitch}})"),
        found(f"{bearing}_factor", "a_ISO, lubrication and cleanliness", "–", 2, (call, 3)),
        found(
            f"{bearing}_modified",
            "Modified life, 90 %",
            "h",
            0,
            (call, 1),
            verdict=("standard", "bearing life, rated", "WATCH"),
        ),
    )


SECTIONS = (
    (
        "Bearing loads and life",
        (
            found("shaft_length", "To the outboard bearing", "mm", 1, _length("lengths", 5)),
            found("span", "Between the bearings", "mm", 1, '{shaft_length}-CW.QUANTITY({overhang};"mm")'),
            found("unbalance", "Force of the unbalance", "N", 1, "CW.UNBALANCE_FORCE({residual};{speed})"),
            found("inboard", "Radial bearing, inboard: load", "N", 0, (_LOADS, 1)),
            found("outboard", "Thrust bearing, outboard: radial load", "N", 0, (_LOADS, 2)),
            found(
                "radial_equivalent",
                "Radial bearing: equivalent load",
                "N",
                0,
                "CW.DEEP_GROOVE_EQUIVALENT_LOAD({inboard};0;{radial_static};{radial_f0})",
            ),
            found(
                "set_rating",
                "Thrust bearing: C of its rows",
                "N",
                0,
                ("CW.BEARING_SET_RATING({thrust_rating};{thrust_static};{thrust_rows})", 1),
            ),
            found(
                "set_static",
                "Thrust bearing: C0 of its rows",
                "N",
                0,
                ("CW.BEARING_SET_RATING({thrust_rating};{thrust_static};{thrust_rows})", 2),
            ),
            found(
                "thrust_equivalent",
                "Thrust bearing: equivalent load",
                "N",
                0,
                'CW.ANGULAR_CONTACT_EQUIVALENT_LOAD({outboard};{axial_design};{contact_angle};"pair")',
            ),
            found(
                "radial_p0",
                "Radial bearing: static load",
                "N",
                0,
                'CW.STATIC_EQUIVALENT_LOAD("deep groove";{inboard};0)',
            ),
            found(
                "radial_safety",
                "Radial bearing: static safety",
                "–",
                1,
                "CW.STATIC_SAFETY({radial_static};{radial_p0})",
                verdict=("≥", bound("static_wanted", "-")),
            ),
            found(
                "thrust_p0",
                "Thrust bearing: static load",
                "N",
                0,
                'CW.STATIC_EQUIVALENT_LOAD("angular contact pair";{outboard};{axial_design};{contact_angle})',
            ),
            found(
                "thrust_safety",
                "Thrust bearing: static safety",
                "–",
                1,
                "CW.STATIC_SAFETY({set_static};{thrust_p0})",
                verdict=("≥", bound("static_wanted", "-")),
            ),
            found(
                "radial_life",
                "Radial bearing: L10h",
                "h",
                0,
                ("CW.BEARING_LIFE_HOURS({radial_rating};{radial_equivalent};{speed})", 1),
                verdict=("standard", "bearing life, rated"),
            ),
            found(
                "thrust_life",
                "Thrust bearing: L10h",
                "h",
                0,
                ("CW.BEARING_LIFE_HOURS({set_rating};{thrust_equivalent};{speed})", 1),
                verdict=("standard", "bearing life, rated"),
            ),
            found(
                "both_life",
                "Both together: L10h",
                "h",
                0,
                "CW.BEARING_PAIR_LIFE({radial_life};{thrust_life})",
                verdict=("standard", "bearing life, rated"),
            ),
            limit("both_life", "asked by the pump's standard, at least", "h", 0, "bearing life, rated"),
        ),
    ),
    (
        "Lubrication and temperature",
        (
            found("viscosity_1", "Reference viscosity", "mm²/s", 1, ("CW.REFERENCE_VISCOSITY({speed};{pitch})", 1)),
            found(
                "viscosity_needed",
                "Viscosity for a ratio of 1.5",
                "mm²/s",
                1,
                ("CW.REFERENCE_VISCOSITY({speed};{pitch})", 2),
            ),
            found(
                "rubbing",
                "Load that rubs at the expected thrust",
                "N",
                0,
                "{inboard}+MAX(1.4*ABS({axial})-0.1*{outboard};{outboard})",
            ),
            found(
                "load_torque",
                "Friction torque of the loads",
                "N mm",
                0,
                (
                    "CW.BEARING_FRICTION_HEAT({speed};{viscosity_needed};{pitch};{friction_f0};{friction_f1};{rubbing})",
                    3,
                ),
            ),
            found(
                "housing",
                "Temperature of housing and oil, guide",
                "°C",
                0,
                (_WARM, 1),
                verdict=("≤", bound("housing_allowed", "degC"), "WATCH"),
            ),
            found("friction_heat", "Heat given off at it", "W", 0, (_WARM, 3)),
            found("oil_viscosity", "Viscosity of the oil at it", "mm²/s", 1, (_WARM, 2)),
            found(
                "viscosity_ratio",
                "Viscosity ratio, 1 at least",
                "–",
                2,
                "{oil_viscosity}/{viscosity_1}",
                verdict=("≥", "1", "WATCH"),
            ),
            *_life("radial", "radial_rating", "radial_equivalent", "radial_static"),
            *_life("thrust", "set_rating", "thrust_equivalent", "set_static"),
            found(
                "regrease",
                "Grease: interval",
                "h",
                0,
                (
                    GREASE,
                    'CW.RELUBRICATION_INTERVAL("deep groove ball";{speed};{bearing_bore};{housing};{grease_factors})',
                    None,
                ),
            ),
            found(
                "grease",
                "Grease: quantity",
                "g",
                1,
                (GREASE, "CW.GREASE_QUANTITY({bearing_outside};{bearing_width})", None),
            ),
        ),
    ),
)
