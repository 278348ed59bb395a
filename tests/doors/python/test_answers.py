"""The four answers: working, solved backwards, uncertainty, sensitivity."""
import dataclasses
import json
import math
import pickle
import threading
import unittest
import warnings

import numpy as np

import cutwater
from cutwater import Refused, Status

with warnings.catch_warnings():
    warnings.simplefilter("ignore", DeprecationWarning)  # its own, of modules of Python that it uses
    import uncertainties

GRAVITY = 9.80665
SUCTION = {"surface_pressure_bara": 1.01325, "vapour_pressure_bara": 0.02339, "density_kgm3": 998.2, "friction_head_m": 0.5}
PIPE = {"flow_m3h": 90, "length_m": 120, "roughness_mm": 0.046, "kinematic_viscosity_mm2s": 1.0}
CURVE = {"flows_m3h": [0, 50, 100], "heads_m": [40, 38, 30]}
FUNCTIONS = cutwater.catalogue()["functions"]


class Working(unittest.TestCase):
    def test_forms(self):
        text = cutwater.working("npsh_available", liquid_level_m="2 m", **SUCTION)
        for part in ("npsh_available", "Equation", "998.2 kg/m3", "11.612", "ISO 17769-1"):
            self.assertIn(part, text)
        self.assertEqual(cutwater.working(cutwater.npsh_available, 1.01325, 0.02339, 998.2, "2 m", 0.5), text)
        cutwater.working("npsh_available", 1, 0, 998, 1, 0, form="ascii").encode("ascii")
        self.assertIn("#", cutwater.working("npsh_available", 1, 0, 998, 1, 0, form="markdown"))
        made = json.loads(cutwater.working("npsh_available", liquid_level_m=2, form="json", **SUCTION))
        self.assertIn(cutwater.npsh_available(liquid_level_m=2, **SUCTION), [result["value"] for result in made["results"]])

    def test_every_function_in_every_form(self):
        for function in FUNCTIONS:
            with self.subTest(function["name"]):
                made = {form: cutwater.working(function["name"], **function["example"]["inputs"], form=form)
                        for form in ("text", "ascii", "markdown", "json")}
                self.assertEqual(json.loads(made["json"])["status"], 0)
                self.assertTrue(made["ascii"].isascii())
                for form in ("text", "markdown"):
                    self.assertIn(function["name"], made[form].replace("\\", ""))
                    self.assertNotIn("Refused", made[form])

    def test_refused_calls_say_why(self):
        with self.assertRaises(Refused) as caught:
            cutwater.npsh_available(liquid_level_m=2, **{**SUCTION, "density_kgm3": -1})
        for form in ("text", "ascii", "markdown", "json"):
            text = cutwater.working("npsh_available", liquid_level_m=2, **{**SUCTION, "density_kgm3": -1}, form=form)
            self.assertIn(str(caught.exception)[:60], " ".join(text.replace("\\", "").split()))
        for arguments in ((), ("1 barg", 0, 998, 1, 1), (1, 0, 998, [1, 2], 1), ("much", 0, 998, 1, 1), (math.nan, 0, 998, 1, 1)):
            text = cutwater.working("npsh_available", *arguments)
            self.assertIn("Refused", text)
            self.assertIn("Equation", text)
        self.assertIn("no function", cutwater.working("no_such", 1, 2))

    def test_text_in_a_series(self):
        for form in ("text", "ascii", "markdown"):
            self.assertIn("5 kg", cutwater.working("curve_head", [0, "5 kg"], [1, 2], 1, form=form))
        made = json.loads(cutwater.working("curve_head", [0, "5 kg"], [1, 2], 1, form="json"))
        self.assertEqual((made["status"], made["refusal"]["element"]), (Status.WRONG_QUANTITY, 1))
        # the same keys as the library's own, which this one stands in for
        own = json.loads(cutwater.working("no_such", form="json"))
        self.assertEqual(set(made), set(own))
        self.assertEqual(set(made["refusal"]) - {"element"}, set(own["refusal"]))

    def test_misuse(self):
        self.assertRaises(ValueError, cutwater.working, "npsh_available", form="html")
        self.assertRaises(TypeError, cutwater.working, "npsh_available", no_such=1)
        self.assertRaises(TypeError, cutwater.working, "npsh_available", 1, 2, 3, 4, 5, 6)
        self.assertRaises(TypeError, cutwater.working, "npsh_available", 1j)
        self.assertRaises(LookupError, cutwater.working, 3)

    def test_long_series(self):
        flows = np.arange(20_000.0)
        text = cutwater.working("curve_head", flows, 100 - 1e-3 * flows, 1000.5, form="json")
        self.assertEqual(len(json.loads(text)["inputs"][0]["value"]), len(flows))


