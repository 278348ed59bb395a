"""One pump in several operating cases: what differs is typed, all else is the sheet Data's, and of each check the worst case leads."""
from . import points, results, verdicts
from .inputs import INPUT, INPUTS, POINTS, SERIES, USED
from .looking import Looking, column_of, foot, title
from .odf import Sheet, reference
from .pump_columns import ALTITUDE, POINT_OF, bad_cell, fact_point, fill

CASES = 5
WIDTHS = [5.6, 1.5, 3.4] + [2.5, 1.6] * CASES
TEXT, UNIT, WORST = 0, 1, 2
LAST = 2 + 2 * CASES  # of what is printed; beyond it a column a case tells why a result is refused
VARIED = (
    "flow",
    "least_flow",
    "temperature",
    "density",
    "vapour_pressure",
    "viscosity",
    "solids_fraction",
    "surface_pressure",
    "liquid_level",
    "static_head",
    "equipment_loss",
)
# What is given by a value belongs to the temperature on Data: at another it must be given anew. Typed here it goes before any other source.
WITH_TEMPERATURE = {"density": "density_by", "vapour_pressure": "vapour_by", "viscosity": "viscosity_by"}
TYPED = {
    "density_used": ("density", 'AND({typed}<>"";{by}="water")'),
    "vapour_used": ("vapour_pressure", '{typed}<>""'),
    "viscosity_used": ("viscosity", '{typed}<>""'),
}
GIVEN = [one.key for one in SERIES]
NOT_INPUTS = ("tag", "service", "liquid", "pump")
PAGE_ROWS = 44  # of A4, wide, below the repeated heading
ALL = [one.key for one in INPUTS if one.key not in NOT_INPUTS]

SOURCES = ("As on the sheet Service: the same calls, with what is typed here in place of the values of Data.",)
CAUTIONS = (
    "A case is as good as its worst input: take the highest temperature with the lowest level, the heaviest and coldest liquid with the greatest flow, the line as it can be, not as it "
    "was designed.",
    "At a flow that is given (end of curve) the check of the system's head falls away: the system must be able to bring the pump there.",
)


