"""cutwater.bas run by LibreOffice, whose Basic has a mode for Visual Basic: every function, answered and refused, with arrays for series,
arguments left out, and questions. Bridged, since that Basic calls no DLL here: cutwater_macro_call goes to the Calc add-in's functions,
and what loads the DLL or serves the C library's own functions is left out: CutwaterLoad, CutwaterSentence, the type, the declarations.
What cutwater_macro_call itself does is tested under Wine."""
import json
import os
import pathlib
import re
import unittest

import golden
from sheet import computed

PRODUCTS = pathlib.Path(os.environ["CUTWATER_PRODUCTS"])
WORK = os.environ["CUTWATER_WORK"]
CATALOGUE = json.loads((PRODUCTS / "catalogue.json").read_text(encoding="utf-8"))
BRIDGE = """
Private Function cutwater_macro_call(called As Variant, given As Variant, answer As Variant, sentence As Variant) As Long
    Dim takes As Long, rest As Boolean, i As Long
    Bridged called, takes, rest
    Dim list() As Variant
    If takes > 0 Then ReDim list(0 To takes - 1)
    For i = 0 To takes - 1
        If i <= UBound(given) Then
            If Not IsError(given(i)) Then list(i) = given(i)
        End If
    Next
    If rest Then
        Dim further() As Variant
        If UBound(given) < takes - 1 Then
            list(takes - 1) = Array()
        Else
            ReDim further(0 To UBound(given) - takes + 1)
            For i = takes - 1 To UBound(given)
                If Not IsError(given(i)) Then further(i - takes + 1) = given(i)
            Next
            list(takes - 1) = further
        End If
    End If
    On Error GoTo Refused
    Asked called, list, answer
    cutwater_macro_call = 0
    Exit Function
Refused:
    sentence = Error$
    cutwater_macro_call = 2
    Resume Done
Done:
End Function

' A row of the sheet Cases holds an argument a cell; a series lies in a row of the sheet Points.
Private Function V(row As Long, column As Long) As Variant
    Dim cell As Object
    Set cell = ThisComponent.Sheets.getByName("Cases").getCellByPosition(column, row)
    If cell.Type = com.sun.star.table.CellContentType.TEXT Then
        V = cell.String
    Else
        V = cell.Value
    End If
End Function

Private Function S(row As Long, count As Long) As Variant
    Dim points() As Double, i As Long
    ReDim points(0 To count - 1)
    For i = 0 To count - 1
        points(i) = ThisComponent.Sheets.getByName("Points").getCellByPosition(i, row).Value
    Next
    S = points
End Function

Private Sub Told(row As Long, result As Variant, number As Long, sentence As String)
    Dim out As Object, r As Long, c As Long, at As Long
    Set out = ThisComponent.Sheets.getByName("Out")
    out.getCellByPosition(0, row).Value = number
    out.getCellByPosition(1, row).String = sentence
    If number <> 0 Then Exit Sub
    at = 2
    If Not IsArray(result) Then
        PutCell out.getCellByPosition(at, row), result
        Exit Sub
    End If
    For r = LBound(result) To UBound(result)
        For c = LBound(result(r)) To UBound(result(r))
            PutCell out.getCellByPosition(at, row), result(r)(c)
            at = at + 1
        Next
    Next
End Sub

Private Sub PutCell(cell As Object, value As Variant)
    If VarType(value) = 8 Then
        cell.String = value
    Else
        cell.Value = value
    End If
End Sub
"""


def basic_of_module():
    text = (PRODUCTS / "excel/cutwater.bas").read_text(encoding="ascii")
    text = re.sub(r"^Attribute.*\n", "", text, flags=re.M)
    text = re.sub(r"^(Public|Private) Declare (.*_\n)*.*\n", "", text, flags=re.M)
    text = re.sub(r"^Public Type .*?^End Type\n", "", text, flags=re.M | re.S)
    text = re.sub(r"^Public Function CutwaterSentence.*?^End Function\n", "", text, flags=re.M | re.S)
    text = re.sub(r"^Public Sub CutwaterLoad.*?^End Sub\n", "Public Sub CutwaterLoad()\nEnd Sub\n", text, flags=re.M | re.S)
    text = text.replace("Option Private Module\n", "")
    return "Option VBASupport 1\n" + text


def bridged():
    takes, calls = [], []
    for record in CATALOGUE["functions"] + CATALOGUE["questions"]:
        name, count = record["name"], len(record.get("inputs", record.get("arguments", [])))
        rest = any(a["rest"] for a in record.get("arguments", []))
        takes.append(f'        Case "{name}": takes = {count}: rest = {rest}')
        calls.append(f'        Case "{name}": answer = calc.{name.upper()}({", ".join(f"list({i})" for i in range(count))})')
    return ("Private Sub Bridged(called As Variant, takes As Long, rest As Boolean)\n    Select Case called\n" + "\n".join(takes) +
            "\n    End Select\nEnd Sub\n"
            "Private Sub Asked(called As Variant, list As Variant, answer As Variant)\n    Dim calc As Object\n"
            '    Set calc = createUnoService("org.cutwater.Calc")\n    Select Case called\n' + "\n".join(calls) +
            "\n    End Select\nEnd Sub\n")


