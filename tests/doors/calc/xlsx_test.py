"""The example's workbook and the blank one as .xlsx: loaded and calculated anew, they show what the .fods shows, cell by cell."""
import importlib.util
import os
import pathlib
import shutil
import subprocess
import sys
import unittest
import zipfile
from xml.etree import ElementTree

from driver import Session
from sheet import NAMESPACES, OXT, SOFFICE, _attribute

SOURCE = pathlib.Path(os.environ["CUTWATER_SOURCE"])
WORK = pathlib.Path(os.environ["CUTWATER_WORK"], "xlsx")
PLANT = SOURCE / "examples/plant"
spec = importlib.util.spec_from_file_location("as_xlsx", PLANT / "as_xlsx.py")
as_xlsx = importlib.util.module_from_spec(spec)
spec.loader.exec_module(as_xlsx)


def elements(root, name):
    space, local = name.split(":")
    return list(root.iter(f"{{{NAMESPACES[space]}}}{local}"))


def saved(book, name):
    """The content of a workbook after everything in it was calculated."""
    session = Session(book, WORK / name)
    session.save(WORK / f"{name}.ods")
    session.run()
    return ElementTree.fromstring(zipfile.ZipFile(WORK / f"{name}.ods").read("content.xml"))


def shown(table):
    """{(row, column): what the cell holds}, those that hold something."""
    cells, row_at = {}, 0
    for row in table.iter(f"{{{NAMESPACES['table']}}}table-row"):
        copies = int(_attribute(row, "table:number-rows-repeated") or 1)
        column = 0
        for cell in row:
            wide = int(_attribute(cell, "table:number-columns-repeated") or 1)
            kind = _attribute(cell, "calcext:value-type") or _attribute(cell, "office:value-type")
            text = "\n".join("".join(p.itertext()) for p in cell.findall(f"{{{NAMESPACES['text']}}}p"))
            number = kind in ("float", "percentage", "currency", "boolean")
            if kind == "boolean":  # 0 and FALSE are one number, shown in two ways
                value = "1" if _attribute(cell, "office:boolean-value") == "true" else "0"
            else:
                value = _attribute(cell, "office:value") if number else text
            if kind or text or _attribute(cell, "table:formula"):
                for r in range(copies):
                    for c in range(wide):
                        cells[row_at + r, column + c] = (number, kind == "error", value)
            column += wide
        row_at += copies
    return cells


class Xlsx(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        shutil.rmtree(WORK, ignore_errors=True)
        WORK.mkdir(parents=True)
        subprocess.run([sys.executable, str(PLANT / "make_workbook.py"), "--blank", str(WORK / "blank.fods"), "--columns", "6"], check=True)
        shutil.copy(PLANT / "plant.fods", WORK / "plant.fods")
        cls.books = {}
        for name in ("plant", "blank"):
            as_xlsx.convert(WORK / f"{name}.fods", WORK / f"{name}.xlsx", OXT, SOFFICE)
            cls.books[name] = [saved(WORK / f"{name}.{kind}", f"{name}-{kind}") for kind in ("fods", "xlsx")]

    def test_every_cell(self):
        for name, (first, second) in self.books.items():
            tables = [{_attribute(t, "table:name"): shown(t) for t in elements(root, "table:table")} for root in (first, second)]
            self.assertEqual(list(tables[0]), list(tables[1]))
            counted = 0
            for sheet, cells in tables[0].items():
                differing = []
                for place, (number, error, value) in cells.items():
                    other = tables[1][sheet].get(place, (False, False, ""))
                    same = (number, error) == other[:2] and (float(value) == float(other[2]) if number else value == other[2])
                    if not same and (number or error or value):
                        differing.append((place, (number, error, value), other))
                counted += len(cells)
                self.assertEqual(differing[:5], [], f"{name}, {sheet}: {len(differing)} of {len(cells)} cells differ")
            self.assertGreater(counted, 3000 if name == "plant" else 500)

    def test_charts_names_formats_and_print_areas(self):
        for name, (first, second) in self.books.items():
            charts = [sum(e.tag.endswith("}object") for e in root.iter()) for root in (first, second)]
            self.assertEqual(*charts, name)
            named = [{_attribute(e, "table:name"): _attribute(e, "table:cell-range-address") for e in elements(root, "table:named-range")}
                     for root in (first, second)]
            self.assertEqual({key: place for key, place in named[1].items() if key in named[0]}, named[0], name)
            choices = [len(elements(root, "table:content-validation")) for root in (first, second)]
            self.assertGreaterEqual(choices[1], choices[0], name)
            for attribute in ("table:print-ranges", "table:name"):
                self.assertEqual(*([_attribute(t, attribute) for t in elements(root, "table:table")] for root in (first, second)), name)
            formats = [len(elements(root, "calcext:conditional-format")) for root in (first, second)]
            self.assertGreaterEqual(formats[1], formats[0], name)

    def test_names_of_calls_go_there_and_back(self):
        known = as_xlsx.names(pathlib.Path(os.environ["CUTWATER_CATALOGUE"]))
        file = WORK / "there.xlsx"
        shutil.copy(WORK / "plant.xlsx", file)
        before = {n: zipfile.ZipFile(file).read(n) for n in zipfile.ZipFile(file).namelist()}
        changed = as_xlsx.rename(file, known, full=False)
        self.assertGreater(changed, 1000)
        bare = b"".join(zipfile.ZipFile(file).read(n) for n in zipfile.ZipFile(file).namelist() if n.startswith("xl/worksheets/sheet"))
        self.assertNotIn(b"<f aca=\"false\">ORG.CUTWATER", bare)
        self.assertEqual(as_xlsx.rename(file, known, full=True), changed)
        after = {n: zipfile.ZipFile(file).read(n) for n in zipfile.ZipFile(file).namelist()}
        self.assertEqual(before, after)

    def test_texts_in_formulas_stay(self):
        known = {"NPSH_AVAILABLE"}
        self.assertEqual(as_xlsx.renamed('NPSH_AVAILABLE(1,"NPSH_AVAILABLE(")+MY_NPSH_AVAILABLE(2)', known, True),
                         'ORG.CUTWATER.CALC.NPSH_AVAILABLE(1,"NPSH_AVAILABLE(")+MY_NPSH_AVAILABLE(2)')


if __name__ == "__main__":
    unittest.main()
