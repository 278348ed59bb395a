#!/usr/bin/env python3
"""Pump-hours a second of the audits and of the same written by hand, each the least time of several runs. Run it on a quiet machine; the figures
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


def least(jobs, rounds):
    """{name: least seconds}. All are run in turn, round by round, so that what disturbs one disturbs the others too."""
    took = {name: [] for name in jobs}
    for _ in range(rounds):
        for name, work in jobs.items():
            begun = time.perf_counter()
            work()
            took[name].append(time.perf_counter() - begun)
    return {name: min(seconds) for name, seconds in took.items()}


def tell(took, rows):
    for name, seconds in took.items():
        print(f"{name:40} {rows / seconds:10.0f} pump-hours a second", flush=True)


def in_one_process(folder, register):
    """Rows alone, and rows with their sums."""
    columns = in_numpy.columns_of(folder, 0)
    readings = [{name: values[i] for name, values in columns.items()} for i in range(len(register))]
    jobs = {}
    for name, values_of in (("NumPy by hand", by_hand.row_values), ("array form", in_numpy.row_values)):
        jobs[f"{name}, rows alone"] = lambda f=values_of: [f(*pair) for pair in zip(register, readings)]
        jobs[f"{name}, rows and sums"] = lambda f=values_of: in_numpy.block_sums(folder, 0, register, f)
    return jobs


def in_the_database(connection, pumps, hours):
    jobs = {}
    for name, sums in (("SQL by hand", by_hand.statement()), ("PostgreSQL", in_postgresql.SUMS)):
        for workers in (0, 1, 2):
            jobs[f"{name}, {workers} workers more"] = lambda w=workers, s=sums: in_postgresql.audit(connection, pumps, hours, w, s)
    return jobs


def main():
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--pumps", type=int, default=20)
    parser.add_argument("--hours", type=int, default=8760)
    parser.add_argument("--times", type=int, default=20, help="how many times that for Dask")
    parser.add_argument("--rounds", type=int, default=10)
    parser.add_argument("--build", default=os.environ.get("CUTWATER_BUILD", "build"))
    given = parser.parse_args()
    rows = given.pumps * given.hours
    with tempfile.TemporaryDirectory() as folder:
        generator.make(folder, given.pumps, given.hours, 1, given.pumps)
        register = audit_fleet.register_of(folder)
        tell(least(in_one_process(folder, register), given.rounds), rows)
        connection = in_postgresql.start(HERE.parents[1], pathlib.Path(given.build).resolve())
        in_postgresql.load(connection, folder, register, given.pumps)
        tell(least(in_the_database(connection, given.pumps, given.hours), given.rounds), rows)
    with tempfile.TemporaryDirectory() as folder:
        pumps = given.pumps * given.times
        generator.make(folder, pumps, given.hours, 1, 20)
        register = audit_fleet.register_of(folder)
        for workers in (1, 2):
            runs = [in_dask.audit(folder, register, 20, workers, say=lambda line: None) for _ in range(3)]
            took, memory = min(run[1] for run in runs), max(run[2] for run in runs)
            tell({f"Dask, {workers} processes, {memory} MiB each at most": took}, pumps * given.hours)


if __name__ == "__main__":
    main()
