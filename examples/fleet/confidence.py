#!/usr/bin/env python3
"""How far the audit's confidence is borne out: fleets of several seeds, audited in NumPy alone, what was put in against what was found.

Prints, a fleet a line, faults put in, found for what they are, missed or taken for another, and sound pumps taken for faulty; then how often
the findings of each degree of confidence were right. Some minutes; PYTHONPATH=build/python.
"""
import argparse
import json
import pathlib
import sys
import tempfile

import numpy as np

HERE = pathlib.Path(__file__).resolve().parent
sys.path.insert(0, str(HERE))
import audit_fleet  # noqa: E402
import diagnosis  # noqa: E402
import generator  # noqa: E402
import in_numpy  # noqa: E402

DEGREES = (0.0, 0.6, 0.7, 0.8, 0.9, 0.95, 1.0)
BLOCK = 50


def findings_of(seed, given):
    """(findings, {pump: fault put in})."""
    with tempfile.TemporaryDirectory() as folder:
        blocks = generator.make(folder, given.pumps, given.hours, seed, BLOCK, given.faulty, given.sizes)
        register = audit_fleet.register_of(folder)
        sums = in_numpy.joined([in_numpy.block_sums(folder, i, register[i * BLOCK:(i + 1) * BLOCK]) for i in range(blocks)])
        faults = json.loads(pathlib.Path(folder, "faults.json").read_text(encoding="utf-8"))
    return diagnosis.diagnose(sums, register, given.hours), faults


def line(name, right, put_in, accused, sound, kinds):
    by_kind = ", ".join(f"{kind} {a} of {b}" for kind, (a, b) in sorted(kinds.items()))
    return f"{name:>10}: {put_in} faults, {right} found, {put_in - right} not; {sound} sound pumps, {accused} accused ({by_kind})"


def main():
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--seeds", type=int, nargs="+", default=[201, 202, 203, 204, 205, 206])
    parser.add_argument("--pumps", type=int, default=500)
    parser.add_argument("--hours", type=int, default=2000)
    parser.add_argument("--faulty", type=float, default=generator.FAULTY)
    parser.add_argument("--sizes", type=float, nargs=2, default=generator.SIZES)
    given = parser.parse_args()
    total, kinds = np.zeros(4, dtype=int), {}
    said, right_of, count = (np.zeros(len(DEGREES) - 1) for _ in range(3))
    for seed in given.seeds:
        findings, faults = findings_of(seed, given)
        right, put_in, accused, by_kind = diagnosis.found(findings, faults)
        print(line(f"seed {seed}", right, put_in, accused, given.pumps - put_in, by_kind), flush=True)
        total += (right, put_in, accused, given.pumps - put_in)
        for kind, pair in by_kind.items():
            kinds[kind] = np.add(kinds.get(kind, (0, 0)), pair)
        for finding in findings:
            degree = min(np.searchsorted(DEGREES, finding["confidence"], side="right"), len(DEGREES) - 1) - 1
            count[degree] += 1
            said[degree] += finding["confidence"]
            right_of[degree] += finding["fault"] == faults.get(str(finding["pump"]), [diagnosis.SOUND])[0]
    print(line("all", *total, kinds))
    for degree in np.flatnonzero(count):
        print(f"{DEGREES[degree]:5.0%} to {DEGREES[degree + 1]:4.0%}: {count[degree]:5.0f} findings, said {said[degree] / count[degree]:6.1%}, "
              f"right {right_of[degree] / count[degree]:6.1%}")


if __name__ == "__main__":
    main()
