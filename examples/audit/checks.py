"""What is found for every pump, in the order and with the limits of the workbook's sheet Checks."""
import numpy as np

import cutwater as cw
from writer.inputs import CHOICES, INPUT
from writer.results import RESULT, WEIGHT  # the workbook's own list of checks: labels, senses, limits, gravest first

from .asking import Columns, missing

# Functions that a check's value rests upon, where it is not the one that was asked last.
RESTS_UPON = {"greatest_power": "pump_power_input", "maker_flow": "operating_region", "pump_head": "duty_flow"}


def liquid(c, altitude):
    c.each("tag_once", lambda i: c.given("tag").count(c.pumps[i].get("tag")))
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
    c.ask("vapour_used", cw.vapour_pressure_two_point, "vapour_t1", "vapour_p1", "vapour_t2", "vapour_p2", "temperature", where=points)
    c.word("viscosity_word", "viscosity_by", CHOICES["viscosity_by"], ("viscosity_used",))
    given, water, points = (c.says("viscosity_by", word) for word in ("value", "water", "two points"))
    c.read("viscosity_used", "viscosity", "mm2/s", where=given)
    c.ask("viscosity_used", cw.water_kinematic_viscosity, "temperature", "surface_absolute", where=water)
    c.ask("viscosity_used", cw.viscosity_at_temperature, "viscosity_t1", "viscosity_1", "viscosity_t2", "viscosity_2", "temperature", where=points)


# What is found for one correction only; another word than those known leaves all of it open.
BY_CORRECTION = ("viscous_b", "viscous_head", "solids_relative", "solids_volume", "slurry_head", "slurry_efficiency", "suction_least", "deposition_suction",
                 "discharge_least", "deposition_discharge")


def best_point(c):
    c.word("correction", "correct_for", CHOICES["correct_for"], ("best_used", "used_heads", *BY_CORRECTION))

    def at_best(read, ordinates, unit):
        return lambda i: read(numbers(c.pumps[i], "flows", "m3/h"), numbers(c.pumps[i], ordinates, unit), c.pumps[i].get("best_flow"))

    c.each("best_head", at_best(cw.curve_head, "heads", "m"))
    c.each("best_efficiency", at_best(cw.curve_efficiency, "efficiencies", "-"))
    c.each("best_npsh3", at_best(cw.curve_npsh3, "npsh3s", "m"))
    c.ask("specific_speed", cw.specific_speed, "speed", "best_flow", "best_head", "eyes", "stages")
    viscous = c.says("correct_for", "viscosity")
    best = ("best_flow", "best_head", "best_efficiency")
    c.ask("viscous_b", cw.viscosity_parameter, "viscosity_used", "best_flow", "best_head", "speed", where=viscous)
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
        c.ask((f"deposition_{line}", "durand_factor"), cw.deposition_velocity, f"{line}_bore", "solids_relative", "solids_volume", "solids_size", where=where)


def numbers(pump, name, unit):
    values = pump.get(name)
    if values is None:
        raise cw.Refused(f"{name} is not given.")
    values = values if isinstance(values, list) else [values]
    if None in values:
        raise cw.Refused(f"{name}: point {values.index(None) + 1} is not given.")
    return cw.quantity(values, unit)


