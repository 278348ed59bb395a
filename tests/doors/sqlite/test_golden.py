"""Every golden case through SQLite, as a value and as a table: the same bits as the C API, and the same refusals."""
import json
import sqlite3
import struct
import unittest

import database
import golden


def bits(number):
    return struct.pack(">d", number)


def said_in_sql(case):
    """SQL has no NaN: binding one gives NULL."""
    return not any(number != number for given in case.arguments for number in (given if isinstance(given, list) else [given]))


class Golden(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.db = database.connect()
        cls.cases = list(golden.cases())
        cls.wanted = golden.bits()

    def same(self, got, wanted):
        if isinstance(wanted, str):
            self.assertEqual(got, wanted)
        elif isinstance(wanted, list):
            self.assertEqual([bits(number) for number in got], [bits(number) for number in wanted])
        else:
            self.assertEqual(bits(got), bits(wanted))

    def as_value(self, case, results, wanted):
        got = database.value(self.db, case.function, case.arguments)
        if len(results) > 1:
            got = json.loads(got)
            self.assertEqual(list(got), [result["name"] for result in results])
            got = list(got.values())
        else:
            got = [json.loads(got) if results[0]["kind"] == "series" else got]
        for one, other in zip(got, wanted, strict=True):
            self.same(one, other)

    def as_table(self, case, results, wanted):
        names, rows = database.rows(self.db, case.function, case.arguments)
        self.assertEqual(names, [result["name"] for result in results])
        self.assertEqual(len(rows), max([1] + [len(column) for column in wanted if isinstance(column, list)]))
        for column, other in zip(zip(*rows), wanted, strict=True):
            if isinstance(other, list):
                self.same(column[:len(other)], other)
                self.assertEqual(set(column[len(other):]) - {None}, set())
            else:
                for one in column:
                    self.same(one, other)

    def test_values(self):
        seen = 0
        for case in self.cases:
            if case.refused:
                continue
            with self.subTest(case.call, where=case.where):
                results, wanted = database.FUNCTIONS[case.function]["results"], self.wanted[case.where][1]
                self.as_value(case, results, wanted)
                self.as_table(case, results, wanted)
                (checked,) = database.rows(self.db, case.function + "_checked", case.arguments)[1][:1]
                self.assertEqual(checked[len(results):], (None, None, None))
                seen += 1
        self.assertGreater(seen, 1000)

    def test_refusals(self):
        seen = 0
        for case in self.cases:
            if not case.refused or not said_in_sql(case):
                continue
            with self.subTest(case.call, where=case.where):
                _, status, argument, _ = self.wanted[case.where]
                results = database.FUNCTIONS[case.function]["results"]
                ((*values, sentence, told, blamed),) = database.rows(self.db, case.function + "_checked", case.arguments)[1]
                self.assertEqual(values, [None] * len(results))
                self.assertEqual(told, database.STATUS[status])
                self.assertTrue(sentence.startswith(case.function + ": "), sentence)
                if argument >= 0:
                    self.assertEqual(blamed, database.FUNCTIONS[case.function]["inputs"][argument]["name"])
                if any(given is None and "default" not in input for given, input in
                       zip(case.arguments, database.FUNCTIONS[case.function]["inputs"])):
                    self.assertIsNone(database.value(self.db, case.function, case.arguments))
                    continue
                for call in (database.value, database.rows):
                    with self.assertRaises(sqlite3.OperationalError) as raised:
                        call(self.db, case.function, case.arguments)
                    self.assertEqual(str(raised.exception), sentence)
                seen += 1
        self.assertGreater(seen, 300)


if __name__ == "__main__":
    unittest.main()
