"""The fleet of examples/fleet, a very small one: the same audit in PostgreSQL and on Dask to the bit, whatever the workers; the faults put
in are found, with a confidence that is borne out; the sums agree with the same audit written by hand."""
import json
import os
import pathlib
import sys
import tempfile
import unittest

import numpy as np

sys.path.insert(0, str(pathlib.Path(os.environ["CUTWATER_SOURCE"], "examples/fleet")))
import audit_fleet  # noqa: E402
import by_hand  # noqa: E402
import diagnosis  # noqa: E402
import generator  # noqa: E402
import in_dask  # noqa: E402
import in_numpy  # noqa: E402
import in_postgresql  # noqa: E402
from sums import COUNTED, STEP  # noqa: E402

PUMPS, HOURS, BLOCK = 9, 700, 2


class Fleet(unittest.TestCase):
    def setUp(self):
        folder = tempfile.TemporaryDirectory()
        self.addCleanup(folder.cleanup)
        self.folder = folder.name

    def made(self, pumps, hours, seed, block):
        blocks = generator.make(self.folder, pumps, hours, seed, block)
        self.register = audit_fleet.register_of(self.folder)
        return [in_numpy.block_sums(self.folder, i, self.register[i * block:(i + 1) * block]) for i in range(blocks)]

    def test_two_engines_to_the_bit(self):
        wanted = in_numpy.joined(self.made(PUMPS, HOURS, 11, BLOCK))
        for name in ("running", "missing", "refused", "outside"):
            self.assertGreater(wanted[name].sum(), 0, name)  # each kind of row is there
        said = []
        cluster, _, memory = in_dask.audit(self.folder, self.register, BLOCK, 2, kill_one=True, say=said.append)
        self.assertEqual(audit_fleet.same(wanted, cluster), [])
        self.assertRegex("\n".join(said), r"killed worker \d+[^$]*nothing was lost")
        self.assertLess(memory, 400)
        connection = in_postgresql.start(os.environ["CUTWATER_SOURCE"], os.environ["CUTWATER_BUILD"])
        in_postgresql.load(connection, self.folder, self.register, BLOCK)
        for workers in (0, 2):
            database, _ = in_postgresql.audit(connection, PUMPS, HOURS, workers)
            self.assertEqual(audit_fleet.same(wanted, database), [], workers)
        self.assertRegex(in_postgresql.plan(connection, HOURS), r"(?s)Workers Launched: [12].*Partial HashAggregate")  # workers do all of it
        by_sql, _ = in_postgresql.audit(connection, PUMPS, HOURS, 0, by_hand.statement())
        self.close_to(by_sql, wanted)
        said.clear()
        again, _ = in_postgresql.audit_surely(connection, self.folder, self.register, BLOCK, HOURS, 2, kill_one=True, say=said.append)
        self.assertEqual(audit_fleet.same(wanted, again), [])
        self.assertRegex("\n".join(said), r"killing parallel worker \d+[^$]*loaded again")

    def close_to(self, hand, wanted):
        """Water's formula differs by up to 0.3 kg/m3 there, vapour pressure by 1 %, parabolas from curves between their points by up to 0.6 %."""
        answered = sum(wanted["running"] - wanted["missing"] - wanted["refused"]).sum()
        for name in ("running", "missing"):
            self.assertEqual(hand[name].tolist(), wanted[name].tolist())
        for name in ("head_change", "power_change", "efficiency", "efficiency_lost", "flow_ratio", "from_best"):
            self.assertLess(abs(int((hand[name] - wanted[name]).sum())) / STEP / answered, 0.004, name)
        for name in ("suction_change", "npsh_margin"):
            self.assertLess(abs(int((hand[name] - wanted[name]).sum())) / STEP / answered, 0.05, name)

    def test_numpy_by_hand(self):
        wanted = in_numpy.joined(self.made(PUMPS, HOURS, 12, PUMPS))
        self.close_to(in_numpy.block_sums(self.folder, 0, self.register, by_hand.row_values), wanted)
        self.assertEqual(sorted(wanted), sorted([*COUNTED, *by_hand.row_values(self.register[0], {n: np.ones(1) for n in generator.COLUMNS}), "least_npsh_margin"]))

    def test_faults_put_in_are_found(self):
        for seed in (1, 2):
            findings = diagnosis.diagnose(in_numpy.joined(self.made(160, 600, seed, 40)), self.register, 600)
            faults = json.loads(pathlib.Path(self.folder, "faults.json").read_text(encoding="utf-8"))
            right, put_in, accused, kinds = diagnosis.found(findings, faults)
            self.assertGreater(put_in, 20)
            self.assertEqual(sorted(kinds), sorted(generator.FAULTS))
            self.assertGreaterEqual(right, 0.9 * put_in, kinds)
            self.assertLessEqual(accused, 3)
            sure = [f for f in findings if f["confidence"] > 0.9]
            true = [f["fault"] == faults.get(str(f["pump"]), [diagnosis.SOUND])[0] for f in sure]
            self.assertGreater(np.mean(true), 0.95)
            self.assertGreater(len(sure), 120)

    def test_what_harms_stands_first(self):
        findings = diagnosis.diagnose(in_numpy.joined(self.made(60, 400, 5, 60)), self.register, 400)
        self.assertEqual([f["rank"] for f in findings], sorted(f["rank"] for f in findings))
        self.assertTrue(findings[0]["short"] or findings[0]["outside"] > 200)
        self.assertIn("worn clearance", diagnosis.table(findings))


if __name__ == "__main__":
    unittest.main()
