"""The cells and the Basic blocks of docs/guide/tasks.md give the numbers that stand beside them."""
import os
import re
import unittest

from sheet import Formula, computed
from tasks import Compared, in_file, tasks

HEAD = """Dim told_task, told_row
Sub Tell(value)
  Dim cell
  cell = ThisComponent.Sheets.getByName("Told").getCellByPosition(told_task, told_row)
  If VarType(value) = 8 Then cell.String = value Else cell.Value = value
  told_row = told_row + 1
End Sub
"""


def cell(text):
    if text.startswith("="):
        return Formula(in_file(text))
    return float(text) if text else None


def module(found):
    """A Sub for each task, and one that runs them all. A line that prints tells the sheet instead."""
    subs, calls = HEAD, ""
    for index, task in enumerate(found):
        body = re.sub(r"^Print (.+?)  '.*$", r"Tell \1", task.basic, flags=re.M)
        subs += f'Sub Task{index}\n  Dim none\n  Calc = createUnoService("org.cutwater.Calc")\n{body}End Sub\n'
        calls += f"  told_task = {index} : told_row = 0\n  Task{index}\n"
    return subs + f"Sub All\n{calls}End Sub\n"


class Tasks(Compared, unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        found = tasks()
        sheets = {}
        for index, task in enumerate(found):
            width = max(map(len, task.cells))
            sheets[f"T{index}"] = [[cell(text) for text in row] + [None] * (width - len(row)) for row in task.cells]
        sheets["Told"] = [[None] * len(found) for _ in range(max(len(task.printed["basic"]) for task in found))]
        cls.tasks = found
        cls.sheets = computed(os.environ["CUTWATER_WORK"] + "/tasks", sheets, module(found), "Standard.Module1.All")

    def values(self, cells):
        made = []
        for one in cells:
            self.assertIn(one.kind, ("number", "text"), one)
            made.append(one.number if one.kind == "number" else one.text)
        return made

    def test_cells(self):
        for index, task in enumerate(self.tasks):
            for row, one in zip(task.cells, self.sheets[f"T{index}"]):
                self.assertNotEqual(one[0].kind, "error", f"{task.title}: {row[0]}: {one[0].text}")
        self.compare(
            "cells",
            [
                self.values([row[0] for row, given in zip(self.sheets[f"T{index}"], task.cells) if given[0]])
                for index, task in enumerate(self.tasks)
            ],
        )

    def test_basic(self):
        self.compare(
            "basic",
            [
                self.values([row[index] for row in self.sheets["Told"][: len(task.printed["basic"])]])
                for index, task in enumerate(self.tasks)
            ],
        )


if __name__ == "__main__":
    unittest.main()
