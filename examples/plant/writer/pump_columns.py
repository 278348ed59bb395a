"""The sheets that hold a column a pump: Data (what is given), Curves (on the liquid pumped), Checks (what is found)."""
from . import points, results, verdicts
from .inputs import CHOICES, GROUPS, IDENTITY, IDLE, INPUTS, POINTS, SERIES, USED
from .odf import Sheet, cell_name, column_letter, reference

FIRST = 3  # the first pump's column
WORKS_ROWS = (
    ("works", "Works"),
    ("unit", "Unit of the works"),
    ("remark", "Remark, printed below the register"),
    ("altitude", "Altitude of the works, m"),
)
WORKS_ROW = {key: row for row, (key, _) in enumerate(WORKS_ROWS, 2)}
ALTITUDE = reference("Data", WORKS_ROW["altitude"], FIRST, WORKS_ROW["altitude"], FIRST)
WORKS = f'{reference("Data", WORKS_ROW["works"], FIRST)}&IF({reference("Data", WORKS_ROW["unit"], FIRST)}="";"";", "&{reference("Data", WORKS_ROW["unit"], FIRST)})'
TALL = ("service", "liquid", "pump")


def works_line(plant):
    """What the formula WORKS comes to, for cells that bring their text along."""
    return ", ".join(str(plant[key]) for key in ("works", "unit") if str(plant[key]))


class Places:
    """Row of everything, the same on each of the three sheets' own rows; one column a pump."""

    def __init__(self, columns):
        self.count = columns
        self.last = FIRST + self.count - 1
        self.input, self.series, self.used, self.result, self.verdict = {}, {}, {}, {}, {}
        self.worst, self.fact = {}, {}
        self.tags = reference("Checks", 2, FIRST, 2, self.last)  # without blanks before or behind

    def of(self, name):
        """(sheet, first row, last row) of an input, a series or a result."""
        if name in self.input:
            return "Data", self.input[name], self.input[name]
        if name in self.series:
            return "Data", self.series[name], self.series[name] + POINTS - 1
        if name in self.used:
            return "Curves", self.used[name], self.used[name] + POINTS - 1
        if name in self.fact:
            return "Curves", self.fact[name], self.fact[name]
        if name in self.result:
            return "Checks", self.result[name], self.result[name]
        raise KeyError(name)

    def column_range(self, name, column):
        """The cells of one pump, as a range; results as plain cells, so that their own errors show."""
        if name == "altitude":
            return ALTITUDE
        if name == "tags":
            return self.tags
        if name == "this_tag":
            return reference("Checks", 2, column)
        if name == "curve_home":
            return '"sheet Data, cell "'
        if name == "bad_cell":
            return bad_cell(
                lambda series: self.column_range(series, column),
                reference("Curves", self.fact["bad_series"], column),
                reference("Curves", self.fact["bad_point"], column),
            )
        if name in points.PAIRS:
            return points.pair(*(self.column_range(part, column) for part in points.PAIRS[name]))
        sheet, first, last = self.of(name)
        if sheet == "Checks" or name in self.fact:
            return reference(sheet, first, column)
        return reference(sheet, first, column, last, column)

    def row_range(self, name):
        sheet, first, last = self.of(name)
        return reference(sheet, first, FIRST, last, self.last)


def bad_cell(cells, series, point):
    """The given cell of the first point that is refused."""
    return f'INDEX(CHOOSE({series}+({series}=0);{";".join(cells(one.key) for one in SERIES)});{point})'


class Names(dict):
    """What stands in a formula's braces, found when it is asked for."""

    def __init__(self, find):
        super().__init__()
        self.find = find

    def __missing__(self, name):
        return self.find(name)


def fill(formula, find):
    return formula.format_map(Names(find))


def _shown(formula, places, column):
    """A column without a tag shows nothing."""
    return f'=IF({reference("Checks", 2, column)}="";"";{formula})'


def _start(name, places, title, subtitle):
    sheet = Sheet(name, [3.1, 5.3, 1.6] + [1.75] * places.count, "Columns", 0.44)
    sheet.heights[0] = 0.8
    sheet.put(0, 0, title, "Title", across=8)
    sheet.put(1, 0, subtitle, "Plain", across=min(12, places.count) + 3)
    sheet.header_columns = 3
    return sheet


