#!/usr/bin/env python3
"""Audits every pump of the worked plant from Python: a call for all pumps at once wherever there is an array form.

    python3 examples/audit.py                             the table, the findings, and the pictures in out/audit
    python3 examples/audit.py --workbook out/plant.ods    the same, held against the recalculated workbook

Needs the package cutwater (built in a tree but not installed: PYTHONPATH=build/python), NumPy and Matplotlib.
The verdicts, their limits and their order are those of the workbook's register.
"""
import argparse
import json
import pathlib
import sys

HERE = pathlib.Path(__file__).resolve().parent
sys.path[:0] = [str(HERE), str(HERE / "plant")]

from audit import checks, pictures, tables, workbook  # noqa: E402  the packages lie beside this file


def main():
    parser = argparse.ArgumentParser(description="Audits the pumps of a data file as examples/plant/README.md describes it.")
    parser.add_argument("--data", type=pathlib.Path, default=HERE / "plant" / "plant.json")
    parser.add_argument("--out", type=pathlib.Path, default=HERE.parent / "out" / "audit", help="folder for the pictures")
    parser.add_argument("--workbook", type=pathlib.Path, help="a recalculated plant.ods to hold the results against")
    parser.add_argument("--no-pictures", action="store_true")
    given = parser.parse_args()

    plant = json.loads(given.data.read_text(encoding="utf-8"))
    found = checks.run(plant)
    print(f"{plant['works']}, {plant['unit']}: {len(plant['pumps'])} pumps\n")
    for title, text in (("Register, gravest first", tables.register(found)), ("Checks not met", tables.findings(found)),
                        ("Refused", tables.refusals(found)), ("Cautions of the functions behind the findings", tables.cautions(found))):
        print(f"{title}\n{'=' * len(title)}\n{text}\n")
    if not given.no_pictures:
        made = pictures.draw(plant, found, given.out)
        print(f"{len(made)} pictures in {given.out}")
    if given.workbook:
        compared, differing = workbook.compare(found, given.workbook)
        print(*differing, f"Against {given.workbook}: {compared} results compared, {len(differing)} differ", sep="\n")
        return 1 if differing or not compared else 0
    return 0


if __name__ == "__main__":
    sys.exit(main())
