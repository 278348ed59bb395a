"""Holds the C++ to .clang-format, and C and C++ to 120 columns: check_format.py CLANG_FORMAT SOURCE [--mend].

What the generator writes is not looked at. --mend formats in place; a comment or a text too long for its line is left to people."""
import pathlib
import subprocess
import sys

COLUMNS = 120
FOLDERS = ("bindings", "examples", "include", "src", "tests")

program, source = sys.argv[1], pathlib.Path(sys.argv[2])


def written_by_hand(path):
    with path.open(encoding="utf-8") as file:
        return "generated from the catalogue" not in file.readline()


files = sorted(path for folder in FOLDERS for path in (source / folder).rglob("*")
               if path.suffix in (".c", ".cpp", ".h", ".hpp") and written_by_hand(path))
cpp = [path for path in files if path.suffix in (".cpp", ".hpp")]
assert len(cpp) > 100, "this is not the source tree"

how = ["-i"] if "--mend" in sys.argv else ["--dry-run", "--Werror", "--ferror-limit=1"]
formatted = subprocess.run([program, "--style=file", *how, *map(str, cpp)]).returncode == 0

too_long = [f"{path.relative_to(source)}:{number}: {len(line)} columns"
            for path in files for number, line in enumerate(path.read_text(encoding="utf-8").splitlines(), 1) if len(line) > COLUMNS]
print("\n".join(too_long))
sys.exit(not formatted or bool(too_long))
