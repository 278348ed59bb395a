"""What standards set, by words."""
from . import np, relation


@relation()
def standard_limit(rows):  # ISO 9908, shaft deflection at the seal
    return np.full(rows, 0.05), np.zeros(rows), np.zeros(rows), np.full(rows, 3.0), np.zeros(rows)


@relation(value=(20000, 31000))
def standard_check(value):  # ISO 13709, bearing life, rated
    rows = len(value)
    met = np.where(value >= 25000, 0.0, 1.0)
    return met, np.full(rows, 25000.0), np.ones(rows), np.ones(rows), np.full(rows, 13.0), np.ones(rows)
