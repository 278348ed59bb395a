"""Several results, names, defaults, arrays, and the calls that are not one formula; the guide page followed to the letter."""
import math
import os
import pathlib
import re
import unittest

import server

GUIDE = pathlib.Path(server.SOURCE, "bindings/postgresql/README.md").read_text(encoding="utf-8")
SUCTION = "1.013, 0.0234, 998.2, 2, 0.5"


def npsh(level):
    return (1.013 - 0.0234) * 1e5 / (998.2 * 9.80665) + level - 0.5


class Answers(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.db = server.the_server().database("answers").cursor()

    def rows(self, statement, values=None):
        self.db.execute(statement, values)
        return self.db.fetchall()

    def one(self, expression):
        return self.rows(f"SELECT {expression}")[0][0]

    def test_names_and_defaults(self):
        by_name = self.one("npsh_available(friction_head_m => 0.5, surface_pressure_bara => 1.013, liquid_level_m => 2, density_kgm3 => 998.2, vapour_pressure_bara => 0.0234)")
        self.assertEqual(by_name, self.one(f"npsh_available({SUCTION})"))
        self.assertAlmostEqual(by_name, npsh(2), 9)
        self.assertEqual(self.one("specific_speed(2900, 100, 150, stages => 3)"), self.one("specific_speed('2900 rpm', '100', '150 m', stages => '3')"))

    def test_several_results(self):
        self.assertEqual(self.rows("SELECT * FROM curve_is_stable(ARRAY[0, 20, 40, 60], ARRAY[55, 57, 58, 50])"), [("drooping", 40, 58)])
        self.assertEqual(self.one("(curve_is_stable(ARRAY[0, 20, 40, 60], ARRAY[55, 57, 58, 50])).top_flow_m3h"), 40)
        self.assertEqual(self.one("(curve_is_stable(ARRAY['0', '20 m3/h'], ARRAY['55 m', '50 m'])).shape"), "stable")

    def test_solving(self):
        self.assertAlmostEqual(self.one("solve_for('npsh_available', 'liquid_level', NULL, '5 m', 1.013, 0.0234, 998.2, NULL, 0.5)"), 5 - npsh(0), 9)
        self.assertAlmostEqual(self.one("solutions('velocity_head', 'flow_m3h', NULL, 1, NULL, 100)")[0], (2 * 9.80665) ** 0.5 * math.pi / 4 * 0.01 * 3600, 6)

    def test_uncertainty(self):
        head = (100 / 3600 / (math.pi / 4 * 0.15 ** 2)) ** 2 / (2 * 9.80665)
        ((value, standard, low, high, remark),) = self.rows("SELECT * FROM uncertainty('velocity_head', NULL, ARRAY[1, NULL], 100, 150)")
        self.assertAlmostEqual(value, head, 12)
        self.assertAlmostEqual(standard / head, 0.02, 4)
        self.assertTrue(low < value < high and remark)
        self.assertAlmostEqual(sum(self.one(f"uncertainty_shares('npsh_available', NULL, ARRAY['0.01', '0', '0', '20 cm'], {SUCTION})")), 1, 9)
        self.assertEqual(len(self.rows(f"SELECT * FROM sensitivity('npsh_available', NULL, {SUCTION})")), 5)

    def test_units_and_texts(self):
        self.assertAlmostEqual(self.one("convert_unit(440, 'US gpm', 'm3/h')"), 440 * 231 * 0.0254 ** 3 * 60, 9)  # NIST SP 811: a US gallon is 231 cubic inches
        self.assertEqual(self.one("quantity('440 US gpm', 'm3/h')"), self.one("convert_unit(440, 'US gpm', 'm3/h')"))
        self.assertEqual(self.one("quantity(5, 'm3/h')"), 5)
        working = self.one(f"working('npsh_available', {SUCTION})")
        self.assertIn("NPSHA", working)
        self.assertEqual(working, self.one("working('npsh_available', VARIADIC ARRAY[1.013, 0.0234, 998.2, 2, 0.5])"))
        self.assertIn("1.013 bara", self.one("working('npsh_available', VARIADIC ARRAY['1013 mbar(a)', '0.0234', '998.2', '2', '0.5']::text[])"))
        self.assertEqual(self.one(f"working_line(2, 'npsh_available', {SUCTION})"), working.splitlines()[1])
        self.assertIn("surface_pressure_bara was not given", self.one("refusal('npsh_available')"))
        self.assertIn("npsh", self.rows("SELECT function FROM find_function('NPSHR')")[0][0])
        self.assertEqual(self.one("cutwater_version()"), os.environ["CUTWATER_VERSION"])

    def test_every_example(self):
        """Each worked example of the catalogue, and what it is called by its inputs' names."""
        for name, function in server.FUNCTIONS.items():
            with self.subTest(name):
                given = function["example"]["inputs"]
                text, values = server.call(name, list(given.values()))
                marks = text[text.index("(") + 1:-1].split(", ")
                by_name = ", ".join(f'"{one.lower()}" => {mark}' for one, mark in zip(given, marks))
                placed = self.rows(f"SELECT * FROM {text}", values)
                self.assertEqual(placed, self.rows(f"SELECT * FROM {name}({by_name})", values))
                self.assertEqual(placed[0], self.rows(f"SELECT * FROM {name}_checked({by_name})", values)[0][:-3])
                if len(function["results"]) > 1:
                    self.assertEqual([column.name for column in self.db.description[:-3]], [result["name"].lower() for result in function["results"]])

    def test_other_encodings(self):
        """A database that has no place for some of our characters still tells its refusals."""
        for encoding, locale, degree in (("LATIN1", "C", "°"), ("SQL_ASCII", "C", None), ("EUC_JP", "C", "°")):
            connection = server.the_server().database(f"in_{encoding.lower()}", f"ENCODING '{encoding}' LC_COLLATE '{locale}' LC_CTYPE '{locale}' TEMPLATE template0")
            db = connection.cursor()
            db.execute(f"SELECT working('npsh_available', {SUCTION})")
            self.assertIn("NPSHA", db.fetchone()[0])
            for function in server.FUNCTIONS:
                db.execute("SELECT working(%s)", (function,))
                self.assertIn("Source", db.fetchone()[0])
            if degree:
                db.execute("SELECT quantity(%s, 'degF')", (f"20 {degree}C",))
                self.assertAlmostEqual(db.fetchone()[0], 68)
            db.execute("SELECT refusal('npsh_available', %s)", ("é 1",) if degree == "°" else ("e 1",))
            self.assertIn("surface_pressure_bara", db.fetchone()[0])
            connection.close()

    def test_guide(self):
        server.the_server().database("guide").close()
        blocks = re.findall(r"^```sql\n(.*?)^```$", GUIDE, re.M | re.S)
        self.assertGreaterEqual(len(blocks), 3)
        for block in blocks:
            statements = "\n".join(line for line in block.splitlines() if not line.startswith("--"))
            shown = [line[3:] for line in block.splitlines() if line.startswith("-- ")]
            self.assertEqual(server.the_server().psql("guide", statements), shown)


if __name__ == "__main__":
    unittest.main()
