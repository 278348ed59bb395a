"""cutwater.bas against the C header, signature by signature, against the catalogue, and against Visual Basic's limits.
   macro_module_test.py PRODUCTS"""
import json
import pathlib
import re
import sys
import unittest

PRODUCTS = pathlib.Path(sys.argv[1])
BYTES = (PRODUCTS / "excel/cutwater.bas").read_bytes()
TEXT = BYTES.decode("ascii").replace("\r\n", "\n")
STATEMENTS = [s.replace("( ", "(") for s in re.sub(r" _\n\s*", " ", TEXT).split("\n") if s.strip()]
CATALOGUE = json.loads((PRODUCTS / "catalogue.json").read_text(encoding="utf-8"))
# MS-VBAL 3.3.5.2, the reserved identifiers, from memory of it; apart from the list that the module is made by.
RESERVED = set("""abs addressof and any array as attribute boolean byref byte byval call case cbool cbyte ccur cdate cdbl cdec cint circle
    clng clnglng clngptr close const csng cstr currency cvar cverr date debug decimal declare defbool defbyte defcur defdate defdbl defint
    deflng deflnglng deflngptr defobj defsng defstr defvar dim do doevents double each else elseif empty end endif enum eqv erase event exit
    false fix for friend function get global go gosub goto if imp implements in input inputb int integer is lbound len lenb let like local
    lock long longlong longptr loop lset me mod new next not nothing null on open option optional or paramarray preserve print private pset
    public put raiseevent redim rem resume return rset scale seek select set sgn shared single spc static stop string sub tab then to true
    type typeof ubound unlock until variant wend while with withevents write xor""".split())
OF_C = {"double": "ByVal {} As Double", "const char *": "ByVal {} As String", "const double *": "ByRef {} As Double", "size_t": "ByVal {} As LongPtr",
        "double *": "ByRef {} As Double", "const char **": "ByRef {} As LongPtr", "size_t *": "ByRef {} As LongPtr",
        "cutwater_refusal *": "ByRef {} As cutwater_refusal"}


def parameters(text):
    return [p.strip() for p in text.split(",")] if text.strip() else []


def c_signatures():
    """{name: [parameter as Visual Basic must declare it]} of every direct function."""
    found = {}
    for header in sorted((PRODUCTS / "include/cutwater/families").glob("*.h")):
        code = re.sub(r"/\*.*?\*/", "", header.read_text(encoding="utf-8"), flags=re.S)
        for name, list_ in re.findall(r"CUTWATER_API cutwater_status (cutwater_\w+)\(([^)]*)\)", code):
            if "cutwater_rows_report" in list_:
                continue
            kinds = [re.fullmatch(r"(.*?)(\w+)", " ".join(p.split())).groups() for p in parameters(list_)]
            found[name] = [OF_C[kind.strip()].format(own) for kind, own in kinds]
    return found


def declared():
    return {name: (tail, parameters(list_)) for name, list_, tail in
            re.findall(r"^Public Declare PtrSafe Function (\w+) Lib \"cutwater\.dll\" \(([^)]*)\) As (\w+)$", "\n".join(STATEMENTS), re.M)}


def procedures():
    """{name: (parameters, lines of its body)}"""
    found, name, body = {}, None, []
    for s in STATEMENTS:
        begun = re.match(r"(?:Public|Private) (?:Function|Sub) (\w+)\((.*)\)(?: As \w+)?$", s)
        if begun:
            assert name is None, s
            name, given, body = begun[1], parameters(begun[2].replace("()", "")), []
        elif re.match(r"End (Function|Sub)$", s):
            assert name not in found, name
            found[name], name = (given, body), None
        elif name:
            body.append(s.strip())
    assert name is None
    return found


