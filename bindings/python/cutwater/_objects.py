"""Objects of other libraries among the inputs: pandas, xarray, Dask, Pint, masked arrays. What goes in as one of them comes out as one.

The compiled calls ask here only when an input is neither a number, a text, a list nor an array of NumPy's own, so those pay nothing
for it. None of the libraries is imported before an object of it is given.
"""
import functools
import re

import numpy as np

from . import _cutwater, _lookup

_ROOTS = {"pandas", "xarray", "dask", "dask_expr", "pint"}
_MISSING_TYPES = {"NAType", "NaTType", "MaskedConstant"}


@functools.lru_cache(maxsize=None)
def kind_of(type_):
    """What a type is to us: "pandas.Series", "pint.Quantity", …; "" for what the compiled calls read themselves."""
    if issubclass(type_, np.ma.MaskedArray):
        return "masked"
    for base in type_.__mro__:
        root, _, rest = base.__module__.partition(".")
        if root not in _ROOTS:
            continue
        if root == "pint":
            return "pint" if "Quantity" in base.__name__ else ""
        if root == "dask":
            return {"array": "dask.array", "dataframe": "dask.frame"}.get(rest.partition(".")[0], "")
        if root == "dask_expr":
            return "dask.frame"
        if base.__name__ in ("Series", "DataFrame", "DataArray", "Variable"):
            return f"{root}.{base.__name__}"
        if base.__name__ in _MISSING_TYPES:
            return "absent"
        if root == "pandas" and hasattr(type_, "to_numpy"):
            return "pandas.array"
    return ""


class Record:
    """What is needed of a function: the kinds and units of its inputs, the names and units of its results."""

    def __init__(self, position):
        self.position = position
        self.name = _lookup.functions()[position]
        info = _catalogue()[self.name]
        self.inputs = [entry["name"] for entry in info["inputs"]]
        self.columns = [entry["kind"] not in ("choice", "series") for entry in info["inputs"]]
        self.series = [entry["kind"] == "series" for entry in info["inputs"]]
        self.units = [entry.get("unit", "") for entry in info["inputs"]]
        self.quantities = [entry.get("quantity", "") for entry in info["inputs"]]
        self.results = [entry["name"] for entry in info["results"]]
        self.result_units = [entry.get("unit", "") for entry in info["results"]]
        self.meanings = [entry["meaning"] for entry in info["results"]]
        self.words = [entry["kind"] == "choice" for entry in info["results"]]
        self.rows = not any(entry["kind"] == "series" for entry in info["results"])
        self.tuple = getattr(_cutwater, info["type_name"], None) if len(self.results) > 1 else None

    def pack(self, results):
        return self.tuple._make(results) if self.tuple else results[0]


@functools.lru_cache(maxsize=None)
def _catalogue():
    import json
    return {f["name"]: f for f in json.loads(_cutwater.catalogue_json())["functions"]}


record_of = functools.lru_cache(maxsize=None)(Record)


# ---- units -----------------------------------------------------------------------------------------------------------------------

def in_unit(record, index, values, unit):
    """Values of an input's column that have that unit, in the input's own; refused where it is the unit of something else."""
    if unit is None:
        return values
    if not isinstance(unit, str):
        raise TypeError(f"{record.name}: {record.inputs[index]}: its attribute 'units' must be a text, not {type(unit).__name__}")
    unit = unit.strip()
    if unit == record.units[index] or unit in ("", "1", "-", "dimensionless") and not record.units[index]:
        return values
    _cutwater.read(record.position, index, f"1 {unit}")  # judged as a text with that unit is
    values = np.asarray(values)
    if values.dtype != object and record.units[index]:
        made = np.array(values, dtype=float)
        finite = np.isfinite(made)  # what is not is refused later, by the input's name
        made[finite] = _cutwater.convert_unit(made[finite], unit, record.units[index])
        return made
    made = np.empty(values.shape, dtype=object)
    for place, value in np.ndenumerate(values):
        made[place] = value if isinstance(value, str) or not np.isfinite(value) else f"{float(value)!r} {unit}"
    return made


