"""The calculation sheet for one pump: A4 upright, three pages."""
from . import chart, results
from .inputs import CHOICES, INPUT, INPUTS, POINTS, SERIES, USED
from .odf import Sheet, cell_name, reference
from .pump_columns import ALTITUDE, FIRST, fill

WIDTHS = [5.3, 1.9, 1.65, 0.4, 1.55, 1.55, 1.55, 1.9, 1.6]
A, B, C, D, E, F, G, H, I = range(9)
ACROSS = len(WIDTHS)
LEFT = ("Duty and liquid", "Suction")
RIGHT = ("System", "Pump data", "Motor", "Limits applied")
RESULT_HEIGHT = 0.33

HOW_TO = ("Choose a tag in its cell above (a list drops down): the cream cells then look the pump up on the sheet Data. For a pump of your own type over the cream cells, or fill "
          "in one of the last columns of Data and choose its tag. To keep a pump's sheet print it, or save the workbook under another name: in a copy of this sheet the charts go on "
          "showing the original. A number has the unit beside it; a text may bring its own: 440 US gpm, 72 %, 1.2 bar(g). An empty cell is not zero: what needs it is refused.")

SOURCES = (
    "Liquid: IAPWS R7-97(2012) and R12-08 for water; Clausius-Clapeyron between two points for vapour pressure; ASTM D341 for viscosity; ISO 2533 for the ambient pressure.",
    "System: Darcy-Weisbach with Colebrook-White; losses taken as the square of the flow, from those at the flow wanted. Curve between its points: shape-preserving cubic.",
    "Suction: NPSH as ISO 17769-1 and ANSI/HI 9.6.1 define it; submergence ANSI/HI 9.8. Region: ANSI/HI 9.6.3. Viscous liquid: ISO/TR 17766 (ANSI/HI 9.6.7).",
    "Solids: Engin and Gur 2003 or Cave 1976 for head and efficiency; Durand with the factor of Schiller and Herbich for the deposition velocity.",
    "Motor: ISO 13709 or common practice for the margin, IEC 60072-1 for the ratings. Edition and clause, and whether they were read: docs/functions, a page for each function.",
)
CAUTIONS = (
    "NPSH3 is the head at which the pump has already lost 3 % of its head; hot, gassy, toxic or boiling liquids and high suction energy ask for more margin than the limit here.",
    "A thermal least flow says nothing of hydraulic stability: the maker's least flow counts too. Never run a pump against a closed valve; the heating shown leaves out all losses.",
    "The viscous correction is for one stage of conventional design, that for solids for settling grains only; keep a margin above the deposition velocity. Power is found at the density shown: check the heaviest and coldest liquid, starting included.",
    "Limits are inputs of this sheet, to be set by the engineer for the service. Results support a judgement; they replace neither the maker's guarantee nor the site's rules.",
)


