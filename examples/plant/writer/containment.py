"""Containment and surfaces: casing and test pressure, flanges, branches' loads, wall, trapped liquid, temperature class, heating, vibration, balance."""
from .side_by_side import Pairs, SideBySide, Taken, bound, found, given, limit

TITLE = "Containment and surfaces"
_CASING = (
    "CW.CASING_PRESSURE({greatest_suction};{greatest_head};{greatest_density};{head_tolerance};{speed_ratio};"
    "IF(ISNUMBER({rating_margin_limit});{rating_margin_limit};0))"
)
_FLANGE = "CW.FLANGE_CHECK({casing_pressure};{temperature};{material_group};{pressure_class})"
_NOZZLES = "CW.NOZZLE_LOAD_CHECK({nozzle_rule};{forces};{allowed_forces};{moments};{allowed_moments})"
_WALL = "CW.WALL_NEEDED_FROM_BORE({rating_needed};{bore};{stress};{quality};0.4;{allowance})"
_LIFE = "CW.CORROSION_LIFE_FROM_READINGS({wall_before};{wall_now};{interval};{wall_pressure})"
_SHUT = "{shutoff_used};{capacity};{temperature};"
_ZONE = "CW.VIBRATION_ZONE({category};{power_input};{velocity})"
_ALARM = "CW.VIBRATION_ALARM_TRIP({category};{power_input};{baseline})"
_NO_GAS = '{ignition}=""'
_REGION = (
    '=IF({region}="preferred";"vibration, horizontal, preferred region";"vibration, horizontal, allowable region")'
)

