"""What may be given, and what is of the wrong type."""
import array
import decimal
import fractions
import gc
import sys
import unittest

import numpy as np

import cutwater

npsh = cutwater.npsh_available
WANTED = npsh(2.0, 1.0, 1000.0, 3.0, 1.0)


class Quantity:
    """As packages of quantities have them: a number that hides its unit."""

    units = "psi"

    def __float__(self):
        return 2.0

    def __array__(self, dtype=None):
        return np.array([2.0])


class Accepted(unittest.TestCase):
    def test_numbers(self):
        for two in (2, 2.0, np.float64(2), np.float32(2), np.float16(2), np.longdouble(2), np.int8(2), np.uint64(2), np.array(2.0), np.array(2),
                    decimal.Decimal(2), fractions.Fraction(2), "2 bara", "2", np.str_("2 bara"), np.array("2 bara")):
            with self.subTest(repr(two)):
                answer = npsh(two, 1.0, 1000.0, 3.0, 1.0)
                self.assertIs(type(answer), float)
                self.assertEqual(answer, WANTED)

    def test_texts_carry_any_unit(self):
        self.assertAlmostEqual(npsh("200 kPa abs", "1 bara", "1 g/cm3", "3000 mm", "1 m"), WANTED, places=12)

    def test_position_and_name(self):
        self.assertEqual(npsh(2, 1, density_kgm3=1000, friction_head_m=1, liquid_level_m=3), WANTED)

    def test_many(self):
        for twos in ([2.0, 2], (2, "2 bara"), np.array([2, 2]), np.array([2, 2], dtype=">f8"), np.array([2, 2], dtype=np.float32),
                     array.array("d", [2, 2]), memoryview(array.array("f", [2, 2])), range(2, 4), np.array(["2 bara", "200 kPa abs"]),
                     np.array(["2", 2.0], dtype=object), [np.float64(2), decimal.Decimal(2)], [np.array(2.0), 2]):
            with self.subTest(repr(twos)):
                answer = npsh(twos, 1.0, 1000.0, 3.0, 1.0)
                self.assertEqual(answer.dtype, np.float64)
                self.assertEqual(answer.shape, (2,))
                self.assertAlmostEqual(answer[0], WANTED, places=12)
        self.assertEqual(npsh([[2, 2, "2 bara"]], 1.0, 1000.0, 3.0, 1.0).shape, (1, 3))

    def test_series(self):
        flows, heads = [0, 50, 100], np.array([40.0, 38, 30])
        wanted = cutwater.curve_head(flows, heads, 75)
        self.assertEqual(cutwater.curve_head(tuple(flows), np.array([40, 0, 38, 0, 30])[::2], "75 m3/h"), wanted)
        self.assertEqual(cutwater.curve_head(["0 m3/h", 50, 100], list(heads), 75), wanted)
        backwards = np.array([100.0, 50, 0])[::-1]
        self.assertEqual(cutwater.curve_head(backwards, heads, 75), wanted)

    def test_convert(self):
        self.assertIs(type(cutwater.convert_unit(1, "m", "mm")), float)
        self.assertEqual(cutwater.convert_unit(1, "m", "mm"), 1000)
        self.assertEqual(cutwater.convert_unit([[1, 2]], "m", "mm").tolist(), [[1000, 2000]])
        given = np.arange(6.0)[::2]
        self.assertEqual(cutwater.convert_unit(given, "m", "mm").tolist(), [0, 2000, 4000])
        self.assertEqual(given.tolist(), [0, 2, 4])
        self.assertEqual(cutwater.convert_unit([], "m", "mm").shape, (0,))

    def test_quantity(self):
        self.assertEqual(cutwater.quantity("6 ft", "m"), 1.8288)
        self.assertEqual(cutwater.quantity(2.5, "m"), 2.5)
        self.assertEqual((cutwater.quantity(-5, "K"), cutwater.quantity("-5 K", "K")), (-5, -5))
        self.assertEqual(cutwater.quantity(["6 ft", 2], "m").tolist(), [1.8288, 2])
        self.assertEqual(cutwater.quantity(np.array([1.0, 2]), "m").tolist(), [1, 2])

    def test_read(self):
        self.assertEqual(cutwater.read(npsh, "liquid_level_m", "2500 mm"), 2.5)
        self.assertEqual(cutwater.read("npsh_available", "liquid_level_m", "2.5"), 2.5)


