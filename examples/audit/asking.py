"""A column holds one value a pump. One question is one call of cutwater for the whole column; what is refused is kept with its sentence."""
import numpy as np

import cutwater
from writer.inputs import INPUT

WORDS = ("motor_rule", "motor_series", "inlet", "slurry_by")  # choices, which an array call takes once only


def missing(value):
    return value is None or isinstance(value, float) and np.isnan(value)


class Columns:
    def __init__(self, pumps):
        self.pumps = pumps
        self.everyone = np.full(len(pumps), True)
        self.found = {}  # name of a result: its column, NaN or None where there is none
        self.why = {}  # name of a result: {pump's place: (name of the result that was refused first, sentence)}
        self.asked = {}  # name of a result: the functions that it came from

    def given(self, name):
        return [pump.get(name) for pump in self.pumps]

    def column(self, name):
        return self.found[name] if name in self.found else self.given(name)

    def says(self, name, word):
        """Where the data hold this word."""
        return np.array([value == word for value in self.given(name)])

    def word(self, key, name, words, keys=()):
        """A choice of the data as it is; another word refuses it and `keys`, which go by it."""
        for place, value in enumerate(self.given(name)):
            if value in words:
                self._store((key,), [place], value)
            else:
                for one in (key, *keys):
                    self._refuse(
                        one, place, (key, f"{INPUT[name].text}: it must be one of {', '.join(words)}, written so.")
                    )

    def _refuse(self, key, place, cause):
        self.why.setdefault(key, {})[place] = cause

    def _blocked(self, keys, needs, place):
        """A refused input refuses what needs it, with the first reason."""
        cause = next((self.why[name][place] for name in needs if name in self.why and place in self.why[name]), None)
        if cause:
            for key in keys:
                self._refuse(key, place, cause)
        return cause is not None

    def _store(self, keys, places, answer):
        several = answer if isinstance(answer, tuple) else (answer,)
        for key, values in zip(keys, several):
            if key not in self.found:
                word = isinstance(values, str) or getattr(values, "dtype", None) == object
                self.found[key] = np.full(len(self.pumps), None if word else np.nan, dtype=object if word else float)
            self.found[key][places] = values

    def ask(self, keys, function, *inputs, where=None):
        """One call for all the pumps of `where`. keys: a name, or one for each result. inputs: names of columns, or numbers."""
        keys = (keys,) if isinstance(keys, str) else keys
        names = [one for one in inputs if isinstance(one, str)]
        columns = [self.column(one) if isinstance(one, str) else one for one in inputs]
        groups, alone = {}, []
        for place in np.flatnonzero(self.everyone if where is None else where):
            self.asked.setdefault(keys[0], {})[place] = function.__name__
            if self._blocked(keys, names, place):
                continue
            row = tuple(column[place] if isinstance(one, str) else one for one, column in zip(inputs, columns))
            if any(missing(value) for value in row):
                alone.append((place, row))
            else:
                groups.setdefault(tuple(value for one, value in zip(inputs, row) if one in WORDS), []).append(
                    (place, row)
                )
        for group in groups.values():
            places = [place for place, _ in group]
            whole = [
                list(values) if isinstance(one, str) and one not in WORDS else values[0]
                for one, values in zip(inputs, zip(*(row for _, row in group)))
            ]
            try:
                answer = cutwater.rows(function, *whole)
            except cutwater.Refused:  # a text that cannot be read stops a whole array: find whose it is
                alone += group
                continue
            self._store(keys, places, answer.results)
            alone += [
                one for one, refused in zip(group, np.atleast_1d(answer.refused)) if refused
            ]  # for each one's own sentence
        for place, row in alone:
            self.each(keys, lambda _, row=row: function(*row), where=[place])

    def each(self, keys, call, needs=(), where=None):
        """One call a pump: what takes series."""
        keys = (keys,) if isinstance(keys, str) else keys
        for place in np.flatnonzero(self.everyone) if where is None else where:
            if self._blocked(keys, needs, place):
                continue
            try:
                self._store(keys, [place], call(place))
            except cutwater.Refused as refused:
                for key in keys:
                    self._refuse(key, place, (keys[0], refused.message))

    def read(self, key, name, unit, where=None):
        """A number of the data as it is, a text as a number in the unit."""

        def one(place):
            value = self.pumps[place].get(name)
            if missing(value):
                raise cutwater.Refused(f"{name} is not given.")
            return cutwater.quantity(value, unit)

        self.each(key, one, where=None if where is None else np.flatnonzero(where))
