"""Slurries and settling."""
from . import G, math, np, relation
from .system import friction


def loss(fraction, density, size, diameter):
    return 2.705 * fraction * (density - 1) ** 0.64 * (size / diameter) ** 0.313


@relation()
def slurry_head_ratio(fraction, density, size, diameter):
    return 1 - loss(fraction, density, size, diameter)


@relation()
def slurry_efficiency_ratio(fraction, density, size, diameter):
    return 1 - loss(fraction, density, size, diameter)


@relation()
def slurry_power(flow, head, efficiency, density, head_ratio, efficiency_ratio):
    slurry_head, slurry_efficiency = head * head_ratio, efficiency * efficiency_ratio
    return density * G * (flow / 3600) * slurry_head / slurry_efficiency / 1000, slurry_head, slurry_efficiency


@relation(size=(0.1, 2))
def settling_velocity(size, solids, liquid, viscosity):
    d, mu = size / 1000, viscosity / 1000
    archimedes = G * d**3 * liquid * (solids - liquid) / mu**2
    x = np.log(archimedes / (18 + 0.6 * np.sqrt(archimedes)))
    for _ in range(6):  # Newton's steps on the logarithm of Re, the slope as written
        re = np.exp(x)
        rest = re**0.6459
        value = 24 * re * (1 + 0.1806 * rest) + 0.4251 * re * re / (1 + 6880.95 / re)
        slope = 24 * re * (1 + 0.1806 * 1.6459 * rest) + 0.4251 * re * re * (2 * re + 3 * 6880.95) * re / (re + 6880.95) ** 2
        x = x - np.log(value / (4 / 3 * archimedes)) * value / slope
    re = np.exp(x)
    drag = (24 * re * (1 + 0.1806 * re**0.6459) + 0.4251 * re * re / (1 + 6880.95 / re)) / re**2
    return re * mu / (liquid * d), re, drag


@relation()
def hindered_settling_velocity(velocity, fraction, reynolds):
    r = reynolds**0.75
    return velocity * (1 - fraction) ** ((4.7 + 0.41 * r) / (1 + 0.175 * r))


@relation()
def deposition_velocity(bore, density, fraction, size, durand):
    factor = 1.3 * fraction**0.125 * (1 - np.exp(-6.9 * size))
    return factor * np.sqrt(2 * G * bore / 1000 * (density - 1)), factor


@relation()
def wear_life_ratio(speed_ratio, exponent):
    return speed_ratio**-exponent


def of_slurry(liquid_head, ratio, liquid, slurry):
    head = liquid_head * ratio
    return head * (liquid / slurry), head, head * liquid * (G * 1e-5), ratio


@relation(flow=(300, 600))
def slurry_pipe_friction(flow, bore, length, roughness, viscosity, liquid, solids, share, drag, constant):
    v = flow / (900 * math.pi * (bore / 1000) ** 2)
    s = solids / liquid
    root = np.sqrt(drag)
    psi = v * v * root / (G * 1e-3 * bore * (s - 1))
    rise = 1 + constant * share / (psi * np.sqrt(psi))
    slurry = liquid + (solids - liquid) * share
    ratio = np.maximum(rise, slurry / liquid)
    leaping = v < np.sqrt(40 * share * (s - 1) / root * (G * 1e-3 * bore))
    alone = friction(flow, bore, length, roughness, viscosity)
    return *of_slurry(alone, ratio, liquid, slurry), v, np.where(leaping, 0.0, np.where(ratio > rise, 2.0, 1.0))


@relation()
def slurry_friction_from_v50(flow, bore, length, roughness, viscosity, liquid, solids, share, v50, exponent, added):
    v = flow / (900 * math.pi * (bore / 1000) ** 2)
    alone = friction(flow, bore, length, roughness, viscosity)
    by_solids = length * added * share * (solids / liquid - 1) * (v50 / v) ** exponent
    slurry = liquid + (solids - liquid) * share
    return *of_slurry(alone, np.maximum((alone + by_solids) / alone, slurry / liquid), liquid, slurry), v
