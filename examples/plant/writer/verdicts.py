"""How results are judged: limits, words, the one verdict of a pump; and a result in US units."""
from .asked import reason
from .inputs import INPUT, LIMITS
from .results import RESULT, WEIGHT


def limit(result):
    """The formula of a check's limit: an input as a number in its unit, or what an earlier result came to."""
    key = result.limit[1].strip("{}")
    if key not in INPUT:
        return result.limit[1]
    call = limit_call(key)
    if key not in LIMITS:
        return f'IF({{{key}}}="";"";{call})'
    low, high, _ = LIMITS[key]
    return f'IF({{{key}}}="";"";IF(AND({call}>={low};{call}<={high});{call};NA()))'


def limit_refusal(result):
    """Why a check has no limit, as a formula; an empty text when it has one."""
    key = result.limit[1].strip("{}") if result.limit else ""
    if key in RESULT:
        return f'IF(ISERROR({{{key}}});"its limit is refused: {RESULT[key].text}";"")'
    if key not in INPUT:
        return '""'
    text, unit, call = INPUT[key].text.strip(), INPUT[key].unit, limit_call(key)
    if key not in LIMITS:
        return f'IF({{{key}}}="";"{text}: it is not given.";{reason(call)})'
    low, high, meant = LIMITS[key]
    asked = f"beyond what is taken for this limit, {low} to {high}{'' if unit == '–' else ' ' + unit}.{' Was it ' + meant if meant else ''}"
    if key == "suction_speed_limit":
        asked = f'{asked} In 1/min, m³/s, m it would be "&ROUND(CW.SPECIFIC_SPEED_FROM_US({call});0)&"'
    return (
        f'IF({{{key}}}="";"{text}: it is not given.";IF(ISERROR({call});{reason(call)};IF(AND({call}>={low};{call}<={high});"";'
        f'"{text}: "&{call}&" is {asked}.")))'
    )


def limit_call(key):
    return f'CW.QUANTITY({{{key}}};"{INPUT[key].unit.replace("–", "-")}")'


_WORDS = {
    "REGION": (("preferred", "meets"), ("allowable", "WATCH")),
    "SHAPE": (("stable", "meets"), ("flat", "WATCH"), ("drooping", "WATCH")),
}


def verdict(result, value, limit):
    """The word for one result: refused, meets, WATCH or FAILS."""
    if result.limit is None:
        return f'IF(ISERROR({value});"refused";"")'
    if result.failing in _WORDS:
        kept = '"FAILS"'
        for found, word in reversed(_WORDS[result.failing]):
            kept = f'IF({value}="{found}";"{word}";{kept})'
        return f'IF(ISERROR({value});"refused";{kept})'
    sense = ">=" if result.limit[0] == "≥" else "<="
    kept = f'IF({value}="–";"–";IF(AND(ISNUMBER({value});ISNUMBER({limit}));IF({value}{sense}{limit};"meets";"{result.failing}");"refused"))'
    return f'IF(ISERROR({value});"refused";{kept})'


def overall(found, words):
    """The one verdict of a pump, the same on every sheet: refused where any of its results or checks is."""
    other = "".join(f'IF(COUNTIF({words};"{name}")>0;"{name}";' for name in ("FAILS", "WATCH")) + '"meets"))'
    return f'IF(OR(SUMPRODUCT(ISERROR({found})*1)>0;COUNTIF({words};"refused")>0);"refused";{other})'


def worst(word, found, causes, word_of):
    """What is named for it. Of what is refused the topmost result is the cause; of findings of one weight the first in the order WEIGHT.
    word_of(key): the cell with a check's word."""
    text = '"none"'
    for name in ("WATCH", "FAILS", "refused"):
        first = text
        for key in reversed(WEIGHT):
            first = f'IF({word_of(key)}="{name}";"{RESULT[key].text}";{first})'
        text = f'IF({word}="{name}";{first};{text})'
    topmost = f"SUMPRODUCT(MIN(ROW({found})+10000*(1-ISERROR({found}))))-SUMPRODUCT(MIN(ROW({found})))+1"
    return f"IF(SUMPRODUCT(ISERROR({found})*1)>0;INDEX({causes};{topmost});{text})"


# A result in US customary units: (the unit that cutwater reads, the unit wanted).
US_UNITS = {
    "m³/h": ("m³/h", "US gpm"),
    "m": ("m", "ft"),
    "m/s": ("m/s", "ft/s"),
    "bar": ("bar", "psi"),
    "bar(a)": ("bar(a)", "psia"),
    "kg/m³": ("kg/m³", "lb/ft3"),
    "kW": ("kW", "hp"),
    "N m": ("N m", "lbf ft"),
    "K": ("K", "delta degF"),
    "K/min": ("K/min", "degF/min"),
    "kJ/(kg K)": ("kJ/(kg K)", "Btu/(lb degF)"),
    "mm²/s": ("mm²/s", "cSt"),
    "°C": ("°C", "degF"),
}