class Solve(unittest.TestCase):
    def test_static_level_for_a_suction_margin(self):
        npsh = 3.0 + 1.5  # NPSH3 and the margin
        level = cutwater.solve_for("npsh_available", "liquid_level", npsh, **SUCTION)
        self.assertAlmostEqual(level, npsh - (1.01325 - 0.02339) * 1e5 / (998.2 * GRAVITY) + 0.5, places=12)
        self.assertAlmostEqual(cutwater.npsh_available(liquid_level_m=level, **SUCTION), npsh, places=13)
        self.assertEqual(cutwater.solve_for(cutwater.npsh_available, "liquid_level_m", "4500 mm", 1.01325, 0.02339, 998.2, None, 0.5), level)

    def test_speed_for_a_power(self):
        speed = cutwater.solve_for("power_at_speed", "new_speed", "11 kW", 15, 1480)
        self.assertAlmostEqual(speed, 1480 * (11 / 15) ** (1 / 3), delta=1e-10)

    def test_temperature_at_which_a_margin_is_gone(self):
        vapour = cutwater.solve_for("npsh_available", "vapour_pressure", 3.2, 1.01325, None, 960, 1.0, 0.5)
        temperature = cutwater.solve_for("water_vapour_pressure", "temperature", vapour)
        self.assertAlmostEqual(vapour, 1.01325 - (3.2 - 1.0 + 0.5) * 960 * GRAVITY / 1e5, places=12)
        self.assertAlmostEqual(cutwater.water_vapour_pressure(temperature), vapour, places=13)
        self.assertTrue(90 < temperature < 95, temperature)

    def test_bore_for_a_friction_loss(self):
        bore = cutwater.solve_for("pipe_friction_head", "bore", 2.5, **PIPE)
        self.assertAlmostEqual(cutwater.pipe_friction_head(bore_mm=bore, **PIPE), 2.5, places=11)
        # Colebrook-White by hand at the bore found
        velocity = 90 / 3600 / (math.pi / 4 * (bore / 1000) ** 2)
        reynolds, root = velocity * bore / 1000 / 1e-6, 8.0
        for _ in range(60):
            root = -2 * math.log10(0.046 / bore / 3.7 + 2.51 / reynolds * root)
        self.assertAlmostEqual(120 / (bore / 1000) * velocity**2 / (2 * GRAVITY) / root**2, 2.5, delta=2.5e-3)

    def test_no_answer(self):
        with self.assertRaises(Refused) as caught:
            cutwater.solve_for("npsh_available", "liquid_level", 5, low=50, high="60 m", **SUCTION)
        self.assertIs(caught.exception.status, Status.NO_ANSWER)
        self.assertEqual(caught.exception.name, "liquid_level_m")
        self.assertIn("searched: 50 to 60 m", str(caught.exception))

    def test_several(self):
        humped = {"flows_m3h": [0, 50, 100], "heads_m": [30, 34, 20]}
        with self.assertRaises(Refused) as caught:
            cutwater.solve_for("curve_head", "flow", 32, **humped)
        self.assertIs(caught.exception.status, Status.SEVERAL_ANSWERS)
        both = cutwater.solutions("curve_head", "flow", 32, **humped)
        self.assertEqual(len(both), 2)
        for flow in both:
            self.assertAlmostEqual(cutwater.curve_head(flow_m3h=flow, **humped), 32, places=11)
        self.assertAlmostEqual(cutwater.solve_for("curve_head", "flow", 32, low="50 m3/h", **humped), both[1], places=12)

    def test_misuse(self):
        self.assertRaises(Refused, cutwater.solve_for, "npsh_available", "no_such", 1)
        self.assertRaises(Refused, cutwater.solve_for, "npsh_available", "liquid_level", "1 bara", **SUCTION)
        self.assertRaises(Refused, cutwater.solve_for, "npsh_available", "liquid_level", 1, result="no_such", **SUCTION)
        self.assertRaises(Refused, cutwater.solve_for, "npsh_available", "liquid_level", math.nan, **SUCTION)
        self.assertRaises(Refused, cutwater.solve_for, "npsh_available", "liquid_level", 1)
        self.assertRaises(Refused, cutwater.solve_for, "npsh_available", "liquid_level", 1, low="1 bara", **SUCTION)
        self.assertRaises(ValueError, cutwater.solve_for, "npsh_available", "liquid_level", 1, low=math.nan, **SUCTION)
        self.assertRaises(TypeError, cutwater.solve_for, "npsh_available", 3, 1, **SUCTION)
        self.assertRaises(TypeError, cutwater.solve_for, "npsh_available", "liquid_level", [1], **SUCTION)
        self.assertRaises(LookupError, cutwater.solve_for, "no_such", "liquid_level", 1)


