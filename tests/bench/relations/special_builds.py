"""Vertical sump pumps and other builds."""
from . import G, math, np, relation


def stretch(below, length, section, modulus, density):
    """mm; section in mm2"""
    return (below + density * G * 0.5e-6 * section * length) * length / (section * modulus)


@relation()
def line_shaft_stretch(thrust, impellers, length, diameter, modulus, density):
    return stretch(thrust + impellers * G, length, math.pi / 4 * diameter * diameter, modulus, density)


@relation()
def column_stretch(load, length, outside, wall, modulus, density):
    bore = outside - 2 * wall
    return stretch(load, length, math.pi / 4 * (outside * outside - bore * bore), modulus, density)


@relation(heat=(0, 0.5))
def line_shaft_clearance(lift, shaft, column, heat):
    left = lift - (shaft - column) - heat
    return np.where(left > 0, 0.0, 1.0), left


@relation(tension=(0, 1000))
def line_shaft_critical_speed(span, diameter, liquid, modulus, metal, tension):
    d, length = diameter * 0.001, span * 0.001
    square = d * d
    stiffness = modulus * (1e9 * math.pi / 64) * square * square
    mass = (metal + liquid) * (math.pi / 4) * square
    pulled = 1 + tension * length * length / (math.pi**2 * stiffness)
    return 30 * math.pi / (length * length) * np.sqrt(stiffness * pulled / mass)


@relation()
def line_shaft_bearing_span(speed, separation, diameter, liquid, modulus, metal):
    d = diameter * 0.001
    at_a_metre = 30 * math.pi / 4 * d * np.sqrt(modulus * 1e9 / (metal + liquid))
    return 1000 * np.sqrt(at_a_metre / (speed * separation))


@relation()
def pressure_at_inlet(surface, submergence, density, losses):
    return surface + density * (submergence - losses) * (G * 1e-5)


@relation()
def self_priming_lift(surface, vapour, vacuum, density, margin):
    over = (1e5 / G) / density
    by_vacuum, by_vapour = vacuum * over, (surface - vapour) * over
    return np.minimum(by_vacuum, by_vapour) - margin, by_vacuum, by_vapour


@relation()
def impeller_from_coefficients(flow, head, speed, coefficient, efficiency, density):
    tip = np.sqrt(G * head / coefficient)
    return tip / speed * (60000 / math.pi), tip, density * flow * head / efficiency * (G / 3.6e6)


@relation()
def shaft_end_temperature(hot, ambient, diameter, length, conductivity, coefficient):
    d = diameter * 0.001
    m = np.sqrt(4 * coefficient / (conductivity * d))
    ml = m * length * 0.001
    excess = hot - ambient
    return ambient + excess / np.cosh(ml), math.pi / 4 * d * d * conductivity * m * excess * np.tanh(ml)
