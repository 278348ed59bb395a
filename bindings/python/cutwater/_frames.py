"""pandas' series and frames, and Dask's frames: index, columns and laziness kept, rows put side by side by their labels."""
import sys

import numpy as np

from . import _lookup, _objects


def _aligned(record, values, places):
    """The series or frames with one index, by label, as pandas itself adds them."""
    pandas = sys.modules["pandas"]
    objects = [values[i] for i in places]
    if len({type(value).__mro__ and value.ndim for value in objects}) > 1:
        raise TypeError(f"{record.name}: a Series and a DataFrame in one call: their rows do not say how they go together")
    first = objects[0]
    if first.ndim == 1:
        if not all(value.index.equals(first.index) for value in objects[1:]):
            index = objects[0].index
            for value in objects[1:]:
                index = index.union(value.index)
            objects = [value.reindex(index) for value in objects]
    elif not all(value.index.equals(first.index) and value.columns.equals(first.columns) for value in objects[1:]):
        index, columns = first.index, first.columns
        for value in objects[1:]:
            index, columns = index.union(value.index), columns.union(value.columns)
        objects = [value.reindex(index=index, columns=columns) for value in objects]
    assert isinstance(objects[0], (pandas.Series, pandas.DataFrame))
    return objects


def _numbers(value):
    """A column's values: float64 with NaN for what is missing, or objects where there are texts among them."""
    kinds = {value.dtype} if value.ndim == 1 else set(value.dtypes)
    if any(getattr(kind, "units", None) is not None for kind in kinds):
        raise TypeError(f"a column of {next(iter(kinds))} carries a unit of its own; give its numbers, with the unit in attrs['units']")
    if all(kind.kind in "fiu" for kind in kinds):
        return value.to_numpy(dtype=float, na_value=np.nan)
    return value.to_numpy(dtype=object) if all(kind.kind in "fiuO" for kind in kinds) else value.to_numpy()


def pandas_answer(record, values, units, kinds, marked):
    pandas = sys.modules["pandas"]
    places = [i for i, kind in enumerate(kinds) if kind in ("pandas.Series", "pandas.DataFrame")]
    aligned = _aligned(record, values, places)
    frame = aligned[0]
    nullable = any(hasattr(kind, "na_value") and kind.kind in "fiu" for value in aligned for kind in ([value.dtype] if value.ndim == 1 else value.dtypes))
    given, gaps, units = list(values), [False] * len(values), list(units)
    for i, value in zip(places, aligned):
        given[i], gaps[i] = _numbers(value), True
        if isinstance(units[i], dict):
            by_column = [_objects.in_unit(record, i, given[i][:, j], units[i].get(name)) for j, name in enumerate(value.columns)]
            given[i], units[i] = np.stack(by_column, axis=1), None
    for i, kind in enumerate(kinds):
        if i not in places and kind == "pandas.array":
            given[i], gaps[i] = values[i].to_numpy(dtype=object), True
        if i not in places and record.columns[i] and np.ndim(given[i]) and not isinstance(given[i], str) and np.shape(given[i])[0] != len(frame):
            raise ValueError(f"{record.name}: {record.inputs[i]} has {np.shape(given[i])[0]} values for {len(frame)} rows of the index")
    made = _objects.answered(record, given, units, gaps, marked)
    first = made.pop() if marked else None
    out = []
    for i, values_ in enumerate(made):
        word = i < len(record.results) and record.words[i]
        values_ = np.asarray(values_, dtype=object) if word else np.ma.filled(values_, np.nan) if i < len(record.results) else values_
        if nullable and not word and i < len(record.results):
            values_ = pandas.array(values_.ravel(), dtype="Float64").reshape(values_.shape) if frame.ndim == 1 else values_
        one = frame._constructor(values_, index=frame.index, **({"name": None} if frame.ndim == 1 else {"columns": frame.columns}))
        if i < len(record.results):
            one.attrs = {"units": record.result_units[i]} if record.result_units[i] else {}
            if frame.ndim == 1:
                one.name = record.results[i]
        out.append(one)
    return out + [first] if marked else out


def _partition(name, values, places, units, marked, *parts):
    """Runs where the rows are, in whatever process."""
    record = _objects.record_of(_lookup.position(name))
    values = list(values)
    for place, part in zip(places, parts):
        values[place] = part
    kinds = [_objects.kind_of(type(value)) if column else "" for value, column in zip(values, record.columns)]
    made = pandas_answer(record, values, units, kinds, marked)
    made = made[:-1] if marked else made
    return made[0] if len(made) == 1 else sys.modules["pandas"].concat(made, axis=1, keys=record.results + ["refused"] * marked)


def dask_answer(record, values, units, kinds, marked):
    """One Dask series a result; partitions are computed where and when Dask computes them."""
    import dask.dataframe
    import pandas
    places = [i for i, kind in enumerate(kinds) if kind == "dask.frame"]
    for i, value in enumerate(values):
        if record.columns[i] and i not in places and not isinstance(value, str) and np.ndim(value):
            raise TypeError(f"{record.name}: {record.inputs[i]} is an array beside columns of Dask; give it as a column of the same frame")
    if any(values[i].ndim != 1 for i in places):
        raise TypeError(f"{record.name}: give columns of a Dask frame one by one, each for its input")
    fixed = [None if i in places else value for i, value in enumerate(values)]
    types = [object if word else float for word in record.words] + [bool] * marked
    names = record.results + ["refused"] * marked
    empty = [pandas.Series([], dtype=kind, name=name, index=values[places[0]]._meta.index[:0]) for name, kind in zip(names, types)]
    meta = empty[0] if len(empty) == 1 else pandas.concat(empty, axis=1)
    made = dask.dataframe.map_partitions(_partition, record.name, fixed, places, units, marked, *(values[i] for i in places), meta=meta)
    made = [made] if len(names) == 1 else [made[name] for name in names]
    return made + [None] if marked else made
