"""Magnetic couplings and their shells."""
from . import G, math, np, relation


@relation()
def magnetic_coupling_torque(cold, inner, outer, inner_coefficient, outer_coefficient, reference):
    share = (1 + 0.01 * inner_coefficient * (inner - reference)) * (1 + 0.01 * outer_coefficient * (outer - reference))
    return cold * share, share


@relation()
def magnetic_coupling_start_torque(motor, load, motor_inertia, pump_inertia):
    return load + (motor - load) * (pump_inertia / (motor_inertia + pump_inertia))


@relation()
def magnetic_coupling_margin(available, power, speed, start):
    running = power / speed * (30000 / math.pi)
    return available / np.maximum(running, start), running


@relation()
def shell_end_factor(pole_pairs, length, diameter):
    x = pole_pairs * length / diameter
    return 1 - np.tanh(x) / x


@relation()
def shell_eddy_loss(field, conductivity, speed, diameter, wall, length, end_factor):
    w, r = speed * (math.pi / 30), diameter / 2000
    loss = math.pi * conductivity * (w * w) * (r * r * r) * wall * length * (field * field) * end_factor
    return loss, loss / w, (1.25663706212e-6 * 0.5e3) * conductivity * w * r * wall


@relation()
def recirculation_temperature_rise(heat, flow, density, specific_heat):
    return heat * 60 / (flow * density * specific_heat)


@relation()
def shell_temperature_rise(heat, diameter, length, film):
    return heat * (1e6 / math.pi) / (diameter * length * film)


@relation()
def loss_of_flow_time(heat, volume, density, specific_heat, metal, metal_specific_heat, start, limit):
    rate = heat / (volume * density * specific_heat * 0.001 + metal * metal_specific_heat * 1000)
    return (limit - start) / rate, rate
