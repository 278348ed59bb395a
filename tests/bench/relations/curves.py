"""Curves and fits by the points of the records' examples, prepared once as a caller of SciPy and NumPy would."""
import numpy as np
from scipy.interpolate import PchipInterpolator

from . import relation

HEAD = PchipInterpolator([0, 50, 100], [40, 38, 30])
HEAD_SLOPE = HEAD.derivative()
POWER = PchipInterpolator([0, 50, 100], [4, 6, 7])
EFFICIENCY = PchipInterpolator([0, 50, 100], [0, 0.6, 0.7])
NPSH3 = PchipInterpolator([20, 50, 100], [2, 2.5, 5])
FIT = np.polyfit([0, 1, 2, 3], [1, 3, 7, 13], 2)


@relation(x=(0, 100))
def curve_value(x):
    return HEAD(x)


@relation(x=(0, 100))
def curve_slope(x):
    return HEAD_SLOPE(x)


@relation(flow=(0, 100))
def curve_head(flow):
    return HEAD(flow)


@relation(flow=(0, 100))
def curve_power(flow):
    return POWER(flow)


@relation(flow=(0, 100))
def curve_efficiency(flow):
    return EFFICIENCY(flow)


@relation(flow=(20, 100))
def curve_npsh3(flow):
    return NPSH3(flow)


@relation(x=(0, 3))
def fitted_value(degree, x):
    return np.polyval(FIT, x)