class Uncertainty(unittest.TestCase):
    def same(self, answer, independent, places=6):
        self.assertAlmostEqual(answer.value, independent.nominal_value, delta=1e-12 * abs(independent.nominal_value))
        self.assertAlmostEqual(answer.standard / independent.std_dev, 1, places=places)

    def test_against_an_independent_library(self):
        level, friction, density = uncertainties.ufloat(2, 0.02), uncertainties.ufloat(0.5, 0.05), uncertainties.ufloat(998.2, 1.5)
        surface = uncertainties.ufloat(1.01325, 0.002)
        independent = (surface - 0.02339) * 1e5 / (density * GRAVITY) + level - friction
        answer = cutwater.uncertainty("npsh_available", liquid_level_m=2, **SUCTION, standard={
            "liquid_level": "2 cm", "friction_head_m": 0.05, "density": 1.5, "surface_pressure": "2 mbar(a)"})
        self.same(answer, independent)
        components = independent.error_components()
        for name, variable in (("liquid_level_m", level), ("friction_head_m", friction), ("density_kgm3", density),
                               ("surface_pressure_bara", surface)):
            self.assertAlmostEqual(answer.shares[name], (components[variable] / independent.std_dev) ** 2, places=6)
            self.assertAlmostEqual(answer.slopes[name] / independent.derivatives[variable], 1, places=6)
        self.assertEqual(answer.shares["vapour_pressure_bara"], 0)
        self.assertTrue(math.isnan(answer.slopes["vapour_pressure_bara"]))
        self.assertTrue(answer.trusted)
        self.assertAlmostEqual(answer.high - answer.value, 1.959963984540054 * answer.standard, places=9)

    def test_correlated(self):
        flow, head = uncertainties.correlated_values_norm([(120, 1.5), (40, 0.4)], [[1, -0.6], [-0.6, 1]])
        efficiency = uncertainties.ufloat(0.72, 0.01)
        independent = 998 * GRAVITY * flow / 3600 * head / efficiency / 1000
        answer = cutwater.uncertainty("pump_power_input", 120, 40, 998, 0.72, standard={"flow": 1.5, "head_m": 0.4, "efficiency": 0.01},
                                      correlations={("flow", "head"): -0.6})
        self.same(answer, independent)
        self.assertAlmostEqual(sum(answer.shares.values()), 1, places=12)

    def test_iterative_function(self):
        friction = uncertainties.wrap(lambda flow, bore: cutwater.pipe_friction_head(**{**PIPE, "flow_m3h": flow}, bore_mm=bore))
        independent = friction(uncertainties.ufloat(90, 0.5), uncertainties.ufloat(150, 0.3))
        answer = cutwater.uncertainty("pipe_friction_head", bore_mm=150, **PIPE, standard={"flow": 0.5, "bore": 0.3})
        self.same(answer, independent, places=4)

    def test_monte_carlo(self):
        given = dict(standard={"flow": 6, "head_m": 2.0, "efficiency": "4 %"}, spreads={"flow": "rectangular", "head": "arcsine"})
        answer = cutwater.uncertainty("pump_power_input", 120, 40, 998, 0.72, monte_carlo=300_000, seed=7, **given)
        self.assertEqual((answer.trials, answer.refused), (300_000, 0))
        draw = np.random.default_rng(1)
        n = 300_000
        flow = draw.uniform(120 - 6 * math.sqrt(3), 120 + 6 * math.sqrt(3), n)
        head = 40 + 2.0 * math.sqrt(2) * np.sin(draw.uniform(0, 2 * math.pi, n))
        power = 998 * GRAVITY * flow / 3600 * head / draw.normal(0.72, 0.04, n) / 1000
        self.assertAlmostEqual(answer.mean, power.mean(), delta=5 * power.std() * math.sqrt(2 / n))
        self.assertAlmostEqual(answer.deviation / power.std(), 1, delta=0.01)
        low, high = np.quantile(power, [0.025, 0.975])
        self.assertAlmostEqual(answer.trial_low, low, delta=0.02 * power.std())
        self.assertAlmostEqual(answer.trial_high, high, delta=0.02 * power.std())
        again = cutwater.uncertainty("pump_power_input", 120, 40, 998, 0.72, monte_carlo=300_000, seed=7, **given)
        self.assertEqual(repr(again), repr(answer))  # NaN is not equal to itself
        other = cutwater.uncertainty("pump_power_input", 120, 40, 998, 0.72, monte_carlo=300_000, seed=8, **given)
        self.assertNotEqual(other.mean, answer.mean)

    def test_when_it_is_run(self):
        ask = lambda u, **more: cutwater.uncertainty("pump_power_input", 120, 40, 998, 0.72, standard={"efficiency": u}, **more)
        self.assertEqual(ask(0.001).trials, 0)
        self.assertTrue(math.isnan(ask(0.001).mean))
        doubted = ask(0.15)
        self.assertFalse(doubted.trusted)
        self.assertEqual(doubted.trials, 200_000)
        self.assertTrue(doubted.remark)
        self.assertEqual(ask(0.15, monte_carlo=False).trials, 0)
        self.assertEqual(ask(0.001, monte_carlo=True).trials, 200_000)

    def test_temperature_as_a_difference(self):
        kelvin, degree, number = (cutwater.uncertainty("water_vapour_pressure", 60, standard={"temperature": u}).standard
                                  for u in ("0.5 K", "0.5 degC", 0.5))
        self.assertAlmostEqual(kelvin, number, places=12)
        self.assertAlmostEqual(degree, number, places=12)

    def test_series(self):
        one = cutwater.uncertainty("curve_head", flow_m3h=60, **CURVE, standard={"heads": 0.3})
        each = cutwater.uncertainty("curve_head", flow_m3h=60, **CURVE, standard={"heads": np.full(3, 0.3)})
        self.assertEqual(one.standard, each.standard)
        self.assertAlmostEqual(one.shares["heads_m"], 1, places=14)
        self.assertRaises(Refused, cutwater.uncertainty, "curve_head", flow_m3h=60, **CURVE, standard={"heads": [0.3, 0.3]})
        self.assertRaises(TypeError, cutwater.uncertainty, "curve_head", flow_m3h=60, **CURVE, standard={"heads": ["1 ft", 1, 1]})

    def test_scatter_of_the_relation(self):
        """With exact inputs the 95 % interval is the scatter that the page states: 30 %, 15 K."""
        shroud = (3.6775, 1000, 2900, 200, 60)
        force = cutwater.uncertainty("shroud_force", *shroud, standard={})
        self.assertAlmostEqual(force.high / force.value, 1.3, places=12)
        self.assertEqual(force.shares["relation"], 1)
        self.assertEqual(force.relation, force.standard)
        housing = cutwater.uncertainty("bearing_housing_temperature", 90, 0.25, 12, 30, standard={})
        self.assertAlmostEqual(housing.high - housing.low, 30, places=9)
        given = {"standard": {"rim_pressure": 0.2}}
        joined = cutwater.uncertainty("shroud_force", *shroud, **given)
        off = cutwater.uncertainty("shroud_force", *shroud, **given, relation=0)
        self.assertNotIn("relation", off.shares)
        self.assertAlmostEqual(joined.standard, math.hypot(off.standard, joined.relation), places=6)
        self.assertAlmostEqual(sum(joined.shares.values()), 1, places=12)
        self.assertEqual(cutwater.uncertainty_shares("shroud_force", *shroud, **given), joined.shares)
        own = cutwater.uncertainty("pressure_from_head", 100, 998, standard={}, relation="2 %")
        self.assertAlmostEqual(own.standard / own.value, 0.02, places=12)
        self.assertRaises(Refused, cutwater.uncertainty, "shroud_force", *shroud, standard={}, relation="3 K")
        self.assertRaises(TypeError, cutwater.uncertainty, "shroud_force", *shroud, standard={}, relation=[1])

    def test_is_a_plain_record(self):
        answer = cutwater.uncertainty("water_vapour_pressure", 60, standard={"temperature": 0.5})
        self.assertEqual(repr(pickle.loads(pickle.dumps(answer))), repr(answer))
        self.assertRaises(dataclasses.FrozenInstanceError, setattr, answer, "value", 1)

    def test_misuse(self):
        ask = lambda **more: cutwater.uncertainty("water_vapour_pressure", 60, **{"standard": {"temperature": 0.5}, **more})
        for wrong in ({"temperature": -1}, {"temperature": "1 bara"}, {"temperature": [1, 2]}, {"temperature": math.nan}):
            self.assertRaises(Refused, ask, standard=wrong)
        self.assertRaises(Refused, ask, result="no_such")
        self.assertRaises(Refused, ask, monte_carlo=10**12)
        self.assertRaises(Refused, ask, correlations={("temperature", "temperature"): 1})
        for wrong in ({"no_such": 1}, {"temperature": 1, "temperature_degC": 1}):
            self.assertRaises(TypeError, ask, standard=wrong)
        for wrong in ({"monte_carlo": 0}, {"monte_carlo": -5}, {"coverage": 0}, {"coverage": 1.5}, {"coverage": math.nan},
                      {"spreads": {"temperature": "wide"}}):
            self.assertRaises(ValueError, ask, **wrong)
        for wrong in (-1, 2**64):
            self.assertRaises((TypeError, OverflowError), ask, seed=wrong)
        self.assertRaises(TypeError, cutwater.uncertainty, "water_vapour_pressure", 60)

    def test_interpreter_is_free_meanwhile(self):
        done = threading.Event()
        ticks = 0

        def count():
            nonlocal ticks
            while not done.wait(0.001):
                ticks += 1

        thread = threading.Thread(target=count)
        thread.start()
        cutwater.uncertainty("pump_power_input", 120, 40, 998, 0.72, monte_carlo=4_000_000,
                             standard={"flow": 1, "head": 1, "density": 1, "efficiency": 0.01})
        during = ticks
        done.set()
        thread.join()
        self.assertGreater(during, 3)


