"""Anything given for anything: an answer that is finite, or an exception of the right kind; the same each time."""
import decimal
import math
import random
import unittest

import numpy as np

import cutwater

POOL = [0.0, -0.0, 1.0, -1.0, 1e-300, 1e300, 5e-324, math.inf, math.nan, 0.5, 25.0, 100.0, 1450.0, 998.0, 2, -7, 10**30, 10**400, True, None, "", "1",
        "1 bara", "1 barg", "72 %", "5 m", "20 degC", "1e400 m", "x" * 3000, "°C", "\ud800", "1\0", b"1", {}, [], [1.0], [1.0, 2.0, 3.0], [3.0, 2.0, 1.0],
        [1.0, None], ["1 m", 2], [[1.0], [2.0]], np.zeros(0), np.ones((2, 3)), np.array(5.0), np.array([np.nan, 1.0]), np.float32(3), np.arange(5),
        np.arange(6.0)[::-2], decimal.Decimal("1.5"), 3j, object(), np.ma.masked, np.ma.masked_array([2.0, 5.0], [True, False]), (1.0, 2.0, 3.0), range(3), np.array(["1 m", "x"])]


def finite(answer):
    if isinstance(answer, tuple):
        return all(map(finite, answer))
    if isinstance(answer, np.ma.MaskedArray):  # a missing input's result is missing, and says so
        return finite(answer.compressed())
    if isinstance(answer, np.ndarray):
        return answer.dtype == object or bool(np.isfinite(answer).all())
    return isinstance(answer, str) or math.isfinite(answer)


def outcome(function, arguments):
    try:
        return repr(function(*arguments))
    except (TypeError, ValueError) as error:  # Refused is a ValueError
        return type(error), str(error)


class Anything(unittest.TestCase):
    def test_anything(self):
        chance = random.Random(20240229)
        answered = 0
        for function in cutwater.catalogue()["functions"]:
            call = getattr(cutwater, function["name"])
            good = list(function["example"]["inputs"].values())
            for _ in range(150):
                arguments = [chance.choice(POOL) if chance.random() < 0.3 else value for value in good]
                if chance.random() < 0.02:
                    arguments.append(1.0)
                with self.subTest(function["name"], arguments=repr(arguments)[:300]):
                    try:
                        answer = call(*arguments)
                    except (TypeError, ValueError) as error:
                        self.assertTrue(str(error))
                    else:
                        answered += 1
                        self.assertTrue(finite(answer), answer)
                    self.assertEqual(outcome(call, arguments), outcome(call, arguments))
        self.assertGreater(answered, 100)


if __name__ == "__main__":
    unittest.main()
