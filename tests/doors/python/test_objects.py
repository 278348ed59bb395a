"""Objects of other libraries go in and come out as themselves; their own arithmetic on the relation by hand is what is compared with."""
import pickle
import subprocess
import sys
import unittest

import numpy as np

import cutwater
from cutwater import _objects

import dask
import dask.array
import dask.dataframe
import pandas as pd
import pint
import xarray as xr

npsh = cutwater.npsh_available
UNITS = pint.UnitRegistry()
UNITS.define("bara = bar")
LEVELS = np.linspace(-3.0, 5.0, 7)
HOURS = pd.date_range("2025-01-01", periods=7, freq="h")


def by_hand(surface, vapour, density, level, friction):
    return (surface - vapour) * 1e5 / (density * 9.80665) + level - friction


class Pandas(unittest.TestCase):
    def test_series(self):
        level = pd.Series(LEVELS, index=HOURS, name="level")
        got = npsh(1.0, 0.02, 998.0, level, 0.5)
        self.assertIsInstance(got, pd.Series)
        pd.testing.assert_series_equal(got, by_hand(1.0, 0.02, 998.0, level, 0.5), check_names=False, rtol=1e-13)
        self.assertEqual(got.to_numpy().tobytes(), npsh(1.0, 0.02, 998.0, LEVELS, 0.5).tobytes())
        self.assertEqual((got.name, got.attrs["units"]), ("npsh_m", "m"))

    def test_frame(self):
        level = pd.DataFrame({"a": LEVELS, "b": LEVELS + 1}, index=HOURS)
        pd.testing.assert_frame_equal(npsh(1.0, 0.02, 998.0, level, 0.5), by_hand(1.0, 0.02, 998.0, level, 0.5), rtol=1e-13)
        with self.assertRaisesRegex(TypeError, "Series and a DataFrame"):
            npsh(1.0, 0.02, level["a"], level, 0.5)

    def test_rows_by_label(self):
        level, friction = pd.Series([1.0, 2, 3], index=list("abc")), pd.Series([0.1, 0.2, 0.3], index=list("cbd"))
        pd.testing.assert_series_equal(npsh(1.0, 0.02, 998.0, level, friction), by_hand(1.0, 0.02, 998.0, level, friction), check_names=False)

    def test_missing(self):
        for level in (pd.Series([1.0, np.nan, 3]), pd.Series([1, None, 3], dtype="Int64"), pd.Series([1.0, pd.NA, "3 m"], dtype=object),
                      pd.Series(["1 m", None, 3.0], dtype=object)):
            got = npsh(1.0, 0.02, 998.0, level, 0.5)
            self.assertEqual(got.isna().tolist(), [False, True, False])
            self.assertEqual((got[0], got[2]), (npsh(1.0, 0.02, 998.0, 1.0, 0.5), npsh(1.0, 0.02, 998.0, 3.0, 0.5)))
        self.assertEqual(npsh(1.0, 0.02, 998.0, pd.Series([1, None], dtype="Float64"), 0.5).dtype, "Float64")
        self.assertIs(npsh(1.0, 0.02, pd.NA, 2.0, 0.5), pd.NA)
        self.assertTrue(npsh(1.0, 0.02, pd.NA, pd.Series([1.0, 2]), 0.5).isna().all())
        self.assertTrue(npsh(1.0, 0.02, 998.0, pd.Series([np.nan, np.nan]), 0.5).isna().all())
        self.assertTrue(npsh(1.0, 0.02, 998.0, pd.Series([], dtype=float), 0.5).empty)

    def test_what_is_no_number_is_refused_where_it_is_not_missing(self):
        with self.assertRaises(cutwater.Refused) as caught:
            npsh(1.0, 0.02, 998.0, pd.Series([1.0, np.inf, np.nan]), 0.5)
        self.assertIs(caught.exception.status, cutwater.Status.NOT_FINITE)

    def test_refused(self):
        density = pd.Series([np.nan, 998.0, -1.0, 998.0], index=list("pqrs"))
        with self.assertRaises(cutwater.Refused) as caught:
            npsh(1.0, 0.02, density, 2.0, 0.5)
        self.assertEqual((caught.exception.element, caught.exception.refused_rows, caught.exception.value), (2, 1, -1.0))
        self.assertIn("1 of 4 rows refused; the first is row 2", str(caught.exception))
        self.assertIs(type(pickle.loads(pickle.dumps(caught.exception))), cutwater.Refused)
        results, refused, first = cutwater.rows(npsh, 1.0, 0.02, density, 2.0, 0.5)
        self.assertEqual(refused.tolist(), [False, False, True, False])
        self.assertEqual(list(results.index), list("pqrs"))
        self.assertEqual(results.isna().tolist(), [True, False, True, False])
        self.assertEqual(first.element, 2)

    def test_several_results_and_words(self):
        made = cutwater.point_at_small_trim(pd.Series([100.0, None, 90]), 50, 260, 250, 100)
        wanted = cutwater.point_at_small_trim(100, 50, 260, 250, 100)
        self.assertIs(type(made), type(wanted))
        for series, number, name in zip(made, wanted, made._fields):
            self.assertEqual((series[0], series.name, np.isnan(series[1])), (number, name, True))

    def test_units(self):
        level = pd.Series([6.0, np.nan, 9], name="level")
        level.attrs["units"] = "ft"
        got = npsh(1.0, 0.02, 998.0, level, 0.5)
        self.assertEqual(got[0], npsh(1.0, 0.02, 998.0, "6 ft", 0.5))
        frame = pd.DataFrame({"level": [6.0, 7], "rho": [0.998, 0.9]})
        frame.attrs["units"] = {"level": "ft", "rho": "g/cm3"}
        got = npsh(1.0, 0.02, frame["rho"], frame["level"], 0.5)
        self.assertEqual(got[1], npsh(1.0, 0.02, "0.9 g/cm3", "7 ft", 0.5))
        level.attrs["units"] = "bar"
        with self.assertRaisesRegex(cutwater.Refused, "'bar' is a unit of pressure"):
            npsh(1.0, 0.02, 998.0, level, 0.5)
        percent = pd.Series([80.0, 75])
        percent.attrs["units"] = "%"
        wanted = cutwater.pump_power_input(100, 50, 1000, "80 %")
        self.assertEqual(cutwater.pump_power_input(100, 50, 1000, percent)[0], wanted)

    def test_a_series_of_points(self):
        flows, heads = pd.Series([0.0, 50, 100], index=list("abc")), pd.Series([40.0, 38, 30])
        flows.attrs["units"] = "l/s"
        self.assertEqual(cutwater.curve_head(flows, heads, 75), cutwater.curve_head(["0 l/s", "50 l/s", "100 l/s"], [40, 38, 30], 75))
        wanted = cutwater.curve_head([0, 180, 360], [40, 38, 30], np.array([75.0, 80]))
        self.assertEqual(cutwater.curve_head(flows, heads, pd.Series([75.0, 80])).tolist(), wanted.tolist())


