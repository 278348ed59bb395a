"""Loads, lives and heat of rolling bearings."""
from . import G, math, np, relation

GROOVE = np.array([0.172, 0.345, 0.689, 1.03, 1.38, 2.07, 3.45, 5.17, 6.89])
GROOVE_E = np.array([0.19, 0.22, 0.26, 0.28, 0.30, 0.34, 0.38, 0.42, 0.44])
GROOVE_Y = np.array([2.30, 1.99, 1.71, 1.55, 1.45, 1.31, 1.15, 1.04, 1.00])
CONTACT = np.array([20, 25, 30, 35, 40, 45.0])
CONTACT_E = np.array([0.57, 0.68, 0.80, 0.95, 1.14, 1.34])
PAIR_Y_LOW = np.array([1.09, 0.92, 0.78, 0.66, 0.55, 0.47])
PAIR_X = np.array([0.70, 0.67, 0.63, 0.60, 0.57, 0.54])
PAIR_Y = np.array([1.63, 1.41, 1.24, 1.07, 0.93, 0.81])


@relation(axial=(200, 2000))
def deep_groove_equivalent_load(radial, axial, rating, f0):
    relative = f0 * axial / rating
    e, y = np.interp(relative, GROOVE, GROOVE_E), np.interp(relative, GROOVE, GROOVE_Y)
    return np.where(axial <= e * radial, radial, np.maximum(radial, 0.56 * radial + y * axial))


@relation(axial=(500, 3000), angle=(20, 45))
def angular_contact_equivalent_load(radial, axial, angle):  # a pair
    light = axial <= np.interp(angle, CONTACT, CONTACT_E) * radial
    x = np.where(light, 1, np.interp(angle, CONTACT, PAIR_X))
    y = np.where(light, np.interp(angle, CONTACT, PAIR_Y_LOW), np.interp(angle, CONTACT, PAIR_Y))
    return np.maximum(radial, x * radial + y * axial)


@relation()
def bearing_set_rating(dynamic, static, bearings):
    return bearings**0.7 * dynamic, bearings * static


@relation(angle=(15, 45))
def static_equivalent_load(radial, axial, angle):  # an angular contact pair
    y = np.interp(angle, np.array([15, 20, 25, 30, 35, 40, 45.0]), np.array([0.92, 0.84, 0.76, 0.66, 0.58, 0.52, 0.44]))
    return np.maximum(radial, radial + y * axial)


@relation()
def static_safety(rating, load):
    return rating / load


@relation(load=(10000, 20000))
def bearing_life_hours(rating, load, speed):
    ratio = rating / load
    life = ratio * ratio * ratio
    return life * (1e6 / 60) / speed, life


@relation(first=(20000, 60000), second=(20000, 60000))
def bearing_pair_life(first, second, exponent):
    return (first**-exponent + second**-exponent) ** (-1 / exponent)


@relation(speed=(500, 3000))
def reference_viscosity(speed, pitch, wanted):
    nu = np.where(speed < 1000, 45000 * speed**-0.83, 4500 / np.sqrt(speed)) / np.sqrt(pitch)
    return nu, wanted * nu


@relation(pitch=(60, 150))
def fatigue_load_limit(rating, pitch):
    return rating / 22 * np.where(pitch > 100, np.sqrt(100 / pitch), 1)


@relation(pitch=(60, 150))
def contamination_factor(pitch):  # typical contamination
    small = pitch < 100
    return np.where(small, 0.1, 0.2), np.where(small, 0.3, 0.4)


def life_modification(kappa, x):
    k = np.minimum(kappa, 4)
    c = np.where(k < 0.4, 2.2649, 1.9987)
    p = np.where(k < 0.4, 0.054381, np.where(k < 1, 0.19087, 0.071739))
    bracket = 1 - (2.5671 - c / k**p) ** 0.83 * np.cbrt(x)
    return np.where(bracket > 0, np.minimum(50, 0.1 * np.maximum(bracket, 1e-9) ** -9.3), 50)


@relation(kappa=(0.2, 4.5))
def life_modification_factor(kappa, contamination, limit, load):
    return life_modification(kappa, contamination * limit / load)


@relation(kappa=(0.2, 4.5))
def modified_bearing_life(rating, load, speed, kappa, contamination, limit):  # 90 %
    ratio = rating / load
    basic = ratio * ratio * ratio * (1e6 / 60) / speed
    modification = life_modification(kappa, contamination * limit / load)
    return modification * basic, np.ones_like(basic), modification, basic


@relation(weight=(100, 300), weight_place=(50, 100), drive=(50, 100), drive_place=(200, 250), unbalance=(10, 30))
def bearing_loads(impeller, overhang, span, weight, weight_place, drive, drive_place, unbalance):  # worst
    first = second = 0
    for force, place in (impeller, -overhang), (unbalance, -overhang), (weight, weight_place), (drive, drive_place):
        at_2 = force * (place / span)
        first, second = first + np.abs(force - at_2), second + np.abs(at_2)
    return first, second


@relation()
def bearing_frequencies(speed, balls, ball, pitch, angle):
    ratio = ball / pitch
    g = ratio * np.cos(np.radians(angle))
    f = speed / 60
    cage = 0.5 * (1 - g) * f
    return balls * cage, 0.5 * balls * (1 + g) * f, cage, 0.5 / ratio * (1 - g * g) * f


@relation(temperature=(60, 90))
def relubrication_interval(speed, bore, temperature, other):  # deep groove ball
    return 10 * (14e6 / (speed * np.sqrt(bore)) - 4 * bore) * 2 ** (np.maximum(0, temperature - 70) / -15) * other


@relation()
def grease_quantity(outside, width):
    return 0.005 * outside * width


def lubricant_torque(factor, viscosity, speed, mean):
    """N mm"""
    fast = viscosity * speed
    return 1e-7 * factor * np.where(fast >= 2000, np.cbrt(fast * fast), 160) * (mean * mean * mean)


@relation(load_factor=(0, 0.001), load=(100, 1000))
def bearing_friction_heat(speed, viscosity, mean, factor, load_factor, load):
    lubricant, loaded = lubricant_torque(factor, viscosity, speed, mean), load_factor * load * mean
    return (lubricant + loaded) * speed * (math.pi / 30000), lubricant, loaded


@relation()
def bearing_housing_temperature(heat, area, transfer, ambient):
    return ambient + heat / (transfer * area)


@relation(first=(39, 41), second=(99, 101))
def bearing_temperature(speed, mean, factor, torque, other, first, first_viscosity, second, second_viscosity, area, transfer, ambient):
    height = np.log10(np.log10(first_viscosity + 0.7))  # the terms below 2 mm2/s left out, as most sheets do
    across = np.log10(first + 273.15)
    slope = (height - np.log10(np.log10(second_viscosity + 0.7))) / (np.log10(second + 273.15) - across)
    conductance, w = transfer * area, speed * (math.pi / 30)
    low, high = ambient, np.full_like(ambient, 200.0)
    for _ in range(40):  # halved until the temperature stands to a tenth of a microkelvin
        middle = 0.5 * (low + high)
        viscosity = 10 ** (10 ** (height + slope * (across - np.log10(middle + 273.15)))) - 0.7
        heat = (lubricant_torque(factor, viscosity, speed, mean) / 1000 + torque / 1000) * w + other
        hotter = heat > conductance * (middle - ambient)
        low, high = np.where(hotter, middle, low), np.where(hotter, high, middle)
    return middle, viscosity, heat
