"""Density and viscosity of solutions, sea water, glycols, suspensions."""
from . import G, math, np, relation

DENSITY = (319.020509469838, 528.592358475315, -0.102197896602724, 0.000350420706415566, 765.970470238438)  # caustic soda
VISCOSITY = (448.457566713375, 0.00871452408983102, -431.97212334697, 0.0160144202049452, 104.011738670148, 4.64493684488816)
SOLUTION = dict(share=(0.05, 0.45), temperature=(15, 65))


@relation(**SOLUTION)
def solution_density(share, temperature):
    t = temperature
    water = (((((-2.8054253e-10 * t + 1.0556302e-7) * t - 4.6170461e-5) * t - 0.0079870401) * t + 16.945176) * t + 999.83952) / (1 + 0.01687985 * t)
    a, b, c, d, e = DENSITY
    warm = t + e
    apparent = (a * share + b) * np.exp(1e-6 * warm * warm) / (share + c + d * t)
    return 1 / ((1 - share) / water + share / apparent)


@relation(**SOLUTION)
def solution_dynamic_viscosity(share, temperature):
    t = temperature
    a, b, c, d, e, f = VISCOSITY
    solute = (a * share**b + c) / (d * t + 1) - np.log(e * share**f + 1)
    return np.exp((1 - share) * np.log((t + 246) / ((0.05594 * t + 5.2842) * t + 137.37)) + share * solute)


SEA = dict(salinity=(0.01, 0.1), temperature=(5, 60))


@relation(**SEA)
def sea_water_density(salinity, temperature):
    t, s = temperature, salinity
    water = 999.9 + t * (2.034e-2 + t * (-6.162e-3 + t * (2.261e-5 - t * 4.657e-8)))
    return water + s * (802.0 + t * (-2.001 + t * (1.677e-2 + t * -3.060e-5)) - 1.613e-5 * s * t * t)


@relation(**SEA)
def sea_water_dynamic_viscosity(salinity, temperature):
    t, s = temperature, salinity
    water = 4.2844e-5 + 1 / (0.157 * (t + 64.993) ** 2 - 91.296)
    a = 1.541 + t * (1.998e-2 - t * 9.52e-5)
    b = 7.974 + t * (-7.561e-2 + t * 4.724e-4)
    return 1000 * water * (1 + s * (a + b * s))


# Ethylene glycol: coefficients by powers of the share, each by powers of the temperature
COUNTS = (4, 4, 4, 3, 2, 1)
MEAN_SHARE, MEAN_TEMPERATURE = 30.8462, 31.728
FREEZING = (-1.5250e+01, -1.5660e-06, -2.2780e-07, 2.1690e-09, -8.0800e-01, -1.3390e-06, 2.0470e-08, -2.7170e-11, -1.3340e-02,
            6.3220e-08, 2.3730e-10, -2.1830e-12, -7.2930e-05, 1.7640e-09, -2.4420e-11, 1.0060e-06, -7.6620e-11, 1.1400e-09)
GLYCOL_DENSITY = (1.0340e+03, -4.7810e-01, -2.6920e-03, 4.7250e-06, 1.3110e+00, -6.8760e-03, 4.8050e-05, 1.6900e-08, 7.4900e-05,
                  7.8550e-05, -3.9950e-07, 4.9820e-09, -1.0620e-04, 1.2290e-06, -1.1530e-08, -9.6230e-07, -7.2110e-08, 4.8910e-08)
GLYCOL_VISCOSITY = (4.7050e-01, -2.5500e-02, 1.7820e-04, -7.6690e-07, 2.4710e-02, -1.1710e-04, 1.0520e-06, -1.6340e-08, 3.3280e-06,
                    1.0860e-06, 1.0510e-08, -6.4750e-10, 1.6590e-06, 3.1570e-09, 4.0630e-10, 3.0890e-08, 1.8310e-10, -1.8650e-09)
GLYCOL_HEAT = (3.7370e+03, 2.9300e+00, -4.6750e-03, -1.3890e-05, -1.7990e+01, 1.0460e-01, -4.1470e-04, 1.8470e-07, -9.9330e-02,
               3.5160e-04, 5.1090e-06, -7.1380e-08, 2.6100e-03, -1.1890e-06, -1.6430e-07, 1.5370e-05, -4.2720e-07, -1.6180e-06)


def horner(coefficients, x):
    value = coefficients[-1]
    for c in reversed(coefficients[:-1]):
        value = value * x + c
    return value