def _head(sheet, row, text, places):
    sheet.put(row, 0, text, "Head")
    for column in range(1, places.last + 1):
        sheet.put(row, column, None, "Head")


def _tags(sheet, row, places, plant):
    sheet.put(row, 0, "Tag", "Head")
    sheet.put(row, 1, None, "Head")
    sheet.put(row, 2, None, "Head")
    tags = [pump["tag"] for pump in plant["pumps"]]
    for index in range(places.count):
        cell = reference("Data", places.input["tag"], FIRST + index)
        sheet.put(row, FIRST + index, f"=TRIM({cell})", "HeadTag", known=tags[index] if index < len(tags) else " ")
    sheet.print_tags(row, FIRST, places.count)
    sheet.header_first, sheet.header_rows = 0, row + 1


def data_sheet(plant, places):
    pumps = plant["pumps"]
    sheet = _start(
        "Data",
        places,
        "Data of the pumps",
        "A column a pump. Numbers in the unit of their row, or texts with a unit of their own (440 US gpm). Empty a column and its pump is gone from every sheet. "
        "Grey: not used with the words chosen; struck out: given all the same.",
    )
    sheet.protected = False
    for key, text in WORKS_ROWS:
        row = WORKS_ROW[key]
        sheet.put(row, 0, key, "Key")
        sheet.put(row, 1, text, "Label")
        sheet.put(row, 2, "m" if key == "altitude" else None, "Unit")
        sheet.put(
            row,
            3,
            plant[key],
            "Input" if key == "altitude" else "InputText",
            across=1 if key == "altitude" else min(8, places.count),
        )
    row = 2 + len(WORKS_ROWS)
    sheet.put(row, 0, None, "Key")
    sheet.put(row, 1, "Columns without a tag are not calculated", "Label")
    sheet.put(row, 2, None, "Unit")
    state = row
    row += 1
    for group in GROUPS:
        _head(sheet, row, group, places)
        row += 1
        for one in (one for one in INPUTS if one.group == group):
            places.input[one.key] = row
            sheet.put(row, 0, one.key, "Key")
            sheet.put(row, 1, one.text, "Label")
            sheet.put(row, 2, one.unit, "Unit")
            small = one.key in TALL or one.key in CHOICES or one.key == "tag"
            if one.key in TALL:
                sheet.heights[row] = 0.95
            for index in range(places.count):
                value = pumps[index].get(one.key) if index < len(pumps) else None
                style = "InputTop" if one.key in TALL else "InputSmall" if small else "Input"
                sheet.put(
                    row, FIRST + index, value, style, validation=f"choice_{one.key}" if one.key in CHOICES else None
                )
            row += 1
    sheet.header_first, sheet.header_rows = places.input["tag"], places.input["tag"] + 1
    sheet.print_tags(places.input["tag"], FIRST, places.count)
    sheet.button("PDF of what is filled", "Printing.AsPdf", 21.0, 0.1, 4.6, 0.65)
    sheet.breaks |= {places.input["surface_pressure"] - 1, row}
    for series in SERIES:
        _head(sheet, row, f"Pump curve on water, as the maker gives it: {series.text}", places)
        row += 1
        places.series[series.key] = row
        for point in range(POINTS):
            sheet.put(row, 0, f"{series.key} {point + 1}", "Key")
            sheet.put(row, 1, f"Point {point + 1}", "Label")
            sheet.put(row, 2, series.unit, "Unit")
            for index in range(places.count):
                values = pumps[index].get(series.key, ()) if index < len(pumps) else ()
                sheet.put(row, FIRST + index, values[point] if point < len(values) else None, "Input")
            row += 1
    tag = places.input["tag"]
    for column in range(FIRST, places.last + 1):
        cells = reference("", tag + 1, column, row - 1, column)
        sheet.put(
            state,
            column,
            f'=IF(AND(TRIM({reference("", tag, column)})="";COUNTA({cells})>0);"no tag";"")',
            "InputSmallPlain",
        )
    sheet.condition(state, FIRST, state, places.last, f'[.{cell_name(state, FIRST)}]="no tag"', "Alarm")
    idle_conditions(
        sheet,
        places,
        lambda key: (places.input[key], FIRST, places.input[key], places.last),
        lambda key: f"[.{column_letter(FIRST)}${places.input[key] + 1}]",
    )
    return sheet


