"""What PostgreSQL is told of each call, and the extension's own life: schema, trust, dump and restore, upgrade, removal."""
import os
import pathlib
import re
import subprocess
import unittest

import psycopg2

import server

MEMBERS = """SELECT p.proname, pg_get_function_arguments(p.oid), pg_get_function_result(p.oid), p.provolatile, p.proparallel, p.proisstrict, p.procost, p.prosrc,
    p.probin, p.pronamespace::regnamespace::text, obj_description(p.oid) FROM pg_proc p JOIN pg_depend d ON d.objid = p.oid AND d.classid = 'pg_proc'::regclass
    JOIN pg_extension e ON e.oid = d.refobjid AND d.refclassid = 'pg_extension'::regclass WHERE d.deptype = 'e' AND e.extname = 'cutwater' ORDER BY 1, 2"""
OLD = "0.0.1"  # a version that never was: what an older extension may have left


class Extension(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.server = server.the_server()
        cls.connection = cls.server.database("extension")

    def rows(self, statement, connection=None):
        cursor = (connection or self.connection).cursor()
        cursor.execute(statement)
        return cursor.fetchall() if cursor.description else None

    def test_declarations(self):
        declared = {}
        for name, arguments, result, volatile, parallel, strict, cost, *_ in self.rows(MEMBERS):
            declared.setdefault(name, []).append((arguments, result, volatile, parallel, strict, cost))
        questions = {question["name"] for question in server.CATALOGUE["questions"]}
        self.assertEqual(set(declared), {*server.FUNCTIONS, *(f"{name}_checked" for name in server.FUNCTIONS), *questions})
        for name, overloads in declared.items():
            for arguments, result, volatile, parallel, strict, cost in overloads:
                with self.subTest(name, arguments=arguments):
                    self.assertEqual(volatile, "s" if name == "cutwater_version" else "i")
                    self.assertEqual(parallel, "s")
                    self.assertGreater(cost, 1)
                    if name in server.FUNCTIONS:
                        inputs, results = server.FUNCTIONS[name]["inputs"], server.FUNCTIONS[name]["results"]
                        self.assertEqual(strict, not any("default" in input for input in inputs))
                        given, *out = re.split(r",? ?OUT ", arguments.replace('"', ""))
                        self.assertEqual([one.split()[0] for one in given.split(", ")], [input["name"].lower() for input in inputs])
                        self.assertEqual([one.split()[0] for one in out], [one["name"].lower() for one in results] if len(results) > 1 else [])
                        self.assertEqual(given.count("DEFAULT NULL"), sum("default" in input for input in inputs))
                    else:
                        self.assertFalse(strict)
        kinds = [" ".join(re.findall("double precision|text|any", arguments)) for arguments, *_ in declared["npsh_available"]]
        self.assertEqual(sorted(kinds), [" ".join([kind] * 5) for kind in ("any", "double precision", "text")])
        builtin = self.rows("SELECT DISTINCT proname FROM pg_proc WHERE pronamespace = 'pg_catalog'::regnamespace")
        self.assertEqual({name for (name,) in builtin} & set(declared), set())

    def test_in_a_schema_by_somebody(self):
        """Anybody who may create in a database may have the extension, in a schema of his choice; it moves, and goes."""
        self.rows("CREATE ROLE engineer LOGIN")
        self.rows("CREATE DATABASE his OWNER engineer")
        his = psycopg2.connect(host=str(self.server.sockets), user="engineer", dbname="his")
        his.autocommit = True
        self.rows("CREATE SCHEMA pumps; CREATE EXTENSION cutwater SCHEMA pumps", his)
        self.assertEqual(self.rows("SELECT round(pumps.velocity_head(100, 150)::numeric, 4) FROM pumps.velocity_head_checked('100', '150 mm')", his)[0][0],
                         self.rows("SELECT round(velocity_head(100, 150)::numeric, 4)")[0][0])
        moving = self.server.connect("his")  # only a superuser owns what he was trusted with
        self.rows("CREATE SCHEMA valves AUTHORIZATION engineer; ALTER EXTENSION cutwater SET SCHEMA valves", moving)
        moving.close()
        self.assertEqual(self.rows("SELECT shape FROM valves.curve_is_stable(ARRAY[0, 20], ARRAY[55, 50])", his), [("stable",)])
        self.assertEqual({row[9] for row in self.rows(MEMBERS, his)}, {"valves"})
        self.rows("DROP EXTENSION cutwater", his)
        self.assertEqual(self.rows("SELECT count(*) FROM pg_proc WHERE probin = '$libdir/cutwater'", his), [(0,)])
        his.close()

    def test_in_tables(self):
        """Index, generated column and CHECK, and all of it through a dump and a restore."""
        plant = self.server.database("plant")
        self.rows("""CREATE TABLE line (flow float8, bore float8, head float8 GENERATED ALWAYS AS (velocity_head(flow, bore)) STORED, CHECK (velocity_head(flow, bore) < 3));
            CREATE INDEX by_head ON line (velocity_head(flow, bore)); CREATE VIEW told AS SELECT head, c.refusal FROM line, velocity_head_checked(flow::text, '6 in') c;
            INSERT INTO line SELECT f, 150 FROM generate_series(1, 200) f; ANALYZE line; SET enable_seqscan = off""", plant)
        with self.assertRaises(psycopg2.errors.CheckViolation):
            self.rows("INSERT INTO line VALUES (1000, 150)", plant)
        with self.assertRaises(psycopg2.Error) as raised:
            self.rows("INSERT INTO line VALUES (-1e12, 150)", plant)
        self.assertEqual(raised.exception.pgcode, server.SQLSTATE["out_of_interval"])
        plan = "\n".join(line for (line,) in self.rows("EXPLAIN SELECT * FROM line WHERE velocity_head(flow, bore) = 0.1", plant))
        self.assertIn("by_head", plan)
        connection = ["-h", str(self.server.sockets), "-U", "postgres"]
        dumped = subprocess.run(["pg_dump", *connection, "plant"], check=True, capture_output=True, encoding="utf-8").stdout
        self.rows("CREATE DATABASE restored")
        restored = subprocess.run(["psql", "-X", "-q", "-v", "ON_ERROR_STOP=1", *connection, "restored"], input=dumped, capture_output=True, encoding="utf-8")
        self.assertEqual(restored.returncode, 0, restored.stderr)
        again = self.server.connect("restored")
        for question in ("SELECT sum(head) FROM line", "SELECT count(*), sum(head) FROM told WHERE refusal IS NULL"):
            self.assertEqual(self.rows(question, again), self.rows(question, plant))
        plant.close()
        again.close()

    def older(self):
        """The declarations of an older version: one with another argument, one that is gone, one with another result, many missing, one as it is now."""
        now = (self.server.extensions / f"cutwater--{os.environ['CUTWATER_VERSION']}.sql").read_text(encoding="utf-8")
        head = re.search(r"CREATE OR REPLACE FUNCTION velocity_head\(.*?;\n", now, re.S)[0]
        module = "AS 'MODULE_PATHNAME', 'cutwater_function' LANGUAGE C"
        script = "\n".join([head, f"CREATE FUNCTION npsh_available(p float8, v float8, d float8, l float8, f float8) RETURNS float8 {module};",
                            f"CREATE FUNCTION no_longer_there(a float8) RETURNS float8 {module};",
                            f"CREATE FUNCTION curve_is_stable(flows_m3h float8[], heads_m float8[]) RETURNS text {module};"])
        (self.server.extensions / f"cutwater--{OLD}.sql").write_text(script, encoding="utf-8")
        (self.server.extensions / f"cutwater--{OLD}--any.sql").write_text("", encoding="utf-8")

    def test_upgrade(self):
        self.older()
        self.rows("CREATE DATABASE upgraded")
        old = self.server.connect("upgraded")
        self.rows(f"CREATE SCHEMA pumps; CREATE EXTENSION cutwater SCHEMA pumps VERSION '{OLD}'", old)
        self.rows("CREATE VIEW kept AS SELECT pumps.velocity_head(100, 150)", old)
        before = self.rows("SELECT 'pumps.velocity_head(float8, float8)'::regprocedure::oid", old)
        self.rows("CREATE VIEW held AS SELECT pumps.no_longer_there(1)", old)
        with self.assertRaises(psycopg2.errors.DependentObjectsStillExist):
            self.rows("ALTER EXTENSION cutwater UPDATE", old)
        self.assertEqual(self.rows("SELECT extversion FROM pg_extension WHERE extname = 'cutwater'", old), [(OLD,)])
        self.rows("DROP VIEW held; ALTER EXTENSION cutwater UPDATE", old)
        self.assertEqual(self.rows("SELECT extversion FROM pg_extension WHERE extname = 'cutwater'", old), [(os.environ["CUTWATER_VERSION"],)])
        self.rows("CREATE DATABASE new")
        new = self.server.connect("new")
        self.rows("CREATE SCHEMA pumps; CREATE EXTENSION cutwater SCHEMA pumps", new)
        self.assertEqual(self.rows(MEMBERS, old), self.rows(MEMBERS, new))
        self.assertEqual(self.rows("SELECT 'pumps.velocity_head(float8, float8)'::regprocedure::oid", old), before)
        self.assertEqual(self.rows("SELECT count(*) FROM kept", old), [(1,)])
        # A build of the same version: every object stays the one that it was.
        objects = "SELECT oid FROM pg_proc WHERE probin = '$libdir/cutwater' ORDER BY oid"
        kept = self.rows(objects, old)
        self.rows("ALTER EXTENSION cutwater UPDATE TO 'any'; ALTER EXTENSION cutwater UPDATE", old)
        self.assertEqual(self.rows(objects, old), kept)
        self.assertEqual(self.rows(MEMBERS, old), self.rows(MEMBERS, new))
        old.close()
        new.close()

    def test_of_another_library(self):
        """A declaration that the library no longer has says so, and what to do."""
        self.older()
        self.rows("CREATE DATABASE lagging")
        lagging = self.server.connect("lagging")
        self.rows(f"CREATE EXTENSION cutwater VERSION '{OLD}'", lagging)
        for call in ("no_longer_there(1)", "curve_is_stable(ARRAY[0, 20.0], ARRAY[55, 50.0])"):
            with self.assertRaises(psycopg2.Error) as raised:
                self.rows(f"SELECT {call}", lagging)
            self.assertIn("ALTER EXTENSION cutwater UPDATE", raised.exception.diag.message_hint)
        lagging.close()

    def test_nothing_of_the_machine_was_used(self):
        self.assertNotEqual(pathlib.Path("/"), self.server.root)
        ((folder,),) = self.rows("SELECT setting FROM pg_config WHERE name = 'PKGLIBDIR'")
        self.assertTrue(folder.startswith(str(self.server.root)), folder)


if __name__ == "__main__":
    unittest.main()
