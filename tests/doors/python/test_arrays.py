"""The array form: shapes, strides, storing in place, refused rows, threads."""
import threading
import time
import unittest

import numpy as np

import cutwater

npsh = cutwater.npsh_available
LEVELS = np.linspace(-3.0, 5.0, 7)


class Shapes(unittest.TestCase):
    def same(self, *columns):
        got = npsh(*columns)
        arrays = np.broadcast_arrays(*columns)
        wanted = np.array([npsh(*map(float, row)) for row in zip(*(a.ravel() for a in arrays))]).reshape(arrays[0].shape)
        self.assertEqual(got.dtype, np.float64)
        self.assertEqual(got.shape, wanted.shape)
        self.assertEqual(got.tobytes(), wanted.tobytes())

    def test_broadcast(self):
        self.same(1.0, 0.02, 998.0, LEVELS, 0.5)
        self.same(1.0, 0.02, np.array([[998.0], [950.0]]), LEVELS, 0.5)
        self.same(np.full((3, 1, 1), 1.0), 0.02, np.array([[998.0], [950.0]]), LEVELS, np.array([0.5]))
        self.same(1.0, 0.02, np.full((2, 0, 3), 998.0), 1.0, 0.5)

    def test_strides(self):
        table = np.arange(60.0).reshape(3, 4, 5) + 900
        for density in (table[::2], table[::-1, :, ::-2], table.transpose(2, 0, 1), np.asfortranarray(table), table[:, 1], table[0, 0, 3:2:-1],
                        np.broadcast_to(table[0, 0], (4, 5)), table.astype(">f8"), table.astype(np.float32), table.astype(int)):
            self.same(1.0, 0.02, density, 2.0, 0.5)
        packed = np.zeros(5, dtype=[("flag", "i4"), ("density", "f8"), ("more", "i2")])
        packed["density"] = 998
        self.same(1.0, 0.02, packed["density"], np.arange(5), 0.5)
        aligned = np.zeros(5, dtype=[("flag", "f8"), ("density", "f8"), ("more", "f8")])
        aligned["density"] = 998
        self.same(1.0, 0.02, aligned["density"], np.arange(5), 0.5)

    def test_many_rows(self):
        random = np.random.default_rng(1)
        self.same(random.uniform(1, 2, 3001), random.uniform(0, 1, 3001), random.uniform(800, 1000, 6002)[::2], LEVELS[0], random.uniform(0, 1, 3001))

    def test_no_rows(self):
        for empty in ([], np.zeros(0), np.zeros((0, 3))):
            self.assertEqual(npsh(1.0, 0.02, empty, 2.0, 0.5).shape, np.shape(empty))
        self.assertEqual(npsh(1.0, [0.02], [], 2.0, 0.5).shape, (0,))

    def test_single(self):
        self.assertIs(type(npsh(np.array(1.0), 0.02, 998.0, 2.0, 0.5)), float)
        self.assertEqual(npsh([1.0], 0.02, 998.0, 2.0, 0.5).shape, (1,))

    def test_shapes_that_do_not_go_together(self):
        with self.assertRaisesRegex(ValueError, r"density_kgm3 \(2,\), liquid_level_m \(7,\)"):
            npsh(1.0, 0.02, [998, 999], LEVELS, 0.5)


