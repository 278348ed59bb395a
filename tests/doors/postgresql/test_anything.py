"""Anything given for anything: a finite answer, NULL for NULL, or an error of ours or of PostgreSQL's typing; the server lives on."""
import math
import random
import unittest

import psycopg2

import server

POOL = ["0", "-0.0", "1.0", "-1", "1e-300", "1e300", "5e-324", "'Infinity'::float8", "'-Infinity'::float8", "'NaN'::float8", "'NaN'::numeric", "1e400::numeric",
        "-1e-400::numeric", "0.5", "25::real", "100", "1450::smallint", "998", "9223372036854775807", "true", "NULL", "NULL::float8", "NULL::text", "NULL::int[]",
        "''", "' '", "'1'::text", "'1 bara'::text", "'1 barg'", "'72 %'::varchar", "'5 m'::char(7)", "'20 degC'::text", "'1e400 m'::text", "repeat('x', 3000)",
        "repeat('9', 100000)", "'°C'::text", "E'\\\\x01'::text", "'\\x00ff'::bytea", "now()", "interval '1 day'", "point(1, 2)", "row(1, 2)", "'{\"a\": 1}'::jsonb",
        "'npsh'::name", "'a'::\"char\"", "B'101'", "int4range(1, 5)", "'{}'::float8[]", "'{}'::text[]", "array[1]", "array[1.0, 2, 3]", "array[3, 2, 1]::float8[]",
        "array[1, NULL]", "array[NULL]::text[]", "array['1 m', '2']", "array[[1, 2], [3, 4]]", "array[[[1]], [[2]]]::float8[]", "array['NaN', 1]::float8[]",
        "array[true]", "array[row(1, 2)]", "array[now()]", "'[5:7]={1,2,3}'::float8[]", "array_fill(1.5::float8, array[50000])", "array_fill('1 m'::text, array[3000])",
        "'plant'::mood", "'2 m'::length", "2.5::metres", "array[1, 2]::metres[]", "'mixed'::regclass", "1::oid", "'%s%n'::text", "(SELECT a FROM compressed)"]
# What PostgreSQL itself says of types: no such function, which of them, no cast, no such text for a number, an index, an overflow.
TYPING = ("42", "22P02", "22003", "22P05", "0A000")


def finite(answer):
    if isinstance(answer, (list, tuple)):
        return all(map(finite, answer))
    return answer is None or isinstance(answer, str) or math.isfinite(answer)