def idle_conditions(sheet, places, area, cell):
    """Grey where an input has no part in the result, struck out where it was given all the same."""
    for key, idle in IDLE.items():
        condition = fill(idle, cell)
        sheet.condition(*area(key), f'AND({cell(key)}<>"";{condition})', "Unused")
        sheet.condition(*area(key), condition, "Idle")


POINT_OF = {
    "flow_i": "flows",
    "head_i": "heads",
    "efficiency_i": "efficiencies",
    "npsh3_i": "npsh3s",
    "used_flow_i": "used_flows",
    "used_head_i": "used_heads",
    "used_efficiency_i": "used_efficiencies",
}


def curves_sheet(plant, places):
    sheet = _start(
        "Curves",
        places,
        "Pump curves on the liquid pumped",
        "From the points on the sheet Data: as they are, or corrected for viscosity (ISO/TR 17766) or for solids where that is asked for.",
    )
    _tags(sheet, 2, places, plant)
    row = 3
    for series in USED:
        places.used[series.key] = row + 1
        row += POINTS + 1
    sheet.breaks.add(places.used["used_npsh3s"] - 1)
    for series in USED:
        row = places.used[series.key]
        _head(sheet, row - 1, series.text, places)
        for point in range(POINTS):
            sheet.put(row + point, 0, f"{series.key} {point + 1}", "Key")
            sheet.put(row + point, 1, f"Point {point + 1}", "Label")
            sheet.put(row + point, 2, series.unit, "Unit")
    row = max(places.used.values()) + POINTS
    _head(sheet, row, "The curve's points", places)
    for key, _ in points.POINTS_FACTS:
        row += 1
        places.fact[key] = row
        sheet.put(row, 0, key, "Key")
        sheet.put(row, 1, points.fact_text(key), "Label")
        sheet.put(row, 2, None, "Unit")
    sheet.heights[row] = 2.2
    return sheet


def fill_curves(sheet, places):
    digits = {
        "used_flows": 1,
        "used_heads": 2,
        "used_efficiencies": 3,
        "used_npsh3s": 2,
        "used_powers": 2,
        "used_system": 2,
    }
    for index in range(places.count):
        column = FIRST + index
        for key, formula in points.POINTS_FACTS:
            point = fact_point(
                lambda series: places.column_range(series, column), places.column_range("bad_point", column)
            )
            shown = fill(formula, lambda name: point[name] if name in point else places.column_range(name, column))
            sheet.put(
                places.fact[key], column, _shown(shown, places, column), "Reason" if key == "bad_text" else "Value0"
            )
    for series in USED:
        for point in range(POINTS):
            for index in range(places.count):
                column = FIRST + index

                def find(name):
                    if name == "i":
                        return str(point + 1)
                    if name in POINT_OF:
                        home, first, _ = places.of(POINT_OF[name])
                        row = (
                            first + point
                        )  # of what is given a range of one cell: a plain reference to an empty cell arrives as 0
                        return (
                            reference(home, row, column, row, column)
                            if home == "Data"
                            else reference(home, row, column)
                        )
                    return places.column_range(name, column)

                formula = fill(points.point(series.key), find)
                sheet.put(
                    places.used[series.key] + point,
                    column,
                    _shown(formula, places, column),
                    f"Value{digits[series.key]}",
                )


def fact_point(cells, number):
    """The given values at the first point that is refused: ranges of one cell, in which an empty one is not zero."""
    one = {key: f"INDEX({cells(POINT_OF[key])};{number})" for key in ("flow_i", "head_i", "efficiency_i", "npsh3_i")}
    return {key: f"{cell}:{cell}" for key, cell in one.items()} | {"i": number}