class Xarray(unittest.TestCase):
    def setUp(self):
        self.level = xr.DataArray(np.arange(6.0).reshape(2, 3), dims=("pump", "time"), coords={"pump": ["P-1", "P-2"]})
        self.friction = xr.DataArray([0.1, 0.2, 0.3], dims="time")

    def test_dimensions(self):
        got = npsh(1.0, 0.02, 998.0, self.level, self.friction)
        xr.testing.assert_allclose(got, by_hand(1.0, 0.02, 998.0, self.level, self.friction), rtol=1e-13)
        self.assertEqual((got.dims, list(got.pump.values), got.attrs["units"]), (("pump", "time"), ["P-1", "P-2"], "m"))
        self.assertEqual(npsh(1.0, 0.02, 998.0, self.level[0, 0], 0.5).dims, ())

    def test_units(self):
        self.level.attrs["units"] = "ft"
        self.assertEqual(float(npsh(1.0, 0.02, 998.0, self.level, 0.5)[1, 2]), npsh(1.0, 0.02, 998.0, "5 ft", 0.5))
        density = xr.DataArray([998.0, 950.0], dims="pump", coords={"pump": ["P-1", "P-2"]}, attrs={"units": "kg m-3"})
        self.assertEqual(float(npsh(1.0, 0.02, density, self.level, 0.5)[1, 2]), npsh(1.0, 0.02, 950, "5 ft", 0.5))
        density.attrs["units"] = "K"
        self.assertRaises(cutwater.Refused, npsh, 1.0, 0.02, density, self.level, 0.5)

    def test_missing_and_refused(self):
        self.level[0, 1] = np.nan
        got = npsh(1.0, 0.02, 998.0, self.level, 0.5)
        self.assertEqual(int(got.isnull().sum()), 1)
        density = self.level * 0 + 998
        density[1, 1] = -1
        results, refused, first = cutwater.rows(npsh, 1.0, 0.02, density, self.level, 0.5)
        self.assertEqual((refused.dims, int(refused.sum()), int(results.isnull().sum()), first.element), (("pump", "time"), 1, 2, 4))
        with self.assertRaises(cutwater.Refused):
            npsh(1.0, 0.02, density, self.level, 0.5)

    def test_lazy(self):
        got = npsh(1.0, 0.02, 998.0, self.level.chunk({"time": 2}), self.friction)
        self.assertIsInstance(got.data, dask.array.Array)
        xr.testing.assert_identical(got.compute(), npsh(1.0, 0.02, 998.0, self.level, self.friction))
        lazy, refused, first = cutwater.rows(npsh, 1.0, 0.02, self.level.chunk(1) - 1, 2.0, 0.5)
        self.assertEqual((refused.compute().values.all(), first), (True, None))

    def test_several_results(self):
        made = cutwater.point_at_small_trim(self.level + 100, 50, 260, 250, 100)
        self.assertEqual([result.name for result in made], list(made._fields))
        self.assertEqual(float(made[0][0, 0]), cutwater.point_at_small_trim(100, 50, 260, 250, 100)[0])


