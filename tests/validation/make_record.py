"""Makes the validation record from the golden files and what their run measured.

usage: make_record.py SOURCE CATALOGUE_JSON DEVIATIONS LIBRARY OUT [--commit | --compare]

--commit writes the pages to SOURCE/docs/validation as well, --compare tells where those there are another's.
"""
import datetime
import hashlib
import os
import pathlib
import platform
import shutil
import subprocess
import sys

source, catalogue, deviations, library, out = map(pathlib.Path, sys.argv[1:6])
os.environ["CUTWATER_SOURCE"] = str(source)
sys.path.insert(0, str(source / "tests" / "support"))

import golden  # noqa: E402
import pages  # noqa: E402
import pdf  # noqa: E402
import record  # noqa: E402


def revision():
    try:
        asked = subprocess.run(["git", "-C", source, "describe", "--always", "--dirty", "--abbrev=12"], capture_output=True, text=True)
    except FileNotFoundError:
        return "not told: git is not on this machine"
    return asked.stdout.strip() or "not under version control"


def identity(made):
    return [("version", made.version), ("compiler", made.compiler), ("date", datetime.date.today().isoformat()),
            ("revision", revision()), ("machine", f"{platform.system()} {platform.machine()}"),
            ("library tried", library.name), ("its SHA-256", hashlib.sha256(library.read_bytes()).hexdigest())]


def stale(texts):
    folder = source / "docs" / "validation"
    there = {path.name: path.read_text(encoding="utf-8") for path in folder.glob("*.md")}
    return sorted(name for name in texts.keys() | there.keys() if texts.get(name) != there.get(name))


def missing(text, made):
    """Functions that a text of the record does not have."""
    return [f.name for f in made.functions if f.name not in text]


made = record.gather(catalogue.read_text(encoding="utf-8"), *record.measured(deviations), list(golden.cases()),
                     golden.arguments_against_witnesses())
texts = pages.pages(made)
folders = [out] + [source / "docs" / "validation"] * ("--commit" in sys.argv)
for folder in folders:
    folder.mkdir(parents=True, exist_ok=True)
    for page in folder.glob("*.md"):
        page.unlink()
    for name, text in texts.items():
        (folder / name).write_text(text, encoding="utf-8")
pdf.write(out / "validation.pdf", made, identity(made))
for fault in made.faults:
    print(fault)
print(f"{made.cases()} checks of {len(made.functions)} functions in {out / 'validation.pdf'}")
if made.faults:
    sys.exit(1)
lost = missing("".join(texts.values()), made)
if shutil.which("pdftotext"):
    read_back = subprocess.run(["pdftotext", "-layout", out / "validation.pdf", "-"], check=True, capture_output=True, text=True)
    lost += missing(read_back.stdout, made)
if lost:
    sys.exit("Lost on the way to the pages or the PDF: " + " ".join(lost))
if "--compare" in sys.argv and stale(texts):
    sys.exit("Not what the golden files say; run `cmake --build BUILD --target validation` and commit: " + " ".join(stale(texts)))
