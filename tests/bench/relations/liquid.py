"""Water by IAPWS, vapour pressure, viscosity, density."""
from . import G, math, np, relation

# IAPWS R7-97, Table 2: I, J, n
REGION_1 = [(0, -2, 0.14632971213167), (0, -1, -0.84548187169114), (0, 0, -3.7563603672040), (0, 1, 3.3855169168385), (0, 2, -0.95791963387872),
            (0, 3, 0.15772038513228), (0, 4, -0.016616417199501), (0, 5, 0.81214629983568e-3), (1, -9, 0.28319080123804e-3),
            (1, -7, -0.60706301565874e-3), (1, -1, -0.018990068218419), (1, 0, -0.032529748770505), (1, 1, -0.021841717175414),
            (1, 3, -0.52838357969930e-4), (2, -3, -0.47184321073267e-3), (2, 0, -0.30001780793026e-3), (2, 1, 0.47661393906987e-4),
            (2, 3, -0.44141845330846e-5), (2, 17, -0.72694996297594e-15), (3, -4, -0.31679644845054e-4), (3, 0, -0.28270797985312e-5),
            (3, 6, -0.85205128120103e-9), (4, -5, -0.22425281908000e-5), (4, -2, -0.65171222895601e-6), (4, 10, -0.14341729937924e-12),
            (5, -8, -0.40516996860117e-6), (8, -11, -0.12734301741641e-8), (8, -6, -0.17424871230634e-9), (21, -29, -0.68762131295531e-18),
            (23, -31, 0.14478307828521e-19), (29, -38, 0.26335781662795e-22), (30, -39, -0.11947622640071e-22),
            (31, -40, 0.18228094581404e-23), (32, -41, -0.93537087292458e-25)]
N4 = [0, 1167.0521452767, -724213.16703206, -17.073846940092, 12020.824702470, -3232555.0322333, 14.915108613530, -4823.2657361591,
      405113.40542057, -0.23855557567849, 650.17534844798]
R = 461.526
WATER = dict(temperature=(5, 95), pressure=(2, 50))


