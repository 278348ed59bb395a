"""Functions and inputs by name, as the calls need them that are not one compiled function."""
import functools

from . import _cutwater


@functools.lru_cache(maxsize=None)
def functions():
    """Every function's name, in the catalogue's order."""
    return tuple(_cutwater.function_name(i) for i in range(_cutwater.function_count()))


def name_of(function):
    """A function's name, given it or the function."""
    name = function if isinstance(function, str) else getattr(function, "__name__", "")
    if not name:
        raise LookupError(f"{function!r} is no function of this package")
    return name


def position(function):
    """Where a function, or the one of that name, stands in the catalogue."""
    name = name_of(function)
    found = _cutwater.find(name)
    if found < 0:
        raise LookupError(f"there is no function {name!r}")
    return found


@functools.lru_cache(maxsize=None)
def inputs(position):
    """{name: place} of a function's inputs."""
    return {_cutwater.input_name(position, i): i for i in range(_cutwater.input_count(position))}


def unknown(position, name):
    """The error for an input that there is not, with the names that there are."""
    return TypeError(f"{functions()[position]}() has no input {name!r}; it has {', '.join(inputs(position))}")


@functools.lru_cache(maxsize=None)
def _without_unit(position):
    return {name.rpartition("_")[0] if _cutwater.input_unit(position, i) else name: i for name, i in inputs(position).items()}


def input_place(position, name):
    """Where an input stands, given its name with or without its unit."""
    index = inputs(position).get(name)
    if index is None:
        index = _without_unit(position).get(name)
    if index is None:
        raise unknown(position, name)
    return index


def in_order(position, arguments, named):
    """Arguments by position and by name as one tuple, None for what was left out."""
    names = inputs(position)
    if len(arguments) > len(names):
        raise TypeError(f"{functions()[position]}() takes {len(names)} inputs ({len(arguments)} given)")
    given = list(arguments) + [None] * (len(names) - len(arguments))
    for name, value in named.items():
        index = names.get(name, -1)
        if index < 0:
            raise unknown(position, name)
        if index < len(arguments):
            raise TypeError(f"{functions()[position]}() was given {name!r} twice")
        given[index] = value
    return tuple(given)
