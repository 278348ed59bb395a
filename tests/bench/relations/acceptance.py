"""Tests and their uncertainty; a bore's flow from the curves."""
from . import G, math, np, relation


@relation(exponent=(1.3, 2))
def test_to_rated_speed(flow, head, power, npsh3, test_speed, rated_speed, test_density, rated_density, exponent):
    ratio = rated_speed / test_speed
    return flow * ratio, head * ratio**2, power * ratio * ratio * ratio * (rated_density / test_density), npsh3 * ratio**exponent


@relation()
def measurement_uncertainty(systematic, random):
    return np.hypot(systematic, random)


@relation()
def efficiency_uncertainty(flow, head, power, speed):
    return np.sqrt(flow**2 + head**2 + power**2 + speed**2)


@relation()
def flow_through_bore(bore, velocity):
    return np.pi / 4 * (bore / 1000) ** 2 * velocity * 3600


def tolerances(power):
    """1B, with the standard's rule for small pumps"""
    small = power <= 10
    efficiency = -(17 - power) / 100
    return (np.where(small, -0.10, -0.05), np.where(small, 0.10, 0.05), np.where(small, -0.08, -0.03), np.where(small, 0.08, 0.03),
            np.where(small, np.sqrt(0.0049 + efficiency * efficiency), 0.04), np.where(small, efficiency, -0.03))


@relation(power=(2, 60))
def acceptance_tolerances(power):
    return tolerances(power)


@relation(power=(2, 60))
def acceptance_limits(guaranteed, power):  # head
    small = power <= 10
    return guaranteed * np.where(small, 0.92, 0.97), guaranteed * np.where(small, 1.08, 1.03)


@relation(power=(2, 60))
def acceptance_margin(guaranteed, measured, power):  # head
    deviation = measured / guaranteed - 1
    wide = np.where(power <= 10, 0.08, 0.03)
    return deviation, np.minimum(deviation + wide, wide - deviation)


@relation()
def allowed_uncertainty(rows):  # grade 1, flow
    return np.full(rows, 2.0)
