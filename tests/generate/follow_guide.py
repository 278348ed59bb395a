"""Follows docs/guide/adding_a_function.md to the letter in a copy of the tree, builds it and asks the new function.

usage: follow_guide.py SOURCE FOLDER OPTION...
"""
import os
import re
import shutil
import subprocess
import sys

source, folder = map(os.path.abspath, sys.argv[1:3])
options = sys.argv[3:]
tree = os.path.join(folder, "tree")
build = os.path.join(tree, "build")  # as far from the sources as the main build is: ccache then finds its objects

BLOCK = re.compile(r'^```\w+ (create|insert|append)=(\S+)(?: after="([^"]*)")?\n(.*?)^```$', re.M | re.S)


def run(*command):
    # Objects that do not depend on the change come from ccache, whatever folder the copy lies in.
    environment = dict(os.environ, CCACHE_BASEDIR=tree, CCACHE_NOHASHDIR="1")
    done = subprocess.run(command, env=environment, stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True)
    if done.returncode:
        sys.exit(f"{' '.join(command)}\n{done.stdout[-6000:]}")
    return done.stdout


def copy_tree():
    shutil.rmtree(tree, ignore_errors=True)
    for name in ("CMakeLists.txt", "include", "src", "tests", "docs", "bindings"):
        path = os.path.join(source, name)
        if os.path.isdir(path):
            shutil.copytree(path, os.path.join(tree, name))
        else:
            os.makedirs(tree, exist_ok=True)
            shutil.copy2(path, tree)


def follow(page):
    steps = BLOCK.findall(page)
    assert len(steps) >= 4, "the page has lost its steps"
    for action, path, after, text in steps:
        assert path.startswith(("src/formulas/", "tests/reference/")), f"{path} is none of the family's files"
        path = os.path.join(tree, path)
        if action == "create":
            assert not os.path.exists(path)
            with open(path, "w", encoding="utf-8") as file:
                file.write(text)
            continue
        with open(path, encoding="utf-8") as file:
            old = file.read()
        if action == "append":
            new = old + text
        else:
            assert old.count(after + "\n") == 1, f"{path}: no single line {after!r}"
            new = old.replace(after + "\n", after + "\n" + text)
        with open(path, "w", encoding="utf-8") as file:
            file.write(new)


copy_tree()
with open(os.path.join(tree, "docs/guide/adding_a_function.md"), encoding="utf-8") as file:
    follow(file.read())
run("cmake", "-S", tree, "-B", build, "-G", "Ninja", "-DCMAKE_BUILD_TYPE=Release", "-DCUTWATER_DOORS=none", *options,
    "-DCMAKE_C_COMPILER_LAUNCHER=ccache", "-DCMAKE_CXX_COMPILER_LAUNCHER=ccache")
run("cmake", "--build", build, "--target", "cutwater_golden", "regenerate")
print(run(os.path.join(build, "tests", "cutwater_golden")))
for committed, wanted in {"include/cutwater/families/system.h": "cutwater_equivalent_length(double loss_coefficient",
                          "include/cutwater/families/system.hpp": "inline Length equivalent_length(Ratio loss_coefficient",
                          "docs/functions/system.md": "## equivalent_length"}.items():
    with open(os.path.join(tree, committed), encoding="utf-8") as file:
        assert wanted in file.read(), f"{committed} does not have the new function"