class WrongTypes(unittest.TestCase):
    def test_one(self):
        for wrong in ({}, set(), object(), b"2 bara", bytearray(b"2"), True, np.True_, 2j, np.complex128(2), npsh, int, Quantity(), iter([1]),
                      np.timedelta64(2, "s"), np.datetime64("2020-01-01"), np.array(True), np.array(2j)):
            with self.subTest(repr(wrong)), self.assertRaisesRegex(TypeError, "npsh_available.*surface_pressure_bara"):
                npsh(wrong, 1.0, 1000.0, 3.0, 1.0)

    def test_many(self):
        for wrong in ([1, {}], [True], [[1, 2], [3]], [None], (1, 2j), np.array([True]), np.array([2j]), np.array([b"2"]),
                      np.array(["2020-01-01"], dtype="M8[D]"), np.array([2], dtype="m8[s]"), np.zeros(2, dtype="i4,f8"), [Quantity()], [b"2"]):
            with self.subTest(repr(wrong)), self.assertRaisesRegex(TypeError, "npsh_available.*surface_pressure_bara"):
                npsh(wrong, 1.0, 1000.0, 3.0, 1.0)

    def test_quantities_of_other_packages_are_named(self):
        with self.assertRaisesRegex(TypeError, "unit of its own"):
            npsh(Quantity(), 1.0, 1000.0, 3.0, 1.0)

    def test_hidden_elements_are_not_used(self):
        """They are missing, and so are their results; in a series they leave a hole, which is refused."""
        answer = npsh(np.ma.masked_array([2, -7], mask=[False, True]), 1.0, 1000.0, 3.0, 1.0)
        self.assertEqual((answer[0], answer.mask.tolist()), (WANTED, [False, True]))
        self.assertIs(npsh(np.ma.masked, 1.0, 1000.0, 3.0, 1.0), np.ma.masked)
        with self.assertRaises(cutwater.Refused) as caught:
            cutwater.curve_head(np.ma.masked_array([0, 50, 100], mask=[False, True, False]), [40, 38, 30], 75)
        self.assertIs(caught.exception.status, cutwater.Status.NOT_FINITE)
        self.assertEqual(caught.exception.element, 1)

    def test_counts_and_names(self):
        with self.assertRaisesRegex(TypeError, "6 given"):
            npsh(1, 2, 3, 4, 5, 6)
        with self.assertRaisesRegex(TypeError, "friction_head_m"):
            npsh(1, 2, 3, 4)
        for wrong in (lambda: npsh(1, 2, 3, 4, frictionhead=5), lambda: npsh(1, 2, 3, 4, 5, density_kgm3=6), lambda: npsh()):
            self.assertRaises(TypeError, wrong)

    def test_series(self):
        for wrong in ([[0, 1], [2, 3]], {}, np.zeros((2, 2)), [0, None, 1]):
            with self.subTest(repr(wrong)), self.assertRaisesRegex(TypeError, "flow"):
                cutwater.curve_head(wrong, [3, 2, 1], 0.5)

    def test_list_that_changes_while_it_is_read(self):
        flows = [2.0] * 10

        class Shrinks:
            def __float__(self):
                del flows[1:]
                return 2.0
        flows[3] = Shrinks()
        self.assertRaises(RuntimeError, npsh, flows, 1.0, 1000.0, 3.0, 1.0)

    def test_errors_of_objects_pass_through(self):
        class Broken:
            def __float__(self):
                raise ZeroDivisionError
        self.assertRaises(ZeroDivisionError, npsh, Broken(), 1.0, 1000.0, 3.0, 1.0)

    def test_nothing_leaks(self):
        held = np.array([2.0, 2.0])
        text = "".join(["2 ", "bara"])

        def counts():
            gc.collect()
            return np.array([sys.getrefcount(held), sys.getrefcount(text), sys.getrefcount(None)])

        before = counts()
        for _ in range(1000):
            npsh(held, 1.0, 1000.0, 3.0, 1.0)
            npsh(text, 1.0, 1000.0, 3.0, 1.0)
            cutwater.rows(npsh, held, -1.0, 1000.0, 3.0, 1.0)
            for wrong in ([held, {}], {}, [None]):
                self.assertRaises(TypeError, npsh, wrong, held, 1000.0, 3.0, 1.0)
        self.assertLess(abs(counts() - before).max(), 500)  # one a round would make a thousand


if __name__ == "__main__":
    unittest.main()
