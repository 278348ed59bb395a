"""What every function answers besides its value: its working, itself solved backwards, its uncertainty, its sensitivity."""
from __future__ import annotations

import dataclasses
import json
import math
import typing

from . import _cutwater, _lookup
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
    shares           each input's share of the variance, with its correlations; they add up to 1
    slopes           change of the result per unit of each input; NaN for one that is exact or a series
    second_order     what the next term would add to the standard uncertainty, as a part of it
    trusted          whether the first order will do; remark says why, or why not
    trials           of the Monte Carlo (JCGM 101); 0 when it was not run, and the numbers below are NaN
    refused          trials that the function refused, left out of the numbers below
    mean, deviation  of the trials
    trial_low, trial_high   probabilistically symmetric coverage interval
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


def working(function: Function, /, *arguments: typing.Any, form: Form = "text", **named: typing.Any) -> str:
    """The whole calculation as a text: equation, numbers put in, steps, results, limits, source and cautions.

    form is "text" (UTF-8), "ascii", "markdown" or "json". A call that is refused has a working too: it says why; so does a
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
    given = _lookup.in_order(position, arguments, named)
    try:
        return _cutwater.working(name, given, code)
    except Refused as refused:  # a text within a series, which is read before the library is asked
        return _refusal_alone(refused, form)


def solve(function: Function, unknown: str, target: Quantity, /, *arguments: typing.Any, result: str | None = None,
          low: Quantity | None = None, high: Quantity | None = None, **named: typing.Any) -> float:
    """The value of the input unknown for which the result comes to target, in the unit that the input's name ends in.

    unknown      the input's name, with or without its unit; leave it out of the inputs, or give None in its place
    target       a number in the result's unit, or a text with a unit
    result       the result's name, with or without its unit; the first that is a number when left out
    low, high    where to search: numbers in the unknown's unit, or texts; the record's interval when left out

    Raises Refused when there is no such value, several, or a whole range of them; the message says where was searched.
    """
    return _seek(_cutwater.solve, function, unknown, target, arguments, named, result, low, high)


def solutions(function: Function, unknown: str, target: Quantity, /, *arguments: typing.Any, result: str | None = None,
              low: Quantity | None = None, high: Quantity | None = None, **named: typing.Any) -> list[float]:
    """As solve(), but all the values found, rising, where several are welcome."""
    return _seek(_cutwater.solutions, function, unknown, target, arguments, named, result, low, high)


def uncertainty(function: Function, /, *arguments: typing.Any, standard: typing.Mapping[str, typing.Any],
                correlations: typing.Mapping[tuple[str, str], float] | None = None,
                spreads: typing.Mapping[str, Spread] | None = None, monte_carlo: int | bool | None = None, seed: int = 0,
                coverage: float = 0.95, result: str | None = None, **named: typing.Any) -> Uncertainty:
    """The result's standard uncertainty from those of the inputs.

    standard      {input: standard uncertainty}: a number in the input's unit or a text with a unit ("0.5 degC" is half a
                  kelvin); for a series one number for every point, or a series. An input that is not named is exact.
    correlations  {(input, input): coefficient}
    spreads       {input: "normal", "rectangular", "triangular" or "arcsine"}; normal when left out
    monte_carlo   how many trials; True for 200 000; False for none; None: when the first order is not to be trusted
    seed          the same seed gives the same bits
    coverage      probability of the intervals
    result        the result's name; the first that is a number when left out

    Inputs are named with or without their units.
    """
    position = _lookup.position(function)
    names = _lookup.inputs(position)
    given = _lookup.in_order(position, arguments, named)
    if not 0 < coverage < 1:
        raise ValueError(f"coverage must lie between 0 and 1, not {coverage!r}")
    mode, trials = _trials(monte_carlo)
    answer = _cutwater.uncertainty(
        position, given, _by_input(position, "standard", standard, None),
        _by_input(position, "spreads", {name: _spread(spread) for name, spread in (spreads or {}).items()}, 0),
        tuple((_lookup.input_place(position, first), _lookup.input_place(position, second), float(coefficient))
              for (first, second), coefficient in (correlations or {}).items()),
        result, mode, trials, seed, coverage)
    value, deviation, low, high, shares, slopes, *rest = answer
    return Uncertainty(value, deviation, low, high, dict(zip(names, shares)), dict(zip(names, slopes)), *rest)


def sensitivity(function: Function, /, *arguments: typing.Any, result: str | None = None, **named: typing.Any) -> list[Sensitivity]:
    """The inputs that are numbers or series, each with the result's relative change for its own, what matters most first.

    Temperatures are taken from absolute zero there. A whole number changes by 1. result is the result's name, with or without
    its unit; the first that is a number when left out.
    """
    position = _lookup.position(function)
    names = tuple(_lookup.inputs(position))
    rows = _cutwater.sensitivity(position, _lookup.in_order(position, arguments, named), result)
    return [Sensitivity(names[row[0]], *row[1:]) for row in rows]


def _seek(search, function, unknown, target, arguments, named, result, low, high):
    position = _lookup.position(function)
    ends = [_end(position, unknown, end) for end in (low, high)]
    return search(position, _lookup.in_order(position, arguments, named), unknown, target, result, *ends)


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


def _refusal_alone(refused, form):
    """As the library writes it where there is nothing else to show."""
    message = str(refused)
    if form == "markdown":
        return f"**Refused:** {message}\n"
    if form == "json":
        finite = {key: end if math.isfinite(end) else None
                  for key, end in (("value", refused.value), ("low", refused.low), ("high", refused.high))}
        refusal = {"message": message, "argument": refused.name, **finite, "unit": refused.unit}
        if refused.element is not None:
            refusal["element"] = refused.element
        return json.dumps({"status": int(refused.status), "refusal": refusal}, ensure_ascii=False)
    text = f"Refused\n  {message}\n"
    return text.encode("ascii", "replace").decode() if form == "ascii" else text
