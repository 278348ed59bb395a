"""The example plant's workbook with troubles put into its data: nothing may pass for an answer, and the register names the cause."""
import copy
import json
import os
import pathlib
import shutil
import subprocess
import sys
import unittest
import zipfile

from sheet import OXT, SOFFICE, run_alone

SOURCE = pathlib.Path(os.environ["CUTWATER_SOURCE"])
WORK = pathlib.Path(os.environ["CUTWATER_WORK"], "plant")

# tag, the pump that it is a copy of, what is changed (None: left out), the verdict and the worst check that must be told
TROUBLES = (
    ("a word with a capital", "PU-06", {"correct_for": "Solids"}, "refused", "Correction of the curve for"),
    ("no word at all", "PU-02", {"correct_for": None}, "refused", "Correction of the curve for"),
    ("a word that there is not", "PU-02", {"viscosity_by": "values"}, "refused", "Kinematic viscosity"),
    ("limit of another quantity", "PU-02", {"margin_wanted": "0.6 bar"}, "refused", "NPSH margin"),
    ("limit left out", "PU-02", {"suction_velocity_limit": None}, "refused", "Suction velocity"),
    (
        "temperature for a difference",
        "PU-02",
        {"rise_allowed": "8 degC"},
        "refused",
        "Thermal least flow v. the process's",
    ),
    ("size of the solids left out", "PU-06", {"solids_size": None}, "refused", "Head ratio with solids"),
    ("absolute for gauge", "PU-02", {"surface_pressure": "1 bara"}, "refused", "Pressure on the surface, absolute"),
    (
        "per cent without sign",
        "PU-02",
        {"efficiencies": [0, 26.8, 41.7, 51.7, 56.6, 58, 56.6, 52.9]},
        "refused",
        "Efficiency at best efficiency, on water",
    ),
    ("more flow than the curve has", "PU-02", {"flow": 60}, "refused", "Head the pump gives there"),
    (
        "last head unreadable",
        "PU-03",
        {"heads": [74.4, 73.8, 72.1, 69.6, 66.5, 62.0, 57.8, "53.6 kg"]},
        "refused",
        "Head at best efficiency, on water",
    ),
    (
        "last head of a viscous pump left out",
        "PU-02",
        {"heads": [33.5, 33.2, 32.3, 31, 29.2, 27, 24.8]},
        "refused",
        "Points of the curve that are refused",
    ),
    (
        "more heads than flows",
        "PU-10",
        {"flows": [0, 45, 85, 120, 150, 185, 215]},
        "refused",
        "Head at best efficiency, on water",
    ),
    ("NPSH3 not given at no flow", "PU-10", {"npsh3s": [None, 1.5, 1.6, 1.77, 2.0, 2.38, 2.82, 3.17]}, "meets", "none"),
    ("no NPSH3 at either end, viscous", "PU-02", {"npsh3s": [None, 1.13, 1.2, 1.33, 1.52, 1.8, 2.08]}, "meets", "none"),
    (
        "no efficiency at either end",
        "PU-10",
        {"efficiencies": [None, 0.356, 0.58, 0.707, 0.768, 0.79, 0.766]},
        "meets",
        "none",
    ),
    (
        "head rises at the last point",
        "PU-10",
        {"heads": [26.2, 26.0, 25.3, 24.2, 22.9, 21.0, 19.0, 19.4]},
        "FAILS",
        "Shape of the head curve",
    ),
    (
        "head rises from closed valve",
        "PU-10",
        {"heads": [25.2, 26.0, 25.3, 24.2, 22.9, 21.0, 19.0, 17.5]},
        "WATCH",
        "Shape of the head curve",
    ),
    ("no liquid in the casing", "PU-10", {"casing_volume": None}, "refused", "Heating at closed valve"),
    ("a limit in US units", "PU-10", {"suction_speed_limit": 11000}, "refused", "Suction specific speed, per eye"),
    ("a density beside water's own", "PU-10", {"density": 990}, "WATCH", "Values given and not used"),
    ("no word for the closed valve", "PU-10", {"shutoff_on": None}, "refused", "Power at closed valve, on the liquid"),
    ("a temperature that nothing needs", "PU-02", {"temperature": "60 kg"}, "refused", "Temperature, as read"),
    ("closed valve found on water", "PU-02", {"shutoff_on": "water"}, "meets", "none"),
    ("blanks behind ", "PU-02", {}, "meets", "none"),
    (
        "a laminar line",
        "PU-05",
        {
            "viscosity_by": "value",
            "viscosity": 300,
            "viscosity_t1": None,
            "viscosity_1": None,
            "viscosity_t2": None,
            "viscosity_2": None,
        },
        "FAILS",
        "Head the pump gives there",
    ),
    ("efficiencies left out", "PU-10", {"efficiencies": None}, "refused", "Efficiency at best efficiency, on water"),
    (
        "last NPSH3 unreadable",
        "PU-03",
        {"npsh3s": [1.53, 1.56, 1.65, 1.83, 2.08, 2.47, 2.87, "3.28 s"]},
        "refused",
        "Points of the curve that are refused",
    ),
    (
        "an NPSH3 left out between others",
        "PU-03",
        {"npsh3s": [1.53, 1.56, 1.65, 1.83, 2.08, None, 2.87, 3.28]},
        "refused",
        "NPSH3",
    ),
    (
        "a point where the viscous method ends",
        "PU-02",
        {"flows": [0, 7, 12.5, 18, 23, 28, 32, 46]},
        "refused",
        "Points of the curve that are refused",
    ),
    (
        "texts with units",
        "PU-02",
        {
            "flow": "110 US gpm",
            "margin_wanted": "2 ft",
            "rise_allowed": "8 K",
            "suction_velocity_limit": "6.5 ft/s",
            "density": "1.497 kg/L",
            "heads": ["110 ft", 33.2, 32.3, 31, 29.2, 27, 24.8, 22.4],
        },
        "meets",
        "none",
    ),
    ("PU-03", "PU-03", {}, "FAILS", "Columns of Data with this tag"),
)