class Powers:
    """Whole powers by multiplication, each computed once: NumPy's own take a logarithm."""

    def __init__(self, x):
        self.known = {0: np.ones_like(x), 1: x}
        self.over = 1 / x

    def __getitem__(self, n):
        if n not in self.known:
            self.known[n] = self[n + 1] * self.over if n < 0 else self[n // 2] * self[n - n // 2]
        return self.known[n]


def state(temperature, pressure):
    kelvin = temperature + 273.15
    return kelvin, 1386 / kelvin, Powers(7.1 - pressure / 165.3), Powers(1386 / kelvin - 1.222)


def gamma_pi(a, b):
    return sum(-n * i * a[i - 1] * b[j] for i, j, n in REGION_1 if i)


@relation(**WATER)
def water_density(temperature, pressure):
    kelvin, _, a, b = state(temperature, pressure)
    return 16.53e6 / (R * kelvin * gamma_pi(a, b))


@relation(**WATER)
def water_specific_heat(temperature, pressure):
    _, tau, a, b = state(temperature, pressure)
    return -R * tau * tau * sum(n * a[i] * j * (j - 1) * b[j - 2] for i, j, n in REGION_1) / 1000


@relation(**WATER)
def water_thermal_expansion(temperature, pressure):
    kelvin, tau, a, b = state(temperature, pressure)
    mixed = sum(-n * i * a[i - 1] * j * b[j - 1] for i, j, n in REGION_1 if i and j)
    return (1 - tau * mixed / gamma_pi(a, b)) / kelvin


@relation(**WATER)
def water_bulk_modulus(temperature, pressure):
    _, tau, a, b = state(temperature, pressure)
    first = gamma_pi(a, b)
    second = sum(n * i * (i - 1) * a[i - 2] * b[j] for i, j, n in REGION_1 if i > 1)
    mixed = sum(-n * i * a[i - 1] * j * b[j - 1] for i, j, n in REGION_1 if i and j)
    of_tau = sum(n * a[i] * j * (j - 1) * b[j - 2] for i, j, n in REGION_1)
    return 16.53e6 * first / ((first - tau * mixed) ** 2 / (tau * tau * of_tau) - second) / 1e9


H0 = [1.67752, 2.20462, 0.6366564, -0.241605]
H1 = [[0.520094, 0.222531, -0.281378, 0.161913, -0.0325372, 0, 0], [0.0850895, 0.999115, -0.906851, 0.257399, 0, 0, 0],
      [-1.08374, 1.88797, -0.772479, 0, 0, 0, 0], [-0.289555, 1.26613, -0.489837, 0, 0.0698452, 0, -0.00435673],
      [0, 0, -0.257040, 0, 0, 0.00872102, 0], [0, 0.120573, 0, 0, 0, 0, -0.000593264]]


@relation(**WATER)
def water_dynamic_viscosity(temperature, pressure):
    reduced = (temperature + 273.15) / 647.096
    over = 1 / reduced
    dense = water_density(temperature, pressure) / 322
    dilute = 100 * np.sqrt(reduced) / (H0[0] + over * (H0[1] + over * (H0[2] + over * H0[3])))
    x, y, total = over - 1, dense - 1, 0
    for row in reversed(H1):
        inner = 0
        for h in reversed(row):
            inner = inner * y + h
        total = total * x + inner
    return dilute * np.exp(dense * total) / 1000


@relation(**WATER)
def water_kinematic_viscosity(temperature, pressure):
    return water_dynamic_viscosity(temperature, pressure) * 1000 / water_density(temperature, pressure)


@relation(temperature=(5, 300))
def water_vapour_pressure(temperature):
    kelvin = temperature + 273.15
    theta = kelvin + N4[9] / (kelvin - N4[10])
    a = (theta + N4[1]) * theta + N4[2]
    b = (N4[3] * theta + N4[4]) * theta + N4[5]
    c = (N4[6] * theta + N4[7]) * theta + N4[8]
    return np.square(np.square(2 * c / (-b + np.sqrt(b * b - 4 * a * c)))) * 10


@relation(pressure=(0.1, 100))
def water_boiling_temperature(pressure):
    beta = np.sqrt(np.sqrt(pressure / 10))
    e = (beta + N4[3]) * beta + N4[6]
    f = (N4[1] * beta + N4[4]) * beta + N4[7]
    g = (N4[2] * beta + N4[5]) * beta + N4[8]
    d = 2 * g / (-f - np.sqrt(f * f - 4 * e * g))
    return (N4[10] + d - np.sqrt((N4[10] + d) ** 2 - 4 * (N4[9] + N4[10] * d))) / 2 - 273.15


@relation(temperature=(20, 95), lowest=(5, 6), highest=(104, 105))
def vapour_pressure_antoine(a, b, c, temperature, lowest, highest):
    return 10 ** (a - b / (temperature + c))


@relation(temperature=(20, 95), once=("a", "b", "c", "lowest", "highest"))
def vapour_pressure_antoine(a, b, c, temperature, lowest, highest):
    return 10 ** (a - b / (temperature + c))


TWO_POINTS = dict(first_temperature=(58, 62), second_temperature=(98, 102), temperature=(65, 95))


@relation(**TWO_POINTS)
def vapour_pressure_two_point(first_temperature, first_pressure, second_temperature, second_pressure, temperature):
    first = 1 / (first_temperature + 273.15)
    along = (1 / (temperature + 273.15) - first) / (1 / (second_temperature + 273.15) - first)
    return first_pressure * np.exp(along * np.log(second_pressure / first_pressure))


@relation(once=("first_temperature", "first_pressure", "second_temperature", "second_pressure"), temperature=(65, 95))
def vapour_pressure_two_point(first_temperature, first_pressure, second_temperature, second_pressure, temperature):
    first = 1 / (first_temperature + 273.15)
    along = (1 / (temperature + 273.15) - first) / (1 / (second_temperature + 273.15) - first)
    return first_pressure * np.exp(along * np.log(second_pressure / first_pressure))


D341 = dict(first_temperature=(38, 42), second_temperature=(98, 102), temperature=(45, 95))


def viscosity_by_d341(first_temperature, first_viscosity, second_temperature, second_viscosity, temperature):
    first = np.log10(np.log10(first_viscosity + 0.7))  # the terms below 2 mm2/s left out, as most sheets do
    across = np.log10(first_temperature + 273.15)
    slope = (first - np.log10(np.log10(second_viscosity + 0.7))) / (np.log10(second_temperature + 273.15) - across)
    return 10 ** (10 ** (first + slope * (across - np.log10(temperature + 273.15)))) - 0.7


@relation(**D341)
def viscosity_at_temperature(first_temperature, first_viscosity, second_temperature, second_viscosity, temperature):
    return viscosity_by_d341(first_temperature, first_viscosity, second_temperature, second_viscosity, temperature)


@relation(once=("first_temperature", "first_viscosity", "second_temperature", "second_viscosity"), temperature=(45, 95))
def viscosity_at_temperature(first_temperature, first_viscosity, second_temperature, second_viscosity, temperature):
    return viscosity_by_d341(first_temperature, first_viscosity, second_temperature, second_viscosity, temperature)


def saybolt(viscosity, temperature):
    at_100 = 4.6324 * viscosity + (1 + 0.03264 * viscosity) / ((3930.2 + viscosity * (262.7 + viscosity * (23.97 + 1.646 * viscosity))) * 1e-5)
    return (1 + 0.000061 * (temperature * 1.8 + 32 - 100)) * at_100


@relation(viscosity=(5, 500), temperature=(20, 90))
def saybolt_from_viscosity(viscosity, temperature):
    return saybolt(viscosity, temperature)


@relation(seconds=(60, 2000), temperature=(20, 90))
def viscosity_from_saybolt(seconds, temperature):
    viscosity = seconds / 4.6324
    wanted = seconds / (1 + 0.000061 * (temperature * 1.8 + 32 - 100))
    for _ in range(6):  # Newton's steps, the slope from a difference
        value = saybolt(viscosity, 37.7777777777777777)
        slope = (saybolt(viscosity * (1 + 1e-7), 37.7777777777777777) - value) / (1e-7 * viscosity)
        viscosity = viscosity - (value - wanted) / slope
    return viscosity


@relation()
def density_at_temperature(density, first, expansion, second):
    return density / (1 + expansion * (second - first))


@relation()
def relative_density(density, reference):
    return density / reference


@relation()
def density_from_relative(relative, reference):
    return relative * reference


@relation()
def density_from_api_gravity(gravity):
    return 999.016 * 141.5 / (gravity + 131.5)


@relation()
def api_gravity_from_density(density):
    return 141.5 * 999.016 / density - 131.5


@relation()
def kinematic_from_dynamic(viscosity, density):
    return viscosity / density * 1000


@relation()
def dynamic_from_kinematic(viscosity, density):
    return viscosity * density / 1000


@relation()
def slurry_density(liquid, solids, fraction):
    return 1 / (fraction / solids + (1 - fraction) / liquid)


@relation()
def slurry_volume_fraction(liquid, solids, fraction):
    return fraction / solids / (fraction / solids + (1 - fraction) / liquid)


@relation()
def slurry_mass_fraction(liquid, solids, fraction):
    return fraction * solids / (fraction * solids + (1 - fraction) * liquid)


@relation(altitude=(0, 5000))
def barometric_pressure(altitude):
    geopotential = 6356766 * altitude / (6356766 + altitude)
    return 1.01325 * (1 - 0.0065 / 288.15 * geopotential) ** (G / (0.0065 * 287.05287))


@relation()
def absolute_from_gauge(gauge, ambient):
    return gauge + ambient


@relation()
def gauge_from_absolute(absolute, ambient):
    return absolute - ambient


@relation()
def head_from_pressure(pressure, density):
    return pressure * 1e5 / (density * G)


@relation()
def pressure_from_head(head, density):
    return head * density * (G / 1e5)


@relation(first_temperature=(15, 25), second_temperature=(215, 225), temperature=(30, 200))
def density_two_point(first_temperature, first, second_temperature, second, temperature):
    return first + (second - first) * (temperature - first_temperature) / (second_temperature - first_temperature)
