"""The calculation sheet for one pump: A4 upright. Values are tried beside those of the sheet Data, for one tag only (tried.py)."""
from . import chart, points, results, verdicts
from .inputs import CHOICES as INPUT_CHOICES
from .inputs import INPUT, INPUTS, ORDINATES, POINTS, SERIES, USED
from .meanings import MEANINGS
from .odf import Sheet, cell_name, reference
from .pump_columns import ALTITUDE, FIRST, WORKS, bad_cell, fact_point, fill, works_line
from .service_texts import CAUTIONS, HOW_TO, SOURCES
from .tried import Tried

# A B C D: label, used, tried, unit; F G H, I, J, K: the same at the right. M to Q are not printed: what the lists of
# findings and of differences are made from.
WIDTHS = [4.9, 1.75, 1.5, 1.45, 0.25, 1.45, 1.3, 1.35, 1.75, 1.5, 1.35, 0.4, 5.0, 5.0, 9.0, 5.0, 5.0]
A, B, C, D, E, F, G, H, I, J, K, GAP, M, N, O, P, Q = range(17)
ACROSS = K + 1
LEFT = ("Duty and liquid", "Suction")
RIGHT = ("System", "Pump data", "Motor", "Limits applied")
RESULT_HEIGHT = 0.31
FINDINGS = 8
CHOICES = {"results_in": ("SI units", "US units")}


def unless_empty(formula):
    """Without a tag the sheet shows nothing."""
    return f'=IF(TRIM(tag)="";"";{formula})'


