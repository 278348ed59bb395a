"""Installs the wheel in a clean environment, offline, and uses it there: try_wheel.py FOLDER."""
import os
import pathlib
import subprocess
import sys
import tempfile
import zipfile

TRIAL = """
import pathlib, sys, cutwater
home = pathlib.Path(cutwater.__file__)
assert pathlib.Path(sys.prefix) in home.parents, home
assert home.with_name("py.typed").exists() and home.with_name("__init__.pyi").exists()
cutwater.self_test()
assert cutwater.npsh_available([1.0, 1.1], 0.02, "998 kg/m3", 2, 0.5).shape == (2,)
if sys.platform == "linux":
    loaded = {line.split()[-1] for line in pathlib.Path("/proc/self/maps").read_text().splitlines() if "libcutwater" in line}
    assert {pathlib.Path(path).name.split(".")[0] for path in loaded} == {"libcutwater"}, loaded
    assert all(pathlib.Path(path).parent == home.parent.resolve() for path in loaded), loaded
print(cutwater.__version__, home)
"""


def look_at_libraries(package):
    """What the loader will do, by its own word: everything that the wheel carries is found there, nothing is missing."""
    library, = package.glob("libcutwater.so.*")
    module, = package.glob("_cutwater*.so")
    dynamic = subprocess.run(["readelf", "-d", module], check=True, capture_output=True, encoding="utf-8").stdout
    assert "[$ORIGIN]" in dynamic, dynamic
    for user in (library, module):
        found = subprocess.run(["ldd", user], check=True, capture_output=True, encoding="utf-8").stdout
        assert "not found" not in found, found
        assert "libgomp" not in found, found  # the library brings no runtime of its own
    assert f"{library.name} => {library.resolve()} " in found, found


def main():
    wheel, = pathlib.Path(sys.argv[1]).glob("cutwater-*.whl")
    with zipfile.ZipFile(wheel) as archive:
        names = archive.namelist()
    assert any(name.startswith("cutwater/libcutwater.so") for name in names), names
    assert "py3-none-any" not in wheel.name, wheel.name
    with tempfile.TemporaryDirectory() as folder:
        # NumPy alone is shared with the system; nothing of the source or build tree can be found.
        environment = {key: value for key, value in os.environ.items() if key not in ("PYTHONPATH", "LD_LIBRARY_PATH")}
        run = lambda *command: subprocess.run(command, check=True, cwd=folder, env=environment)
        run(sys.executable, "-m", "venv", "--system-site-packages", "venv")
        python = str(pathlib.Path(folder, "venv", "bin", "python"))
        run(python, "-m", "pip", "install", "--quiet", "--no-index", "--no-deps", "--disable-pip-version-check", str(wheel.resolve()))
        if sys.platform == "linux":
            package, = pathlib.Path(folder, "venv").glob("lib/python*/site-packages/cutwater")
            look_at_libraries(package)
        run(python, "-I", "-W", "error", "-c", TRIAL)


main()