class Sensitivity(unittest.TestCase):
    def test_power_laws(self):
        rows = cutwater.sensitivity("power_at_speed", 15, 1480, 1200)
        self.assertEqual([row.input for row in rows[2:]], ["power_kW"])
        self.assertEqual({row.input: round(row.relative_change, 6) for row in rows},
                         {"new_speed_rpm": 3, "speed_rpm": -3, "power_kW": 1})
        self.assertAlmostEqual(rows[2].slope, (1200 / 1480) ** 3, places=9)
        self.assertTrue(all(row.relative is True for row in rows))

    def test_sorted(self):
        rows = cutwater.sensitivity("npsh_available", liquid_level_m=2, **SUCTION)
        sizes = [abs(row.relative_change) for row in rows]
        self.assertEqual(sizes, sorted(sizes, reverse=True))
        self.assertEqual({row.input for row in rows}, {*SUCTION, "liquid_level_m"})

    def test_nought_tells_the_slope_only(self):
        rows = cutwater.sensitivity("npsh_available", liquid_level_m=0, **SUCTION)
        self.assertEqual((rows[-1].input, rows[-1].relative), ("liquid_level_m", False))
        self.assertAlmostEqual(rows[-1].slope, 1, places=8)

    def test_every_function(self):
        asked = 0
        for function in FUNCTIONS:
            if not any(result["kind"] == "quantity" for result in function["results"]):
                continue
            with self.subTest(function["name"]):
                rows = cutwater.sensitivity(function["name"], **function["example"]["inputs"])
                self.assertEqual({row.input for row in rows},
                                 {entry["name"] for entry in function["inputs"] if entry["kind"] != "choice"})
                asked += 1
        self.assertGreater(asked, 50)

    def test_misuse(self):
        self.assertRaises(Refused, cutwater.sensitivity, "power_at_speed", -1, 2, 3)
        self.assertRaises(Refused, cutwater.sensitivity, "power_at_speed", 1, 2, 3, result="no_such")
        self.assertRaises(Refused, cutwater.sensitivity, "power_at_speed", [1, 2], 2, 3)
        self.assertRaises(TypeError, cutwater.sensitivity, "power_at_speed", 1, 2, 3, result=3)


if __name__ == "__main__":
    unittest.main()
