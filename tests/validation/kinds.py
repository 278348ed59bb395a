"""What a golden block's source says of where its numbers come from. The words are those that DEVELOPERS.md asks for."""
import re

# Strongest first; what a source's words do not tell counts as the last.
KINDS = {
    "published": "a value printed outside the project, in a text that was read",
    "library": "a program or library from outside the project that carries the relation, run",
    "solver": "a general-purpose library from outside the project, run on the relation that the source states",
    "relation": "a relation printed outside the project, in a text that was read; the number is our own arithmetic",
    "memory": "a value or relation from memory of a text that was not read",
    "own": "our own arithmetic, a definition or a limit",
}
OUTSIDE = ("published", "library", "solver")

MEMORY = re.compile(r"from memory|\bmemory of\b")
READ = re.compile(r"\bread\b")
LIBRARY = re.compile(r"\b(fluids|iapws|ht|thermo|uncertainties|pint|PchipInterpolator|CalculiX|WNTR|SecondaryCoolantProps)\b")
SOLVER = re.compile(r"\b(SciPy|NumPy)('s)?\b")
RUN = re.compile(r"\brun\)")
OWN = re.compile(r"hand calculation|by hand|independent computation|by inspection|definition|put back|computed apart|by Python|"
                 r"worked out|\bdigits\b|mpmath|identity")


def kind_of(source):
    if MEMORY.search(source):
        return "memory"
    if RUN.search(source):
        return "solver" if SOLVER.search(source) else "library"
    if READ.search(source):
        return "relation" if OWN.search(source) else "published"
    if LIBRARY.search(source):
        return "library"
    return "solver" if SOLVER.search(source) else "own"
