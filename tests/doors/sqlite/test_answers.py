"""Several results, series of rows, names for arguments, and the calls that are not one formula."""
import json
import math
import random
import sqlite3
import struct
import unittest

import database

SUCTION = (1.013, 0.0234, 998.2, 2, 0.5)


def npsh(level):
    return (1.013 - 0.0234) * 1e5 / (998.2 * 9.80665) + level - 0.5


class Answers(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.db = database.connect()

    def value(self, name, *arguments):
        return database.value(self.db, name, arguments)

    def test_by_name_and_joined(self):
        self.db.execute("CREATE TABLE reading (tag, level)")
        self.db.executemany("INSERT INTO reading VALUES (?, ?)", [(f"P-{i}", i) for i in range(1, 6)] + [("P-6", None), ("P-7", "1 kg")])
        rows = self.db.execute("SELECT tag, npsh_m, refusal_input FROM reading, npsh_available_checked(1.013, 0.0234, 998.2, level, 0.5)").fetchall()
        self.assertEqual([row[0] for row in rows], [f"P-{i}" for i in range(1, 8)])
        for level, (_, got, _) in enumerate(rows[:5], 1):
            self.assertAlmostEqual(got, npsh(level), 9)
        self.assertEqual([row[1:] for row in rows[5:]], [(None, "liquid_level_m")] * 2)
        by_name = self.db.execute(
            "SELECT tag, npsh_m FROM npsh_available a JOIN reading r ON a.liquid_level_m = r.level WHERE friction_head_m = 0.5 AND density_kgm3 = 998.2"
            " AND surface_pressure_bara = 1.013 AND vapour_pressure_bara = 0.0234 AND tag < 'P-6' ORDER BY tag").fetchall()
        self.assertEqual(by_name, [row[:2] for row in rows[:5]])
        self.db.execute("ALTER TABLE reading ADD COLUMN npsh")
        self.db.execute("ALTER TABLE reading ADD COLUMN why")
        self.db.execute("UPDATE reading SET (npsh, why) = (SELECT npsh_m, refusal FROM npsh_available_checked(1.013, 0.0234, 998.2, level, 0.5))")
        self.assertEqual(self.db.execute("SELECT count(npsh), count(why) FROM reading").fetchone(), (5, 2))

    def test_columns_called_as_the_inputs(self):
        """In a subquery a bare name is the call's own input: that is said, and no row comes to nothing unseen."""
        self.db.execute("CREATE TABLE own (flow_m3h, head_m, density_kgm3, power_input_kW, stages, efficiency, why)")
        self.db.execute("INSERT INTO own VALUES (120, 48, 1050, 24, 2, NULL, NULL)")
        update = "UPDATE own SET (efficiency, why) = (SELECT c.efficiency, c.refusal FROM pump_efficiency_checked({0}flow_m3h, {0}head_m, {0}density_kgm3, {0}power_input_kW) c)"
        with self.assertRaisesRegex(sqlite3.OperationalError, "flow_m3h was not given; a column of your table that is called so needs the table's name"):
            self.db.execute(update.format(""))
        self.db.execute(update.format("own."))
        self.assertAlmostEqual(self.db.execute("SELECT efficiency FROM own WHERE why IS NULL").fetchone()[0], 1050 * 9.80665 * 120 / 3600 * 48 / 24000, 12)
        optional = "SELECT (SELECT n_rpm FROM specific_speed_checked(2900, 120, 48, 1, {}stages)) FROM own".replace("n_rpm", self.result_of("specific_speed"))
        with self.assertRaisesRegex(sqlite3.OperationalError, "stages was not given"):
            self.db.execute(optional.format("")).fetchall()
        self.assertEqual(self.db.execute(optional.format("own.")).fetchone()[0], self.value("specific_speed", 2900, 120, 48, 1, 2))

    @staticmethod
    def result_of(name):
        return database.FUNCTIONS[name]["results"][0]["name"]

    def test_series_of_rows(self):
        chance = random.Random(7)
        flows = sorted(chance.uniform(0, 1000) for _ in range(500))
        points = [(flow, 60 - 0.00003 * flow * flow) for flow in flows]
        shuffled = chance.sample(points, len(points))
        self.db.execute("CREATE TABLE curve (flow, head)")
        self.db.executemany("INSERT INTO curve VALUES (?, ?)", shuffled)
        got = self.db.execute("SELECT series(flow, flow), series(head, flow), series(flow) FROM curve").fetchone()
        wanted = (flows, [head for _, head in points], [flow for flow, _ in shuffled])
        for text, numbers in zip(got, wanted):
            self.assertEqual([struct.pack(">d", n) for n in json.loads(text)], [struct.pack(">d", n) for n in numbers])
        head = self.db.execute("SELECT curve_head(series(flow, flow), series(head, flow), 500) FROM curve").fetchone()[0]
        self.assertEqual(head, self.value("curve_head", flows, wanted[1], 500))
        self.assertAlmostEqual(head, 60 - 0.00003 * 500 ** 2, 3)
        self.assertIsNone(self.db.execute("SELECT series(flow) FROM curve WHERE flow < 0").fetchone()[0])
        mixed = self.db.execute("SELECT series(v, k) FROM (SELECT '5 m' AS v, 'b' AS k UNION ALL SELECT NULL, 'a' UNION ALL SELECT 7, 3 UNION ALL SELECT 'ü', 'c')").fetchone()[0]
        self.assertEqual(json.loads(mixed), [7, None, "5 m", "ü"])
        self.assertEqual(self.db.execute("SELECT json_array_length(series(flow)) FROM curve").fetchone()[0], 500)

    def test_several_results(self):
        flows, heads = [0, 20, 40, 60], [55, 57, 58, 50]
        self.assertEqual(json.loads(self.value("curve_is_stable", flows, heads)), {"shape": "drooping", "top_flow_m3h": 40.0, "top_head_m": 58.0})
        self.assertEqual(database.rows(self.db, "curve_is_stable", (flows, heads)), (["shape", "top_flow_m3h", "top_head_m"], [("drooping", 40.0, 58.0)]))
        nested = self.db.execute("SELECT json_object('curve', curve_is_stable(?, ?))", (json.dumps(flows), json.dumps(heads))).fetchone()[0]
        self.assertEqual(json.loads(nested)["curve"]["top_head_m"], 58)  # taken for JSON, not for a text

    def test_solving(self):
        self.assertAlmostEqual(self.value("solve_for", "npsh_available", "liquid_level", None, "5 m", 1.013, 0.0234, 998.2, None, 0.5), 5 - npsh(0), 9)
        found = json.loads(self.value("solutions", "velocity_head", "flow_m3h", None, 1, None, 100))
        self.assertAlmostEqual(found[0], (2 * 9.80665) ** 0.5 * math.pi / 4 * 0.01 * 3600, 6)
        self.assertEqual(database.rows(self.db, "solutions", ("velocity_head", "flow_m3h", None, 1, None, 100)), (["found"], [(one,) for one in found]))

    def test_uncertainty(self):
        head = (100 / 3600 / (math.pi / 4 * 0.15 ** 2)) ** 2 / (2 * 9.80665)
        names, ((value, standard, *_),) = database.rows(self.db, "uncertainty", ("velocity_head", None, [1, None], 100, 150))
        self.assertEqual(names, ["value", "standard_uncertainty", "low", "high", "remark"])
        self.assertAlmostEqual(value, head, 12)
        self.assertAlmostEqual(standard / head, 0.02, 4)
        self.assertEqual(json.loads(self.value("uncertainty", "velocity_head", None, [1, None], 100, 150))["standard_uncertainty"], standard)
        shares = json.loads(self.value("uncertainty_shares", "npsh_available", None, [0.01, 0, 0, "20 cm", 0], *SUCTION))
        self.assertAlmostEqual(sum(shares), 1, 9)
        self.assertEqual(len(database.rows(self.db, "sensitivity", ("npsh_available", None, *SUCTION))[1]), 5)

    def test_units_and_texts(self):
        self.assertAlmostEqual(self.value("convert_unit", 440, "US gpm", "m3/h"), 440 * 231 * 0.0254 ** 3 * 60, 9)  # NIST SP 811: a US gallon is 231 cubic inches
        self.assertEqual(self.value("quantity", "440 US gpm", "m3/h"), self.value("convert_unit", 440, "US gpm", "m3/h"))
        self.assertEqual(self.value("refusal", "npsh_available", *SUCTION), "")
        working = self.value("working", "npsh_available", *SUCTION)
        self.assertIn("NPSHA", working)
        self.assertEqual(self.value("working_line", 2, "npsh_available", *SUCTION), working.splitlines()[1])
        self.assertEqual(json.loads(self.value("find_function", "NPSHR"))[0]["function"], database.rows(self.db, "find_function", ("NPSHR",))[1][0][0])

    def test_every_example(self):
        """Each worked example of the catalogue, as a value, as a table and checked."""
        for name, function in database.FUNCTIONS.items():
            with self.subTest(name):
                given = list(function["example"]["inputs"].values())
                names, rows = database.rows(self.db, name, given)
                self.assertEqual(names, [result["name"] for result in function["results"]])
                self.assertEqual([row[:len(names)] for row in database.rows(self.db, name + "_checked", given)[1]], rows)
                self.assertIsNotNone(database.value(self.db, name, given))


if __name__ == "__main__":
    unittest.main()
