"""What is refused, and how completely."""
import copy
import math
import os
import pathlib
import pickle
import re
import unittest

import cutwater
from cutwater import Refused, Status

GOOD = {"surface_pressure_bara": 1.01325, "vapour_pressure_bara": 0.02339, "density_kgm3": 998.2, "liquid_level_m": 2.0,
        "friction_head_m": 0.5}


class Refusals(unittest.TestCase):
    def refused(self, **changed):
        with self.assertRaises(Refused) as caught:
            cutwater.npsh_available(**{**GOOD, **changed})
        name, = changed
        self.assertEqual(caught.exception.name, name)
        self.assertEqual(caught.exception.argument, list(GOOD).index(name))
        self.assertEqual(str(caught.exception), caught.exception.message)
        self.assertIn(name.rsplit("_", 1)[0], str(caught.exception).replace(" ", "_"))
        return caught.exception

    def test_interval(self):
        refused = self.refused(surface_pressure_bara=-1.0)
        self.assertIs(refused.status, Status.OUT_OF_INTERVAL)
        self.assertEqual((refused.value, refused.low, refused.high, refused.low_open), (-1.0, 0.0, 500.0, True))
        self.assertEqual(refused.unit, "bara")
        self.assertIsNone(refused.element)
        self.assertEqual(refused.refused_rows, 0)

    def test_not_finite(self):
        for value in (math.nan, math.inf, -math.inf, 10**400, -10**400):
            self.assertIs(self.refused(density_kgm3=value).status, Status.NOT_FINITE)

    def test_texts(self):
        for text, status in (("", Status.BAD_TEXT), ("much", Status.BAD_TEXT), ("1 2 bara", None), ("5 metres3000", None),
                             ("1,500 bara", None), ("10 m3/h", Status.WRONG_QUANTITY), ("3 furlongz", None), ("\ud7ff", None),
                             ("9" * 5000, None), ("1e999 bara", None)):
            refused = self.refused(surface_pressure_bara=text)
            if status is not None:
                self.assertIs(refused.status, status, text)

    def test_gauge_is_not_absolute(self):
        self.assertIs(self.refused(surface_pressure_bara="1 barg").status, Status.WRONG_QUANTITY)
        self.refused(surface_pressure_bara="1 bar")

    def test_left_out(self):
        self.assertIs(self.refused(density_kgm3=None).status, Status.MISSING)

    def test_texts_that_are_none(self):
        with self.assertRaisesRegex(ValueError, "null character"):
            cutwater.npsh_available("1 bara\0", 0.02, 998, 2, 1)
        with self.assertRaisesRegex(ValueError, "npsh_available: surface_pressure_bara has half of a surrogate pair"):
            cutwater.npsh_available("\ud800", 0.02, 998, 2, 1)

    def test_series(self):
        value = cutwater.curve_head
        flows, heads = [0.0, 50.0, 100.0], [40.0, 38.0, 30.0]
        for changed, status in (((flows[:2], heads, 20), None), (([0, 100, 50], heads, 20), Status.BAD_SERIES),
                                (([0], [1], 0), Status.BAD_SERIES), (([], [], 0), Status.BAD_SERIES),
                                (([0, math.nan, 100], heads, 20), Status.NOT_FINITE),
                                ((flows, heads, 101), None), ((1.0, heads, 20), Status.WRONG_KIND)):
            with self.subTest(changed), self.assertRaises(Refused) as caught:
                value(*changed)
            if status is not None:
                self.assertIs(caught.exception.status, status)
        with self.assertRaises(Refused) as caught:
            value([0, "50 kg", 100], heads, 20)
        self.assertEqual((caught.exception.argument, caught.exception.element), (0, 1))

    def test_million_points(self):
        flows = [float(i) for i in range(1_000_000)]
        heads = [100.0 - 1e-5 * x for x in flows]
        self.assertAlmostEqual(cutwater.curve_head(flows, heads, 1000.5), 100 - 1e-5 * 1000.5, places=9)
        flows[777_777] = flows[777_776]
        with self.assertRaises(Refused) as caught:
            cutwater.curve_head(flows, heads, 1000.5)
        self.assertEqual(caught.exception.argument, 0)

    def test_survives_copies(self):
        refused = self.refused(density_kgm3=-2.0)
        for again in (pickle.loads(pickle.dumps(refused)), copy.copy(refused)):
            self.assertEqual(vars(again), vars(refused))
            self.assertEqual(str(again), str(refused))

    def test_convert_and_read(self):
        self.assertRaises(Refused, cutwater.convert_unit, 1.0, "bara", "m3/h")
        self.assertRaises(Refused, cutwater.convert_unit, [1.0], "no unit", "m3/h")
        self.assertRaises(Refused, cutwater.convert_unit, [], "bara", "m3/h")
        self.assertRaises(TypeError, cutwater.convert_unit, "1", "m", "ft")
        self.assertRaises(TypeError, cutwater.convert_unit, 1.0, 3, "ft")
        self.assertRaises(Refused, cutwater.quantity, "1 barg", "bara")
        self.assertRaises(Refused, cutwater.quantity, 1.0, "no unit")
        self.assertRaises(Refused, cutwater.quantity, float("nan"), "m")
        self.assertRaises(TypeError, cutwater.quantity, None, "m")
        self.assertRaisesRegex(TypeError, "^quantity:", cutwater.quantity, True, "m")
        self.assertRaises(Refused, cutwater.read, "npsh_available", "density_kgm3", "1 bara")
        self.assertRaises(LookupError, cutwater.read, "no_such", "density_kgm3", "1")
        self.assertRaises(TypeError, cutwater.read, "npsh_available", "no_such", "1")

    def test_statuses_are_those_of_the_header(self):
        header = pathlib.Path(os.environ["CUTWATER_SOURCE"], "include/cutwater/status.h").read_text()
        enum = re.search(r"typedef enum cutwater_status\s*{(.*?)}", header, re.S)[1]
        self.assertEqual({n: int(v) for n, v in re.findall(r"CUTWATER_(\w+) = (\d+)", enum)}, {s.name: s.value for s in Status})


if __name__ == "__main__":
    unittest.main()
