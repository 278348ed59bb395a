"""What every function answers besides its value: its working, itself solved backwards, its uncertainty, its sensitivity."""
from __future__ import annotations

import dataclasses
import math
import typing

from . import _cutwater, _lookup
from ._questions import question
from .refused import Refused

Function = typing.Union[str, typing.Callable[..., typing.Any]]
Form = typing.Literal["text", "ascii", "markdown", "json"]
Spread = typing.Literal["normal", "rectangular", "triangular", "arcsine"]
Quantity = typing.Union[typing.SupportsFloat, str]

_FORMS = ("text", "ascii", "markdown", "json")
_SPREADS = ("normal", "rectangular", "triangular", "arcsine")
_WHEN_NEEDED, _ALWAYS, _NEVER = range(3)


class Sensitivity(typing.NamedTuple):
    """How much one input matters."""

    input: str
    relative: bool  # False: the input or the result is 0, and only slope tells
    relative_change: float  # of the result per relative change of the input: 3 means that 1 % more gives 3 % more
    slope: float  # change of the result per unit of the input; NaN for a series, which is scaled as a whole


@dataclasses.dataclass(frozen=True)
class Uncertainty:
    """A result's standard uncertainty.

    value            the result for the inputs as given
    standard         standard uncertainty to first order (JCGM 100)
    low, high        first-order coverage interval, by the normal distribution
    shares           each input's share of the variance, with its correlations, and under "relation" that of the relation
                     itself where it scatters; they add up to 1
    slopes           change of the result per unit of each input; NaN for one that is exact or a series
    second_order     what the next term would add to the standard uncertainty, as a part of it
    trusted          whether the first order will do; remark says why, or why not
    trials           of the Monte Carlo (JCGM 101); 0 when it was not run, and the numbers below are NaN
    refused          trials that the function refused, left out of the numbers below
    mean, deviation  of the trials
    trial_low, trial_high   probabilistically symmetric coverage interval
    relation         standard uncertainty that the relation itself adds; 0 for none
    """

    value: float
    standard: float
    low: float
    high: float
    shares: dict[str, float]
    slopes: dict[str, float]
    second_order: float
    trusted: bool
    remark: str
    trials: int
    refused: int
    mean: float
    deviation: float
    trial_low: float
    trial_high: float
    relation: float = 0.0


class Found(typing.NamedTuple):
    """A function that words point to."""

    function: str
    meaning: str


@question
def find_function(words: str) -> list[Found]:
    """No function found is an empty list here."""
    return [Found(_cutwater.function_name(i), _cutwater.function_meaning(i)) for i in _cutwater.find_function(words)]


@question
def refusal(function: Function, /, *arguments: typing.Any, **named: typing.Any) -> str:
    """The call itself raises Refused with the same sentence."""
    position = _lookup.position(function)
    try:
        getattr(_cutwater, _lookup.functions()[position])(*_lookup.in_order(position, arguments, named))
    except Refused as refused:
        return str(refused)
    return ""


@question
def working_line(line: int, function: Function, /, *arguments: typing.Any, **named: typing.Any) -> str:
    if line < 1 or line != int(line):
        raise ValueError(f"line must be a whole number from 1, not {line!r}")
    lines = working(function, *arguments, **named).split("\n")
    return lines[int(line) - 1] if line <= len(lines) else ""


@question
def uncertainty_shares(function: Function, /, *arguments: typing.Any, **named: typing.Any) -> dict[str, float]:
    """Keywords as of uncertainty(), which gives them too."""
    return uncertainty(function, *arguments, **{"monte_carlo": False, **named}).shares


@question
def working(function: Function, /, *arguments: typing.Any, form: Form = "text", **named: typing.Any) -> str:
    """form is "text" (UTF-8), "ascii", "markdown" or "json". A call that is refused has a working too: it says why; so does a
    name that is no function's.
    """
    try:
        code = _FORMS.index(form)
    except ValueError:
        raise ValueError(f"form must be one of {', '.join(map(repr, _FORMS))}, not {form!r}") from None
    name = _lookup.name_of(function)
    position = _cutwater.find(name)
    if position < 0:
        return _cutwater.working(name, (), code)
    given = _in_order(position, arguments, named)
    try:
        return _cutwater.working(name, given, code)
    except Refused as refused:  # a text within a series, which is read before the library is asked
        element = -1 if refused.element is None else refused.element
        return _cutwater.refusal_text(
            (str(refused), int(refused.status), element, refused.value, refused.low, refused.high, refused.name, refused.unit), code)


@question
def solve_for(function: Function, unknown: str, target: Quantity, /, *arguments: typing.Any, result: str | None = None,
              low: Quantity | None = None, high: Quantity | None = None, **named: typing.Any) -> float:
    """
    unknown      the input's name, with or without its unit; leave it out of the inputs, or give None in its place
    target       a number in the result's unit, or a text with a unit
    result       the result's name, with or without its unit; the first that is a number when left out
    low, high    where to search: numbers in the unknown's unit, or texts; the record's interval when left out

    Raises Refused when there is no such value, several, or a whole range of them; the message says where was searched.
    """
    return _seek(_cutwater.solve_for, function, unknown, target, arguments, named, result, low, high)


