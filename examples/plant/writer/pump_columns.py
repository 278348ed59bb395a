"""The sheets that hold a column a pump: Data (what is given), Curves (on the liquid pumped), Checks (what is found)."""
from . import results
from .inputs import CHOICES, GROUPS, IDENTITY, INPUTS, POINTS, SERIES, USED
from .odf import Sheet, cell_name, reference

FIRST, SPARES = 3, 2  # the first pump's column; columns left empty for pumps of one's own
ALTITUDE = reference("Data", 2, FIRST, 2, FIRST)
TALL = ("service", "liquid", "pump")


class Places:
    """Row of everything, the same on each of the three sheets' own rows; one column a pump."""

    def __init__(self, pumps):
        self.count = pumps + SPARES
        self.last = FIRST + self.count - 1
        self.input, self.series, self.used, self.result, self.verdict = {}, {}, {}, {}, {}
        self.worst = {}

    def of(self, name):
        """(sheet, first row, last row) of an input, a series or a result."""
        if name in self.input:
            return "Data", self.input[name], self.input[name]
        if name in self.series:
            return "Data", self.series[name], self.series[name] + POINTS - 1
        if name in self.used:
            return "Curves", self.used[name], self.used[name] + POINTS - 1
        if name in self.result:
            return "Checks", self.result[name], self.result[name]
        raise KeyError(name)

    def column_range(self, name, column):
        """The cells of one pump, as a range; results as plain cells, so that their own errors show."""
        if name == "altitude":
            return ALTITUDE
        if name == "tags":
            return self.row_range("tag")
        sheet, first, last = self.of(name)
        if sheet == "Checks":
            return reference(sheet, first, column)
        return reference(sheet, first, column, last, column)

    def row_range(self, name):
        sheet, first, last = self.of(name)
        return reference(sheet, first, FIRST, last, self.last)


class Names(dict):
    """What stands in a formula's braces, found when it is asked for."""

    def __init__(self, find):
        super().__init__()
        self.find = find

    def __missing__(self, name):
        return self.find(name)


def fill(formula, find):
    return formula.format_map(Names(find))


def _spare(formula, places, column, index):
    """A column without a tag shows nothing."""
    if index < places.count - SPARES:
        return "=" + formula
    return f'=IF({reference("Data", places.input["tag"], column)}="";"";{formula})'


def _start(name, places, title, subtitle):
    sheet = Sheet(name, [2.3, 5.0, 1.5] + [1.75] * places.count, "Wide", 0.44)
    sheet.heights[0] = 0.8
    sheet.put(0, 0, title, "Title", across=8)
    sheet.put(1, 0, subtitle, "Plain", across=places.count + 3)
    return sheet


def _head(sheet, row, text, places):
    sheet.put(row, 0, text, "Head")
    for column in range(1, places.last + 1):
        sheet.put(row, column, None, "Head")


def _tags(sheet, row, places, plant):
    sheet.put(row, 0, "Tag", "Head")
    sheet.put(row, 1, None, "Head")
    sheet.put(row, 2, None, "Head")
    tags = [pump["tag"] for pump in plant["pumps"]] + [" "] * SPARES
    for index, tag in enumerate(tags):
        cell = reference("Data", places.input["tag"], FIRST + index)
        sheet.put(row, FIRST + index, f'=IF({cell}="";"";{cell})', "HeadCentre", known=tag)
    sheet.header_rows = row + 1


def data_sheet(plant, places):
    pumps = plant["pumps"]
    sheet = _start("Data", places, "Data of the pumps",
                   "Numbers in the unit of their row, or texts with a unit of their own (440 US gpm). "
                   "The two last columns are for pumps of your own: fill one in, then choose its tag on the sheet Service.")
    sheet.put(2, 1, "Altitude of the works", "Label")
    sheet.put(2, 2, "m", "Unit")
    sheet.put(2, 3, plant["altitude"], "Input")
    row = 3
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
                style = "InputSmall" if small else "Input"
                sheet.put(row, FIRST + index, value, style, validation=f"choice_{one.key}" if one.key in CHOICES else None)
            row += 1
    sheet.header_rows = places.input["tag"] + 1
    sheet.breaks |= {places.input["speed"] - 1, row}
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
    return sheet


POINT_OF = {"flow_i": "flows", "head_i": "heads", "efficiency_i": "efficiencies", "npsh3_i": "npsh3s",
            "used_flow_i": "used_flows", "used_head_i": "used_heads", "used_efficiency_i": "used_efficiencies"}


def curves_sheet(plant, places):
    sheet = _start("Curves", places, "Pump curves on the liquid pumped",
                   "From the points on the sheet Data: as they are, or corrected for viscosity (ISO/TR 17766) or for solids where that is asked for.")
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
    return sheet


