"""Every function's array form against its relation in NumPy: nanoseconds a row and the ratio, worst first. Not a test.

usage: rows_bench.py LIBRARY CATALOGUE.json [--document FILE] [NAME...]
Both write into new arrays; NumPy with the widest vectors it has. A hundred thousand rows, as a column of a plant's historian has
for a season. What a call with a single row takes is taken off both: the microseconds of ctypes and of NumPy's calls.
"""
import argparse
import ctypes
import importlib
import json
import os
import pkgutil
import sys
import time

import numpy as np

sys.path.insert(0, os.path.dirname(os.path.abspath(__file__)))
import relations  # noqa: E402

ROWS = 100_000


class Column(ctypes.Structure):
    _fields_ = [("data", ctypes.c_void_p), ("stride", ctypes.c_ssize_t)]


class Refusal(ctypes.Structure):
    _fields_ = [("room", ctypes.c_char * 4096)]


class Report(ctypes.Structure):
    _fields_ = [("bitmap", ctypes.c_void_p), ("threads", ctypes.c_int32), ("refused", ctypes.c_size_t), ("first", Refusal)]


def least(work, rounds=15):
    """Seconds of the quickest of many short runs, a call: the machine may have other work."""
    count = 1
    while True:
        start = time.perf_counter()
        for _ in range(count):
            work()
        took = time.perf_counter() - start
        if took > 5e-4:
            break
        count *= 2
    best = took
    for _ in range(rounds):
        start = time.perf_counter()
        for _ in range(count):
            work()
        best = min(best, time.perf_counter() - start)
    return best / count


def number_of(library, function, record, value):
    """An example's number, or its text with a unit as the library reads it."""
    if not isinstance(value, str):
        return float(value)
    number = ctypes.c_double()
    name = function["name"].encode()
    status = library.cutwater_read(library.cutwater_find(name), function["inputs"].index(record), value.encode(), ctypes.byref(number), None)
    if status:
        raise ValueError(f"{function['name']}: {value}")
    return number.value


class Case:
    """A function's inputs as columns, and the same as NumPy takes them."""

    def __init__(self, function, relation, library):
        self.function, self.relation = function, relation
        self.kept, self.arguments, self.numpy_arguments = [], [], []
        parameters = list(relation.compute.__code__.co_varnames[: relation.compute.__code__.co_argcount]) if relation else []
        for record, value in ((i, function["example"]["inputs"].get(i["name"], i.get("default"))) for i in function["inputs"]):
            if record["kind"] == "series":
                series = np.array([number_of(library, function, record, v) for v in value])
                self.kept.append(series)
                self.arguments += [ctypes.c_void_p(series.ctypes.data), ctypes.c_size_t(len(series))]
            elif record["kind"] == "choice":
                self.arguments.append(ctypes.c_char_p(str(value).encode()))
            else:
                self.add_number(record, number_of(library, function, record, value), parameters.pop(0) if parameters else None)

    def add_number(self, record, value, name):
        if self.relation:
            value = self.relation.given.get(name, value)
        low, high = self.interval(record, value, name)
        once = self.relation is not None and name in self.relation.once
        if once:
            column = np.array([value])
        elif record["kind"] == "count":
            column = np.full(ROWS, value)
        else:
            column = self.random.uniform(low, high, ROWS)
        self.kept.append(column)
        self.arguments.append(Column(column.ctypes.data, 0 if once else 1))
        if name:
            self.numpy_arguments.append(value if once else column)

    random = np.random.default_rng(1)

    def interval(self, record, value, name):
        if self.relation and name in self.relation.columns:
            return self.relation.columns[name]
        low, high = sorted((0.97 * value, 1.03 * value))
        if record.get("low") is not None:
            low = max(low, record["low"])
        if record.get("high") is not None:
            high = min(high, record["high"])
        return (low, high) if low < high else (value, value)

    def runner(self, library, rows=None):
        rows = rows or ROWS
        call = getattr(library, "cutwater_" + self.function["name"] + "_rows")
        report = Report()
        count = ctypes.c_size_t(rows)
        self.kept.append(report)
        results = len(self.function["results"])

        def run():
            out = [np.empty(rows) for _ in range(results)]
            call(count, *self.arguments, *(Column(o.ctypes.data, 1) for o in out), ctypes.byref(report))
            return out, report

        return run

    def numpy_runner(self, rows):
        arguments = [a[:rows] if isinstance(a, np.ndarray) else a for a in self.numpy_arguments]
        if not arguments:  # of words alone
            return lambda: self.relation.compute(rows)
        return lambda: self.relation.compute(*arguments)


def a_row(runner):
    """Nanoseconds."""
    return (least(runner(ROWS)) - least(runner(1))) / (ROWS - 1) * 1e9


def compare(case, library):
    """(nanoseconds a row, NumPy's or None, note)"""
    run = case.runner(library)
    out, report = run()
    note = f"{report.refused} of {ROWS} rows refused" if report.refused else ""
    ours = a_row(lambda rows: case.runner(library, rows))
    if not case.relation:
        return ours, None, note
    theirs = case.numpy_runner(ROWS)()
    for mine, other in zip(out, theirs if isinstance(theirs, tuple) else (theirs,)):
        apart = np.nanmax(np.abs(mine - other) / np.maximum(np.abs(other), 1e-300))
        if apart > 1e-6:
            note += f" up to {apart:.1g} apart"
    return ours, a_row(case.numpy_runner), note


def measured(functions, library, names):
    for module in pkgutil.iter_modules(relations.__path__):
        importlib.import_module("relations." + module.name)
    for function in functions:
        if names and function["name"] not in names:
            continue
        if any(r["kind"] == "series" for r in function["results"]):
            continue  # no array form
        for relation in relations.RELATIONS.get(function["name"], [None]):
            once = f"; {len(relation.once)} of {len(function['inputs'])} inputs given once" if relation and relation.once else ""
            print(function["name"], file=sys.stderr, flush=True)
            yield function["name"] + once, *compare(Case(function, relation, library), library)


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("library")
    parser.add_argument("catalogue")
    parser.add_argument("--document", help="a page whose table, from its heading row to its last, is replaced")
    parser.add_argument("names", nargs="*")
    given = parser.parse_args()
    library = ctypes.CDLL(given.library)
    with open(given.catalogue, encoding="utf-8") as file:
        functions = json.load(file)["functions"]
    rows = sorted(measured(functions, library, given.names), key=lambda r: (-(r[1] / r[2]) if r[2] else 1, -r[1]))
    lines = ["| function | ns a row | NumPy | ratio | |", "|---|---:|---:|---:|---|"]
    for name, ours, theirs, note in rows:
        lines.append(f"| `{name.split(';')[0]}`{';'.join([''] + name.split(';')[1:])} | {ours:.2f} | "
                     + (f"{theirs:.2f} | {ours / theirs:.2f}" if theirs else "— | ") + f" | {note} |")
    text = "\n".join(lines) + "\n"
    if given.document:
        with open(given.document, encoding="utf-8") as file:
            page = file.read()
        begin = page.index(lines[0])
        end = page.index("\n\n", begin) + 1
        with open(given.document, "w", encoding="utf-8") as file:
            file.write(page[:begin] + text + page[end:])
    print(text, end="")


if __name__ == "__main__":
    main()
