#!/usr/bin/env python3
"""Makes the fleet, audits it in PostgreSQL and on a Dask cluster, holds the two against each other bit by bit, and prints which pumps to
look at first. Ends with 1 when the two differ or the faults put in are not found."""
import argparse
import functools
import json
import os
import pathlib
import sys
import time

HERE = pathlib.Path(__file__).resolve().parent
sys.path.insert(0, str(HERE))
import cutwater  # noqa: E402
import diagnosis  # noqa: E402
import generator  # noqa: E402
import in_dask  # noqa: E402
import in_postgresql  # noqa: E402


def same(one, other):
    """The fields in which two audits differ in any bit."""
    return [name for name in one if one[name].tobytes() != other[name].tobytes()]


def register_of(folder):
    """The register, with the preferred region of each pump."""
    register = json.loads(pathlib.Path(folder, "register.json").read_text(encoding="utf-8"))
    for pump in register:
        best = pump["best_flow"]
        pump["preferred"] = cutwater.operating_region(best, best, pump["specific_speed"], 0, 10 * best)[1:]
    return register


def main():
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--pumps", type=int, default=60)
    parser.add_argument("--hours", type=int, default=8760)
    parser.add_argument("--seed", type=int, default=20250101)
    parser.add_argument("--block", type=int, default=10, help="pumps in a block of columns")
    parser.add_argument("--workers", type=int, default=2)
    parser.add_argument("--only", choices=("postgresql", "dask"))
    parser.add_argument("--kill", action="store_true", help="kill a worker in the midst of its work, of the server and of the cluster")
    parser.add_argument("--faulty", type=float, default=generator.FAULTY, help="the part of the pumps that have a fault")
    parser.add_argument("--sizes", type=float, nargs=2, default=generator.SIZES, help="the smallest and the largest fault")
    parser.add_argument("--folder", default="out/fleet")
    parser.add_argument("--build", default=os.environ.get("CUTWATER_BUILD", "build"))
    given = parser.parse_args()
    hours = given.pumps * given.hours
    begun = time.perf_counter()
    generator.make(given.folder, given.pumps, given.hours, given.seed, given.block, given.faulty, given.sizes)
    print(f"== {given.pumps} pumps, {given.hours} hours each: {hours} pump-hours ({time.perf_counter() - begun:.1f} s to make them)", flush=True)
    register = register_of(given.folder)
    made = {}
    if given.only != "dask":
        connection = in_postgresql.start(HERE.parents[1], pathlib.Path(given.build).resolve())
        begun = time.perf_counter()
        in_postgresql.load(connection, given.folder, register, given.block)
        print(f"== PostgreSQL: loaded in {time.perf_counter() - begun:.1f} s", flush=True)
        made["PostgreSQL"], took = in_postgresql.audit_surely(connection, given.folder, register, given.block, given.hours, given.workers, given.kill,
                                                              functools.partial(print, flush=True))
        print(f"   audited in {took:.1f} s, up to {given.workers} parallel workers: {hours / took:.0f} pump-hours a second", flush=True)
    if given.only != "postgresql":
        print(f"== Dask: {given.workers} processes", flush=True)
        say = functools.partial(print, flush=True)
        made["Dask"], took, memory = in_dask.audit(given.folder, register, given.block, given.workers, given.kill, say)
        print(f"   audited in {took:.1f} s, at most {memory} MiB a process: {hours / took:.0f} pump-hours a second", flush=True)
    if len(made) == 2:
        differ = same(*made.values())
        print(f"== The two audits: {'the same to the bit' if not differ else 'DIFFERENT in ' + ', '.join(differ)}")
        if differ:
            return 1
    findings = diagnosis.diagnose(next(iter(made.values())), register, given.hours)
    print("\nWhich pumps to look at first:\n" + diagnosis.table(findings))
    faults = json.loads(pathlib.Path(given.folder, "faults.json").read_text(encoding="utf-8"))
    right, put_in, accused, kinds = diagnosis.found(findings, faults)
    by_kind = ", ".join(f"{kind} {a} of {b}" for kind, (a, b) in sorted(kinds.items()))
    print(f"\nOf {put_in} faults put in, {right} were found for what they are ({by_kind});")
    print(f"of {given.pumps - put_in} sound pumps, {accused} were taken for faulty.")
    return 0 if right >= 0.8 * put_in and accused <= max(1, 0.05 * (given.pumps - put_in)) else 1


if __name__ == "__main__":
    sys.exit(main())
