"""What a person gives by mistake: SQL's own error with the library's whole sentence, or the sentence beside NULL."""
import sqlite3
import unittest

import database

SUCTION = (1.013, 0.0234, 998.2, 2, 0.5)


def npsh(**changed):
    given = dict(zip(("surface", "vapour", "density", "level", "friction"), SUCTION))
    return "npsh_available", tuple({**given, **changed}.values())


CASES = {
    "gauge": (*npsh(surface="1.013 barg"), "wrong_quantity", "absolute"),
    "below": (*npsh(surface=-1), "out_of_interval", "it must be above 0"),
    "infinite": (*npsh(level=float("inf")), "not_finite", "liquid_level_m"),
    "a blob": (*npsh(level=b"\x00\x01"), "wrong_kind", "liquid_level_m was given a blob"),
    "a blob with digits": (*npsh(level=b"2"), "wrong_kind", "liquid_level_m was given a blob"),
    "an empty text": (*npsh(level=""), "missing", "liquid_level_m was not given"),
    "a word for a number": (*npsh(level="low"), "bad_text", "liquid_level_m"),
    "another quantity": (*npsh(level="2 bara"), "wrong_quantity", "liquid_level_m"),
    "unit of no table": (*npsh(level="2 smoots"), "unknown_unit", "smoots"),
    "null character": (*npsh(level="5\0junk"), "bad_text", "null character"),
    "a series for a number": (*npsh(level="[1, 2]"), "wrong_kind", "liquid_level_m"),
    "too few": ("npsh_available", (1.013, 0.0234), "missing", "density_kgm3 was not given"),
    "too many": ("npsh_available", (*SUCTION, 1), "wrong_count", "takes 5 inputs; 6 were given"),
    "no array": ("curve_head", ("[0, 50", "[50, 40]", 1), "wrong_kind", "flows_m3h was given a text that begins with [ but is no JSON array"),
    "NaN in an array": ("curve_head", ("[0, NaN]", "[50, 40]", 1), "wrong_kind", "is no JSON array"),
    "too large in an array": ("curve_head", ("[0, 1e999]", "[50, 40]", 1), "wrong_kind", "is no JSON array"),
    "an array inside": ("curve_head", ("[0, [50, [2]], 60]", "[50, 40, 30]", 1), "wrong_kind", "flows_m3h, point 2 (counted from 1) is an array inside an array"),
    "an object inside": ("curve_head", ('[0, {"a": [1]}]', "[50, 40]", 1), "wrong_kind", "point 2 (counted from 1) is a JSON object"),
    "true inside": ("curve_head", ("[0, true]", "[50, 40]", 1), "wrong_kind", "is true or false"),
    "an empty point": ("curve_head", ("[0, null, 2]", "[3, 2, 1]", 1), "bad_series", "point 2"),
    "one number for a series": ("curve_head", (0, 50, 1), "bad_series", "flows_m3h"),
    "text in a series": ("curve_head", ('[0, "50 bara"]', "[50, 40]", 1), "wrong_quantity", "point 2"),
    "unequal": ("curve_head", ("[0, 50, 60]", "[50, 40]", 1), "contradiction", "curve_head: "),
    "a word that is none": ("acceptance_limits", ("9Z", "head", 50), "unknown_word", "9Z"),
}