@question
def solutions(function: Function, unknown: str, target: Quantity, /, *arguments: typing.Any, result: str | None = None,
              low: Quantity | None = None, high: Quantity | None = None, **named: typing.Any) -> list[float]:
    """Keywords as of solve_for()."""
    return _seek(_cutwater.solutions, function, unknown, target, arguments, named, result, low, high)


@question
def uncertainty(function: Function, /, *arguments: typing.Any, standard: typing.Mapping[str, typing.Any],
                correlations: typing.Mapping[tuple[str, str], float] | None = None,
                spreads: typing.Mapping[str, Spread] | None = None, monte_carlo: int | bool | None = None, seed: int = 0,
                coverage: float = 0.95, result: str | None = None, relation: Quantity | None = None, **named: typing.Any) -> Uncertainty:
    """
    standard      {input: standard uncertainty}: a number in the input's unit or a text with a unit ("0.5 degC" is half a
                  kelvin); for a series one number for every point, or a series. An input that is not named is exact.
    correlations  {(input, input): coefficient}
    spreads       {input: "normal", "rectangular", "triangular" or "arcsine"}; normal when left out
    monte_carlo   how many trials; True for 200 000; False for none; None: when the first order is not to be trusted
    seed          the same seed gives the same bits
    coverage      probability of the intervals
    result        the result's name; the first that is a number when left out
    relation      standard uncertainty of the relation itself, in the result's unit or a text; None: by the scatter that its
                  page states; 0: none

    Inputs are named with or without their units.
    """
    position = _lookup.position(function)
    names = _lookup.inputs(position)
    given = _in_order(position, arguments, named)
    if not 0 < coverage < 1:
        raise ValueError(f"coverage must lie between 0 and 1, not {coverage!r}")
    mode, trials = _trials(monte_carlo)
    answer = _cutwater.uncertainty(
        position, given, (*_by_input(position, "standard", standard, None), relation if relation is None or isinstance(relation, str) else float(relation)),
        _by_input(position, "spreads", {name: _spread(spread) for name, spread in (spreads or {}).items()}, 0),
        tuple((_lookup.input_place(position, first), _lookup.input_place(position, second), float(coefficient))
              for (first, second), coefficient in (correlations or {}).items()),
        result, mode, trials, seed, coverage)
    value, deviation, low, high, shares, slopes, *rest, own, own_share = answer
    by_name = dict(zip(names, shares)) | ({"relation": own_share} if own > 0 else {})
    return Uncertainty(value, deviation, low, high, by_name, dict(zip(names, slopes)), *rest, own)


@question
def sensitivity(function: Function, /, *arguments: typing.Any, result: str | None = None, **named: typing.Any) -> list[Sensitivity]:
    """Temperatures are taken from absolute zero there. A whole number changes by 1. result is the result's name, with or without
    its unit; the first that is a number when left out.
    """
    position = _lookup.position(function)
    names = tuple(_lookup.inputs(position))
    rows = _cutwater.sensitivity(position, _in_order(position, arguments, named), result)
    return [Sensitivity(names[row[0]], *row[1:]) for row in rows]


def _in_order(position, arguments, named):
    """As _lookup's, with quantities and columns of other libraries as numbers and arrays in the inputs' own units."""
    given = _lookup.in_order(position, arguments, named)
    if all(value is None or type(value) in (float, int, str, list, tuple) for value in given):
        return given
    from . import _objects
    return _objects.plain(position, given)


def _seek(search, function, unknown, target, arguments, named, result, low, high):
    position = _lookup.position(function)
    ends = [_end(position, unknown, end) for end in (low, high)]
    return search(position, _in_order(position, arguments, named), unknown, target, result, *ends)


def _end(position, unknown, end):
    if end is None:
        return math.nan
    if isinstance(end, str):
        return _cutwater.read(position, _lookup.input_place(position, unknown), end)
    end = float(end)
    if math.isnan(end):  # the library would take it for no end
        raise ValueError("an end of the search is NaN")
    return end


def _by_input(position, what, mapping, otherwise):
    placed = [otherwise] * len(_lookup.inputs(position))
    seen = set()
    for name, value in mapping.items():
        index = _lookup.input_place(position, name)
        if index in seen:
            raise TypeError(f"{what} names {name!r} twice")
        seen.add(index)
        placed[index] = value
    return tuple(placed)


def _spread(spread):
    if spread not in _SPREADS:
        raise ValueError(f"a spread is one of {', '.join(map(repr, _SPREADS))}, not {spread!r}")
    return _SPREADS.index(spread)


def _trials(monte_carlo):
    if monte_carlo is None:
        return _WHEN_NEEDED, 0
    if monte_carlo is False:
        return _NEVER, 0
    if monte_carlo is True:
        return _ALWAYS, 0
    if monte_carlo < 1:
        raise ValueError(f"monte_carlo must be a number of trials from 1 up, True, False or None, not {monte_carlo!r}")
    return _ALWAYS, monte_carlo
