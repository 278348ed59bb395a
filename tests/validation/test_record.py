"""The record notices what is missing or wrong: each fault is made, and must be told."""
import os
import pathlib
import sys
import unittest

sys.path.insert(0, str(pathlib.Path(__file__).parents[1] / "support"))
os.environ.setdefault("CUTWATER_SOURCE", str(pathlib.Path(__file__).parents[2]))

import golden  # noqa: E402
import kinds  # noqa: E402
import pages  # noqa: E402
import record  # noqa: E402

CATALOGUE = '{"functions": [{"name": "f", "family": "system"}, {"name": "g", "family": "system"}]}'


def case(where, function, source, refused=False):
    return golden.Case(where, f"{function}(1) = 2", function, [1.0], [2.0], 1e-3, True, refused, "x" if refused else "", source)


CASES = [case("a:1", "f", "A book, example 1 (read)"), case("a:2", "f", "hand calculation"), case("a:3", "f", "hand calculation", True),
         case("a:4", "g", "A standard (from memory of it)")]
RUNS = {"a:1": ("good", 2e-4, 0.2), "a:2": ("good", 0.0, 0.0), "a:3": ("good", 0.0, 0.0), "a:4": ("good", 1e-17, 0.0)}
WHY = {"g": "no text of it is open"}


def gathered(cases=CASES, runs=RUNS, why=WHY, catalogue=CATALOGUE):
    return record.gather(catalogue, runs, "1", "cc", cases, why)


class Faults(unittest.TestCase):
    def test_whole(self):
        made = gathered()
        self.assertEqual(made.faults, [])
        self.assertEqual([f.best() for f in made.functions], ["published", "memory"])
        self.assertEqual(made.functions[0].refusals, 1)
        page = pages.pages(made)["system.md"]
        self.assertIn("| published | A book, example 1 (read) | 1 | 0.001 relative | 0.0002 relative | `f(1)` |", page)
        self.assertIn("| memory | A standard (from memory of it) | 1 | 0.001 relative | below 1e-13 relative | `g(1)` |", page)

    def test_function_without_check(self):
        self.assertIn("g: has no check", gathered(CASES[:3]).faults)

    def test_case_not_run(self):
        self.assertIn("a:1: was not run", gathered(runs={k: v for k, v in RUNS.items() if k != "a:1"}).faults)

    def test_deviation_too_great(self):
        self.assertTrue(any("off by" in fault for fault in gathered(runs=RUNS | {"a:1": ("off by 3e-3", 3e-3, 3.0)}).faults))

    def test_nobody_outside(self):
        self.assertIn("g: has no outside witness, and no line of its golden file says why", gathered(why={}).faults)

    def test_argument_outlived(self):
        self.assertIn("f: has an outside witness, yet a line says that there is none", gathered(why=WHY | {"f": "none"}).faults)

    def test_unknown_function(self):
        self.assertIn("h: argued, but not in the catalogue", gathered(why=WHY | {"h": "none"}).faults)
        self.assertIn("a:9: no function h in the catalogue", gathered(CASES + [case("a:9", "h", "hand calculation")]).faults)


class Kinds(unittest.TestCase):
    def test_words(self):
        for source, kind in {"A book, table 3 (excerpt read)": "published", "A standard, clause 4 (from memory of it)": "memory",
                             "A book (read), B standard (from memory of it)": "memory", "the library fluids 1.0.22": "library", "a public program (read, run)": "library",
                             "balance of heat solved by SciPy's brentq": "solver", "PchipInterpolator of SciPy 1.10.1": "library",
                             "A book, eq. 4 (read); hand calculation": "relation", "hand calculation": "own",
                             "A standard, table 2": "own"}.items():
            self.assertEqual(kinds.kind_of(source), kind, source)


if __name__ == "__main__":
    unittest.main()
