"""What refused rows cost: every function's array form with good rows, and with every second row refused or at an end. Not a test.

usage: hostile_rows.py LIBRARY CATALOGUE.json
Each input in turn takes NaN, infinities, 2e9, 1e300 and the ends of its interval with their neighbours.
"""
import ctypes
import json
import math
import os
import sys

import numpy as np

sys.path.insert(0, os.path.dirname(os.path.abspath(__file__)))
import rows_bench  # noqa: E402

rows_bench.ROWS = 4096


def hostile_numbers(record):
    numbers = [math.nan, math.inf, -math.inf, 2e9, -2e9, 1e300, -1e300, 0.0, 5e-324]
    for end in (record.get("low"), record.get("high")):
        if end is not None:
            numbers += [end, float(np.nextafter(end, math.inf)), float(np.nextafter(end, -math.inf))]
    return numbers


def ratios(function, library):
    case = rows_bench.Case(function, None, library)
    run = case.runner(library)
    good = rows_bench.least(run, 9)
    columns = [k for k, a in enumerate(case.arguments) if isinstance(a, rows_bench.Column)]
    numbers = [i for i in function["inputs"] if i["kind"] not in ("series", "choice")]
    for at, record in zip(columns, numbers):
        kept = case.arguments[at]
        for bad in hostile_numbers(record):
            column = np.ctypeslib.as_array((ctypes.c_double * rows_bench.ROWS).from_address(kept.data)).copy()
            column[1::2] = bad
            case.arguments[at] = rows_bench.Column(column.ctypes.data, 1)
            took = rows_bench.least(run, 3)
            if took > 1.3 * good:
                took = rows_bench.least(run, 15)
            refused = run()[1].refused > 0
            yield took / good, function["name"], record["name"], bad, good / rows_bench.ROWS * 1e9, refused
        case.arguments[at] = kept


def main():
    library = ctypes.CDLL(sys.argv[1])
    with open(sys.argv[2], encoding="utf-8") as file:
        functions = json.load(file)["functions"]
    measured = []
    tried = 0
    for function in functions:
        if hasattr(library, f"cutwater_{function['name']}_rows") and any(i["kind"] not in ("series", "choice") for i in function["inputs"]):
            measured += ratios(function, library)
            tried += 1
    measured.sort(reverse=True)
    print(f"{tried} functions, {len(measured)} columns")
    for title, refused in (("with refused rows", True), ("with rows at an end, all answered", False)):
        worst = {}
        for line in measured:
            if line[5] == refused:
                worst.setdefault(line[1], line)  # the list is sorted
        print(title)
        for ratio, name, record, bad, nanoseconds, _ in list(worst.values())[:15]:
            print(f"{ratio:6.2f}  {name} {record} = {bad:g}   good rows {nanoseconds:.1f} ns each")


if __name__ == "__main__":
    main()
