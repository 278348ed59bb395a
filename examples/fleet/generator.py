"""An invented fleet: pumps on water with a year of hourly readings, faults put in on purpose, the same for the same seed.

The readings follow from relations of this file's own (parabolas for curves, hydrostatics), not from cutwater, and carry the errors that
their instruments are said to have. They are written as columns: one .npy file a column and block of pumps, float32, a row a pump.
"""
import json
import pathlib

import numpy as np

COLUMNS = ("flow_m3h", "suction_barg", "discharge_barg", "temperature_degC", "electrical_kW")
FAULTS = ("worn clearance", "throttled suction", "wrong speed", "drifting gauge")
# The part of the pumps that have a fault, and how large it may be. At 1 a clearance leaks 12 % of best flow at the year's end, a suction
# takes 0.4 bar more at best flow, a speed is 6 % off, a gauge has drifted by a tenth.
FAULTY, SIZES = 0.25, (0.2, 1.0)
G = 9.80665
POINTS = np.linspace(0, 1.6, 9)
# One standard deviation: what an instrument is off by all year, and how far pumps lie from the curve that came with them.
BIAS = {"flow": 0.010, "discharge": 0.005, "power": 0.010, "suction_bar": 0.015, "head": 0.007, "efficiency": 0.007}


def head_ratio(x):
    return 1.25 - 0.25 * x * x


def efficiency_ratio(x):
    return 2 * x - x * x


def density(t):
    """Of water, kg/m3: a formula in common use, from memory of it."""
    return 1000 * (1 - (t + 288.9414) / (508929.2 * (t + 68.12963)) * (t - 3.9863) ** 2)


def bore_for(flow, velocity):
    """In whole millimetres, for m3/h and m/s."""
    return float(np.round(1000 * np.sqrt(flow / 3600 / velocity * 4 / np.pi)))


def pump_of(number, seed, faulty=FAULTY, sizes=SIZES):
    """A pump's entry in the register, and the fault that is put in: (kind or None, how large)."""
    chance = np.random.default_rng([seed, number])
    flow, head, best = np.exp(chance.uniform(np.log(40), np.log(900))), chance.uniform(20, 90), chance.uniform(0.62, 0.84)
    npsh3 = chance.uniform(1.8, 4.0)
    entry = {
        "pump": number, "tag": f"P-{number:05}", "best_flow": flow, "flows": (POINTS * flow).tolist(), "heads": (head * head_ratio(POINTS)).tolist(),
        "efficiencies": (best * efficiency_ratio(POINTS)).tolist(), "npsh3s": (npsh3 * (0.6 + 0.4 * POINTS**2)).tolist(),
        "suction_bore": bore_for(flow, 1.5), "discharge_bore": bore_for(flow, 2.5),
        "suction_elevation": 0.2, "discharge_elevation": 0.9, "motor_efficiency": 0.94, "static_barg": chance.uniform(-0.2, 0.6),
        "suction_loss_bar": chance.uniform(0.03, 0.10), "ambient_bara": 1.013, "specific_speed": 30.0}
    kind = FAULTS[chance.integers(4)] if chance.random() < faulty else None
    size = chance.uniform(*sizes) * (-1 if chance.random() < 0.5 else 1)
    return entry, kind, size