def curves_on_the_liquid(c):
    """c.used: each pump's series on the liquid pumped, as far as they can be answered."""
    c.used = [{} for _ in c.pumps]
    viscous, slurry = c.says("correct_for", "viscosity"), c.says("correct_for", "solids")
    best = ("best_head", "best_efficiency", "viscous_head")

    def keep(key, function, needs=(), needs_if_viscous=(), needs_if_slurry=()):
        def one(i):
            function(c.pumps[i], c.used[i], i)
            return 1.0

        c.each(key, one, needs, np.flatnonzero(~viscous & ~slurry))
        c.each(key, one, tuple(needs) + tuple(needs_if_slurry), np.flatnonzero(slurry))
        c.each(key, one, tuple(needs) + tuple(needs_if_viscous), np.flatnonzero(viscous))

    def heads(pump, used, i):
        flows, heads = numbers(pump, "flows", "m3/h"), numbers(pump, "heads", "m")
        cw.curve_head(flows, heads, flows[0])  # a curve that cannot be read is refused here, with its reason
        used["water"] = flows, heads
        if slurry[i]:
            used["flows"], used["heads"], used["efficiencies"] = cw.curve_slurry(
                flows, heads, numbers(pump, "efficiencies", "-"), c.found["slurry_head"][i], c.found["slurry_efficiency"][i])
            return
        if not viscous[i]:
            used["flows"], used["heads"] = flows, heads
            return
        efficiencies = numbers(pump, "efficiencies", "-")
        cw.curve_efficiency(flows, efficiencies, flows[0])
        corrected = [flows.copy(), heads.copy(), efficiencies.copy()]
        runs = flows != 0  # at no flow the method leaves the head as it is
        answer = cw.viscous_performance(flows[runs], heads[runs], efficiencies[runs], pump.get("best_flow"), c.found["best_head"][i],
                                        c.found["best_efficiency"][i], pump.get("speed"), c.found["viscosity_used"][i], c.found["density_used"][i])
        for series, values in zip(corrected, answer):
            series[runs] = values
        used["flows"], used["heads"], used["efficiencies"] = corrected

    def efficiencies(pump, used, i):
        if not viscous[i] and not slurry[i]:
            used["efficiencies"] = numbers(pump, "efficiencies", "-")
        cw.curve_efficiency(used["flows"], used["efficiencies"], used["flows"][0])

    def npsh3s(pump, used, i):
        given = numbers(pump, "npsh3s", "m")
        cw.curve_npsh3(used["flows"], given, used["flows"][0])
        if viscous[i]:
            given = cw.npsh3_with_viscosity(given, c.found["best_npsh3"][i], c.found["viscous_head"][i], pump.get("best_flow"), pump.get("speed"),
                                            pump.get("inlet"))
        used["npsh3s"] = given

    def powers(pump, used, i):
        at_no_flow = numbers(pump, "shutoff_power", "kW")
        runs = used["efficiencies"] > 0
        values = np.repeat(at_no_flow, len(runs))
        values[runs] = cw.pump_power_input(used["flows"][runs], used["heads"][runs], c.found["density_used"][i], used["efficiencies"][runs])
        used["powers"] = values

    keep("used_heads", heads, needs=("correction",), needs_if_viscous=best + ("viscosity_used", "density_used"), needs_if_slurry=("slurry_head", "slurry_efficiency"))
    keep("used_efficiencies", efficiencies, needs=("used_heads",))
    keep("used_npsh3s", npsh3s, needs=("used_heads",), needs_if_viscous=("best_npsh3", "viscous_head"))
    keep("used_powers", powers, needs=("used_heads", "used_efficiencies", "density_used"))


def system_and_duty(c):
    def plus(key, head, more):
        """The sum of two heads at the flow wanted, as the sheet takes it, so that the last bit is the same."""
        c.ask("added", cw.system_resistance, "flow", more)
        c.ask(key, cw.system_head, head, "added", "flow")

    for line in ("suction", "discharge"):
        c.ask(f"{line}_pipe", cw.pipe_friction_head, "flow", f"{line}_bore", f"{line}_length", "roughness", "viscosity_used")
        c.ask(f"{line}_fittings", cw.fitting_head, "flow", f"{line}_bore", f"{line}_k")
    plus("suction_loss", "suction_pipe", "suction_fittings")
    plus("with_pipe", "suction_loss", "discharge_pipe")
    plus("line_loss", "with_pipe", "discharge_fittings")
    plus("all_losses", "line_loss", "equipment_loss")
    c.ask("resistance", cw.system_resistance, "flow", "all_losses")
    c.ask("suction_resistance", cw.system_resistance, "flow", "suction_loss")
    c.ask("system_head", cw.system_head, "static_head", "resistance", "flow")

    def meet(find):
        return lambda i: find(c.used[i]["flows"], c.used[i]["heads"], c.pumps[i].get("static_head"), c.found["resistance"][i])

    c.each("pump_head", lambda i: cw.curve_head(c.used[i]["flows"], c.used[i]["heads"], c.pumps[i].get("flow")), needs=("used_heads",))
    c.each("duty_flow", meet(cw.duty_flow), needs=("used_heads", "resistance"))
    c.each("duty_head", meet(cw.duty_head), needs=("used_heads", "resistance"))
    c.ask("discharge_velocity", cw.pipe_velocity, "duty_flow", "discharge_bore")