class Refused(unittest.TestCase):
    def test_raises(self):
        densities = np.array([[998.0, -1.0], [998.0, np.nan]])
        with self.assertRaises(cutwater.Refused) as caught:
            npsh(1.0, 0.02, densities, 2.0, 0.5)
        refused = caught.exception
        self.assertEqual((refused.element, refused.refused_rows, refused.argument, refused.value), (1, 2, 2, -1.0))
        self.assertIn("2 of 4 rows", str(refused))

    def test_rows(self):
        densities = np.array([[998.0, -1.0], [998.0, np.nan], [0.0, 997.0]])
        for given in (densities, np.asfortranarray(densities), densities[:, ::-1][:, ::-1]):
            results, mask, first = cutwater.rows(npsh, 1.0, 0.02, given, 2.0, friction_head_m=0.5)
            self.assertEqual(mask.tolist(), [[False, True], [False, True], [True, False]])
            self.assertEqual(np.isnan(results).tolist(), mask.tolist())
            self.assertEqual(results[0, 0], npsh(1.0, 0.02, 998.0, 2.0, 0.5))
            self.assertEqual((first.element, first.refused_rows), (1, 3))

    def test_threads(self):
        levels = np.linspace(-3, 5, 300_001)
        levels[[123_456, 200_000]] = np.nan
        one, many = (cutwater.rows(npsh, 1.0, 0.02, 998.0, levels, 0.5, threads=n) for n in (1, -1))
        self.assertEqual(one.results.tobytes(), many.results.tobytes())
        self.assertEqual(np.flatnonzero(many.refused).tolist(), [123_456, 200_000])
        self.assertEqual((many.first.element, many.first.refused_rows), (123_456, 2))

    def test_first_is_counted_over_every_run(self):
        densities = np.full((700, 3), 998.0)
        densities[650, 2] = -1
        given = np.pad(densities, ((0, 0), (0, 1)))[:, :3]  # no one stride leads through it: a run of three rows at a time
        self.assertEqual(cutwater.rows(npsh, 1.0, 0.02, given, 2.0, 0.5).first.element, 650 * 3 + 2)
        mask = cutwater.rows(npsh, 1.0, 0.02, given, 2.0, 0.5).refused
        self.assertEqual(np.argwhere(mask).tolist(), [[650, 2]])

    def test_rows_of_nothing_refused(self):
        answer = cutwater.rows("npsh_available", 1.0, 0.02, 998.0, LEVELS, 0.5)
        self.assertIsNone(answer.first)
        self.assertFalse(answer.refused.any())
        self.assertEqual(answer.results.tobytes(), npsh(1.0, 0.02, 998.0, LEVELS, 0.5).tobytes())

    def test_rows_of_single_numbers(self):
        answer = cutwater.rows(npsh, 1.0, 0.02, 998.0, 2.0, 0.5)
        self.assertEqual((answer.results, answer.refused), (npsh(1.0, 0.02, 998.0, 2.0, 0.5), False))
        answer = cutwater.rows(npsh, 1.0, 0.02, -998.0, 2.0, 0.5)
        self.assertTrue(np.isnan(answer.results) and answer.refused)
        self.assertEqual(answer.first.refused_rows, 1)

    def test_wrong_calls(self):
        for wrong in (lambda: cutwater.rows(npsh, 1, 2, 3, 4, 5, 6), lambda: cutwater.rows(npsh, 1, 2, nothing=3),
                      lambda: cutwater.rows(npsh, 1, surface_pressure_bara=3)):
            self.assertRaises(TypeError, wrong)
        self.assertRaises(LookupError, cutwater.rows, "no_such", 1)
        self.assertRaises(LookupError, cutwater.rows, len, 1)
        self.assertRaises(cutwater.Refused, cutwater.rows, npsh, "no number", 0.02, 998.0, LEVELS, 0.5)


class InPlace(unittest.TestCase):
    def check(self, levels, out):
        wanted = npsh(1.0, 0.02, 998.0, levels.copy(), 0.5)
        answer = cutwater.rows(npsh, 1.0, 0.02, 998.0, levels, 0.5, out=out)
        self.assertIs(answer.results, out)
        self.assertEqual(out.tolist(), wanted.tolist())

    def test_out(self):
        self.check(LEVELS, np.empty(7))
        self.check(LEVELS, np.empty(14)[::2])
        self.check(np.tile(LEVELS, (3, 1)), np.empty((7, 3)).T)

    def test_same_array(self):
        levels = LEVELS.copy()
        self.check(levels, levels)
        table = np.asfortranarray(np.tile(LEVELS, (3, 1)))
        self.check(table, table)

    def test_overlapping_arrays(self):
        for size in (9, 3000):
            base = np.linspace(-3, 5, size)
            self.check(base[:-1], base[1:])
            base = np.linspace(-3, 5, size)
            self.check(base[1:], base[:-1])
            base = np.linspace(-3, 5, size)
            self.check(base, base[::-1])

    def test_refused_rows_are_judged_before_they_are_overwritten(self):
        densities = np.array([998.0, -7.0, 998.0])
        answer = cutwater.rows(npsh, 1.0, 0.02, densities, 2.0, 0.5, out=densities)
        self.assertEqual(answer.first.value, -7.0)
        self.assertEqual(np.isnan(densities).tolist(), [False, True, False])

    def test_wrong_outs(self):
        frozen = np.empty(7)
        frozen.flags.writeable = False
        for out in (np.empty(6), np.empty((1, 7)), np.empty(7, dtype=np.float32), np.empty(7, dtype=int), frozen, [0.0] * 7, (np.empty(7),) * 2,
                    np.empty(7, dtype=">f8"), np.zeros(7, dtype="i4,f8")["f1"]):
            with self.subTest(repr(out)), self.assertRaisesRegex(ValueError, "out"):
                cutwater.rows(npsh, 1.0, 0.02, 998.0, LEVELS, 0.5, out=out)