def fill_curves(sheet, places):
    digits = {"used_flows": 1, "used_heads": 2, "used_efficiencies": 3, "used_npsh3s": 2, "used_powers": 2}
    for series in USED:
        for point in range(POINTS):
            for index in range(places.count):
                column = FIRST + index

                def find(name):
                    if name == "i":
                        return str(point + 1)
                    if name in POINT_OF:
                        home, first, _ = places.of(POINT_OF[name])
                        row = first + point  # of what is given a range of one cell: a plain reference to an empty cell arrives as 0
                        return reference(home, row, column, row, column) if home == "Data" else reference(home, row, column)
                    return places.column_range(name, column)

                formula = fill(results.point(series.key), find)
                sheet.put(places.used[series.key] + point, column, "=" + formula, f"Value{digits[series.key]}")


def checks_sheet(plant, places):
    sheet = _start("Checks", places, "Every check of every pump",
                   "Each number is a call of cutwater with the cells of Data, of Curves and of the rows above; each word compares it with its limit.")
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
    sheet.breaks |= {places.result["suction_velocity"] - 1, row}
    _head(sheet, row, "Verdicts, gravest first", places)
    row += 1
    for key in results.WEIGHT:
        places.verdict[key] = row
        sheet.put(row, 0, key, "Key")
        sheet.put(row, 1, results.RESULT[key].text, "Label")
        sheet.put(row, 2, None, "Unit")
        row += 1
    _head(sheet, row, "The worst of them", places)
    for key, text in (("verdict", "Verdict"), ("check", "Worst check"), ("severity", "1 refused, 2 fails, 3 watch, 4 meets"), ("place", "Place in the register")):
        row += 1
        places.worst[key] = row
        sheet.put(row, 0, None, "Key")
        sheet.put(row, 1, text, "Label")
        sheet.put(row, 2, None, "Unit")
    sheet.heights[places.worst["check"]] = 0.95
    return sheet


def fill_checks(sheet, places):
    first_verdict, last_verdict = places.verdict[results.WEIGHT[0]], places.verdict[results.WEIGHT[-1]]
    labels = reference("", first_verdict, 1, last_verdict, 1)
    first_result, last_result = min(places.result.values()), max(places.result.values())
    causes = reference("", first_result, 1, last_result, 1)
    for index in range(places.count):
        column = FIRST + index
        tag = reference("Data", places.input["tag"], column)

        def find(name):
            return places.column_range(name, column)

        for one in results.RESULTS:
            style = "Verdict" if one.key in ("region", "correction") else f"Value{one.places}"
            sheet.put(places.result[one.key], column, _spare(fill(one.formula, find), places, column, index), style)
        for key in results.WEIGHT:
            one = results.RESULT[key]
            value = reference("", places.result[key], column, fixed=False)
            limit = fill(results.limit(one), find)
            sheet.put(places.verdict[key], column, _spare(results.verdict(one, value, limit), places, column, index), "Verdict")
        words = reference("", first_verdict, column, last_verdict, column, fixed=False)
        cell = {key: reference("", row, column, fixed=False) for key, row in places.worst.items()}
        word = "".join(f'IF(COUNTIF({words};"{name}")>0;"{name}";' for name in ("refused", "FAILS", "WATCH")) + '"meets")))'
        sheet.put(places.worst["verdict"], column, _spare(word, places, column, index), "Verdict")
        # Of what is refused the topmost result is the cause; none of them where it is a limit.
        found = reference("", first_result, column, last_result, column, fixed=False)
        topmost = f"10000-SUMPRODUCT(MAX(ISERROR({found})*(10000-ROW({found}))))-{first_result}"
        cause = f'IF(SUMPRODUCT(ISERROR({found})*1)>0;INDEX({causes};{topmost});INDEX({labels};MATCH("refused";{words};0)))'
        sheet.put(places.worst["check"], column, _spare(f'IF({cell["verdict"]}="meets";"none";IF({cell["verdict"]}="refused";{cause};INDEX({labels};MATCH({cell["verdict"]};{words};0))))',
                                                        places, column, index), "InputSmallPlain")
        sheet.put(places.worst["severity"], column, _spare(f'MATCH({cell["verdict"]};{{"refused";"FAILS";"WATCH";"meets"}};0)', places, column, index), "Value0")
        row = places.worst["severity"]
        everyone = reference("", row, FIRST, row, places.last)
        before = f"[.{cell_name(row, FIRST, True)}:.{cell_name(row, column)}]"
        rank = f'COUNTIF({everyone};"<"&{cell["severity"]})+COUNTIF({before};{cell["severity"]})'
        sheet.put(places.worst["place"], column, _spare(rank, places, column, index), "Value0")


__all__ = ["Places", "data_sheet", "curves_sheet", "fill_curves", "checks_sheet", "fill_checks", "fill", "FIRST", "IDENTITY"]
