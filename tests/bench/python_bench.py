"""A call from Python against the same relation written by hand, with NumPy and with Pint. Ratios in one run; not a test."""
import timeit

import numpy as np
import pint

import cutwater

units = pint.UnitRegistry()
Q = units.Quantity


def by_hand(surface, vapour, density, level, friction):
    return (surface - vapour) * 1e5 / (density * 9.80665) + level - friction


GRAVITY = Q(9.80665, "m/s**2")


def with_pint(surface, vapour, density, level, friction):
    return ((surface - vapour) / (density * GRAVITY) + level - friction).to("m")


def least(call, number, repeat=30, **names):
    """Seconds of the quickest of many short runs, a call."""
    return min(timeit.repeat(call, globals=names, number=number, repeat=repeat)) / number


def line(what, ours, theirs):
    print(f"{what:<66} {ours * 1e9:12.0f} {theirs * 1e9:12.0f} ns  ratio {ours / theirs:8.3f}")


ours = least("f(1.01, 0.02, 998.0, 2.0, 0.5)", 20000, f=cutwater.npsh_available)
line("npsh_available: scalar call / hand-written Python function", ours, least("f(1.01, 0.02, 998.0, 2.0, 0.5)", 20000, f=by_hand))
quantities = [Q(1.01, "bar"), Q(0.02, "bar"), Q(998.0, "kg/m**3"), Q(2.0, "m"), Q(0.5, "m")]
line("npsh_available: scalar call / the same with Pint", ours, least("f(*a)", 50, f=with_pint, a=quantities))

rows = 1_000_000
rng = np.random.default_rng(1)
columns = [rng.uniform(low, high, rows) for low, high in ((0.9, 1.1), (0.01, 0.2), (900, 1100), (-3, 3), (0, 1))]
out = np.empty(rows)
arrays = least("f(*a)", 1, 15, f=cutwater.npsh_available, a=columns)
line("npsh_available: 1e6 rows / NumPy expression", arrays, least("f(*a)", 1, 15, f=by_hand, a=columns))
in_place = least("rows(f, *a, out=out)", 1, 15, rows=cutwater.rows, f=cutwater.npsh_available, a=columns, out=out)
line("npsh_available: 1e6 rows into a ready array / NumPy expression", in_place, least("f(*a)", 1, 15, f=by_hand, a=columns))
two = least("rows(f, *a, out=out, threads=2)", 1, 15, rows=cutwater.rows, f=cutwater.npsh_available, a=columns, out=out)
line("npsh_available: 1e6 rows on two threads / NumPy expression", two, least("f(*a)", 1, 15, f=by_hand, a=columns))


def friction_by_numpy(flow, bore, length, roughness, viscosity):
    d = bore / 1000
    v = flow / 3600 / (np.pi / 4 * d**2)
    re = v * d / (viscosity * 1e-6)
    x = np.full_like(flow, 8.0)
    for _ in range(12):
        x = -2 * np.log10(roughness / bore / 3.7 + 2.51 / re * x)
    f = np.where(re > 2000, 1 / x**2, 64 / re)
    return f * length / d * v**2 / (2 * 9.80665)


flow = rng.uniform(10, 300, 100_000)
line("pipe_friction_head: 1e5 rows / NumPy, 12 fixed-point steps", least("f(q, 150.0, 200.0, 0.0457, 1.0034)", 1, 10, f=cutwater.pipe_friction_head, q=flow),
     least("f(q, 150.0, 200.0, 0.0457, 1.0034)", 1, 10, f=friction_by_numpy, q=flow))
