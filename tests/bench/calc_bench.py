"""100,000 cells recalculated on load: the add-in's function against the same relation typed natively. Not a test.

usage: calc_bench.py ADDIN.oxt
"""
import os
import subprocess
import sys
import tempfile
import time
import zipfile

ROWS = 100_000
NATIVE = "of:=([.A{0}]-[.B{0}])*100000/([.C{0}]*9.80665)+[.D{0}]-[.E{0}]"
ADDIN = "of:=ORG.CUTWATER.CALC.NPSH_AVAILABLE([.A{0}];[.B{0}];[.C{0}];[.D{0}];[.E{0}])"
HEAD = ('<?xml version="1.0" encoding="UTF-8"?><office:document xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" '
        'xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" xmlns:of="urn:oasis:names:tc:opendocument:xmlns:of:1.2" office:version="1.2" '
        'office:mimetype="application/vnd.oasis.opendocument.spreadsheet"><office:body><office:spreadsheet><table:table table:name="S">')
TAIL = "</table:table></office:spreadsheet></office:body></office:document>"


def sheet(path, formula):
    with open(path, "w", encoding="utf-8") as file:
        file.write(HEAD)
        for row in range(1, ROWS + 1):
            numbers = (1 + row * 1e-6, 0.02, 998, row % 7, 0.5)
            cells = "".join(f'<table:table-cell office:value-type="float" office:value="{x}"/>' for x in numbers)
            last = f'<table:table-cell table:formula="{formula.format(row)}"/>' if formula else ""
            file.write(f"<table:table-row>{cells}{last}</table:table-row>")
        file.write(TAIL)


def seconds(folder, path):
    start = time.monotonic()
    subprocess.run(["soffice", "--headless", f"-env:UserInstallation=file://{folder}/profile", f"-env:BUNDLED_EXTENSIONS=file://{folder}/extensions",
                    "--convert-to", "csv", "--outdir", folder, path], check=True, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    return time.monotonic() - start


with tempfile.TemporaryDirectory() as folder:
    with zipfile.ZipFile(sys.argv[1]) as addin:
        addin.extractall(os.path.join(folder, "extensions", "cutwater.oxt"))
    times = {}
    for name, formula in (("plain", None), ("native", NATIVE), ("cutwater", ADDIN)):
        path = os.path.join(folder, name + ".fods")
        sheet(path, formula)
        seconds(folder, path)  # the first load makes the profile, or fills the file cache
        times[name] = min(seconds(folder, path) for _ in range(3))
        with open(os.path.join(folder, name + ".csv"), encoding="utf-8") as file:
            last = file.read().splitlines()[-1]
        print(f"{name:10} {times[name]:6.2f} s to load, recalculate and write; last row {last}")
    native, ours = times["native"] - times["plain"], times["cutwater"] - times["plain"]
    print(f"a cell above plain values: cutwater {ours / ROWS * 1e6:.2f} us, native {native / ROWS * 1e6:.2f} us, ratio {ours / native:.2f}")
