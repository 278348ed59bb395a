"""What is found for every pump, in the order and with the limits of the workbook's sheet Checks."""
import re

import numpy as np

import cutwater as cw
from writer.inputs import CHOICES, IDLE, INPUT, LIMITS
from writer.results import RESULT, WEIGHT  # the workbook's own list of checks: labels, senses, limits, gravest first

from . import curves
from .asking import Columns, missing

# Functions that a check's value rests upon, where it is not the one that was asked last.
RESTS_UPON = {"greatest_power": "pump_power_input", "maker_flow": "operating_region", "pump_head": "duty_flow"}


def _motor_needed(c, i):
    """The least listed rating; or the motor fitted, where it is smaller and leaves the margin: 20 hp are 14.9 kW, and no listed rating."""
    listed, fitted = c.found["motor_listed"][i], c.found["motor_fitted"][i]
    leaves = fitted > 0 and cw.motor_power_margin(fitted, c.pumps[i].get("motor_rule")) * c.found["power_input"][i] <= fitted
    return min(listed, fitted) if leaves else listed


def idle(pump, condition):
    """A condition of the workbook's: {key}="word" or {key}<>"word", or several of them in AND(…;…)."""

    def holds(part):
        key, sign, word = re.fullmatch(r'\{(\w+)\}(=|<>)"(.*)"', part).groups()
        return (str(pump.get(key) or "") == word) == (sign == "=")

    return all(holds(part) for part in condition.removeprefix("AND(").removesuffix(")").split(";"))


def liquid(c, altitude):
    tags = [str(tag).strip().casefold() for tag in c.given("tag")]
    c.each("tag_once", lambda i: tags.count(tags[i]))
    c.each(
        "unused",
        lambda i: sum(
            not missing(c.pumps[i].get(key)) and idle(c.pumps[i], condition) for key, condition in IDLE.items()
        ),
    )
    c.read("temperature_read", "temperature", "degC")
    ambient = cw.barometric_pressure(altitude)
    c.ask("surface_absolute", cw.absolute_from_gauge, "surface_pressure", ambient)
    c.word("density_word", "density_by", CHOICES["density_by"], ("density_used", "heat_used"))
    given, water, slurry = (c.says("density_by", word) for word in ("value", "water", "slurry"))
    c.read("density_used", "density", "kg/m3", where=given)
    c.ask("density_used", cw.water_density, "temperature", "surface_absolute", where=water)
    c.ask("density_used", cw.slurry_density, "density", "solids_density", "solids_fraction", where=slurry)
    c.read("heat_used", "specific_heat", "kJ/(kg K)", where=given | slurry)
    c.ask("heat_used", cw.water_specific_heat, "temperature", "surface_absolute", where=water)
    c.word("vapour_word", "vapour_by", CHOICES["vapour_by"], ("vapour_used",))
    given, water, points = (c.says("vapour_by", word) for word in ("value", "water", "two points"))
    c.read("vapour_used", "vapour_pressure", "bara", where=given)
    c.ask("vapour_used", cw.water_vapour_pressure, "temperature", where=water)
    c.ask(
        "vapour_used",
        cw.vapour_pressure_two_point,
        "vapour_t1",
        "vapour_p1",
        "vapour_t2",
        "vapour_p2",
        "temperature",
        where=points,
    )
    c.word("viscosity_word", "viscosity_by", CHOICES["viscosity_by"], ("viscosity_used",))
    given, water, points = (c.says("viscosity_by", word) for word in ("value", "water", "two points"))
    c.read("viscosity_used", "viscosity", "mm2/s", where=given)
    c.ask("viscosity_used", cw.water_kinematic_viscosity, "temperature", "surface_absolute", where=water)
    c.ask(
        "viscosity_used",
        cw.viscosity_at_temperature,
        "viscosity_t1",
        "viscosity_1",
        "viscosity_t2",
        "viscosity_2",
        "temperature",
        where=points,
    )


# What is found for one correction only; another word than those known leaves all of it open.
BY_CORRECTION = (
    "viscous_b",
    "viscous_flow",
    "viscous_head",
    "solids_relative",
    "solids_volume",
    "slurry_head",
    "slurry_efficiency",
    "suction_least",
    "deposition_suction",
    "discharge_least",
    "deposition_discharge",
)