class Kinds(unittest.TestCase):
    """Words, series, several results and defaults in the array form, on whichever functions have them."""

    def setUp(self):
        self.functions = cutwater.catalogue()["functions"]

    def columns(self, function):
        """The example's inputs with every number as a column of three equal rows; None when it has no array form."""
        given = function["example"]["inputs"]
        if any(result["kind"] == "series" for result in function["results"]):
            return None
        kinds = {entry["name"]: entry["kind"] for entry in function["inputs"]}
        made = {name: np.full(3, value) if kinds[name] in ("quantity", "count") and isinstance(value, (int, float)) else value
                for name, value in given.items()}
        return made if any(isinstance(value, np.ndarray) for value in made.values()) else None

    def test_examples(self):
        seen = 0
        for function in self.functions:
            columns = self.columns(function)
            if columns is None:
                continue
            with self.subTest(function["name"]):
                call = getattr(cutwater, function["name"])
                one, many = call(**function["example"]["inputs"]), call(**columns)
                several = len(function["results"]) > 1
                self.assertIs(type(many), type(one) if several else np.ndarray)
                for result, a, b in zip(function["results"], one if several else [one], many if several else [many]):
                    self.assertEqual(b.dtype, object if result["kind"] == "word" else np.float64)
                    self.assertEqual(b.tolist(), [a] * 3)
                seen += 1
        self.assertGreater(seen, 0)

    def test_refused_words(self):
        for function in self.functions:
            columns = self.columns(function)
            if columns is None or not any(result["kind"] == "word" for result in function["results"]):
                continue
            with self.subTest(function["name"]):
                name = next(name for name, value in columns.items() if isinstance(value, np.ndarray))
                columns[name] = columns[name].astype(float)
                columns[name][1] = np.nan
                answer = cutwater.rows(function["name"], **columns)
                results = answer.results if len(function["results"]) > 1 else [answer.results]
                for result, column in zip(function["results"], results):
                    if result["kind"] == "word":
                        self.assertIsNone(column[1])
                        self.assertIn(column[0], result["choices"])
                self.assertEqual(answer.refused.tolist(), [False, True, False])

    def test_unknown_words_and_bad_series(self):
        for function in self.functions:
            columns = self.columns(function)
            if columns is None:
                continue
            for entry in function["inputs"]:
                if entry["kind"] == "choice" and entry["name"] in columns:
                    with self.subTest(function["name"]), self.assertRaises(cutwater.Refused) as caught:
                        cutwater.rows(function["name"], **{**columns, entry["name"]: "no such word"})
                    self.assertIs(caught.exception.status, cutwater.Status.UNKNOWN_WORD)


class Threads(unittest.TestCase):
    def test_interpreter_is_free_meanwhile(self):
        """Another thread runs again and again in the midst of an array call: it could not if the call held the interpreter."""
        ticks, stop = [], threading.Event()

        def tick():
            while not stop.is_set():
                ticks.append(time.perf_counter())
                time.sleep(0.0002)

        levels = np.zeros(4_000_000)
        out = np.empty_like(levels)
        seen = []
        thread = threading.Thread(target=tick)
        thread.start()
        try:
            for _ in range(15):
                begin = time.perf_counter()
                cutwater.rows(npsh, 1.0, 0.02, 998.0, levels, 0.5, out=out)
                end = time.perf_counter()
                quarter = (end - begin) / 4
                seen.append(sum(begin + quarter < t < end - quarter for t in ticks))
                ticks.clear()
        finally:
            stop.set()
            thread.join()
        self.assertGreaterEqual(sorted(seen)[len(seen) // 2], 3, seen)  # a chance tick on a busy machine does not make a median

    def test_calls_from_many_threads(self):
        wanted = npsh(1.0, 0.02, 998.0, LEVELS, 0.5)
        wrong = []

        def work():
            for _ in range(300):
                if npsh(1.0, 0.02, 998.0, LEVELS, 0.5).tobytes() != wanted.tobytes() or npsh(1.0, "0.02 bara", 998.0, 5, 0.5) != wanted[-1]:
                    wrong.append(1)
                try:
                    npsh(1.0, 0.02, [-998.0, 1], 5, 0.5)
                    wrong.append(2)
                except cutwater.Refused as refused:
                    if refused.value != -998.0:
                        wrong.append(3)

        threads = [threading.Thread(target=work) for _ in range(8)]
        for thread in threads:
            thread.start()
        for thread in threads:
            thread.join()
        self.assertEqual(wrong, [])


if __name__ == "__main__":
    unittest.main()
