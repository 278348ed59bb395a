#!/usr/bin/env python3
"""How long a headless Calc takes to recalculate a plant of fifty pumps, against as many native formulas; of several runs the least.

    CUTWATER_OXT=build/cutwater.oxt CUTWATER_SOFFICE=$(command -v soffice) tests/doors/calc/measure_workbook.py
"""
import copy
import json
import os
import pathlib
import re
import subprocess
import sys
import tempfile

HERE = pathlib.Path(__file__).resolve().parent
PLANT = HERE.parents[2] / "examples/plant"
os.environ.setdefault("CUTWATER_OXT", str(HERE.parents[2] / "build/cutwater.oxt"))
os.environ.setdefault("CUTWATER_SOFFICE", "soffice")
sys.path.insert(0, str(HERE))

from driver import Session  # noqa: E402  it reads where the add-in and the office are
from sheet import Formula, flat  # noqa: E402

PUMPS, RUNS, NATIVE_COLUMNS = 50, 5, 40


def least(book, work):
    session = Session(book, work)
    session.times("all", RUNS)
    return min(int(shown.text) for shown in session.run().values()) / 1000


def main():
    work = pathlib.Path(tempfile.mkdtemp())
    plant = json.loads((PLANT / "plant.json").read_text(encoding="utf-8"))
    models = plant["pumps"]
    plant["pumps"] = [
        copy.deepcopy(models[index % len(models)]) | {"tag": f"PU-{index + 1:02}"} for index in range(PUMPS)
    ]
    (work / "fifty.json").write_text(json.dumps(plant), encoding="utf-8")
    book = work / "fifty.fods"
    subprocess.run(
        [
            sys.executable,
            PLANT / "make_workbook.py",
            "--data",
            work / "fifty.json",
            "--columns",
            str(PUMPS),
            "--out",
            book,
        ],
        check=True,
    )
    text = book.read_text(encoding="utf-8")
    formulas = re.findall(r"""table:formula=("[^"]*"|'[^']*')""", text)
    asking = sum("ORG.CUTWATER.CALC." in one for one in formulas)
    native = 'IF([.A{0}]="";"";SQRT([.A{0}]*9.80665*[.B{0}])/(1+[.C{0}]^2))'
    rows = [
        [10.0 + row, 2.0, 0.5] + [Formula(native.format(row + 1))] * NATIVE_COLUMNS
        for row in range(-(-len(formulas) // NATIVE_COLUMNS))
    ]
    (work / "native.fods").write_text(flat({"Native": rows}, ""), encoding="utf-8")
    ours, theirs = least(book, work / "fifty"), least(work / "native.fods", work / "native")
    calls = sum(one.count("ORG.CUTWATER.CALC.") for one in formulas)
    print(
        f"{PUMPS} pumps: {len(formulas)} formulas, {asking} of them with calls of cutwater ({calls} calls are written): {ours:.3f} s to calculate all\n"
        f"as many native formulas: {theirs:.3f} s; ratio {ours / theirs:.1f}"
    )
    print(f"file: {book.stat().st_size / 1e6:.1f} MB")


if __name__ == "__main__":
    main()
