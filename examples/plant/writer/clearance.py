"""The clearance chain: readings on site, leakage, what it costs, when a reset pays, the setting, and chamber and thrust before and after."""
from .build import HOLES, OPEN, RINGS, VANES
from .seal_chamber import RULE, hole_chamber, margin, vane_chamber
from .side_by_side import SideBySide, Taken, bound, found, given

TITLE = "Running clearance"
_HEAD = "CW.FIELD_HEAD_CHECK({site_flow};{site_head};{site_speed};{used_flows};{used_heads};{speed})"
_EFFICIENCY = "CW.FIELD_EFFICIENCY_CHECK({site_flow};{site_head};{density_used};{site_power};{motor_efficiency};{used_flows_running};{used_efficiencies_running})"
_TOLD = "CW.CLEARANCE_FROM_HEAD_LOSS({part_lost};{part_uncertain};{clearance_set};{vane_width};{head_slope})"
_PENALTY = "CW.CLEARANCE_POWER_PENALTY({duty_flow};{duty_head};{density_used};{efficiency};{efficiency_ratio};{motor_efficiency})"
_PAYBACK = "CW.CLEARANCE_PAYBACK({electric};{hours};{price};{reset_cost})"
_INTERVAL = "CW.CLEARANCE_RESET_INTERVAL({electric};{months};{hours};{price};{reset_cost})"
_WEAR = "CW.CLEARANCE_WEAR({clearance_set};{clearance_now};{months};{clearance_limit})"
_WITHIN = '{clearance_read}<=CW.QUANTITY({clearance_limit};"mm")'
_TURN = "CW.CLEARANCE_ADJUSTMENT({clearance_now};{clearance_set};{thread_lead};{divisions})"
_EXPANSION = "{carrier_length};{rotor_expansion};{rotor_temperature};{casing_expansion};{casing_temperature}"
_GROUND = "{density_used};{speed};{impeller}"
_BACK = "{back_vane_outer};{back_vane_inner};{sleeve};{back_vane_height}"
_GAP = "CW.BACK_VANE_GAP_CHANGE({density_used};{speed};{back_vane_outer};{back_vane_inner};{sleeve};{back_vane_height};{back_space};{space_after};{core_rotation})"


def _leakage(key, clearance, text):
    edge = (
        "CW.VANE_EDGE_LEAKAGE({duty_flow};{duty_head};{hydraulic_efficiency};{speed};{vanes};"
        + clearance
        + ";{impeller};{edge_diameter};{edge_width};{edge_length};{density_used})"
    )
    ring = (
        "CW.RING_CLEARANCE_LEAKAGE({ring_head};{front_ring};" + clearance + ";{front_length};{speed};{viscosity_used})"
    )
    return found(key, text, "m³/h", 2, (OPEN, edge, 1), (RINGS, ring, 1))


def _holes_behind(clearance):
    return f'CW.BALANCE_HOLE_PRESSURE({{ring_pressure}};{{back_ring}};2*CW.QUANTITY({{{clearance}}};"mm");{{hole}};{{holes}})'