class Service:
    def __init__(self, plant, places):
        self.plant, self.places = plant, places
        self.sheet = Sheet("Service", WIDTHS, "Service")
        self.cell, self.row_of = {}, {}
        self.labels = {}

    # -- names: an input's own name on this sheet; a curve's point by its place
    def find(self, name):
        return {"altitude": "site_altitude", "tags": self.places.row_range("tag")}.get(name, name)

    def input_cell(self, row, column, key, style, across=1, known=None):
        values = self.places.row_range(key)
        formula = f'=IF(INDEX({values};1;pump_column)="";"";INDEX({values};1;pump_column))'
        self.sheet.put(row, column, formula, style, across=across, validation=f"choice_{key}" if key in CHOICES else None, known=known)
        self.sheet.name_range(key, row, column)

    def title_block(self):
        put, sheet = self.sheet.put, self.sheet
        sheet.heights.update({0: 0.85, 1: 0.36, 2: 0.62, 3: 0.36, 4: 0.52, 5: 0.18})
        put(0, A, "Pump calculation sheet", "Title", across=3)
        put(0, E, f'{self.plant["works"]}, {self.plant["unit"]}', "Works", across=5)
        put(1, A, "Tag", "Box")
        shown = next(pump for pump in self.plant["pumps"] if pump["tag"] == self.plant["shown"])
        put(2, A, shown["tag"], "InputTag", validation="tags")
        sheet.name_range("tag", 2, A)
        for column, across, label, value in ((B, 3, "Made by", None), (E, 2, "Checked by", None), (G, 1, "Date", None), (H, 1, "Revision", self.plant["revision"]),
                                             (I, 1, "File", None)):
            put(1, column, label, "Box", across=across)
            put(2, column, value, "BoxValue", across=across)
        for column, across, key in ((A, 1, "service"), (B, 3, "liquid"), (E, 5, "pump")):
            put(3, column, INPUT[key].text, "Box", across=across)
            self.input_cell(4, column, key, "InputText", across, shown[key])
        sheet.header_rows = 6
        put(5, A, None)
        sheet.heights[6] = 0.6
        put(6, A, "Worst check", "Box")
        sheet.heights[7] = 1.62
        put(7, A, HOW_TO, "Note", across=ACROSS)
        put(8, A, "Column of this pump on the sheet Data", "Label")
        put(8, B, f'=MATCH(tag;{self.places.row_range("tag")};0)', "Value0")
        sheet.name_cell("pump_column", 8, B)
        put(9, A, None)
        sheet.heights[9] = 0.15

    def inputs(self, row):
        ends = []
        for groups, label, value, unit in ((LEFT, A, B, C), (RIGHT, E, H, I)):
            at = row
            for group in groups:
                for column in range(label, unit + 1):
                    self.sheet.put(at, column, group if column == label else None, "Head")
                at += 1
                for one in (one for one in INPUTS if one.group == group):
                    self.sheet.put(at, label, one.text, "Label", across=value - label)
                    self.input_cell(at, value, one.key, "Input")
                    self.sheet.put(at, unit, one.unit, "Unit")
                    at += 1
                if group == "Suction":
                    self.sheet.put(at, label, "Altitude of the works", "Label")
                    self.sheet.put(at, value, f'=IF({ALTITUDE}="";"";{ALTITUDE})', "Input")
                    self.sheet.put(at, unit, "m", "Unit")
                    self.sheet.name_range("site_altitude", at, value)
                    at += 1
            ends.append(at)
        return max(ends)

    def given_curve(self, row):
        put, places = self.sheet.put, self.places
        for column in range(ACROSS):
            put(row, column, None, "Head")
        put(row, A, "Pump curve on water (the maker's)", "Head")
        columns = dict(zip((one.key for one in SERIES), (B, C, E, F)))
        texts = {"flows": "Flow", "heads": "On water", "efficiencies": "Efficiency", "npsh3s": "NPSH3"}
        for key, column in columns.items():
            put(row, column, texts[key], "HeadRight")
        self.labels["water"] = (row, C)
        units = {"flows": "m³/h", "heads": "head, m", "efficiencies": "–", "npsh3s": "m"}
        put(row + 1, A, None, "Unit")
        for key, column in columns.items():
            put(row + 1, column, units[key], "Sense")
        put(row + 2, G, "Up to ten points, from closed valve (flow 0) on, the flow rising; a shorter curve leaves the last cells empty.", "NoteInset", across=3, down=4)
        for point in range(POINTS):
            put(row + 2 + point, A, f"Point {point + 1}", "Label")
            for key, column in columns.items():
                _, first, _ = places.of(key)
                cells = reference("Data", first + point, FIRST, first + point, places.last)
                put(row + 2 + point, column, f'=IF(INDEX({cells};1;pump_column)="";"";INDEX({cells};1;pump_column))', "Input")
        for key, column in columns.items():
            self.sheet.name_range(key, row + 2, column, row + 1 + POINTS)
            self.row_of[key] = (row + 2, column)
        return row + 2 + POINTS

    def results(self, row):
        put, sheet = self.sheet.put, self.sheet
        sheet.breaks.add(row)
        heads = {A: ("What is found", "Head"), B: ("Value", "HeadRight"), C: ("Unit", "Head"), D: (None, "Head"), E: ("Limit", "Head"), F: ("Verdict", "HeadCentre"),
                 G: ("Function, or why it was refused", "Head"), H: (None, "Head"), I: (None, "Head")}
        for column, (text, style) in heads.items():
            put(row, column, text, style)
        first = row + 2
        sheet.heights[row + 1] = 0.8
        row += 2
        for group in results.GROUPS:
            sheet.heights[row] = RESULT_HEIGHT + 0.03
            put(row, A, group, "HeadGroup")
            for column in range(B, ACROSS):
                put(row, column, None, "HeadGroup")
            row += 1
            for one in (one for one in results.RESULTS if one.group == group):
                sheet.heights[row] = RESULT_HEIGHT
                self.result_row(row, one)
                row += 1
        last = row - 1
        verdicts, remarks = f"[.$F${first + 1}:.$F${last + 1}]", f"[.$G${first + 1}:.$G${last + 1}]"
        texts = f"[.$A${first + 1}:.$A${last + 1}]"
        own = f'({verdicts}="refused")*(LEFT({remarks};5)<>"waits")'
        count, topmost = f"SUMPRODUCT({own})", f"10000-SUMPRODUCT(MAX({own}*(10000-ROW({verdicts}))))-{first}"
        put(first - 1, A, f'=IF(ISERROR(pump_column);"There is no pump of this tag on the sheet Data.";IF({count}=0;IF(COUNTIF({verdicts};"refused")=0;"Nothing was refused.";'
                          f'"Refused: a point of the pump curve cannot be read or corrected; it shows an error in the table on the next page.");'
                          f'IF({count}>1;"Refused, the first of "&{count}&": ";"Refused: ")&INDEX({texts};{topmost})&": "&INDEX({remarks};{topmost})))', "NoteBold", across=ACROSS)

        def by_word(word, otherwise):
            return f'IFERROR(INDEX({texts};MATCH("{word}";{verdicts};0));{otherwise})'

        put(6, B, f'=IF({count}>0;INDEX({texts};{topmost});' + by_word("refused", by_word("FAILS", by_word("WATCH", '"none"'))) + ")", "BoxValue", across=6)
        put(6, H, f'=IF(COUNTIF({verdicts};"refused")>0;"refused";IF(COUNTIF({verdicts};"FAILS")>0;"FAILS";IF(COUNTIF({verdicts};"WATCH")>0;"WATCH";"meets")))',
            "VerdictBox", across=2)
        return row

    def result_row(self, row, one):
        put = self.sheet.put
        put(row, A, one.text, "Label")
        put(row, B, "=" + fill(one.formula, self.find), "TextRight" if one.key in ("region", "correction") else f"Value{one.places}")
        put(row, C, one.unit, "Unit")
        self.sheet.name_cell(one.key, row, B)
        self.row_of[one.key] = (row, B)
        value, limit = f"[.$B{row + 1}]", f"[.$E{row + 1}]"
        if one.limit:
            put(row, D, f'=IF(IFERROR({limit}="";FALSE());"";"{one.limit[0]}")', "Sense")
            put(row, E, "=" + fill(results.limit(one), self.find), f"Limit{min(one.places, 2)}")
        else:
            put(row, D, None, "Sense")
            put(row, E, None, "Sense")
        put(row, F, "=" + results.verdict(one, value, limit), "Verdict")
        refusal = fill(one.refusal, self.find)
        limit_refusal = f'IF({value}="–";"";{fill(results.limit_refusal(one), self.find)})'
        put(row, G, f'=IFERROR(IF({refusal}="";IF({limit_refusal}="";{fill(one.words, self.find)};{limit_refusal});{refusal});"waits for a value above")', "Small", across=3)

    def used_curve(self, row):
        put, sheet = self.sheet.put, self.sheet
        sheet.breaks.add(row)
        for column in range(ACROSS):
            put(row, column, None, "Head")
        heads = {"used_flows": (A, "Flow", "m³/h", 1), "used_heads": (B, '=tag&", pump"', "head, m", 2), "used_efficiencies": (C, "Efficiency", "–", 3),
                 "used_powers": (E, "Power input", "kW", 2), "used_npsh3s": (F, "NPSH3", "m", 2), "offered": (G, "NPSHA", "m", 2), "system": (H, "System", "head, m", 2)}
        for column in range(ACROSS):
            put(row + 1, column, None, "Sense")
        put(row, I, None, "Head")
        for key, (column, text, unit, _) in heads.items():
            put(row, column, text if key != "used_flows" else "On the liquid pumped:   flow", "HeadRight")
            put(row + 1, column, unit, "Sense")
            self.labels[key] = (row, column)
            self.row_of[key] = (row + 2, column)
        for key in (one.key for one in USED):
            sheet.name_range(key, row + 2, heads[key][0], row + 1 + POINTS)
        offered = ("CW.NPSH_AVAILABLE({surface_absolute};{vapour_used};{density_used};{liquid_level};"
                   "CW.SYSTEM_HEAD(0;CW.SYSTEM_RESISTANCE({flow};{suction_loss});{used_flow_i}))")
        system = "CW.SYSTEM_HEAD({static_head};{resistance};{used_flow_i})"
        places = {"flow_i": "flows", "head_i": "heads", "efficiency_i": "efficiencies", "npsh3_i": "npsh3s", "used_flow_i": "used_flows",
                  "used_head_i": "used_heads", "used_efficiency_i": "used_efficiencies"}
        for point in range(POINTS):
            sheet.heights[row + 2 + point] = 0.42

            def find(name):
                if name == "i":
                    return str(point + 1)
                if name in places:
                    first, column = self.row_of[places[name]]
                    row = first + point  # of what is given a range of one cell: a plain reference to an empty cell arrives as 0
                    return reference("", row, column, fixed=False) if name.startswith("used_") else reference("", row, column, row, column)
                return self.find(name)

            for key, (column, _, _, digits) in heads.items():
                if key in ("offered", "system"):
                    formula = 'IF({used_flow_i}="";"";' + (offered if key == "offered" else system) + ")"
                else:
                    formula = results.point(key)
                put(row + 2 + point, column, "=" + fill(formula, find), f"Value{digits}")
            put(row + 2 + point, D, None, "Sense")
            put(row + 2 + point, I, None, "Sense")
        row += 2 + POINTS
        put(row, A, "Marks in the charts:", "Small")
        for column, key, text in ((B, "wanted_mark", "Flow wanted"), (C, "duty_mark", "Duty")):
            put(row, column, text, "Small")
            self.labels[key] = (row, column)
        return row + 1

    def area(self, key):
        first, column = self.row_of[key]
        last = first + POINTS - 1 if key in self.labels or key in ("flows", "heads", "efficiencies", "npsh3s") else first
        return f"Service.{cell_name(first, column)}:Service.{cell_name(last, column)}"

    def label(self, key):
        row, column = self.labels.get(key) or (self.row_of[key][0], A)
        return f"Service.{cell_name(row, column)}"

    def charts(self, row):
        """Below the table, at the height where its rows end."""
        sheet = self.sheet
        top = sum(sheet.heights.get(r, 0.46) for r in range(row)) + 0.25
        flow = "Flow, m³/h"
        sheet.frames.append(chart.frame(0, 0, top, 17.3, 7.25, "Pump, system and duty", flow, "Head, m", [
            (self.label("water"), self.area("flows"), self.area("heads"), "water", False),
            (self.label("used_heads"), self.area("used_flows"), self.area("used_heads"), "pump", False),
            (self.label("system"), self.area("used_flows"), self.area("system"), "system", False),
            (self.label("wanted_mark"), self.area("wanted"), self.area("system_head"), "wanted", False),
            (self.label("duty_mark"), self.area("duty_flow"), self.area("duty_head"), "duty", False)]))
        low = top + 7.45
        sheet.frames.append(chart.frame(1, 0, low, 8.55, 5.3, "Suction", flow, "NPSH, m", [
            (self.label("offered"), self.area("used_flows"), self.area("offered"), "offered", False),
            (self.label("used_npsh3s"), self.area("used_flows"), self.area("used_npsh3s"), "needed", False),
            (self.label("duty_mark"), self.area("duty_flow"), self.area("npsh3"), "duty", False)]))
        sheet.frames.append(chart.frame(2, 8.75, low, 8.55, 5.3, "Efficiency and power", flow, "Efficiency", [
            (self.label("used_efficiencies"), self.area("used_flows"), self.area("used_efficiencies"), "efficiency", False),
            (self.label("used_powers"), self.area("used_flows"), self.area("used_powers"), "power", True),
            (self.label("duty_mark"), self.area("duty_flow"), self.area("power_input"), "duty", True)],
            second_title="Power input, kW", y_number="C1", second_number="C1"))
        sheet.heights[row] = 13.1
        sheet.put(row, A, None)
        return row + 1

    def foot(self, row):
        for title, lines in (("Sources", SOURCES), ("Cautions", CAUTIONS)):
            for column in range(ACROSS):
                self.sheet.put(row, column, title if column == A else None, "HeadGroup")
            self.sheet.heights[row] = 0.4
            for line in lines:
                row += 1
                self.sheet.heights[row] = 0.58 if len(line) > 154 else 0.31
                self.sheet.put(row, A, line, "Foot", across=ACROSS)
            row += 1

    def build(self):
        self.title_block()
        row = self.inputs(10)
        self.sheet.heights[row] = 0.15
        self.sheet.put(row, A, None)
        row = self.given_curve(row + 1)
        row = self.results(row)
        row = self.used_curve(row)
        row = self.charts(row)
        self.foot(row)
        return self.sheet
