"""What a person gives by mistake: an error with a state of our own, the whole sentence and the argument; or the same beside NULL."""
import unittest

import psycopg2

import server

GOOD = {"surface": "1.013", "vapour": "0.0234", "density": "998.2", "level": "2", "friction": "0.5"}


def npsh(**changed):
    return f"npsh_available({', '.join({**GOOD, **changed}.values())})"


CASES = {
    "gauge": ("npsh_available('1.013 barg', '0.0234', '998.2', '2', '0.5')", "wrong_quantity", "absolute", "surface_pressure_bara"),
    "gauge beside numbers": (npsh(surface="'1.013 barg'::text"), "wrong_quantity", "absolute", "surface_pressure_bara"),
    "below": (npsh(surface="-1"), "out_of_interval", "it must be above 0", "surface_pressure_bara"),
    "nan": (npsh(level="'NaN'::float8"), "not_finite", "liquid_level_m is no number", "liquid_level_m"),
    "infinite": (npsh(level="'-infinity'::float8"), "not_finite", "liquid_level_m", "liquid_level_m"),
    "numeric beyond a double": (npsh(level="1e400::numeric, friction_head_m => '1'::text").replace(", 0.5)", ")"), "not_finite", "liquid_level_m", "liquid_level_m"),
    "truth value": (npsh(level="true"), "wrong_kind", "liquid_level_m was given a value of type boolean", "liquid_level_m"),
    "bytes": (npsh(level="'\\x00'::bytea"), "wrong_kind", "of type bytea", "liquid_level_m"),
    "a date": (npsh(level="date '2020-01-01'"), "wrong_kind", "of type date", "liquid_level_m"),
    "a row": (npsh(level="row(1, 2)"), "wrong_kind", "of type record", "liquid_level_m"),
    "an array for a number": (npsh(level="array[1, 2]"), "wrong_kind", "liquid_level_m", "liquid_level_m"),
    "an empty text": (npsh(level="''::text"), "missing", "liquid_level_m was not given", "liquid_level_m"),
    "a word for a number": (npsh(level="'low'::varchar"), "bad_text", "liquid_level_m", "liquid_level_m"),
    "unit of no table": (npsh(level="'2 smoots'::text"), "unknown_unit", "smoots", "liquid_level_m"),
    "a point that is NULL": ("curve_head(array[0, null, 60], array[50, 40, 30], 1)", "bad_series", "point 2", "flows_m3h"),
    "NaN in a series": ("curve_head(array[0, 'NaN', 60]::float8[], array[50, 40, 30], 1)", "not_finite", "flows_m3h", "flows_m3h"),
    "a block for a series": ("curve_head(array[[0, 1], [2, 3]], array[50, 40], 1)", "bad_series", "2 rows and 2 columns", "flows_m3h"),
    "text in a series": ("curve_head(array['0', '50 bara'], array['50 m', '40 m'], '1')", "wrong_quantity", "point 2", "flows_m3h"),
    "no point": ("curve_head('{}'::float8[], array[50, 40], 1)", "missing", "flows_m3h was not given", "flows_m3h"),
    "unequal": ("curve_head(array[0, 50, 60], array[50, 40], 1)", "contradiction", "curve_head: ", None),
    "a word that is none": ("contamination_factor('sparkling', 65)", "unknown_word", "sparkling", "cleanliness"),
    "no function": ("solve_for('npsh_availble', 'liquid_level', NULL, 5)", "unknown_function", "npsh_availble", None),
    "no text": ("convert_unit(1, '', 'm')", "wrong_kind", "from_unit must be a unit, as a text", "from_unit"),
    "a truth value to convert": ("quantity(true, 'm')", "wrong_kind", "value must be a number, or a text with a unit", "value"),
    "an uncertainty that is none": ("uncertainty('velocity_head', NULL, array[true], 100, 150)", "wrong_kind", "an uncertainty must be a number", None),
}


