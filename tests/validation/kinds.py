"""What a golden block's source says of where its numbers come from. The words are those that DEVELOPERS.md asks for."""
import re

# Strongest first; what a source's words do not tell counts as the last.
KINDS = {
    "published": "a value printed outside the project, in a text that was read",
    "library": "a program or library from outside the project, run",
    "relation": "a relation printed outside the project, in a text that was read; the number is our own arithmetic",
    "memory": "a value or relation from memory of a text that was not read",
    "own": "our own arithmetic, a definition or a limit",
}
OUTSIDE = ("published", "library")

MEMORY = re.compile(r"from memory|\bmemory of\b")
READ = re.compile(r"\bread\b")
LIBRARY = re.compile(r"\b(fluids|iapws|ht|thermo|uncertainties|pint|SciPy|PchipInterpolator|NumPy|CalculiX|WNTR|SecondaryCoolantProps)\b")
RUN = re.compile(r"\brun\)")
OWN = re.compile(r"hand calculation|by hand|independent computation|by inspection|definition|put back|computed apart|by Python|"
                 r"worked out|\bdigits\b|mpmath|identity")


def kind_of(source):
    if MEMORY.search(source):
        return "memory"
    if RUN.search(source):
        return "library"
    if READ.search(source):
        return "relation" if OWN.search(source) else "published"
    return "library" if LIBRARY.search(source) else "own"