class Service:
    def __init__(self, plant, places):
        self.plant, self.places = plant, places
        self.sheet = Sheet("Service", WIDTHS, "Upright")
        self.sheet.print_columns = ACROSS
        self.tried = Tried(self.sheet, places, P)
        self.row_of, self.labels = {}, {}

    def find(self, name):
        """An input's or a result's own name on this sheet; two arguments for a curve between its own ends."""
        if name in points.PAIRS:
            return points.pair(*points.PAIRS[name])
        if name == "bad_cell":
            return bad_cell(lambda series: series, "bad_series", "bad_point")
        return {"altitude": "site_altitude", "tags": self.places.tags, "this_tag": "TRIM(tag)", "curve_home": '"this sheet, cell "'}.get(
            name, name
        )

    def head(self, row, texts):
        for column in range(ACROSS):
            self.sheet.put(row, column, None, "Head")
        for column, (text, style) in texts.items():
            self.sheet.put(row, column, text, style)

    def title_block(self):
        put, sheet = self.sheet.put, self.sheet
        sheet.heights.update({0: 0.9, 1: 0.36, 2: 0.62, 3: 0.36, 4: 0.82, 5: 0.62, 6: 0.6, 7: 0.5, 8: 1.62})
        put(0, A, "Pump calculation sheet", "Title", across=4)
        put(0, F, "=" + WORKS, "Works", across=6, known=works_line(self.plant))
        put(1, A, "Tag", "Box")
        shown = next((pump for pump in self.plant["pumps"] if pump["tag"] == self.plant["shown"]), {})
        put(2, A, shown.get("tag"), "InputTag", validation="tags")
        sheet.name_range("tag", 2, A)
        sheet.print_if(2, A)
        for column, across, label, value in (
            (B, 2, "Made by", None),
            (D, 3, "Checked by", None),
            (G, 2, "Date", None),
            (I, 1, "Revision", self.plant["revision"]),
            (J, 2, "File", None),
        ):
            put(1, column, label, "Box", across=across)
            put(2, column, value, "BoxInput", across=across)
        for column, across, key in ((A, 1, "service"), (B, 3, "liquid"), (E, 5, "pump")):
            put(3, column, INPUT[key].text, "Box", across=across)
            values = self.places.row_range(key)
            put(
                4,
                column,
                f'=IF(ISERROR(pump_column);"";IF(INDEX({values};1;pump_column)="";"";INDEX({values};1;pump_column)))',
                "BoxText",
                across=across,
                known=shown.get(key, " "),
            )
        put(3, J, "Values tried are for", "Box", across=2)
        put(4, J, None, "BoxInput", across=2, validation="tags")
        sheet.name_range("tried_for", 4, J)
        sheet.header_rows = 6
        put(6, A, "Worst check", "Box")
        put(7, A, "All that is not met", "Box")
        put(8, A, HOW_TO, "Note", across=ACROSS)
        put(9, A, "Column of this pump on the sheet Data", "Label")
        put(9, B, f'=IF(TRIM(tag)="";NA();MATCH(TRIM(tag);{self.places.tags};0))', "Value0")
        sheet.name_cell("pump_column", 9, B)
        put(9, F, "Results in", "Label", across=3)
        put(9, I, CHOICES["results_in"][0], "Input", across=2, validation="choice_results_in")
        sheet.name_range("results_in", 9, I)
        put(9, K, "choose", "Unit")
        sheet.button("Back to Data", "Asking.BackToData", 8.6, 0.12, 2.6, 0.6)

    def inputs(self, row):
        ends = []
        doubled = [one.text for one in INPUTS]
        for groups, label, unit in ((LEFT, A, D), (RIGHT, F, K)):
            at = row
            for group in groups:
                for column in range(label, unit + 1):
                    self.sheet.put(
                        at,
                        column,
                        group if column == label else "tried" if column == unit - 1 else None,
                        "HeadRight" if column == unit - 1 else "Head",
                    )
                at += 1
                for one in (one for one in INPUTS if one.group == group):
                    told = one.text.strip() + (f" ({group.lower()})" if doubled.count(one.text) > 1 else "")
                    self.tried.value(
                        at,
                        label,
                        unit,
                        one.key,
                        one.text,
                        told,
                        one.unit,
                        self.places.row_range(one.key),
                        f"choice_{one.key}" if one.key in INPUT_CHOICES else None,
                    )
                    at += 1
                if group == "Suction":
                    self.tried.value(
                        at, label, unit, "site_altitude", "Altitude of the works", "Altitude of the works", "m", ALTITUDE, None
                    )
                    at += 1
            self.sheet.name_range("TriedLeft" if label == A else "TriedRight", row, unit - 1, at - 1)
            ends.append(at)
        self.tried.idle()
        return max(ends)

    def given_curve(self, row):
        put = self.sheet.put
        columns = dict(zip((one.key for one in SERIES), ((B, C), (D, F), (G, H), (I, J))))
        texts = {"flows": "Flow", "heads": "On water", "efficiencies": "Efficiency", "npsh3s": "NPSH3"}
        units = {"flows": "m³/h", "heads": "head, m", "efficiencies": "–", "npsh3s": "m"}
        self.head(row, {A: ("Pump curve on water (the maker's)", "Head")})
        for column in range(ACROSS):
            put(row + 1, column, None, "Sense")
        for key, (used, tried) in columns.items():
            put(row, used, texts[key], "HeadRight")
            put(row, tried, "tried", "HeadRight")
            put(row + 1, used, units[key], "Sense")
            self.tried.series(row + 2, used, tried, key, f"{texts[key]} of the curve" if key != "heads" else "Head of the curve")
            self.row_of[key] = (row + 2, used)
            self.sheet.name_range("Tried" + key.capitalize(), row + 2, tried, row + 1 + POINTS)
        self.labels["water"] = (row, columns["heads"][0])
        for point in range(POINTS):
            put(row + 2 + point, A, f"Point {point + 1}", "Label")
            put(row + 2 + point, K, None, "Label")
        return row + 2 + POINTS

    def results(self, row):
        put, sheet = self.sheet.put, self.sheet
        sheet.breaks.add(row)
        self.head(
            row,
            {
                A: ("What is found", "Head"),
                B: ("Value", "HeadRight"),
                C: ("Unit", "Head"),
                D: ('=IF(results_in="US units";"Limit, SI";"Limit")', "Head"),
                F: ("Verdict", "HeadCentre"),
                G: ('=IF(results_in="US units";"US units";"")', "HeadRight"),
                I: ("Function, or why it was refused", "Head"),
            },
        )
        for column, text in (
            (M, "Number of the finding"),
            (N, "What the sheet prints of it"),
            (O, "Function, or why it was refused, in full"),
        ):
            put(row, column, text, "Head")
        row += 1
        first = row
        for group in results.GROUPS:
            sheet.heights[row] = RESULT_HEIGHT + 0.03
            for column in range(ACROSS):
                put(row, column, group if column == A else None, "HeadGroup")
            row += 1
            for one in (one for one in results.RESULTS if one.group == group):
                sheet.heights[row] = RESULT_HEIGHT
                self.result_row(row, one, first)
                row += 1
        self.first, self.last = first, row - 1
        return row

    def result_row(self, row, one, first):
        put = self.sheet.put
        put(row, A, one.text, "Label")
        put(row, B, unless_empty(fill(one.formula, self.find)), "TextRight" if one.key in results.TEXTS else f"Value{one.places}")
        put(row, C, one.unit, "Unit")
        self.sheet.name_cell(one.key, row, B)
        self.tried.formulas[row, B] = one.key
        self.row_of[one.key] = (row, B)
        value, limit, word, full = (f"[.${column}{row + 1}]" for column in "BDFO")
        put(row, E, None, "Sense")
        if one.limit:
            sense = {"≤": "le", "≥": "ge"}.get(one.limit[0], "")
            put(
                row,
                D,
                unless_empty(f'IFERROR(IF(IFERROR({value}&"";"")="–";"";{fill(verdicts.limit(one), self.find)});"refused")')
                if sense
                else "=" + one.limit[1],
                f"Limit{sense}{min(one.places, 2)}",
            )
        else:
            put(row, D, None, "Sense")
        put(row, F, unless_empty(verdicts.verdict(one, value, limit)), "Verdict")
        self.us_units(row, one, value)
        refused, limit_refused = (fill(one.refusal, self.find), f'IF({value}="–";"";{fill(verdicts.limit_refusal(one), self.find)})')
        put(
            row,
            O,
            unless_empty(
                f'IFERROR(IF({refused}="";IF({limit_refused}="";{fill(one.words, self.find)};{limit_refused});{refused});"waits for a value above")'
            ),
            "Text",
        )
        put(row, I, f'=IF(AND({word}="refused";LEFT({full};5)<>"waits");"why: see the findings";{full})', "Small", across=3)
        before = f"[.$M${first}:.$M{row}]"
        put(row, M, f'=IF(OR({word}="FAILS";{word}="WATCH";AND({word}="refused";LEFT({full};5)<>"waits"));MAX({before})+1;"")', "Value0")
        said = f'IF({word}="refused";{full};"{MEANINGS.get(one.key, "")}"' + (f'&" ("&{full}&")")' if one.key == "unused" else ")")
        put(row, N, f'=IF([.$M{row + 1}]="";"";[.$A{row + 1}]&": "&{word}&". "&{said})', "Text")

    def us_units(self, row, one, value):
        call, unit = None, ""
        if one.unit in verdicts.US_UNITS:
            read, unit = verdicts.US_UNITS[one.unit]
            call = f'CW.CONVERT_UNIT({value};"{read}";"{unit}")'
        elif one.key in ("specific_speed", "suction_speed"):
            call, unit = f"CW.SPECIFIC_SPEED_US_FROM_METRIC({value})", "US gpm, ft"
        self.sheet.put(row, G, f'=IF(AND(results_in="US units";ISNUMBER({value}));{call};"")' if call else None, f"Value{one.places}")
        self.sheet.put(row, H, f'=IF(results_in="US units";"{unit}";"")' if call else None, "Unit")

    def findings(self, row):
        """What is not met, in the table's order, with what it means or why it was refused."""
        put, sheet = self.sheet.put, self.sheet
        sheet.breaks.add(row)
        self.head(row, {A: ("Findings", "Head")})
        numbers, texts = (f"[.${column}${self.first + 1}:.${column}${self.last + 1}]" for column in "MN")
        for number in range(1, FINDINGS + 1):
            row += 1
            sheet.heights[row] = 0.6
            if number == 1:
                none = 'IF(ISERROR(pump_column);"There is no pump of this tag on the sheet Data.";"Nothing was refused, and every check is met.")'
                formula = f"=IF(ISERROR(pump_column);{none};IFERROR(INDEX({texts};MATCH(1;{numbers};0));{none}))"
            elif number == FINDINGS:
                formula = f'=IF(MAX({numbers})>{number};"and "&(MAX({numbers})-{number - 1})&" more: column N of the results";IFERROR(INDEX({texts};MATCH({number};{numbers};0));""))'
            else:
                formula = f'=IFERROR(INDEX({texts};MATCH({number};{numbers};0));"")'
            put(row, A, formula, "Reason", across=ACROSS)
        found, words, labels = (f"[.${column}${self.first + 1}:.${column}${self.last + 1}]" for column in "BFA")
        put(
            6,
            I,
            unless_empty(f'IF(OR(overwritten>0;ISERROR(pump_column));"refused";{verdicts.overall(found, words)})'),
            "VerdictBox",
            across=3,
        )
        named = verdicts.worst("[.$I$7]", found, labels, lambda key: f"[.$F${self.row_of[key][0] + 1}]")
        put(
            6,
            B,
            f'=IF(TRIM(tag)="";"choose a tag";IF(ISERROR(pump_column);"no pump of this tag";IF(overwritten>0;"Formulas of this sheet, overwritten";{named})))',
            "BoxValue",
            across=7,
        )
        every = "&".join(
            f'IF([.$F${self.row_of[key][0] + 1}]="{word}";"; {results.RESULT[key].text}";"")'
            for word in ("refused", "FAILS", "WATCH")
            for key in results.WEIGHT
        )
        sheet.heights[7] = 0.72
        put(
            7,
            B,
            f'=IF(OR(TRIM(tag)="";ISERROR(pump_column));"";IF([.$I$7]="meets";"nothing";IF({every}="";[.$B$7];MID({every};3;400))))',
            "BoxText",
            across=10,
        )
        return row + 1

    def used_curve(self, row):
        put, sheet = self.sheet.put, self.sheet
        heads = {
            "used_flows": (A, "On the liquid pumped:   flow", "m³/h", 1),
            "used_heads": (B, '=IF(LEN(tag)>16;LEFT(tag;14)&" …";tag)&", pump"', "head, m", 2),
            "used_efficiencies": (C, "Efficiency", "–", 3),
            "used_powers": (D, "Power", "kW", 2),
            "used_npsh3s": (F, "NPSH3", "m", 2),
            "offered": (G, "NPSHA", "m", 2),
            "used_system": (I, "System", "head, m", 2),
        }
        self.head(row, {column: (text, "HeadRight") for column, text, *_ in heads.values()})
        for column in range(ACROSS):
            put(row + 1, column, None, "Sense")
        for key, (column, text, unit, _) in heads.items():
            put(row + 1, column, unit, "Sense")
            self.labels[key] = (row, column)
            self.row_of[key] = (row + 2, column)
        for key in (one.key for one in USED):
            sheet.name_range(key, row + 2, heads[key][0], row + 1 + POINTS)
        offered = (
            "CW.NPSH_AVAILABLE({surface_absolute};{vapour_used};{density_used};{liquid_level};"
            "CW.SYSTEM_HEAD(0;CW.SYSTEM_RESISTANCE({flow};{suction_loss});{used_flow_i}))"
        )
        friction = (
            "CW.NPSH_AVAILABLE({surface_absolute};{vapour_used};{density_used};{liquid_level};CW.PIPE_FRICTION_HEAD({used_flow_i};{suction_bore};{suction_length};{roughness};"
            "{viscosity_used})+CW.FITTING_HEAD({used_flow_i};{suction_bore};{suction_k}))"
        )
        places = {
            "flow_i": "flows",
            "head_i": "heads",
            "efficiency_i": "efficiencies",
            "npsh3_i": "npsh3s",
            "used_flow_i": "used_flows",
            "used_head_i": "used_heads",
            "used_efficiency_i": "used_efficiencies",
        }
        for point in range(POINTS):
            sheet.heights[row + 2 + point] = 0.4

            def find(name):
                if name == "i":
                    return str(point + 1)
                if name in places:
                    first, column = self.row_of[places[name]]
                    at = first + point  # of what is given a range of one cell: a plain reference to an empty cell arrives as 0
                    return reference("", at, column, fixed=False) if name.startswith("used_") else reference("", at, column, at, column)
                return self.find(name)

            for column in range(ACROSS):
                put(row + 2 + point, column, None, "Sense")
            for key, (column, _, _, digits) in heads.items():
                formula = (
                    points.point(key) if key != "offered" else f'IF({{used_flow_i}}="";"";IF({{line_law}}="square";{offered};{friction}))'
                )
                put(row + 2 + point, column, unless_empty(fill(formula, find)), f"Value{digits}")
        self.facts(row)
        row += 2 + POINTS
        put(row, A, "Marks in the charts:", "Small")
        for column, key, text in ((B, "wanted_mark", "Flow wanted"), (C, "duty_mark", "Duty")):
            put(row, column, text, "Small")
            self.labels[key] = (row, column)
        return row + 1

    def facts(self, row):
        """Beside the printed table: where each series begins and ends, and the first point that is refused."""
        self.sheet.put(row, M, "The curve's points", "Head")
        point = fact_point(lambda series: series, "bad_point")
        for index, (key, formula) in enumerate(points.POINTS_FACTS, row + 1):
            self.sheet.put(index, M, points.fact_text(key), "Label")
            self.sheet.put(index, N, unless_empty(fill(formula, lambda name: point[name] if name in point else self.find(name))), "Text")
            self.sheet.name_cell(key, index, N)

    def area(self, key):
        first, column = self.row_of[key]
        last = first + POINTS - 1 if key in self.labels or key in ("flows", *ORDINATES) else first
        return f"Service.{cell_name(first, column)}:Service.{cell_name(last, column)}"

    def label(self, key):
        row, column = self.labels.get(key) or (self.row_of[key][0], A)
        return f"Service.{cell_name(row, column)}"

    def charts(self, row):
        """Below the table, at the height where its rows end."""
        sheet = self.sheet
        top = sum(sheet.heights.get(r, 0.46) for r in range(row)) + 0.25
        flow = "Flow, m³/h"
        sheet.frames.append(
            chart.frame(
                0,
                0,
                top,
                18.5,
                6.6,
                "Pump, system and duty",
                flow,
                "Head, m",
                [
                    (self.label("water"), self.area("flows"), self.area("heads"), "water", False),
                    (self.label("used_heads"), self.area("used_flows"), self.area("used_heads"), "pump", False),
                    (self.label("used_system"), self.area("used_flows"), self.area("used_system"), "system", False),
                    (self.label("wanted_mark"), self.area("wanted"), self.area("system_head"), "wanted", False),
                    (self.label("duty_mark"), self.area("duty_flow"), self.area("duty_head"), "duty", False),
                ],
            )
        )
        low = top + 6.75
        sheet.frames.append(
            chart.frame(
                1,
                0,
                low,
                9.15,
                5.0,
                "Suction",
                flow,
                "NPSH, m",
                [
                    (self.label("offered"), self.area("used_flows"), self.area("offered"), "offered", False),
                    (self.label("used_npsh3s"), self.area("used_flows"), self.area("used_npsh3s"), "needed", False),
                    (self.label("duty_mark"), self.area("duty_flow"), self.area("npsh3"), "duty", False),
                ],
            )
        )
        sheet.frames.append(
            chart.frame(
                2,
                9.35,
                low,
                9.15,
                5.0,
                "Efficiency and power",
                flow,
                "Efficiency",
                [
                    (self.label("used_efficiencies"), self.area("used_flows"), self.area("used_efficiencies"), "efficiency", False),
                    (self.label("used_powers"), self.area("used_flows"), self.area("used_powers"), "power", True),
                    (self.label("duty_mark"), self.area("duty_flow"), self.area("power_input"), "duty", True),
                ],
                second_title="Power input, kW",
                y_number="C1",
                second_number="C1",
            )
        )
        sheet.heights[row] = 12.2
        sheet.put(row, A, None)
        return row + 1

    def foot(self, row):
        """What applies to this pump only, then the line of revisions."""
        put, sheet = self.sheet.put, self.sheet
        sheet.breaks.add(row)
        for title, lines, height in (("Sources", SOURCES, 3.6), ("Cautions", CAUTIONS, 4.4)):
            self.head(row, {A: (title, "Head")})
            applying = ";".join(
                f'"{text}"' if condition is None else f'IF(IFERROR({condition};TRUE());"{text}";"")' for condition, text in lines
            )
            sheet.heights[row + 1] = height
            put(row + 1, A, f"=COM.MICROSOFT.TEXTJOIN(UNICHAR(10);1;{applying})", "Foot", across=ACROSS)
            row += 2
        self.head(
            row,
            {
                A: ("Revisions: what was changed", "Head"),
                D: ("No.", "Head"),
                F: ("Date", "Head"),
                H: ("Made by", "Head"),
                J: ("Checked by", "Head"),
            },
        )
        for index in range(row + 1, row + 6):
            sheet.heights[index] = 0.6
            for column, across in ((A, 3), (D, 2), (F, 2), (H, 2), (J, 2)):
                put(index, column, None, "InputText", across=across)
        return row + 6

    def build(self):
        self.title_block()
        row = self.inputs(10)
        self.sheet.heights[row] = 0.15
        self.sheet.put(row, A, None)
        row = self.given_curve(row + 1)
        row = self.results(row)
        row = self.findings(row)
        row = self.used_curve(row)
        row = self.charts(row)
        self.foot(row)
        self.tried.banner(5, ACROSS)
        return self.sheet
