"""Every golden case through PostgreSQL, as numbers, as texts and mixed: the same bits as the C API, and the same refusals."""
import struct
import unittest

import psycopg2

import golden
import server


def bits(number):
    return struct.pack(">d", number)


def typed_as_declared(case):
    """PostgreSQL itself refuses an argument of another type than the declared one, and too few of them."""
    inputs = server.FUNCTIONS[case.function]["inputs"]
    least = sum("default" not in input for input in inputs)
    return least <= len(case.arguments) <= len(inputs) and all(
        value is None or isinstance(value, list) == (input["kind"] == "series") and (input["kind"] != "choice" or isinstance(value, str))
        for value, input in zip(case.arguments, inputs))


class Golden(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.db = server.the_server().database("golden").cursor()
        cls.cases = [case for case in golden.cases() if typed_as_declared(case)]
        cls.wanted = golden.bits()

    def row(self, name, arguments, texts=None):
        text, values = server.call(name, arguments, texts)
        self.db.execute(f"SELECT * FROM {text}", values)
        (row,) = self.db.fetchall()
        return row

    def same(self, got, wanted):
        for one, other in zip(got, wanted, strict=True):
            if isinstance(other, str):
                self.assertEqual(one, other)
            elif isinstance(other, list):
                self.assertEqual([bits(number) for number in one], [bits(number) for number in other])
            else:
                self.assertEqual(bits(one), bits(other))

    def mixed(self, case):
        """The first quantity as a text, the others as they are; nothing where there are no two."""
        text, values = server.call(case.function, case.arguments, False)
        inputs = server.FUNCTIONS[case.function]["inputs"]
        places = [i for i, input in enumerate(inputs[:len(values)]) if input["kind"] not in ("choice", "series") and values[i] is not None]
        if len(places) < 2:
            return None
        marks = text[text.index("(") + 1:-1].split(", ")
        marks[places[0]] = "%s::text"
        values[places[0]] = server.as_text(values[places[0]])
        self.db.execute(f"SELECT * FROM {case.function}({', '.join(marks)})", values)
        return self.db.fetchone()

    def test_values(self):
        seen = mixed = 0
        for case in self.cases:
            if case.refused:
                continue
            with self.subTest(case.call, where=case.where):
                wanted = self.wanted[case.where][1]
                self.same(self.row(case.function, case.arguments), wanted)
                results = len(server.FUNCTIONS[case.function]["results"])
                checked = self.row(case.function + "_checked", case.arguments)
                self.same(checked[:results], wanted)
                self.assertEqual(checked[results:], (None, None, None))
                if not server.texts_needed(case.arguments, server.FUNCTIONS[case.function]["inputs"]):
                    self.same(self.row(case.function, case.arguments, True), wanted)
                    again = self.mixed(case)
                    if again:
                        self.same(again, wanted)
                        mixed += 1
                seen += 1
        self.assertGreater(seen, 1000)
        self.assertGreater(mixed, 500)

    def test_refusals(self):
        seen = 0
        for case in self.cases:
            if not case.refused:
                continue
            with self.subTest(case.call, where=case.where):
                _, status, argument, _ = self.wanted[case.where]
                function = server.FUNCTIONS[case.function]
                *values, sentence, told, blamed = self.row(case.function + "_checked", case.arguments)
                self.assertEqual(values, [None] * len(function["results"]))
                self.assertEqual(told, server.STATUS[status])
                self.assertTrue(sentence.startswith(case.function + ": "), sentence)
                self.assertEqual(blamed, function["inputs"][argument]["name"] if argument >= 0 else blamed)
                if any(value is None and "default" not in input for value, input in zip(case.arguments, function["inputs"])):
                    self.assertEqual(set(self.row(case.function, case.arguments)), {None})
                    continue
                with self.assertRaises(psycopg2.Error) as raised:
                    self.row(case.function, case.arguments)
                self.assertEqual(raised.exception.pgcode, server.SQLSTATE[told])
                self.assertEqual(raised.exception.diag.message_primary, sentence)
                self.assertEqual(raised.exception.diag.column_name, blamed)
                seen += 1
        self.assertGreater(seen, 300)


if __name__ == "__main__":
    unittest.main()
