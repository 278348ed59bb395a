"""What cells can hold besides good numbers: every bad input is an error that formulas see, with a sentence that says why."""
import math
import os
import unittest

from sheet import Formula, call, computed, quoted

# One input a row of sheet Inputs; its name here stands for the cell, as [..] for a range of one cell and more.
ROWS = {
    "good": [1.01325, 0.02339, 998.2, 2, 0.5],
    "no_number": ["a lot"], "wrong_quantity": ["2 m"], "gauge": ["0.5 barg"], "plain_bar": ["1 bar"], "unknown_unit": ["12 quux"],
    "greek": ["ρ = 998 кг/м³ 水"], "long": ["9" * 5000], "nan_text": ["nan"], "inf_text": ["inf"], "huge_text": ["1e999"],
    "negative": [-1], "huge": [1e308], "true": [True], "empty": [None], "blank": [" "], "quantity": ["1013.25 mbara"],
    "divided": [Formula("1/0")], "root": [Formula("SQRT(-1)")], "no_name": [Formula("NOTHING_OF_THAT_NAME(1)")],
    "missing_ref": [Formula("NA()")],
    "x": [0, 50, 100], "y": [40, 38, 30], "y_open": [40, 38, 30, None, None], "x_units": ["0 m3/h", "0.05 m3/s", 360],
    "x_short": [0, 50], "x_unsorted": [0, 100, 50], "x_equal": [0, 50, 50], "x_hole": [0, None, 100], "x_first_empty": [None, 50, 100],
    "x_error": [0, Formula("1/0"), 100], "x_root": [0, Formula("SQRT(-1)"), 100], "x_word": [0, "fifty", 100],
    "x_wrong_unit": [0, "50 bar", 100], "x_none": [None, None, None], "one": [50], "y_negative": [40, -38, 30],
}
PLACE = {name: row + 1 for row, name in enumerate(ROWS)}


def cell(name):
    return f"[Inputs.A{PLACE[name]}]"


def span(name):
    return f"[Inputs.A{PLACE[name]}:.{'ABCDEFGH'[len(ROWS[name]) - 1]}{PLACE[name]}]"


GOOD = [f"[Inputs.{c}{PLACE['good']}]" for c in "ABCDE"]


def npsh(surface=GOOD[0], vapour=GOOD[1], density=GOOD[2], *rest):
    return "npsh_available", [surface, vapour, density, *(rest or GOOD[3:])]


def curve(x, y, at="20"):
    return "curve_value", [x, y, at]


