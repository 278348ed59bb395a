#!/usr/bin/env python3
"""A workbook as .xlsx, for Excel with cutwater.xll and for Calc with cutwater.oxt alike; and its calls by bare or by full names.

    as_xlsx.py WORKBOOK.fods TARGET.xlsx     by LibreOffice, with the add-in of build/ (or --addin FILE.oxt)
    as_xlsx.py --full FILE.xlsx              NPSH_AVAILABLE(...), as typed in Excel, becomes ORG.CUTWATER.CALC.NPSH_AVAILABLE(...)
    as_xlsx.py --bare FILE.xlsx              and back

Calc knows the functions in an .xlsx by their full names only; Excel knows them by both. Only formulas are changed, nothing else.
"""
import argparse
import json
import os
import pathlib
import re
import shutil
import subprocess
import sys
import tempfile
import zipfile

ROOT = pathlib.Path(__file__).resolve().parents[2]
PREFIX = "ORG.CUTWATER.CALC."
# Where formulas stand in the parts of an .xlsx: cells, conditional formats, choices, names.
FORMULA = re.compile(r"(<(?:x14:|xm:)?(f|formula|formula1|formula2|definedName)(?: [^>]*[^/>])?>)(.*?)(</(?:x14:|xm:)?\2>)", re.S)
TEXT = re.compile(r'("(?:[^"]|"")*"|&quot;.*?&quot;)')


def names(catalogue):
    known = json.loads(catalogue.read_text(encoding="utf-8"))
    return {entry["name"].upper() for kind in ("functions", "questions") for entry in known[kind]}


def renamed(formula, known, full):
    """Every call outside of a text; a name that is none of ours stays."""
    def one(call):
        if call[2] not in known:
            return call[0]
        return (PREFIX if full else "") + call[2] + "("

    parts = TEXT.split(formula)
    for i in range(0, len(parts), 2):
        parts[i] = re.sub(r"(?<![A-Za-z0-9_.])((?:ORG\.CUTWATER\.CALC\.)?)([A-Z][A-Z0-9_]*)\(", one, parts[i])
    return "".join(parts)


def rename(file, known, full):
    """How many formulas were changed."""
    changed = 0

    def mend(found):
        nonlocal changed
        text = renamed(found[3], known, full)
        changed += text != found[3]
        return found[1] + text + found[4]

    made = file.with_suffix(".part")
    with zipfile.ZipFile(file) as old, zipfile.ZipFile(made, "w", zipfile.ZIP_DEFLATED) as new:
        for part in old.infolist():
            data = old.read(part)
            if part.filename == "xl/workbook.xml" or part.filename.startswith("xl/worksheets/sheet"):
                data = FORMULA.sub(mend, data.decode("utf-8")).encode("utf-8")
            new.writestr(part, data)
    os.replace(made, file)
    return changed


def convert(source, target, addin, office):
    with tempfile.TemporaryDirectory() as folder:
        folder = pathlib.Path(folder)
        zipfile.ZipFile(addin).extractall(folder / "extensions" / "cutwater.oxt")
        shutil.copy(source, folder / f"{target.stem}{source.suffix}")
        subprocess.run(
            [office, "--headless", "--norestore", f"-env:UserInstallation=file://{folder}/profile",
             f"-env:BUNDLED_EXTENSIONS=file://{folder}/extensions", "--convert-to", "xlsx:Calc MS Excel 2007 XML", "--outdir",
             str(folder / "made"), str(folder / f"{target.stem}{source.suffix}")],
            check=True, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL, timeout=600)
        made = folder / "made" / f"{target.stem}.xlsx"
        if not made.exists():
            sys.exit(f"LibreOffice made no {target.name}")
        shutil.move(made, target)


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("files", nargs="+", type=pathlib.Path)
    parser.add_argument("--full", action="store_true")
    parser.add_argument("--bare", action="store_true")
    parser.add_argument("--addin", type=pathlib.Path, default=ROOT / "build/cutwater.oxt")
    parser.add_argument("--catalogue", type=pathlib.Path, default=ROOT / "build/generated/catalogue.json")
    parser.add_argument("--office", default="soffice")
    given = parser.parse_args()
    if given.full or given.bare:
        if given.full and given.bare:
            parser.error("--full or --bare, not both")
        for file in given.files:
            print(f"{file}: {rename(file, names(given.catalogue), given.full)} formulas changed")
    elif len(given.files) != 2:
        parser.error("a workbook and the .xlsx to make of it")
    else:
        convert(*given.files, given.addin, given.office)


if __name__ == "__main__":
    main()
