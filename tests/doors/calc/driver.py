"""A workbook in a headless office, changed as a person would change it, and what its cells then show."""
import pathlib
import shutil
from dataclasses import dataclass

from sheet import SOFFICE, bundle, run_alone


@dataclass
class Shown:
    error: int
    text: str


class Session:
    """Commands are gathered first; `run` carries them out in one office and gives each question its answer, by its label."""

    def __init__(self, book, work):
        self.book, self.work = pathlib.Path(book), pathlib.Path(work)
        self.commands, self.labels = [], []

    def set(self, sheet, cell, value):
        kind = (
            "formula"
            if isinstance(value, str) and value.startswith("=")
            else "text"
            if isinstance(value, str)
            else "number"
        )
        self.commands.append(("set", sheet, cell, kind, str(value)))

    def clear(self, sheet, cells):
        self.commands.append(("clear", sheet, cells))

    def macro(self, name):
        self.commands.append(("run", name))

    def save(self, file):
        self.commands.append(("pdf" if str(file).endswith(".pdf") else "save", str(file)))

    def get(self, label, sheet, cell):
        self.commands.append(("get", sheet, cell))
        self.labels.append(label)

    def ask(self, label, function, sheet, cell):
        self.commands.append(("ask", function, sheet, cell))
        self.labels.append(label)

    def times(self, label, count):
        self.commands.append(("times", str(count)))
        self.labels += [(label, index) for index in range(count)]

    def run(self):
        shutil.rmtree(self.work, ignore_errors=True)
        self.work.mkdir(parents=True)
        bundle(self.work / "bundled")
        commands, answers = self.work / "commands.txt", self.work / "answers.txt"
        commands.write_text("".join("\t".join(one) + "\n" for one in self.commands), encoding="utf-8")
        _, printed = run_alone(
            [
                SOFFICE,
                "--headless",
                "--norestore",
                f"-env:UserInstallation=file://{self.work}/profile",
                f"-env:BUNDLED_EXTENSIONS=file://{self.work}/bundled",
                f'macro:///CutwaterRunner.Driver.Run("{self.book}","{commands}","{answers}")',
            ]
        )
        lines = answers.read_text(encoding="utf-8").splitlines() if answers.exists() else []
        if not lines or lines[-1] != "done":
            raise RuntimeError(f"the office stopped: {lines[-1:]} {printed}")
        found = {}
        for label, line in zip(self.labels, lines[:-1], strict=True):
            _, error, text = line.split("\t", 2)
            found[label] = Shown(int(error), text)
        return found