class Dask(unittest.TestCase):
    def test_array(self):
        level = dask.array.from_array(LEVELS, chunks=3)
        got = npsh(1.0, 0.02, 998.0, level, 0.5)
        self.assertIsInstance(got, dask.array.Array)
        self.assertEqual((got.chunks, got.dtype), (level.chunks, np.float64))
        self.assertEqual(got.compute(scheduler="threads").tobytes(), npsh(1.0, 0.02, 998.0, LEVELS, 0.5).tobytes())
        table = npsh(1.0, 0.02, 998.0, level[:, None], np.array([0.1, 0.2]))
        friction = dask.array.from_array(np.linspace(0.1, 0.7, 7), chunks=2)
        self.assertEqual(npsh(1.0, 0.02, 998.0, level, friction).compute().tobytes(), npsh(1.0, 0.02, 998.0, LEVELS, friction.compute()).tobytes())
        hidden = dask.array.from_array(np.ma.masked_array(LEVELS, LEVELS > 4), chunks=3, asarray=False)
        self.assertEqual(npsh(1.0, 0.02, 998.0, hidden, 0.5).compute().mask.tolist(), (LEVELS > 4).tolist())
        self.assertEqual(table.compute().tobytes(), npsh(1.0, 0.02, 998.0, LEVELS[:, None], np.array([0.1, 0.2])).tobytes())
        made = cutwater.point_at_small_trim(level + 100, 50, 260, 250, 100)
        for lazy, wanted in zip(dask.compute(*made), cutwater.point_at_small_trim(LEVELS + 100, 50, 260, 250, 100)):
            self.assertEqual(lazy.tobytes(), wanted.tobytes())

    def test_refused_when_computed(self):
        density = dask.array.from_array(np.array([998.0, -1, 998]), chunks=2)
        lazy = npsh(1.0, 0.02, density, 2.0, 0.5)
        self.assertRaises(cutwater.Refused, lazy.compute, scheduler="sync")
        self.assertEqual(cutwater.rows(npsh, 1.0, 0.02, density, 2.0, 0.5).refused.compute().tolist(), [False, True, False])

    def test_frame(self):
        frame = pd.DataFrame({"level": LEVELS, "rho": 998.0}, index=HOURS)
        frame.loc[HOURS[2], "level"] = np.nan
        frame.attrs["units"] = {"level": "ft"}
        lazy = dask.dataframe.from_pandas(frame, npartitions=3)
        got = npsh(1.0, 0.02, lazy["rho"], lazy["level"], 0.5)
        self.assertIsInstance(got, dask.dataframe.Series)
        pd.testing.assert_series_equal(got.compute(), npsh(1.0, 0.02, frame["rho"], frame["level"], 0.5), check_freq=False)
        made = cutwater.point_at_small_trim(lazy["rho"], 50, 260, 250, 100)
        self.assertEqual(made[1].compute().iloc[0], cutwater.point_at_small_trim(998, 50, 260, 250, 100)[1])
        with self.assertRaisesRegex(TypeError, "in one call"):
            npsh(1.0, 0.02, lazy["rho"], frame["level"], 0.5)


