"""What an audit keeps of the readings: for each pump and each twelfth of the year, sums that do not depend on the order of adding.

A float's sum depends on the order, and so on how many workers there are. What is summed here is each row's value in steps of 2^-20, a
whole number: the sum is exact, and the same in every engine.
"""
import numpy as np

STEP = 2.0**20
PERIODS = 12
PRICE = 0.11  # a kWh, in the works' own currency
SUMMED = ("flow_ratio", "from_best", "head_change", "power_change", "efficiency", "efficiency_lost", "suction_change", "npsh_margin",
          "lost_kW", "head", "shaft_kW", "density", "head_change_squared", "power_change_squared")
COUNTED = ("running", "missing", "refused", "outside", "short_of_npsh")
FIELDS = ("pump", "period") + COUNTED + SUMMED + ("least_npsh_margin",)


def whole(values):
    """Values as whole numbers of steps, to the nearest, halves to the even one, as the database rounds."""
    return np.rint(np.where(np.isnan(values), 0.0, values) * STEP).astype(np.int64)
