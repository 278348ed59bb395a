"""What SQLite is told of the calls, and the guide page followed to the letter: its commands' output is what it shows."""
import os
import pathlib
import re
import shutil
import sqlite3
import subprocess
import sys
import tempfile
import unittest

import database

SOURCE = pathlib.Path(os.environ["CUTWATER_SOURCE"])
GUIDE = (SOURCE / "bindings/sqlite/README.md").read_text(encoding="utf-8")
DETERMINISTIC, INNOCUOUS = 0x800, 0x200000


def shell(script, folder):
    done = subprocess.run([os.environ["CUTWATER_SQLITE"], "-init", "/dev/null", "-batch"], input=script, cwd=folder, encoding="utf-8", stdout=subprocess.PIPE,
                          stderr=subprocess.STDOUT, timeout=120)
    return done.stdout.splitlines()


class Package(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.folder = tempfile.TemporaryDirectory()
        cls.addClassCleanup(cls.folder.cleanup)
        shutil.copytree(os.environ["CUTWATER_SQLITE_PACKAGE"], pathlib.Path(cls.folder.name, "build/sqlite"))  # may be copied anywhere together

    def test_guide(self):
        blocks = re.findall(r"^```sql\n(.*?)^```$", GUIDE, re.M | re.S)
        self.assertGreaterEqual(len(blocks), 3)
        loading = blocks[0].splitlines()[0]
        for block in blocks:
            lines = block.splitlines()
            statements = [line for line in lines if not line.startswith("--")]
            script = "\n".join(statements if lines[0] == loading else [loading, *statements]) + "\n"
            shown = [line[3:] for line in lines if line.startswith("-- ")]
            printed = shell(script, self.folder.name)
            without_place = [re.sub(r"near line \d+", "near line", line) for line in printed]
            self.assertEqual(without_place, [re.sub(r"near line \d+", "near line", line) for line in shown])

    def test_guide_python(self):
        (block,) = re.findall(r"^```python\n(.*?)^```$", GUIDE, re.M | re.S)
        printed = subprocess.run([sys.executable, "-W", "error", "-c", block], cwd=self.folder.name, check=True, capture_output=True, encoding="utf-8").stdout.splitlines()
        self.assertAlmostEqual(float(printed[0]), (1.013 - 0.0234) * 1e5 / (998.2 * 9.80665) + 1.5, 9)
        self.assertIn("surface_pressure_bara is -1 bara; it must be above 0", printed[1])

    def test_flags(self):
        db = database.connect()
        listed = {}
        for name, builtin, kind, _, arguments, flags in db.execute("PRAGMA function_list"):
            listed.setdefault(name, []).append((builtin, kind, arguments, flags))
        for name in [*database.FUNCTIONS, *(question["name"] for question in database.CATALOGUE["questions"]), "series"]:
            with self.subTest(name):
                self.assertTrue(all(builtin == 0 for builtin, *_ in listed[name]), "SQLite has a function of that name")
                for _, kind, arguments, flags in listed[name]:
                    self.assertTrue(flags & INNOCUOUS)
                    self.assertEqual(bool(flags & DETERMINISTIC), name != "cutwater_version")
        modules = {name for (name,) in db.execute("PRAGMA module_list")}
        self.assertLessEqual({f"{name}{end}" for name in database.FUNCTIONS for end in ("", "_checked")}, modules)

    def test_in_a_schema(self):
        """Index, generated column, CHECK, view and trigger, with nothing trusted; and read again by a new connection."""
        with tempfile.TemporaryDirectory() as folder:
            db = database.connect(f"{folder}/plant.db")
            db.execute("PRAGMA trusted_schema = OFF")
            db.execute("CREATE TABLE line (flow, bore, head AS (velocity_head(flow, bore)) STORED, CHECK (velocity_head(flow, bore) < 3))")
            db.execute("CREATE INDEX by_head ON line (velocity_head(flow, bore))")
            db.execute("CREATE VIEW checked AS SELECT head, c.velocity_head_m, c.refusal FROM line, velocity_head_checked(flow, bore) c")
            db.execute("CREATE TABLE told (head)")
            db.execute("CREATE TRIGGER tell AFTER INSERT ON line BEGIN INSERT INTO told VALUES (velocity_head(new.flow, new.bore)); END")
            db.executemany("INSERT INTO line (flow, bore) VALUES (?, ?)", [(flow, "6 in") for flow in range(1, 100)])
            with self.assertRaises(sqlite3.IntegrityError):
                db.execute("INSERT INTO line (flow, bore) VALUES (1000, 150)")
            with self.assertRaises(sqlite3.OperationalError) as raised:
                db.execute("INSERT INTO line (flow, bore) VALUES (-1e9, 150)")
            self.assertIn("velocity_head: flow_m3h is -1000000000 m3/h", str(raised.exception))
            plan = db.execute("EXPLAIN QUERY PLAN SELECT * FROM line WHERE velocity_head(flow, bore) = ?", (0.1,)).fetchone()[3]
            self.assertIn("by_head", plan)
            db.commit()
            db.close()
            db = database.connect(f"{folder}/plant.db")
            db.execute("PRAGMA trusted_schema = OFF")
            self.assertEqual(db.execute("SELECT count(*) FROM checked WHERE head = velocity_head_m").fetchone()[0], 99)
            self.assertEqual(db.execute("SELECT sum(head) FROM told").fetchone(), db.execute("SELECT sum(head) FROM line").fetchone())
            self.assertEqual(db.execute("PRAGMA integrity_check").fetchone()[0], "ok")

    def test_calls_are_not_created(self):
        """What answers calls keeps no rows: there is nothing to create or to write to."""
        db = database.connect()
        for statement in ("CREATE VIRTUAL TABLE mine USING velocity_head", "INSERT INTO velocity_head VALUES (1)", "DELETE FROM velocity_head"):
            with self.assertRaises(sqlite3.OperationalError):
                db.execute(statement)
        self.assertEqual(database.value(db, "cutwater_version", ()), os.environ["CUTWATER_VERSION"])


if __name__ == "__main__":
    unittest.main()
