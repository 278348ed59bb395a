#!/usr/bin/env python3
"""What a call costs in PostgreSQL against the same relation written in SQL, by one process and with two workers more.

Run with the environment of the tests (ctest --test-dir build -R postgresql -V shows it). Each figure is the least of several runs over one
table, less the same scan without the relation; the server is the tests' own.
"""
import time

import server

ROWS = 1_000_000
TABLE = f"""CREATE TABLE reading AS SELECT 1 + i % 7 * 0.01 AS ps, 0.02 + i % 5 * 0.01 AS pv, 950.0 + i % 97 AS rho, i % 9 - 4.0 AS z, i % 11 * 0.1 AS hf,
    (1 + i % 7 * 0.01)::text || ' bara' AS words FROM generate_series(1, {ROWS}) i;
    ALTER TABLE reading ALTER ps TYPE float8, ALTER pv TYPE float8, ALTER rho TYPE float8, ALTER z TYPE float8, ALTER hf TYPE float8"""
SCANS = {
    "a scan": "ps",
    "by hand": "(ps - pv) * 1e5 / (rho * 9.80665::float8) + z - hf",
    "by hand, with the ten comparisons": """CASE WHEN ps > 0 AND ps <= 500 AND pv >= 0 AND pv <= 300 AND rho >= 50 AND rho <= 25000 AND z > '-inf' AND z < 'inf'
        AND hf >= 0 AND hf < 'inf' THEN (ps - pv) * 1e5 / (rho * 9.80665::float8) + z - hf END""",
    "npsh_available": "npsh_available(ps, pv, rho, z, hf)",
    "one text with its unit": "npsh_available(words, pv, rho, z, hf)",
    "checked, answered": "(npsh_available_checked(ps, pv, rho, z, hf)).npsh_m",
    "checked in FROM, answered": None,
    "checked, refused": "length((npsh_available_checked(-ps, pv, rho, z, hf)).refusal)",
}


def statement(name, expression):
    if expression is None:
        return "SELECT sum(ps), sum(pv), sum(rho), sum(z), sum(hf), sum(npsh_m) FROM reading, npsh_available_checked(ps, pv, rho, z, hf)"
    return f"SELECT sum(ps), sum(pv), sum(rho), sum(z), sum(hf), sum({expression}) FROM reading"


def main():
    db = server.the_server().database("speed").cursor()
    db.execute(TABLE)
    db.execute("VACUUM ANALYZE reading")
    db.execute("SET parallel_setup_cost = 0; SET parallel_tuple_cost = 0; SET jit = off")
    for workers in (0, 2):
        db.execute(f"SET max_parallel_workers_per_gather = {workers}")
        least = dict.fromkeys(SCANS, float("inf"))
        for _ in range(4):
            for name, expression in SCANS.items():
                begun = time.perf_counter()
                db.execute(statement(name, expression))
                least[name] = min(least[name], time.perf_counter() - begun)
        hand = least["by hand"] - least["a scan"]
        print(f"\n| `npsh_available`, {ROWS} rows, {workers} workers more | a row | over by hand |\n|---|---:|---:|")
        for name, took in least.items():
            if name != "a scan":
                own = took - least["a scan"]
                print(f"| {name} | {own / ROWS * 1e9:.0f} ns | {own / hand:.2f} |")
        print(f"| the scan itself | {least['a scan'] / ROWS * 1e9:.0f} ns | |")


if __name__ == "__main__":
    main()