class Refusals(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.db = server.the_server().database("refusals").cursor()

    def refused(self, expression):
        with self.assertRaises(psycopg2.Error) as raised:
            self.db.execute(f"SELECT {expression}")
        return raised.exception

    def one(self, expression):
        self.db.execute(f"SELECT {expression}")
        return self.db.fetchone()[0]

    def test_each(self):
        for what, (expression, status, words, blamed) in CASES.items():
            with self.subTest(what):
                error = self.refused(expression)
                self.assertIn(words, error.diag.message_primary)
                self.assertEqual(error.pgcode, server.SQLSTATE[status])
                if blamed:
                    self.assertEqual(error.diag.column_name, blamed)
                    self.assertTrue(error.diag.message_detail.startswith(f"Argument: {blamed}"), error.diag.message_detail)

    def test_checked(self):
        """The same beside NULL."""
        for what, (expression, status, words, blamed) in CASES.items():
            name, rest = expression.split("(", 1)
            if name not in server.FUNCTIONS:
                continue
            with self.subTest(what):
                self.db.execute(f"SELECT * FROM {name}_checked({rest}")
                *values, sentence, told, input = self.db.fetchone()
                self.assertEqual(set(values), {None})
                self.assertEqual(told, status)
                self.assertIn(words, sentence)
                self.assertEqual(input, blamed or input)

    def test_detail(self):
        error = self.refused(npsh(surface="-1.5"))
        self.assertEqual(error.diag.message_detail, "Argument: surface_pressure_bara; value: -1.5 bara; permitted: above 0 up to 500 bara.")
        self.assertIn("; permitted: from 50 up to 25000 kg/m3.", self.refused(npsh(density="2")).diag.message_detail)

    def test_null_is_a_missing_result(self):
        for name in GOOD:
            for changed in (npsh(**{name: "NULL"}), f"({npsh(**{name: 'NULL'}).replace('(', '_checked(', 1)}).npsh_m"):
                self.assertIsNone(self.one(changed), changed)
        self.db.execute(f"SELECT * FROM {npsh(vapour='NULL').replace('(', '_checked(', 1)}")
        self.assertEqual(self.db.fetchone()[2:], ("missing", "vapour_pressure_bara"))
        for expression in ("quantity(NULL, 'm')", "convert_unit(NULL, 'm', 'ft')", "curve_head(NULL, array[1.0, 2], 1)", "working(NULL, 1)",
                           "solve_for('npsh_available', 'liquid_level', NULL, 5, NULL, 0.02, 998, NULL, 0.5)",
                           "uncertainty('npsh_available', NULL, array[0.1], NULL, 0.02, 998, 2, 0.5)"):
            self.assertIsNone(self.one(expression), expression)
        self.db.execute("SELECT * FROM sensitivity('npsh_available', NULL, NULL, 0.02, 998, 2, 0.5)")
        self.assertEqual(self.db.fetchall(), [])

    def test_null_leaves_out_what_has_a_default(self):
        seen = 0
        for name, function in server.FUNCTIONS.items():
            inputs = function["inputs"]
            if "default" not in inputs[-1]:
                continue
            given = list(function["example"]["inputs"].values())
            least = [value for value, input in zip(given, inputs) if "default" not in input]
            answers = []
            for arguments in (least, least + [None] * (len(inputs) - len(least))):
                text, values = server.call(name + "_checked", arguments)
                self.db.execute(f"SELECT * FROM {text}", values)
                answers.append(self.db.fetchone())
            self.assertEqual(*answers, name)
            seen += answers[0][-3] is None
        self.assertGreater(seen, 20)

    def test_the_same_sentence(self):
        for expression in (npsh(surface="-1"), npsh(level="true"), npsh(surface="'1 barg'::text")):
            sentence = self.refused(expression).diag.message_primary
            self.assertEqual(self.one(expression.replace("npsh_available(", "refusal('npsh_available', ")), sentence)
        self.assertEqual(self.one(npsh().replace("npsh_available(", "refusal('npsh_available', ")), "")

    def test_what_is_meant_otherwise_is_answered(self):
        right = self.one(npsh())
        for changed in (npsh(surface="'1013 mbar(a)'::text"), npsh(level="2::smallint"), npsh(level="2.0::real"), npsh(level="'2000 mm'::varchar(9)"),
                        npsh(level="'2'::char(4)"), npsh(level="2::numeric"), npsh(level="2::bigint"), "npsh_available('1.013', '0.0234', '998.2', '2', '0.5')"):
            self.assertAlmostEqual(self.one(changed), right, 12)
        self.db.execute("CREATE DOMAIN metres AS float8 CHECK (VALUE > -100); CREATE DOMAIN words AS text")
        self.assertEqual(self.one(npsh(level="2::metres")), right)
        self.assertEqual(self.one(npsh(level="'2 m'::words")), right)


if __name__ == "__main__":
    unittest.main()