SECTIONS = (
    (
        "Given",
        (
            *given(
                """greatest_suction greatest_density head_tolerance speed_ratio rated_pressure material_group
            pressure_class test_held bore stress quality allowance wall_before wall_now interval life_wanted
            warming expansion compressibility nozzle_rule"""
            ),
            Pairs("forces", "allowed_forces", "Branches, force {}: applied; allowed"),
            Pairs("moments", "allowed_moments", "Branches, moment {}: applied; allowed"),
            *given(
                """ignition hottest_surface area coefficient shut_minutes temperature_limit dry_power dry_capacity
            dry_minutes dry_area dry_limit category velocity baseline"""
            ),
        ),
    ),
    (
        "Known of the pump",
        (
            Taken("wanted", "Flow wanted", "m³/h", 1),
            Taken("casing_volume", "Liquid in the casing", "L", 1),
            Taken("metal_mass", "Metal heated with it", "kg", 0),
            Taken("region", "Operating region at the duty", "", None),
        ),
    ),
    (
        "What the standard asks of the curve",
        (
            found(
                "head_rise",
                "Rise of the head to closed valve",
                "–",
                3,
                "CW.SHUTOFF_HEAD_RISE({used_flows};{used_heads};{wanted})",
                verdict=("standard", "head rise to shut-off"),
            ),
            limit("head_rise", "asked by the pump's standard, at least", "–", 2, "head rise to shut-off"),
            found(
                "place",
                "Flow wanted over best efficiency flow",
                "–",
                3,
                "{wanted}/{best_used}",
                verdict=("standard", "rated flow, least"),
            ),
            limit("place", "asked by the pump's standard, at least", "–", 2, "rated flow, least"),
            found(
                "place_most",
                "the same, against the most",
                "–",
                3,
                "{wanted}/{best_used}",
                verdict=("standard", "rated flow, greatest"),
            ),
            limit("place_most", "asked by the pump's standard, at most", "–", 2, "rated flow, greatest"),
        ),
    ),
    (
        "|Pressure",
        (
            limit("rating_margin", "Rating's margin over the rise, at least", "–", 2, "rating margin"),
            found("casing_pressure", "Greatest casing pressure", "bar(g)", 2, (_CASING, 1)),
            found(
                "rating_needed",
                "Rating that the casing needs",
                "bar(g)",
                2,
                (_CASING, 2),
                verdict=("≤", bound("rated_pressure", "barg")),
            ),
            found("flange_rating", "Rating of the flanges at the temperature", "bar(g)", 2, (_FLANGE, 2)),
            found("flange_margin", "Rating less casing pressure", "bar", 2, (_FLANGE, 3)),
            found("flange", "Flanges", "", 0, (_FLANGE, 1), words=True, verdict=("word", ("within",))),
            found(
                "test_pressure",
                "Hydrostatic test, 1.5 x rated pressure",
                "bar(g)",
                1,
                "CW.HYDROSTATIC_TEST_PRESSURE({rated_pressure})",
                verdict=("≤", bound("test_held", "barg")),
            ),
            found(
                "test_factor",
                "Test pressure over rated pressure",
                "–",
                2,
                'CW.QUANTITY({test_held};"barg")/CW.QUANTITY({rated_pressure};"barg")',
                verdict=("standard", "hydrostatic test factor"),
            ),
            limit("test_factor", "asked by the pump's standard, at least", "–", 2, "hydrostatic test factor"),
            limit("test_time", "Time of the test, at least", "min", 0, "hydrostatic test time"),
            found(
                "flange_test",
                "System test that the flanges stand for",
                "bar(g)",
                0,
                "CW.FLANGE_TEST_PRESSURE({material_group};{pressure_class})",
            ),
        ),
    ),
    (
        "Loads of the pipes on the branches",
        (
            found(
                "nozzles", "Combined loads", "", 0, (_NOZZLES, 1), words=True, verdict=("word", ("within",), ("open",))
            ),
            found(
                "combined",
                "Combined, by the rule",
                "–",
                2,
                (_NOZZLES, 2),
                verdict=("standard", "nozzle loads, combined"),
            ),
            limit("combined", "asked by the pump's standard, at most", "–", 1, "nozzle loads, combined"),
            found(
                "largest_force",
                "Largest component of the forces",
                "–",
                2,
                (_NOZZLES, 3),
                verdict=("standard", "nozzle loads, component"),
            ),
            found(
                "largest_moment",
                "Largest component of the moments",
                "–",
                2,
                (_NOZZLES, 4),
                verdict=("standard", "nozzle loads, component"),
            ),
            limit("largest_force", "asked by the pump's standard, at most", "–", 1, "nozzle loads, component"),
        ),
    ),
    (
        "Wall and corrosion",
        (
            found("wall_pressure", "Wall for the pressure alone", "mm", 2, (_WALL, 1)),
            found("wall_least", "with the allowance", "mm", 2, (_WALL, 2)),
            found("wall_read", "Wall now", "mm", 2, 'CW.QUANTITY({wall_now};"mm")', verdict=("≥", "{wall_pressure}")),
            found(
                "allowance_read",
                "Corrosion allowance",
                "mm",
                1,
                'CW.QUANTITY({allowance};"mm")',
                verdict=("standard", "corrosion allowance"),
            ),
            limit("allowance_read", "asked by the pump's standard, at least", "mm", 1, "corrosion allowance"),
            found("corrosion", "Rate between the readings", "mm/year", 3, (_LIFE, 1)),
            found("life", "Life left at that rate", "year", 1, (_LIFE, 2), verdict=("≥", bound("life_wanted", "year"))),
        ),
    ),
    (
        "Liquid shut in",
        (
            found(
                "trapped",
                "Pressure rise when it warms so much",
                "bar",
                0,
                "CW.TRAPPED_LIQUID_PRESSURE_RISE({warming};{expansion};{compressibility};{bore};{wall_now})",
            ),
            found(
                "trapped_to",
                "Greatest suction pressure and that rise",
                "bar(g)",
                0,
                'CW.QUANTITY({greatest_suction};"barg")+{trapped}',
            ),
            found(
                "relief",
                "Between shut valves",
                "",
                0,
                'IF({trapped_to}>CW.QUANTITY({rated_pressure};"barg");"needs relief";"within the rating")',
                words=True,
            ),
        ),
    ),
    (
        "Surface temperature in explosive atmospheres",
        (
            found(
                "surface_class",
                "Class that the hottest surface keeps",
                "",
                0,
                ("CW.TEMPERATURE_CLASS({hottest_surface})", 1),
                words=True,
            ),
            found(
                "gas_class",
                "Class needed in the liquid's own vapour",
                "",
                0,
                (_NO_GAS, '"–"', None),
                ("CW.TEMPERATURE_CLASS_FOR_GAS({ignition})", 1),
                words=True,
            ),
            found(
                "surface_allowed",
                "Surface allowed, 80 % of ignition",
                "°C",
                0,
                (_NO_GAS, '"–"', None),
                "CW.SURFACE_TEMPERATURE_ALLOWED({ignition})",
            ),
            found(
                "surface_read",
                "Hottest surface",
                "°C",
                0,
                'CW.QUANTITY({hottest_surface};"degC")',
                verdict=("≤", "{surface_allowed}"),
            ),
        ),
    ),
    (
        "Closed valve and dry running",
        (
            found(
                "capacity",
                "Heat that the pump takes up",
                "kJ/K",
                1,
                "CW.PUMP_HEAT_CAPACITY({casing_volume};{density_used};{heat_used};{metal_mass})",
            ),
            found(
                "shut_time",
                "Closed valve: time to the limit",
                "min",
                1,
                (f"CW.DEAD_HEADED_TIME({_SHUT}{{temperature_limit}};{{area}};{{air}};{{coefficient}})", 1),
                verdict=("≥", bound("shut_minutes", "min")),
            ),
            found(
                "shut_temperature",
                "Closed valve: after the time to be borne",
                "°C",
                1,
                (f"CW.DEAD_HEADED_TEMPERATURE({_SHUT}{{shut_minutes}};{{area}};{{air}};{{coefficient}})", 1),
            ),
            found(
                "shut_settled",
                "Closed valve: in the end",
                "°C",
                0,
                (f"CW.DEAD_HEADED_TEMPERATURE({_SHUT}{{shut_minutes}};{{area}};{{air}};{{coefficient}})", 2),
            ),
            found(
                "dry",
                "Dry running: after the time to be borne",
                "°C",
                0,
                (
                    "CW.DRY_RUNNING_TEMPERATURE({dry_power};{dry_capacity};{temperature};{dry_minutes};{dry_area};{air};{coefficient})",
                    1,
                ),
                verdict=("≤", bound("dry_limit", "degC")),
            ),
            found(
                "heat_loss",
                "Heat that the bare casing gives off",
                "kW",
                2,
                "CW.CASING_HEAT_LOSS({temperature};{air};{area};{coefficient})",
            ),
        ),
    ),
    (
        "Vibration and balance",
        (
            found("zone", "Vibration zone", "", 0, (_ZONE, 1), words=True, verdict=("word", ("A", "B"), ("C",))),
            found("upper_b", "Upper limit of zone B", "mm/s", 1, (_ZONE, 3)),
            found(
                "velocity_read",
                "Vibration measured",
                "mm/s",
                1,
                'CW.QUANTITY({velocity};"mm/s")',
                verdict=("standard", _REGION),
            ),
            limit("velocity_read", "asked by the pump's standard, at most", "mm/s", 1, _REGION),
            found("alarm", "Alarm", "mm/s", 1, (_ALARM, 1)),
            found("trip", "Trip, at most", "mm/s", 1, (_ALARM, 3)),
            found(
                "grade",
                "Balance grade of the residual unbalance",
                "mm/s",
                2,
                "CW.BALANCE_GRADE({residual};{impeller_mass};{speed})",
                verdict=("standard", "balance grade"),
            ),
            limit("grade", "asked by the pump's standard, at most", "mm/s", 1, "balance grade"),
            found(
                "unbalance_allowed",
                "Residual unbalance that it permits",
                "g mm",
                0,
                ("ISNUMBER({grade_limit})", "CW.PERMISSIBLE_UNBALANCE({grade_limit};{impeller_mass};{speed})", 1),
            ),
        ),
    ),
)
SOURCES = (
    (
        "Flanges: ASME B16.5, table 2 by material group. Wall: ASME B31.3. Branches: ISO 5199 annex B, ISO 13709 annex"
        " F. Temperature classes: IEC 60079-0 and -14. Vibration: ISO 10816-7. Balance: ISO 21940-11. Heating: energy"
        " balances."
    ),
    (
        "Clauses: m from memory of the standard, q quoted by others, r excerpt read. What was read of each source:"
        " docs/functions, pages containment, surfaces, rotor and standards."
    ),
)
CAUTIONS = (
    (
        "A casing is held by its weakest part: gaskets, bolts, seal and drains have ratings of their own. Pressure"
        " tests are done on water, vented, at a distance, by people who may; cold brittle metal must not be tested."
        " Corrosion is seldom uniform: pits and erosion outrun any mean rate."
    ),
    (
        "For explosive atmospheres the certificate, its conditions and the site's explosion protection document decide,"
        " not this sheet. Liquid shut in needs relief. Never run a pump dry or against a closed valve: the times shown"
        " leave out what is unknown. The maker's limits, local codes and a licensed engineer's judgement go before"
        " these figures."
    ),
)


class Containment(SideBySide):
    def __init__(self, plant, places, *before):
        super().__init__("Containment", TITLE, SECTIONS, SOURCES, CAUTIONS, plant, places, before)