def of_glycol(coefficients, share, temperature):
    x, y = 100 * share - MEAN_SHARE, temperature - MEAN_TEMPERATURE
    rows, start = [], 0
    for count in COUNTS:
        rows.append(horner(coefficients[start:start + count], y))
        start += count
    return horner(rows, x)


MIXED = dict(share=(0.1, 0.5), temperature=(0, 60))


@relation(share=(0.1, 0.5))
def glycol_freezing_point(share):
    return of_glycol(FREEZING, share, 2 * MEAN_TEMPERATURE)  # its own second variable stands at the mean


@relation(**MIXED)
def glycol_density(share, temperature):
    return of_glycol(GLYCOL_DENSITY, share, temperature)


@relation(**MIXED)
def glycol_dynamic_viscosity(share, temperature):
    return np.exp(of_glycol(GLYCOL_VISCOSITY, share, temperature))


@relation(**MIXED)
def glycol_specific_heat(share, temperature):
    return 0.001 * of_glycol(GLYCOL_HEAT, share, temperature)


@relation(fraction=(0.05, 0.4))
def suspension_viscosity(liquid, fraction):
    return liquid * (1 + fraction * (2.5 + 10.05 * fraction) + 0.00273 * np.exp(16.6 * fraction))


PERCENT, ACID_A, ACID_B = np.array([
    (74, 1.92395, -0.000908778), (75, 1.93904, -0.000920012), (76, 1.95438, -0.000932184), (78, 1.98574, -0.000959514),
    (79, 2.00151, -0.000974043), (80, 2.01703, -0.000988264), (81, 2.03234, -0.00100258), (82, 2.04716, -0.00101634),
    (83, 2.06082, -0.00102762), (84, 2.07363, -0.00103757), (85, 2.08461, -0.00104337), (86, 2.09386, -0.00104563),
    (87, 2.10143, -0.00104458), (88, 2.10764, -0.00104144), (89, 2.11283, -0.00103719), (90, 2.11671, -0.00103089),
    (91, 2.11938, -0.00102262), (92, 2.12125, -0.00101355), (93, 2.1219, -0.00100249), (94, 2.12723, -0.00100934),
    (95, 2.12654, -0.000998299), (96, 2.12621, -0.000990961), (97, 2.12561, -0.000985845), (98, 2.12494, -0.000984529),
    (100, 2.12093, -0.000989315)]).T.copy()


@relation(fraction=(0.75, 0.99))
def strong_sulphuric_acid_density(fraction, temperature):
    percent, kelvin = 100 * fraction, temperature + 273.15
    i = np.searchsorted(PERCENT, percent)
    along = (percent - PERCENT[i - 1]) / (PERCENT[i] - PERCENT[i - 1])
    low, high = ACID_A[i - 1] + ACID_B[i - 1] * kelvin, ACID_A[i] + ACID_B[i] * kelvin
    return 1000 * (low + along * (high - low))


LYE_A = np.array([-113.93947, 209.82305, 494.77153, 6860.8330, 2676.6433, -21740.328, -34750.872, -20122.157, -4102.9890])
LYE_B = np.array([16.240074, -11.864008, -223.47305, -1650.3997, -5997.3118, -12318.744, -15303.153, -11707.480, -5364.9554, -1338.5412,
                  -137.96889])
LYE_C = np.array([-226.80157, 293.17155, 5081.8791, 36752.126, 131262.00, 259399.54, 301696.22, 208617.90, 81774.024, 15648.526, 906.29769])


@relation(share=(0.05, 0.6), temperature=(75, 140))
def caustic_soda_vapour_pressure(share, temperature):
    x = np.log(1 - share)
    a, b, c = (np.polyval(of[::-1], x) for of in (LYE_A, LYE_B, LYE_C))
    return np.exp((a + b * temperature) / (temperature - c)) / 100


LYE_DENSITY = [(5007.2279636, -25131.164248, 74107.692582, -104657.48684, 69821.773186, -18145.911810),
               (-64.786269079, 525.34360564, -1608.4471903, 2350.9753235, -1660.9035108, 457.6437435),
               (0.24436776978, -1.9737722344, 6.04601497138, -8.9090614947, 6.37146769397, -1.7816083111)]


@relation()
def strong_caustic_soda_density(share, temperature):
    x = np.sqrt(1 - share)
    b = [np.polyval(of[::-1], x) for of in LYE_DENSITY]
    return b[0] + (b[1] + b[2] * temperature) * temperature
