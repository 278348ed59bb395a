#!/usr/bin/env python3
"""What a call costs in SQLite against the same relation written in SQL: run with CUTWATER_SQLITE_PACKAGE=build/sqlite.

Each figure is the least of several runs over one table in memory, less the same scan without the relation.
"""
import os
import sqlite3
import time

ROWS = 200_000
HAND = "(ps - pv) * 1e5 / (rho * 9.80665) + z - hf"
CALL = "npsh_available({}, pv, rho, z, hf)"
SCANS = {
    "a scan": "SELECT sum(ps) + sum(pv) + sum(rho) + sum(z) + sum(hf) FROM reading",
    "by hand": f"SELECT sum(ps) + sum(pv) + sum(rho) + sum(z) + sum({HAND}) FROM reading",
    "npsh_available": f"SELECT sum(ps) + sum(pv) + sum(rho) + sum(z) + sum({CALL.format('ps')}) FROM reading",
    "one text with its unit": f"SELECT sum(ps) + sum(pv) + sum(rho) + sum(z) + sum({CALL.format('words')}) FROM reading",
    "as a table": "SELECT sum(ps) + sum(pv) + sum(rho) + sum(z) + sum(npsh_m) FROM reading r, npsh_available(r.ps, r.pv, r.rho, r.z, r.hf)",
    "checked, answered": "SELECT sum(ps) + sum(pv) + sum(rho) + sum(z) + sum(npsh_m) + count(refusal) FROM reading r, npsh_available_checked(r.ps, r.pv, r.rho, r.z, r.hf)",
    "checked, refused": "SELECT sum(ps) + sum(pv) + sum(rho) + sum(z) + count(refusal) FROM reading r, npsh_available_checked(-r.ps, r.pv, r.rho, r.z, r.hf)",
}


def main():
    db = sqlite3.connect(":memory:")
    db.enable_load_extension(True)
    db.load_extension(os.environ["CUTWATER_SQLITE_PACKAGE"] + "/cutwater")
    db.execute("CREATE TABLE reading (ps REAL, pv REAL, rho REAL, z REAL, hf REAL, words TEXT)")
    db.executemany("INSERT INTO reading VALUES (?, ?, ?, ?, ?, ?)",
                   [(1 + i % 7 * 0.01, 0.02 + i % 5 * 0.01, 950.0 + i % 97, i % 9 - 4.0, i % 11 * 0.1, f"{1 + i % 7 * 0.01:.2f} bara") for i in range(ROWS)])
    least = dict.fromkeys(SCANS, float("inf"))
    for _ in range(7):
        for name, statement in SCANS.items():
            begun = time.process_time()
            db.execute(statement).fetchall()
            least[name] = min(least[name], time.process_time() - begun)
    hand = least["by hand"] - least["a scan"]
    print(f"| `npsh_available`, {ROWS} rows | a row | over by hand |\n|---|---:|---:|")
    for name, took in least.items():
        own = took - least["a scan"]
        if own > 0:
            print(f"| {name} | {own / ROWS * 1e9:.0f} ns | {own / hand:.2f} |")


if __name__ == "__main__":
    main()