class Cases:
    def __init__(self, plant, places):
        self.plant, self.places, self.case = plant, places, plant["cases"]
        self.sheet = Sheet("Cases", WIDTHS + [8.0] * CASES, "Wide", 0.4)
        self.sheet.print_columns = LAST + 1
        self.row, self.first = {}, {}
        self.look = Looking(places, "[.$D$5]")

    def line(self, row, text, unit, key=None):
        self.sheet.put(row, TEXT, text, "Label")
        self.sheet.put(row, UNIT, unit, "Unit")
        self.sheet.put(row, WORST, key, "Small")

    def head(self, row, text, worst=None):
        for column in range(LAST + 1):
            self.sheet.put(row, column, {TEXT: text, WORST: worst}.get(column), "Head")

    def cell(self, row, case, single=False):
        return reference("", row, 3 + 2 * case, *((row, 3 + 2 * case) if single else ()))

    def find(self, case):
        def one(name):
            if name in ("tags", "this_tag"):
                return self.places.tags if name == "tags" else "TRIM([.$D$4])"
            if name == "curve_home":
                return '"this sheet, cell "'
            if name == "altitude":
                return ALTITUDE
            if name == "bad_cell":
                return bad_cell(one, one("bad_series"), one("bad_point"))
            if name in points.PAIRS:
                return points.pair(*(one(part) for part in points.PAIRS[name]))
            if name in self.first:  # a series of this sheet
                return reference("", self.first[name], 3 + 2 * case, self.first[name] + POINTS - 1, 3 + 2 * case)
            if name in self.row:
                return self.cell(self.row[name], case, name in INPUT)
            return self.look.find(name)

        return one

    def build(self):
        put, sheet = self.sheet.put, self.sheet
        title(sheet, "Operating cases of one pump", self.plant, ((0, 1), (1, 2), (3, 4), (7, 2), (9, 4)))
        sheet.heights[3] = 0.6
        self.line(3, "Tag", None)
        put(3, 3, self.case["tag"], "InputTag", across=2, validation="tags")
        self.sheet.print_if(3, 3)
        put(3, 5, "Typed here for", "Box", across=2)
        put(3, 7, self.case["tag"], "BoxInput", across=2, validation="tags")
        put(
            3,
            9,
            f'=IF(TRIM([.$D$4])=TRIM([.$H$4]);"";"What is typed on this sheet is for "&[.$H$4]&": nothing here holds for "&[.$D$4]&".")',
            "Banner",
            across=4,
        )
        sheet.condition(3, 9, 3, 12, '[.$J$4]<>""', "Alarm")
        self.line(4, "Column on the sheet Data", None)
        put(4, 3, column_of(self.places, reference("", 3, 3)), "Value0", across=2)
        sheet.header_rows = 4
        cases = list(self.case["cases"])
        self.given(5, cases)
        return sheet

    def given(self, row, cases):
        put = self.sheet.put
        self.head(row, "Cases: what differs from Data; all else empty")
        self.line(row + 1, "Case", None)
        names = row + 1
        for case in range(CASES):
            put(names, 3 + 2 * case, cases[case].get("case") if case < len(cases) else None, "InputText", across=2)
        typed = {}
        rows = [(key, INPUT[key].text.strip(), INPUT[key].unit) for key in VARIED] + [
            ("at", "Looked at this flow, not at the duty", "m³/h")
        ]
        for index, (key, text, unit) in enumerate(rows, row + 2):
            typed[key] = index
            self.line(index, text, unit, "typed")
            for case in range(CASES):
                put(index, 3 + 2 * case, cases[case].get(key) if case < len(cases) else None, "Input")
                put(index, 4 + 2 * case, None, "Label")
        self.row["at"] = typed["at"]
        row += 2 + len(rows)
        verdict_rows = row
        # The rows further down must be known before anything is written.
        places = self.lay_out(row + 3 + len(results.WEIGHT))
        self.verdicts(verdict_rows, names)
        self.used(typed)
        self.found(names, typed)
        foot(self.sheet, places, SOURCES, CAUTIONS, 250)

    def lay_out(self, row):
        """A block that has no room left on its page begins the next one."""
        self.sheet.breaks.add(row)
        self.start = row
        row += 1
        for key in ALL:
            self.row[key] = row
            row += 1
        taken = (row - self.start) % PAGE_ROWS

        def block(size):
            nonlocal taken
            if taken + size > PAGE_ROWS:
                self.sheet.breaks.add(row)
                taken = 0
            taken += size

        self.groups = {}
        for group in results.GROUPS:
            members = [one for one in results.RESULTS if one.group == group]
            block(1 + len(members))
            self.groups[group] = row
            row += 1
            for one in members:
                self.row[one.key] = row
                row += 1
        self.last_result = row - 1
        self.curve = row
        block(1 + POINTS)
        row += 1
        for index, one in enumerate((*SERIES, *USED)):
            if index:
                block(POINTS)
            self.first[one.key] = row
            row += POINTS
        block(len(points.POINTS_FACTS))
        for key, _ in points.POINTS_FACTS:
            self.row[key] = row
            row += 1
        return row + 1

    def used(self, typed):
        self.head(self.start, "What is used")
        for key in ALL:
            row = self.row[key]
            self.line(row, INPUT[key].text.strip(), INPUT[key].unit, "Data, or as typed" if key in VARIED else "Data")
            for case in range(CASES):
                value = self.look.value(key)
                if key in WITH_TEMPERATURE:
                    by, temperature, own = (
                        self.find(case)(WITH_TEMPERATURE[key]),
                        self.cell(typed["temperature"], case, True),
                        self.cell(typed[key], case, True),
                    )
                    source = f'OR({by}="value";{by}="slurry")'
                    value = f'IF({own}<>"";IF({source};{own};"");IF(AND({temperature}<>"";{source});NA();{value}))'
                elif key in VARIED:
                    own = self.cell(typed[key], case, True)
                    value = f'IF({own}="";{value};{own})'
                self.sheet.put(row, 3 + 2 * case, f'=IF(ISERROR([.$D$5]);"";{value})', "TextRight")
                self.sheet.put(row, 4 + 2 * case, None, "Label")
        for one in SERIES:
            for point in range(POINTS):
                row = self.first[one.key] + point
                self.line(
                    row,
                    f"On water: {one.text.lower() if one.key != 'npsh3s' else one.text}, point {point + 1}",
                    one.unit,
                )
                for case in range(CASES):
                    cell = f"INDEX({self.look.value(one.key)};{point + 1})"
                    self.sheet.put(row, 3 + 2 * case, f'=IF(ISERROR([.$D$5]);"";IF({cell}="";"";{cell}))', "TextRight")
                    self.sheet.put(row, 4 + 2 * case, None, "Label")

    def found(self, names, typed):
        put = self.sheet.put
        for group, row in self.groups.items():
            self.head(row, group)
        named = {"duty_flow": "m³/h", "duty_head": "m"}
        for one in results.RESULTS:
            row = self.row[one.key]
            self.line(row, one.text, one.unit)
            for case in range(CASES):
                find, at = self.find(case), self.cell(typed["at"], case, True)
                formula, refusal, name = fill(one.formula, find), fill(one.refusal, find), self.cell(names, case, True)
                if one.key in named:
                    given = (
                        f'CW.QUANTITY({at};"m³/h")'
                        if one.key == "duty_flow"
                        else f"CW.CURVE_HEAD({find('on_heads')};{find('duty_flow')})"
                    )
                    formula = f'IF({at}="";{formula};{given})'
                if one.key in TYPED:
                    key, condition = TYPED[one.key]
                    own = self.cell(typed[key], case, True)
                    condition = condition.format(typed=own, by=find(WITH_TEMPERATURE[key]))
                    formula = f'IF({condition};CW.QUANTITY({own};"{INPUT[key].unit}");{formula})'
                    waits = f'IF(AND({self.cell(typed["temperature"], case, True)}<>"";{own}="");"give it for this temperature";"")'
                    refusal = f'IF({waits}="";{refusal};{waits})'
                put(
                    row,
                    3 + 2 * case,
                    f'=IF({name}="";"";IF(TRIM([.$D$4])=TRIM([.$H$4]);{formula};NA()))',
                    "TextRight" if one.key in results.TEXTS else f"Value{one.places}",
                )
                value = self.cell(row, case)
                put(row, 4 + 2 * case, f'=IF({name}="";"";IF(ISERROR({value});"refused";""))', "Verdict")
                put(
                    row,
                    LAST + 1 + case,
                    f'=IF(ISERROR({value});IFERROR(IF({refusal}="";"";{name}&", {one.text}: "&{refusal});"");"")',
                    "Text",
                )
            whys = reference("", row, LAST + 1, row, LAST + CASES)
            put(
                row,
                WORST,
                f'=IF(SUMPRODUCT(({whys}<>"")*1)>0;"refused: see the first page";{fill(one.words, self.find(0))})',
                "Small",
            )
        for case in range(CASES):
            put(self.groups[results.GROUPS[0]], LAST + 1 + case, None, "Head")
        self.curves(names)

    def curves(self, names):
        put = self.sheet.put
        self.head(self.curve, "Curve on the liquid, and the system")
        for series in USED:
            first = self.first[series.key]
            for point in range(POINTS):
                self.line(first + point, f"{series.text}, point {point + 1}", series.unit)
                for case in range(CASES):
                    find = self.find(case)

                    def at_point(name):
                        if name == "i":
                            return str(point + 1)
                        if name in POINT_OF:
                            key = POINT_OF[name]
                            return self.cell(self.first[key] + point, case, key in GIVEN)
                        return find(name)

                    put(
                        first + point,
                        3 + 2 * case,
                        f'=IF({self.cell(names, case, True)}="";"";{fill(points.point(series.key), at_point)})',
                        "Value3",
                    )
                    put(first + point, 4 + 2 * case, None, "Label")
        for key, formula in points.POINTS_FACTS:
            row = self.row[key]
            self.line(row, points.fact_text(key), None)
            for case in range(CASES):
                find = self.find(case)
                point = fact_point(find, find("bad_point"))
                shown = fill(formula, lambda name: point[name] if name in point else find(name))
                put(
                    row,
                    3 + 2 * case,
                    f'=IF({self.cell(names, case, True)}="";"";{shown})',
                    "Reason" if key == "bad_text" else "Value0",
                    across=2,
                )

    def verdicts(self, row, names):
        """Each check: the worst case's name and its distance from the limit, then every case's value and word."""
        put = self.sheet.put
        self.head(row, "Checks", "worst case")
        top = row + 1
        self.line(top, "Verdict of the case", None)
        every = []
        for index, key in enumerate(results.WEIGHT, top + 1):
            one = results.RESULT[key]
            self.line(index, one.text, one.unit)
            scores = []
            for case in range(CASES):
                find, name, value = self.find(case), self.cell(names, case, True), self.cell(index, case)
                skipped = (
                    f'AND({self.cell(self.row["at"], case, True)}<>"";TRUE())' if key == "pump_head" else "FALSE()"
                )
                put(
                    index,
                    3 + 2 * case,
                    f'=IF({name}="";"";IF({skipped};"–";{self.cell(self.row[key], case)}))',
                    "TextRight" if key in results.TEXTS else f"Value{one.places}",
                )
                limit = fill(verdicts.limit(one), find)
                put(index, 4 + 2 * case, f'=IF({name}="";"";{verdicts.verdict(one, value, limit)})', "Verdict")
                word = reference("", index, 4 + 2 * case)
                ratio = (
                    f"IFERROR({value}/{limit};0)"
                    if one.limit[0] == "≤"
                    else f"IFERROR({limit}/{value};0)"
                    if one.limit[0] == "≥"
                    else "0"
                )
                graded = f'IF({word}="refused";4000;IF({word}="FAILS";3000;IF({word}="WATCH";2000;IF({word}="meets";1000;0))))'
                scores.append(f"{graded}+MAX(0;MIN(999;{ratio}))")
            most = f'MAX({";".join(scores)})'
            lead = '""'
            for case in reversed(range(CASES)):
                lead = f"IF({scores[case]}={most};{self.cell(names, case, True)};{lead})"
            put(index, WORST, f'=IF({most}<1000;"";{lead})', "Text")
            every.append(index)
        result_rows = (self.row[results.RESULTS[0].key], self.last_result)
        for case in range(CASES):
            column = 3 + 2 * case
            found = reference("", result_rows[0], column, result_rows[1], column)
            words = reference("", every[0], column + 1, every[-1], column + 1)
            put(
                top,
                column,
                f'=IF({self.cell(names, case, True)}="";"";{verdicts.overall(found, words)})',
                "VerdictBox",
                across=2,
            )
        block = reference("", self.row[results.RESULTS[0].key], LAST + 1, self.last_result, LAST + CASES)
        put(
            every[-1] + 1,
            0,
            f'=IF(SUMPRODUCT(({block}<>"")*1)=0;"Nothing was refused.";"Refused: "&LEFT(COM.MICROSOFT.TEXTJOIN("; ";1;{block});900))',
            "Note",
            across=LAST + 1,
        )
        self.sheet.heights[every[-1] + 1] = 1.3
        order = (
            "".join(
                f'IF(COUNTIF([.$D${top + 1}:.$M${top + 1}];"{word}")>0;"{word}";'
                for word in ("refused", "FAILS", "WATCH")
            )
            + '"meets")))'
        )
        put(top, WORST, f'=IF(TRIM([.$D$4])="";"";IF(ISERROR([.$D$5]);"no pump of this tag";{order}))', "VerdictBox")


__all__ = ["Cases"]
