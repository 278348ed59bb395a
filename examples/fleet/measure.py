#!/usr/bin/env python3
"""Pump-hours a second of the audits and of the same written by hand, each the best of several runs. Run it on a quiet machine; the figures
of record are in docs/benchmarks.md."""
import argparse
import os
import pathlib
import sys
import tempfile
import time

HERE = pathlib.Path(__file__).resolve().parent
sys.path.insert(0, str(HERE))
import audit_fleet  # noqa: E402
import by_hand  # noqa: E402
import generator  # noqa: E402
import in_dask  # noqa: E402
import in_numpy  # noqa: E402
import in_postgresql  # noqa: E402


def best(work, repeat):
    took = []
    for _ in range(repeat):
        begun = time.perf_counter()
        work()
        took.append(time.perf_counter() - begun)
    return min(took)


def main():
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--pumps", type=int, default=40)
    parser.add_argument("--hours", type=int, default=8760)
    parser.add_argument("--times", type=int, default=20, help="how many times that for Dask")
    parser.add_argument("--repeat", type=int, default=5)
    parser.add_argument("--build", default=os.environ.get("CUTWATER_BUILD", "build"))
    given = parser.parse_args()
    with tempfile.TemporaryDirectory() as folder:
        rows = given.pumps * given.hours
        generator.make(folder, given.pumps, given.hours, 1, given.pumps)
        register = audit_fleet.register_of(folder)
        for name, values_of in (("NumPy by hand", by_hand.row_values), ("array form", in_numpy.row_values)):
            took = best(lambda: in_numpy.block_sums(folder, 0, register, values_of), given.repeat)
            columns = in_numpy.columns_of(folder, 0)
            readings = [{column: values[i] for column, values in columns.items()} for i in range(given.pumps)]
            rows_only = best(lambda: [values_of(*pair) for pair in zip(register, readings)], given.repeat)
            print(f"{name:32} {rows / took:10.0f} pump-hours a second; rows without sums {rows_only / rows * 1e9:.0f} ns each", flush=True)
        connection = in_postgresql.start(HERE.parents[1], pathlib.Path(given.build).resolve())
        in_postgresql.load(connection, folder, register, given.pumps)
        for name, sums in (("SQL by hand", by_hand.statement()), ("PostgreSQL", in_postgresql.SUMS)):
            for workers in (0, 1, 2):
                took = min(in_postgresql.audit(connection, given.pumps, given.hours, workers, sums)[1] for _ in range(given.repeat))
                print(f"{name + f', {workers} workers more':32} {rows / took:10.0f} pump-hours a second", flush=True)
    with tempfile.TemporaryDirectory() as folder:
        pumps = given.pumps * given.times
        generator.make(folder, pumps, given.hours, 1, 20)
        register = audit_fleet.register_of(folder)
        for workers in (1, 2):
            runs = [in_dask.audit(folder, register, 20, workers, say=lambda line: None) for _ in range(3)]
            took, memory = min(run[1] for run in runs), max(run[2] for run in runs)
            speed = pumps * given.hours / took
            print(f"{f'Dask, {workers} processes':32} {speed:10.0f} pump-hours a second, {memory} MiB a process at most", flush=True)


if __name__ == "__main__":
    main()
