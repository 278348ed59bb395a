"""Installs into an empty prefix, moves it, and builds and runs projects against it: install_test.py CMAKE BUILD SOURCE FOLDER CC CXX."""
import os
import pathlib
import re
import shlex
import shutil
import subprocess
import sys

cmake, build, source, folder, cc, cxx = sys.argv[1:]
folder, source = pathlib.Path(folder), pathlib.Path(source)
examples = source / "examples"
environment = {key: value for key, value in os.environ.items() if key not in ("LD_LIBRARY_PATH", "CMAKE_PREFIX_PATH", "PKG_CONFIG_PATH", "CPATH")}


def run(*command, fails=False, **more):
    done = subprocess.run([str(word) for word in command], capture_output=True, encoding="utf-8", env={**environment, **more})
    assert (done.returncode != 0) == fails, f"{command}\n{done.stdout}\n{done.stderr}"
    return done.stdout + (done.stderr if fails else "")


def check_output(text):
    # p/(rho g) + z - h_f by hand: (1.013 - 0.023) 1e5/(998 9.80665) + 2 - 0.6
    told = float(re.search(r"NPSH available: ([0-9.]+) m", text).group(1))
    assert abs(told - (99000 / (998 * 9.80665) + 1.4)) < 1e-3, text


def installed():
    """The prefix, moved after installing: nothing in it may remember where it was made."""
    shutil.rmtree(folder, ignore_errors=True)
    made, prefix = folder / "made here", folder / "and moved"
    for component in ("runtime", "development"):
        run(cmake, "--install", build, "--prefix", made, "--component", component)
    made.rename(prefix)
    headers = {path.name for path in prefix.rglob("*.h*")}
    assert {"cutwater.h", "cutwater.hpp", "function_types.hpp", "base.h", "answers.h", "answers.hpp", "units.hpp"} <= headers, headers
    for text in (*prefix.rglob("*.cmake"), *prefix.rglob("*.pc")):
        for place in (made, source, build):
            assert str(place) not in text.read_text(encoding="utf-8"), (text, place)
    return prefix


def by_cmake(prefix, language, wanted, fails=False):
    place = folder / f"{language} by cmake {wanted}"
    said = run(cmake, "-G", "Ninja", "-S", source / "tests" / "install" / language, "-B", place, f"-DCMAKE_PREFIX_PATH={prefix}", f"-DEXAMPLES={examples}",
               f"-DWANTED={wanted}", f"-DCMAKE_C_COMPILER={cc}", f"-DCMAKE_CXX_COMPILER={cxx}", fails=fails)
    if fails:
        return said
    run(cmake, "--build", place)
    check_output(run(place / "first"))
    return place


def by_pkg_config(prefix, compiler, *program):
    where, = prefix.rglob("cutwater.pc")
    ask = lambda *what: run("pkg-config", *what, "cutwater", PKG_CONFIG_PATH=str(where.parent)).strip()
    binary = folder / f"{program[-1].name} by pkg-config"
    run(compiler, *program, "-o", binary, *shlex.split(ask("--cflags", "--libs")))
    check_output(run(binary, LD_LIBRARY_PATH=ask("--variable=libdir").replace("\\", "")))
    return ask("--modversion"), ask("--variable=interface")


prefix = installed()
version, interface = by_pkg_config(prefix, cc, "-std=c99", examples / "first.c")
by_pkg_config(prefix, cxx, "-std=c++20", examples / "first.cpp")

by_cmake(prefix, "c", version)
run(by_cmake(prefix, "cpp", version) / "older")
major, minor, patch = version.split(".")
assert "compatible" in by_cmake(prefix, "c", f"{major}.{int(minor) + 1}", fails=True)  # newer than what is there
assert "compatible" in by_cmake(prefix, "c", f"{int(major) + 1}.0", fails=True)

base, = prefix.rglob("base.h")
assert re.search(rf"^#define CUTWATER_INTERFACE {interface}$", base.read_text(encoding="utf-8"), re.M), interface
if sys.platform == "linux":
    library, = (path for path in prefix.rglob("libcutwater.so*") if not path.is_symlink())
    assert f"soname: [libcutwater.so.{interface}]" in run("readelf", "-d", library)
    assert "RUNPATH" not in run("readelf", "-d", library) and "RPATH" not in run("readelf", "-d", library)
print(f"cutwater {version}, interface {interface}, in {prefix}")
