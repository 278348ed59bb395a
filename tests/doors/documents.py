"""What the documents show must run: the code blocks of README.md and of the guide, and the examples, as they stand.

documents.py SOURCE LIBRARY_FOLDER PRODUCTS C_COMPILER CXX_COMPILER [--python PACKAGE_FOLDER]
Without --python the Python blocks are left alone.
"""
import argparse
import os
import pathlib
import re
import subprocess
import sys
import tempfile
import unittest

BLOCK = re.compile(r"^```(c|cpp|python)\n(.*?)^```$", re.M | re.S)
DOCUMENTS = ("README.md", *(f"docs/guide/{page}.md" for page in ("answers", "c_and_cpp", "python")))

parser = argparse.ArgumentParser()
for name in ("source", "library", "products", "cc", "cxx"):
    parser.add_argument(name)
parser.add_argument("--python", default="")
given = parser.parse_args()
if not os.path.isdir(given.python):
    given.python = ""
source = pathlib.Path(given.source)


def blocks(language):
    """(where, code) of every block of that language."""
    for document in DOCUMENTS:
        text = (source / document).read_text(encoding="utf-8")
        for block in BLOCK.finditer(text):
            if block[1] == language:
                yield f"{document}:{text.count(chr(10), 0, block.start()) + 1}", block[2]


def run(command, **more):
    done = subprocess.run(command, capture_output=True, encoding="utf-8", timeout=300, **more)
    if done.returncode != 0:
        raise AssertionError(f"{command}\n{done.stdout}{done.stderr}")
    return done.stdout


def run_compiled(compiler, suffix, code):
    with tempfile.TemporaryDirectory() as folder:
        file = pathlib.Path(folder, "shown" + suffix)
        file.write_text(code, encoding="utf-8")
        includes = [f"-I{given.products}/include", f"-I{source}/include"]
        standard = "-std=c++20" if suffix == ".cpp" else "-std=c99"
        run([*compiler.split(), standard, "-Wall", "-Wextra", "-Werror", *includes, str(file), f"-L{given.library}", "-lcutwater",
             f"-Wl,-rpath,{given.library}", "-o", str(file.with_suffix(""))])
        return run([str(file.with_suffix(""))], cwd=folder)


def run_python(code):
    return run([sys.executable, "-W", "error", "-c", code], env={**os.environ, "PYTHONPATH": given.python})


def npsh(surface, vapour, density, level, friction):
    return (surface - vapour) * 1e5 / (density * 9.80665) + level - friction


PSIA = 0.45359237 * 9.80665 / 0.0254**2 / 1e5
README_C = npsh(1.013, 0.0234, 998.2, 2, 0.5)
README_CPP = npsh(14.7 * PSIA, 0.0234, 998.2, 6 * 0.3048, 0.5)
EXAMPLE = npsh(1.013, 0.023, 998, 2, 0.6)


class Documents(unittest.TestCase):
    def shown(self, printed, *numbers):
        """The numbers are among those printed, to the digits that were printed."""
        found = [(float(text), 0.51 * 10.0 ** -len(text.partition(".")[2])) for text in re.findall(r"-?\d+\.\d+", printed)]
        for number in numbers:
            self.assertTrue(any(abs(got - number) <= max(within, 1e-14 * abs(got)) for got, within in found), f"{number} not in {printed!r}")

    def test_blocks_are_found(self):
        counts = {language: sum(where.startswith("README.md") for where, _ in blocks(language)) for language in ("c", "cpp", "python")}
        self.assertGreaterEqual(min(counts.values()), 1, counts)

    def test_every_family_is_named(self):
        page = (source / "README.md").read_text(encoding="utf-8")
        for family in sorted(path.parent.name for path in (source / "src" / "formulas").glob("*/family.cpp")):
            self.assertIn(f"(docs/functions/{family}.md)", page)

    def test_c(self):
        printed = [run_compiled(given.cc, ".c", code) for _, code in blocks("c")]
        self.shown(printed[0], README_C)

    def test_cpp(self):
        printed = [run_compiled(given.cxx, ".cpp", code) for _, code in blocks("cpp")]
        self.shown(printed[0], README_CPP)

    def test_examples(self):
        for compiler, suffix in ((given.cc, ".c"), (given.cxx, ".cpp")):
            printed = run_compiled(compiler, suffix, (source / "examples" / f"first{suffix}").read_text(encoding="utf-8"))
            self.shown(printed, EXAMPLE)
            self.assertIn("surface_pressure_bara is -1 bara", printed)

    @unittest.skipUnless(given.python, "built without the Python door")
    def test_python(self):
        printed = [run_python(code) for _, code in blocks("python")]
        self.shown(printed[0], README_C, *(npsh(1.013, 0.0234, 998.2, level, 0.5) for level in (-4, -2, 0, 2, 4)))
        self.assertIn("absolute", printed[0])
        printed = run_python((source / "examples" / "first.py").read_text(encoding="utf-8"))
        self.shown(printed, EXAMPLE)


unittest.main(argv=sys.argv[:1])