def readings_of(entry, kind, size, hours, seed):
    """{column: a year of it}."""
    chance = np.random.default_rng([seed, entry["pump"], 1])
    t = np.arange(hours) / max(hours, 1)  # of the year
    hour = np.arange(hours)
    x = (chance.uniform(0.75, 1.05) + 0.08 * np.sin(2 * np.pi * (t - 0.2)) + 0.06 * np.sin(2 * np.pi * hour / 24)
         + 0.04 * np.repeat(chance.standard_normal(hours // 50 + 1), 50)[:hours])
    x = np.clip(x, 0.2, 1.35)
    if chance.random() < 0.05:
        x *= 0.55  # one that works far from its best flow
    temperature = chance.uniform(18, 45) + 8 * np.sin(2 * np.pi * (t - 0.3)) + 0.5 * chance.standard_normal(hours)
    rho, best, speed, leak = density(temperature), entry["best_flow"], 1.0, 0.0
    if kind == "wrong speed":
        speed = 1 + 0.06 * size
    if kind == "worn clearance":
        leak = 0.12 * abs(size) * (0.5 + 0.5 * t)
    inside = x / speed + leak
    off = {name: 1 + spread * chance.standard_normal() for name, spread in BIAS.items() if name != "suction_bar"}
    head = entry["heads"][0] / 1.25 * head_ratio(inside) * speed**2 * off["head"]
    shaft = (rho * G * (inside * speed * best / 3600) * head / (max(entry["efficiencies"]) * efficiency_ratio(inside)) / 1000) / off["efficiency"]
    suction = entry["static_barg"] - entry["suction_loss_bar"] * x * x
    if kind == "throttled suction":
        suction = suction - 0.40 * abs(size) * x * x
    flow = x * best
    speeds = [flow / 3600 / (np.pi / 4 * (entry[f"{side}_bore"] / 1000) ** 2) for side in ("suction", "discharge")]
    rise = head - (entry["discharge_elevation"] - entry["suction_elevation"]) - (speeds[1] ** 2 - speeds[0] ** 2) / (2 * G)
    discharge = suction + rise * rho * G / 1e5
    if kind == "drifting gauge":
        discharge = discharge * (1 + 0.10 * size * t)

    def noisy(values, spread):
        return values * (1 + spread * chance.standard_normal(hours))

    made = {"flow_m3h": noisy(flow * off["flow"], 0.01),
            "suction_barg": suction + BIAS["suction_bar"] * chance.standard_normal() + 0.01 * chance.standard_normal(hours),
            "discharge_barg": noisy(discharge * off["discharge"], 0.005), "temperature_degC": temperature,
            "electrical_kW": noisy(shaft / entry["motor_efficiency"] * off["power"], 0.01)}
    if chance.random() < 0.6:  # stopped for some days
        begin = int(chance.integers(0, max(hours - hours // 20, 1)))
        for name in ("flow_m3h", "electrical_kW"):
            made[name][begin:begin + hours // 20] = 0
    made["temperature_degC"][chance.random(hours) < 0.0005] = -999  # a broken wire
    for name in COLUMNS:
        made[name][chance.random(hours) < 0.0005] = np.nan  # no reading came
    return made


def make(folder, pumps, hours, seed, block, faulty=FAULTY, sizes=SIZES):
    """Writes the fleet, a block of pumps at a time; returns how many blocks. Of a fleet that is there already nothing is made anew."""
    folder = pathlib.Path(folder)
    folder.mkdir(parents=True, exist_ok=True)
    made = {"pumps": pumps, "hours": hours, "seed": seed, "block": block, "faulty": faulty, "sizes": list(sizes)}
    mark = folder / "fleet.json"
    if mark.exists() and json.loads(mark.read_text(encoding="utf-8")) == made:
        return -(-pumps // block)
    register, faults = [], {}
    for number in range(-(-pumps // block)):
        members = range(number * block, min((number + 1) * block, pumps))
        columns = {name: np.empty((len(members), hours), dtype=np.float32) for name in COLUMNS}
        for row, pump in enumerate(members):
            entry, kind, size = pump_of(pump, seed, faulty, sizes)
            register.append(entry)
            if kind:
                faults[pump] = [kind, size]
            for name, values in readings_of(entry, kind, size, hours, seed).items():
                columns[name][row] = values
        for name, values in columns.items():
            np.save(folder / f"{name}-{number:04}.npy", values)
    (folder / "register.json").write_text(json.dumps(register), encoding="utf-8")
    (folder / "faults.json").write_text(json.dumps(faults), encoding="utf-8")  # for the proof alone: no audit reads it
    mark.write_text(json.dumps(made), encoding="utf-8")
    return -(-pumps // block)
