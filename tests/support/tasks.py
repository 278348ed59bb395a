"""docs/guide/tasks.md: questions, each a chain of calls in cells, in Basic and in Python, with the numbers beside.

A question is a heading of the third level with four parts in this order: a block of cells (a formula a line, from A1
down; after a tab what stands in B, C and so on), a table that says what each cell in A gives, a block of Basic whose
`Print` lines end in the number as a comment, and one of Python likewise. Numbers are printed rounded; "?" stands for
one that is still to be filled in."""
import dataclasses
import os
import pathlib
import re

PAGE = pathlib.Path(os.environ["CUTWATER_SOURCE"], "docs/guide/tasks.md")
PARTS = re.compile(
    r"```cells\n(?P<cells>.*?)^```\n+\| cell \| what \| value \|\n\|---\|---\|---\|\n(?P<table>(?:\|.*\n)+)\n"
    r"```basic\n(?P<basic>.*?)^```\n+```python\n(?P<python>.*?)^```\n",
    re.M | re.S,
)
ROW = re.compile(r"^\| A(\d+) \| (.+) \| (.+) \|$")
TOLD = {"basic": re.compile(r"^Print (.+?)  ' (.+)$"), "python": re.compile(r"^print\((.+)\)  # (.+)$")}


@dataclasses.dataclass
class Task:
    title: str
    cells: list  # rows of texts; the first of each is a formula
    printed: dict  # by "cells", "basic", "python": what the page prints, in order
    basic: str
    python: str


def tasks():
    found = []
    for section in re.split(r"^### ", PAGE.read_text(encoding="utf-8"), flags=re.M)[1:]:
        title = section.split("\n", 1)[0]
        parts = PARTS.search(section)
        if not parts or section.count("```") != 6:
            raise AssertionError(
                f"{title}: cells, their table, Basic and Python are wanted, in this order and once each"
            )
        cells = [line.split("\t") for line in parts["cells"].splitlines()]
        rows = [ROW.match(line) for line in parts["table"].splitlines()]
        filled = [row[0] for row in cells if row[0]]
        if None in rows or [int(row[1]) for row in rows] != list(range(1, len(filled) + 1)):
            raise AssertionError(f"{title}: the table must have a row for each cell of the column A")
        printed = {"cells": [row[3] for row in rows]}
        for language, told in TOLD.items():
            lines = [line for line in parts[language].splitlines() if re.match(r"print\b", line, re.I)]
            if not lines or not all(told.match(line) for line in lines):
                raise AssertionError(f"{title}: each line of {language} that prints must say what")
            printed[language] = [told.match(line)[2] for line in lines]
        found.append(Task(title, cells, printed, parts["basic"], parts["python"]))
    return found


def in_file(formula):
    """A formula as the file holds it: functions by their full name, references in brackets."""

    def one(token):
        text = token[0]
        if text.startswith('"'):
            return text
        if text.endswith("("):
            return text if text in ("INDEX(", "MAX(", "MIN(", "ABS(", "SQRT(", "SUM(") else "ORG.CUTWATER.CALC." + text
        return "[" + ":".join("." + cell for cell in text.split(":")) + "]"

    return re.sub(r'"[^"]*"|\b[A-Z][A-Z0-9_]*\(|\b[A-Z]\d+(?::[A-Z]\d+)?\b', one, formula[1:])


def agrees(printed, value):
    """Whether a number rounds to the one printed, which a unit may follow; a word must be the same."""
    if isinstance(value, str):
        return printed == value
    number = printed.split(" ")[0]
    try:
        shown = float(number)
    except ValueError:
        return False
    decimals = len(number.partition(".")[2])
    return abs(value - shown) <= 0.5 * 10**-decimals * (1 + 1e-9)


def rounded(value):
    if isinstance(value, str) or value == int(value):
        return value if isinstance(value, str) else str(int(value))
    return f"{value:.0f}" if abs(value) >= 1000 else f"{value:.4g}"


def mend(kind, answers):
    """Writes the answers of one kind, a list a task, into the page."""
    lines, task, row, language = PAGE.read_text(encoding="utf-8").split("\n"), -1, 0, ""
    for index, line in enumerate(lines):
        if line.startswith("### "):
            task, row = task + 1, 0
        if line.startswith("```"):
            language = line[3:]
        found = ROW.match(line) if kind == "cells" else TOLD[kind].match(line) if language == kind else None
        if not found or task < 0:
            continue
        printed, value = found[found.lastindex], answers[task][row]
        row += 1
        if not agrees(printed, value):
            unit = printed.partition(" ")[2] if not isinstance(value, str) else ""
            at = found.start(found.lastindex)
            lines[index] = line[:at] + rounded(value) + (" " + unit if unit else "") + line[at + len(printed) :]
    PAGE.write_text("\n".join(lines), encoding="utf-8")


class Compared:
    """Mixed into a unittest.TestCase: holds the answers against the page, or mends it where CUTWATER_MEND is set."""

    def compare(self, kind, answers):
        if os.environ.get("CUTWATER_MEND"):
            mend(kind, answers)
        for task, values in zip(tasks(), answers, strict=True):
            for place, (printed, value) in enumerate(zip(task.printed[kind], values, strict=True), 1):
                with self.subTest(task.title, kind=kind, place=place):
                    self.assertTrue(agrees(printed, value), f"{value!r}, the page prints {printed}")
