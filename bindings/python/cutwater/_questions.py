"""The help of the calls that are not one formula: what the library's records say of them, then what is Python's own."""
import functools
import inspect

from . import _cutwater


@functools.lru_cache(maxsize=None)
def _records():
    return {_cutwater.question_name(i): i for i in range(_cutwater.question_count())}


def question(function):
    """Puts the record's words before the function's own docstring; a function that is no question is a mistake here."""
    position = _records()[function.__name__]
    text = _cutwater.question_meaning(position) + ".\n\n"
    for name, meaning in _cutwater.question_arguments(position):
        text += f"{name}: {meaning}\n"
    for name, meaning in _cutwater.question_results(position):
        text += f"-> {name}: {meaning}\n"
    own = inspect.cleandoc(function.__doc__ or "")
    function.__doc__ = text + (f"\n{own}\n" if own else "")
    return function
