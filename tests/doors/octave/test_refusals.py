"""What a person would give by mistake: Octave's own error with the library's whole sentence, and an identifier to tell them apart."""
import unittest

import octave

GOOD = ["1.013", "0.0234", "998.2", "2", "0.5"]


def npsh(**changed):
    given = dict(zip(("surface", "vapour", "density", "level", "friction"), GOOD))
    return f"cutwater.npsh_available ({', '.join({**given, **changed}.values())})"


CASES = {
    "gauge": (npsh(surface='"1.013 barg"'), "wrong_quantity", "absolute"),
    "below": (npsh(surface="-1"), "out_of_interval", "it must be above 0"),
    "nan": (npsh(level="NaN"), "not_finite", "liquid_level_m is no number"),
    "infinite": (npsh(level="Inf"), "not_finite", "liquid_level_m"),
    "left out": (npsh(vapour="[]"), "missing", "vapour_pressure_bara was not given"),
    "too few": ("cutwater.npsh_available (1.013, 0.0234)", "missing", "density_kgm3 was not given"),
    "too many": (npsh(friction="0.5, 1"), "wrong_count", "takes 5 inputs; 6 were given"),
    "truth value": (npsh(level="true"), "wrong_kind", "true or false"),
    "complex": (npsh(level="1i"), "wrong_kind", "a complex number"),
    "struct": (npsh(level="struct ()"), "wrong_kind", "neither a number nor a text"),
    "two texts": (npsh(level='["ab"; "cd"]'), "wrong_kind", "a text of several rows"),
    "unit of no table": (npsh(level='"2 smoots"'), "unknown_unit", "smoots"),
    "null character": (npsh(level='["5" char(0) "junk"]'), "bad_text", "null character"),
    "bad element": (npsh(level="[1 NaN 3 Inf]"), "not_finite", "2 of 4 elements refused; the first is element 2"),
    "shapes": (npsh(level="[1 2 3]", friction="[1 2]"), "contradiction", "1 rows and 2 columns"),
    "text in a list": (npsh(level='{1, "2 bara"}'), "wrong_quantity", "point 2"),
    "series of three dimensions": ("cutwater.curve_head (ones (2, 2, 2), [1 2], 1)", "wrong_kind", "flows_m3h"),
    "a block for a series": ("cutwater.curve_head ([1 2; 3 4], [1 2], 1)", "bad_series", "2 rows and 2 columns"),
    "an empty point": ('cutwater.curve_head ({0, [], 2}, [3 2 1], 1)', "bad_series", "point 2"),
    "a word that is none": ('cutwater.acceptance_limits ("9Z", "head", 50)', "unknown_word", "9Z"),
    "no function": ('cutwater.solve_for ("npsh_availble", "liquid_level", [], 5)', "unknown_function", "npsh_availble"),
    "no text": ("cutwater.convert_unit (1, 2, 3)", "wrong_kind", "from_unit must be a unit, as a text"),
}


class Refusals(unittest.TestCase):
    def test_each(self):
        answers = octave.answers((name, text) for name, (text, _, _) in CASES.items())
        for name, (text, status, words) in CASES.items():
            with self.subTest(name, call=text):
                verdict, *fields = answers[name]
                self.assertEqual(verdict, "error", fields)
                self.assertEqual(fields[0], "cutwater:" + status)
                self.assertIn(words, fields[1])

    def test_what_is_meant_otherwise_is_answered(self):
        same = [npsh(), npsh(surface="single (1.013) * 0 + 1.013"), npsh(surface='"1013 mbar(a)"'), npsh(level="int32 (2)"), npsh(level='"2000 mm"'),
                npsh(level="{2}"), npsh(level="2:2")]
        answers = octave.answers((str(i), text) for i, text in enumerate(same))
        for i, text in enumerate(same):
            with self.subTest(text):
                self.assertEqual(answers[str(i)][0], "ok", answers[str(i)])
                if i > 1:
                    self.assertAlmostEqual(octave.number(answers[str(i)][1]), octave.number(answers["0"][1]), 12)


if __name__ == "__main__":
    unittest.main()
