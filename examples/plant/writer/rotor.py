"""The rotor chain: radial and axial thrust, deflection at the seal, bearings, critical speed, shaft, key, coupling."""
from . import rotor_bearings
from .build import HOLES, OPEN, RINGS, VANES
from .side_by_side import Pairs, SideBySide, Taken, bound, found, given, limit

TITLE = "Rotor"
_GROUND = "{density_used};{speed};{impeller}"
_SEAL_BEAM = "CW.SHAFT_DEFLECTION_AT_SEAL({shaft_force};{lengths};{diameters};{overhang};{seal_distance};{elastic})"
_CRITICAL = "CW.FIRST_CRITICAL_SPEED({impeller_mass};0;{lengths};{diameters};{overhang};{shaft_length};7850;{elastic})"
_AXIAL = "CW.AXIAL_THRUST({back_force};{front_force};{momentum};{shaft_end})"
_FATIGUE = "CW.SHAFT_FATIGUE_SAFETY({moment};{motor_torque};0;{bearing_shaft};{endurance};{tensile};{yielding};{bending_notch};{torsion_notch})"
_FREQUENCIES = "CW.BEARING_FREQUENCIES({speed};{elements};{element};{pitch})"
_SEPARATION = '=IF({pump_standard}="ISO 13709";"dry critical speed ratio, wet running";"critical speed ratio, running")'


