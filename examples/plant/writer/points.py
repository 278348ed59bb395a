"""The curve on the liquid pumped, point by point, and what is known of it besides. A name in braces is an input, a series or a result."""
from .asked import BEST, FRICTION, SOLIDS, VISCOUS, reason

_CORRECTED = f"CW.VISCOUS_PERFORMANCE({{flow_i}};{{head_i}};{{efficiency_i}};{BEST};{{speed}};{{viscosity_used}};{{density_used}})"
_SLURRY_CURVE = "CW.CURVE_SLURRY({flows};{heads};{efficiencies};{slurry_head};{slurry_efficiency})"
_NPSH3 = "CW.NPSH3_WITH_VISCOSITY({npsh3_i};CW.CURVE_NPSH3({water_npsh3s};{best_flow});{viscous_head};{best_flow};{speed};{inlet})"
_PLAIN = {
    "used_flows": 'CW.QUANTITY({flow_i};"m³/h")',
    "used_heads": 'CW.QUANTITY({head_i};"m")',
    "used_efficiencies": 'CW.QUANTITY({efficiency_i};"-")',
    "used_npsh3s": 'CW.QUANTITY({npsh3_i};"m")',
}
_GIVEN = {"used_heads": "{head_i}", "used_efficiencies": "{efficiency_i}", "used_npsh3s": "{npsh3_i}"}
_RUNS = f'AND({VISCOUS};CW.QUANTITY({{flow_i}};"m³/h")<>0)'  # at no flow the viscous method leaves the head as it is


def point(series):
    """One point, the i-th, of the curve on the liquid pumped. An ordinate may be missing at either end of the curve."""
    if series == "used_powers":
        return (
            'IF(OR({flow_i}="";{used_head_i}="");"";IF({used_flow_i}=0;{shutoff_used};IF({used_efficiency_i}="";"";'
            "CW.PUMP_POWER_INPUT({used_flow_i};{used_head_i};{density_used};{used_efficiency_i}))))"
        )
    if series == "used_system":
        both = "+".join(FRICTION.format(flow="used_flow_i", line=line) for line in ("suction", "discharge"))
        return (
            'IF({flow_i}="";"";IF({line_law}="square";CW.SYSTEM_HEAD({static_head};{resistance};{used_flow_i});'
            f'CW.SYSTEM_HEAD(CW.QUANTITY({{static_head}};"m")+{both};{{square_part}};{{used_flow_i}})))'
        )
    if series == "used_npsh3s":
        return f'IF({{npsh3_i}}="";"";IF({{flow_i}}="";NA();IF({VISCOUS};{_NPSH3};{_PLAIN[series]})))'
    pick = ("used_flows", "used_heads", "used_efficiencies").index(series) + 1
    if series == "used_flows":
        return f'IF({{flow_i}}="";"";IF(AND({_RUNS};{{head_i}}<>"";{{efficiency_i}}<>"");INDEX({_CORRECTED};1;1);IF(AND({_RUNS};{{viscous_flow}}>0);{_PLAIN[series]}*{{viscous_flow}};{_PLAIN[series]})))'
    other = f"IF({SOLIDS};INDEX({_SLURRY_CURVE};{{i}};{pick});{_PLAIN[series]})"
    return f'IF({_GIVEN[series]}="";"";IF({{flow_i}}="";NA();IF({_RUNS};INDEX({_CORRECTED};1;{pick});{other})))'


def point_refusal(series):
    """Why the i-th point of it is refused."""
    if series == "used_npsh3s":
        told = f"IF({VISCOUS};{reason(_NPSH3)};{reason(_PLAIN[series])})"
    else:
        other = reason(_PLAIN[series])
        if series != "used_flows":
            other = f"IF({SOLIDS};{reason(_SLURRY_CURVE)};{other})"
        told = f"IF({VISCOUS};{reason(_CORRECTED)};{other})"
    return f'IF({{flow_i}}="";"its flow is not given";{told})'


def _first_of(found):
    """Place, from 1, of the first of ten cells for which it holds; {0} in it is the range."""
    return f"SUMPRODUCT(MIN(ROW({{0}})+1000*(1-({found}))))-SUMPRODUCT(MIN(ROW({{0}})))+1"


def _ends(series):
    cells = f"{{{series}}}"
    none = f'SUMPRODUCT(({cells}<>"")*1)=0'
    first = _first_of('({0}<>"")').format(cells)
    return (
        (f"{series}_first", f"IF({none};1;{first})"),
        (f"{series}_last", f'IF({none};1;SUMPRODUCT(MAX(ROW({cells})*({cells}<>"")))-SUMPRODUCT(MIN(ROW({cells})))+1)'),
    )


_JUDGED = ("used_flows", "used_heads", "used_efficiencies", "used_npsh3s")


def _bad(series):
    return f"SUMPRODUCT(ISERROR({{{series}}})*1)"


def _by_bad_series(answers, otherwise):
    text = otherwise
    for number in reversed(range(len(answers))):
        text = f"IF({{bad_series}}={number + 1};{answers[number]};{text})"
    return text


# What is known of a pump's points besides the curve itself: where each ordinate begins and ends, and the first point that is refused.
POINTS_FACTS = [fact for series in ("heads", "efficiencies", "npsh3s") for fact in _ends(series)] + [
    ("bad_count", "+".join(_bad(series) for series in _JUDGED)),
    (
        "bad_series",
        "".join(f"IF({_bad(series)}>0;{number};" for number, series in enumerate(_JUDGED, 1))
        + "0"
        + ")" * len(_JUDGED),
    ),
    ("bad_point", _by_bad_series([_first_of("ISERROR({0})").format(f"{{{series}}}") for series in _JUDGED], "1")),
    (
        "bad_text",
        'IF({bad_count}=0;"";"point "&{bad_point}&", "&'
        + f'IF({VISCOUS};"";'
        + _by_bad_series(['"flow"', '"head"', '"efficiency"', '"NPSH3"'], '""')
        + '&", ")'
        + '&{curve_home}&ADDRESS(ROW({bad_cell});COLUMN({bad_cell});4)&": "&IFERROR('
        + _by_bad_series([point_refusal(series) for series in _JUDGED], '""')
        + ';"waits for a value above"))',
    ),
]
FACT_TEXT = {
    "heads": "Head",
    "efficiencies": "Efficiency",
    "npsh3s": "NPSH3",
    "bad_count": "Points refused",
    "bad_series": "  first: 1 flow, 2 head, 3 efficiency, 4 NPSH3",
    "bad_point": "  first: number of the point",
    "bad_text": "  first: why",
}


def fact_text(key):
    series, _, end = key.partition("_")
    return f"{FACT_TEXT[series]}: {end} point given" if end in ("first", "last") else FACT_TEXT[key]


def pair(flows, ordinates, first, last):
    """Two arguments: the flows and ordinates of a curve between its own ends."""
    return ";".join(f"INDEX({cells};{first}):INDEX({cells};{last})" for cells in (flows, ordinates))


PAIRS = {
    f"{kind}_{series}": (f"{before}flows", f"{before}{series}", f"{series}_first", f"{series}_last")
    for kind, before in (("water", ""), ("on", "used_"))
    for series in ("heads", "efficiencies", "npsh3s")
}
