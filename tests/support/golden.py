"""Reads the golden files, apart from the C++ reader, and what the C API answered to their cases."""
import os
import pathlib
import re
import subprocess
from dataclasses import dataclass

FOLDER = pathlib.Path(os.environ["CUTWATER_SOURCE"], "tests", "reference")
TOKEN = re.compile(r'\s*(?:"(?P<text>[^"]*)"|(?P<open>\[)|(?P<close>\])|(?P<comma>,)|(?P<plain>[^\s,\[\]"]+))')


@dataclass
class Case:
    where: str
    call: str
    function: str
    arguments: list
    expected: list
    within: float
    relative: bool
    refused: bool
    blamed: str
    source: str


def read_list(text):
    """1.5, "72 %", [1, 2], default as Python has them."""
    stack, position = [[]], 0
    text = text.rstrip()
    while position < len(text):
        token = TOKEN.match(text, position)
        if not token:
            raise ValueError(f"cannot read {text[position:]!r}")
        position = token.end()
        if token["open"]:
            stack.append([])
        elif token["close"]:
            inner = stack.pop()
            stack[-1].append(inner)
        elif token["text"] is not None:
            stack[-1].append(token["text"])
        elif token["plain"]:
            stack[-1].append(None if token["plain"] == "default" else float(token["plain"]))
    if len(stack) != 1:
        raise ValueError(f"brackets do not match in {text!r}")
    return stack[0]


def cases():
    for path in sorted(FOLDER.glob("*.txt")):
        within, relative, source = None, True, ""
        for number, line in enumerate(path.read_text(encoding="utf-8").splitlines(), 1):
            line = line.strip()
            if not line or line.startswith(("#", "no outside witness:")):
                continue
            if line.startswith("source:"):
                source = line[len("source:"):].strip()
                continue
            if line.startswith("within:"):
                bound, sort = line[len("within:"):].split()
                within, relative = float(bound), sort == "relative"
                continue
            refused = line.startswith("refused:")
            call = line[len("refused:"):].strip() if refused else line
            function, rest = call.split("(", 1)
            arguments, after = rest.rsplit(")", 1)
            after = after.strip()
            yield Case(f"{path.name}:{number}", line, function.strip(), read_list(arguments),
                       [] if refused else read_list(after.removeprefix("=")), within, relative, refused,
                       after.removeprefix(":").strip() if refused else "", source)


def arguments_against_witnesses():
    """{function: why nothing outside the project witnesses it}, from the lines "no outside witness: FUNCTION: WHY"."""
    why = {}
    for path in sorted(FOLDER.glob("*.txt")):
        for line in path.read_text(encoding="utf-8").splitlines():
            if line.startswith("no outside witness:"):
                _, function, reason = (part.strip() for part in line.split(":", 2))
                assert function not in why, f"{function} is argued twice"
                why[function] = reason
    return why


def bits():
    """{where: ("ok", results) or ("refused", status, argument, element)}; numbers to the last bit."""
    printed = subprocess.run([os.environ["CUTWATER_GOLDEN_BITS"]], check=True, capture_output=True, encoding="utf-8").stdout
    answers = {}
    for line in printed.splitlines():
        where, verdict, *fields = line.split("\t")
        if verdict == "refused":
            answers[where] = (verdict, *map(int, fields))
            continue
        results = []
        for field in fields:
            if field.startswith('"'):
                results.append(field[1:-1])
            elif field.startswith("["):
                results.append([float.fromhex(number) for number in field[1:-1].split()])
            else:
                results.append(float.fromhex(field))
        answers[where] = (verdict, results)
    return answers