# (what, (function, arguments), a word that the refusal must hold; None where the input's own error shows)
REFUSED = [
    ("text that is no number", npsh(cell("no_number")), "surface_pressure_bara"),
    ("a length for a pressure", npsh(cell("wrong_quantity")), "surface_pressure_bara"),
    ("gauge for absolute", npsh(cell("gauge")), "surface_pressure_bara"),
    ("bar without saying which", npsh(cell("plain_bar")), "surface_pressure_bara"),
    ("unknown unit", npsh(cell("unknown_unit")), "quux"),
    ("other alphabets", npsh(cell("greek")), "surface_pressure_bara"),
    ("5000 digits", npsh(cell("long")), "surface_pressure_bara"),
    ("nan as text", npsh(cell("nan_text")), "surface_pressure_bara"),
    ("inf as text", npsh(cell("inf_text")), "surface_pressure_bara"),
    ("1e999 as text", npsh(cell("huge_text")), "surface_pressure_bara"),
    ("blank text", npsh(cell("blank")), "surface_pressure_bara"),
    ("a null character", npsh('"1.013 bara"&CHAR(0)&"junk"'), "surface_pressure_bara"),
    ("a sign behind the number", npsh('"1.013-"'), "a sign stands before its number"),
    ("a comma that may group digits", npsh('"1,013 bara"'), "two ways"),
    ("a product for a unit", npsh(*GOOD[:3], '"5 m*m"', GOOD[4]), "liquid_level_m"),
    ("pascals for bar", npsh("101325"), "up to 500 bara"),
    ("negative", npsh(cell("negative")), "above 0"),
    ("too large", npsh(cell("huge")), "npsh_available"),
    ("empty cell by plain reference is 0", npsh(cell("empty")), "above 0"),
    ("empty cell by one-cell range", npsh(f"[Inputs.A{PLACE['empty']}:.A{PLACE['empty']}]"), "was not given"),
    ("empty text", npsh('""'), "was not given"),
    ("left out", npsh(""), "was not given"),
    ("too few", ("npsh_available", GOOD[:3]), "was not given"),
    ("range for a number", npsh(span("x")), "series"),
    ("vapour pressure above the surface's", npsh(GOOD[0], "2"), "vapour_pressure"),
    ("TRUE where 1 is not permitted", npsh(GOOD[0], GOOD[1], cell("true")), "density_kgm3"),
    ("division by zero", npsh(cell("divided")), None),
    ("root of a negative number", npsh(cell("root")), None),
    ("unknown name", npsh(cell("no_name")), None),
    ("#N/A", npsh(cell("missing_ref")), None),
    ("unequal series", curve(span("x_short"), span("y")), "curve_value"),
    ("unsorted", curve(span("x_unsorted"), span("y")), "rise"),
    ("equal neighbours", curve(span("x_equal"), span("y")), "rise"),
    ("one point", curve(span("one"), span("one")), "point"),
    ("number for a series", curve("5", "6"), "point"),
    ("hole", curve(span("x_hole"), span("y")), "point 2"),
    ("first cell empty", curve(span("x_first_empty"), span("y")), "point 1"),
    ("all empty", curve(span("x_none"), span("y")), "was not given"),
    ("text in a series", curve(span("x_word"), span("y")), "point 2"),
    ("other quantity in a series", ("curve_head", [span("x_wrong_unit"), span("y"), "20"]), "point 2"),
    ("block", curve(f"[Inputs.A{PLACE['x']}:.C{PLACE['y']}]", span("y")), "block"),
    ("error in a series", curve(span("x_error"), span("y")), None),
    ("root of a negative number in a series", curve(span("x_root"), span("y")), None),
    ("beyond the series", curve(span("x"), span("y"), "101"), "101"),
]

# (what, formula, formula for what it must equal)
EQUAL = [
    ("text with a unit", call("npsh_available", cell("quantity"), *GOOD[1:]), call("npsh_available", "1.01325", *GOOD[1:])),
    ("one-cell range", call("npsh_available", f"[Inputs.A{PLACE['good']}:.A{PLACE['good']}]", *GOOD[1:]), call("npsh_available", *GOOD)),
    ("last cells empty", call("curve_value", span("x"), span("y_open"), "20"), call("curve_value", span("x"), span("y"), "20")),
    ("units in a series", call("curve_head", span("x_units"), span("y"), "90"), call("curve_head", "{0;180;360}", span("y"), "90")),
    ("written array down", call("curve_value", "{0|50|100}", span("y"), "20"), call("curve_value", span("x"), span("y"), "20")),
    ("computed array", f"SUM({call('curve_value', 'TRANSPOSE(' + span('x') + ')', span('y'), '20')})", call("curve_value", span("x"), span("y"), "20")),
    ("TRUE counts as 1, as in all of Calc", call("velocity_head", cell("true"), "100"), call("velocity_head", "1", "100")),
    ("conversion", call("convert_unit", "50", '"m3/h"', '"l/s"'), "50/3.6"),
    ("quantity of a text", call("quantity", '"6 ft"', '"m"'), "1.8288"),
    ("quantity of a negative difference", call("quantity", "-5", '"K"'), "-5"),
    ("quantity with a decimal comma", call("quantity", '"18,5 m3/h"', '"m3/h"'), "18.5"),
    ("quantity of a difference in degF", call("quantity", '"9 delta degF"', '"K"'), "5"),
    ("quantity of a number", call("quantity", "2.5", '"m"'), "2.5"),
    ("solved backwards",
     f"ROUND({call('solve_for', quoted('NPSH_AVAILABLE'), quoted('liquid_level_m'), '', call('npsh_available', *GOOD), *GOOD)};9)", "2"),
    ("solved with names without units",
     f"ROUND({call('solve_for', quoted('velocity_head'), quoted('flow'), quoted('velocity_head'), quoted('1 m'), '', '100')};9)",
     "ROUND(SQRT(2*9.80665)*PI()/4*0.01*3600;9)"),
]

