"""Element by element, named results, and the calls that are not one formula."""
import math
import os
import unittest

import octave

SUCTION = "1.013, 0.0234, 998.2, 2, 0.5"


def npsh(level):
    return (1.013 - 0.0234) * 1e5 / (998.2 * 9.80665) + level - 0.5


class Answers(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        calls = {
            "matrix": "cutwater.npsh_available (1.013, 0.0234, 998.2, [1 2; 3 4], 0.5)",
            "range": "cutwater.npsh_available (1.013, 0.0234, 998.2, 1:3, 0.5)",
            "texts": 'cutwater.npsh_available (1.013, 0.0234, 998.2, {1, "200 cm"}, 0.5)',
            "words": "cutwater.impeller_form ([15 300])",
            "size": "size (cutwater.npsh_available (1.013, 0.0234, 998.2, [1 2; 3 4; 5 6], 0.5))",
            "field": "getfield (cutwater.curve_is_stable ([0 20 40 60], [55 57 58 50]), 'top_flow_m3h')",
            "solve": f'cutwater.solve_for ("npsh_available", "liquid_level", [], "5 m", 1.013, 0.0234, 998.2, [], 0.5)',
            "solutions": 'cutwater.solutions ("velocity_head", "flow_m3h", [], 1, [], 100)',
            "uncertainty": 'cutwater.uncertainty ("velocity_head", [], {1, []}, 100, 150)',
            "shares": f'cutwater.uncertainty_shares ("npsh_available", [], [0.01 0 0 0.2 0], {SUCTION})',
            "sensitivity": f'size (cutwater.sensitivity ("npsh_available", [], {SUCTION}))',
            "convert": 'cutwater.convert_unit (440, "US gpm", "m3/h")',
            "quantity": 'cutwater.quantity ("440 US gpm", "m3/h")',
            "number": 'cutwater.quantity (5, "m3/h")',
            "version": "cutwater.cutwater_version ()",
            "accepted": f'cutwater.refusal ("npsh_available", {SUCTION})',
            "refused": 'cutwater.refusal ("npsh_available", -1, 0.0234, 998.2, 2, 0.5)',
            "refused quantity": 'cutwater.refusal ("quantity", "5 bar", "m3/h")',
            "line": f'cutwater.working_line (1, "npsh_available", {SUCTION})',
            "working": f'strrep (cutwater.working ("npsh_available", {SUCTION}), "\\n", " / ")',
            "found": 'getfield (cutwater.find_function ("NPSHR"), {1}, "function")',
        }
        cls.answers = octave.answers(calls.items())

    def number(self, name, place=0):
        verdict, *fields = self.answers[name]
        self.assertEqual(verdict, "ok", fields)
        return octave.number(fields[place])

    def numbers(self, name):
        verdict, text = self.answers[name]
        self.assertEqual(verdict, "ok", text)
        return [octave.number(one) for one in text.strip("[] ").split()]

    def test_by_element(self):
        for got, level in zip(self.numbers("matrix"), (1, 3, 2, 4), strict=True):  # column by column
            self.assertAlmostEqual(got, npsh(level), 9)
        self.assertEqual(self.numbers("size"), [3, 2])
        self.assertEqual(len(self.numbers("range")), 3)
        self.assertAlmostEqual(self.numbers("texts")[1], npsh(2), 9)
        words = self.answers["words"][1].strip("{}|").split("|")
        self.assertEqual(len(words), 2)
        self.assertNotEqual(words[0], words[1])

    def test_named_results(self):
        self.assertEqual(self.number("field"), 40)

    def test_solving(self):
        self.assertAlmostEqual(self.number("solve"), 5 - npsh(0), 9)
        self.assertAlmostEqual(self.number("solutions"), (2 * 9.80665) ** 0.5 * math.pi / 4 * 0.01 * 3600, 6)

    def test_uncertainty(self):
        head = (100 / 3600 / (math.pi / 4 * 0.15 ** 2)) ** 2 / (2 * 9.80665)
        self.assertAlmostEqual(self.number("uncertainty"), head, 12)
        self.assertAlmostEqual(self.number("uncertainty", 1) / head, 0.02, 4)
        self.assertAlmostEqual(sum(self.numbers("shares")), 1, 9)
        self.assertEqual(self.numbers("sensitivity"), [5, 1])

    def test_units(self):
        self.assertAlmostEqual(self.number("convert"), 440 * 231 * 0.0254 ** 3 * 60, 9)  # NIST SP 811: a US gallon is 231 cubic inches
        self.assertEqual(self.answers["convert"], self.answers["quantity"])
        self.assertEqual(self.number("number"), 5)

    def test_texts(self):
        self.assertEqual(self.answers["version"], ["ok", f'"{os.environ["CUTWATER_VERSION"]}"'])
        self.assertEqual(self.answers["accepted"], ["ok", '""'])
        self.assertIn("surface_pressure_bara is -1 bara", self.answers["refused"][1])
        self.assertIn("quantity", self.answers["refused quantity"][1])
        self.assertTrue(self.answers["working"][1].startswith(self.answers["line"][1][:-1]))
        self.assertIn("NPSHA", self.answers["working"][1])
        self.assertIn("npsh", self.answers["found"][1])


if __name__ == "__main__":
    unittest.main()