class Plant(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        shutil.rmtree(WORK, ignore_errors=True)
        shutil.copytree(SOURCE / "examples/plant", WORK / "plant", ignore=shutil.ignore_patterns("__pycache__"))
        subprocess.run([sys.executable, "make_workbook.py"], cwd=WORK / "plant", check=True)
        cls.made = (WORK / "plant/plant.fods").read_text(encoding="utf-8")
        cls.data = WORK / "plant/plant.json"
        plant = json.loads(cls.data.read_text(encoding="utf-8"))
        pumps = {pump["tag"]: pump for pump in plant["pumps"]}
        for tag, model, changes, *_ in TROUBLES:
            pump = copy.deepcopy(pumps[model]) | {"tag": tag} | changes
            plant["pumps"].append({key: value for key, value in pump.items() if value is not None})
        cls.data.write_text(json.dumps(plant), encoding="utf-8")
        subprocess.run([sys.executable, "make_workbook.py"], cwd=WORK / "plant", check=True)
        zipfile.ZipFile(OXT).extractall(WORK / "bundled/cutwater.oxt")
        shutil.copytree(WORK / "plant/runner", WORK / "bundled/runner.oxt")
        _, printed = run_alone(
            [
                SOFFICE,
                "--headless",
                "--norestore",
                f"-env:UserInstallation=file://{WORK}/profile",
                f"-env:BUNDLED_EXTENSIONS=file://{WORK}/bundled",
                f'macro:///PlantRunner.Runner.Run("{WORK}/plant/plant.fods","{WORK}")',
            ]
        )
        if not (WORK / "plant.ods").exists():
            raise RuntimeError(f"no workbook came out: {printed}")

    def test_committed_workbook_is_current(self):
        committed = (SOURCE / "examples/plant/plant.fods").read_text(encoding="utf-8")
        self.assertTrue(committed == self.made, "run examples/plant/make_workbook.py and commit plant.fods")

    def lines(self, sheet):
        return [line.split("\t") for line in (WORK / f"plant-{sheet}.csv").read_text(encoding="utf-8").splitlines()]

    def test_register_names_the_cause(self):
        found = {}
        for line in self.lines("Register"):
            if len(line) > 3:
                found.setdefault(line[2], []).append((line[-1], line[-3]))
        for tag, _, _, verdict, check in TROUBLES:
            with self.subTest(tag):
                self.assertIn((verdict, check), found[tag.strip()])
        self.assertEqual(found["PU-03"], [("FAILS", "Columns of Data with this tag")] * 2)

    def test_macro_finds_the_same(self):
        total = next(line for line in self.lines("Macro") if line[0] == "All")
        self.assertEqual(total[-1], "same", total)

    @unittest.skipUnless(os.path.isdir(os.environ["CUTWATER_PACKAGE"]), "the Python package was not built")
    def test_audit_finds_the_same(self):
        done = subprocess.run(
            [
                sys.executable,
                SOURCE / "examples/audit.py",
                "--no-pictures",
                "--data",
                self.data,
                "--workbook",
                WORK / "plant.ods",
            ],
            capture_output=True,
            encoding="utf-8",
            env={**os.environ, "PYTHONPATH": os.environ["CUTWATER_PACKAGE"]},
        )
        self.assertEqual(done.returncode, 0, done.stdout[-3000:] + done.stderr)
        self.assertIn(" 0 differ", done.stdout)


if __name__ == "__main__":
    unittest.main()
