"""Three pumps side by side on A4 upright: what the sheets of the pump itself share.

A sheet is sections of rows, each written once. A name in braces is a row's key, of this sheet or of one before it;
CW.NAME is a function of the add-in. What is not given leaves the cells that need it empty; what is refused shows an
error, and the sentence stands in the last column and above the figures."""
import re
from collections import namedtuple

from .build import HOME, SERIES, Build
from .odf import Sheet, reference, refusal
from .inputs import USED
from .pump_columns import FIRST, WORKS, fill, works_line

PUMPS = 3
WIDTHS = [5.4, 1.2] + [1.56, 1.13] * PUMPS + [2.73]
TEXT, UNIT, LAST = 0, 1, 2 + 2 * PUMPS
HEIGHT = 0.365

Taken = namedtuple("Taken", "key text unit places")  # from the sheets Data and Checks
Given = namedtuple("Given", "key")  # from the sheet Build
Pairs = namedtuple("Pairs", "first second text")  # two series of Build, side by side
# branches: (condition or none, call, which of its results or none); words: the answer is a word, over both columns.
Found = namedtuple("Found", "key text unit places branches verdict words")
Limit = namedtuple("Limit", "key text unit places item of")  # what the pump's standard sets for the figure `of`


def found(key, text, unit, places, *branches, verdict=None, words=False):
    """Each branch: a call, (call, pick), or (condition, call, pick); the first whose condition holds is asked."""
    made = []
    for branch in branches:
        parts = (branch,) if isinstance(branch, str) else branch
        made.append((None, *parts, None)[:3] if len(parts) < 3 else parts)
    return Found(key, text, unit, places, tuple(made), verdict, words)


def limit(of, text, unit, places, item):
    """item: the standard's item, or a formula for it that begins with '='."""
    return Limit(of + "_limit", text, unit, places, item[1:] if item.startswith("=") else f'"{item}"', of)


CURVES = {one.key + end for one in USED for end in ("", "_running")}  # running: without the point at no flow


def _needs(call):
    """The single cells that a call needs; of a series its first, of the pump's curve its column."""
    keys = re.findall(r"\{(\w+)\}", call)
    single = [key for key in keys if key not in CURVES and key.rsplit("_", 1)[0] not in SERIES]
    return list(
        dict.fromkeys(
            [f"{key}_1" if key in SERIES else key for key in single]
            + ["pump_index"] * any(key in CURVES for key in keys)
        )
    )


def bound(key, unit):
    """A limit that is given, as a number in its unit."""
    return f'IF({{{key}}}="";"";CW.QUANTITY({{{key}}};"{unit}"))'


def given(keys):
    return [Given(key) for key in keys.split()]


