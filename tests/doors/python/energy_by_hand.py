"""One pump's year, by throttling, speed control and on-off, worked out here without cutwater and then held against it.

The system is four fifths static head. Curves are read with SciPy's PchipInterpolator, meetings found by bisection, the
converter's losses taken from python3-fluids; money is added up year by year. Run it to see the table; it fails when a
bound does not hold.
"""
import fluids.pump
from scipy.interpolate import PchipInterpolator

import cutwater

# The case. Flows m3/h, heads m; a motor of 15 kW with four poles.
FLOWS = [0.0, 20.0, 40.0, 60.0, 80.0, 100.0, 120.0]
HEADS = [52.0, 51.5, 50.0, 47.5, 44.0, 39.5, 34.0]
EFFICIENCIES = [0.0, 0.38, 0.60, 0.72, 0.77, 0.76, 0.70]
SPEED, DENSITY, GRAVITY = 1465.0, 998.2, 9.80665
STATIC, RESISTANCE = 34.6, 0.00122
PROFILE = [(80.0, 1800.0), (65.0, 2600.0), (50.0, 2400.0), (35.0, 1100.0), (0.0, 860.0)]
RATING, MOTOR, CONSTANT, DRIVE = 15.0, 0.921, 0.36, 0.97
PRICE, CARBON = 0.21, 0.23
INTEREST, YEARS, INFLATION, ENERGY_RISE = 0.07, 15, 0.025, 0.02

head_of = PchipInterpolator(FLOWS, HEADS, extrapolate=False)
efficiency_of = PchipInterpolator(FLOWS, EFFICIENCIES, extrapolate=False)


def bisect(function, low, high):
    assert function(low) > 0 > function(high), (low, function(low), high, function(high))
    while True:
        middle = (low + high) / 2
        if middle in (low, high):
            return middle
        low, high = (middle, high) if function(middle) > 0 else (low, middle)


def hydraulic(flow, head):
    return DENSITY * GRAVITY * flow / 3600 * head / 1000


def system(flow):
    return STATIC + RESISTANCE * flow * flow


def motor_input(shaft, speed_ratio=1.0):
    """Losses: a constant part, and a part with the torque squared."""
    torque = shaft / RATING / speed_ratio
    return shaft + (RATING / MOTOR - RATING) * (CONSTANT + (1 - CONSTANT) * torque ** 2)


def converter_loss(load):
    return load * (1 / fluids.pump.VFD_efficiency(RATING * 1000, load) - 1)


def converter_input(output):
    full = RATING / MOTOR
    return output + full * (1 / DRIVE - 1) * converter_loss(output / full) / converter_loss(1.0)


class Year:
    """kWh from the mains, and the parts that the comparison looks at."""

    def __init__(self):
        self.duty = bisect(lambda q: head_of(q) - system(q), 1.0, FLOWS[-1])
        self.duty_power = hydraulic(self.duty, system(self.duty)) / efficiency_of(self.duty)
        self.points = [self.point(flow, hours) for flow, hours in PROFILE if flow > 0]
        self.energy = {way: sum(point[way] * point["hours"] for point in self.points) for way in ("throttling", "speed", "on-off", "cube")}
        self.volume = sum(flow * hours for flow, hours in PROFILE)

    def point(self, flow, hours):
        asked = system(flow)
        similar = bisect(lambda q: head_of(q) - asked * (q / flow) ** 2, flow, FLOWS[-1])
        ratio = flow / similar
        shaft = hydraulic(flow, head_of(flow)) / efficiency_of(flow)
        slow_shaft = hydraulic(flow, asked) / efficiency_of(similar)
        cube_ratio = flow / self.duty
        cube_shaft = self.duty_power * cube_ratio ** 3
        cube_flow = 0.0  # what the pump really gives at the cube law's speed
        if HEADS[0] * cube_ratio ** 2 > STATIC:
            cube_flow = bisect(lambda q: head_of(q / cube_ratio) * cube_ratio ** 2 - system(q), 0.0, FLOWS[-1] * cube_ratio)
        return {"flow": flow, "hours": hours, "ratio": ratio, "shaft": shaft, "slow_shaft": slow_shaft, "cube_shaft": cube_shaft, "cube_flow": cube_flow,
                "valve_head": head_of(flow) - asked, "throttling": motor_input(shaft), "speed": converter_input(motor_input(slow_shaft, ratio)),
                "on-off": motor_input(self.duty_power) * flow / self.duty,
                "cube": converter_input(motor_input(cube_shaft, cube_ratio))}


