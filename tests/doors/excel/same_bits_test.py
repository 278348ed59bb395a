"""The library built for Windows, run under Wine, gives the native build's bits: the golden files, and a sweep of permitted and hostile
numbers at every input of every function.   same_bits_test.py NATIVE_FOLDER WINDOWS_FOLDER WINE"""
import os
import pathlib
import subprocess
import sys
import unittest

import golden

NATIVE, WINDOWS = map(pathlib.Path, sys.argv[1:3])
WINE = sys.argv[3]


def printed(*command):
    return subprocess.run(command, check=True, capture_output=True, encoding="utf-8").stdout.replace("\r\n", "\n").splitlines()


class SameBits(unittest.TestCase):
    def test_golden_files(self):
        os.environ["CUTWATER_GOLDEN_BITS"] = str(NATIVE / "tests/doors/golden_bits")
        here = golden.bits()
        with open(WINDOWS / "golden_bits.sh", "w", encoding="utf-8") as script:
            script.write(f'#!/bin/sh\nexec "{WINE}" "{WINDOWS}/golden_bits.exe"\n')
        os.chmod(WINDOWS / "golden_bits.sh", 0o755)
        os.environ["CUTWATER_GOLDEN_BITS"] = str(WINDOWS / "golden_bits.sh")
        there = golden.bits()
        self.assertGreater(len(here), 1000)
        self.assertEqual(here.keys(), there.keys())
        self.assertEqual({}, {where: (here[where], there[where]) for where in here if here[where] != there[where]})

    def test_sweep(self):
        here = printed(NATIVE / "tests/doors/excel/sweep_bits")
        there = printed(WINE, WINDOWS / "sweep_bits.exe")
        self.assertGreater(len(here), 50000)
        self.assertEqual(len(here), len(there))
        self.assertEqual([], [pair for pair in zip(here, there) if pair[0] != pair[1]][:10])
        answered = sum(line.split(" ", 4)[3] == "0" for line in here)
        print(f"{len(here)} calls, {answered} answered, {len(here) - answered} refused: the same on both")


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1], verbosity=2)
