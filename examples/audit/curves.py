"""The pumps' curves: on water, each ordinate between its own first and last point, and on the liquid that is pumped."""
import numpy as np

import cutwater as cw

from .asking import missing

UNITS = {"flows": "m3/h", "heads": "m", "efficiencies": "-", "npsh3s": "m"}
SERIES = ("used_flows", "used_heads", "used_efficiencies", "used_npsh3s")


def given(pump, name):
    values = pump.get(name)
    return values if isinstance(values, list) else [] if missing(values) else [values]


def ends(values):
    """From the first to the last that is given."""
    places = [place for place, value in enumerate(values) if not missing(value)]
    return (places[0], places[-1] + 1) if places else (0, 0)


def read(pump, name, place):
    values = given(pump, name)
    if place >= len(values) or missing(values[place]):
        raise cw.Refused(f"{name}: point {place + 1} is not given.")
    return cw.quantity(values[place], UNITS[name])


def on_water(pump, ordinates):
    """(flows, values) of one of the maker's curves."""
    first, last = ends(given(pump, ordinates))
    if first == last:
        raise cw.Refused(f"{ordinates} is not given.")
    if first == 0 and ends(given(pump, "flows"))[1] < last:
        raise cw.Refused(f"{ordinates}: there are more points than flows.")
    return tuple(np.array([read(pump, name, place) for place in range(first, last)]) for name in ("flows", ordinates))


def on_the_liquid(c):
    """c.used: for each pump and ordinate the flows and values of its own points, and all_flows. A point that is refused refuses its series."""
    c.used = [{} for _ in c.pumps]
    for i, pump in enumerate(c.pumps):
        if "correction" in c.why and i in c.why["correction"]:
            c._refuse("curve_points", i, ("curve_points", c.why["correction"][i][1]))
            continue
        _one(c, i, pump)
    c.each(
        "curve_points", lambda i: 0.0, where=[i for i in range(len(c.pumps)) if i not in c.why.get("curve_points", ())]
    )
    c.each("shape", lambda i: cw.curve_is_stable(*c.used[i]["heads"])[0], needs=("used_heads",))
    c.each(
        "used_powers",
        lambda i: _powers(c, i),
        needs=("used_flows", "used_heads", "used_efficiencies", "density_used", "shutoff_used"),
    )


def _needed(c, i, *keys):
    """An earlier result that the point stands upon."""
    for key in keys:
        if i in c.why.get(key, ()):
            raise cw.Refused(c.why[key][i][1])
    return [c.found[key][i] for key in keys]


def _slurry(c, i, pump):
    factors = _needed(c, i, "slurry_head", "slurry_efficiency")
    return cw.curve_slurry(
        *(
            np.array(
                [read(pump, name, place) for place in range(max(len(given(pump, name)), len(given(pump, "flows"))))]
            )
            for name in ("flows", "heads", "efficiencies")
        ),
        *factors,
    )


def _viscous(c, i, pump, place):
    best = _needed(c, i, "best_head", "best_efficiency", "viscosity_used", "density_used")
    return cw.viscous_performance(
        read(pump, "flows", place),
        read(pump, "heads", place),
        read(pump, "efficiencies", place),
        pump.get("best_flow"),
        best[0],
        best[1],
        pump.get("speed"),
        best[2],
        best[3],
    )


def _npsh3(c, i, pump, place):
    best = _needed(c, i, "best_npsh3", "viscous_head")
    return cw.npsh3_with_viscosity(
        read(pump, "npsh3s", place), best[0], best[1], pump.get("best_flow"), pump.get("speed"), pump.get("inlet")
    )


def _one(c, i, pump):
    viscous, slurry = (pump.get("correct_for") == word for word in ("viscosity", "solids"))
    has = {name: [not missing(value) for value in given(pump, name)] + [False] * 10 for name in UNITS}
    points = {key: {} for key in SERIES}

    def value(key, place):
        name = key.removeprefix("used_")
        if not has["flows"][place]:
            raise cw.Refused("its flow is not given.")
        runs = viscous and read(pump, "flows", place) != 0
        if key == "used_flows":
            if runs and has["heads"][place] and has["efficiencies"][place]:
                return _viscous(c, i, pump, place)[0]
            return read(pump, "flows", place) * _needed(c, i, "viscous_flow")[0] if runs else read(pump, "flows", place)
        if key == "used_npsh3s":
            return _npsh3(c, i, pump, place) if viscous else read(pump, name, place)
        pick = SERIES.index(key)
        return (
            _slurry(c, i, pump)[pick][place]
            if slurry
            else _viscous(c, i, pump, place)[pick]
            if runs
            else read(pump, name, place)
        )

    for key in SERIES:
        for place in range(10):
            if has[key.removeprefix("used_")][place]:
                try:
                    points[key][place] = value(key, place)
                except cw.Refused as refused:
                    told = (key, f"point {place + 1} of the curve: {refused.message}")
                    c.why.setdefault(key, {}).setdefault(i, told)
                    c.why.setdefault("curve_points", {}).setdefault(i, told)
    used = c.used[i]
    for key in SERIES:
        if key == "used_flows":
            if i not in c.why.get(key, ()):
                used["all_flows"] = np.array(list(points[key].values()))
            continue
        name = key.removeprefix("used_")
        first, last = ends(given(pump, name))
        if i in c.why.get(key, ()):
            continue
        try:
            if first == last or any(
                place not in points[one] for place in range(first, last) for one in ("used_flows", key)
            ):
                raise cw.Refused(f"{name}: a point between others is not given.")
            used[name] = tuple(
                np.array([points[one][place] for place in range(first, last)]) for one in ("used_flows", key)
            )
            cw.curve_value(
                *used[name], used[name][0][0]
            )  # a curve that cannot be read is refused here, with its reason
        except cw.Refused as refused:
            c._refuse(key, i, (key, refused.message))
    try:
        used["water"] = on_water(pump, "heads")
    except cw.Refused:
        pass  # told by the head at best efficiency


def _powers(c, i):
    """At each point with a head: at no flow what the maker says, else from the efficiency, where there is one."""
    used = c.used[i]
    efficiency = dict(zip(*used["efficiencies"]))
    flows, powers = [], []
    for flow, head in zip(*used["heads"]):
        if flow == 0 or flow in efficiency:
            flows.append(flow)
            powers.append(
                c.found["shutoff_used"][i]
                if flow == 0
                else cw.pump_power_input(flow, head, c.found["density_used"][i], efficiency[flow])
            )
    used["powers"] = np.array(flows), np.array(powers)
    return 1.0


def system_points(c):
    """c.used's system: its head at each flow of the pump's curve."""

    def one(i):
        pump, flows = c.pumps[i], c.used[i]["all_flows"]
        if c.found["line_law"][i] == "square":
            c.used[i]["system"] = cw.system_head(pump.get("static_head"), c.found["resistance"][i], flows)
        else:
            rest = cw.quantity(pump.get("static_head"), "m")
            for line in ("suction", "discharge"):
                rest = rest + cw.pipe_friction_head(
                    flows,
                    *(pump.get(f"{line}_{part}") for part in ("bore", "length")),
                    pump.get("roughness"),
                    c.found["viscosity_used"][i],
                )
            c.used[i]["system"] = np.array(
                [cw.system_head(head, c.found["square_part"][i], flow) for head, flow in zip(rest, flows)]
            )
        return 1.0

    c.each("used_system", one, needs=("used_flows", "line_law", "resistance", "square_part"))
