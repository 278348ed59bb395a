"""The fleet in PostgreSQL, by parallel workers, on a server of its own that is started and stopped here, as the tests of that door do."""
import os
import pathlib
import signal
import sys
import threading
import time

import numpy as np
import psycopg2

from generator import COLUMNS
from in_numpy import columns_of
from sums import COUNTED, FIELDS, PERIODS, SUMMED

TABLES = f"""DROP TABLE IF EXISTS reading, pump; CREATE UNLOGGED TABLE reading (pump int, hour int, {', '.join(f'"{name}" real' for name in COLUMNS)});
CREATE TABLE pump (pump int PRIMARY KEY, best_flow float8, least float8, greatest float8, flows float8[], heads float8[], efficiencies float8[],
    npsh3s float8[], suction_bore float8, discharge_bore float8, suction_elevation float8, discharge_elevation float8, motor_efficiency float8,
    static_barg float8, suction_loss_bar float8, ambient_bara float8)"""

# A reading that did not come is NaN in the columns; in SQL it is NULL, and so is everything that follows from it. A checked call in the list
# of columns costs a quarter of one in FROM; OFFSET keeps the planner from writing a value's expression out, and computing it, wherever the
# value is used. A plain OFFSET 0 is to the planner an expression like any other, and all that stands above it is left to one process;
# bigint '0' it sees to be nothing, and the workers do the whole up to the sums.
READ = """SELECT pump, hour * {periods} / {hours} AS period, nullif(flow_m3h, 'NaN')::float8 AS flow, nullif(suction_barg, 'NaN')::float8 AS suction,
    nullif(discharge_barg, 'NaN')::float8 AS discharge, nullif("temperature_degC", 'NaN')::float8 AS temperature,
    nullif("electrical_kW", 'NaN')::float8 AS electrical FROM reading WHERE "electrical_kW" <> 0"""
FIRST = f"""SELECT r.*, p.best_flow, p.least, p.greatest, p.suction_bore, p.discharge_bore, p.suction_elevation, p.discharge_elevation, p.static_barg,
    p.suction_loss_bar, p.ambient_bara, r.flow / p.best_flow AS flow_ratio, r.electrical * p.motor_efficiency AS shaft,
    water_density_checked(r.temperature, 1.5) AS rho, water_vapour_pressure_checked(r.temperature) AS vapour,
    curve_head_checked(p.flows, p.heads, r.flow) AS usual, curve_efficiency_checked(p.flows, p.efficiencies, r.flow) AS usual_e,
    curve_npsh3_checked(p.flows, p.npsh3s, r.flow) AS required
FROM ({READ}) r JOIN pump p USING (pump) OFFSET bigint '0'"""
SECOND = f"""SELECT a.*, total_head_from_gauges_checked(discharge, suction, discharge_elevation, suction_elevation, discharge_bore, suction_bore, flow,
        (rho).density_kgm3) AS head,
    npsh_available_from_gauge_checked(suction, ambient_bara, suction_elevation, suction_bore, flow, (rho).density_kgm3,
        (vapour).vapour_pressure_bara) AS available,
    pump_power_input_checked(flow, (usual).head_m, (rho).density_kgm3, (usual_e).efficiency) AS power,
    head_from_pressure_checked(suction - (static_barg - suction_loss_bar * (flow_ratio * flow_ratio)), (rho).density_kgm3) AS lost
FROM ({FIRST}) a OFFSET bigint '0'"""
THIRD = f"""SELECT b.*, pump_efficiency_checked(flow, (head).total_head_m, (rho).density_kgm3, shaft) AS made,
    npsh_margin_checked((available).npsh_m, (required).npsh3_m) AS margin FROM ({SECOND}) b OFFSET bigint '0'"""
ROWS = f"""SELECT pump, period, least, greatest, flow,
    flow IS NULL OR suction IS NULL OR discharge IS NULL OR temperature IS NULL OR electrical IS NULL AS missing,
    flow_ratio, abs(flow_ratio - 1) AS from_best, (head).total_head_m / nullif((usual).head_m, 0) - 1 AS head_change,
    shaft / nullif((power).power_input_kW, 0) - 1 AS power_change, (made).efficiency AS efficiency,
    (usual_e).efficiency - (made).efficiency AS efficiency_lost, (lost).head_m AS suction_change, (margin).margin_m AS npsh_margin,
    electrical * (1 - (made).efficiency / nullif((usual_e).efficiency, 0)) AS lost_kW, (head).total_head_m AS head, shaft AS shaft_kW,
    (rho).density_kgm3 AS density
FROM ({THIRD}) c"""

# The answer of a row stands when every part of it does. A cast to bigint rounds halves to the even number.
SQUARES = {f"{name}_squared": f"{name} * {name}" for name in ("head_change", "power_change")}
PARTS = [name for name in SUMMED if name not in SQUARES]
SUMS = f"""SELECT pump, period, count(*), count(*) FILTER (WHERE missing), count(*) FILTER (WHERE NOT missing AND NOT answered),
    count(*) FILTER (WHERE answered AND (flow < least OR flow > greatest)), count(*) FILTER (WHERE answered AND npsh_margin < 0),
    {', '.join(f'sum((({SQUARES.get(name, name)}) * 1048576)::bigint) FILTER (WHERE answered)' for name in SUMMED)},
    min(npsh_margin) FILTER (WHERE answered)
FROM (SELECT *, ({' + '.join(PARTS)}) IS NOT NULL AS answered FROM ({ROWS} OFFSET bigint '0') v OFFSET bigint '0') a GROUP BY pump, period"""


