"""Every golden case through the Python door: within its bound, and the same bits as the C API."""
import struct
import unittest

import numpy as np

import cutwater
import golden


def same_bits(got, wanted):
    if isinstance(wanted, str):
        return got == wanted
    if isinstance(wanted, list):
        return isinstance(got, np.ndarray) and got.dtype == np.float64 and got.tobytes() == np.array(wanted, dtype=np.float64).tobytes()
    return type(got) is float and struct.pack("d", got) == struct.pack("d", wanted)


def in_bound(got, expected, case):
    if isinstance(expected, str):
        return got == expected
    if isinstance(expected, list):
        return len(got) == len(expected) and all(in_bound(float(g), e, case) for g, e in zip(got, expected))
    return abs(got - expected) <= case.within * (abs(expected) if case.relative else 1)


def listed(answer):
    return list(answer) if isinstance(answer, tuple) else [answer]


def is_array_call(case):
    """Where C refuses a series given for a number, Python has its array form."""
    kinds = [entry["kind"] for entry in INPUTS[case.function]]
    return any(isinstance(value, list) and kind != "series" for value, kind in zip(case.arguments, kinds))


INPUTS = {function["name"]: function["inputs"] for function in cutwater.catalogue()["functions"]}


class Golden(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.cases = list(golden.cases())
        cls.bits = golden.bits()

    def test_both_readers_see_the_same_cases(self):
        self.assertEqual([case.where for case in self.cases], list(self.bits))
        self.assertGreater(len(self.cases), 0)

    def test_values(self):
        for case in self.cases:
            if case.refused:
                continue
            with self.subTest(case.call, where=case.where):
                answer = listed(getattr(cutwater, case.function)(*case.arguments))
                verdict, wanted = self.bits[case.where]
                self.assertEqual(verdict, "ok")
                self.assertEqual(len(answer), len(wanted))
                for got, bits in zip(answer, wanted):
                    self.assertTrue(same_bits(got, bits), (got, bits))
                self.assertLessEqual(1, len(case.expected))  # a source may give only the first of several results
                self.assertLessEqual(len(case.expected), len(answer))
                for got, expected in zip(answer, case.expected):
                    self.assertTrue(in_bound(got, expected, case), (got, expected))

    def test_by_name_and_in_rows(self):
        """By keyword, and every number as a column of two rows: the same bits again."""
        for case in self.cases:
            if case.refused or is_array_call(case):
                continue
            with self.subTest(case.call, where=case.where):
                function = getattr(cutwater, case.function)
                inputs = INPUTS[case.function]
                named = {entry["name"]: value for entry, value in zip(inputs, case.arguments) if value is not None}
                wanted = self.bits[case.where][1]
                for got, bits in zip(listed(function(**named)), wanted):
                    self.assertTrue(same_bits(got, bits), (got, bits))
                columns = {e["name"]: np.full(2, named[e["name"]]) for e in inputs
                           if e["kind"] in ("quantity", "count") and isinstance(named.get(e["name"]), float)}
                if not columns or any(isinstance(bits, list) for bits in wanted):
                    continue
                for got, bits in zip(listed(function(**{**named, **columns})), wanted):
                    self.assertEqual(got.shape, (2,))
                    for one in got:
                        self.assertTrue(same_bits(one if isinstance(bits, str) else float(one), bits), (one, bits))

    def test_refusals(self):
        for case in self.cases:
            if not case.refused or is_array_call(case):
                continue
            with self.subTest(case.call, where=case.where):
                function = getattr(cutwater, case.function)
                names = [entry["name"] for entry in INPUTS[case.function]]
                if len(case.arguments) > len(names) or len(case.arguments) < sum("default" not in e for e in INPUTS[case.function]):
                    self.assertRaises(TypeError, function, *case.arguments)
                    continue
                with self.assertRaises(cutwater.Refused) as caught:
                    function(*case.arguments)
                refused = caught.exception
                verdict, status, argument, element = self.bits[case.where]
                self.assertEqual(verdict, "refused")
                self.assertEqual(refused.status, status)
                self.assertEqual(-1 if refused.argument is None else refused.argument, argument)
                self.assertEqual(-1 if refused.element is None else refused.element, element)
                self.assertTrue(str(refused))
                if case.blamed:
                    self.assertTrue(names[refused.argument].startswith(case.blamed))


if __name__ == "__main__":
    unittest.main()