ERRORS = [  # (what, formula, error shown)
    ("too many arguments", call("npsh_available", *GOOD, "1"), "Err:504"),
    ("conversion between quantities", call("convert_unit", "1", '"bar"', '"m"'), "Err:502"),
    ("conversion of a text", call("convert_unit", '"1 m"', '"m"', '"mm"'), "Err:502"),
    ("gauge to absolute", call("convert_unit", "1", '"barg"', '"bara"'), "Err:502"),
    ("quantity of nothing", call("quantity", f"[Inputs.A{PLACE['empty']}:.A{PLACE['empty']}]", '"m"'), "Err:502"),
    ("quantity of another quantity", call("quantity", '"6 ft"', '"bara"'), "Err:502"),
    ("a sensitivity of no function", call("sensitivity", quoted("no_such_function"), "", "1"), "Err:502"),
    ("solving for no input", call("solve_for", quoted("velocity_head"), quoted("weather"), "", "1", "1", "100"), "Err:502"),
    ("a target that cannot be", call("solve_for", quoted("velocity_head"), quoted("flow"), "", "-1", "", "100"), "Err:502"),
]


class Cells(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        bad = []
        for row, (_, (function, arguments), _) in enumerate(REFUSED, 1):
            bad.append([Formula(call(function, *arguments)), Formula(f"ISERROR([.A{row}])"), Formula(f'IFERROR([.A{row}];"caught")'),
                        Formula(f"[.A{row}]+1"), Formula(call("refusal", quoted(function), *arguments))])
        equal = [[Formula(left), Formula(right), Formula(f"[.A{row}]=[.B{row}]")] for row, (_, left, right) in enumerate(EQUAL, 1)]
        errors = [[Formula(text), Formula(f"ISERROR([.A{row}])")] for row, (_, text, _) in enumerate(ERRORS, 1)]
        working = [quoted("NPSH_AVAILABLE"), *GOOD]
        answers = [
            [Formula(call("refusal", *working)), Formula(call("working", *working)), Formula(call("cutwater_version")),
             Formula(call("working", quoted("npsh_available"), "-1", *GOOD[1:])),
             Formula(call("refusal", quoted("no_such_function"), "1")), Formula(call("working", quoted("no_such_function"), "1")),
             Formula(call("refusal", quoted("npsh_availble"), "1"))],
            *[[Formula(call("working_line", str(line), *working))] for line in (1, 2, 3, 500)],
            [Formula(call("uncertainty", quoted("velocity_head"), '""', "1", "100", "150"), 1, 5)],
            [Formula(call("sensitivity", quoted("npsh_available"), "", *GOOD), 5, 3)], *[[]] * 4,
            [Formula(call("uncertainty_shares", quoted("npsh_available"), "", "{0.01;0;0;0.2;0}", *GOOD), 5, 1)], *[[]] * 4,
            [Formula(call("solutions", quoted("velocity_head"), quoted("flow_m3h"), "", "1", "", "100"), 1, 1)],
            [Formula(f"IFERROR({call('sensitivity', quoted('npsh_available'), '', '-1', *GOOD[1:])};7)", 1, 2)],
            [Formula(call("uncertainty", quoted("bearing_housing_temperature"), "", "", "90", "0.25", "12", "30"), 1, 5)],
            [Formula(call("uncertainty_shares", quoted("bearing_housing_temperature"), "", "{9}", "90", "0.25", "12", "30"), 5, 1)],
            *[[]] * 4,
            [Formula(call("uncertainty", quoted("bearing_housing_temperature"), "", "{9;0;0;0;0}", "90", "0.25", "12", "30"), 1, 5)],
        ]
        cls.sheets = computed(os.environ["CUTWATER_WORK"] + "/cells", {
            "Inputs": list(ROWS.values()), "Bad": bad, "Equal": equal, "Errors": errors, "Answers": answers})

    def test_bad_input_is_an_error_with_a_reason(self):
        for (what, (function, arguments), word), row in zip(REFUSED, self.sheets["Bad"], strict=True):
            with self.subTest(what, call=call(function, *arguments)):
                shown, is_error, caught, used, why = row[:5]
                self.assertEqual(shown.kind, "error", shown)
                self.assertEqual(is_error.number, 1)
                self.assertEqual(caught.text, "caught")
                self.assertEqual(used.kind, "error")
                if word is None:
                    self.assertEqual(why.kind, "error")
                    continue
                self.assertEqual(shown.text, "Err:502")
                self.assertEqual(why.kind, "text")
                self.assertIn(word, why.text)
                self.assertTrue(why.text.startswith(function + ": "), why.text)

    def test_same_thing_said_otherwise(self):
        for (what, left, right), row in zip(EQUAL, self.sheets["Equal"], strict=True):
            with self.subTest(what, left=left, right=right):
                self.assertEqual([c.kind for c in row[:2]], ["number", "number"], row)
                self.assertEqual(row[0].number, row[1].number)

    def test_errors(self):
        for (what, text, error), row in zip(ERRORS, self.sheets["Errors"], strict=True):
            with self.subTest(what, text=text):
                self.assertEqual((row[0].kind, row[0].text, row[1].number), ("error", error, 1))

    def test_nothing_shows_nan(self):
        for name, rows in self.sheets.items():
            for cell_ in (c for row in rows for c in row if c.kind != "empty"):
                self.assertEqual(cell_.number, cell_.number)
                self.assertTrue(name == "Inputs" or cell_.text.lower() != "nan", cell_)

    def test_other_answers(self):
        rows = self.sheets["Answers"]
        accepted, working, version, refused, *unknown = rows[0][:6]
        for said in unknown:  # the sentence is the answer there
            self.assertEqual(said.kind, "text")
            self.assertIn('There is no function "no_such_function"', said.text)
        self.assertIn("is it npsh_available", rows[0][6].text)
        self.assertEqual((accepted.kind, accepted.text), ("text", ""))
        self.assertEqual(version.text, os.environ["CUTWATER_VERSION"])
        self.assertIn("surface_pressure_bara", refused.text)
        lines = [rows[i][0].text for i in range(1, 5)]
        self.assertEqual(lines[:3], working.text.split("\n")[:3])
        self.assertGreater(len(working.text.split("\n")), 5)
        self.assertEqual((rows[4][0].kind, lines[3]), ("text", ""))
        value, standard, low, high, remark = rows[5][:5]
        head = (100 / 3600 / (math.pi / 4 * 0.15 ** 2)) ** 2 / (2 * 9.80665)
        self.assertAlmostEqual(value.number, head, 12)
        self.assertAlmostEqual(standard.number / head, 2 * 0.01, 4)  # head goes with the square of flow
        self.assertTrue(low.number < value.number < high.number and remark.kind == "text" and remark.text)
        names = {row[0].text for row in rows[6:11]}
        self.assertEqual(names, {"surface_pressure_bara", "vapour_pressure_bara", "density_kgm3", "liquid_level_m", "friction_head_m"})
        slopes = {row[0].text: row[2].number for row in rows[6:11]}
        self.assertAlmostEqual(slopes["liquid_level_m"], 1, 6)
        self.assertAlmostEqual(slopes["friction_head_m"], -1, 6)
        shares = [rows[i][0].number for i in range(11, 16)]
        self.assertAlmostEqual(sum(shares), 1, 9)
        by_pressure, by_level = (0.01e5 / (998.2 * 9.80665)) ** 2, 0.2 ** 2
        self.assertAlmostEqual(shares[0], by_pressure / (by_pressure + by_level), 6)
        self.assertAlmostEqual(rows[16][0].number, (2 * 9.80665) ** 0.5 * math.pi / 4 * 0.01 * 3600, 6)
        self.assertEqual([c.number for c in rows[17][:2]], [7, 7])

    def test_scatter_of_the_relation(self):
        """A guide to plus or minus 15 K: alone, beside 9 W over 3 W/K, and left out by the entry after the arguments'."""
        rows = self.sheets["Answers"]
        value, _, low, high = [cell.number for cell in rows[18][:4]]
        self.assertAlmostEqual(value, 60, 9)
        self.assertAlmostEqual(low, 45, 9)
        self.assertAlmostEqual(high, 75, 9)
        shares = [rows[i][0].number for i in range(19, 24)]
        own = (15 / 1.959963984540054) ** 2
        for found, wanted in zip(shares, [9 / (9 + own), 0, 0, 0, own / (9 + own)]):
            self.assertAlmostEqual(found, wanted, 6)
        self.assertAlmostEqual(rows[24][1].number, 3, 6)


if __name__ == "__main__":
    unittest.main()
