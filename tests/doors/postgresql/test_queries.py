"""A table of readings: audited by the checked call, by parallel workers that a plan shows, to the same bits as by one."""
import math
import re
import unittest

import server

ROWS = 120_000
TABLE = f"""CREATE TABLE reading AS SELECT i AS id, 1 + i % 7 * 0.01 AS ps, CASE WHEN i % 1000 = 0 THEN 2.0 ELSE 0.02 + i % 5 * 0.01 END AS pv,
    CASE WHEN i % 500 = 1 THEN NULL ELSE 950.0 + i % 97 END AS rho, i % 9 - 4.0 AS z, i % 11 * 0.1 AS hf FROM generate_series(1, {ROWS}) i;
    ALTER TABLE reading ALTER ps TYPE float8, ALTER pv TYPE float8, ALTER rho TYPE float8, ALTER z TYPE float8, ALTER hf TYPE float8; ANALYZE reading"""
AUDIT = """SELECT count(*), count(npsh_m), count(refusal) FILTER (WHERE refusal_status = 'missing'), count(refusal) FILTER (WHERE refusal_status = 'contradiction'),
    sum(hashfloat8(npsh_m)::bigint) FROM reading, npsh_available_checked(ps, pv, rho, z, hf)"""
SCALAR = "SELECT sum(hashfloat8(npsh_available(ps, least(pv, 0.06), rho, z, hf))::bigint), min(npsh_available(ps, least(pv, 0.06), rho, z, hf)) FROM reading"
CURVES = """SELECT sum(hashfloat8(curve_head(f, h, 60000))::bigint) FROM (SELECT id % 2000 AS pump, array_agg(id::float8 ORDER BY id) AS f,
    array_agg(60 - id * 1e-4 ORDER BY id) AS h FROM reading GROUP BY 1) curves"""
# One table may be scanned by several however small it is.
PARALLEL = "SET parallel_setup_cost = 0; SET parallel_tuple_cost = 0; SET min_parallel_table_scan_size = 0; SET max_parallel_workers_per_gather = 2"


class Queries(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.db = server.the_server().database("queries").cursor()
        cls.db.execute(TABLE)

    def rows(self, statement):
        self.db.execute(statement)
        return self.db.fetchall()

    def test_parallel_workers(self):
        for statement in (AUDIT, SCALAR):
            self.db.execute("SET max_parallel_workers_per_gather = 0")
            alone = self.rows(statement)
            self.db.execute(PARALLEL)
            plan = "\n".join(line for (line,) in self.rows("EXPLAIN (ANALYZE, VERBOSE, COSTS OFF, TIMING OFF) " + statement))
            self.assertGreaterEqual(int(re.search(r"Workers Launched: (\d+)", plan)[1]), 1, plan)
            # The calls stand below the gathering of what the workers found.
            self.assertRegex(plan, r"(?s)Gather.*Partial Aggregate.*npsh_available")
            self.assertEqual(self.rows(statement), alone)

    def test_audit(self):
        ((count, answered, missing, contradicting, _),) = self.rows(AUDIT)
        self.assertEqual((count, missing, contradicting), (ROWS, ROWS // 500, ROWS // 1000))
        self.assertEqual(answered, ROWS - ROWS // 500 - ROWS // 1000)
        for ps, pv, rho, z, hf, got in self.rows("SELECT ps, pv, rho, z, hf, npsh_m FROM reading, npsh_available_checked(ps, pv, rho, z, hf) WHERE refusal IS NULL LIMIT 300"):
            self.assertTrue(math.isclose(got, (ps - pv) * 1e5 / (rho * 9.80665) + z - hf, rel_tol=1e-12, abs_tol=1e-12))
        ((worst,),) = self.rows("SELECT min(refusal) FROM reading, npsh_available_checked(ps, pv, rho, z, hf) WHERE id = 1000")
        self.assertIn("vapour pressure", worst)

    def test_a_refusal_names_its_row(self):
        ((pair,),) = self.rows("SELECT array_agg(id ORDER BY id) FROM reading, npsh_available_checked(ps, pv, rho, z, hf) WHERE refusal_input = 'vapour_pressure_bara' AND id <= 2000")
        self.assertEqual(pair, [1000, 2000])

    def test_arrays_of_rows(self):
        self.assertEqual(len(self.rows(CURVES)), 1)


if __name__ == "__main__":
    unittest.main()