def best_point(c):
    c.word("correction", "correct_for", CHOICES["correct_for"], ("best_used", *curves.SERIES, *BY_CORRECTION))

    def at_best(read, ordinates):
        return lambda i: read(*curves.on_water(c.pumps[i], ordinates), c.pumps[i].get("best_flow"))

    c.each("best_head", at_best(cw.curve_head, "heads"))
    c.each("best_efficiency", at_best(cw.curve_efficiency, "efficiencies"))
    c.each("best_npsh3", at_best(cw.curve_npsh3, "npsh3s"))
    c.ask("specific_speed", cw.specific_speed, "speed", "best_flow", "best_head", "eyes", "stages")
    viscous = c.says("correct_for", "viscosity")
    best = ("best_flow", "best_head", "best_efficiency")
    c.ask("viscous_b", cw.viscosity_parameter, "viscosity_used", "best_flow", "best_head", "speed", where=viscous)
    c.ask("viscous_flow", cw.viscous_flow_ratio, "viscous_b", where=viscous)
    c.ask("viscous_head", cw.viscous_head_ratio, "viscous_b", 1.0, where=viscous)
    c.read("best_used", "best_flow", "m3/h", where=c.says("correct_for", "nothing") | c.says("correct_for", "solids"))
    c.ask("best_used", cw.viscous_performance, *best, *best, "speed", "viscosity_used", "density_used", where=viscous)


def solids(c):
    """What the solids take from head and efficiency, and the velocities that keep them on the move."""
    where = c.says("correct_for", "solids")
    c.ask("solids_relative", cw.relative_density, "solids_density", "density", where=where)
    c.ask("solids_volume", cw.slurry_volume_fraction, "density", "solids_density", "solids_fraction", where=where)
    slurry = ("solids_fraction", "solids_relative", "solids_size", "impeller_diameter", "slurry_by")
    c.ask("slurry_head", cw.slurry_head_ratio, *slurry, where=where)
    c.ask("slurry_efficiency", cw.slurry_efficiency_ratio, *slurry, where=where)
    for line in ("suction", "discharge"):
        c.ask(f"{line}_least", cw.pipe_velocity, "least_flow", f"{line}_bore", where=where)
        c.ask(
            (f"deposition_{line}", "durand_factor"),
            cw.deposition_velocity,
            f"{line}_bore",
            "solids_relative",
            "solids_volume",
            "solids_size",
            where=where,
        )


def system_and_duty(c):
    def plus(key, head, more):
        """The sum of two heads at the flow wanted, as the sheet takes it, so that the last bit is the same."""
        c.ask("added", cw.system_resistance, "flow", more)
        c.ask(key, cw.system_head, head, "added", "flow")

    for line in ("suction", "discharge"):
        c.ask(
            f"{line}_pipe",
            cw.pipe_friction_head,
            "flow",
            f"{line}_bore",
            f"{line}_length",
            "roughness",
            "viscosity_used",
        )
        c.ask(f"{line}_fittings", cw.fitting_head, "flow", f"{line}_bore", f"{line}_k")
    plus("suction_loss", "suction_pipe", "suction_fittings")
    plus("with_pipe", "suction_loss", "discharge_pipe")
    plus("line_loss", "with_pipe", "discharge_fittings")
    plus("all_losses", "line_loss", "equipment_loss")
    c.ask("resistance", cw.system_resistance, "flow", "all_losses")
    c.ask("suction_resistance", cw.system_resistance, "flow", "suction_loss")
    c.ask("system_head", cw.system_head, "static_head", "resistance", "flow")

    for line in ("suction", "discharge"):
        c.ask(f"{line}_reynolds", cw.reynolds_number, "flow", f"{line}_bore", "viscosity_used")
    c.each(
        "line_law",
        lambda i: "square"
        if min(c.found["suction_reynolds"][i], c.found["discharge_reynolds"][i]) >= 4000
        else "points",
        needs=("suction_reynolds", "discharge_reynolds"),
    )
    c.read("equipment_read", "equipment_loss", "m")
    c.each(
        "square_part",
        lambda i: cw.system_resistance(
            c.pumps[i].get("flow"),
            c.found["suction_fittings"][i] + c.found["discharge_fittings"][i] + c.found["equipment_read"][i],
        ),
        needs=("suction_fittings", "discharge_fittings", "equipment_read"),
    )
    curves.system_points(c)

    def meet(square, place):
        def duty(i):
            pump = c.used[i]["heads"]
            if c.found["line_law"][i] == "square":
                return square(*pump, c.pumps[i].get("static_head"), c.found["resistance"][i])
            return cw.duty_on_system_points(*pump, c.used[i]["all_flows"], c.used[i]["system"], 1)[place]

        return duty

    c.each("pump_head", lambda i: cw.curve_head(*c.used[i]["heads"], c.pumps[i].get("flow")), needs=("used_heads",))
    for key, square, place in (("duty_flow", cw.duty_flow, 0), ("duty_head", cw.duty_head, 1)):
        c.each(key, meet(square, place), needs=("used_heads", "used_flows", "line_law", "resistance", "used_system"))
    c.ask("discharge_velocity", cw.pipe_velocity, "duty_flow", "discharge_bore")