class MacroModule(unittest.TestCase):
    def test_declarations_are_the_headers(self):
        wanted, got = c_signatures(), declared()
        self.assertEqual(got.pop("cutwater_left_out"), ("Double", []))
        self.assertGreater(len(wanted), 300)
        self.assertEqual(wanted.keys(), got.keys())
        for name, list_ in wanted.items():
            self.assertEqual((name, ("Long", list_)), (name, got[name]))

    def test_refusal_lies_as_in_c(self):
        base = (pathlib.Path(__file__).parents[3] / "include/cutwater/base.h").read_text(encoding="utf-8")
        c = re.search(r"typedef struct cutwater_refusal \{(.*?)\}", base, re.S)[1]
        of_c = re.findall(r"^\s*(\w+) (\w+)(?:\[(\d+)\])?;", re.sub(r"/\*.*?\*/", "", c, flags=re.S), re.M)
        basic = re.search(r"Public Type cutwater_refusal\n(.*?)End Type", TEXT, re.S)[1]
        of_basic = re.findall(r"^\s*(\w+)(?:\(0 To (\d+)\))? As (\w+)$", basic, re.M)
        sizes = {"int32_t": ("Long", ""), "int64_t": ("LongPtr", ""), "double": ("Double", "")}
        wanted = [(name, str(int(room) - 1) if room else "", "Byte" if room else sizes[kind][0]) for kind, name, room in of_c]
        self.assertEqual(len(wanted), 11)
        self.assertEqual(wanted, of_basic)
        # Every member lies where its size divides, so both packings of Visual Basic's come to the same.
        offset = 0
        for _, last, kind in of_basic:
            size = {"Long": 4, "LongPtr": 8, "Double": 8, "Byte": 1}[kind]
            self.assertEqual(offset % size, 0)
            offset += size * (int(last) + 1 if last else 1)

    def test_every_function_is_callable(self):
        found = procedures()
        for f in CATALOGUE["functions"]:
            given, body = found[f["name"].upper()]
            inputs = [re.sub(r"_given$", "", p.split()[-3]) for p in given]
            self.assertEqual([i["name"] for i in f["inputs"]], inputs)
            for p, i in zip(given, f["inputs"]):
                self.assertEqual(p.startswith("Optional ByVal "), "default" in i, f["name"])
                self.assertTrue(p.endswith(" As Variant"), p)
            names = ", ".join(p.split()[-3] for p in given)
            self.assertEqual(body, [f'{f["name"].upper()} = CutwaterAnswer("{f["name"]}", Array({names}))'])
        for q in CATALOGUE["questions"]:
            given, body = found[q["name"].upper()]
            self.assertEqual(len(given), len(q["arguments"]))
            for p, a in zip(given, q["arguments"]):
                self.assertEqual(p.startswith("ParamArray "), a["rest"])
            self.assertIn(f'{q["name"].upper()} = CutwaterAnswer("{q["name"]}", ', body[0])
            for p in given:
                self.assertRegex(body[0], rf"\b{p.split()[-3]}\b")

    def test_limits(self):
        self.assertEqual(BYTES.count(b"\n"), BYTES.count(b"\r\n"))
        lines = TEXT.split("\n")
        self.assertLess(len(lines), 65534)
        self.assertLessEqual(max(map(len, lines)), 1023)
        continued = 0
        for line in lines:
            continued = continued + 1 if line.endswith(" _") else 0
            self.assertLessEqual(continued, 24, line)
        for name, (given, body) in procedures().items():
            self.assertLessEqual(len(given), 60)
            self.assertLess(sum(map(len, body)), 65536, name)
        for name, (_, given) in declared().items():
            self.assertLessEqual(len(given), 60, name)

    def test_names(self):
        found = [*procedures(), *declared(), "CutwaterRefused", "LoadLibraryW", "MultiByteToWideChar", "cutwater_macro_call", "cutwater_refusal"]
        small = [name.lower() for name in found]
        self.assertEqual(len(small), len(set(small)))
        lists = [given for given, _ in procedures().values()] + [given for _, given in declared().values()]
        for given in lists:
            own = [p.split(" As ")[0].split()[-1].lower() for p in given]
            self.assertEqual(len(own), len(set(own)), given)
            optional = [p.startswith("Optional ") for p in given]
            self.assertEqual(optional, sorted(optional), given)  # none after it that must be given
            small += own
        for name, (given, _) in procedures().items():
            self.assertNotIn(name.lower(), [p.split(" As ")[0].split()[-1].lower() for p in given])  # its own name is its result's
        for name in set(small):
            self.assertNotIn(name, RESERVED)
            self.assertRegex(name, r"^[a-z][a-z0-9_]{0,254}$")

    def test_blocks_are_closed(self):
        ends = {"If": "End If", "For": "Next", "Do": "Loop", "Type": "End Type", "Function": "End Function", "Sub": "End Sub"}
        open_ = []
        for s in (s.split("'")[0].strip() if not '"' in s else s.strip() for s in STATEMENTS):
            word = re.match(r"(?:Public |Private )?(Function|Sub|Type|For|Do)\b|(If)\b.* Then$", s)
            if word:
                open_.append(ends[word[1] or word[2]])
            elif s in ends.values():
                self.assertEqual(open_.pop(), s)
        self.assertEqual(open_, [])


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1])