def suction(c):
    c.ask("suction_velocity", cw.pipe_velocity, "duty_flow", "suction_bore")
    c.ask("suction_duty_loss", cw.system_head, 0.0, "suction_resistance", "duty_flow")
    c.ask("npsh_available", cw.npsh_available, "surface_absolute", "vapour_used", "density_used", "liquid_level", "suction_duty_loss")
    c.each("npsh3", lambda i: cw.curve_npsh3(c.used[i]["flows"], c.used[i]["npsh3s"], c.found["duty_flow"][i]), needs=("used_npsh3s", "duty_flow"))
    c.ask("npsh_margin", cw.npsh_margin, "npsh_available", "npsh3")
    c.ask("npsh_ratio", cw.npsh_margin_ratio, "npsh_available", "npsh3")
    bell = np.array([value is not None for value in c.given("bell_diameter")])
    c.ask("submergence_needed", cw.minimum_submergence, "duty_flow", "bell_diameter", where=bell)
    c.ask("suction_speed", cw.suction_specific_speed, "speed", "best_flow", "best_npsh3", "eyes")


def power_region_heat(c):
    # The region goes by the impeller's whole flow, both eyes together.
    c.ask("whole_specific_speed", cw.specific_speed, "speed", "best_flow", "best_head", 1, "stages")
    c.ask(("region", "least_preferred", "greatest_preferred"), cw.operating_region, "duty_flow", "best_used", "whole_specific_speed", "least_allowed", "greatest_allowed")
    c.each("efficiency", lambda i: cw.curve_efficiency(c.used[i]["flows"], c.used[i]["efficiencies"], c.found["duty_flow"][i]), needs=("used_efficiencies", "duty_flow"))
    c.ask("power_input", cw.pump_power_input, "duty_flow", "duty_head", "density_used", "efficiency")
    c.read("motor_fitted", "motor_rating", "kW")
    c.ask("motor_needed", cw.motor_rating_needed, "power_input", "motor_rule", "motor_series")
    c.each("greatest_power", lambda i: c.used[i]["powers"].max(), needs=("used_powers",))
    c.ask("rise", cw.temperature_rise, "duty_head", "efficiency", "heat_used")
    c.read("least_read", "least_flow", "m3/h")
    c.each("shutoff_head", lambda i: cw.curve_head(c.used[i]["flows"], c.used[i]["heads"], 0), needs=("used_heads",))
    c.ask("thermal_flow", cw.thermal_minimum_flow, "shutoff_power", "shutoff_head", "density_used", "heat_used", "rise_allowed")
    c.read("maker_flow", "least_allowed", "m3/h")
    c.read("greatest_read", "greatest_allowed", "m3/h")
    c.ask("heating", cw.closed_valve_heating_rate, "shutoff_power", "casing_volume", "density_used", "heat_used", "metal_mass")
    c.ask("shutoff_rise", cw.pressure_from_head, "shutoff_head", "density_used")


def run(plant):
    c = Columns(plant["pumps"])
    c.read("wanted", "flow", "m3/h")
    liquid(c, plant["altitude"])
    best_point(c)
    solids(c)
    curves_on_the_liquid(c)
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
            return cw.quantity(value, INPUT[name].unit.replace("–", "-"))
        except cw.Refused as refused:
            raise cw.Refused(f"{INPUT[name].text}: {refused.message}") from None
    if i in c.why.get(name, ()):
        raise cw.Refused(c.why[name][i][1])
    return float(c.found[name][i] if name in c.found else name)


def verdict(c, key, i):
    if i in c.why.get(key, ()):
        return "refused"
    one, value = RESULT[key], c.column(key)[i]
    if one.failing == "REGION":
        return {"preferred": "meets", "allowable": "WATCH"}.get(value, "FAILS")
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
        word = next((one for one in ("refused", "FAILS", "WATCH") if one in words.values()), "meets")
        # Of what is refused the topmost result is the cause.
        order = [key for key in RESULT if i in c.why.get(key, ())] if word == "refused" else []
        c.worst.append((word, next((key for key in (*order, *WEIGHT) if key in order or words[key] == word), None) if word != "meets" else None))
    order = ("refused", "FAILS", "WATCH", "meets")
    c.order = sorted(range(len(c.pumps)), key=lambda i: order.index(c.worst[i][0]))
