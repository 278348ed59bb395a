"""Writes workbooks of formulas, has a headless Calc compute them with the add-in, and reads what came out."""
import os
import pathlib
import shutil
import signal
import struct
import subprocess
import zipfile
from dataclasses import dataclass
from xml.etree import ElementTree
from xml.sax.saxutils import escape, quoteattr

HERE = pathlib.Path(__file__).parent
OXT = pathlib.Path(os.environ["CUTWATER_OXT"])
SOFFICE = os.environ["CUTWATER_SOFFICE"]
NAMESPACES = {
    "office": "urn:oasis:names:tc:opendocument:xmlns:office:1.0",
    "table": "urn:oasis:names:tc:opendocument:xmlns:table:1.0",
    "text": "urn:oasis:names:tc:opendocument:xmlns:text:1.0",
    "of": "urn:oasis:names:tc:opendocument:xmlns:of:1.2",
    "ooo": "http://openoffice.org/2004/office",
    "script": "urn:oasis:names:tc:opendocument:xmlns:script:1.0",
    "calcext": "urn:org:documentfoundation:names:experimental:calc:xmlns:calcext:1.0",
}
PREFIX = "ORG.CUTWATER.CALC."


@dataclass
class Formula:
    """A formula; over a block of cells when rows or columns is not 0."""
    text: str
    rows: int = 0
    columns: int = 0


@dataclass
class Cell:
    kind: str            # empty, number, text, error
    number: float = 0.0  # to the last bit
    text: str = ""


def column_name(column):
    name = ""
    while column >= 0:
        name = chr(ord("A") + column % 26) + name
        column = column // 26 - 1
    return name


def reference(sheet, row, column, last_row=None, last_column=None):
    """[Sheet.A1], or [Sheet.A1:.C1]; from 0."""
    first = f"{sheet}.{column_name(column)}{row + 1}"
    if last_row is None:
        return f"[{first}]"
    return f"[{first}:.{column_name(last_column)}{last_row + 1}]"


def call(function, *arguments):
    return f"{PREFIX}{function.upper()}({';'.join(arguments)})"


def quoted(text):
    return '"' + text.replace('"', '""') + '"'


def _cell(value):
    if value is None:
        return "<table:table-cell/>"
    if isinstance(value, Formula):
        span = (f' table:number-matrix-rows-spanned="{value.rows}" table:number-matrix-columns-spanned="{value.columns}"'
                if value.rows else "")
        return f"<table:table-cell{span} table:formula={quoteattr('of:=' + value.text)}/>"
    if isinstance(value, bool):
        return f'<table:table-cell office:value-type="boolean" office:boolean-value="{str(value).lower()}"/>'
    if isinstance(value, (int, float)):
        return f'<table:table-cell office:value-type="float" office:value="{value!r}"/>'
    return f'<table:table-cell office:value-type="string"><text:p>{escape(value)}</text:p></table:table-cell>'


def flat(sheets, basic):
    names = " ".join(f'xmlns:{short}="{long}"' for short, long in NAMESPACES.items())
    tables = ""
    for name, rows in sheets.items():
        tables += f'<table:table table:name="{name}">'
        for row in rows:
            tables += "<table:table-row>" + ("".join(map(_cell, row)) or "<table:table-cell/>") + "</table:table-row>"
        tables += "</table:table>"
    scripts = ('<office:scripts><office:script script:language="ooo:Basic"><ooo:libraries><ooo:library-embedded ooo:name="Standard">'
               f'<ooo:module ooo:name="Module1"><ooo:source-code>{escape(basic)}</ooo:source-code></ooo:module>'
               "</ooo:library-embedded></ooo:libraries></office:script></office:scripts>" if basic else "")
    return (f'<?xml version="1.0" encoding="UTF-8"?><office:document {names} office:version="1.3" '
            f'office:mimetype="application/vnd.oasis.opendocument.spreadsheet">{scripts}<office:body><office:spreadsheet>{tables}'
            "</office:spreadsheet></office:body></office:document>")


def run_alone(command, seconds=540, **options):
    """A process with children of its own; all of them end with it."""
    process = subprocess.Popen(command, stdout=subprocess.PIPE, stderr=subprocess.STDOUT, encoding="utf-8", errors="replace",
                               start_new_session=True, **options)
    try:
        printed, _ = process.communicate(timeout=seconds)
    except subprocess.TimeoutExpired:
        os.killpg(process.pid, signal.SIGKILL)
        process.communicate()
        raise
    return process.returncode, printed


def _attribute(element, name):
    space, local = name.split(":")
    return element.get(f"{{{NAMESPACES[space]}}}{local}")


def _read(target):
    """{sheet: rows of cells}; texts and errors from the saved workbook, numbers from the file beside it."""
    numbers = pathlib.Path(f"{target}.bin").read_bytes()
    content = ElementTree.fromstring(zipfile.ZipFile(target).read("content.xml"))
    sheets, at = {}, 0
    for table in content.iter(f"{{{NAMESPACES['table']}}}table"):
        height, width = struct.unpack_from("<ii", numbers, at)
        values = struct.unpack_from(f"<{height * width}d", numbers, at + 8)
        at += 8 + 8 * height * width
        grid = []
        for row in table.iter(f"{{{NAMESPACES['table']}}}table-row"):
            cells = []
            for element in row:
                copies = int(_attribute(element, "table:number-columns-repeated") or 1)
                cells += [element] * min(copies, width - len(cells))
            for _ in range(min(int(_attribute(row, "table:number-rows-repeated") or 1), height - len(grid))):
                r = len(grid)
                grid.append([_read_cell(e, values[r * width + c]) for c, e in enumerate(cells)])
        sheets[_attribute(table, "table:name")] = grid
    return sheets


def _read_cell(element, number):
    text = "\n".join("".join(p.itertext()) for p in element.findall(f"{{{NAMESPACES['text']}}}p"))
    if _attribute(element, "calcext:value-type") == "error":
        return Cell("error", 0.0, text)
    kind = _attribute(element, "office:value-type")
    if kind is None:  # a formula's empty text is stored without a kind
        return Cell("text" if _attribute(element, "table:formula") else "empty")
    if kind == "string":
        return Cell("text", 0.0, _attribute(element, "office:string-value") or text)
    return Cell("number", number, text)


def bundle(folder):
    """The add-in and the runner, unpacked as an office finds its bundled extensions."""
    shutil.rmtree(folder, ignore_errors=True)
    zipfile.ZipFile(OXT).extractall(folder / "cutwater.oxt")
    shutil.copytree(HERE / "runner", folder / "runner.oxt")


def computed(work, sheets, basic="", macro=""):
    """Sheets as they stand after Calc computed them, in a profile of their own below the folder work."""
    work = pathlib.Path(work)
    shutil.rmtree(work, ignore_errors=True)
    work.mkdir(parents=True)
    bundle(work / "bundled")
    source, target = work / "source.fods", work / "target.ods"
    source.write_text(flat(sheets, basic), encoding="utf-8")
    _, printed = run_alone([SOFFICE, "--headless", "--norestore", f"-env:UserInstallation=file://{work}/profile",
                            f"-env:BUNDLED_EXTENSIONS=file://{work}/bundled",
                            f'macro:///CutwaterRunner.Runner.Run("{source}","{target}","{macro}")'])
    log = pathlib.Path(f"{target}.log")
    if log.exists() or not target.exists():
        raise RuntimeError(f"no workbook came out: {log.read_text() if log.exists() else printed}")
    return _read(target)