def pint_values(record, index, quantity):
    """(values, unit or None) of a Pint quantity. Its units are read by their names; only where a name is not known here, and nothing
    can be mistaken, does Pint turn it into the input's unit."""
    units = quantity.units
    names = set(dict(units._units))
    if not names:
        return quantity.magnitude, "1"
    if any(name.startswith("delta_") for name in names):
        if record.quantities[index] != "temperature difference":
            return quantity.magnitude, "temperature difference"  # no unit that is known: refused by name
        return quantity.to("kelvin").magnitude, "K"
    texts = [text.replace("**", "").replace(" ", "") for text in (f"{units:~C}", f"{units:C}")]
    refusals = []
    for text in texts:
        try:
            _cutwater.read(record.position, index, f"1 {text}")
            return quantity.magnitude, text
        except ValueError as refused:
            refusals.append(refused)
    # Turns and gauge or absolute pressure are no dimensions: such units must be known by name.
    if record.quantities[index] not in ("rotational speed", "frequency", "temperature", "absolute pressure", "gauge pressure", "angle"):
        own = re.sub(r"(?<=[A-Za-z])(\d)", r"**\1", record.units[index]).replace(" ", "*").replace("%", "percent")
        try:
            return quantity.to(own or "dimensionless").magnitude, None
        except Exception:  # another dimension, or a unit of ours that is unknown there
            pass
    raise next((refused for refused in refusals if "is no unit that is known" not in str(refused)), refusals[0])


# ---- the kernel: plain and masked arrays, numbers, texts -------------------------------------------------------------------------------

def absent(values):
    """Where values are missing: NaN, None, NA; None for nowhere."""
    values = np.asarray(values)
    if values.dtype.kind == "f":
        return np.isnan(values)
    if values.dtype != object:
        return None
    found = np.array([value is None or type(value).__name__ in _MISSING_TYPES or isinstance(value, float) and value != value for value in values.flat],
                     dtype=bool)
    return found.reshape(values.shape)


def compute(record, arguments, units, gaps):
    """(results, refused, first refusal, missing or None) of the array form. units: an input's own or None; gaps: whether its NaNs are
    missing values; a row with a missing value is not computed, and has NaN (None for a word)."""
    given, missing = list(arguments), None
    for i, value in enumerate(given):
        if not record.columns[i] or value is None or isinstance(value, str):
            continue
        hidden = None
        if isinstance(value, np.ma.MaskedArray):
            hidden, given[i] = np.ma.getmaskarray(value), value.data
        if gaps[i]:
            nothing = absent(given[i])
            hidden = nothing if hidden is None else hidden if nothing is None else hidden | nothing
        if hidden is not None and hidden.any():
            missing = hidden if missing is None else missing | hidden
    if missing is None:
        results, refused, first = _cutwater.rows(record.position, tuple(in_unit(record, i, v, units[i]) for i, v in enumerate(given)), None, 1)
        return list(results) if record.tuple else [results], refused, first, None
    many = [i for i, value in enumerate(given) if record.columns[i] and not isinstance(value, str) and np.ndim(value)]
    shape = np.broadcast_shapes(missing.shape, *(np.shape(given[i]) for i in many))
    missing = np.broadcast_to(missing, shape)
    for i, value in enumerate(given):
        if i in many:
            given[i] = np.broadcast_to(value, shape)[~missing]
        elif isinstance(value, np.ndarray) and value.ndim == 0 and missing.all():
            given[i] = np.zeros(0)  # it may be the missing one, and there is no row left
        given[i] = in_unit(record, i, given[i], units[i])
    if not many:
        given[record.columns.index(True)] = np.zeros(0)
    some, refusing, first = _cutwater.rows(record.position, tuple(given), None, 1)
    results = []
    for word, values in zip(record.words, some if record.tuple else [some]):
        results.append(np.full(shape, None, dtype=object) if word else np.full(shape, np.nan))
        results[-1][~missing] = values
    refused = np.zeros(shape, dtype=bool)
    refused[~missing] = refusing
    if first is not None:
        first.element = int(np.flatnonzero(~missing)[first.element])
        sentence = str(first).rpartition(" (")[0]
        first.message = f"{sentence} ({first.refused_rows} of {missing.size} rows refused; the first is row {first.element}.)"
        first.args = (first.message,)
    return results, refused, first, missing


def answered(record, arguments, units, gaps, marked=False):
    """Results as a list of arrays, masked where an input was a masked array; with `marked` the refused rows after them, else they raise."""
    results, refused, first, missing = compute(record, arguments, units, gaps)
    if first is not None and not marked:
        raise first
    if any(isinstance(value, np.ma.MaskedArray) for value in arguments):
        results = [np.ma.MaskedArray(values, mask=False if missing is None else missing) for values in results]
    return results + [refused, first] if marked else results


# ---- a call ----------------------------------------------------------------------------------------------------------------------

