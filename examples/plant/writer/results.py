"""What is found for one pump, written once. A name in braces is an input, a series or an earlier result; each sheet puts
its own cells in its place. CW.NAME is a function of the add-in."""
import re
from collections import namedtuple

from .asked import BEST, FRICTION, SOLIDS, VISCOUS, reason
from .inputs import CHOICES, IDLE, INPUT

# limit: (sense, formula); failing: the verdict when the limit is not kept. choose: several formulas, the first whose condition holds.
# words: the names of the functions used, as a formula.
Result = namedtuple("Result", "key text unit places group formula refusal limit failing words")
# What a result needs stands above it.
GROUPS = (
    "Liquid",
    "Pump and its curve",
    "Viscous or solids-bearing liquid",
    "System and duty",
    "Suction at the duty",
    "Power and motor",
    "Least flow and heating",
)


def _is_word(key):
    return "OR(" + ";".join(f'EXACT({{{key}}};"{word}")' for word in CHOICES[key]) + ")"


def _no_word(key):
    return f'"{INPUT[key].text}: it must be one of {", ".join(CHOICES[key])}, written so."'


def _words(call):
    if "CW." not in call:
        return '""'
    return '"' + ", ".join(dict.fromkeys(name.lower() for name in re.findall(r"CW\.([A-Z0-9_]+)\(", call))) + '"'


def _result(key, text, unit, places, group, call, limit=None, failing=None):
    return Result(key, text, unit, places, group, call, reason(call), limit, failing, _words(call))


def _if(condition, call, otherwise='"–"'):
    """The call where the condition holds."""
    return f"IF({condition};{call};{otherwise})", f"IF({condition};{reason(call)};{reason(otherwise)})"


def _when(key, text, unit, places, group, condition, call, limit=None, failing=None, otherwise='"–"'):
    formula, told = _if(condition, call, otherwise)
    return Result(key, text, unit, places, group, formula, told, limit, failing, f"IF({condition};{_words(call)};{_words(otherwise)})")


def _choose(key, text, unit, places, group, by, choices, otherwise):
    """By the word of an input; otherwise is for the word value."""
    formula, told, words = otherwise, reason(otherwise), _words(otherwise)
    for condition, call in reversed(choices):
        formula, told = f"IF({condition};{call};{formula})", f"IF({condition};{reason(call)};{told})"
        words = f"IF({condition};{_words(call)};{words})"
    formula, told = f"IF({_is_word(by)};{formula};NA())", f"IF({_is_word(by)};{told};{_no_word(by)})"
    return Result(key, text, unit, places, group, formula, told, None, None, words)


def motor_needed(power, fitted, rule, series):
    """The least listed rating; or the motor fitted, where it is smaller and leaves the margin: 20 hp are 14.9 kW, and no listed rating."""
    listed = f"INDEX(CW.MOTOR_RATING_NEEDED({power};{rule};{series});1;1)"
    enough = f"IFERROR(CW.MOTOR_POWER_MARGIN({fitted};{rule})*{power}<={fitted};FALSE())"
    return f"IF({enough};MIN({listed};{fitted});{listed})"


_WHOLE_SPEED = "CW.SPECIFIC_SPEED({speed};{best_flow};{best_head};1;{stages})"  # the region goes by both eyes together
_SLURRY = "{solids_fraction};{solids_relative};{solids_size};{impeller_diameter};{slurry_by}"
_SQUARE = '{line_law}="square"'
_ON_POINTS = "CW.DUTY_ON_SYSTEM_POINTS({on_heads};{used_flows};{used_system};1)"
_ON_WATER = '{shutoff_on}="water"'