def checks_sheet(plant, places):
    sheet = _start(
        "Checks",
        places,
        "Every check of every pump",
        "Each number is a call of cutwater with the cells of Data, of Curves and of the rows above; each word compares it with its limit.",
    )
    _tags(sheet, 2, places, plant)
    row = 3
    for group in results.GROUPS:
        _head(sheet, row, group, places)
        row += 1
        for one in (one for one in results.RESULTS if one.group == group):
            places.result[one.key] = row
            sheet.put(row, 0, one.key, "Key")
            sheet.put(row, 1, one.text, "Label")
            sheet.put(row, 2, one.unit, "Unit")
            row += 1
    sheet.breaks |= {places.result["wanted"] - 1, row}
    _head(sheet, row, "Verdicts, gravest first", places)
    row += 1
    for key in results.WEIGHT:
        places.verdict[key] = row
        sheet.put(row, 0, key, "Key")
        sheet.put(row, 1, results.RESULT[key].text, "Label")
        sheet.put(row, 2, None, "Unit")
        row += 1
    _head(sheet, row, "The worst of them", places)
    for key, text in (
        ("verdict", "Verdict"),
        ("check", "Worst check"),
        ("findings", "All that is not met"),
        ("severity", "1 refused, 2 fails, 3 watch, 4 meets"),
        ("place", "Place in the register"),
    ):
        row += 1
        places.worst[key] = row
        sheet.put(row, 0, None, "Key")
        sheet.put(row, 1, text, "Label")
        sheet.put(row, 2, None, "Unit")
    sheet.heights[places.worst["check"]] = 0.95
    sheet.heights[places.worst["findings"]] = 3.2
    return sheet


def fill_checks(sheet, places):
    first_verdict, last_verdict = places.verdict[results.WEIGHT[0]], places.verdict[results.WEIGHT[-1]]
    labels = reference("", first_verdict, 1, last_verdict, 1)
    first_result, last_result = min(places.result.values()), max(places.result.values())
    causes = reference("", first_result, 1, last_result, 1)
    for index in range(places.count):
        column = FIRST + index

        def find(name):
            return places.column_range(name, column)

        for one in results.RESULTS:
            style = "Verdict" if one.key in results.TEXTS else f"Value{one.places}"
            sheet.put(places.result[one.key], column, _shown(fill(one.formula, find), places, column), style)
        for key in results.WEIGHT:
            one = results.RESULT[key]
            value = reference("", places.result[key], column, fixed=False)
            limit = fill(verdicts.limit(one), find)
            sheet.put(
                places.verdict[key], column, _shown(verdicts.verdict(one, value, limit), places, column), "Verdict"
            )
        words = reference("", first_verdict, column, last_verdict, column, fixed=False)
        cell = {key: reference("", row, column, fixed=False) for key, row in places.worst.items()}
        found = reference("", first_result, column, last_result, column, fixed=False)
        sheet.put(places.worst["verdict"], column, _shown(verdicts.overall(found, words), places, column), "Verdict")
        named = verdicts.worst(
            cell["verdict"], found, causes, lambda key: reference("", places.verdict[key], column, fixed=False)
        )
        sheet.put(places.worst["check"], column, _shown(named, places, column), "InputSmallPlain")
        every = ";".join(f'IF({words}="{name}";{labels};"")' for name in ("refused", "FAILS", "WATCH"))
        sheet.block(
            places.worst["findings"],
            column,
            1,
            1,
            _shown(f'COM.MICROSOFT.TEXTJOIN("; ";1;{every})', places, column),
            ("Reason",),
        )
        sheet.put(
            places.worst["severity"],
            column,
            _shown(f'MATCH({cell["verdict"]};{{"refused";"FAILS";"WATCH";"meets"}};0)', places, column),
            "Value0",
        )
        row = places.worst["severity"]
        everyone = reference("", row, FIRST, row, places.last)
        before = f"[.{cell_name(row, FIRST, True)}:.{cell_name(row, column)}]"
        rank = f'COUNTIF({everyone};"<"&{cell["severity"]})+COUNTIF({before};{cell["severity"]})'
        sheet.put(places.worst["place"], column, _shown(rank, places, column), "Value0")


__all__ = [
    "Places",
    "WORKS",
    "works_line",
    "bad_cell",
    "fact_point",
    "idle_conditions",
    "data_sheet",
    "curves_sheet",
    "fill_curves",
    "checks_sheet",
    "fill_checks",
    "fill",
    "FIRST",
    "IDENTITY",
]
