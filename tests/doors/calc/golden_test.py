"""Every golden case in a cell: within its bound of what was published, and bit for bit what the C API answers."""
import math
import os
import sys
import unittest

from golden import bits, cases
from sheet import Formula, call, computed, quoted, reference


def argument(value, row, column):
    """A cell, or the cells of a series, and the reference to them."""
    if value is None:
        return [], ""
    if isinstance(value, list):
        if not value:
            return [None, None], reference("Inputs", row, column, row, column + 1)
        return [number(v) for v in value], reference("Inputs", row, column, row, column + len(value) - 1)
    return [value if isinstance(value, str) else number(value)], reference("Inputs", row, column)


def number(value):
    return value if math.isfinite(value) else Formula("SQRT(-1)" if math.isnan(value) else "1/0")


def room(answer):
    """Rows for it, and for a series one more than there are; Calc repeats a single row down the whole array."""
    height = max(len(r) if isinstance(r, list) else 1 for r in answer)
    return height + 1 if height > 1 else 1


def has_error(value):
    return not all(math.isfinite(v) for v in (value if isinstance(value, list) else [value]) if isinstance(v, float))


class Golden(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.cases, cls.bits = list(cases()), bits()
        inputs, cls.results, cls.top = [], [], {}
        for row, case in enumerate(cls.cases):
            cells, references = [], []
            for value in case.arguments:
                made, where = argument(value, row, len(cells))
                cells += made
                references.append(where)
            inputs.append(cells)
            cls.top[case.where] = len(cls.results)
            formula = call(case.function, *references)
            answer = cls.bits[case.where]
            if case.refused:
                here = f"[.A{len(cls.results) + 1}]"
                block = [[Formula(formula), Formula(f"ISERROR({here})"), Formula(f'IFERROR({here};"caught")'),
                          Formula(call("refusal", quoted(case.function), *references))]]
            elif answer[0] == "ok" and (len(answer[1]) > 1 or isinstance(answer[1][0], list)):
                height = room(answer[1])
                block = [[None] * len(answer[1]) for _ in range(height)]
                block[0][0] = Formula(formula, height, len(answer[1]))
            else:
                block = [[Formula(formula)]]
            cls.results += block
        cls.cells = computed(os.environ["CUTWATER_WORK"] + "/golden", {"Inputs": inputs, "Results": cls.results})["Results"]

    def at(self, case, row=0, column=0):
        return self.cells[self.top[case.where] + row][column]

    def block(self, case, answer):
        """The results as the cells hold them, in the answer's own shape."""
        got = []
        height = max(len(r) if isinstance(r, list) else 1 for r in answer)
        for column, result in enumerate(answer):
            length = len(result) if isinstance(result, list) else 1
            down = [self.at(case, row, column) for row in range(length)]
            values = [c.text if c.kind == "text" else c.number if c.kind == "number" else f"{c.kind} {c.text}" for c in down]
            got.append(values if isinstance(result, list) else values[0])
            if height > 1:
                for row in range(length, room(answer)):
                    self.assertEqual(self.at(case, row, column).text, "#N/A", f"{case.where} {case.call}: row {row}")
        return got

    def test_bit_for_bit_the_c_api(self):
        for case in self.cases:
            if not case.refused:
                with self.subTest(case.where, call=case.call):
                    verdict, answer, *_ = self.bits[case.where]
                    self.assertEqual(verdict, "ok")
                    self.assertEqual(self.block(case, answer), answer)

    def test_as_published(self):
        for case in self.cases:
            if case.refused or self.bits[case.where][0] != "ok":
                continue
            with self.subTest(case.where, call=case.call):
                got = self.block(case, self.bits[case.where][1])
                for expected, value in zip(case.expected, got):
                    pairs = zip(expected, value, strict=True) if isinstance(expected, list) else [(expected, value)]
                    for wanted, came in pairs:
                        if not isinstance(wanted, float):
                            self.assertEqual(wanted, came)
                            continue
                        scale = abs(wanted) if case.relative and wanted else 1
                        self.assertLessEqual(abs(came - wanted) / scale, case.within)

    def test_refused_cases_are_errors(self):
        for case in self.cases:
            if not case.refused:
                continue
            with self.subTest(case.where, call=case.call):
                shown, is_error, caught, why = (self.at(case, 0, column) for column in range(4))
                self.assertEqual(shown.kind, "error")
                self.assertEqual(is_error.number, 1)
                self.assertEqual(caught.text, "caught")
                if any(has_error(v) for v in case.arguments):
                    self.assertEqual(why.kind, "error")  # the input's own error
                else:
                    self.assertEqual(shown.text, "Err:502")
                    self.assertEqual(why.kind, "text")
                    self.assertTrue(why.text.startswith(case.function + ":") and len(why.text) > len(case.function) + 20, why.text)


if __name__ == "__main__":
    unittest.main(verbosity=2 if "-v" in sys.argv else 1)
