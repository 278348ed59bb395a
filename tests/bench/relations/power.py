"""Power, motors, energy, money."""
from . import G, math, np, relation


def hydraulic(flow, head, density):
    return density * G * (flow / 3600) * head / 1000


@relation()
def hydraulic_power(flow, head, density):
    return hydraulic(flow, head, density)


@relation()
def pump_power_input(flow, head, density, efficiency):
    return hydraulic(flow, head, density) / efficiency


@relation()
def pump_efficiency(flow, head, density, power):
    return hydraulic(flow, head, density) / power


@relation()
def shaft_torque(power, speed):
    return power * 1000 / (speed * (2 * np.pi / 60))


@relation()
def motor_efficiency_at_load(rated, load, constant_share):
    losses = (1 / rated - 1) * (constant_share + (1 - constant_share) * load**2)
    return load / (load + losses)


@relation()
def synchronous_speed(frequency, poles):
    return 120 * frequency / poles


@relation()
def motor_speed(frequency, poles, slip):
    return 120 * frequency / poles * (1 - slip)


@relation()
def motor_current(power, voltage, efficiency, power_factor):
    return power * 1000 / (math.sqrt(3) * voltage * efficiency * power_factor)


@relation()
def electrical_power(power, motor, drive):
    return power / (motor * drive)


@relation()
def overall_efficiency(pump, motor, drive):
    return pump * motor * drive


@relation()
def wire_to_water_efficiency(flow, head, density, power):
    return hydraulic(flow, head, density) / power


@relation()
def specific_energy(head, density, efficiency):
    return density * G * head / efficiency / 3.6e6


@relation()
def specific_energy_from_power(power, flow):
    return power / flow


@relation()
def annual_energy_cost(energy, price):
    return energy * price


@relation()
def carbon_emission(energy, factor):
    return energy * factor


@relation()
def present_value_factor(interest, years, inflation):
    ratio = (1 + inflation) / (1 + interest)
    return ratio * (1 - ratio**years) / (1 - ratio)


@relation(interest=(0.05, 0.1))
def payback_time(outlay, saving, interest):
    return -np.log1p(-interest * outlay / saving) / np.log1p(interest)


@relation(new_flow=(60, 95), once=("static",))
def cube_law_power(power, flow, new_flow, static):
    return power * (new_flow / flow) ** 3