def life_cost(energy_cost):
    """Year by year, payments at the ends of the years."""
    total = 9000.0 + 2500.0
    for year in range(1, YEARS + 1):
        prices = (1 + INFLATION) ** year / (1 + INTEREST) ** year
        total += prices * (900.0 + energy_cost * (1 + ENERGY_RISE) ** year)
    return total + 700.0 * prices


class Comparison:
    def __init__(self):
        self.count, self.broken = 0, []

    def hold(self, what, mine, theirs, bound):
        self.count += 1
        off = abs(theirs - mine) / abs(mine)
        if not off <= bound:
            self.broken.append(f"{what}: {mine!r} by hand, {theirs!r} by cutwater, {off:.1e} apart, {bound:.0e} allowed")

    def refused(self, what, words, call):
        self.count += 1
        try:
            self.broken.append(f"{what}: answered with {call()}")
        except cutwater.Refused as refused:
            if not all(word in str(refused) for word in words):
                self.broken.append(f"{what}: refused, but with {refused}")


def compare(year):
    is_held = Comparison()
    hold = is_held.hold
    curve, whole, loss = (FLOWS, HEADS), (FLOWS, HEADS, EFFICIENCIES), (STATIC, RESISTANCE)
    tight = 1e-9
    hold("duty flow", year.duty, cutwater.duty_flow(*curve, *loss), tight)
    hold("duty head", system(year.duty), cutwater.duty_head(*curve, *loss), tight)
    hold("power at the duty", year.duty_power,
         cutwater.pump_power_input(year.duty, system(year.duty), DENSITY, cutwater.curve_efficiency(FLOWS, EFFICIENCIES, year.duty)), tight)
    hold("motor of 15 kW, IE3, four poles", MOTOR, cutwater.motor_efficiency(RATING, 4, 50, "IE3"), tight)
    for load in (0.1, 0.3, 0.42, 0.6, 0.9, 1.0):  # fluids rounds to 4 places
        hold(f"converter at {load}", fluids.pump.VFD_efficiency(RATING * 1000, load), cutwater.drive_efficiency(RATING, load), 1e-4)
    for point in year.points:
        flow = point["flow"]
        at = f" at {flow:g} m3/h"
        part_load = MOTOR * fluids.pump.motor_efficiency_underloaded(RATING * 1000, point["shaft"] / RATING)  # a published curve of 1993
        an_hour = cutwater.duty_profile_energy(*whole, *loss, [flow], [1], "throttling", RATING, MOTOR, DENSITY, DRIVE, CONSTANT)
        hold("motor at part load" + at, part_load, point["shaft"] / an_hour.energy_kWh, 0.01)
        power_loss, valve_head = cutwater.throttling_power_loss(*whole, *loss, flow, DENSITY)
        hold("valve's head" + at, point["valve_head"], valve_head, tight)
        hold("valve's power" + at, point["shaft"] * point["valve_head"] / head_of(flow), power_loss, tight)
        hold("speed" + at, SPEED * point["ratio"], cutwater.speed_for_duty(*curve, SPEED, flow, system(flow)), tight)
        drive = motor_input(point["slow_shaft"], point["ratio"]) / point["speed"]
        saving = cutwater.speed_control_saving(*whole, SPEED, *loss, flow, DENSITY, drive)
        hold("reduced speed" + at, SPEED * point["ratio"], saving.reduced_speed_rpm, tight)
        hold("throttled power" + at, point["shaft"], saving.throttled_power_kW, tight)
        hold("controlled power" + at, point["slow_shaft"] / drive, saving.controlled_power_kW, tight)
        hold("saving" + at, point["shaft"] - point["slow_shaft"] / drive, saving.saving_kW, 1e-8)
        hold("slowed curve" + at, system(flow), cutwater.duty_head(*cutwater.curve_at_speed(*curve, SPEED, SPEED * point["ratio"]), *loss), tight)
        slowed = cutwater.curve_at_speed(*curve, SPEED, SPEED * flow / year.duty)
        if point["cube_flow"]:
            hold("flow at the cube law's speed" + at, point["cube_flow"], cutwater.duty_flow(*slowed, *loss), tight)
        else:
            is_held.refused("flow at the cube law's speed" + at, ("pump is too small",), lambda: cutwater.duty_flow(*slowed, *loss))
        is_held.refused("the cube law" + at, ("static_head", "cube law"), lambda: cutwater.cube_law_power(year.duty_power, year.duty, flow, STATIC))
        hold("the cube law without static head" + at, point["cube_shaft"], cutwater.cube_law_power(year.duty_power, year.duty, flow, 0), tight)

    flows, hours = zip(*PROFILE)
    for way in ("throttling", "speed", "on-off"):
        # The converter's table is rounded to 4 places in fluids: 1e-4 of its input at most.
        answer = cutwater.duty_profile_energy(*whole, *loss, flows, hours, way, RATING, MOTOR, DENSITY, DRIVE, CONSTANT)
        hold(f"year by {way}", year.energy[way], answer.energy_kWh, 2e-4 if way == "speed" else tight)
        hold(f"volume by {way}", year.volume, answer.volume_m3, tight)
        hold(f"energy per volume by {way}", year.energy[way] / year.volume, answer.specific_energy_kWhm3, 2e-4)
        running = year.volume / year.duty if way == "on-off" else sum(time for flow, time in PROFILE if flow > 0)
        hold(f"running time by {way}", running, answer.running_time_h, tight)
        hold(f"least speed by {way}", min(point["ratio"] for point in year.points) if way == "speed" else 1.0, answer.least_speed_ratio, tight)

    running = [point["flow"] for point in year.points], [float(head_of(point["flow"])) for point in year.points]
    overall = [hydraulic(point["flow"], head_of(point["flow"])) / point["throttling"] for point in year.points]
    times = [point["hours"] for point in year.points]
    hold("year from efficiencies", year.energy["throttling"], cutwater.annual_energy(*running, overall, times, DENSITY).energy_kWh, tight)
    for way in ("throttling", "speed", "on-off"):
        energy = year.energy[way]
        hold(f"year from powers, {way}", energy, cutwater.annual_energy_from_power([point[way] for point in year.points], times), tight)
        hold(f"cost, {way}", energy * PRICE, cutwater.annual_energy_cost(energy, PRICE), tight)
        hold(f"carbon, {way}", energy * CARBON, cutwater.carbon_emission(energy, CARBON), tight)
        cost = cutwater.life_cycle_cost(9000, 2500, energy * PRICE, 0, 900, 0, 0, 700, INTEREST, YEARS, INFLATION, ENERGY_RISE)
        hold(f"life, {way}", life_cost(energy * PRICE), cost.life_cycle_cost, tight)
    return is_held


