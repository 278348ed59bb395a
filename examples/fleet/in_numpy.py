"""One block of pumps, from the columns on disk to sums, by the array form. Runs in whatever process; memory is that of one block."""
import pathlib

import numpy as np

import cutwater
from generator import COLUMNS
from sums import PERIODS, SUMMED, whole

rows = cutwater.rows


def columns_of(folder, block):
    """The columns of a block, mapped into memory and not read yet."""
    return {name: np.load(pathlib.Path(folder, f"{name}-{block:04}.npy"), mmap_mode="r") for name in COLUMNS}


def row_values(pump, given):
    """Every row's values, NaN where the row is not answered."""
    flow, suction, discharge, temperature, electrical = (given[name].astype(float) for name in COLUMNS)
    density = rows("water_density", temperature, 1.5).results
    vapour = rows("water_vapour_pressure", temperature).results
    head = rows("total_head_from_gauges", discharge, suction, pump["discharge_elevation"], pump["suction_elevation"],
                pump["discharge_bore"], pump["suction_bore"], flow, density).results
    available = rows("npsh_available_from_gauge", suction, pump["ambient_bara"], pump["suction_elevation"],
                     pump["suction_bore"], flow, density, vapour).results
    usual_head = rows("curve_head", pump["flows"], pump["heads"], flow).results
    usual_efficiency = rows("curve_efficiency", pump["flows"], pump["efficiencies"], flow).results
    required = rows("curve_npsh3", pump["flows"], pump["npsh3s"], flow).results
    shaft = electrical * pump["motor_efficiency"]
    efficiency = rows("pump_efficiency", flow, head, density, shaft).results
    usual_power = rows("pump_power_input", flow, usual_head, density, usual_efficiency).results
    ratio = flow / pump["best_flow"]
    loss = suction - (pump["static_barg"] - pump["suction_loss_bar"] * (ratio * ratio))
    with np.errstate(invalid="ignore", divide="ignore"):
        made = {"flow_ratio": ratio, "from_best": np.abs(ratio - 1.0), "head_change": head / usual_head - 1.0,
                "power_change": shaft / usual_power - 1.0, "efficiency": efficiency, "efficiency_lost": usual_efficiency - efficiency,
                "suction_change": rows("head_from_pressure", loss, density).results,
                "npsh_margin": rows("npsh_margin", available, required).results,
                "lost_kW": electrical * (1.0 - efficiency / usual_efficiency), "head": head, "shaft_kW": shaft, "density": density}
    for name in ("head_change", "power_change"):
        made[f"{name}_squared"] = made[name] * made[name]
    return made


def block_sums(folder, block, register, values_of=row_values):
    """One array of whole numbers and one of least margins: {field: array over pumps and periods}."""
    columns = columns_of(folder, block)
    hours = columns["flow_m3h"].shape[1]
    period = np.arange(hours) * PERIODS // hours
    begins = np.searchsorted(period, np.arange(PERIODS))
    kept = []
    for row, pump in enumerate(register):
        given = {name: column[row] for name, column in columns.items()}
        power = given["electrical_kW"]
        running = ~(power == 0)
        missing = running & np.logical_or.reduce([np.isnan(values) for values in given.values()])
        values = values_of(pump, given)
        answered = running & ~missing & np.logical_and.reduce([np.isfinite(value) for value in values.values()])
        flow = given["flow_m3h"].astype(float)
        least, greatest = pump["preferred"]
        counted = {"running": running, "missing": missing, "refused": running & ~missing & ~answered,
                   "outside": answered & ((flow < least) | (flow > greatest)), "short_of_npsh": answered & (values["npsh_margin"] < 0)}
        sums = {name: np.add.reduceat(flags.astype(np.int64), begins) for name, flags in counted.items()}
        sums |= {name: np.add.reduceat(whole(np.where(answered, values[name], 0.0)), begins) for name in SUMMED}
        sums["least_npsh_margin"] = np.minimum.reduceat(np.where(answered, values["npsh_margin"], np.inf), begins)
        kept.append(sums)
    return {name: np.array([sums[name] for sums in kept]) for name in kept[0]}


def joined(parts):
    """The blocks' sums as one table."""
    return {name: np.concatenate([part[name] for part in parts]) for name in parts[0]}

