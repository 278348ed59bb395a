"""A running pump's readings against its curve: how far it is from it, whether that is more than the uncertainty, what it may be and what it costs."""
from .looking import Looking, column_of, foot, refusals_line, title
from .odf import Sheet, calls_in, reference, refusal

CASES = 2
WIDTHS = [6.2, 1.5] + [2.3, 1.9] * CASES + [3.6]
TEXT, UNIT, LAST = 0, 1, 2 + 2 * CASES

READINGS = (
    ("reading_of", "Tag on the sheet of readings", ""),
    ("taken", "Date and by whom", ""),
    ("discharge", "Discharge gauge", "bar(g)"),
    ("suction", "Suction gauge", "bar(g)"),
    ("discharge_height", "Discharge gauge above the pump's NPSH datum", "m"),
    ("suction_height", "Suction gauge above it", "m"),
    ("discharge_bore", "Bore at the discharge tapping", "mm"),
    ("suction_bore", "Bore at the suction tapping", "mm"),
    ("flow", "Flow; none measured: empty", "m³/h"),
    ("speed", "Speed; none measured: empty", "1/min"),
    ("temperature", "Temperature of the liquid", "°C"),
    ("density", "Density then; as on Checks: empty", "kg/m³"),
    ("power", "Power from the mains; none: empty", "kW"),
    ("current", "or motor current", "A"),
    ("voltage", "  at the voltage between lines", "V"),
    ("factor", "  and the power factor", "–"),
    ("motor", "Efficiency of motor and drive at that load", "–"),
)
UNCERTAIN = (
    ("flow_part", "Uncertainty of the flow", "%", 3),
    ("head_part", "Uncertainty of the head", "%", 2),
    ("power_part", "Uncertainty of the power", "%", 3),
    ("curve_part", "Tolerance of the curve itself", "%", 3),
)
MONEY = (("hours", "Hours a year", "h"), ("price", "Price of energy", "a kWh"))

# What it may be, where the signs agree: head, power and efficiency below, within or above what is expected; what else would show it.
SIGNS = (
    ("Worn running clearance", "B", "WA", "B", "the head fell over months; casing and seal chamber warmer"),
    (
        "Throttled or blocked suction, cavitation",
        "B",
        "BW",
        "BW",
        "suction gauge low, crackling, head falls away as the flow rises",
    ),
    ("Speed too low", "B", "B", "W", "measured speed below the curve's; a drive's setting, a slipping belt"),
    ("Impeller turning the wrong way", "B", "BWA", "B", "far below the curve; after work on motor or cables"),
    ("Impeller blocked in part", "B", "B", "BW", "vibration once a turn; came at once"),
    ("Air or gas in the liquid", "B", "B", "BW", "gauges swing; falling level, a vortex, a leaking gland under vacuum"),
    ("Impeller smaller than on the curve", "B", "B", "WB", "so from the first day: look for the trim on the nameplate"),
    ("Liquid thicker than the curve is for", "B", "WA", "B", "colder or stronger than usual"),
    (
        "Liquid heavier than was taken",
        "W",
        "A",
        "BW",
        "density or solids above what was put in: the head from gauges is then too high",
    ),
    ("Rubbing, or a dragging bearing or packing", "W", "A", "B", "warm bearing or gland; current swings"),
    ("A bypass that passes, after the flow meter", "W", "W", "W", "less arrives than is measured"),
    ("Impeller larger, or speed higher, than on the curve", "A", "A", "W", "check the curve's diameter and speed"),
    ("A gauge or the flow meter is wrong", "A", "BW", "A", "no pump gets better by itself: calibrate, and read again"),
)

SOURCES = (
    "Head from gauges: ISO 9906:2012, pump total head. Differences at the curve's speed by the affinity laws; uncertainties combined as ISO 9906 and the GUM have it (from memory of both).",
    "The table of signs: common practice. Pages in docs/functions tell what was read.",
)
CAUTIONS = (
    "One reading may mislead: take several, zero checked, the gauge lines full of liquid, the valve at rest. Readings and curve must belong to the same liquid.",
    "Without a flow the curve gives it, from the head: it holds only if the pump is on its curve, and the head says nothing then; the power still does.",
    "The table names what agrees with the signs, not what it is; more than one cause may act. A pump that rattles, smells, smokes or leaks is stopped, not measured.",
)


