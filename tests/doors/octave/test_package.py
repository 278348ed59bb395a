"""The help texts, and the package as `pkg install` puts it."""
import json
import math
import os
import pathlib
import subprocess
import tempfile
import unittest

import octave

CATALOGUE = json.loads(pathlib.Path(os.environ["CUTWATER_CATALOGUE"]).read_text(encoding="utf-8"))


class Package(unittest.TestCase):
    def test_help(self):
        names = [f["name"] for f in CATALOGUE["functions"]] + [q["name"] for q in CATALOGUE["questions"]]
        printed = octave.run("\n".join(f'printf ("@@{name}\\n%s\\n", get_help_text ("cutwater.{name}"));' for name in names))
        texts = {part.partition("\n")[0]: " ".join(part.split()) for part in printed.split("@@")[1:]}
        for function in CATALOGUE["functions"]:
            with self.subTest(function["name"]):
                text = texts[function["name"]]
                self.assertIn(f"result = cutwater.{function['name']} (", text)
                self.assertIn(function["summary"][1:], text)
                for given in function["inputs"]:
                    self.assertIn(" ".join(f"{given['name']}: {given['meaning']}".split()), text)
                self.assertIn(" ".join(function["source"].split()), text)
        for question in CATALOGUE["questions"]:
            self.assertIn(question["meaning"][1:], texts[question["name"]])

    def test_installs_and_removes(self):
        built = subprocess.run(["cmake", "--build", os.environ["CUTWATER_BUILD"], "--target", "octave_package"], capture_output=True, encoding="utf-8")
        self.assertEqual(built.returncode, 0, built.stdout)
        archive = f'{os.environ["CUTWATER_BUILD"]}/cutwater-octave-{os.environ["CUTWATER_VERSION"]}.tar.gz'
        with tempfile.TemporaryDirectory() as folder:
            printed = octave.run(f'pkg prefix {folder}/share {folder}/lib\npkg local_list {folder}/list\npkg install {archive}\npkg load cutwater\n'
                                 'printf ("%.9f\\n", cutwater.velocity_head (100, 150));\nlist = pkg ("list", "cutwater"); printf ("%s\\n", list{1}.version);\n'
                                 'printf ("%s\\n", which ("cutwater_octave"));\npkg unload cutwater\npkg uninstall cutwater\n'
                                 f'printf ("%d left\\n", numel (glob ("{folder}/share/cutwater*")));', path=folder)
        self.assertIn(f"{(100 / 3600 / (math.pi / 4 * 0.15 ** 2)) ** 2 / (2 * 9.80665):.9f}", printed)
        self.assertIn(os.environ["CUTWATER_VERSION"], printed)
        self.assertIn("0 left", printed)


if __name__ == "__main__":
    unittest.main()