def show(year):
    print(f"Duty {year.duty:.2f} m3/h, {system(year.duty):.2f} m, {year.duty_power:.2f} kW at the shaft; "
          f"static head {STATIC / system(year.duty):.1%} of the duty's")
    print(f"{'m3/h':>6}{'h':>7}{'speed':>8}{'throttled':>11}{'by speed':>10}{'on-off':>9}{'cube law':>10}{'gives':>8}   kW from the mains; on-off: mean of the time; m3/h at the cube law's speed")
    for point in year.points:
        print(f"{point['flow']:6.0f}{point['hours']:7.0f}{point['ratio']:8.3f}{point['throttling']:11.3f}{point['speed']:10.3f}{point['on-off']:9.3f}{point['cube']:10.3f}{point['cube_flow']:8.1f}")
    print("\nYear:       kWh     saved      cost    t CO2   life of 15 years")
    for way, energy in year.energy.items():
        told = f"{energy * PRICE:10.0f}{energy * CARBON / 1000:9.2f}{life_cost(energy * PRICE):14.0f}" if way != "cube" else "    what the cube law would promise"
        print(f"{way:<10}{energy:8.0f}{1 - energy / year.energy['throttling']:9.1%}{told}")
    true = year.energy["throttling"] - year.energy["speed"]
    promised = year.energy["throttling"] - year.energy["cube"]
    print(f"The cube law alone is {1 - year.energy['cube'] / year.energy['speed']:.0%} short of the year's energy under speed control "
          f"and promises {promised / true:.1f} times the saving.")


def main():
    year = Year()
    show(year)
    assert 0.79 < STATIC / system(year.duty) < 0.81
    assert all(point["cube_flow"] < 0.95 * point["flow"] for point in year.points)
    assert year.energy["cube"] < 0.7 * year.energy["speed"] < 0.7 * year.energy["throttling"]
    held = compare(year)
    print(*held.broken, f"{held.count} comparisons with cutwater, {len(held.broken)} out of bounds", sep="\n")
    return 1 if held.broken else 0


if __name__ == "__main__":
    raise SystemExit(main())