class Refusals(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.db = database.connect()

    def refused(self, name, arguments):
        with self.assertRaises(sqlite3.OperationalError) as raised:
            database.value(self.db, name, arguments)
        return str(raised.exception)

    def test_each(self):
        for what, (name, arguments, status, words) in CASES.items():
            with self.subTest(what):
                sentence = self.refused(name, arguments)
                self.assertIn(words, sentence)
                self.assertTrue(sentence.startswith(name), sentence)
                self.assertEqual(database.value(self.db, "refusal", (name, *arguments)), sentence)
                if status == "wrong_count":  # SQLite itself counts a table's arguments
                    continue
                ((*values, told, status_told, blamed),) = database.rows(self.db, name + "_checked", arguments)[1]
                self.assertEqual((told, status_told, set(values)), (sentence, status, {None}))
                self.assertIn(blamed, sentence)

    def test_null_is_a_missing_result(self):
        for place in range(5):
            arguments = [None if i == place else given for i, given in enumerate(SUCTION)]
            self.assertIsNone(database.value(self.db, "npsh_available", arguments))
            self.assertEqual(database.rows(self.db, "npsh_available", arguments)[1], [(None,)])
            ((result, sentence, status, blamed),) = database.rows(self.db, "npsh_available_checked", arguments)[1]
            self.assertEqual((result, status), (None, "missing"))
            self.assertIn(f"{blamed} was not given", sentence)
            self.assertEqual(database.value(self.db, "refusal", ("npsh_available", *arguments)), sentence)
        self.assertIsNone(database.value(self.db, "quantity", (None, "m")))
        self.assertIsNone(database.value(self.db, "sensitivity", ("npsh_available", None, 1, None, 998, 2, 1)))
        self.assertIsNone(database.value(self.db, "curve_head", (None, "[1, 2]", 1)))

    def test_null_leaves_out_what_has_a_default(self):
        seen = 0
        for name, function in database.FUNCTIONS.items():
            if "default" not in function["inputs"][-1]:
                continue
            given = [database.bound(value) for value in function["example"]["inputs"].values()]
            least = [value for value, input in zip(given, function["inputs"]) if "default" not in input]
            for call in (database.value, database.rows):
                try:
                    short = call(self.db, name, least)
                except sqlite3.OperationalError as refusal:  # some examples need an input that may be left out
                    short = str(refusal)
                try:
                    long = call(self.db, name, least + [None] * (len(function["inputs"]) - len(least)))
                except sqlite3.OperationalError as refusal:
                    long = str(refusal)
                self.assertEqual(short, long, name)
                seen += short is not None
        self.assertGreater(seen, 20)

    def test_questions(self):
        for name, arguments, words in (("solve_for", ("npsh_availble", "liquid_level", None, 5), "npsh_availble"),
                                       ("convert_unit", (1, 2, 3), "from_unit must be a unit, as a text"),
                                       ("convert_unit", (1, "m"), "to_unit must be a unit"),
                                       ("convert_unit", (1, "m", "ft", "in"), "takes 3 inputs; 4 were given"),
                                       ("quantity", (b"5 m", "m"), "value must be a number, or a text with a unit"),
                                       ("quantity", ("5 bar", "m3/h"), "bar"),
                                       ("find_function", ("xyzzy",), "no function is known"),
                                       ("uncertainty", ("velocity_head", None, "[true]", 100, 150), "an uncertainty must be a number"),
                                       ("working_line", (0, "velocity_head", 100, 150), "a whole number from 1")):
            with self.subTest(name, arguments=arguments):
                sentence = self.refused(name, arguments)
                self.assertIn(words, sentence)
                if "takes" not in words:
                    with self.assertRaises(sqlite3.OperationalError) as raised:
                        database.rows(self.db, name, arguments)
                    self.assertEqual(str(raised.exception), sentence)

    def test_series_of_rows(self):
        for rows, words in ((((b"1", 1),), "a value is a blob"), (((1, None),), "put in order by"), (((1, b"x"), (2, 3)), "put in order by")):
            self.db.execute("CREATE TEMP TABLE point (value, by)")
            self.db.executemany("INSERT INTO point VALUES (?, ?)", rows)
            with self.assertRaises(sqlite3.OperationalError) as raised:
                self.db.execute("SELECT series(value, by) FROM point").fetchall()
            self.assertIn(words, str(raised.exception))
            self.db.execute("DROP TABLE point")

    def test_what_is_meant_otherwise_is_answered(self):
        right = database.value(self.db, *npsh())
        for changed in (npsh(surface="1013 mbar(a)"), npsh(level="2000 mm"), npsh(level="2"), npsh(level=2.0), npsh(level="[2]"), npsh(level="200 cm")):
            self.assertAlmostEqual(database.value(self.db, *changed), right, 12)


if __name__ == "__main__":
    unittest.main()
