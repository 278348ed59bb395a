"""From the sums of an audit to what is wrong with which pump, how surely, and what it costs.

Five signs are taken of each pump: how far head and shaft power lie from the curves that came with it, how far both moved from the first
quarter of the year to the last, and how far suction head lies from what its line should give. Each fault moves them in a direction of its
own, worked out from the pump's own curve. With normal errors (the instruments' and the curves', below) and a size of the fault that is
not known, how likely the signs are under each explanation is a normal density of known covariance, and Bayes' rule turns that into the
confidence that is printed. A clearance only opens and a suction only clogs, so half of the sizes are left out there. How many pumps have
which fault, and how large, is a guess at first (below), which the fleet itself then corrects.
"""
import math

import numpy as np

import cutwater
from sums import PERIODS, PRICE, STEP

# Standard uncertainties, as parts of the reading: what a works' own instruments and curves may be off by, common practice.
# "curve" is its head's, which shows in head and power alike; "head" and "power" are the rest, "suction_m" a gauge good to 15 mbar.
UNCERTAIN = {"flow": 0.010, "curve": 0.007, "head": 0.009, "power": 0.0125, "drift": 0.003, "suction_m": 0.16}
# How large a fault usually is (standard deviation of its size): leaking part of the best flow, part of the speed, metres, part of the reading.
# What is usual before anything is known of the fleet; the guess weighs as GUESSED pumps.
SIZES = {"worn clearance": 0.08, "wrong speed": 0.05, "throttled suction": 3.0, "drifting gauge": 0.08}
ONE_WAY = np.array([name in ("worn clearance", "throttled suction") for name in SIZES])
GUESSED = 20
SOUND = "nothing found"
PRIOR = {SOUND: 0.75, **dict.fromkeys(SIZES, 0.25 / len(SIZES))}
_erfc = np.vectorize(math.erfc)
YEAR = 8760
FIRST, LAST = slice(0, PERIODS // 4), slice(PERIODS - PERIODS // 4, PERIODS)


def means(sums, answered, periods=slice(None)):
    """{field: mean a pump over those periods}."""
    count = answered[:, periods].sum(axis=1)
    with np.errstate(invalid="ignore", divide="ignore"):
        return {name: values[:, periods].sum(axis=1) / STEP / count for name, values in sums.items() if values.dtype == np.int64}


def directions(pump, ratio):
    """{fault: how the five signs move with its size}, and how they move with an error of the flow meter."""
    flow, best = ratio * pump["best_flow"], pump["best_flow"]

    def head_and_power(leak=0.0, speed=1.0):
        inside = flow / speed + leak * best
        head = cutwater.curve_head(pump["flows"], pump["heads"], inside)
        power = cutwater.pump_power_input(inside, head, 998.0, cutwater.curve_efficiency(pump["flows"], pump["efficiencies"], inside))
        return np.array([head * speed**2, power * speed**3])

    usual = head_and_power()
    leaking = (head_and_power(leak=0.06) / usual - 1) / 0.06
    faster = (head_and_power(speed=1.04) / head_and_power(speed=0.96) - 1) / 0.08
    meter = (head_and_power(leak=0.02 * ratio) / usual - 1) / 0.02
    # A clearance that has opened to its end in the year was half of it at the beginning; a gauge drifts from nothing.
    return {"worn clearance": np.array([*(0.75 * leaking), *(0.375 * leaking), 0]), "wrong speed": np.array([*faster, 0, 0, 0]),
            "throttled suction": np.array([0, 0, 0, 0, -1.0]), "drifting gauge": np.array([0.5, 0, 0.75, 0, 0])}, np.array([*-meter, 0, 0, 0])


def weighed(pump, signs, ratio):
    """What the signs say of each fault: (precision with which they give its size, that size times the precision)."""
    moves, meter = directions(pump, ratio)
    noise = np.diag(np.square([UNCERTAIN["head"], UNCERTAIN["power"], UNCERTAIN["drift"], UNCERTAIN["drift"], UNCERTAIN["suction_m"]]))
    noise += UNCERTAIN["flow"] ** 2 * np.outer(meter, meter)
    noise[:2, :2] += UNCERTAIN["curve"] ** 2
    each = np.array([moves[name] for name in SIZES])
    by_noise = np.linalg.solve(noise, each.T).T
    return np.sum(by_noise * each, axis=1), by_noise @ signs


def explained(precision, pull, prior, sizes):
    """(probability of each explanation, the sound one first; mean square of each fault's size should it be the one), a row a pump.

    A fault's size s has the density (1 + s^2/w^2) exp(-s^2/(2 w^2)), with sizes^2 = 2 w^2 for its mean square: fewer than of a normal density
    are too small to matter. The density of the signs under a fault over that under none follows from the moments of s that they leave.
    """
    width = sizes / math.sqrt(2)
    exact = precision + width**-2
    mean, spread = pull / exact, exact**-0.5
    above = np.where(ONE_WAY, np.maximum(0.5 * _erfc(-mean / spread / math.sqrt(2)), 1e-300), 0.5)  # the share of possible sizes above zero
    moments = [1.0, mean + np.where(ONE_WAY, spread * np.exp(-0.5 * (mean / spread) ** 2) / math.sqrt(2 * math.pi) / above, 0.0)]
    for k in (2, 3, 4):
        moments.append(mean * moments[-1] + (k - 1) * spread**2 * moments[-2])
    square, fourth = np.maximum(moments[2], 0.0), np.maximum(moments[4], 0.0)
    factor = 0.5 * (1 + square / width**2)
    ratios = 0.5 * (pull**2 / exact - np.log(width**2 * exact)) + np.log(2 * above) + np.log(factor)
    logs = np.log(prior) + np.concatenate([np.zeros((len(ratios), 1)), ratios], axis=1)
    weights = np.exp(logs - logs.max(axis=1, keepdims=True))
    return weights / weights.sum(axis=1, keepdims=True), 0.5 * (square + fourth / width**2) / factor


def learned(precision, pull):
    """How many pumps of this fleet have which fault, and how large they are: PRIOR and SIZES, corrected by all the pumps together
    (expectation and maximization), as if GUESSED pumps had been seen before that bear them out."""
    first, start = np.array(list(PRIOR.values())), np.array(list(SIZES.values()))
    prior, sizes = first, start
    for _ in range(60):
        likely, square = explained(precision, pull, prior, sizes)
        seen = likely.sum(axis=0)
        prior = (seen + GUESSED * first) / (len(likely) + GUESSED)
        sizes = np.sqrt(((likely[:, 1:] * square).sum(axis=0) + GUESSED * first[1:] * start**2) / (seen[1:] + GUESSED * first[1:]))
    return prior, sizes


def diagnose(sums, register, hours):
    """A list of findings, the pumps to look at first at its head."""
    answered = sums["running"] - sums["missing"] - sums["refused"]
    year, first, last = (means(sums, answered, part) for part in (slice(None), FIRST, LAST))
    signs = np.array([year["head_change"], year["power_change"], *(np.nan_to_num(last[name] - first[name]) for name in ("head_change", "power_change")),
                      year["suction_change"]]).T
    seen = [row for row in range(len(register)) if answered[row].any()]
    told = np.array([weighed(register[row], signs[row], float(year["flow_ratio"][row])) for row in seen]).reshape(-1, 2, len(SIZES))
    chances = dict(zip(seen, explained(told[:, 0], told[:, 1], *learned(told[:, 0], told[:, 1]))[0].tolist()))
    findings = []
    for row, pump in enumerate(register):
        total = int(answered[row].sum())
        finding = {"tag": pump["tag"], "pump": pump["pump"], "hours": total, "refused": int(sums["refused"][row].sum()),
                   "missing": int(sums["missing"][row].sum())}
        findings.append(finding)
        if total == 0:
            finding.update(fault="no readings", confidence=1.0, cost=0.0, cost_uncertainty=0.0, rank=(0, 0.0))
            continue
        at = {name: float(values[row]) for name, values in year.items()}
        likely = dict(zip(PRIOR, chances[row]))
        fault = max(likely, key=likely.get)
        scale = YEAR / hours
        flow = at["flow_ratio"] * pump["best_flow"]
        standard = {"flow": UNCERTAIN["flow"] * flow, "head": UNCERTAIN["head"] * at["head"], "power_input": UNCERTAIN["power"] * at["shaft_kW"]}
        measured = cutwater.uncertainty("pump_efficiency", flow, at["head"], at["density"], at["shaft_kW"], monte_carlo=False,
                                        standard=standard)
        kilowatt_hours = sums["lost_kW"][row].sum() / STEP * scale
        cost = cutwater.annual_energy_cost(max(kilowatt_hours, 0.0), PRICE)
        usual = at["efficiency"] + at["efficiency_lost"]
        power_hours = at["shaft_kW"] / pump["motor_efficiency"] * total * scale
        short = int(sums["short_of_npsh"][row].sum())
        finding.update(
            from_best=at["from_best"], outside=int(sums["outside"][row].sum()), short=short, least_margin=float(sums["least_npsh_margin"][row].min()),
            lost_points=100 * at["efficiency_lost"], lost_uncertainty=100 * measured.standard, cost=cost,
            cost_uncertainty=cutwater.annual_energy_cost(power_hours * measured.standard / usual, PRICE),
            fault=fault, confidence=likely[fault], signs=signs[row].tolist(), likely=likely)
        # First what harms a pump, then what costs most, weighed by how sure it is that something is wrong. A gauge that drifts costs nothing.
        real = 0.0 if fault == "drifting gauge" else cost
        harm = -2 if short > 0.01 * total else -1 if finding["outside"] > 0.5 * total else 0
        finding["rank"] = (harm, -real * (1 - likely[SOUND]) - (1e-6 if fault != SOUND else 0) * likely[fault])
    return sorted(findings, key=lambda f: (*f["rank"], f["pump"]))


def table(findings, most=15):
    """The list as text."""
    lines = [f"{'pump':8} {'from best':>9} {'h outside':>9} {'h short of NPSH':>15} {'least margin m':>14} {'efficiency lost':>17} "
             f"{'cost a year':>17}  what and how sure"]
    for f in findings[:most]:
        if f["hours"] == 0:
            lines.append(f"{f['tag']:8} no readings")
            continue
        lines.append(f"{f['tag']:8} {f['from_best']:9.0%} {f['outside']:9} {f['short']:15} {f['least_margin']:14.1f}"
                     f" {f['lost_points']:8.1f} ± {f['lost_uncertainty']:3.1f} pt"
                     f" {f['cost']:8.0f} ± {f['cost_uncertainty']:6.0f}  {f['fault']}, {f['confidence']:.0%}")
    return "\n".join(lines)


def found(findings, faults):
    """(faults that were found for what they are, put in, pumps wrongly accused, by kind {kind: [found, put in]})."""
    kinds = {}
    accused = 0
    for f in findings:
        true = faults.get(str(f["pump"]), [None])[0]
        if true:
            kinds.setdefault(true, [0, 0])
            kinds[true][1] += 1
            kinds[true][0] += f["fault"] == true
        elif f["fault"] != SOUND:
            accused += 1
    return sum(k[0] for k in kinds.values()), sum(k[1] for k in kinds.values()), accused, kinds