def start(source, build, pg_config="/usr/lib/postgresql/15/bin/pg_config"):
    """A database with the extension in it."""
    os.environ.update(CUTWATER_BUILD=str(build), CUTWATER_SOURCE=str(source), CUTWATER_CATALOGUE=str(pathlib.Path(build, "generated/catalogue.json")),
                      CUTWATER_PG_CONFIG=os.environ.get("CUTWATER_PG_CONFIG", pg_config))
    sys.path.insert(0, str(pathlib.Path(source, "tests/doors/postgresql")))
    import server
    return server.the_server().database("fleet")


def load(connection, folder, register, block):
    """Copies the columns into the table, a block at a time, in the server's own binary form."""
    cursor = connection.cursor()
    cursor.execute(TABLES)
    cursor.executemany(f"INSERT INTO pump VALUES ({', '.join(['%s'] * 16)})", [
        (p["pump"], p["best_flow"], *p["preferred"], p["flows"], p["heads"], p["efficiencies"], p["npsh3s"], p["suction_bore"], p["discharge_bore"],
         p["suction_elevation"], p["discharge_elevation"], p["motor_efficiency"], p["static_barg"], p["suction_loss_bar"], p["ambient_bara"])
        for p in register])
    fields = [("pump", ">i4"), ("hour", ">i4")] + [(name, ">f4") for name in COLUMNS]
    kind = np.dtype([("count", ">i2")] + [pair for name, form in fields for pair in ((f"{name} size", ">i4"), (name, form))])
    for number in range(-(-len(register) // block)):
        columns = columns_of(folder, number)
        pumps, hours = columns["flow_m3h"].shape
        table = np.empty(pumps * hours, dtype=kind)
        table["count"] = len(fields)
        table["pump"] = np.repeat(np.arange(pumps) + number * block, hours)
        table["hour"] = np.tile(np.arange(hours), pumps)
        for name, _ in fields:
            table[f"{name} size"] = 4
        for name in COLUMNS:
            table[name] = columns[name].ravel()
        _copy(cursor, b"PGCOPY\n\xff\r\n\0" + bytes(8) + table.tobytes() + b"\xff\xff")
    cursor.execute("ANALYZE")


def _copy(cursor, data):
    import io
    cursor.copy_expert("COPY reading FROM STDIN (FORMAT binary)", io.BytesIO(data))


def audit(connection, pumps, hours, workers, sums=SUMS):
    """(sums, seconds). workers: how many besides the connection's own process."""
    cursor = connection.cursor()
    settle(cursor, workers)
    begun = time.perf_counter()
    cursor.execute(statement(hours, sums))
    found = cursor.fetchall()
    took = time.perf_counter() - begun
    made = {name: np.zeros((pumps, PERIODS), dtype=np.int64) for name in COUNTED + SUMMED}
    made["least_npsh_margin"] = np.full((pumps, PERIODS), np.inf)
    for row in found:
        for name, value in zip(FIELDS[2:], row[2:]):
            if value is not None:
                made[name][row[0], row[1]] = value
    return made, took


def audit_surely(connection, folder, register, block, hours, workers, kill_one=False, say=print):
    """(sums, seconds), as audit. When one of its processes dies the server ends all others and starts again, with unlogged tables empty: then
    the readings are loaded once more and the audit begins anew.

    kill_one: kills a parallel worker in the midst of its work, to show that nothing is lost.
    """
    begun, killed, lost = time.perf_counter(), threading.Event(), 0
    if kill_one:
        threading.Thread(target=_kill_a_worker, args=(_connected(), killed, say), daemon=True).start()
    while lost < 3:
        try:
            made, took = audit(connection, len(register), hours, workers)
            if kill_one and not killed.is_set():
                continue  # over before a worker was seen
            return made, time.perf_counter() - begun if lost else took
        except psycopg2.OperationalError as error:
            lost += 1
            say(f"   {str(error).strip().splitlines()[0]}")
            connection = _connected()
            load(connection, folder, register, block)
            say("   the server is there again, the readings are loaded again")
    raise RuntimeError("the server lost a process three times")


def _connected():
    """A new connection; waits for a server that is starting again."""
    import server
    for _ in range(600):
        try:
            return server.the_server().connect("fleet")
        except psycopg2.OperationalError:
            time.sleep(0.1)
    return server.the_server().connect("fleet")


def _kill_a_worker(connection, killed, say):
    cursor = connection.cursor()
    while not killed.is_set():
        cursor.execute("SELECT pid FROM pg_stat_activity WHERE backend_type = 'parallel worker' AND datname = 'fleet'")
        if found := cursor.fetchone():
            say(f"   killing parallel worker {found[0]}")
            killed.set()
            os.kill(found[0], signal.SIGKILL)
        time.sleep(0.005)


def settle(cursor, workers):
    """One table may be scanned by several, however small it is. Sums are kept by pump and period, a few kilobytes each, and no row is sorted."""
    cursor.execute(f"SET max_parallel_workers_per_gather = {workers}; SET parallel_setup_cost = 0; SET parallel_tuple_cost = 0; "
                   f"SET min_parallel_table_scan_size = 0; SET jit = off; SET work_mem = '1GB'; SET enable_sort = off; ALTER TABLE reading SET (parallel_workers = {max(workers, 1)})")


def statement(hours, sums=SUMS):
    return sums.replace("{periods}", str(PERIODS)).replace("{hours}", str(hours))


def plan(connection, hours):
    """The plan of the audit, with the workers that were launched."""
    cursor = connection.cursor()
    cursor.execute("EXPLAIN (ANALYZE, COSTS OFF, TIMING OFF) " + statement(hours))
    return "\n".join(line for (line,) in cursor.fetchall())
