"""Levels, loss coefficients, nominal bores, emptying and filling."""
from . import G, math, np, relation


@relation()
def static_head_from_levels(suction, discharge, suction_pressure, discharge_pressure, density):
    return discharge - suction + (discharge_pressure - suction_pressure) / density * (1e5 / G)


SIZES = np.array([6, 8, 10, 15, 20, 25, 32, 40, 50, 65, 80, 90, 100, 125, 150, 200, 250, 300, 350, 400, 450, 500, 600.0])
OUTSIDE = np.array([10.3, 13.7, 17.1, 21.3, 26.7, 33.4, 42.2, 48.3, 60.3, 73, 88.9, 101.6, 114.3, 141.3, 168.3, 219.1, 273, 323.8, 355.6,
                    406.4, 457, 508, 610])
SCHEDULE_40 = np.array([1.73, 2.24, 2.31, 2.77, 2.87, 3.38, 3.56, 3.68, 3.91, 5.16, 5.49, 5.74, 6.02, 6.55, 7.11, 8.18, 9.27, 10.31, 11.13,
                        12.7, 14.27, 15.09, 17.48])


@relation()
def nominal_pipe_bore(size):  # schedule 40
    place = np.searchsorted(SIZES, size)
    outside, wall = OUTSIDE[place], SCHEDULE_40[place]
    return outside - 2 * wall, outside, wall


@relation(reynolds=(1e3, 1e6))
def fitting_loss_coefficient(reynolds, bore):  # 90 deg elbow, standard, flanged or welded
    return 800 / reynolds + 0.25 * (1 + 25.4 / bore)


@relation(reynolds=(1e3, 1e6))
def fitting_loss_coefficient_by_size(reynolds, size):
    return 800 / reynolds + 0.091 * (1 + 4 * (np.floor(4 * size / 25) / 4) ** -0.3)


def of_jet(share, widening):
    return 0.0696 * share * widening * widening + (widening - 1) ** 2


@relation(radius=(0, 20))
def entrance_loss_coefficient(bore, radius):
    r = np.minimum(radius / bore, 1)
    narrowing = 1 - 0.30 * np.sqrt(r) - 0.70 * r
    square = narrowing * narrowing
    return of_jet(1 - 0.569 * r, 1 + 0.622 * square * square)


@relation(wall=(0, 8))
def projecting_entrance_loss_coefficient(bore, wall):
    t = np.minimum(wall / bore, 0.05)
    return 1.12 + t * (t * (80 * t + 216) - 22)


@relation()
def enlargement_loss_coefficient(bore, larger):
    ratio = bore / larger
    return (1 - ratio * ratio) ** 2


@relation()
def contraction_loss_coefficient(larger, bore):
    ratio = bore / larger
    square = ratio * ratio
    fifth = square * square * ratio
    return of_jet(1 - fifth, 1 + 0.622 * (1 - 0.215 * square - 0.785 * fifth))


@relation()
def loss_coefficient_at_bore(coefficient, bore, other):
    ratio = other / bore
    square = ratio * ratio
    return coefficient * (square * square)


@relation()
def hazen_williams_head(flow, bore, length, roughness):
    return 10.666829500036352 * length * (flow / 3600 / roughness) ** 1.852 / (bore / 1000) ** 4.871


@relation()
def tank_discharge_time(surface, first, last, bore, coefficient):
    return surface / (bore * bore) / coefficient * (np.sqrt(first) - np.sqrt(last)) * (4e6 / math.pi * math.sqrt(2 / G))


@relation(outflow=(0, 1))
def filling_time(volume, inflow, outflow):
    return 60 * volume / (inflow - outflow)
