"""The record's sentences and figures, the same for the page and the PDF."""
import kinds

# Below this the figure is rounding, which another compiler may do otherwise.
ROUNDING = 1e-13

TITLE = "Validation record"
WHAT = ("Every function was called with every input below, and its answer compared with the value that the named source gives. "
        "The bound is how far the answer may differ; the worst deviation is the greatest share of it that was found. A check from "
        "memory is only as good as that memory. Checks of words and choices have no deviation. What must be refused is "
        "counted apart: each such call was refused, naming the input at fault.")


def figure(far):
    return f"below {ROUNDING:g}" if far < ROUNDING else f"{far:.2g}"


def bounds(check):
    return ", ".join(f"{within:g} {sort}" for within, sort in check.bounds)


def worst(check):
    share, far, sort, call = check.worst
    return f"{figure(far)} {sort}", call.split(" = ")[0]


def totals(record):
    """Rows of the table at the top."""
    functions = record.functions
    rows = [("functions", len(functions)), ("checks of a value", record.cases()),
            ("checks of a refusal", sum(f.refusals for f in functions))]
    rows += [(f"checks, {kind}: {meaning}", record.count(kind)) for kind, meaning in kinds.KINDS.items()]
    rows += [("functions with a check that is published or by a library or solver from outside", sum(f.outside() for f in functions))]
    rows += [(f"functions whose best check is {kind}", sum(f.best() == kind for f in functions))
             for kind in kinds.KINDS]
    return rows


def families(record):
    by_family = {}
    for function in record.functions:
        by_family.setdefault(function.family, []).append(function)
    return by_family
