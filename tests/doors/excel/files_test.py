"""What lies in cutwater.dll and cutwater.xll: nothing is needed beside them, names are plain, wide vectors are safe on Windows' stack.
   files_test.py FOLDER OBJDUMP SOURCE VERSION"""
import pathlib
import re
import subprocess
import sys
import unittest

FOLDER, OBJDUMP, SOURCE, VERSION = pathlib.Path(sys.argv[1]), sys.argv[2], pathlib.Path(sys.argv[3]), sys.argv[4]
OF_WINDOWS = {"KERNEL32.dll", "msvcrt.dll", "OLEAUT32.dll"}
WIDE_ALIGNED = re.compile(r"\bvmov(?:ap[sd]|dqa(?:32|64)?|ntp[sd]|ntdqa?)\b.*(?:%[yz]mm.*\(|\(.*%[yz]mm)")
WIDE_ON_STACK = re.compile(r"\bvmovup[sd]\b.*(?:%[yz]mm.*\(%r[sb]p|\(%r[sb]p.*%[yz]mm)")


def told(file):
    return subprocess.run([OBJDUMP, "-p", FOLDER / file], check=True, capture_output=True, encoding="utf-8", errors="replace").stdout


def exported(file):
    table = told(file).split("[Ordinal/Name Pointer] Table")[1].split("\n\n")[0]
    return {line.split()[-1] for line in table.splitlines() if "[" in line}


class Files(unittest.TestCase):
    def test_nothing_beside_them_is_needed(self):
        for file in ("cutwater.dll", "cutwater.xll"):
            self.assertLessEqual(set(re.findall(r"DLL Name: (\S+)", told(file))), OF_WINDOWS, file)

    def test_exports(self):
        listed = set((SOURCE / "tests/generate/exported_symbols.txt").read_text(encoding="utf-8").split())
        library = exported("cutwater.dll")
        self.assertGreater(len(listed), 500)
        self.assertEqual(listed - library, set(), "committed, but not exported")
        self.assertIn("cutwater_macro_call", library)
        self.assertTrue(all(re.fullmatch(r"cutwater_[a-z0-9_]+", name) for name in library), library)
        addin = exported("cutwater.xll")
        self.assertLessEqual({"xlAutoOpen", "xlAutoClose", "xlAutoRemove", "xlAutoFree12", "xlAddInManagerInfo12", "NPSH_AVAILABLE", "REFUSAL"}, addin)

    def test_version(self):
        for file in ("cutwater.dll", "cutwater.xll"):
            data = (FOLDER / file).read_bytes()
            for text in ("FileVersion", VERSION, file):
                self.assertIn(text.encode("utf-16-le"), data, file)

    def test_wide_vectors_on_the_stack(self):
        """Windows' stack is aligned to 16 bytes, and a move that asks for more would end the program (GCC bug 54412)."""
        for file in ("cutwater.dll", "cutwater.xll"):
            aligned, on_stack = [], 0
            with subprocess.Popen([OBJDUMP, "-d", "--no-show-raw-insn", FOLDER / file], stdout=subprocess.PIPE, encoding="utf-8") as process:
                for line in process.stdout:
                    if "mm" in line and WIDE_ALIGNED.search(line):
                        aligned.append(line)
                    on_stack += bool("vmovup" in line and WIDE_ON_STACK.search(line))
            self.assertEqual(aligned[:5], [], file)
            self.assertGreater(on_stack, 100, file)  # else there was nothing to look at


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1])