def _taken_apart(record, arguments):
    """(values, units): Pint quantities opened, what stands for a series or a word read, units taken from attributes."""
    values, units = list(arguments), [None] * len(arguments)
    for i, value in enumerate(values):
        if kind_of(type(value)) == "pint":
            values[i], units[i] = pint_values(record, i, value)
        kind = kind_of(type(values[i]))
        if kind.startswith(("pandas.", "xarray.", "dask.frame")):
            unit = _attribute(values[i], kind)
            units[i] = unit if units[i] is None else units[i]
        if kind.startswith("xarray.") and kind_of(type(values[i].data)) == "pint":
            inner, units[i] = pint_values(record, i, values[i].data)
            values[i] = values[i].copy(data=inner)
        if not record.columns[i] or not record.rows:
            if kind and kind != "absent":
                values[i] = values[i].compute() if kind.startswith("dask.") else values[i]
                values[i] = np.ma.filled(np.ma.asarray(values[i]).astype(float), np.nan) if kind == "masked" else np.asarray(values[i])
            values[i], units[i] = (values[i] if values[i] is None else in_unit(record, i, values[i], units[i])), None
    return values, units


def _attribute(value, kind):
    attributes = value._meta.attrs if kind == "dask.frame" else getattr(value, "attrs", {})
    unit = attributes.get("units")
    if isinstance(unit, dict) and getattr(value, "ndim", 2) == 1:
        return unit.get(value.name)
    return unit


def plain(position, arguments):
    """The arguments of a call that is not element by element, as numbers, texts and arrays in the inputs' own units."""
    if all(value is None or type(value) in (float, int, str, list, np.ndarray) for value in arguments):
        return arguments
    record = record_of(position)
    arguments = list(arguments) + [None] * (len(record.inputs) - len(arguments))
    values, units = _taken_apart(record, arguments)
    for i, value in enumerate(values):
        if kind_of(type(value)):
            value = np.asarray(value)
        values[i] = value if value is None else in_unit(record, i, value, units[i])
    return tuple(values)


def answer(position, arguments, marked=False):
    """The call with objects of other libraries in it; NotImplemented when there are none. marked: as rows() answers."""
    if not any(kind_of(type(value)) for value in arguments):
        return NotImplemented
    record = record_of(position)
    values, units = _taken_apart(record, arguments)
    kinds = [kind_of(type(value)) if record.columns[i] and record.rows else "" for i, value in enumerate(values)]
    families = {kind.partition(".")[0] if kind != "dask.frame" else kind for kind in kinds if "." in kind and kind != "pandas.array"}
    if "dask" in families and ("xarray" in families or families == {"dask"}):
        families.discard("xarray" if families == {"dask"} else "dask")
    if len(families) > 1:
        raise TypeError(f"{record.name}: objects of {' and '.join(sorted(families))} in one call: give all columns as one kind")
    nothing = [value for value, kind in zip(values, kinds) if kind == "absent" or value is np.ma.masked]
    if nothing:
        if not families and not any(np.ndim(value) for value, kind in zip(values, kinds) if kind != "absent" and not isinstance(value, str)):
            made = record.pack([nothing[0]] * len(record.results))  # every number alone: the same object comes out
            return (made, np.array(False), None) if marked else made
        for i, kind in enumerate(kinds):
            if kind == "absent" or values[i] is np.ma.masked:
                values[i], kinds[i] = np.ma.MaskedArray(0.0, mask=True), "masked"
    if families == {"xarray"}:
        from ._labelled import xarray_answer as go
    elif families & {"pandas", "dask.frame"}:
        from ._frames import pandas_answer, dask_answer
        go = pandas_answer if "pandas" in families else dask_answer
    elif families == {"dask"}:
        from ._labelled import dask_answer as go
    else:
        go = _arrays
    made = go(record, values, units, kinds, marked)
    if not marked:
        return record.pack(made)
    *results, refused, first = made
    return record.pack(results), refused, first


def _arrays(record, values, units, kinds, marked):
    """Masked arrays, arrays of pandas without an index, and quantities that were opened."""
    gaps = [False] * len(values)
    for i, kind in enumerate(kinds):
        if kind == "pandas.array":
            values[i], gaps[i] = values[i].to_numpy(dtype=object), True
    single = not any(record.columns[i] and np.ndim(value) for i, value in enumerate(values) if not isinstance(value, str))
    if single and not marked and not any(isinstance(value, np.ma.MaskedArray) for value in values):
        given = [value if value is None else in_unit(record, i, value, units[i]) for i, value in enumerate(values)]
        made = getattr(_cutwater, record.name)(*given)
        return list(made) if record.tuple else [made]
    return answered(record, values, units, gaps, marked)

