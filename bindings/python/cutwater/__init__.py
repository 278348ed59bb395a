"""Checked, unit-safe pump calculations.

Each function takes its inputs by position or by name. A number carries the unit that the input's name ends in; a text
may carry any unit of the right quantity ("440 US gpm"); None leaves an optional input out. Arrays and lists given for a
quantity are computed row by row, broadcast as NumPy does. An input that cannot be answered raises Refused.

The package cannot judge an installation: its answers need the pump maker's data, local codes and a licensed engineer.
"""
import json as _json
import typing as _typing

import numpy as _np

from . import _cutwater, _lookup
from ._cutwater import interface, self_test, version
from ._lookup import functions
from ._questions import question as _question
from .answers import (Found, Sensitivity, Uncertainty, find_function, refusal, sensitivity, solutions, solve_for, uncertainty, uncertainty_shares,
                      working, working_line)
from .refused import Refused
from .status import Status

__version__ = version()


_OWN = frozenset((type(None), bool, int, float, str, list, tuple, _np.ndarray, _np.float64))  # what no other library can have brought


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
    if any(type(value) not in _OWN for value in given):
        from . import _objects
        answered = _objects.answer(position, given, marked=True)
        if answered is not NotImplemented:
            if out is not None:
                raise TypeError("rows: out takes NumPy's arrays only")
            return Rows(*answered)
    results, refused, first = _cutwater.rows(position, given, out, threads)
    return Rows(results, refused, first)


def read(function, input, text):
    """A text as a number of that input, in the unit that the input's name ends in."""
    position = _lookup.position(function)
    index = _lookup.inputs(position).get(input, -1)
    if index < 0:
        raise _lookup.unknown(position, input)
    return _cutwater.read(position, index, text)


@_question
def quantity(value, unit):
    """A list or an array gives an array. Kelvins are a temperature difference; for a temperature in kelvins see convert_unit."""
    if isinstance(value, str) or not hasattr(value, "__len__") and not hasattr(value, "__array__"):
        return _cutwater.quantity(value, unit)
    if isinstance(value, (list, tuple)):
        return _np.array([quantity(one, unit) for one in value], dtype=float)
    _cutwater.quantity("0", unit)  # of numbers only the unit is in question
    try:
        return convert_unit(value, "-", "-")
    except TypeError:
        raise TypeError(f"quantity: value must be a number, a text, or a list or array of them, not {type(value).__name__}") from None


@_question
def convert_unit(value, from_unit, to_unit):
    """A list or an array gives an array."""
    return _cutwater.convert_unit(value, from_unit, to_unit)


@_question
def cutwater_version():
    """Also as version()."""
    return version()


# Every function of the catalogue, as compiled, and the named tuples of those with several results.
globals().update((name, getattr(_cutwater, name)) for name in functions())
globals().update((name, item) for name, item in vars(_cutwater).items() if isinstance(item, type))

__all__ = list(functions()) + [
    "Found", "Refused", "Rows", "Sensitivity", "Status", "Uncertainty", "catalogue", "convert_unit", "cutwater_version", "find_function",
    "functions", "interface", "quantity", "read", "refusal", "rows", "self_test", "sensitivity", "solutions", "solve_for", "uncertainty",
    "uncertainty_shares", "version", "working", "working_line"]
