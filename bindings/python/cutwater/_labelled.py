"""xarray's labelled arrays and Dask's arrays: dimensions, coordinates and laziness kept."""
import sys

import numpy as np

from . import _objects


def _kernel(name, fixed, places, units, gaps, marked, *arrays):
    """Runs where the numbers are, in whatever process: a function's name and what does not vary, then one block of each column."""
    from . import _lookup
    record = _objects.record_of(_lookup.position(name))
    values = list(fixed)
    for place, array in zip(places, arrays):
        values[place] = array
    made = _objects.answered(record, values, units, gaps, marked)
    return tuple(made[:-1] if marked else made)


def _lazy(record, values, places, units, gaps, marked):
    """The kernel over Dask arrays, block by block."""
    array = sys.modules["dask.array"]
    fixed = [None if i in places else value for i, value in enumerate(values)]
    columns = [array.asarray(values[i]) for i in places]
    most = max(column.ndim for column in columns)
    pairs = [part for column in columns for part in (column, tuple(range(most - column.ndim, most)))]
    columns = array.core.unify_chunks(*pairs)[1]
    types = [object if word else float for word in record.words] + [bool] * marked
    signature = f"{','.join(['()'] * len(columns))}->{','.join(['()'] * len(types))}"
    kernel = _kernel_of(record.name, fixed, places, units, gaps, marked)
    made = array.apply_gufunc(kernel, signature, *columns, output_dtypes=types if len(types) > 1 else types[0])
    return list(made) if len(types) > 1 else [made]


class _kernel_of:
    """A partial call whose single result stands alone, as Dask wants it; it travels to other processes."""

    def __init__(self, *leading):
        self.leading = leading
        self.__name__ = leading[0]

    def __call__(self, *arrays):
        made = _kernel(*self.leading, *arrays)
        return made if len(made) > 1 else made[0]


def dask_answer(record, values, units, kinds, marked):
    places = [i for i, value in enumerate(values) if record.columns[i] and not isinstance(value, str) and (kinds[i] == "dask.array" or np.ndim(value))]
    made = _lazy(record, values, places, units, [False] * len(values), marked)
    return made + [None] if marked else made


def xarray_answer(record, values, units, kinds, marked):
    xarray = sys.modules["xarray"]
    places = [i for i, kind in enumerate(kinds) if kind.startswith("xarray.")]
    others = [i for i, value in enumerate(values)
              if record.columns[i] and i not in places and not isinstance(value, str) and (kinds[i].startswith("dask.") or np.ndim(value))]
    places += others
    fixed = [None if i in places else value for i, value in enumerate(values)]
    gaps = [kind.startswith("xarray.") for kind in kinds]
    first = []

    def over(*arrays):
        now = list(fixed)
        for place, array in zip(places, arrays):
            now[place] = array
        if any(_objects.kind_of(type(array)) == "dask.array" for array in arrays):
            made = _lazy(record, now, places, units, gaps, marked)
        else:
            made = _objects.answered(record, now, units, gaps, marked)
            if marked:
                first.append(made.pop())
        return tuple(made) if len(made) > 1 else made[0]

    count = len(record.results) + marked
    made = xarray.apply_ufunc(over, *(values[i] for i in places), output_core_dims=[()] * count, dask="allowed",
                              join=xarray.get_options()["arithmetic_join"], keep_attrs=False)
    made = list(made) if count > 1 else [made]
    for i, result in enumerate(record.results):
        made[i].attrs = {"long_name": record.meanings[i]} | ({} if record.words[i] else {"units": record.result_units[i] or "1"})
        if hasattr(made[i], "name"):
            made[i].name = result
    return made + [first[0] if first else None] if marked else made