def chosen():
    """One answered and one refused case of every function."""
    seen = set()
    for case in golden.cases():
        key = (case.function, case.refused)
        inputs = next(f["inputs"] for f in CATALOGUE["functions"] if f["name"] == case.function)
        if key in seen or len(case.arguments) > len(inputs) or any(x != x for a in case.arguments for x in (a if isinstance(a, list) else [a])):
            continue
        if any(a == float("inf") or a == -float("inf") or a == [] for a in case.arguments):
            continue
        if case.refused and len(case.arguments) < sum("default" not in i for i in inputs):
            continue  # Visual Basic's own affair
        seen.add(key)
        yield case


class Module(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.cases = list(chosen())
        rows, points, calls = [], [], []
        for n, case in enumerate(cls.cases):
            cells, arguments = [], []
            for i, argument in enumerate(case.arguments):
                if isinstance(argument, list):
                    points.append(argument)
                    arguments.append(f"S({len(points) - 1}, {len(argument)})")
                    cells.append(None)
                elif argument is None:
                    arguments.append("Empty")
                    cells.append(None)
                else:
                    arguments.append(f"V({n}, {i})")
                    cells.append(argument)
            rows.append(cells or [None])
            calls.append(f"    r = Empty: Err.Clear\n    r = {case.function.upper()}({', '.join(arguments)})\n    Told {n}, r, Err.Number, Err.Description\n")
        more = len(cls.cases)
        questions = ['REFUSAL("npsh_available", -1, 0.0234, 998.2, 2, 0.5)', 'NPSH_AVAILABLE("1.013 barg", 0.0234, 998.2, 2, 0.5)',
                     'QUANTITY("440 US gpm", "m3/h")', 'SOLVE_FOR("velocity_head", "flow", Empty, "1 m", Empty, 150)',
                     'SENSITIVITY("velocity_head", Empty, 100, 150)', 'WORKING("velocity_head", 100, 150)', "CUTWATER_VERSION()",
                     'UNCERTAINTY("velocity_head", Empty, Array("2 m3/h", 0.5), 100, 150)']
        for n, call in enumerate(questions):
            calls.append(f"    r = Empty: Err.Clear\n    r = {call}\n    Told {more + n}, r, Err.Number, Err.Description\n")
        basic, runs = basic_of_module() + BRIDGE + bridged(), []
        for k in range(0, len(calls), 40):
            basic += f"\nSub Run{k}\n    Dim r As Variant\n    On Error Resume Next\n{''.join(calls[k:k + 40])}End Sub\n"
            runs.append(f"    Run{k}\n")
        basic += f"\nSub Fill\n{''.join(runs)}End Sub\n"
        width = 40
        cls.out = computed(WORK, {"Cases": rows, "Points": points, "Out": [[None] * width for _ in range(more + len(questions))]}, basic, "Standard.Module1.Fill")["Out"]
        cls.bits = golden.bits()

    def test_every_function(self):
        answered = refused = 0
        for case, row in zip(self.cases, self.out):
            verdict, *answers = self.bits[case.where]
            with self.subTest(case.where, call=case.call):
                if verdict == "refused":
                    self.assertNotEqual(row[0].number, 0)
                    self.assertIn(case.function, row[1].text)
                    refused += 1
                    continue
                self.assertEqual(row[0].number, 0, row[1].text)
                results = answers[0]
                height = max(len(r) if isinstance(r, list) else 1 for r in results)
                at = 2
                for line in range(height):
                    for result in results:
                        points = result if isinstance(result, list) else [result]
                        if line < len(points) and at < len(row):
                            got = row[at].text if isinstance(points[line], str) else row[at].number
                            self.assertEqual(points[line], got)
                        at += 1
                answered += 1
        print(f"{answered} answered, {refused} refused")
        self.assertGreater(answered, 300)
        self.assertGreater(refused, 150)

    def test_questions(self):
        why, raised, quantity, flow, sensitivity, working, version, spread = self.out[len(self.cases):][:8]
        self.assertIn("-1 bara", why[2].text)
        self.assertIn("surface_pressure_bara", raised[1].text)
        self.assertIn("barg", raised[1].text)
        self.assertAlmostEqual(quantity[2].number, 440 * 0.003785411784 * 60, places=10)  # NIST SP 811
        self.assertGreater(flow[2].number, 100)
        self.assertEqual({sensitivity[2].text, sensitivity[5].text}, {"flow_m3h", "bore_mm"})
        self.assertIn("velocity", working[2].text.lower())
        self.assertRegex(version[2].text, r"^\d+\.\d+\.\d+$")
        self.assertGreater(spread[3].number, 0)


if __name__ == "__main__":
    unittest.main()
