"""The audit in print."""
import textwrap

import cutwater
from writer.results import RESULT, WEIGHT

from .checks import RESTS_UPON, limit_of

# name of the result, head, unit, decimals
COLUMNS = (
    ("wanted", "flow wanted", "m³/h", 1),
    ("duty_flow", "duty flow", "m³/h", 1),
    ("duty_head", "duty head", "m", 1),
    ("efficiency", "eff.", "–", 3),
    ("npsh_available", "NPSHA", "m", 2),
    ("npsh3", "NPSH3", "m", 2),
    ("npsh_ratio", "ratio", "–", 2),
    ("power_input", "power", "kW", 2),
    ("motor_needed", "motor needed", "kW", 1),
    ("motor_fitted", "fitted", "kW", 1),
    ("rise", "rise", "K", 2),
    ("region", "region", "", 0),
)


def _cell(c, key, i, places):
    if i in c.why.get(key, ()):
        return "refused"
    value = c.found[key][i]
    return value if isinstance(value, str) else f"{value:.{places}f}"


def worst_check(c, i):
    key = c.worst[i][1]
    return RESULT[key].text if key else "none"


def register(c):
    lines = [
        ["tag", "service"] + [head for _, head, _, _ in COLUMNS] + ["verdict", "worst check"],
        ["", ""] + [unit for _, _, unit, _ in COLUMNS] + ["", ""],
    ]
    for i in c.order:
        lines.append(
            [c.pumps[i]["tag"], c.pumps[i]["service"]]
            + [_cell(c, key, i, places) for key, _, _, places in COLUMNS]
            + [c.worst[i][0], worst_check(c, i)]
        )
    widths = [max(len(line[column]) for line in lines) for column in range(len(lines[0]))]
    left = {0, 1, len(widths) - 3, len(widths) - 2, len(widths) - 1}
    text = [
        "  ".join(
            f"{cell:<{width}}" if column in left else f"{cell:>{width}}"
            for column, (cell, width) in enumerate(zip(line, widths))
        ).rstrip()
        for line in lines
    ]
    return "\n".join(text[:2] + ["-" * max(map(len, text))] + text[2:])


def findings(c):
    """Every check that is not met, with what it is held against."""
    lines = []
    for i in c.order:
        for key in WEIGHT:
            word = c.verdicts[i][key]
            if word not in ("FAILS", "WATCH"):
                continue
            one = RESULT[key]
            if one.failing == "SHAPE":
                what = f"{c.found[key][i]}, should be stable"
            elif key == "region":
                what = f"{c.found[key][i]}; preferred {c.found['least_preferred'][i]:.1f} to {c.found['greatest_preferred'][i]:.1f} m³/h"
            else:
                what = f"{c.found[key][i]:.{one.places}f} {one.unit}, should be {one.limit[0]} {limit_of(c, key, i):.{one.places}f}".replace(
                    " –,", ","
                )
            lines.append(f"{c.pumps[i]['tag']:<7} {word:<6} {one.text}: {what}")
    return "\n".join(lines) or "none"


def refusals(c):
    """Each reason once a pump, with the checks that it leaves open."""
    lines = []
    for i in c.order:
        reasons = {}  # what is said without the function's name, which several may have said: the sentence, the results
        for key, places in (*c.why.items(), *c.no_limit.items()):
            if i in places:
                sentence = places[i][1]
                reasons.setdefault(sentence.split(": ", 1)[-1], (sentence, []))[1].append(key)
        for sentence, keys in reasons.values():
            checks = [RESULT[key].text for key in WEIGHT if key in keys]
            if checks:
                lines += textwrap.wrap(f"{c.pumps[i]['tag']:<7} {sentence}", 118, subsequent_indent=" " * 8)
                lines += textwrap.wrap(
                    "leaves open: " + ", ".join(checks), 118, initial_indent=" " * 8, subsequent_indent=" " * 10
                )
    return "\n".join(lines) or "none"


def cautions(c):
    """What the functions behind the findings say of themselves, each sentence once."""
    texts = {one["name"]: one["cautions"] for one in cutwater.catalogue()["functions"]}
    told, lines = set(), []
    for key in WEIGHT:
        found = [i for i in range(len(c.pumps)) if c.verdicts[i][key] in ("FAILS", "WATCH")]
        if not found:
            continue
        function = RESTS_UPON.get(key) or c.asked.get(key, {}).get(found[0])
        new = [text for text in texts.get(function, ()) if text not in told]
        told.update(new)
        tags = ", ".join(c.pumps[i]["tag"] for i in found)
        for n, text in enumerate(new):
            if n == 0:
                lines.append(f"{RESULT[key].text} ({tags}), from {function}:")
            lines += textwrap.wrap(text, 118, initial_indent="  - ", subsequent_indent="    ")
    return "\n".join(lines) or "none"