class Anything(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.connection = server.the_server().database("anything")
        cls.db = cls.connection.cursor()
        cls.db.execute("CREATE TYPE mood AS ENUM ('plant'); CREATE DOMAIN length AS text; CREATE DOMAIN metres AS float8; CREATE TABLE mixed (a int);"
                       "CREATE TABLE compressed (a float8[]); INSERT INTO compressed SELECT array_fill(2::float8, array[20000])")
        cls.db.execute("SELECT pg_backend_pid()")
        cls.backend = cls.db.fetchone()

    def outcome(self, statement):
        try:
            self.db.execute(statement)
            return "answered", self.db.fetchall()
        except psycopg2.Error as error:
            self.assertIsNotNone(error.pgcode, f"the server is gone: {error}")
            return error.pgcode, error.diag.message_primary

    def literal(self, value, input):
        if isinstance(value, list):
            return f"ARRAY[{', '.join(map(repr, value))}]::float8[]"
        return f"'{value}'" if isinstance(value, str) else repr(float(value)) + "::float8"

    def test_functions(self):
        chance = random.Random(20240229)
        seen = {"answered": 0, "ours": 0, "theirs": 0}
        for name, function in server.FUNCTIONS.items():
            good = list(map(self.literal, function["example"]["inputs"].values(), function["inputs"]))
            for _ in range(30):
                arguments = ", ".join(chance.choice(POOL) if chance.random() < 0.3 else value for value in good)
                with self.subTest(name, arguments=arguments[:300]):
                    verdict, got = self.outcome(f"SELECT * FROM {name}({arguments})")
                    self.assertEqual(repr((verdict, got)), repr(self.outcome(f"SELECT * FROM {name}({arguments})")))
                    if verdict == "answered":
                        self.assertTrue(finite(got), got)
                    elif verdict.startswith("WT0"):
                        self.assertTrue(got.startswith(name), got)
                        self.assertNotIn(verdict, (server.SQLSTATE["internal"], server.SQLSTATE["buffer_too_small"]))
                        checked = self.outcome(f"SELECT * FROM {name}_checked({arguments})")
                        self.assertEqual(checked[1][0][-3], got)
                    else:
                        self.assertTrue(verdict.startswith(TYPING), (verdict, got))
                    seen["answered" if verdict == "answered" else "ours" if verdict.startswith("WT0") else "theirs"] += 1
        self.assertGreater(min(seen.values()), 300, seen)
        self.lives()

    def test_questions(self):
        chance = random.Random(1)
        ours = 0
        for question in server.CATALOGUE["questions"]:
            for _ in range(300):
                arguments = self.likely(chance, question)
                arguments = [chance.choice(POOL) if chance.random() < 0.15 else argument for argument in arguments][:chance.choice((2, 4, 12, 12, 12))]
                if chance.random() < 0.1 and arguments:
                    arguments[-1] = "VARIADIC " + arguments[-1]
                with self.subTest(question["name"], arguments=", ".join(arguments)[:300]):
                    verdict, got = self.outcome(f"SELECT * FROM {question['name']}({', '.join(arguments)})")
                    ours += verdict.startswith("WT0")
                    if verdict == "answered":
                        self.assertTrue(finite(got), got)
                    elif not verdict.startswith("WT0"):
                        self.assertTrue(verdict.startswith(TYPING), (verdict, got))
        self.assertGreater(ours, 300)
        self.lives()

    def likely(self, chance, question):
        """What the question might be asked."""
        function = chance.choice(list(server.FUNCTIONS.values()))
        given = list(map(self.literal, function["example"]["inputs"].values(), function["inputs"]))
        pool = {"function": [f"'{function['name']}'"], "unknown": [f"'{input['name']}'" for input in function["inputs"]], "result": ["NULL", "'head'"],
                "uncertainties": ["array[0.1, NULL, 1]", "array['1 %', '0']", "0.5"], "line": ["1", "0", "2.5"]}
        units = ["'m3/h'", "'US gpm'", "'-'", "'bara'", "'K'"]
        arguments = []
        for argument in question["arguments"]:
            if argument["name"] == "arguments":
                arguments += given
            else:
                arguments.append(chance.choice(pool.get(argument["name"], units if "unit" in argument["name"] else ["5", "'5 m'", "'440 US gpm'", "'npsh'"])))
        return arguments

    def lives(self):
        self.db.execute("SELECT pg_backend_pid()")
        self.assertEqual(self.db.fetchone(), self.backend)
        self.assertNotIn("terminated by signal", server.the_server().log())

    def test_called_amiss(self):
        """Declarations of somebody else's, calls without an expression, and types that a call cannot tell."""
        self.db.execute("CREATE FUNCTION no_such_name(float8) RETURNS float8 AS '$libdir/cutwater', 'cutwater_function' LANGUAGE C")
        self.db.execute("CREATE FUNCTION velocity_head(float8, float8, float8) RETURNS float8 AS '$libdir/cutwater', 'cutwater_function' LANGUAGE C")
        self.db.execute("CREATE FUNCTION velocity_head(int) RETURNS int AS '$libdir/cutwater', 'cutwater_checked' LANGUAGE C")
        self.db.execute("CREATE SCHEMA other; CREATE FUNCTION other.velocity_head(float8, float8) RETURNS text AS '$libdir/cutwater', 'cutwater_function' LANGUAGE C")
        self.db.execute("CREATE FUNCTION other.working() RETURNS text AS '$libdir/cutwater', 'cutwater_question' LANGUAGE C")
        self.db.execute("CREATE FUNCTION other.find_function(text) RETURNS int AS '$libdir/cutwater', 'cutwater_question_rows' LANGUAGE C")
        for call in ("no_such_name(1)", "velocity_head(1, 2, 3)", "velocity_head(1)", "other.velocity_head(1, 2)", "other.working()", "other.find_function('npsh')"):
            with self.subTest(call):
                verdict, got = self.outcome(f"SELECT {call}")
                self.assertIn(verdict, ("42883", "0A000"))
        self.db.execute("DROP FUNCTION velocity_head(float8, float8, float8), velocity_head(int), no_such_name(float8); DROP SCHEMA other CASCADE")
        self.assertEqual(self.outcome("PREPARE asking AS SELECT working('velocity_head', $1, $2)")[0][:2], "42")
        self.db.execute("PREPARE telling AS SELECT velocity_head($1, $2), velocity_head($1::text, 150::float8)")
        self.assertEqual(self.outcome("EXECUTE telling('100', '150 mm')")[0], "answered")
        self.lives()

    def test_cancelled(self):
        """A statement of many trials stops when it is told to."""
        self.db.execute("SET statement_timeout = 200")
        verdict, _ = self.outcome("SELECT count(uncertainty('velocity_head', NULL, ARRAY[i * 1e-4, 60], 100, 150)) FROM generate_series(1, 100000) i")
        self.db.execute("SET statement_timeout = 0")
        self.assertEqual(verdict, "57014")
        self.lives()

    def test_memory_is_the_calls(self):
        """Hundreds of thousands of calls, answered, refused and asked, leave nothing behind in the backend."""
        def used():
            with open(f"/proc/{self.backend[0]}/statm", encoding="ascii") as file:
                return int(file.read().split()[1]) * 4096

        statement = """SELECT count(npsh_available('1 bara'::text, 0.02, 998, i, 0.5)), count(c.refusal), count(refusal('npsh_available', i::text || ' barg')),
            sum((curve_is_stable(ARRAY[0, 20 + i * 1e-9, 40], ARRAY[55, 57, 50])).top_head_m), count(s.new_heads_m)
            FROM generate_series(1, %s) i, LATERAL npsh_available_checked(-i, 0.02, 998, 2, 0.5) c,
            LATERAL curve_at_speed(ARRAY[0, 50], ARRAY[40, 30], 1450, 1000 + i * 1e-3) s"""
        self.db.execute(statement, (2000,))
        before = used()
        self.db.execute(statement, (60000,))
        self.assertEqual(self.db.fetchone()[1:3], (60000, 60000))
        self.assertLess(used() - before, 24e6)  # generate_series keeps its rows


if __name__ == "__main__":
    unittest.main()
