"""The workbook on paper, and the one that is made without data."""
import os
import pathlib
import re
import shutil
import subprocess
import sys
import unittest
import xml.dom.minidom
import zipfile

from driver import Session
from sheet import OXT, SOFFICE, run_alone
from workbook_layout import AT, BOOK, SOURCE, VERDICT, WORST
from writer import acceptance, energy, parallel

WORK = pathlib.Path(os.environ["CUTWATER_WORK"], "printed")


class Printed(unittest.TestCase):
    """As on paper: no input is cut, pages are counted through, nothing is left of the example in a workbook made without it."""

    @classmethod
    def setUpClass(cls):
        s = Session(BOOK, WORK / "plant")
        s.set("Service", "A3", "PU-02")
        s.set("Service", "J5", "PU-02")
        s.set("Service", AT.tried("specific_heat"), "0.6 Btu/(lb degF)")
        s.save(WORK / "plant/plant.pdf")
        s.run()
        cls.blank = WORK / "blank.fods"
        subprocess.run([sys.executable, SOURCE / "examples/plant/make_workbook.py", "--blank", cls.blank], check=True)
        s = Session(cls.blank, WORK / "blank")
        s.get("verdict", "Service", VERDICT)
        s.get("worst", "Service", WORST)
        s.get("first", "Register", "C4")
        s.get("rank", "Register", "A4")
        s.set("Data", f"BA{cls.tag_row()}", "X-50")
        s.get("fiftieth", "Register", "C4")
        s.set("Service", "A3", "X-50")
        s.get("column", "Service", "B10")
        s.save(WORK / "blank/blank.pdf")
        s.macro("Printing.OnlyFilled")
        s.save(WORK / "blank/filled.pdf")
        s.macro("Printing.Everything")
        s.save(WORK / "blank/again.pdf")
        cls.found = s.run()
        cls.pages = cls.read(WORK / "plant/plant.pdf")

    @staticmethod
    def tag_row():
        return AT.places.input["tag"] + 1

    @staticmethod
    def read(pdf):
        done = subprocess.run(["pdftotext", "-layout", pdf, "-"], capture_output=True, encoding="utf-8", check=True)
        return done.stdout.split("\f")[:-1]

    def test_only_what_is_filled_is_printed(self):
        """The tag in the fiftieth column is chosen on the sheet Service: sheets without a pump are left out, the column is not."""
        whole, filled, again = (self.read(WORK / f"blank/{name}.pdf") for name in ("blank", "filled", "again"))
        named = {re.search(r"(\w+),[\s\d]*page", page)[1] for page in filled}
        self.assertEqual(named, {"Register", "Service", "Data", "Curves", "Checks"})
        self.assertIn("X-50", " ".join(page for page in filled if "Data, " in page))
        self.assertEqual(len(again), len(whole))

    def test_no_input_is_cut(self):
        self.assertEqual(sum(page.count("0.6 Btu/(lb degF)") for page in self.pages[:3]), 2)  # tried, and used

    def test_pages_are_counted_through_and_named(self):
        footers = [re.search(r"(\w+),[\s\d]*page (\d+) of (\d+)", page) for page in self.pages]
        self.assertNotIn(None, footers)
        self.assertEqual([int(found[2]) for found in footers], list(range(1, len(footers) + 1)))
        self.assertEqual({int(found[3]) for found in footers}, {len(footers)})
        self.assertLessEqual(sum(found[1] == "Cases" for found in footers), 8, "mostly empty pages")
        for found, page in zip(footers, self.pages):
            if found[1] == "Service":
                self.assertIn("PU-02", page)
                self.assertIn("1 input differs from Data", page)
            if found[1] in ("Energy", "Parallel", "Acceptance", "Cases", "Field", "Offers", "Rotor", "Seal", "Clearance", "Containment"):
                self.assertRegex(page, r"PU-\d\d")

    def test_no_chart_lies_over_two_pages(self):
        """Reckoned from the rows' heights: 26.6 cm of A4 are left between the margins and the footer, 17.4 cm across."""
        sheets = [AT.service.sheet, *(made(AT.plant, AT.places).build() for made in (parallel.Parallel, energy.Energy, acceptance.Acceptance))]
        for sheet in sheets:
            room = 26.6 / min(1, 17.4 / sum(sheet.widths[: sheet.print_columns]))
            last = max(row for row, _ in sheet.cells)
            repeated = sum(sheet.heights.get(row, sheet.height) for row in range(sheet.header_rows))
            pages, top, used, at = [], 0.0, 0.0, 0.0
            for row in range(last + 1):
                height = sheet.heights.get(row, sheet.height)
                if row in sheet.breaks or used + height > room:
                    pages.append((top, at))
                    top, used = at, repeated
                used, at = used + height, at + height
            pages.append((top, at))
            for frame in sheet.frames:
                height, y = (float(re.search(rf'draw:frame [^>]*svg:{name}="([\d.]+)cm"', frame)[1]) for name in ("height", "y"))
                self.assertTrue(any(low <= y and y + height <= high + 0.01 for low, high in pages), f"{sheet.name}: {y} {height} {pages}")

    def test_workbook_without_macros_is_recalculated(self):
        folder = WORK / "plain"
        (folder / "bundled").mkdir(parents=True, exist_ok=True)
        zipfile.ZipFile(OXT).extractall(folder / "bundled/cutwater.oxt")
        shutil.copytree(SOURCE / "examples/plant/runner", folder / "bundled/runner.oxt", dirs_exist_ok=True)
        text = re.sub(r"<office:scripts>.*?</office:scripts>", "", self.blank.read_text(encoding="utf-8"), flags=re.S)
        (folder / "plain.fods").write_text(text, encoding="utf-8")
        run_alone([SOFFICE, "--headless", "--norestore", f"-env:UserInstallation=file://{folder}/profile", f"-env:BUNDLED_EXTENSIONS=file://{folder}/bundled",
                   f'macro:///PlantRunner.Runner.Run("{folder}/plain.fods","{folder}")'])
        self.assertFalse((folder / "plant.log").exists())
        self.assertTrue((folder / "plant-Register.csv").stat().st_size > 0)

    def test_blank_workbook(self):
        self.assertEqual([self.found[key].text for key in ("verdict", "worst", "first", "rank")], ["", "choose a tag", "", ""])
        self.assertEqual((self.found["fiftieth"].text, self.found["column"].text), ("X-50", "50"))
        text = self.blank.read_text(encoding="utf-8")
        xml.dom.minidom.parseString(text)
        for word in ("Ottermoor", "PU-0", "Cyclohexane", "invented"):
            self.assertNotIn(word, text)


if __name__ == "__main__":
    unittest.main()