class Pint(unittest.TestCase):
    def test_read_by_their_units(self):
        u = UNITS
        self.assertEqual(npsh(1.0 * u.bara, 0.02, 998.0, 6 * u.foot, 50 * u.cm), npsh(1.0, 0.02, 998.0, "6 ft", "50 cm"))
        self.assertEqual(npsh(1.0, 0.02, 0.998 * u.g / u.cm**3, 2, 0.5), npsh(1.0, 0.02, "0.998 g/cm3", 2, 0.5))
        self.assertAlmostEqual(cutwater.pump_power_input(440 * u.gallon / u.minute, 50 * u.m, 1000 * u.kg / u.m**3, 0.8),
                               cutwater.pump_power_input("440 US gpm", 50, 1000, 0.8), places=12)
        self.assertEqual(cutwater.specific_speed(2900 * u.rpm, 100, 150, stages=3), cutwater.specific_speed(2900, 100, 150, stages=3))
        self.assertEqual(cutwater.water_density(u.Quantity(20, "degC"), 1.0), cutwater.water_density(20, 1.0))
        self.assertEqual(npsh(1.0, 0.02, 998.0, np.array([6.0, 7]) * u.foot, 0.5).tolist(), npsh(1.0, 0.02, 998.0, ["6 ft", "7 ft"], 0.5).tolist())

    def test_wrong_ones_are_refused(self):
        u = UNITS
        for wrong in (1.0 * u.bar, 2 * u.m, u.Quantity(5, ""), 3 * u.kg):
            with self.subTest(str(wrong)), self.assertRaisesRegex(cutwater.Refused, "surface_pressure"):
                npsh(wrong, 0.02, 998.0, 2, 0.5)
        for wrong in (u.Quantity(20, "delta_degC"), 20 * u.m):
            self.assertRaises(cutwater.Refused, cutwater.water_density, wrong, 1.0)
        self.assertRaises(cutwater.Refused, cutwater.specific_speed, 48 / u.m, 100, 150)

    def test_every_unit_of_an_input(self):
        """What Pint knows under our own name of the unit comes in as the same number."""
        known = {"m3/h": "m**3/hour", "l/min": "liter/minute", "m": "m", "mm": "mm", "um": "um", "kW": "kW", "W": "W", "kg/m3": "kg/m**3", "m/s": "m/s",
                 "mm2/s": "mm**2/s", "N": "N", "N m": "N*m", "MPa": "MPa", "GPa": "GPa", "bar": "bar", "m2": "m**2", "m3": "m**3", "s": "s", "h": "hour",
                 "kg": "kg", "mPa s": "mPa*s", "kJ/(kg K)": "kJ/kg/kelvin", "W/(m K)": "W/m/kelvin", "kWh": "kWh", "V": "V", "K": "kelvin"}
        tried = 0
        for name, position in zip(cutwater.functions(), range(1000)):
            record = _objects.record_of(position)
            for index, unit in enumerate(record.units):
                if unit not in known or not record.columns[index]:
                    continue
                for given in (UNITS.Quantity(1.0, known[unit]), UNITS.Quantity(1.0, known[unit]).to_base_units()):
                    values, text = _objects.pint_values(record, index, given)
                    got = _objects.in_unit(record, index, np.array([values]), text)[0]
                    self.assertTrue(np.isclose(got, 1.0, rtol=1e-12), (name, record.inputs[index], str(given), got))
                    tried += 1
        self.assertGreater(tried, 1000)

    def test_other_calls(self):
        u = UNITS
        self.assertEqual(cutwater.refusal(npsh, 1.0 * u.bara, 0.02, 998, 2 * u.m, 0.5), "")
        self.assertIn("neither gauge nor absolute", cutwater.refusal(npsh, 1.0 * u.bar, 0.02, 998, 2 * u.m, 0.5))
        self.assertEqual(cutwater.solve_for(npsh, "liquid_level", 5, 1.0, 0.02, 998, None, 50 * u.cm), cutwater.solve_for(npsh, "liquid_level", 5, 1.0, 0.02, 998, None, 0.5))
        self.assertEqual(cutwater.working(npsh, 1.0, 0.02, 998, 2, 50 * u.cm), cutwater.working(npsh, 1.0, 0.02, 998, 2, 0.5))
        self.assertEqual(repr(cutwater.sensitivity(cutwater.curve_head, pd.Series([0.0, 50, 100]), [40, 38, 30], 75)),
                         repr(cutwater.sensitivity(cutwater.curve_head, [0, 50, 100], [40, 38, 30], 75)))


