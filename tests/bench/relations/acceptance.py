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
