"""Checked, unit-safe pump calculations.

Each function takes its inputs by position or by name. A number carries the unit that the input's name ends in; a text
may carry any unit of the right quantity ("440 US gpm"); None leaves an optional input out. Arrays and lists given for a
quantity are computed row by row, broadcast as NumPy does. An input that cannot be answered raises Refused.

The package cannot judge an installation: its answers need the pump maker's data, local codes and a licensed engineer.
"""
import functools as _functools
import json as _json
import typing as _typing

import numpy as _np

from . import _cutwater, _lookup
from ._cutwater import convert, interface, self_test, version
from ._lookup import functions
from .answers import Sensitivity, Uncertainty, sensitivity, solutions, solve, uncertainty, working
from .refused import Refused
from .status import Status

__version__ = version()


class Rows(_typing.NamedTuple):
    """What an array call came to: results, which rows were refused, and the first refusal (None when there is none)."""

    results: _typing.Any
    refused: _typing.Any
    first: _typing.Any


def catalogue():
    """All that the library knows of its functions and units, as read from its JSON."""
    return _json.loads(_cutwater.catalogue_json())


def rows(function, /, *arguments, out=None, threads=1, **named):
    """The array form that does not raise for a refused row: its results are NaN (None for a word).

    function is a function of this package or its name; out an array for its result, or a tuple of arrays and None for
    several. out may be one of the inputs. threads is how many may compute, -1 for as many as there are processors.
    A text that cannot be read, or a word, still raises Refused.
    """
    position = _lookup.position(function)
    given = _lookup.in_order(position, arguments, named)
    results, refused, first = _cutwater.rows(position, given, out, threads)
    return Rows(results, refused, first)


def read(function, input, text):
    """A text as a number of that input, in the unit that the input's name ends in."""
    position = _lookup.position(function)
    index = _lookup.inputs(position).get(input, -1)
    if index < 0:
        raise _lookup.unknown(position, input)
    return _cutwater.read(position, index, text)


def quantity(value, unit):
    """A text with a unit as a number in another unit of the same quantity; a number has that unit already. A list gives an array.

    "-" is the unit of a plain number, a fraction included. Kelvins are a temperature difference; for a temperature in kelvins see convert.
    """
    if isinstance(value, str):
        return _cutwater.quantity(value, unit)
    if isinstance(value, (list, tuple)):
        return _np.array([quantity(one, unit) for one in value], dtype=float)
    _cutwater.quantity("0", unit)  # of a number only the unit is in question: whether -5 K is permitted is for the function that takes it
    try:
        return convert(value, "-", "-")
    except TypeError:
        raise TypeError(f"quantity: value must be a number, a text, or a list or array of them, not {type(value).__name__}") from None


@_functools.lru_cache(maxsize=None)
def _defaults():
    return [[entry.get("default") for entry in function["inputs"]] for function in catalogue()["functions"]]


def _default(position, index):
    """Called by the array form for a quantity that was left out."""
    return _defaults()[position][index]


# Every function of the catalogue, as compiled, and the named tuples of those with several results.
globals().update((name, getattr(_cutwater, name)) for name in functions())
globals().update((name, item) for name, item in vars(_cutwater).items() if isinstance(item, type))

__all__ = list(functions()) + [
    "Refused", "Rows", "Sensitivity", "Status", "Uncertainty", "catalogue", "convert", "functions", "interface", "quantity", "read", "rows",
    "self_test", "sensitivity", "solutions", "solve", "uncertainty", "version", "working"]
