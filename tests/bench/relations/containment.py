"""Casing pressure, flanges, walls, trapped liquid."""
from . import G, math, np, relation
from .liquid import gamma_pi, state

WARM = np.array([38, 50, 100, 150, 200, 250, 300, 325, 350, 375, 400, 425, 450, 475, 500, 538.0])
GROUP_2_2_CLASS_150 = np.array([19.0, 18.4, 16.2, 14.8, 13.7, 12.1, 10.2, 9.3, 8.4, 7.4, 6.5, 5.5, 4.6, 3.7, 2.8, 1.4])
GROUP_2_2_CLASS_300 = np.array([49.6, 48.1, 42.2, 38.5, 35.7, 33.4, 31.6, 30.9, 30.3, 29.9, 29.4, 29.1, 28.8, 28.7, 28.2, 25.2])


def rise(head, density, tolerance, speed):
    return density * head * (1 + tolerance) * (speed * speed) * (G * 1e-5)


@relation(speed=(1, 1.2))
def shutoff_pressure(head, density, tolerance, speed):
    return rise(head, density, tolerance, speed)


@relation(speed=(1, 1.2))
def casing_pressure(suction, head, density, tolerance, speed, margin):
    over = rise(head, density, tolerance, speed)
    return suction + over, suction + over * (1 + margin)


@relation()
def hydrostatic_test_pressure(allowable, factor, strength):
    return allowable * factor * strength


@relation(temperature=(20, 500))
def flange_rating(temperature, pressure_class):  # group 2.2, class 300
    return np.interp(temperature, WARM, GROUP_2_2_CLASS_300)


@relation(temperature=(20, 200))
def flange_check(casing, temperature, pressure_class):  # group 2.2, class 150
    rating = np.interp(temperature, WARM, GROUP_2_2_CLASS_150)
    return np.where(casing <= rating, 0.0, 1.0), rating, rating - casing, casing / rating


@relation()
def flange_test_pressure(pressure_class):  # group 1.1
    cold = np.where(pressure_class == 150, 19.6, np.where(pressure_class == 300, 51.1, 102.1))
    return np.ceil(1.5 * cold - 1e-9)


NOZZLES = np.array([50, 80, 100, 150, 200, 250, 300, 350, 400.0])
LIMITS = np.array([(890, 710, 580, 460, 230, 350), (1330, 1070, 890, 950, 470, 720), (1780, 1420, 1160, 1330, 680, 1000),
                   (3110, 2490, 2050, 2300, 1180, 1760), (4890, 3780, 3110, 3530, 1760, 2580), (6670, 5340, 4450, 5020, 2440, 3800),
                   (8000, 6670, 5340, 6100, 2980, 4610), (8900, 7120, 5780, 6370, 3120, 4750), (10230, 8450, 6670, 7320, 3660, 5420.0)])


@relation()
def nozzle_load_limits(size):  # end
    place = np.searchsorted(NOZZLES, size)
    return tuple(LIMITS[place, column] for column in range(6))


@relation(tolerance=(0, 0.125))
def wall_needed_from_bore(pressure, bore, stress, quality, y, allowance, tolerance):
    strength = 10 * stress * quality
    wall = pressure * (bore + 2 * allowance) / (2 * (strength - pressure * (1 - y)))
    least = wall + allowance
    return wall, least, least / (1 - tolerance)


@relation()
def corrosion_life_from_readings(before, now, interval, needed):
    rate = (before - now) / interval
    return rate, (now - needed) / rate


def stretch(diameter, wall, modulus, poisson):
    """1/GPa"""
    return diameter / (2 * modulus * wall) * (2.5 - 2 * poisson)


@relation()
def trapped_liquid_pressure_rise(warming, liquid, compressibility, diameter, wall, metal, modulus, poisson):
    return (liquid - 3 * metal) * warming / (compressibility + stretch(diameter, wall, modulus, poisson)) * 0.01


@relation()
def trapped_water_pressure(cold, start, hot, diameter, wall, metal, modulus, poisson):
    def volume(temperature, pressure):
        kelvin, _, a, b = state(temperature, pressure)
        return gamma_pi(a, b) * kelvin

    before = volume(cold, start)
    grown = (1 + 1e-6 * metal * (hot - cold)) ** 3 * before
    give = stretch(diameter, wall, modulus, poisson) * 1e-4
    near, pressure = start, start + 30  # secant steps
    off_near = volume(hot, near) - grown
    for _ in range(5):
        off = volume(hot, pressure) - grown * (1 + (pressure - start) * give)
        near, off_near, pressure = pressure, off, pressure - off * (pressure - near) / (off - off_near)
    return pressure, pressure - start
