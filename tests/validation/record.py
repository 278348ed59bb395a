"""The validation record's content: every function of the catalogue with its checks, as the golden run measured them."""
import json
from dataclasses import dataclass, field

import kinds


@dataclass
class Check:
    """The cases of one function under one source."""
    source: str
    kind: str
    cases: list = field(default_factory=list)
    bounds: list = field(default_factory=list)
    worst: tuple = (-1.0, 0.0, "", "")  # share of the bound, how far, relative or absolute, the call


@dataclass
class Function:
    name: str
    family: str
    checks: list = field(default_factory=list)
    refusals: int = 0
    why_none: str = ""

    def best(self):
        return min((check.kind for check in self.checks), key=list(kinds.KINDS).index, default="own")

    def outside(self):
        return self.best() in kinds.OUTSIDE


@dataclass
class Record:
    version: str
    compiler: str
    functions: list
    faults: list

    def count(self, kind):
        return sum(len(check.cases) for f in self.functions for check in f.checks if check.kind == kind)

    def cases(self):
        return sum(map(self.count, kinds.KINDS))


def measured(path):
    """The golden run's file: ({where: (verdict, how far, share of the bound)}, version, compiler)."""
    lines = path.read_text(encoding="utf-8").splitlines()
    version, compiler = lines[0].split("\t")
    runs = {}
    for line in lines[1:]:
        where, verdict, far, share = line.split("\t")
        runs[where] = (verdict, float(far), float(share))
    return runs, version, compiler


def gather(catalogue, runs, version, compiler, cases, why_none):
    """`catalogue` is the generated JSON as text; `cases` what the golden files hold."""
    functions = {f["name"]: Function(f["name"], f["family"]) for f in json.loads(catalogue)["functions"]}
    faults = []
    for case in cases:
        function = functions.get(case.function)
        if not function:
            faults.append(f"{case.where}: no function {case.function} in the catalogue")
            continue
        if case.where not in runs:
            faults.append(f"{case.where}: was not run")
            continue
        verdict, far, share = runs[case.where]
        if verdict != "good":
            faults.append(f"{case.where}: {verdict}: {case.call}")
        if case.refused:
            function.refusals += 1
            continue
        check = next((c for c in function.checks if c.source == case.source), None)
        if not check:
            check = Check(case.source, kinds.kind_of(case.source))
            function.checks.append(check)
        check.cases.append(case.call)
        sort = "relative" if case.relative else "absolute"
        if (case.within, sort) not in check.bounds:
            check.bounds.append((case.within, sort))
        if share > check.worst[0]:
            check.worst = (share, far, sort, case.call)
    for function in functions.values():
        function.why_none = why_none.get(function.name, "")
        if not function.checks:
            faults.append(f"{function.name}: has no check")
        elif function.outside() and function.why_none:
            faults.append(f"{function.name}: has an outside witness, yet a line says that there is none")
        elif not function.outside() and not function.why_none:
            faults.append(f"{function.name}: has no outside witness, and no line of its golden file says why")
    faults += [f"{name}: argued, but not in the catalogue" for name in why_none if name not in functions]
    return Record(version, compiler, list(functions.values()), faults)