def suction(c):
    c.ask("suction_velocity", cw.pipe_velocity, "duty_flow", "suction_bore")
    square = np.array([law == "square" for law in c.column("line_law")])
    c.ask("suction_duty_loss", cw.system_head, 0.0, "suction_resistance", "duty_flow", where=square)
    c.ask(
        "pipe_at_duty",
        cw.pipe_friction_head,
        "duty_flow",
        "suction_bore",
        "suction_length",
        "roughness",
        "viscosity_used",
        where=~square,
    )
    c.ask("fittings_at_duty", cw.fitting_head, "duty_flow", "suction_bore", "suction_k", where=~square)
    c.each(
        "suction_duty_loss",
        lambda i: c.found["pipe_at_duty"][i] + c.found["fittings_at_duty"][i],
        needs=("pipe_at_duty", "fittings_at_duty"),
        where=np.flatnonzero(~square),
    )
    c.ask(
        "npsh_available",
        cw.npsh_available,
        "surface_absolute",
        "vapour_used",
        "density_used",
        "liquid_level",
        "suction_duty_loss",
    )
    c.each(
        "npsh3",
        lambda i: cw.curve_npsh3(*c.used[i]["npsh3s"], c.found["duty_flow"][i]),
        needs=("used_npsh3s", "duty_flow"),
    )
    c.ask("npsh_margin", cw.npsh_margin, "npsh_available", "npsh3")
    c.ask("npsh_ratio", cw.npsh_margin_ratio, "npsh_available", "npsh3")
    bell = np.array([value is not None for value in c.given("bell_diameter")])
    c.ask("submergence_needed", cw.minimum_submergence, "duty_flow", "bell_diameter", where=bell)
    c.ask("suction_speed", cw.suction_specific_speed, "speed", "best_flow", "best_npsh3", "eyes")


def power_region_heat(c):
    # The region goes by the impeller's whole flow, both eyes together.
    c.ask("whole_specific_speed", cw.specific_speed, "speed", "best_flow", "best_head", 1, "stages")
    c.ask(
        ("region", "least_preferred", "greatest_preferred"),
        cw.operating_region,
        "duty_flow",
        "best_used",
        "whole_specific_speed",
        "least_allowed",
        "greatest_allowed",
    )
    c.each(
        "efficiency",
        lambda i: cw.curve_efficiency(*c.used[i]["efficiencies"], c.found["duty_flow"][i]),
        needs=("used_efficiencies", "duty_flow"),
    )
    c.ask("power_input", cw.pump_power_input, "duty_flow", "duty_head", "density_used", "efficiency")
    c.read("motor_fitted", "motor_rating", "kW")
    c.ask("motor_listed", cw.motor_rating_needed, "power_input", "motor_rule", "motor_series")
    c.each("motor_needed", lambda i: _motor_needed(c, i), needs=("motor_listed", "power_input"))
    c.each("greatest_power", lambda i: c.used[i]["powers"][1].max(), needs=("used_powers",))
    c.ask("rise", cw.temperature_rise, "duty_head", "efficiency", "heat_used")
    c.read("least_read", "least_flow", "m3/h")
    c.each("shutoff_head", lambda i: cw.curve_head(*c.used[i]["heads"], 0), needs=("used_heads",))
    c.each(
        "greatest_head", lambda i: max(c.found["shutoff_head"][i], c.used[i]["heads"][1].max()), needs=("shutoff_head",)
    )
    c.ask(
        "thermal_flow",
        cw.thermal_minimum_flow,
        "shutoff_used",
        "shutoff_head",
        "density_used",
        "heat_used",
        "rise_allowed",
    )
    c.read("maker_flow", "least_allowed", "m3/h")
    c.read("greatest_read", "greatest_allowed", "m3/h")
    c.ask(
        "heating",
        cw.closed_valve_heating_rate,
        "shutoff_used",
        "casing_volume",
        "density_used",
        "heat_used",
        "metal_mass",
    )
    c.ask("shutoff_rise", cw.pressure_from_head, "greatest_head", "density_used")