L, R, V, S, U, P, H = GROUPS
RESULTS = (
    # -- liquid
    Result("tag_once", "Columns of Data with this tag", "", 0, L, "COUNTIF({tags};{this_tag})", '""', ("≤", "1"), "FAILS", '"counted"'),
    Result(
        "unused",
        "Values given and not used",
        "",
        0,
        L,
        "+".join(f'IF(AND({{{key}}}<>"";{idle});1;0)' for key, idle in IDLE.items()),
        '""',
        ("≤", "0"),
        "WATCH",
        "MID(" + "&".join(f'IF(AND({{{key}}}<>"";{idle});", {INPUT[key].text.strip()}";"")' for key, idle in IDLE.items()) + ";3;200)",
    ),
    _result("temperature_read", "Temperature, as read", "°C", 1, L, 'CW.QUANTITY({temperature};"°C")'),
    _result("ambient", "Ambient pressure at the works' altitude", "bar(a)", 4, L, "CW.BAROMETRIC_PRESSURE({altitude})"),
    _result("surface_absolute", "Pressure on the surface, absolute", "bar(a)", 4, L, "CW.ABSOLUTE_FROM_GAUGE({surface_pressure};{ambient})"),
    _choose(
        "density_used",
        "Density",
        "kg/m³",
        1,
        L,
        "density_by",
        [
            ('{density_by}="water"', "CW.WATER_DENSITY({temperature};{surface_absolute})"),
            ('{density_by}="slurry"', "CW.SLURRY_DENSITY({density};{solids_density};{solids_fraction})"),
        ],
        'CW.QUANTITY({density};"kg/m³")',
    ),
    _choose(
        "vapour_used",
        "Vapour pressure",
        "bar(a)",
        4,
        L,
        "vapour_by",
        [
            ('{vapour_by}="water"', "CW.WATER_VAPOUR_PRESSURE({temperature})"),
            ('{vapour_by}="two points"', "CW.VAPOUR_PRESSURE_TWO_POINT({vapour_t1};{vapour_p1};{vapour_t2};{vapour_p2};{temperature})"),
        ],
        'CW.QUANTITY({vapour_pressure};"bar(a)")',
    ),
    _choose(
        "viscosity_used",
        "Kinematic viscosity",
        "mm²/s",
        2,
        L,
        "viscosity_by",
        [
            ('{viscosity_by}="water"', "CW.WATER_KINEMATIC_VISCOSITY({temperature};{surface_absolute})"),
            ('{viscosity_by}="two points"', "CW.VISCOSITY_AT_TEMPERATURE({viscosity_t1};{viscosity_1};{viscosity_t2};{viscosity_2};{temperature})"),
        ],
        'CW.QUANTITY({viscosity};"mm²/s")',
    ),
    _choose(
        "heat_used",
        "Specific heat",
        "kJ/(kg K)",
        3,
        L,
        "density_by",
        [('{density_by}="water"', "CW.WATER_SPECIFIC_HEAT({temperature};{surface_absolute})")],
        'CW.QUANTITY({specific_heat};"kJ/(kg K)")',
    ),
    # -- pump's best point, needed by the viscous correction
    Result(
        "correction",
        "Correction of the curve for",
        "",
        0,
        R,
        f"IF({_is_word('correct_for')};{{correct_for}};NA())",
        f"IF({_is_word('correct_for')};\"\";{_no_word('correct_for')})",
        None,
        None,
        '"as chosen"',
    ),
    _result("best_head", "Head at best efficiency, on water", "m", 2, R, "CW.CURVE_HEAD({water_heads};{best_flow})"),
    _result("best_efficiency", "Efficiency at best efficiency, on water", "–", 3, R, "CW.CURVE_EFFICIENCY({water_efficiencies};{best_flow})"),
    _result("specific_speed", "Specific speed (1/min, m³/s, m)", "–", 1, R, "CW.SPECIFIC_SPEED({speed};{best_flow};{best_head};{eyes};{stages})"),
    _result("type_number", "Type number", "–", 3, R, "CW.TYPE_NUMBER({speed};{best_flow};{best_head};{eyes};{stages})"),
    _choose(
        "shutoff_used",
        "Power at closed valve, on the liquid",
        "kW",
        2,
        R,
        "shutoff_on",
        [(_ON_WATER, 'CW.QUANTITY({shutoff_power};"kW")*CW.RELATIVE_DENSITY({density_used};998.2)')],
        'CW.QUANTITY({shutoff_power};"kW")',
    ),
    # -- viscous liquid
    _when("viscous_b", "Parameter B", "–", 2, V, VISCOUS, "CW.VISCOSITY_PARAMETER({viscosity_used};{best_flow};{best_head};{speed})"),
    _when("viscous_flow", "Flow ratio", "–", 4, V, VISCOUS, "CW.VISCOUS_FLOW_RATIO({viscous_b})"),
    _when("viscous_head", "Head ratio at best efficiency", "–", 4, V, VISCOUS, "CW.VISCOUS_HEAD_RATIO({viscous_b};1)"),
    _when(
        "viscous_efficiency", "Efficiency ratio", "–", 4, V, VISCOUS, "CW.VISCOUS_EFFICIENCY_RATIO({viscous_b};{best_efficiency};{viscosity_used})"
    ),
    _when(
        "best_used",
        "Best efficiency flow on the liquid",
        "m³/h",
        1,
        R,
        VISCOUS,
        f"CW.VISCOUS_PERFORMANCE({BEST};{BEST};{{speed}};{{viscosity_used}};{{density_used}})",
        otherwise='CW.QUANTITY({best_flow};"m³/h")',
    ),
    # -- solids-bearing liquid; whether the solids stay on the move is asked at the least flow
    _when("solids_relative", "Solids over liquid, relative density", "–", 3, V, SOLIDS, "CW.RELATIVE_DENSITY({solids_density};{density})"),
    _when("solids_volume", "Solids, share by volume", "–", 4, V, SOLIDS, "CW.SLURRY_VOLUME_FRACTION({density};{solids_density};{solids_fraction})"),
    _when("slurry_head", "Head ratio with solids", "–", 4, V, SOLIDS, f"CW.SLURRY_HEAD_RATIO({_SLURRY})"),
    _when("slurry_efficiency", "Efficiency ratio with solids", "–", 4, V, SOLIDS, f"CW.SLURRY_EFFICIENCY_RATIO({_SLURRY})"),
    _when("suction_least", "Suction velocity at the least flow", "m/s", 2, V, SOLIDS, "CW.PIPE_VELOCITY({least_flow};{suction_bore})"),
    _when(
        "deposition_suction",
        "Deposition velocity, suction line",
        "m/s",
        2,
        V,
        SOLIDS,
        "CW.DEPOSITION_VELOCITY({suction_bore};{solids_relative};{solids_volume};{solids_size})",
        ("≤", "{suction_least}"),
        "FAILS",
    ),
    _when("discharge_least", "Discharge velocity at the least flow", "m/s", 2, V, SOLIDS, "CW.PIPE_VELOCITY({least_flow};{discharge_bore})"),
    _when(
        "deposition_discharge",
        "Deposition velocity, discharge line",
        "m/s",
        2,
        V,
        SOLIDS,
        "CW.DEPOSITION_VELOCITY({discharge_bore};{solids_relative};{solids_volume};{solids_size})",
        ("≤", "{discharge_least}"),
        "FAILS",
    ),
    Result(
        "curve_points",
        "Points of the curve that are refused",
        "",
        0,
        V,
        "IF({bad_count}=0;0;NA())",
        "{bad_text}",
        None,
        None,
        '"counted; sheet Curves"',
    ),
    Result(
        "shape",
        "Shape of the head curve",
        "",
        0,
        V,
        'INDEX(CW.CURVE_IS_STABLE({on_heads});1;1)&""',
        reason("CW.CURVE_IS_STABLE({on_heads})"),
        ("", '"stable"'),
        "SHAPE",
        '"curve_is_stable"',
    ),
    # -- system at the flow wanted, then the duty
    _result("wanted", "Flow wanted, as read", "m³/h", 1, S, 'CW.QUANTITY({flow};"m³/h")'),
    _result(
        "suction_pipe",
        "Suction line, friction",
        "m",
        3,
        S,
        "CW.PIPE_FRICTION_HEAD({flow};{suction_bore};{suction_length};{roughness};{viscosity_used})",
    ),
    _result("suction_fittings", "Suction line, fittings", "m", 3, S, "CW.FITTING_HEAD({flow};{suction_bore};{suction_k})"),
    _result("suction_loss", "Suction line, both", "m", 3, S, "CW.SYSTEM_HEAD({suction_pipe};CW.SYSTEM_RESISTANCE({flow};{suction_fittings});{flow})"),
    _result(
        "discharge_pipe",
        "Discharge line, friction",
        "m",
        3,
        S,
        "CW.PIPE_FRICTION_HEAD({flow};{discharge_bore};{discharge_length};{roughness};{viscosity_used})",
    ),
    _result("discharge_fittings", "Discharge line, fittings", "m", 3, S, "CW.FITTING_HEAD({flow};{discharge_bore};{discharge_k})"),
    _result(
        "line_loss",
        "Both lines",
        "m",
        3,
        S,
        "CW.SYSTEM_HEAD(CW.SYSTEM_HEAD({suction_loss};CW.SYSTEM_RESISTANCE({flow};{discharge_pipe});{flow});"
        "CW.SYSTEM_RESISTANCE({flow};{discharge_fittings});{flow})",
    ),
    _result(
        "resistance",
        "Resistance, equipment included",
        "h²/m⁵",
        8,
        S,
        "CW.SYSTEM_RESISTANCE({flow};CW.SYSTEM_HEAD({line_loss};CW.SYSTEM_RESISTANCE({flow};{equipment_loss});{flow}))",
    ),
    _result("suction_reynolds", "Suction line, Reynolds number", "–", 0, S, "CW.REYNOLDS_NUMBER({flow};{suction_bore};{viscosity_used})"),
    _result("discharge_reynolds", "Discharge line, Reynolds number", "–", 0, S, "CW.REYNOLDS_NUMBER({flow};{discharge_bore};{viscosity_used})"),
    Result(
        "line_law",
        "Losses by the square, or by points",
        "",
        0,
        S,
        'IF(MIN({suction_reynolds};{discharge_reynolds})>=4000;"square";"points")',
        '""',
        None,
        None,
        '"points below Re 4000"',
    ),
    _result(
        "square_part",
        "Resistance, fittings and equipment",
        "h²/m⁵",
        8,
        S,
        'CW.SYSTEM_RESISTANCE({flow};{suction_fittings}+{discharge_fittings}+CW.QUANTITY({equipment_loss};"m"))',
    ),
    _result("system_head", "Head the system takes there", "m", 2, S, "CW.SYSTEM_HEAD({static_head};{resistance};{flow})"),
    _result("pump_head", "Head the pump gives there", "m", 2, S, "CW.CURVE_HEAD({on_heads};{flow})", ("≥", "{system_head}"), "FAILS"),
    _when(
        "duty_flow",
        "Duty: flow where they meet",
        "m³/h",
        1,
        S,
        _SQUARE,
        "CW.DUTY_FLOW({on_heads};{static_head};{resistance})",
        otherwise=f"INDEX({_ON_POINTS};1;1)",
    ),
    _when(
        "duty_head",
        "Duty: head where they meet",
        "m",
        2,
        S,
        _SQUARE,
        "CW.DUTY_HEAD({on_heads};{static_head};{resistance})",
        otherwise=f"INDEX({_ON_POINTS};1;2)",
    ),
    _result(
        "discharge_velocity",
        "Discharge velocity",
        "m/s",
        2,
        S,
        "CW.PIPE_VELOCITY({duty_flow};{discharge_bore})",
        ("≤", "{discharge_velocity_limit}"),
        "WATCH",
    ),
    # -- suction at the duty
    _result(
        "suction_velocity",
        "Suction velocity",
        "m/s",
        2,
        U,
        "CW.PIPE_VELOCITY({duty_flow};{suction_bore})",
        ("≤", "{suction_velocity_limit}"),
        "WATCH",
    ),
    _when(
        "suction_duty_loss",
        "Suction losses",
        "m",
        3,
        U,
        _SQUARE,
        "CW.SYSTEM_HEAD(0;CW.SYSTEM_RESISTANCE({flow};{suction_loss});{duty_flow})",
        otherwise=FRICTION.format(flow="duty_flow", line="suction") + "+CW.FITTING_HEAD({duty_flow};{suction_bore};{suction_k})",
    ),
    _result(
        "npsh_available",
        "NPSH available",
        "m",
        2,
        U,
        "CW.NPSH_AVAILABLE({surface_absolute};{vapour_used};{density_used};{liquid_level};{suction_duty_loss})",
    ),
    _result("npsh3", "NPSH3", "m", 2, U, "CW.CURVE_NPSH3({on_npsh3s};{duty_flow})"),
    _result("npsh_margin", "NPSH margin", "m", 2, U, "CW.NPSH_MARGIN({npsh_available};{npsh3})", ("≥", "{margin_wanted}"), "FAILS"),
    _result("npsh_ratio", "NPSH margin ratio", "–", 2, U, "CW.NPSH_MARGIN_RATIO({npsh_available};{npsh3})", ("≥", "{ratio_wanted}"), "FAILS"),
    _when(
        "submergence_needed",
        "Submergence needed by the bell",
        "m",
        2,
        U,
        '{bell_diameter}<>""',
        "CW.MINIMUM_SUBMERGENCE({duty_flow};{bell_diameter})",
        ("≤", "{submergence}"),
        "FAILS",
    ),
    _result(
        "suction_speed",
        "Suction specific speed, per eye",
        "–",
        0,
        U,
        "CW.SUCTION_SPECIFIC_SPEED({speed};{best_flow};CW.CURVE_NPSH3({water_npsh3s};{best_flow});{eyes})",
        ("≤", "{suction_speed_limit}"),
        "WATCH",
    ),
    # -- region
    # Calc does not find a word equal to itself when it comes out of a table of results; joined to nothing it does.
    _result(
        "region",
        "Operating region at the duty",
        "",
        0,
        S,
        f"CW.OPERATING_REGION({{duty_flow}};{{best_used}};{_WHOLE_SPEED};{{least_allowed}};{{greatest_allowed}})",
        ("", '"preferred"'),
        "REGION",
    )._replace(formula=f'INDEX(CW.OPERATING_REGION({{duty_flow}};{{best_used}};{_WHOLE_SPEED};{{least_allowed}};{{greatest_allowed}});1;1)&""'),
    # -- power
    _result("efficiency", "Efficiency", "–", 3, P, "CW.CURVE_EFFICIENCY({on_efficiencies};{duty_flow})"),
    _result("hydraulic_power", "Hydraulic power", "kW", 2, P, "CW.HYDRAULIC_POWER({duty_flow};{duty_head};{density_used})"),
    _result("power_input", "Pump power input", "kW", 2, P, "CW.PUMP_POWER_INPUT({duty_flow};{duty_head};{density_used};{efficiency})"),
    _result("torque", "Shaft torque", "N m", 1, P, "CW.SHAFT_TORQUE({power_input};{speed})"),
    _result("motor_fitted", "Motor fitted, as read", "kW", 1, P, 'CW.QUANTITY({motor_rating};"kW")'),
    Result(
        "motor_needed",
        "Motor rating needed",
        "kW",
        1,
        P,
        motor_needed("{power_input}", "{motor_fitted}", "{motor_rule}", "{motor_series}"),
        reason("CW.MOTOR_RATING_NEEDED({power_input};{motor_rule};{motor_series})"),
        ("≤", "{motor_fitted}"),
        "FAILS",
        '"motor_rating_needed, motor_power_margin"',
    ),
    Result(
        "greatest_power",
        "Greatest power on the curve",
        "kW",
        2,
        P,
        'IF(SUMPRODUCT(({used_efficiencies}<>"")*1)>0;CW.QUANTITY(MAX({used_powers});"kW");NA())',
        'IF(SUMPRODUCT(({used_efficiencies}<>"")*1)>0;"";"no efficiency is given")',
        ("≤", "{motor_fitted}"),
        "WATCH",
        '"quantity: as far as efficiencies go"',
    ),
    # -- least flow, heating, closed valve
    _result(
        "rise",
        "Temperature rise through the pump",
        "K",
        2,
        H,
        "CW.TEMPERATURE_RISE({duty_head};{efficiency};{heat_used})",
        ("≤", "{rise_allowed}"),
        "WATCH",
    ),
    _result("least_read", "Least flow the process takes, as read", "m³/h", 1, H, 'CW.QUANTITY({least_flow};"m³/h")'),
    _result("shutoff_head", "Head at closed valve", "m", 2, H, "CW.CURVE_HEAD({on_heads};0)"),
    _result(
        "thermal_flow",
        "Thermal least flow v. the process's",
        "m³/h",
        2,
        H,
        "CW.THERMAL_MINIMUM_FLOW({shutoff_used};{shutoff_head};{density_used};{heat_used};{rise_allowed})",
        ("≤", "{least_read}"),
        "FAILS",
    ),
    _result("maker_flow", "Maker's least flow v. the process's", "m³/h", 1, H, 'CW.QUANTITY({least_allowed};"m³/h")', ("≤", "{least_read}"), "FAILS"),
    _result(
        "heating",
        "Heating at closed valve",
        "K/min",
        2,
        H,
        "CW.CLOSED_VALVE_HEATING_RATE({shutoff_used};{casing_volume};{density_used};{heat_used};{metal_mass})",
    ),
    _result("greatest_head", "Greatest head of the curve", "m", 2, H, 'CW.QUANTITY(MAX({shutoff_head};{used_heads});"m")'),
    _result(
        "shutoff_rise",
        "Pressure rise at the greatest head",
        "bar",
        2,
        H,
        "CW.PRESSURE_FROM_HEAD({greatest_head};{density_used})",
        ("≤", "{shutoff_allowed}"),
        "FAILS",
    ),
)
RESULT = {one.key: one for one in RESULTS}
CHECKS = [one for one in RESULTS if one.limit]
# The order in which findings of the same weight are named.
WEIGHT = (
    "tag_once",
    "npsh_margin",
    "npsh_ratio",
    "pump_head",
    "motor_needed",
    "region",
    "maker_flow",
    "thermal_flow",
    "submergence_needed",
    "shutoff_rise",
    "deposition_suction",
    "deposition_discharge",
    "shape",
    "greatest_power",
    "suction_velocity",
    "discharge_velocity",
    "suction_speed",
    "rise",
    "unused",
)
assert sorted(WEIGHT) == sorted(one.key for one in CHECKS)


TEXTS = ("region", "correction", "shape", "line_law")
