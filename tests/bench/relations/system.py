"""Pipes and losses, NPSH, sumps, surge."""
from . import G, math, np, relation


def velocity(flow, bore):
    return flow / 3600 / (np.pi / 4 * (bore / 1000) ** 2)


@relation()
def pipe_velocity(flow, bore):
    return velocity(flow, bore)


@relation()
def bore_for_velocity(flow, wanted):
    return np.sqrt(flow / 3600 / (np.pi / 4 * wanted)) * 1000


@relation()
def velocity_head(flow, bore):
    return velocity(flow, bore) ** 2 / (2 * G)


@relation()
def reynolds_number(flow, bore, viscosity):
    return velocity(flow, bore) * (bore / 1000) / (viscosity * 1e-6)


def colebrook(reynolds, relative):
    """Newton's steps on the logarithmic form: full precision with the fewest logarithms."""
    a, b = relative / 3.7, 2.51 / reynolds
    x = -2 * np.log10(a + 12 / reynolds)
    for _ in range(3):
        inside = a + b * x
        x = x - (x + 0.868588963806503655 * np.log(inside)) / (1 + 0.868588963806503655 * b / inside)
    return 1 / (x * x)


@relation(reynolds=(5000, 1e6))
def friction_factor(reynolds, roughness, bore):
    return np.where(reynolds > 2000, colebrook(reynolds, roughness / bore), 64 / reynolds)


def friction(flow, bore, length, roughness, viscosity):
    d = bore / 1000
    v = flow / 3600 / (np.pi / 4 * d**2)
    reynolds = v * d / (viscosity * 1e-6)
    f = np.where(reynolds > 2000, colebrook(reynolds, roughness / bore), 64 / reynolds)
    return f * length / d * v**2 / (2 * G)


@relation(flow=(10, 300))
def pipe_friction_head(flow, bore, length, roughness, viscosity):
    return friction(flow, bore, length, roughness, viscosity)


@relation(once=("bore", "length", "roughness", "viscosity"), flow=(10, 300))
def pipe_friction_head(flow, bore, length, roughness, viscosity):
    return friction(flow, bore, length, roughness, viscosity)


@relation()
def fitting_head(flow, bore, coefficient):
    return coefficient * velocity(flow, bore) ** 2 / (2 * G)


@relation()
def valve_head_loss(flow, kv, relative_density):
    ratio = (flow / kv) ** 2
    return ratio * (1e5 / (999.1 * G)), ratio * relative_density


@relation()
def system_resistance(flow, head):
    return head / flow**2


@relation()
def system_head(static, resistance, flow):
    return static + resistance * flow**2


@relation()
def total_head_from_gauges(discharge, suction, discharge_elevation, suction_elevation, discharge_bore, suction_bore, flow, density):
    rise = velocity(flow, discharge_bore) ** 2 - velocity(flow, suction_bore) ** 2
    return (discharge - suction) * 1e5 / (density * G) + discharge_elevation - suction_elevation + rise / (2 * G)


@relation(level=(-3, 3))
def npsh_available(surface, vapour, density, level, loss):
    return (surface - vapour) * 1e5 / (density * G) + level - loss


@relation()
def npsh_available_from_gauge(suction, ambient, elevation, bore, flow, density, vapour):
    return (suction + ambient - vapour) * 1e5 / (density * G) + elevation + velocity(flow, bore) ** 2 / (2 * G)


@relation()
def npsh_margin(available, npsh3):
    return available - npsh3


@relation()
def npsh_margin_ratio(available, npsh3):
    return available / npsh3


@relation()
def npsh3_with_viscosity(npsh3, best_npsh3, head_ratio, best_flow, speed):
    return npsh3 * (1 + 0.5 * (1 / head_ratio - 1) * 274000 * best_npsh3 / (best_flow**0.667 * speed**1.33))


@relation()
def greatest_suction_lift(surface, vapour, density, loss, npsh3, margin):
    return (surface - vapour) * 1e5 / (density * G) - loss - npsh3 - margin


@relation()
def minimum_submergence(flow, diameter):
    d = diameter / 1000
    return d * (1 + 2.3 * velocity(flow, diameter) / np.sqrt(G * d))


@relation()
def wet_well_volume(flow, starts):
    return flow / (4 * starts)


@relation(lift=(2, 4), ambient=(0.98, 1.03), density=(950, 1000))
def priming_time(volume, rate, lift, ambient, density):
    return volume / rate * 3600 * (1 + np.log(ambient * 1e5 / (ambient * 1e5 - density * G * lift)))


@relation()
def pressure_surge(change, speed, density):
    return density * speed * change / 1e5


@relation()
def pressure_wave_speed(bulk, pipe, bore, wall, density, poisson):  # expansion joints, whose factor is 1
    return np.sqrt(bulk * 1e9 / density) / np.sqrt(1 + (bulk / pipe) * (bore / wall))


@relation()
def surge_period(length, speed):
    return 2 * length / speed


@relation(closure=(0.5, 20))
def closure_surge(velocity, wave, density, length, closure):
    sudden = closure <= 2 * length / wave
    return np.where(sudden, density * wave * velocity, 2 * density * length * velocity / closure) * 1e-5, np.where(sudden, 0.0, 1.0)


@relation()
def line_packing_surge(velocity, wave, density, friction):
    packing = density * friction * (G * 1e-5)
    return density * wave * velocity * 1e-5 + packing, packing


@relation()
def npsh_at_datum(npsh, rise):
    return npsh - rise
