"""What a call through the door costs beside the same formula written by hand: run it on a quiet machine. Not a test."""
import timeit

import numpy as np

import cutwater


def by_hand(surface_pressure_bara, vapour_pressure_bara, density_kgm3, liquid_level_m, friction_head_m):
    return (surface_pressure_bara - vapour_pressure_bara) * 1e5 / (density_kgm3 * 9.80665) + liquid_level_m - friction_head_m


def cost(call, number=2000, repeat=200, **names):
    """Nanoseconds, the least of many short runs."""
    return min(timeit.repeat(call, globals=names, number=number, repeat=repeat)) / number * 1e9


POSITION = "f(1.0, 0.02, 998.0, 2.0, 0.5)"
NAME = "f(surface_pressure_bara=1.0, vapour_pressure_bara=0.02, density_kgm3=998.0, liquid_level_m=2.0, friction_head_m=0.5)"
door = cutwater.npsh_available
for title, call in (("by position", POSITION), ("by name", NAME)):
    ours, theirs = cost(call, f=door), cost(call, f=by_hand)
    print(f"{title:24} {ours:8.0f} ns, by hand {theirs:8.0f} ns: {ours / theirs:.2f}")
print(f"{'integers':24} {cost('f(1, 0, 998, 2, 1)', f=door):8.0f} ns")
print(f"{'a text with its unit':24} {cost('f(' + repr('100 kPa abs') + ', 0.02, 998.0, 2.0, 0.5)', f=door):8.0f} ns")
for rows in (100, 10_000, 1_000_000):
    column, number = np.linspace(1, 2, rows), max(2, 20_000 // rows)
    call = "f(x, 0.02, 998.0, 2.0, 0.5)"
    ours, theirs = (cost(call, number, 20, f=f, x=column) / rows for f in (door, by_hand))
    print(f"{f'{rows} rows':24} {ours:8.2f} ns a row, NumPy by hand {theirs:8.2f} ns: {ours / theirs:.2f}")