def shutoff(c):
    """The power at closed valve on the liquid: found on water it goes with the density."""
    c.word("shutoff_word", "shutoff_on", CHOICES["shutoff_on"], ("shutoff_used",))
    on_water, on_liquid = (c.says("shutoff_on", word) for word in CHOICES["shutoff_on"])
    c.read("shutoff_used", "shutoff_power", "kW", where=on_liquid)
    c.read("shutoff_on_water", "shutoff_power", "kW", where=on_water)
    c.ask("over_water", cw.relative_density, "density_used", 998.2, where=on_water)
    c.each(
        "shutoff_used",
        lambda i: c.found["shutoff_on_water"][i] * c.found["over_water"][i],
        needs=("shutoff_on_water", "over_water"),
        where=np.flatnonzero(on_water),
    )


def run(plant):
    c = Columns(plant["pumps"])
    c.read("wanted", "flow", "m3/h")
    liquid(c, plant["altitude"])
    best_point(c)
    solids(c)
    shutoff(c)
    curves.on_the_liquid(c)
    system_and_duty(c)
    suction(c)
    power_region_heat(c)
    judge(c)
    return c


def limit_of(c, key, i):
    """The number that a check is held against: one that stands there, an input of the data, or an earlier result. Refused where it is none."""
    name = RESULT[key].limit[1].strip("{}")
    if name in INPUT:
        value = c.pumps[i].get(name)
        if missing(value):
            raise cw.Refused(f"{INPUT[name].text}: it is not given.")
        try:
            number = cw.quantity(value, INPUT[name].unit.replace("–", "-"))
        except cw.Refused as refused:
            raise cw.Refused(f"{INPUT[name].text}: {refused.message}") from None
        low, high, _ = LIMITS.get(name, (-np.inf, np.inf, ""))
        if not low <= number <= high:
            raise cw.Refused(
                f"{INPUT[name].text}: {number:g} is beyond what is taken for this limit, {low} to {high} {INPUT[name].unit}.".replace(
                    " –.", "."
                )
            )
        return number
    if i in c.why.get(name, ()):
        raise cw.Refused(c.why[name][i][1])
    return float(c.found[name][i] if name in c.found else name)


def verdict(c, key, i):
    if i in c.why.get(key, ()):
        return "refused"
    one, value = RESULT[key], c.column(key)[i]
    if one.failing == "REGION":
        return {"preferred": "meets", "allowable": "WATCH"}.get(value, "FAILS")
    if one.failing == "SHAPE":
        return {"stable": "meets", "flat": "WATCH", "drooping": "WATCH"}.get(value, "FAILS")
    if missing(value):
        return "–"
    try:
        limit = limit_of(c, key, i)
    except cw.Refused as refused:
        c.no_limit.setdefault(key, {})[i] = (key, refused.message)
        return "refused"
    return "meets" if (value >= limit if one.limit[0] == "≥" else value <= limit) else one.failing


def judge(c):
    """Every check's word, then the worst one of each pump: refused before FAILS before WATCH, of equals the one that weighs most."""
    c.no_limit = {}  # the checks whose value is known and whose limit is not
    c.verdicts = [{key: verdict(c, key, i) for key in WEIGHT} for i in range(len(c.pumps))]
    c.worst = []
    for i, words in enumerate(c.verdicts):
        # Of what is refused the topmost result is the cause, whether it is a check or not.
        causes = [key for key in RESULT if i in c.why.get(key, ())]
        word = (
            "refused"
            if causes
            else next((one for one in ("refused", "FAILS", "WATCH") if one in words.values()), "meets")
        )
        c.worst.append(
            (
                word,
                next((key for key in (*causes, *WEIGHT) if key in causes or words[key] == word), None)
                if word != "meets"
                else None,
            )
        )
    order = ("refused", "FAILS", "WATCH", "meets")
    c.order = sorted(range(len(c.pumps)), key=lambda i: order.index(c.worst[i][0]))
