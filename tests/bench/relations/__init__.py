"""The functions' relations as a competent user would write them with NumPy: whole columns, no checks, constants computed once.

A relation's parameters are the function's inputs in their order, words left out, in the units that bare numbers carry. Its decorator may give
the interval that a column is drawn from; else it is the record's example, 3 per cent either way. Of a function of words alone the parameter is the count of rows.
"""
import math

import numpy as np

G = 9.80665
RELATIONS = {}


class Relation:
    def __init__(self, compute, columns, once, given):
        self.compute, self.columns, self.once, self.given = compute, columns, once, given


def relation(once=(), given=None, **columns):
    """columns: (low, high) of an input by its parameter's name; once: inputs that are one number for all rows, the example's or
    that in given."""

    def keep(compute):
        RELATIONS.setdefault(compute.__name__, []).append(Relation(compute, columns, tuple(once), given or {}))
        return compute

    return keep
