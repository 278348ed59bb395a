"""The sheets of the pump itself: the seal that fails once the clearance has worn, what is not given, what is refused, and no pump at all."""
import json
import math
import os
import pathlib
import shutil
import subprocess
import sys
import unittest
import zipfile
from xml.etree import ElementTree

from sheet import NAMESPACES, OXT, SOFFICE, run_alone

SOURCE = pathlib.Path(os.environ["CUTWATER_SOURCE"])
WORK = pathlib.Path(os.environ["CUTWATER_WORK"], "pump_sheets")
SHEETS = ("Rotor", "Seal", "Clearance", "Containment")
TABLE, OFFICE = ("{" + NAMESPACES[name] + "}" for name in ("table", "office"))


def cells(row):
    for cell in row:
        value = cell.get(OFFICE + "value")
        text = "".join("".join(part.itertext()) for part in cell)
        content = float(value) if value is not None and not text.startswith(("Err:", "#")) else text
        yield from [content] * min(int(cell.get(TABLE + "number-columns-repeated", "1")), 100)


def computed(name, change):
    """{sheet: [rows]} of the workbook after `change` of its data."""
    folder = WORK / name
    shutil.copytree(SOURCE / "examples/plant", folder / "plant", ignore=shutil.ignore_patterns("__pycache__"))
    data = folder / "plant/plant.json"
    plant = json.loads(data.read_text(encoding="utf-8"))
    change(plant)
    data.write_text(json.dumps(plant), encoding="utf-8")
    subprocess.run([sys.executable, "make_workbook.py"], cwd=folder / "plant", check=True)
    zipfile.ZipFile(OXT).extractall(folder / "bundled/cutwater.oxt")
    shutil.copytree(folder / "plant/runner", folder / "bundled/runner.oxt")
    _, printed = run_alone(
        [
            SOFFICE,
            "--headless",
            "--norestore",
            f"-env:UserInstallation=file://{folder}/profile",
            f"-env:BUNDLED_EXTENSIONS=file://{folder}/bundled",
            f'macro:///PlantRunner.Runner.Run("{folder}/plant/plant.fods","{folder}")',
        ]
    )
    if not (folder / "plant.ods").exists():
        raise RuntimeError(f"no workbook came out: {printed}")
    with zipfile.ZipFile(folder / "plant.ods") as archive:
        root = ElementTree.fromstring(archive.read("content.xml"))
    found = {}
    for table in root.iter(TABLE + "table"):
        if table.get(TABLE + "name") in SHEETS:
            found[table.get(TABLE + "name")] = [list(cells(row)) for row in table.iter(TABLE + "table-row")]
    return found


def changed(plant):
    """The second pump lacks its impeller's diameter, the third one's is a mass."""
    first, second, third = plant["builds"][:3]
    del second["impeller"]
    third["impeller"] = "330 kg"


class PumpSheets(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        shutil.rmtree(WORK, ignore_errors=True)
        cls.sheets = computed("changed", changed)
        cls.blank = computed("blank", lambda plant: plant.pop("builds"))

    def row(self, sheet, text):
        rows = [row for row in self.sheets[sheet] if row and row[0] == text]
        self.assertEqual(len(rows), 1, f"{sheet}: {text}")
        return rows[0]

    def state(self, sheet, tag):
        return next(row[0] for row in self.sheets[sheet] if row and str(row[0]).startswith(tag + ":"))

    def test_seal_fails_once_the_clearance_has_worn(self):
        self.assertEqual(self.row("Seal", "As set: margin to boiling")[2:4], ["enough", "meets"])
        self.assertEqual(self.row("Seal", "As now: margin to boiling")[2:4], ["too small", "FAILS"])
        self.assertEqual(self.row("Clearance", "After: margin to boiling")[2:4], ["enough", "meets"])
        self.assertIn("FAILS: As now: margin to boiling", self.state("Seal", "PU-03"))

    def test_chamber_pressure_by_hand(self):
        """Forced vortex, by hand: rim pressure less the smooth rim's and the vanes' share, pi n D in SI."""
        build = json.loads((SOURCE / "examples/plant/plant.json").read_text(encoding="utf-8"))["builds"][0]
        density, speed = self.row("Rotor", "Density")[2], self.row("Rotor", "Speed")[2]
        head, suction = self.row("Rotor", "Duty: head")[2], self.row("Rotor", "The same, gauge")[2]
        turns = 2 * math.pi * speed / 60
        rim = build["static_part"] * density * 9.80665 * head
        core = 0.5 + 0.5 * build["back_vane_height"] / (build["back_vane_height"] + build["back_gap_set"])
        radii = [build[key] / 2000 for key in ("impeller", "back_vane_outer", "back_vane_inner")]
        fall = (
            density
            * turns**2
            / 2
            * (0.25 * (radii[0] ** 2 - radii[1] ** 2) + core**2 * (radii[1] ** 2 - radii[2] ** 2))
        )
        self.assertAlmostEqual(
            self.row("Seal", "Clearance as set: pressure")[2], suction + (rim - fall) / 1e5, places=9
        )
        ratio = 1 - build["head_slope"] * (build["clearance_now"] - build["clearance_set"]) / build["vane_width"]
        self.assertAlmostEqual(
            self.row("Seal", "Clearance as now: pressure")[2], suction + (ratio * rim - fall) / 1e5, places=9
        )

    def test_a_missing_input_leaves_cells_empty_and_is_asked_for(self):
        self.assertEqual(self.row("Rotor", "Radial thrust at the duty")[4], "")
        self.assertNotEqual(self.row("Rotor", "Radial thrust at the duty")[2], "")
        self.assertIn("Give: Impeller diameter", self.state("Rotor", "PU-10"))
        for sheet, rows in self.sheets.items():
            for row in rows[6:]:
                self.assertFalse([cell for cell in row[4:6] if str(cell).startswith(("Err:", "#"))], f"{sheet}: {row}")

    def test_a_bad_input_is_refused_with_its_sentence(self):
        told = self.row("Rotor", "Radial thrust at the duty")
        self.assertTrue(told[6].startswith("Err:"), told)
        self.assertTrue(told[8].startswith("PU-01: radial_thrust: impeller_diameter_mm"), told)
        self.assertIn(
            "refused: Radial thrust at the duty, PU-01: radial_thrust: impeller_diameter_mm",
            self.state("Rotor", "PU-01"),
        )

    def test_without_pumps_every_cell_is_empty(self):
        for sheet, rows in self.blank.items():
            for row in rows[3:]:
                self.assertFalse([cell for cell in row[2:8] if cell != ""], f"{sheet}: {row}")


if __name__ == "__main__":
    unittest.main()
