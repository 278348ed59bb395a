"""Reads the includes of every source and holds them against the layers that DEVELOPERS.md draws, and names against the catalogue.

usage: layers.py SOURCE CATALOGUE
"""
import json
import pathlib
import re
import sys
import unittest

SOURCE = pathlib.Path(sys.argv.pop(1)).resolve()
CATALOGUE = json.loads(pathlib.Path(sys.argv.pop(1)).read_text(encoding="utf-8"))

# Each folder of ours with those that it may include; "public" is include/cutwater.
LAYERS = {
    "include/cutwater": {"public"},
    "src/elementary": {"elementary"},
    "src/units": {"units", "public"},
    "src/catalogue": {"catalogue", "units", "elementary", "public"},
    "src/formulas": {"formulas", "catalogue", "elementary", "public"},
    "src/call": {"call", "catalogue", "units", "elementary", "public"},
    "src/answers": {"answers", "call", "catalogue", "units", "elementary", "public"},
    "src/capi": {"capi", "answers", "call", "catalogue", "units", "public"},
    "src/generate": {"generate", "answers", "call", "catalogue", "units", "public"},
    "bindings/common": {"common", "C API"},
}
DOOR = {"common", "C API"}                                                 # and its own files
DOOR_GENERATOR = {"generate", "answers", "call", "catalogue", "units", "public"}
C_API = {"cutwater/cutwater.h", "cutwater/library.h", "cutwater/answers.h", "cutwater/base.h"}
OURS = {"elementary", "units", "catalogue", "formulas", "call", "answers", "capi", "generate", "common"}
INCLUDE = re.compile(r'^\s*#\s*include\s+[<"]([^>"]+)[>"]', re.M)


def sources(folder):
    return [p for p in sorted((SOURCE / folder).rglob("*")) if p.suffix in (".h", ".hpp", ".cpp", ".c", ".i")]


def layer_of(path):
    """The layer that an include belongs to; None for a file beside it, a system's or a library's header."""
    if path.startswith("cutwater/"):
        return "C API" if path in C_API else "public"
    first = path.split("/")[0]
    if "/" in path and first in OURS:
        return first
    return None


def known_without_boost(start):
    """Every header that one of ours drags in."""
    seen, waiting = set(), [start]
    while waiting:
        file = waiting.pop()
        for path in INCLUDE.findall(file.read_text(encoding="utf-8")):
            seen.add(path)
            for root in (SOURCE / "src", SOURCE / "include"):
                inner = root / path
                if inner.is_file() and inner not in seen:
                    seen.add(inner)
                    waiting.append(inner)
    return {path for path in seen if isinstance(path, str)}


class Layers(unittest.TestCase):
    def check(self, file, allowed):
        for path in INCLUDE.findall(file.read_text(encoding="utf-8")):
            layer = layer_of(path)
            if layer == "C API" and "public" in allowed:
                continue
            if layer is not None:
                with self.subTest(file=str(file.relative_to(SOURCE)), includes=path):
                    self.assertIn(layer, allowed)

    def test_layers(self):
        for folder, allowed in LAYERS.items():
            files = sources(folder)
            self.assertTrue(files, folder)
            for file in files:
                self.check(file, allowed)

    def test_doors(self):
        doors = [p for p in sorted((SOURCE / "bindings").iterdir()) if p.is_dir() and p.name != "common"]
        self.assertGreaterEqual(len(doors), 3)
        for door in doors:
            for file in sources(door.relative_to(SOURCE)):
                self.check(file, DOOR_GENERATOR if "generate" in file.relative_to(door).parts else DOOR)

    def test_every_folder_has_its_place(self):
        self.assertEqual({f"src/{p.name}" for p in (SOURCE / "src").iterdir() if p.is_dir() and p.name not in ("cmake", "release")},
                         {folder for folder in LAYERS if folder.startswith("src/")})

    def test_untyped_records_drag_in_no_boost(self):
        for header in ("src/catalogue/info.hpp", "src/catalogue/refusal.hpp", "src/catalogue/families.hpp", "src/catalogue/prose.hpp"):
            dragged = known_without_boost(SOURCE / header)
            self.assertFalse([path for path in dragged if path.startswith("boost/") or path == "cutwater/units.hpp"], header)


class Names(unittest.TestCase):
    def test_lower_layers_name_no_function(self):
        names = {f["name"] for f in CATALOGUE["functions"]}
        quoted = re.compile(r'"(?:[^"\\\n]|\\.)*"')
        for folder in ("src/elementary", "src/units", "src/catalogue", "src/call", "include/cutwater/tables", "bindings/common"):
            for file in sources(folder):
                code = re.sub(r"//[^\n]*", "", file.read_text(encoding="utf-8"))
                for text in quoted.findall(code):
                    for word in re.findall(r"[a-z][a-z0-9_]*_[a-z0-9_]+", text):
                        with self.subTest(file=str(file.relative_to(SOURCE)), text=text):
                            self.assertFalse(word in names, f"{word} is a function")

    def test_a_choice_has_one_type(self):
        """Two of one name in two families would share their words without a word from the compiler."""
        seen = {}
        for file in sources("src/formulas"):
            for name in re.findall(r"^enum class (\w+)", file.read_text(encoding="utf-8"), re.M):
                self.assertNotIn(name, seen, f"{file} and {seen.get(name)}")
                seen[name] = file
        self.assertGreater(len(seen), 10)

    def test_what_a_formula_blames_is_an_input(self):
        inputs = {given["short_name"] for f in CATALOGUE["functions"] for given in f["inputs"]}
        blamed = re.compile(r'NoValue\{\s*(?:\.status = )?CUTWATER_\w+,\s*(?:\.argument = )?"(\w*)"|\.argument = "(\w*)"')
        seen = 0
        for file in sources("src/formulas"):
            for match in blamed.finditer(file.read_text(encoding="utf-8")):
                name = match[1] if match[1] is not None else match[2]
                seen += 1
                with self.subTest(file=str(file.relative_to(SOURCE)), blamed=name):
                    self.assertTrue(name == "" or name in inputs)
        self.assertGreater(seen, 30)


unittest.main()
