"""Every golden case through Octave: the same bits as the C API, and the same refusals."""
import json
import os
import pathlib
import re
import struct
import unittest

import golden
import octave

FUNCTIONS = {f["name"]: f for f in json.loads(pathlib.Path(os.environ["CUTWATER_CATALOGUE"]).read_text(encoding="utf-8"))["functions"]}
HEADER = pathlib.Path(os.environ["CUTWATER_SOURCE"], "include/cutwater/status.h").read_text(encoding="utf-8")
STATUS = {int(value): name.lower() for name, value in re.findall(r"CUTWATER_(\w+) = (\d+)", HEADER)}


def computed_by_element(case):
    """Where C refuses a series given for a number, Octave has its array form."""
    return any(isinstance(value, list) and given["kind"] not in ("series", "choice")
               for value, given in zip(case.arguments, FUNCTIONS[case.function]["inputs"]))


class Golden(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.cases = list(golden.cases())
        cls.bits = golden.bits()
        cls.answers = octave.answers((case.where, octave.call(case.function, case.arguments)) for case in cls.cases)

    def test_every_case_was_asked(self):
        self.assertEqual(set(self.answers), {case.where for case in self.cases})

    def test_values(self):
        seen = 0
        for case in self.cases:
            if case.refused:
                continue
            with self.subTest(case.call, where=case.where):
                verdict, *fields = self.answers[case.where]
                self.assertEqual(verdict, "ok", fields)
                wanted = self.bits[case.where][1]
                self.assertEqual(len(fields), len(wanted))
                for got, bits in zip(fields, wanted):
                    if isinstance(bits, str):
                        self.assertEqual(got, f'"{bits}"')
                    elif isinstance(bits, list):
                        numbers = got.strip("[] ").split() if got.startswith("[") else [got]
                        self.assertEqual(numbers, [struct.pack(">d", b).hex() for b in bits])
                    else:
                        self.assertEqual(got, struct.pack(">d", bits).hex())
                seen += 1
        self.assertGreater(seen, 1000)

    def test_refusals(self):
        seen = 0
        for case in self.cases:
            if not case.refused or computed_by_element(case):
                continue
            with self.subTest(case.call, where=case.where):
                verdict, *fields = self.answers[case.where]
                self.assertEqual(verdict, "error", fields)
                self.assertEqual(fields[0], "cutwater:" + STATUS[self.bits[case.where][1]], fields)
                self.assertTrue(fields[1].startswith(case.function + ": "), fields[1])
                seen += 1
        self.assertGreater(seen, 300)


if __name__ == "__main__":
    unittest.main()