SECTIONS = (
    (
        "Given",
        given(
            """site_flow site_suction site_discharge gauge_height site_suction_bore site_discharge_bore site_speed
            site_power motor_efficiency hours price reset_cost clearance_limit months front_length
            efficiency_slope hydraulic_efficiency edge_diameter edge_width edge_length thread_lead divisions
            carrier_length rotor_expansion rotor_temperature casing_expansion casing_temperature least_hot"""
        ),
    ),
    (
        "Known of the pump",
        (
            Taken("efficiency", "Efficiency at the duty, from its curve", "–", 3),
            Taken("power_input", "Power input at the duty", "kW", 2),
        ),
    ),
    (
        "Readings on site against the curve",
        (
            found(
                "site_head",
                "Head from the gauges",
                "m",
                2,
                "CW.TOTAL_HEAD_FROM_GAUGES({site_discharge};{site_suction};{gauge_height};0;{site_discharge_bore};{site_suction_bore};{site_flow};{density_used})",
            ),
            found("site_expected", "Head of the curve at that flow", "m", 2, (_HEAD, 2)),
            found("part_lost", "Head lost, as a part", "–", 3, (_HEAD, 4)),
            found("part_uncertain", "its uncertainty, as a part", "–", 3, (_HEAD, 5)),
            found("head_told", "Head", "", 0, (_HEAD, 1), words=True),
            found("site_efficiency", "Efficiency from the readings", "–", 3, (_EFFICIENCY, 2)),
            found("site_efficiency_expected", "Efficiency of the curve", "–", 3, (_EFFICIENCY, 3)),
            found("efficiency_told", "Efficiency", "", 0, (_EFFICIENCY, 1), words=True),
            found("told", "Open: clearance that the lost head tells of", "mm", 2, (OPEN, _TOLD, 1)),
            found("told_low", "at least", "mm", 2, (OPEN, _TOLD, 2)),
            found("told_high", "at most", "mm", 2, (OPEN, _TOLD, 3)),
        ),
    ),
    (
        "|Leakage and what it takes",
        (
            found(
                "clearance_read",
                "Clearance now: open axial, ring radial",
                "mm",
                2,
                'CW.QUANTITY({clearance_now};"mm")',
                verdict=("≤", bound("clearance_limit", "mm")),
            ),
            found("wear_rate", "Growth in a year", "mm/year", 2, (_WITHIN, _WEAR, 1)),
            found("wear_left", "Time until the limit, at that rate", "month", 0, (_WITHIN, _WEAR, 2)),
            found(
                "rim_head",
                "Closed: head at the rim",
                "m",
                2,
                (RINGS, '{duty_head}*CW.QUANTITY({static_part};"-")', None),
            ),
            found(
                "ring_head",
                "Closed: head across the front ring",
                "m",
                2,
                (RINGS, "CW.RING_HEAD_DIFFERENCE({rim_head};{speed};{impeller};{front_ring};{core_rotation})", None),
            ),
            _leakage("leak_set", "{clearance_set}", "Leakage as set: vanes, or one ring"),
            _leakage("leak_now", "{clearance_now}", "Leakage now"),
            found(
                "leak_extra",
                "More than as set, all rings",
                "m³/h",
                2,
                (HOLES, "2*({leak_now}-{leak_set})", None),
                "{leak_now}-{leak_set}",
            ),
            found(
                "head_lost",
                "Head lost at the duty's flow",
                "m",
                2,
                (OPEN, "{duty_head}*(1-{head_ratio})", None),
                (RINGS, "CW.HEAD_WITH_LEAKAGE({duty_flow};{leak_extra};{used_flows};{used_heads})", 2),
            ),
            found(
                "efficiency_ratio",
                "Efficiency now, over that as set",
                "–",
                4,
                (
                    OPEN,
                    "CW.CLEARANCE_EFFICIENCY_RATIO({clearance_now};{clearance_set};{vane_width};{efficiency_slope})",
                    None,
                ),
                (RINGS, "CW.LEAKAGE_EFFICIENCY_RATIO({duty_flow};{leak_set}+{leak_extra};{leak_set})", None),
            ),
            found("shaft_extra", "Power it costs, at the shaft", "kW", 3, (_PENALTY, 1)),
            found("electric", "Power it costs, from the mains", "kW", 3, (_PENALTY, 2)),
        ),
    ),
    (
        "Money",
        (
            found("yearly", "Cost of the lost energy, a year", "", 0, (_PAYBACK, 1)),
            found("payback", "A reset pays back in", "month", 1, (_PAYBACK, 2)),
            found("best_interval", "Interval between resets that costs least", "month", 1, (_INTERVAL, 2)),
            found("interval_left", "Until then; negative when it is past", "month", 1, (_INTERVAL, 3)),
            found(
                "due",
                "A reset for the energy's sake is",
                "",
                0,
                (_INTERVAL, 1),
                words=True,
                verdict=("word", ("not yet",), ("due",)),
            ),
        ),
    ),
    (
        "Setting",
        (
            found("turn", "Open: carrier", "", 0, (OPEN, _TURN, 1), words=True),
            found("move", "Open: axial movement", "mm", 3, (OPEN, _TURN, 2)),
            found("divisions_exact", "Open: divisions, exactly", "–", 2, (OPEN, _TURN, 3)),
            found("divisions_whole", "Open: divisions to turn", "–", 0, (OPEN, _TURN, 4)),
            found(
                "clearance_after",
                "Clearance after it; closed: of new rings",
                "mm",
                3,
                (OPEN, _TURN, 5),
                'CW.QUANTITY({clearance_set};"mm")',
            ),
            found(
                "cold",
                "Open: axial; closed: diametral, cold",
                "mm",
                3,
                (OPEN, "{clearance_after}", None),
                "2*{clearance_after}",
            ),
            found(
                "hot",
                "The same hot",
                "mm",
                3,
                (f"CW.HOT_RUNNING_CLEARANCE({{cold}};{_EXPANSION})", 1),
                verdict=("≥", bound("least_hot", "mm")),
            ),
        ),
    ),
    (
        "Chamber and thrust, before and after the reset",
        (
            found(
                "gap_after",
                "Back vanes: gap after",
                "mm",
                2,
                (VANES, 'CW.QUANTITY({back_gap_set};"mm")+{clearance_read}-{clearance_after}', None),
            ),
            found(
                "space_after",
                "Back vanes: height and gap after",
                "mm",
                2,
                (VANES, 'CW.QUANTITY({back_vane_height};"mm")+{gap_after}', None),
            ),
            found("chamber_before", "Chamber before", "bar(g)", 3, "{chamber_now_barg}"),
            found(
                "chamber_after_barg",
                "Chamber after",
                "bar(g)",
                3,
                (VANES, vane_chamber("{rim}", "{gap_after}"), 1),
                (HOLES, hole_chamber("{clearance_set}"), 1),
                (RULE, 1),
            ),
            found(
                "chamber_after",
                "the same, absolute",
                "bar(a)",
                3,
                (VANES, vane_chamber("{rim}", "{gap_after}"), 2),
                (HOLES, hole_chamber("{clearance_set}"), 2),
                (RULE, 2),
            ),
            *margin("after", "chamber_after", "After"),
            found(
                "front_now",
                "Force on the front before",
                "N",
                0,
                (OPEN, "CW.VANE_SIDE_FORCE({vane_side}*{head_ratio};{impeller};{eye})", None),
                "{front_force}",
            ),
            found(
                "behind_now",
                "Holes: pressure inside the ring before",
                "bar",
                3,
                (HOLES, _holes_behind("clearance_now"), None),
            ),
            found(
                "back_now",
                "Force on the back before",
                "N",
                0,
                (
                    HOLES,
                    f"CW.BACK_FORCE_WITH_RING({{rim}};{_GROUND};{{back_ring}};{{sleeve}};{{behind_now}};{{core_rotation}})",
                    None,
                ),
                (VANES, f"CW.BACK_FORCE_WITH_VANES({{rim_now}};{_GROUND};{_BACK};{{back_space}};{{core_rotation}})", 1),
                "{back_force}",
            ),
            found(
                "back_after",
                "Force on the back after",
                "N",
                0,
                (VANES, f"CW.BACK_FORCE_WITH_VANES({{rim}};{_GROUND};{_BACK};{{space_after}};{{core_rotation}})", 1),
                "{back_force}",
            ),
            found(
                "axial_before",
                "Axial thrust before, towards the suction",
                "N",
                0,
                ("CW.AXIAL_THRUST({back_now};{front_now};{momentum};{shaft_end})", 1),
            ),
            found(
                "axial_before_way",
                "its direction, both sides scattering",
                "",
                0,
                ("CW.AXIAL_THRUST({back_now};{front_now};{momentum};{shaft_end})", 4),
                words=True,
            ),
            found(
                "axial_after",
                "Axial thrust after",
                "N",
                0,
                ("CW.AXIAL_THRUST({back_after};{front_force};{momentum};{shaft_end})", 1),
            ),
            found(
                "axial_after_way",
                "its direction, both sides scattering",
                "",
                0,
                ("CW.AXIAL_THRUST({back_after};{front_force};{momentum};{shaft_end})", 4),
                words=True,
            ),
            found("gap_thrust", "of which by the wider gap behind", "N", 0, (VANES, _GAP, 1)),
            found("gap_pressure", "Chamber's change by the wider gap", "bar", 3, (VANES, _GAP, 2)),
        ),
    ),
)
SOURCES = (
    (
        "Ring leakage: end loss and friction in the gap round a turning hub, against measured values of Kanki and"
        " Kawakami. Open impeller: leakage over the vanes' edges; head and efficiency by slopes that are measured on"
        " the pump. Field check: uncertainties of readings and curve in quadrature."
    ),
    (
        "Money: extra power times hours and price; interval of least cost with a cost that grows evenly. Chamber and"
        " thrust as on the sheets Seal and Rotor. Pages clearance, seal and rotor of docs/functions."
    ),
)
CAUTIONS = (
    (
        "A lost head may have other causes: a wrong speed, gas, a choked suction, a worn impeller. Energy is not all"
        " that a reset is for: seal margin, thrust and vibration count too. Never set an impeller while the pump can"
        " start: lock it off, relieve and drain it, and mind the liquid."
    ),
    (
        "Moving an open impeller towards the casing opens the gap behind its back vanes: chamber pressure and thrust"
        " towards the suction rise. What the clearance is hot counts: a pump set too close seizes when it warms. The"
        " pump maker's least clearances go before this sheet."
    ),
)


class Clearance(SideBySide):
    def __init__(self, plant, places, rotor, seal):
        super().__init__("Clearance", TITLE, SECTIONS, SOURCES, CAUTIONS, plant, places, (rotor, seal))