class Masked(unittest.TestCase):
    def test_masked(self):
        level = np.ma.masked_array([2.0, 1e9, 3.0], mask=[False, True, False])
        got = npsh(1.0, 0.02, 998.0, level, 0.5)
        self.assertIsInstance(got, np.ma.MaskedArray)
        self.assertEqual(got.mask.tolist(), [False, True, False])
        self.assertEqual(got.compressed().tolist(), [npsh(1.0, 0.02, 998.0, 2.0, 0.5), npsh(1.0, 0.02, 998.0, 3.0, 0.5)])
        density = np.ma.masked_array([-1.0, -5.0, 998.0], mask=[True, False, False])
        with self.assertRaises(cutwater.Refused) as caught:
            npsh(1.0, 0.02, density, level, 0.5)  # the second row is masked in the level
            npsh(1.0, 0.02, density, 2.0, 0.5)
        self.assertEqual(caught.exception.value, -5.0)
        self.assertIs(npsh(1.0, 0.02, 998.0, np.ma.masked, 0.5), np.ma.masked)

    def test_nothing_is_imported_for_others(self):
        code = ("import sys, numpy, cutwater; cutwater.npsh_available(1.0, 0.02, 998.0, numpy.ma.masked_array([1.0, 2], [0, 1]), 0.5);"
                "print([name for name in ('pandas', 'xarray', 'dask', 'pint') if name in sys.modules])")
        self.assertEqual(subprocess.run([sys.executable, "-c", code], capture_output=True, encoding="utf-8", check=True).stdout.strip(), "[]")


if __name__ == "__main__":
    unittest.main()