SECTIONS = (
    (
        "Given",
        (
            *given(
                """pump_standard casing impeller_form arrangement impeller outlet_width eye sleeve vanes
            reference_thrust static_part core_rotation front_ring vane_side_part clearance_set back_ring holes
            hole back_vane_outer back_vane_inner back_vane_height back_gap_set"""
            ),
            Pairs("lengths", "diameters", "Section {}: length; diameter"),
            *given(
                """overhang seal_distance sleeve_shaft bearing_shaft coupling_shaft elastic tensile yielding
            surface_factor size_factor other_factors bending_notch torsion_notch safety_wanted impeller_mass
            rotor_weight weight_place residual drive_force drive_place"""
            ),
        ),
    ),
    (
        "|Given: bearings, coupling",
        (
            *given(
                """radial_rating radial_static radial_f0 thrust_rating thrust_static thrust_rows contact_angle mounting
            pitch static_wanted elements element lubricant oil_t1 oil_1 oil_t2 oil_2 contamination friction_f0
            friction_f1 housing_area housing_transfer other_heat air housing_allowed bearing_bore
            bearing_outside bearing_width grease_factors service_factor coupling_rated key_length key_width
            key_height key_allowed breakaway"""
            ),
        ),
    ),
    (
        "Known of the pump",
        (
            Taken("speed", "Speed", "1/min", 0),
            Taken("density_used", "Density", "kg/m³", 1),
            Taken("duty_flow", "Duty: flow", "m³/h", 1),
            Taken("duty_head", "Duty: head", "m", 2),
            Taken("least_read", "Least flow the process takes", "m³/h", 1),
            Taken("best_used", "Best efficiency flow on the liquid", "m³/h", 1),
            Taken("specific_speed", "Specific speed", "–", 1),
            Taken("shutoff_head", "Head at closed valve", "m", 2),
            Taken("shutoff_used", "Power at closed valve", "kW", 1),
            Taken("greatest_head", "Greatest head of the curve", "m", 2),
            Taken("motor_fitted", "Motor fitted", "kW", 1),
            Taken("ambient", "Ambient pressure", "bar(a)", 4),
            Taken("surface_absolute", "Pressure on the surface", "bar(a)", 4),
            Taken("liquid_level", "Surface above the NPSH datum", "m", 2),
            Taken("suction_duty_loss", "Suction losses at the duty", "m", 3),
        ),
    ),
    (
        "|Radial thrust",
        (
            found(
                "radial_k",
                "Radial thrust coefficient at the duty",
                "–",
                3,
                "CW.RADIAL_THRUST_COEFFICIENT({casing};{duty_flow};{best_used};{reference_thrust};{specific_speed})",
            ),
            found(
                "thrust_head",
                "Head it goes with (volute: valve closed)",
                "m",
                2,
                ('{casing}="single volute"', "{shutoff_head}", None),
                "{duty_head}",
            ),
            found(
                "radial",
                "Radial thrust at the duty",
                "N",
                0,
                "CW.RADIAL_THRUST({density_used};{thrust_head};{impeller};{outlet_width};{radial_k})",
            ),
            found(
                "radial_k_least",
                "Coefficient at the least flow",
                "–",
                3,
                "CW.RADIAL_THRUST_COEFFICIENT({casing};{least_read};{best_used};{reference_thrust};{specific_speed})",
            ),
            found(
                "head_least",
                "Head it goes with there",
                "m",
                2,
                ('{casing}="single volute"', "{shutoff_head}", None),
                "CW.CURVE_HEAD({used_flows};{used_heads};{least_read})",
            ),
            found(
                "radial_least",
                "Radial thrust at the least flow",
                "N",
                0,
                "CW.RADIAL_THRUST({density_used};{head_least};{impeller};{outlet_width};{radial_k_least})",
            ),
        ),
    ),
    (
        "Axial thrust, clearances as set",
        (
            found(
                "suction_head",
                "Head at the suction over vacuum",
                "m",
                2,
                "CW.NPSH_AVAILABLE({surface_absolute};0;{density_used};{liquid_level};{suction_duty_loss})",
            ),
            found(
                "suction_bara",
                "Pressure there, absolute",
                "bar(a)",
                3,
                "CW.PRESSURE_FROM_HEAD({suction_head};{density_used})",
            ),
            found("suction_barg", "The same, gauge", "bar(g)", 3, "CW.GAUGE_FROM_ABSOLUTE({suction_bara};{ambient})"),
            found(
                "rim",
                "Pressure at the rim over the suction",
                "bar",
                3,
                "CW.RIM_PRESSURE({duty_head};{density_used};{static_part})",
            ),
            found(
                "vane_side",
                "Open: pressure on the vanes' side",
                "bar",
                3,
                (OPEN, "CW.RIM_PRESSURE({duty_head};{density_used};{vane_side_part})", None),
            ),
            found(
                "front_force",
                "Force on the front",
                "N",
                0,
                (OPEN, "CW.VANE_SIDE_FORCE({vane_side};{impeller};{eye})", None),
                (RINGS, f"CW.SHROUD_FORCE({{rim}};{_GROUND};{{front_ring}};{{core_rotation}})", None),
            ),
            found(
                "ring_pressure",
                "Pressure outside the back ring",
                "bar",
                3,
                (HOLES, f"CW.SHROUD_PRESSURE({{rim}};{_GROUND};{{back_ring}};{{core_rotation}})", None),
            ),
            found(
                "behind",
                "Pressure inside it, at the holes",
                "bar",
                3,
                (
                    HOLES,
                    'CW.BALANCE_HOLE_PRESSURE({ring_pressure};{back_ring};2*CW.QUANTITY({clearance_set};"mm");{hole};{holes})',
                    None,
                ),
            ),
            found(
                "back_space",
                "Back vanes: height and gap",
                "mm",
                2,
                (VANES, 'CW.QUANTITY({back_vane_height};"mm")+CW.QUANTITY({back_gap_set};"mm")', None),
            ),
            found(
                "back_force",
                "Force on the back",
                "N",
                0,
                (
                    HOLES,
                    f"CW.BACK_FORCE_WITH_RING({{rim}};{_GROUND};{{back_ring}};{{sleeve}};{{behind}};{{core_rotation}})",
                    None,
                ),
                (
                    VANES,
                    f"CW.BACK_FORCE_WITH_VANES({{rim}};{_GROUND};{{back_vane_outer}};{{back_vane_inner}};{{sleeve}};{{back_vane_height}};{{back_space}};{{core_rotation}})",
                    1,
                ),
                (
                    '{arrangement}="no back ring"',
                    f"CW.SHROUD_FORCE({{rim}};{_GROUND};{{sleeve}};{{core_rotation}})",
                    None,
                ),
            ),
            found(
                "momentum",
                "Force of the turned flow",
                "N",
                0,
                "CW.INLET_MOMENTUM_FORCE({density_used};{duty_flow};{eye})",
            ),
            found(
                "shaft_end",
                "Suction pressure on the shaft's end",
                "N",
                0,
                "CW.SHAFT_END_FORCE({suction_barg};{sleeve})",
            ),
            found("axial", "Axial thrust towards the suction", "N", 0, (_AXIAL, 1)),
            found("axial_least", "its least, both sides scattering", "N", 0, (_AXIAL, 2)),
            found("axial_greatest", "its greatest", "N", 0, (_AXIAL, 3)),
            found("axial_way", "Direction over that range", "", 0, (_AXIAL, 4), words=True),
            found(
                "axial_row",
                "Thrust bearing's row that takes it",
                "",
                0,
                "CW.THRUST_ROW({axial};{mounting})",
                words="long",
            ),
            found(
                "axial_design", "Greatest of both directions", "N", 0, "MAX(ABS({axial_least});ABS({axial_greatest}))"
            ),
        ),
    ),
    (
        "Deflection of the shaft",
        (
            found(
                "shaft_force",
                "Radial thrust and the impeller's weight",
                "N",
                0,
                '{radial}+9.80665*CW.QUANTITY({impeller_mass};"kg")',
            ),
            found(
                "shaft_force_least",
                "The same at the least flow",
                "N",
                0,
                '{radial_least}+9.80665*CW.QUANTITY({impeller_mass};"kg")',
            ),
            found(
                "deflection",
                "Deflection at the seal faces, duty",
                "mm",
                4,
                (_SEAL_BEAM, 1),
                verdict=("standard", "shaft deflection at the seal"),
            ),
            found(
                "deflection_least",
                "the same at the least flow",
                "mm",
                4,
                (_SEAL_BEAM.replace("shaft_force", "shaft_force_least"), 1),
                verdict=("standard", "shaft deflection at the seal"),
            ),
            limit("deflection", "asked by the pump's standard, at most", "mm", 3, "shaft deflection at the seal"),
            found(
                "deflection_impeller",
                "Deflection at the impeller",
                "mm",
                4,
                (_SEAL_BEAM, 2),
                verdict=("standard", "shaft deflection at the impeller"),
            ),
            limit(
                "deflection_impeller",
                "asked by the pump's standard, at most",
                "mm",
                3,
                "shaft deflection at the impeller",
            ),
            found("slenderness", "Slenderness L³/D⁴", "1/mm", 2, "CW.SHAFT_STIFFNESS_RATIO({overhang};{sleeve_shaft})"),
        ),
    ),
    *rotor_bearings.SECTIONS,
    (
        "Frequencies and critical speed",
        (
            found("outer", "Radial bearing: outer ring", "Hz", 1, (_FREQUENCIES, 1)),
            found("inner", "Radial bearing: inner ring", "Hz", 1, (_FREQUENCIES, 2)),
            found("cage", "Radial bearing: cage", "Hz", 1, (_FREQUENCIES, 3)),
            found("spin", "Radial bearing: ball's spin", "Hz", 1, (_FREQUENCIES, 4)),
            found("passing", "Vanes passing the cutwater", "Hz", 1, "CW.VANE_PASSING_FREQUENCY({speed};{vanes})"),
            found("critical", "First critical speed, lower bound", "1/min", 0, (_CRITICAL, 1)),
            found(
                "separation",
                "over the running speed",
                "–",
                2,
                ("CW.CRITICAL_SPEED_SEPARATION({critical};{speed};0)", 1),
                verdict=("standard", _SEPARATION),
            ),
            limit("separation", "asked by the pump's standard, at least", "–", 2, _SEPARATION),
        ),
    ),
    (
        "Shaft, key and coupling",
        (
            found(
                "coupling",
                "Torque the coupling must carry",
                "N m",
                1,
                "CW.COUPLING_TORQUE({motor_fitted};{speed};{service_factor})",
                verdict=("≤", bound("coupling_rated", "N m")),
            ),
            found(
                "shear", "Shear stress at the coupling", "MPa", 1, "CW.SHAFT_SHEAR_STRESS({coupling};{coupling_shaft})"
            ),
            found(
                "key",
                "Pressure on the key",
                "MPa",
                1,
                ("CW.KEY_PRESSURE({coupling};{coupling_shaft};{key_length};{key_width};{key_height})", 3),
                verdict=("≤", bound("key_allowed", "MPa")),
            ),
            found("motor_torque", "Torque of the motor's rating", "N m", 1, "CW.SHAFT_TORQUE({motor_fitted};{speed})"),
            found(
                "moment",
                "Bending moment at the inboard bearing",
                "N m",
                1,
                '({shaft_force}+{unbalance})*CW.QUANTITY({overhang};"mm")/1000',
            ),
            found(
                "equivalent_stress",
                "Equivalent stress there",
                "MPa",
                1,
                ("CW.SHAFT_COMBINED_STRESS({moment};{motor_torque};{axial_design};{bearing_shaft})", 4),
            ),
            found(
                "endurance",
                "Endurance limit",
                "MPa",
                0,
                "CW.SHAFT_ENDURANCE_LIMIT({tensile};{surface_factor};{size_factor};{other_factors})",
            ),
            found(
                "fatigue", "Safety against fatigue", "–", 2, (_FATIGUE, 1), verdict=("≥", bound("safety_wanted", "-"))
            ),
            found("yield", "Safety against yield", "–", 2, (_FATIGUE, 2), verdict=("≥", bound("safety_wanted", "-"))),
            found(
                "closed_torque",
                "Torque at full speed, valve closed",
                "N m",
                1,
                "CW.SHAFT_TORQUE({shutoff_used};{speed})",
            ),
            found(
                "start_torque",
                "Start-up torque at half speed",
                "N m",
                1,
                "CW.STARTING_TORQUE({closed_torque};0.5;{breakaway})",
            ),
        ),
    ),
)
SOURCES = (
    (
        "Radial thrust: Mackay 2004, Stepanoff 1957. Axial thrust: pressure beside shrouds with a turning core,"
        " Lobanoff and Ross for its scatter. Shaft: virtual work over its sections; Dunkerley's bound; fatigue by"
        " Goodman's line."
    ),
    (
        "Bearings: ISO 281:2007 with ISO 76; friction and viscosity by published formulas. Clauses: m from memory of"
        " the standard, q quoted by others, r excerpt read. What was read of each source stands in docs/functions, a"
        " page for each family."
    ),
)
CAUTIONS = (
    (
        "Axial thrust is the small rest of two large forces: size the thrust bearing for the whole range and both"
        " directions. Radial thrust scatters; at closed valve and beyond best efficiency it may be far greater."
    ),
    (
        "Load ratings are those of the bearing's maker; a life holds for clean oil at the viscosity shown. Housing"
        " temperature: a guide to plus or minus 15 K. Hot bearings burn: do not touch."
    ),
    (
        "The critical speed is of the dry rotor on rigid bearings; soft housings lower it. A rotor that fails can"
        " release hot, toxic or flammable liquid at the seal: the pump maker's limits and a licensed engineer's"
        " judgement go before this sheet."
    ),
)


class Rotor(SideBySide):
    def __init__(self, plant, places):
        super().__init__("Rotor", TITLE, SECTIONS, SOURCES, CAUTIONS, plant, places)
