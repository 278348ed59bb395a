"""The same audit written by hand, in NumPy and in SQL, without a check: the curves' parabolas, a formula for water, plain arithmetic. It is
what the audits are measured against, in time and, as far as its formulas go, in what they find."""
import numpy as np

import generator
from in_postgresql import READ, ROWS as CHECKED_ROWS, SUMS

G = generator.G


def row_values(pump, given):
    """As in_numpy.row_values; vapour pressure by Antoine's equation with constants in common use, from memory of them."""
    flow, suction, discharge, t, electrical = (given[name].astype(float) for name in generator.COLUMNS)
    with np.errstate(invalid="ignore", divide="ignore", over="ignore"):
        usable = (t > 0) & (t < 100)
        rho = np.where(usable, generator.density(t), np.nan)
        vapour = 10 ** (8.07131 - 1730.63 / (233.426 + np.where(usable, t, np.nan))) * 133.322 / 1e5
        speeds = [flow / 3600 / (np.pi / 4 * (pump[f"{side}_bore"] / 1000) ** 2) for side in ("suction", "discharge")]
        head = ((discharge - suction) * 1e5 / (rho * G) + pump["discharge_elevation"] - pump["suction_elevation"]
                + (speeds[1] ** 2 - speeds[0] ** 2) / (2 * G))
        available = ((suction + pump["ambient_bara"] - vapour) * 1e5 / (rho * G) + pump["suction_elevation"] + speeds[0] ** 2 / (2 * G))
        x = flow / pump["best_flow"]
        usual_head, usual_efficiency = pump["heads"][0] * (1 - 0.2 * x * x), max(pump["efficiencies"]) * (2 * x - x * x)
        required = pump["npsh3s"][0] * (1 + 2 / 3 * x * x)
        shaft = electrical * pump["motor_efficiency"]
        efficiency = rho * G * flow / 3600 * head / 1000 / shaft
        usual_power = rho * G * flow / 3600 * usual_head / 1000 / usual_efficiency
        loss = suction - (pump["static_barg"] - pump["suction_loss_bar"] * x * x)
        made = {"flow_ratio": x, "from_best": np.abs(x - 1), "head_change": head / usual_head - 1,
                "power_change": shaft / usual_power - 1, "efficiency": efficiency, "efficiency_lost": usual_efficiency - efficiency,
                "suction_change": loss * 1e5 / (rho * G), "npsh_margin": available - required,
                "lost_kW": electrical * (1 - efficiency / usual_efficiency), "head": head, "shaft_kW": shaft, "density": rho}
    for name in ("head_change", "power_change"):
        made[f"{name}_squared"] = made[name] * made[name]
    return made


# OFFSET again, so that no value is computed twice.
ROWS = """SELECT pump, period, least, greatest, flow, missing, flow_ratio, abs(flow_ratio - 1) AS from_best,
    head / usual_head - 1 AS head_change, shaft / (rho * 9.80665 * flow / 3.6e6 * usual_head / usual_efficiency) - 1 AS power_change, efficiency,
    usual_efficiency - efficiency AS efficiency_lost,
    (suction - (static_barg - suction_loss_bar * flow_ratio * flow_ratio)) * 1e5 / (rho * 9.80665) AS suction_change, available - required AS npsh_margin,
    electrical * (1 - efficiency / usual_efficiency) AS lost_kW, head, shaft AS shaft_kW, rho AS density
FROM (SELECT *, rho * 9.80665 * flow / 3.6e6 * head / nullif(shaft, 0) AS efficiency FROM (SELECT *,
        (discharge - suction) * 1e5 / (rho * 9.80665) + discharge_elevation - suction_elevation
            + (vd * vd - vs * vs) / (2 * 9.80665) AS head,
        (suction + ambient_bara - vapour) * 1e5 / (rho * 9.80665) + suction_elevation + vs * vs / (2 * 9.80665) AS available,
        heads[1] * (1 - 0.2 * flow_ratio * flow_ratio) AS usual_head, npsh3s[1] * (1 + 2.0::float8 / 3 * flow_ratio * flow_ratio) AS required,
        nullif(efficiencies[6] * (2 * flow_ratio - flow_ratio * flow_ratio), 0) AS usual_efficiency,
        electrical * motor_efficiency AS shaft FROM (SELECT p.*,
            period, flow, suction, discharge, electrical, flow / best_flow AS flow_ratio,
            flow IS NULL OR suction IS NULL OR discharge IS NULL OR temperature IS NULL OR electrical IS NULL AS missing,
            CASE WHEN temperature > 0 AND temperature < 100 THEN 1000
                * (1 - (temperature + 288.9414::float8) / (508929.2::float8 * (temperature + 68.12963::float8))
                    * (temperature - 3.9863::float8) * (temperature - 3.9863::float8)) END AS rho,
            CASE WHEN temperature > 0 AND temperature < 100 THEN
                exp((8.07131::float8 - 1730.63::float8 / (233.426::float8 + temperature))
                * 2.302585092994046::float8) * 133.322e-5::float8 END AS vapour,
            flow / 3600 / (0.7853981633974483::float8 * suction_bore * suction_bore * 1e-6) AS vs,
            flow / 3600 / (0.7853981633974483::float8 * discharge_bore * discharge_bore * 1e-6) AS vd
        FROM (READINGS) r JOIN pump p USING (pump) OFFSET bigint '0') a OFFSET bigint '0') b OFFSET bigint '0') c""".replace("READINGS", READ)


def statement():
    """The audit's own sums over rows by hand."""
    return SUMS.replace(CHECKED_ROWS, ROWS)
