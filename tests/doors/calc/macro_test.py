"""LibreOffice Basic by way of createUnoService, and what the function wizard shows for every function of the catalogue."""
import json
import math
import os
import pathlib
import unittest

from sheet import HERE, computed

NPSH = (1.01325 - 0.02339) * 1e5 / (998.2 * 9.80665) + 2 - 0.5


class Macro(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        blank = [None] * 3
        series = [blank + [x, y] for x, y in [(0, 40), (50, 38), (100, 30), (None, None), (None, None)]]
        sheets = {"Macro": series + [[None] * 5] * 10, "Wizard": [[None]]}
        basic = (HERE / "macro.bas").read_text(encoding="utf-8")
        cls.sheets = computed(os.environ["CUTWATER_WORK"] + "/macro", sheets, basic, "Standard.Module1.Fill")
        cls.cells = [row[0] for row in cls.sheets["Macro"]]
        catalogue = pathlib.Path(os.environ["CUTWATER_CATALOGUE"]).read_text(encoding="utf-8")
        cls.functions = json.loads(catalogue)["functions"]
        cls.questions = json.loads(catalogue)["questions"]

    def test_values(self):
        self.assertAlmostEqual(self.cells[0].number, NPSH, 12)
        self.assertAlmostEqual(self.cells[1].number, NPSH, 12)
        for row in range(2, 6):
            self.assertAlmostEqual(self.cells[row].number, 34.975, 12, f"row {row}")  # tests/reference/curves.txt
        self.assertAlmostEqual(self.cells[12].number, (2 * 9.80665) ** 0.5 * math.pi / 4 * 0.01 * 3600, 6)
        self.assertAlmostEqual(self.cells[13].number, 2, 6)  # after the bore: head goes with the square of flow
        self.assertEqual(self.cells[14].text, "velocity_head")

    def test_refusals(self):
        told = [self.cells[row].text for row in range(6, 11)]
        self.assertTrue(told[0] and told[1].startswith(told[0]), told)  # Basic adds a stop
        self.assertIn("was not given", told[2])
        self.assertIn("true or false", told[3])
        self.assertIn("a series", told[4])
        for sentence in told:
            self.assertTrue(sentence.startswith("npsh_available: surface_pressure_bara"), sentence)

    def test_wizard_describes_every_function(self):
        shown = {row[0].text: row for row in self.sheets["Wizard"] if row[0].kind == "text"}
        for function in self.functions:
            with self.subTest(function["name"]):
                row = shown[function["name"].upper()]
                self.assertIn(function["summary"][1:], row[1].text)
                texts = [c.text for c in row[3:] if c.kind == "text"]
                self.assertEqual(texts[0::2], [i["name"] for i in function["inputs"]])
                for given, text in zip(function["inputs"], texts[1::2], strict=True):
                    self.assertIn(given["meaning"][1:], text)
                    self.assertIn("Permitted", text)
        own = {q["name"].upper() for q in self.questions}
        self.assertGreaterEqual(len(own), 12)
        self.assertEqual(set(shown), own | {f["name"].upper() for f in self.functions})


if __name__ == "__main__":
    unittest.main()
