"""Anything given for anything: a finite answer, NULL for NULL, or a refusal; value, table and checked call agree, each time."""
import json
import math
import random
import sqlite3
import unittest

import database

POOL = [0.0, -0.0, 1.0, -1.0, 1e-300, 1e300, 5e-324, math.inf, -math.inf, 0.5, 25.0, 100.0, 1450.0, 998.0, 2, -7, 2**63 - 1, -2**63, True, None, "", " ",
        "1", "1 bara", "1 barg", "72 %", "5 m", "20 degC", "1e400 m", "x" * 3000, "°C", "1\0", "\0", b"1", b"", bytes(1000), "[]", "[", "[1]", "[1,2,3]",
        "[3, 2, 1]", "[1,null]", '["1 m", 2]', "[[1],[2]]", '{"a": 1}', "[NaN]", "[1e999]", "[" * 20000, "[" * 500 + "]" * 500, '["\\ud800"]', "[1] [2]",
        "[" + "1," * 2000 + "1]", "%s%n", "'; DROP TABLE x; --"]


def finite(answer):
    if isinstance(answer, dict):
        return all(map(finite, answer.values()))
    if isinstance(answer, (list, tuple)):
        return all(map(finite, answer))
    return isinstance(answer, str) or (answer is not None and math.isfinite(answer))


def outcome(call, *arguments):
    try:
        return "answered", call(*arguments)
    except sqlite3.OperationalError as refusal:
        return "refused", str(refusal)


class Anything(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.db = database.connect()

    def agree(self, name, function, arguments):
        verdict, got = outcome(database.value, self.db, name, arguments)
        self.assertEqual((verdict, got), outcome(database.value, self.db, name, arguments))
        if len(arguments) > len(function["inputs"]):
            self.assertEqual(verdict, "refused")
            return False
        as_table = outcome(database.rows, self.db, name, arguments)
        checked = database.rows(self.db, name + "_checked", arguments)[1]
        results = len(function["results"])
        if verdict == "refused":
            self.assertTrue(got.startswith(name + ": "), got)
            self.assertEqual(as_table, (verdict, got))
            self.assertEqual(checked[0][results:results + 1], (got,))
        elif got is None:
            missing = [given is None and "default" not in input for given, input in zip(arguments, function["inputs"])]
            self.assertTrue(any(missing))
            self.assertEqual(as_table[1][1], [(None,) * results])
            self.assertIsNotNone(checked[0][results])
        else:
            structured = results > 1 or function["results"][0]["kind"] == "series"
            self.assertTrue(finite(json.loads(got) if structured else got), got)
            self.assertEqual([row[:results] for row in checked], as_table[1][1])
            return True
        return False

    def test_functions(self):
        chance = random.Random(20240229)
        answered = 0
        for name, function in database.FUNCTIONS.items():
            good = list(function["example"]["inputs"].values())
            for _ in range(40):
                arguments = [chance.choice(POOL) if chance.random() < 0.3 else value for value in good]
                if chance.random() < 0.02:
                    arguments.append(1.0)
                with self.subTest(name, arguments=repr(arguments)[:300]):
                    answered += self.agree(name, function, arguments)
        self.assertGreater(answered, 100)

    def test_questions(self):
        chance = random.Random(1)
        names = list(database.FUNCTIONS)
        words = [*POOL, "npsh_available", "velocity_head", "liquid_level", "flow_m3h", "m3/h", "US gpm", "-", "npsh"]
        for question in database.CATALOGUE["questions"]:
            for _ in range(400):
                arguments = [chance.choice(words) for _ in range(chance.randrange(9))]
                if chance.random() < 0.5 and arguments:
                    arguments[chance.randrange(min(2, len(arguments)))] = chance.choice(names)
                with self.subTest(question["name"], arguments=repr(arguments)[:300]):
                    first = outcome(database.value, self.db, question["name"], arguments)
                    self.assertEqual(first, outcome(database.value, self.db, question["name"], arguments))
                    outcome(database.rows, self.db, question["name"], arguments)

    def test_nothing_is_kept(self):
        """Memory does not grow with calls, answered or refused."""
        def used():
            with open("/proc/self/statm", encoding="ascii") as file:
                return int(file.read().split()[1]) * 4096

        statement = """WITH RECURSIVE n(i) AS (VALUES (0) UNION ALL SELECT i + 1 FROM n WHERE i < 20000)
            SELECT count(refusal), count(series), count(shape) FROM (SELECT c.refusal, curve_is_stable('[0, 20, 40]', '[55, 57, 50]') AS shape,
            refusal('npsh_available', i) AS series FROM n, npsh_available_checked('1 barg', i, 998, '2 m', 0.5) c)"""
        for _ in range(3):
            self.db.execute(statement).fetchall()
        before = used()
        for _ in range(10):
            self.assertEqual(self.db.execute(statement).fetchone(), (20001,) * 3)
        self.assertLess(used() - before, 4e6)


if __name__ == "__main__":
    unittest.main()