class SideBySide:
    def __init__(self, name, title, sections, sources, cautions, plant, places, before=()):
        """before: the sheets whose rows may be named here; the first of them chooses the tags."""
        self.plant, self.places, self.before = plant, places, before
        self.sheet = Sheet(name, WIDTHS, "Upright", HEIGHT)
        self.sections, self.rows, self.made = sections, {}, Build(plant)
        self.title, self.sources, self.cautions = title, sources, cautions

    # -- names
    def find(self, pump):
        value = 2 + 2 * pump

        def one(name):
            if name in ("tag", "pump_index", "build_index"):
                return reference("", {"tag": 3, "pump_index": 4, "build_index": 5}[name], value)
            if name in CURVES:
                home, first, last = self.places.of(name.removesuffix("_running"))
                cells, index = reference(home, first, FIRST, last, self.places.last), one("pump_index")
                return (
                    f"INDEX({cells};2;{index}):INDEX({cells};{last - first + 1};{index})"
                    if name.endswith("_running")
                    else f"INDEX({cells};0;{index})"
                )
            for sheet in (self, *self.before):
                if name in sheet.rows:
                    row, column, last = sheet.rows[name]
                    home = "" if sheet is self else sheet.sheet.name
                    end = (last, value + column) if last else ()
                    return reference(home, row, value + column, *end)
            raise KeyError(name)

        return one

    def title_block(self):
        put, sheet = self.sheet.put, self.sheet
        sheet.heights.update({0: 0.85, 1: 0.36, 2: 0.55})
        put(0, 0, self.title, "Title", across=4)
        put(0, 4, "=" + WORKS, "Works", across=LAST - 3, known=works_line(self.plant))
        for column, wide, label, value in (
            (0, 1, "Made by", None),
            (1, 2, "Checked by", None),
            (3, 2, "Date", None),
            (5, 2, "Revision", self.plant["revision"]),
            (7, 2, "File", None),
        ):
            put(1, column, label, "Box", across=wide)
            put(2, column, value, "BoxInput", across=wide)
        sheet.heights[3] = 0.5
        put(3, 0, "Tag", "Box")
        put(3, UNIT, None, "Box")
        put(3, LAST, "function, or why refused", "Box")
        put(4, 0, "Column on the sheet Data", "Label")
        put(5, 0, f"Column on the sheet {HOME}", "Label")
        for row in (4, 5):
            for column in (UNIT, LAST):
                put(row, column, None, "Label")
        shown = [one["tag"] for one in self.plant.get("builds", ())]
        self.sheet.print_if(3, 2, 2 * PUMPS)
        for pump in range(PUMPS):
            column = 2 + 2 * pump
            if self.before:
                cell = reference(self.before[0].sheet.name, 3, column, 3, column)
                put(3, column, f'=IF({cell}="";"";{cell})', "BoxValue", across=2)
            else:
                put(3, column, shown[pump] if pump < len(shown) else None, "InputTag", across=2, validation="tags")
            tag = reference("", 3, column, 3, column)
            for row, where in ((4, self.places.tags), (5, self.made.row_range("tag"))):
                put(row, column, f'=IF({tag}="";"";IFERROR(MATCH(TRIM({tag});{where};0);""))', "Value0")
                put(row, column + 1, None, "Label")
        sheet.header_rows = 4
        return 6

    # -- formulas
    def _looked_up(self, key, pump):
        home, first, last = self.places.of(key)
        cells = reference(home, first, FIRST, last, self.places.last)
        index = self.find(pump)("pump_index")
        cell = f"INDEX({cells};{1 if first == last else 0};{index})"
        return f'IF({index}="";"";{cell})' if home == "Checks" else f'IF({index}="";"";IF({cell}="";"";{cell}))'

    @staticmethod
    def _value(branch):
        condition, call, pick = branch
        value = call if pick is None else f"INDEX({call};1;{pick})"
        empty = [f'{{{key}}}=""' for key in _needs(call)]
        return condition, f'IF(OR({";".join(empty)});"";{value})' if empty else value

    def _formula(self, one):
        text = (
            ""
            if any(condition is None for condition, *_ in one.branches)
            else f'IF({{{_needs(one.branches[0][0])[0]}}}="";"";"–")'
        )
        for branch in reversed(one.branches):
            condition, value = self._value(branch)
            text = value if condition is None else f"IF({condition};{value};{text})"
        return f'IF({{tag}}="";"";{text}' + (')&""' if one.words else ")")

    @staticmethod
    def _told(one):
        """The sentence that says why this row is refused."""
        text = '""'
        for condition, call, _ in reversed(one.branches):
            told = refusal(call) if call.startswith("CW.") else '""'
            text = told if condition is None else f"IF({condition};{told};{text})"
        return f'IFERROR(IF({text}="";"waits";{text});"waits for a value above")'

    @staticmethod
    def _verdict(one):
        value = f"{{{one.key}}}"
        if one.verdict is None:
            return None
        sense, limit, *failing = one.verdict
        failing = failing[0] if failing else "FAILS"
        if sense == "standard":
            item = limit[1:] if limit.startswith("=") else f'"{limit}"'
            asked = f'CW.REFUSAL("standard_limit";{{pump_standard}};{item})'
            kept = f'IF({{pump_standard}}="";"";IF({asked}<>"";"–";IF(INDEX(CW.STANDARD_CHECK({{pump_standard}};{item};{value});1;1)&""="met";"meets";"{failing}")))'
        elif sense == "word":  # limit: the words that meet, the others fail
            met = ";".join(f'{value}="{word}"' for word in limit)
            watched = failing if isinstance(failing, tuple) else ()
            watch = ";".join(f'{value}="{word}"' for word in watched) or "FALSE()"
            return f'IF(ISERROR({value});"refused";IF(OR({value}="";{value}="–");"";IF(OR({met});"meets";IF(OR({watch});"WATCH";"FAILS"))))'
        else:
            sign = {"≤": "<=", "≥": ">="}[sense]
            kept = (
                f'IF(ISERROR({limit});"refused";IF(ISNUMBER({limit});IF({value}{sign}{limit};"meets";"{failing}");""))'
            )
        return f'IF(ISERROR({value});"refused";IF(ISNUMBER({value});{kept};""))'

    # -- rows
    def _line(self, row, text, unit, last):
        self.sheet.put(row, TEXT, text, "Label")
        self.sheet.put(row, UNIT, unit, "Unit")
        self.sheet.put(row, LAST, last, "Key")

    def _given(self, row, one):
        given = self.made.input[one.key]
        self._line(row, given.text, given.unit, "given")
        self.rows[one.key] = (row, 0, row)
        for pump in range(PUMPS):
            column = 2 + 2 * pump
            self.sheet.put(
                row,
                column,
                self.made.looked_up(one.key, self.find(pump)("build_index")),
                "TextRight",
                across=2 if given.choices else 1,
            )
            if not given.choices:
                self.sheet.put(row, column + 1, None, "Label")

    def _pairs(self, row, one):
        series = [self.made.series[key] for key in (one.first, one.second)]
        for place, key in enumerate((one.first, one.second)):
            self.rows[key] = (row, place, row + series[0].points - 1)
            for point in range(series[0].points):
                self.rows[f"{key}_{point + 1}"] = (row + point, place, row + point)
        for point in range(series[0].points):
            units = dict.fromkeys(one.unit for one in series)
            self._line(row + point, one.text.format(point + 1), "; ".join(units), "given")
            for pump in range(PUMPS):
                for place, key in enumerate((one.first, one.second)):
                    self.sheet.put(
                        row + point,
                        2 + 2 * pump + place,
                        self.made.looked_up(key, self.find(pump)("build_index"), point),
                        "TextRight",
                    )
        return row + series[0].points

    def _taken(self, row, one):
        home, first, last = self.places.of(one.key)
        self._line(row, one.text, one.unit, "sheet " + home)
        self.rows[one.key] = (row, 0, None if home == "Checks" else row)
        for pump in range(PUMPS):
            self.sheet.put(
                row,
                2 + 2 * pump,
                "=" + self._looked_up(one.key, pump),
                f"Value{one.places}" if one.places is not None else "TextRight",
            )
            self.sheet.put(row, 3 + 2 * pump, None, "Label")

    def _found(self, row, one):
        self.rows[one.key] = (row, 0, None)
        calls = "".join(call for _, call, _ in one.branches)
        asked = list(dict.fromkeys(name.lower() for name in re.findall(r"CW\.([A-Z0-9_]+)\(", calls)))
        asked = [name for name in asked if name != "quantity"] or asked  # reading a unit is not worth the room
        names = asked[0] + (", …" if len(asked) > 1 else "") if asked else "in the cell"
        if one.words == "long":
            self.sheet.heights[row] = 0.58  # a long word takes two lines
        told = f'"{names}"'
        for pump in reversed(range(PUMPS)):
            find, column = self.find(pump), 2 + 2 * pump
            self.sheet.put(
                row,
                column,
                "=" + fill(self._formula(one), find),
                "InputSmallPlain" if one.words else f"Value{one.places}",
                across=2 if one.words and one.verdict is None else 1,
            )
            verdict = self._verdict(one)
            if not one.words or one.verdict is not None:
                self.sheet.put(
                    row,
                    column + 1,
                    None if verdict is None else "=" + fill(verdict, find),
                    "Verdict" if verdict else "Label",
                )
            told = f'IF(ISERROR({find(one.key)});{find("tag")}&": "&{fill(self._told(one), find)};{told})'
        self._line(row, one.text, one.unit, "=" + told)

    def _limit(self, row, one):
        """The number, and beside it the clause, marked by how it was come by."""
        self.rows[one.key] = (row, 0, None)
        self._line(row, "\u2003" + one.text, one.unit, "standard_limit")
        for pump in range(PUMPS):
            find, column = self.find(pump), 2 + 2 * pump
            call = f"CW.STANDARD_LIMIT({{pump_standard}};{one.item})"
            empty = f'IF({{pump_standard}}="";"";IF(CW.REFUSAL("standard_limit";{{pump_standard}};{one.item})<>"";"{{}}";{{}}))'
            value, basis = f"INDEX({call};1;1)", f'INDEX({call};1;5)&""'
            mark = f'INDEX({call};1;4)&IF({basis}="from memory";" m";IF({basis}="second hand";" q";" r"))'
            for place, text, missing, style in (
                (0, value, "none held", f"Limit{one.places}Right"),
                (1, mark, "", "Key"),
            ):
                self.sheet.put(
                    row,
                    column + place,
                    "=" + fill(empty.replace("{}", missing, 1).replace("{}", text, 1), find),
                    style if place else "Sense",
                )

    def write(self, row):
        first = row
        for title, rows in self.sections:
            if title.startswith("|"):  # on a new page
                title = title[1:]
                self.sheet.breaks.add(row)
            for column in range(LAST + 1):
                self.sheet.put(row, column, title if column == 0 else None, "HeadGroup")
            row += 1
            for one in rows:
                if isinstance(one, Pairs):
                    row = self._pairs(row, one)
                    continue
                {Given: self._given, Taken: self._taken, Found: self._found, Limit: self._limit}[type(one)](row, one)
                row += 1
        return first, row - 1

    def build(self):
        row = self.title_block()
        states = [row + pump for pump in range(PUMPS)]
        for place in states:
            self.sheet.heights[place] = 0.58
        first, last = self.write(row + PUMPS)
        for pump, place in enumerate(states):
            self.sheet.put(place, 0, "=" + self._state(pump, first, last), "NoteBold", across=LAST + 1)
        self.foot(last + 2)
        self.sheet.put(last + 1, 0, None)
        self.sheet.heights[last + 1] = 0.2
        return self.sheet

    def _state(self, pump, first, last):
        """What is still to be given, what was refused, or the gravest verdict."""
        find, column = self.find(pump), 2 + 2 * pump
        tag = find("tag")
        missing = []
        for title, rows in self.sections:
            for one in rows:
                keys = (
                    [one.key]
                    if isinstance(one, Given)
                    else [f"{one.first}_1", f"{one.second}_1"]
                    if isinstance(one, Pairs)
                    else []
                )
                for key in keys:
                    text, when = self.made.wanted(key)
                    test = f'{find(key)}=""'
                    if when:
                        test = f"AND({fill(when, find)};{test})"
                    if when is not False:
                        missing.append(f'IF({test};"{text}; ";"")')
        wanted = "&".join(missing) or '""'
        values, verdicts = (reference("", first, column + place, last, column + place) for place in (0, 1))
        texts, told = reference("", first, TEXT, last, TEXT), reference("", first, LAST, last, LAST)
        topmost = f"10000-SUMPRODUCT(MAX(ISERROR({values})*(10000-ROW({values}))))-{first}"

        def worst(word):
            return (
                f'IF(COUNTIF({verdicts};"{word}")>0;"{word}:'
                f' "&TRIM(INDEX({texts};MATCH("{word}";{verdicts};0)))&IF(COUNTIF({verdicts};"{word}")>1;" and'
                f' "&(COUNTIF({verdicts};"{word}")-1)&" more";"")'
            )

        verdict = worst("FAILS") + ";" + worst("WATCH") + f';IF(LEN({wanted})>0;"";"Every limit is kept.")))'
        return (
            f'IF({tag}="";"";{tag}&": "&IF({find("pump_index")}="";"no pump of this tag on the sheet'
            f' Data.";IF({find("build_index")}="";"no column of this tag on the sheet'
            f' {HOME}.";IF(SUMPRODUCT(ISERROR({values})*1)>0;"refused: "&TRIM(INDEX({texts};{topmost}))&",'
            f' "&INDEX({told};{topmost});{verdict}&IF(LEN({wanted})>0;" Give:'
            f' "&LEFT({wanted};150)&IF(LEN({wanted})>150;"…";"");"")))))'
        )

    def foot(self, row):
        for title, lines in (("Sources", self.sources), ("Cautions", self.cautions)):
            for column in range(LAST + 1):
                self.sheet.put(row, column, title if column == 0 else None, "HeadGroup")
            for line in lines:
                row += 1
                self.sheet.heights[row] = 0.31 * (1 + len(line) // 152)
                self.sheet.put(row, 0, line, "Foot", across=LAST + 1)
            row += 1