class Field:
    def __init__(self, plant, places):
        self.plant, self.places = plant, places
        self.cases = list(plant["field"])[:CASES]
        self.sheet = Sheet("Field", WIDTHS + [12.0], "Upright", 0.4)
        self.sheet.print_columns = LAST + 1
        self.row = {}

    def line(self, row, text, unit, last=None):
        self.sheet.put(row, TEXT, text, "Label")
        self.sheet.put(row, UNIT, unit, "Unit")
        self.sheet.put(row, LAST, last, "Small")

    def head(self, row, text, last=None):
        for column in range(LAST + 1):
            self.sheet.put(row, column, {TEXT: text, LAST: last}.get(column), "Head")

    def cell(self, key, case, one=True):
        row, column = self.row[key], 2 + 2 * case
        return reference("", row, column, row, column) if one else reference("", row, column)

    def given(self, row, keys):
        for key, text, unit, *standard in keys:
            self.row[key] = row
            self.line(row, text, unit, "given")
            for case in range(CASES):
                column, data = 2 + 2 * case, self.cases[case] if case < len(self.cases) else {}
                wide = 2 if key in ("reading_of", "taken") else 1
                self.sheet.put(
                    row,
                    column,
                    data.get(key, standard[0] if standard else None),
                    "InputText" if wide == 2 else "Input",
                    across=wide,
                    validation="tags" if key == "reading_of" else None,
                )
                if wide == 1:
                    self.sheet.put(row, column + 1, None, "Label")
            row += 1
        return row

    def build(self):
        put, sheet = self.sheet.put, self.sheet
        title(sheet, "Field check: readings against the curve", self.plant, ((0, 1), (1, 2), (3, 2), (5, 1), (6, 1)))
        sheet.header_rows = 4
        for row, text in ((3, "Pump"), (4, "Column on the sheet Data"), (5, "What was found")):
            self.line(row, text, None)
        for case in range(CASES):
            column, data = 2 + 2 * case, self.cases[case] if case < len(self.cases) else {}
            put(3, column, data.get("tag"), "InputTag", across=2, validation="tags")
            put(4, column, column_of(self.places, reference("", 3, column)), "Value0", across=2)
        sheet.print_if(3, 2, 2 * CASES)
        self.row |= {"tag": 3, "index": 4}
        sheet.heights.update({3: 0.6, 5: 0.8})
        self.head(6, "Readings")
        row = self.given(7, READINGS)
        self.head(row, "How far they can be trusted; what running costs")
        row = self.given(row + 1, UNCERTAIN + MONEY)
        row = self.results(row)
        row = self.signs(row)
        for case in range(CASES):
            self.conclude(case)
        sheet.put(row, 0, None)
        foot(sheet, row + 1, SOURCES, CAUTIONS, 155)
        return sheet

    def results(self, row):
        """(key, text, unit, places, formula): {key} is a reading or a row above, {=key} a value of the pump's own sheets, {~pair} its curve."""
        put = self.sheet.put
        own = '{reading_of}&""<>{tag}&""'
        power = '{power}="";{current}=""'
        mains = 'IF({power}<>"";CW.QUANTITY({power};"kW");SQRT(3)*CW.QUANTITY({voltage};"V")*CW.QUANTITY({current};"A")*CW.QUANTITY({factor};"-")/1000)'
        gauges = 'CW.TOTAL_HEAD_FROM_GAUGES({discharge};{suction};{discharge_height};{suction_height};{discharge_bore};{suction_bore};IF({flow}="";0;{flow});{density_then})'
        inverse = "CW.FLOW_AT_SPEED(INDEX(CW.FLOW_AT_HEAD({~on_heads};CW.HEAD_AT_SPEED({total_head};{speed_then};{=speed}));1;1);{=speed};{speed_then})"
        check = 'CW.FIELD_HEAD_CHECK({flow};{total_head};{speed_then};{~on_heads};{=speed};CW.QUANTITY({flow_part};"%");CW.QUANTITY({head_part};"%");CW.QUANTITY({curve_part};"%"))'
        efficiency = (
            'CW.FIELD_EFFICIENCY_CHECK({flow_then};{total_head};{density_then};{mains};{motor};{~running};CW.QUANTITY({flow_part};"%");CW.QUANTITY({head_part};"%");'
            'CW.QUANTITY({power_part};"%");CW.QUANTITY({curve_part};"%"))'
        )
        at_rated = "CW.FLOW_AT_SPEED({flow_then};{speed_then};{=speed})"
        penalty = "CW.CLEARANCE_POWER_PENALTY({flow_then};{total_head};{density_then};{efficiency_expected};{efficiency_ratio};{motor})"
        measured, no_power = '{flow}=""', f"AND({power})"
        other = 'AND({temperature}<>"";ABS(CW.QUANTITY({temperature};"°C")-CW.QUANTITY({=temperature};"°C"))>5)'  # density and vapour pressure are those of Data
        rows = (
            ("Head, power and efficiency as they are",),
            ("own", "Readings belong to this pump", "", None, f'IF({own};NA();"yes")', "compared"),
            (
                "density_then",
                "Density",
                "kg/m³",
                1,
                f'IF({{density}}="";IF({other};NA();{{=density_used}});CW.QUANTITY({{density}};"kg/m³"))',
                "quantity",
            ),
            (
                "speed_then",
                "Speed",
                "1/min",
                0,
                'IF({speed}="";CW.QUANTITY({=speed};"1/min");CW.QUANTITY({speed};"1/min"))',
                "quantity",
            ),
            ("total_head", "Head from the gauges", "m", 2, gauges, "total_head_from_gauges"),
            (
                "flow_then",
                "Flow; by the curve where none was measured",
                "m³/h",
                1,
                f'IF({measured};{inverse};CW.QUANTITY({{flow}};"m³/h"))',
                "quantity, flow_at_head",
            ),
            ("mains", "Power from the mains", "kW", 2, f'IF({no_power};"–";{mains})', "three-phase power"),
            (
                "shaft",
                "Shaft power",
                "kW",
                2,
                f'IF({no_power};"–";{{mains}}*CW.QUANTITY({{motor}};"-"))',
                "times the efficiency",
            ),
            (
                "npsh",
                "NPSH available, from the suction gauge",
                "m",
                2,
                f"IF({other};NA();"
                "CW.NPSH_AVAILABLE_FROM_GAUGE({suction};{=ambient};{suction_height};{suction_bore};{flow_then};{density_then};{=vapour_used}))",
                "npsh_available_from_gauge",
            ),
            ("npsh3", "NPSH3 of the curve there", "m", 2, f"CW.CURVE_NPSH3({{~on_npsh3s}};{at_rated})", "curve_npsh3"),
            ("Against the curve",),
            (
                "head_expected",
                "Head expected, at the measured speed",
                "m",
                2,
                f"CW.HEAD_AT_SPEED(CW.CURVE_HEAD({{~on_heads}};{at_rated});{{=speed}};{{speed_then}})",
                "curve_head, head_at_speed",
            ),
            ("head_lost", "Head lost, as a part", "–", 3, f'IF({measured};"–";INDEX({check};1;4))', "field_head_check"),
            ("head_sure", "  uncertain by", "–", 3, f'IF({measured};"–";INDEX({check};1;5))', "field_head_check"),
            ("head_word", "Head", "", None, f'IF({measured};"no flow";INDEX({check};1;1)&"")', "field_head_check"),
            (
                "efficiency",
                "Efficiency of the pump",
                "–",
                3,
                f'IF({no_power};"–";INDEX({efficiency};1;2))',
                "field_efficiency_check",
            ),
            (
                "efficiency_expected",
                "  expected",
                "–",
                3,
                f'IF({no_power};"–";INDEX({efficiency};1;3))',
                "field_efficiency_check",
            ),
            (
                "efficiency_ratio",
                "  found over expected",
                "–",
                3,
                f'IF({no_power};"–";INDEX({efficiency};1;4))',
                "field_efficiency_check",
            ),
            (
                "efficiency_sure",
                "  uncertain by",
                "–",
                3,
                f'IF({no_power};"–";INDEX({efficiency};1;5))',
                "field_efficiency_check",
            ),
            (
                "efficiency_word",
                "Efficiency",
                "",
                None,
                f'IF({no_power};"no power";INDEX({efficiency};1;1)&"")',
                "field_efficiency_check",
            ),
            (
                "power_expected",
                "Shaft power expected at that flow",
                "kW",
                2,
                f"CW.PUMP_POWER_INPUT({{flow_then}};{{head_expected}};{{density_then}};CW.CURVE_EFFICIENCY({{~on_efficiencies}};{at_rated}))",
                "pump_power_input",
            ),
            (
                "power_ratio",
                "  found over expected",
                "–",
                3,
                f'IF({no_power};"–";{{shaft}}/{{power_expected}})',
                "a ratio",
            ),
            (
                "power_sure",
                "  uncertain by",
                "–",
                3,
                'SQRT(CW.QUANTITY({power_part};"%")^2+CW.QUANTITY({curve_part};"%")^2)/100',
                "in quadrature",
            ),
            (
                "power_word",
                "Power",
                "",
                None,
                f'IF({no_power};"no power";IF({{power_ratio}}<1-{{power_sure}};"below the curve";IF({{power_ratio}}>1+{{power_sure}};"above the curve";"within uncertainty")))',
                "compared",
            ),
            ("What it costs, where the efficiency is below",),
            (
                "more",
                "More power from the mains",
                "kW",
                2,
                f'IF(OR({no_power};{{efficiency_word}}<>"below the curve");"–";INDEX({penalty};1;2))',
                "clearance_power_penalty",
            ),
            (
                "energy",
                "Energy lost a year",
                "kWh",
                0,
                'IF({more}="–";"–";CW.ANNUAL_ENERGY_FROM_POWER({more};{hours}))',
                "annual_energy_from_power",
            ),
            (
                "cost",
                "Cost a year",
                "",
                0,
                'IF({more}="–";"–";CW.ANNUAL_ENERGY_COST({energy};{price}))',
                "annual_energy_cost",
            ),
        )
        readings = set(self.row)
        for one in rows:
            if len(one) == 1:
                self.head(row, one[0], "Function, or why refused")
                row += 1
                continue
            key, text, unit, places, formula, name = one
            self.row[key] = row
            told = '""'
            for case in reversed(range(CASES)):
                column, looking = 2 + 2 * case, Looking(self.places, self.cell("index", case, one=False))

                def fill(text):
                    for word in readings | set(self.row):
                        text = text.replace(f"{{{word}}}", self.cell(word, case, one=word in readings))
                        text = text.replace(f"{{={word}}}", looking.find(word)) if f"{{={word}}}" in text else text
                    for word in ("density_used", "vapour_used", "ambient", "speed", "temperature"):
                        text = text.replace(f"{{={word}}}", looking.find(word)) if f"{{={word}}}" in text else text
                    skip = f'IF(INDEX({looking.value("used_flows")};{looking.value("efficiencies_first")})=0;1;0)'
                    text = (
                        text.replace("{~running}", looking.pair("on_efficiencies", skip))
                        if "{~running}" in text
                        else text
                    )
                    for word in ("on_heads", "on_efficiencies", "on_npsh3s"):
                        text = text.replace(f"{{~{word}}}", looking.pair(word)) if f"{{~{word}}}" in text else text
                    return text

                # nothing is found from another pump's readings
                shown = formula if key == "own" else f"IF(ISERROR({{own}});NA();{formula})"
                index, word = self.cell("index", case, one=False), places is None
                put(
                    row,
                    column,
                    "=" + fill(f'IF(ISERROR({index});"";{shown})'),
                    "TextRight" if word else f"Value{places}",
                    across=2 if word else 1,
                )
                if not word:
                    put(row, column + 1, None, "Label")
                reasons = '""'
                for call in calls_in(formula):
                    reasons = f"IF(ISERROR({call});{refusal(call)};{reasons})"
                reason = (
                    fill(f'IFERROR({reasons};"")')
                    if "CW." in formula
                    else ('"the readings are of another pump"' if key == "own" else '""')
                )
                if key in ("density_then", "npsh"):
                    reason = f'IF({fill(f"IFERROR({other};FALSE())")};"read more than 5 K from the temperature on Data: give the density, and enter a column on Data for it";{reason})'
                value = reference("", row, column)
                told = f'IF(AND(ISERROR({value});{reason}<>"");{self.cell("tag", case, one=False)}&", {text.strip()}: "&{reason};{told})'
            shown = f'IF({reference("", row, LAST + 1)}<>"";"refused: see below";"{name}")'
            self.line(row, text, unit, "=" + shown)
            put(row, LAST + 1, "=" + told, "Text")
            row += 1
        return refusals_line(
            self.sheet, row, LAST, min(r for r, column in self.sheet.cells if column == LAST + 1), row - 1
        )

    def signs(self, row):
        """One letter each of head, power and efficiency: below, within, above; ? where it was not measured, which agrees with anything."""
        put, sheet = self.sheet.put, self.sheet
        self.row["code"] = row
        sheet.breaks.add(row)
        self.head(row, "What it may be")
        letters = {}
        for case in range(CASES):
            for key in ("head_word", "power_word", "efficiency_word"):
                word = self.cell(key, case, one=False)
                letters[
                    case, key
                ] = f'IF({word}="below the curve";"B";IF({word}="within uncertainty";"W";IF({word}="above the curve";"A";"?")))'
            put(
                row,
                2 + 2 * case,
                f'=IF(ISERROR({self.cell("index", case, one=False)});"";IFERROR({"&".join(letters[case, key] for key in ("head_word", "power_word", "efficiency_word"))};""))',
                "HeadCentre",
                across=2,
            )
        put(row, LAST, "would be shown by", "Head")
        first = row + 1
        for index, (cause, head, power, efficiency, shown) in enumerate(SIGNS, first):
            sheet.heights[index] = 1.1
            self.line(index, cause, f"{head}|{power}|{efficiency}")
            put(index, LAST, shown, "Reason")
            for case in range(CASES):
                code = reference("", row, 2 + 2 * case)
                fits = ";".join(
                    f'OR(MID({code};{place};1)="?";ISNUMBER(FIND(MID({code};{place};1);"{letters}")))'
                    for place, letters in enumerate((head, power, efficiency), 1)
                )
                put(
                    index,
                    2 + 2 * case,
                    f'=IF({code}="";"";IF(OR({code}="WWW";{code}="???");"–";IF(AND({fits});"agrees";"")))',
                    "TextRight",
                    across=2,
                )
        self.first_sign, self.last_sign = first, first + len(SIGNS) - 1
        row = self.last_sign + 1
        put(
            row,
            0,
            "Signs of head, power, efficiency: B below, W within, A above the curve; ? not measured. The suction and the speed are asked besides:",
            "Note",
            across=LAST + 1,
        )
        row += 1
        for text, formula in (
            ("NPSH available less than 0.5 m over NPSH3", 'IF({npsh}-{npsh3}<0.5;"points to suction";"no")'),
            ("Speed more than 1 % off the curve's", 'IF(ABS({speed_then}/{=speed}-1)>0.01;"points to speed";"no")'),
        ):
            self.line(row, text, None)
            for case in range(CASES):
                looking = Looking(self.places, self.cell("index", case, one=False))
                filled = formula.replace("{=speed}", f'CW.QUANTITY({looking.one("speed")};"1/min")')
                for word in ("npsh3", "npsh", "speed_then"):
                    filled = filled.replace(f"{{{word}}}", self.cell(word, case, one=False))
                put(
                    row,
                    2 + 2 * case,
                    f'=IF(ISERROR({self.cell("index", case, one=False)});"";{filled})',
                    "TextRight",
                    across=2,
                )
            row += 1
        return row

    def conclude(self, case):
        words = [self.cell(key, case, one=False) for key in ("head_word", "efficiency_word", "power_word")]
        refused = f'OR({";".join(f"ISERROR({self.cell(key, case, one=False)})" for key in ("own", "total_head", "flow_then", "head_word", "efficiency_word", "power_word", "npsh", "npsh3"))})'
        off = f'OR({";".join(f"{word}={chr(34)}{name} the curve{chr(34)}" for word in words for name in ("below", "above"))})'
        self.sheet.put(
            5,
            2 + 2 * case,
            f'=IF(ISERROR({self.cell("index", case, one=False)});"";IF(ISERROR({self.cell("own", case, one=False)});"refused: the readings are of another pump";IF({refused};"refused: '
            f'see the reasons below";IF({off};"off the curve by more than the uncertainty";"on the curve, as far as it can be told"))))',
            "Finding",
            across=2,
        )


__all__ = ["Field"]
