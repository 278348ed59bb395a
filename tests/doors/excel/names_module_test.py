"""cutwater_names.bas: its text against Visual Basic's limits and the catalogue; run by LibreOffice's Basic in its mode for Visual Basic, its
renaming against the command's. What walks over a workbook by Excel's objects is left out there: OF_EXCEL."""
import importlib.util
import json
import os
import pathlib
import re
import unittest

from sheet import computed

PRODUCTS = pathlib.Path(os.environ["CUTWATER_PRODUCTS"])
SOURCE = pathlib.Path(os.environ["CUTWATER_SOURCE"])
BYTES = (PRODUCTS / "excel/cutwater_names.bas").read_bytes()
TEXT = BYTES.decode("ascii").replace("\r\n", "\n")
JOINED = re.sub(r" _\n\s*", " ", TEXT)
CATALOGUE = json.loads((PRODUCTS / "catalogue.json").read_text(encoding="utf-8"))
NAMES = [record["name"].upper() for kind in ("questions", "functions") for record in CATALOGUE[kind]]
OF_EXCEL = ("CutwaterFullNames", "CutwaterShortNames", "CutwaterRenameAll", "CutwaterRenameSheet", "CutwaterPut")
FULL = "ORG.CUTWATER.CALC."
spec = importlib.util.spec_from_file_location("as_xlsx", SOURCE / "examples/plant/as_xlsx.py")
as_xlsx = importlib.util.module_from_spec(spec)
spec.loader.exec_module(as_xlsx)

FORMULAS = [
    "=NPSH_AVAILABLE(1.013,0.0234,998.2,2,0.5)",
    "=ROUND(2*NPSH_AVAILABLE(A1,B1,C1,D1,E1)+VELOCITY_HEAD(A1,$B$1),2)",
    '=IF(A1="NPSH_AVAILABLE(","say ""VELOCITY_HEAD("" here",VELOCITY_HEAD(1,2))',
    "=MY_NPSH_AVAILABLE(1)+NPSH_AVAILABLE_TOO(1)+X.NPSH_AVAILABLE(1)",
    "=NPSH_AVAILABLE+SUM(1,2)",
    "=SUM('VELOCITY_HEAD(1)'!A1:A3)",
    '=REFUSAL("npsh_available",-1)&WORKING("velocity_head",1,2)',
    "=SUM(",
    '="no end',
    "",
] + [f"={name}(1)" for name in NAMES]
MACRO = """
Sub Fill
    Dim sheet As Object, row As Long, end_ As Long
    Set sheet = ThisComponent.Sheets.getByName("Texts")
    end_ = %d
    For row = 0 To end_ - 1
        sheet.getCellByPosition(1, row).String = CutwaterRenamed(sheet.getCellByPosition(0, row).String, True)
        sheet.getCellByPosition(2, row).String = CutwaterRenamed(sheet.getCellByPosition(1, row).String, False)
    Next
End Sub
"""


class NamesModule(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        basic = re.sub(r"^Attribute.*\n", "", TEXT, flags=re.M)
        for name in OF_EXCEL:
            basic, found = re.subn(rf"^(Public|Private) (Sub|Function) {name}\(.*?^End \2\n", "", basic, flags=re.M | re.S)
            assert found == 1, name
        cls.out = computed(os.environ["CUTWATER_WORK"], {"Texts": [[f, None, None] for f in FORMULAS]},
                           "Option VBASupport 1\n" + basic + MACRO % len(FORMULAS), "Standard.Module1.Fill")["Texts"]

    def test_renames_as_the_command_does(self):
        known = set(NAMES)
        for formula, row in zip(FORMULAS, self.out):
            if "'" not in formula and formula:  # a sheet's name in quotes is more than the command knows
                self.assertEqual(row[1].text, as_xlsx.renamed(formula, known, True))
            self.assertEqual(row[2].text or "", formula)
        by_formula = dict(zip(FORMULAS, self.out))
        self.assertEqual(by_formula["=SUM('VELOCITY_HEAD(1)'!A1:A3)"][1].text, "=SUM('VELOCITY_HEAD(1)'!A1:A3)")
        self.assertEqual(by_formula[FORMULAS[0]][1].text, "=" + FULL + FORMULAS[0][1:])
        self.assertGreater(len(NAMES), 300)

    def test_limits(self):
        self.assertEqual(BYTES.count(b"\n"), BYTES.count(b"\r\n"))
        self.assertLessEqual(max(map(len, TEXT.split("\n"))), 1023)
        self.assertEqual(sorted(" ".join(re.findall(r'known = known & "([^"]*)"', TEXT)).split()), sorted(NAMES))

    def test_blocks_are_closed(self):
        ends, open_ = {"If": "End If", "For": "Next", "Do": "Loop", "Function": "End Function", "Sub": "End Sub"}, []
        for line in JOINED.split("\n"):
            line = line.split(" '")[0].strip() if '"' not in line else line.strip()
            begun = re.match(r"(?:Public |Private )?(Function|Sub|For|Do)\b|(If)\b.* Then$", line)
            if begun:
                open_.append(ends[begun[1] or begun[2]])
            elif line in ends.values():
                self.assertEqual(open_.pop(), line)
        self.assertEqual(open_, [])

    def test_every_name_is_declared(self):
        """Option Explicit: what is assigned or walked was declared in its procedure, or is the procedure's own answer."""
        procedure = re.compile(r"^(?:Public|Private) (?:Sub|Function) (\w+)\((.*?)\)(?: As \w+)?\n(.*?)^End ", re.M | re.S)
        for name, given, body in procedure.findall(JOINED):
            known = {name, *re.findall(r"(?:Dim|Static) (\w+) As", body), *re.findall(r"(\w+) As", given)}
            for used in re.findall(r"^\s*(?:Set |For Each )?([A-Za-z_]\w*) (?:=|In) ", body, flags=re.M):
                self.assertIn(used, known, name)


if __name__ == "__main__":
    unittest.main()
