"""Three offered pumps for one duty side by side. Nothing is chosen by the sheet."""
from . import points
from .looking import Looking, column_of, foot, refusals_line, title
from .odf import Sheet, calls_in, reference, refusal
from .results import motor_needed
from .verdicts import limit_call

OFFERS, POINTS, PROFILE = 3, 10, 6
WIDTHS = [5.4, 1.5] + [2.1, 1.7] * OFFERS + [3.4]
LAST = 2 + 2 * OFFERS
INPUTS = (
    ("offer", "Offer", ""),
    ("belongs", "Curve is for the liquid of", ""),
    ("speed", "Speed", "1/min"),
    ("eyes", "Impeller eyes", "–"),
    ("stages", "Stages", "–"),
    ("least_allowed", "Maker's least flow", "m³/h"),
    ("greatest_allowed", "Maker's greatest flow", "m³/h"),
    ("motor", "Motor offered", "kW"),
    ("motor_efficiency", "  its efficiency at full load", "–"),
    ("purchase", "Purchase: pump, motor, base", ""),
    ("installation", "Installation", ""),
    ("upkeep", "Maintenance, a year", ""),
    ("downtime", "Loss of production, a year", ""),
    ("disposal", "Decommissioning at the end", ""),
)
SERIES = (
    ("flows", "Flow", "m³/h"),
    ("heads", "Head", "m"),
    ("efficiencies", "Efficiency", "–"),
    ("npsh3s", "NPSH3", "m"),
)
COMMON = (
    ("price", "Price of energy", "a kWh"),
    ("interest", "Interest, a year", "–"),
    ("years", "Years of life", "–"),
    ("inflation", "Rise of prices, a year", "–"),
    ("energy_rise", "Energy price over and above it", "–"),
)

SOURCES = (
    "Duty, region and motor as on the sheet Service; energy of the profile throttled, by duty_profile_energy; cost: Hydraulic Institute, Europump and US Department of Energy, "
    "Pump Life Cycle Costs, 2001. Pages in docs/functions tell what was read.",
)
CAUTIONS = (
    "The offers' curves are taken as they stand, on the liquid pumped: a curve on water must first be corrected for a viscous or a solids-bearing liquid.",
    "Tolerances of the acceptance grade can be larger than the differences shown here, and a difference smaller than the uncertainty of hours, efficiencies and prices decides nothing.",
    "Nothing is chosen by this sheet: materials, seal, delivery, service and the maker's experience with the liquid do not stand in it.",
)


class Offers:
    def __init__(self, plant, places):
        self.plant, self.places, self.case = plant, places, plant["offers"]
        self.sheet = Sheet("Offers", WIDTHS + [12.0], "Upright", 0.4)
        self.sheet.print_columns = LAST + 1
        self.row, self.fixed = {}, {}

    def line(self, row, text, unit, last=None):
        self.sheet.put(row, 0, text, "Label")
        self.sheet.put(row, 1, unit, "Unit")
        self.sheet.put(row, LAST, last, "Small")

    def head(self, row, text, last=None):
        for column in range(LAST + 1):
            self.sheet.put(row, column, {0: text, LAST: last}.get(column), "Head")

    def build(self):
        put, sheet = self.sheet.put, self.sheet
        title(sheet, "Offers compared", self.plant, ((0, 1), (1, 2), (3, 2), (5, 2), (7, 2)))
        sheet.heights.update({3: 0.6, 5: 0.6})
        self.line(3, "Duty, system and liquid of", None)
        put(3, 2, self.case["tag"], "InputTag", across=2, validation="tags")
        sheet.print_if(3, 2)
        put(
            3,
            4,
            f'=IF(ISERROR({reference("", 4, 2)});"";INDEX({self.places.row_range("service")};1;{reference("", 4, 2)})&"; "&INDEX({self.places.row_range("liquid")};1;{reference("", 4, 2)}))',
            "TextWrap",
            across=5,
        )
        sheet.header_rows = 4
        self.line(4, "Column on the sheet Data", None)
        put(4, 2, column_of(self.places, reference("", 3, 2)), "Value0", across=2)
        self.look = Looking(self.places, "[.$C$5]")
        self.row["verdict"] = 5
        self.line(5, "Verdict, all checks of this sheet", None)
        row = self.given(6)
        row = self.powers(row)
        row = self.profile(row)
        row = self.results(row)
        sheet.put(row, 0, None)
        foot(sheet, row + 1, SOURCES, CAUTIONS, 155)
        return sheet

    def given(self, row):
        put = self.sheet.put
        self.head(row, "As offered")
        offers = list(self.case["offers"])
        for key, text, unit in INPUTS:
            row += 1
            self.row[key] = row
            self.line(row, text, unit, "given")
            for one in range(OFFERS):
                data = offers[one] if one < len(offers) else {}
                wide = 2 if key in ("offer", "belongs") else 1
                put(
                    row,
                    2 + 2 * one,
                    data.get(key),
                    "InputText" if wide == 2 else "Input",
                    across=wide,
                    validation="tags" if key == "belongs" else None,
                )
                if wide == 1:
                    put(row, 3 + 2 * one, None, "Label")
        for pair in (SERIES[:2], SERIES[2:]):
            row += 1
            self.head(row, "Curve offered: " + " and ".join(text if text != "Head" else "head" for _, text, _ in pair))
            for point in range(POINTS):
                row += 1
                for place, (key, _, unit) in enumerate(pair):
                    self.row.setdefault(key, row)
                    for one in range(OFFERS):
                        values = offers[one].get(key, ()) if one < len(offers) else ()
                        put(row, 2 + 2 * one + place, values[point] if point < len(values) else None, "Input")
                self.line(row, f"Point {point + 1}", "; ".join(unit for *_, unit in pair), "given")
        return row + 1

    def powers(self, row):
        """Of each point its power on the liquid pumped."""
        put = self.sheet.put
        self.head(row, "Curve offered: power on the liquid pumped", "Function")
        for point in range(POINTS):
            row += 1
            self.row.setdefault("powers", row)
            self.line(row, f"Point {point + 1}", "kW", "pump_power_input")
            for one in range(OFFERS):
                cells = {}
                for key, column in (("flow", 0), ("head", 1), ("efficiency", 0)):
                    at = self.row[dict(flow="flows", head="heads", efficiency="efficiencies")[key]] + point
                    cells[key] = reference("", at, 2 + 2 * one + column, at, 2 + 2 * one + column)
                call = f'CW.PUMP_POWER_INPUT({cells["flow"]};{cells["head"]};{self.look.find("density_used")};{cells["efficiency"]})'
                put(
                    row,
                    2 + 2 * one,
                    f'=IF({cells["flow"]}="";"";IF(CW.QUANTITY({cells["flow"]};"m³/h")=0;"–";{call}))',
                    "Value2",
                )
                put(row, 3 + 2 * one, None, "Label")
        return row + 1

    def profile(self, row):
        """Flows and hours below each other in the first offer's columns; beside them the money."""
        put = self.sheet.put
        self.head(row, "Duty profile: flow, hours a year; prices")
        for point in range(PROFILE):
            row += 1
            self.line(row, f"Profile, point {point + 1}", "m³/h; h", "given")
            for place, key in enumerate(("profile", "hours")):
                self.fixed.setdefault(key, (row, 2 + place))
                values = self.case[key]
                put(row, 2 + place, values[point] if point < len(values) else None, "Input")
            if point < len(COMMON):
                key, text, unit = COMMON[point]
                put(row, 4, text, "Label", across=2)
                put(row, 6, self.case[key], "Input")
                put(row, 7, unit, "Unit")
                self.fixed[key] = (row, 6)
        return row + 1

    def cell(self, key, one):
        if key in self.fixed:
            row, column = self.fixed[key]
            last = row + PROFILE - 1 if key in ("profile", "hours") else row
            return reference("", row, column, last, column)
        row, column = self.row[key], 2 + 2 * one + (key in ("heads", "npsh3s"))
        if key == "powers" or key in dict((key, 0) for key, *_ in SERIES):
            return reference("", row, column, row + POINTS - 1, column)
        return reference("", row, column, row, column) if key in self.given_keys else reference("", row, column)

    def results(self, row):
        put = self.sheet.put
        self.given_keys = {key for key, *_ in INPUTS}
        curve, system = "{flows};{heads}", '{=static_head};IF({=line_law}="square";{=resistance};NA())'
        rest = "CW.NPSH_AVAILABLE({=surface_absolute};{=vapour_used};{=density_used};{=liquid_level};0)"
        whole = f"CW.WHOLE_DUTY({curve};{{efficiencies}};{{npsh3s}};{system};{{=density_used}};{rest};CW.SYSTEM_RESISTANCE({{=flow}};{{=suction_loss}}))"
        year = f'CW.DUTY_PROFILE_ENERGY({curve};{{efficiencies}};{system};{{profile}};{{hours}};"throttling";{{motor}};{{motor_efficiency}};{{=density_used}})'
        life = "CW.LIFE_CYCLE_COST({purchase};{installation};{energy_cost};0;{upkeep};{downtime};0;{disposal};{interest};{years};{inflation};{energy_rise})"
        best = "CW.BEST_EFFICIENCY_FLOW({flows};{efficiencies})"
        shape_speed = f"CW.SPECIFIC_SPEED({{speed}};{{best}};CW.CURVE_HEAD({curve};{{best}});1;{{stages}})"
        region = f"CW.OPERATING_REGION({{duty_flow}};{{best}};{shape_speed};{{least_allowed}};{{greatest_allowed}})"
        # At flow 0 the power does not follow from head and efficiency: the curve of the power begins after it.
        begin, end = 'IF(CW.QUANTITY(INDEX({flows};1);"m³/h")=0;2;1)', "COUNTA({flows})"
        running = points.pair("{flows}", "{powers}", begin, end)
        # key, text, unit, places or none for a word, formula, (sense, limit, word) or words that meet
        rows = (
            ("Head and flow",),
            ("best", "Best efficiency flow", "m³/h", 1, best, None),
            (
                "head_there",
                "Head at the flow wanted",
                "m",
                2,
                f"CW.CURVE_HEAD({curve};{{=flow}})",
                (">=", "{=system_head}", "FAILS"),
            ),
            ("head_over", "  over what the system takes", "m", 2, "{head_there}-{=system_head}", None),
            (
                "flow_part",
                "Flow wanted over best efficiency flow",
                "–",
                3,
                "INDEX(CW.RATED_AGAINST_BEST({flows};{efficiencies};{=flow});1;1)",
                None,
            ),
            ("duty_flow", "Duty, valve open: flow", "m³/h", 1, f"INDEX({whole};1;1)", None),
            ("duty_head", "Duty: head", "m", 2, f"INDEX({whole};1;2)", None),
            (
                "region",
                "Operating region at the duty",
                "",
                None,
                f'INDEX({region};1;1)&""',
                {"preferred": "meets", "allowable": "WATCH"},
            ),
            (
                "shape",
                "Shape of the head curve",
                "",
                None,
                f'INDEX(CW.CURVE_IS_STABLE({curve});1;1)&""',
                {"stable": "meets", "flat": "WATCH", "drooping": "WATCH"},
            ),
            (
                "shut",
                "Pressure rise at the greatest head",
                "bar",
                2,
                "CW.PRESSURE_FROM_HEAD(INDEX(CW.CURVE_IS_STABLE({flows};{heads});1;3);{=density_used})",
                ("<=", "{@shutoff_allowed}", "FAILS"),
            ),
            (
                "least",
                "Maker's least flow v. the process's",
                "m³/h",
                1,
                'CW.QUANTITY({least_allowed};"m³/h")',
                ("<=", "{@least_flow}", "FAILS"),
            ),
            ("Suction",),
            ("npsh3", "NPSH3 at the duty", "m", 2, f"INDEX({whole};1;5)", None),
            ("margin", "NPSH margin", "m", 2, f"INDEX({whole};1;7)", (">=", "{@margin_wanted}", "FAILS")),
            (
                "ratio",
                "NPSH margin ratio",
                "–",
                2,
                f"CW.NPSH_MARGIN_RATIO(INDEX({whole};1;6);{{npsh3}})",
                (">=", "{@ratio_wanted}", "FAILS"),
            ),
            (
                "suction_speed",
                "Suction specific speed, per eye",
                "–",
                0,
                "CW.SUCTION_SPECIFIC_SPEED({speed};{best};CW.CURVE_NPSH3({flows};{npsh3s};{best});{eyes})",
                ("<=", "{@suction_speed_limit}", "WATCH"),
            ),
            ("Power, energy and cost",),
            ("efficiency", "Efficiency at the duty", "–", 3, f"INDEX({whole};1;3)", None),
            ("power", "Power input at the duty", "kW", 2, f"INDEX({whole};1;4)", None),
            (
                "needed",
                "Motor rating needed",
                "kW",
                1,
                motor_needed("{power}", 'CW.QUANTITY({motor};"kW")', "{=motor_rule}", "{=motor_series}"),
                ("<=", 'CW.QUANTITY({motor};"kW")', "FAILS"),
            ),
            (
                "greatest_power",
                "Greatest power on the curve",
                "kW",
                2,
                f"INDEX(CW.GREATEST_POWER_ON_CURVE({running});1;1)",
                ("<=", 'CW.QUANTITY({motor};"kW")', "WATCH"),
            ),
            ("energy", "Energy of the duty profile, a year", "kWh", 0, f"INDEX({year};1;1)", None),
            ("specific", "  for each volume", "kWh/m³", 4, f"INDEX({year};1;3)", None),
            ("energy_cost", "Cost of the energy, a year", "", 0, "CW.ANNUAL_ENERGY_COST({energy};{price})", None),
            ("life", "Cost over life, present value", "", 0, f"INDEX({life};1;1)", None),
            ("life_energy", "  of which energy", "", 0, f"INDEX({life};1;2)", None),
        )
        checks, values = [], []
        for line in rows:
            if len(line) == 1:
                if line[0].startswith("Head"):
                    self.sheet.breaks.add(row)
                self.head(row, line[0], "Function, or why refused")
                row += 1
                continue
            key, text, unit, places, formula, check = line
            self.row[key] = row
            names = (
                ", ".join(dict.fromkeys(call[3:].split("(")[0].lower() for call in calls_in(formula)[:1]))
                or "difference"
            )
            told = '""'
            for one in reversed(range(OFFERS)):
                column, own = (
                    2 + 2 * one,
                    f'AND({self.cell("belongs", one)}<>"";TRIM({self.cell("belongs", one)})=TRIM({reference("", 3, 2, 3, 2)}))',
                )
                fill = lambda given, one=one: self.fill(given, one)  # noqa: E731
                offered = f'{self.cell("offer", one)}=""'
                put(
                    row,
                    column,
                    f'=IF({offered};"";IF({own};{fill(formula)};NA()))',
                    "TextRight" if places is None else f"Value{places}",
                )
                value = reference("", row, column)
                if isinstance(check, dict):
                    word = '"FAILS"'
                    for found, kept in reversed(check.items()):
                        word = f'IF({value}="{found}";"{kept}";{word})'
                elif check:
                    sense, limit, failing = check
                    limit = fill(limit)
                    word = f'IF(ISNUMBER({limit});IF({value}{sense}{limit};"meets";"{failing}");"refused")'
                else:
                    word = '""'
                put(row, column + 1, f'=IF({offered};"";IF(ISERROR({value});"refused";{word}))', "Verdict")
                reasons = '""'
                for call in calls_in(formula):
                    reasons = f"IF(ISERROR({call});{refusal(call)};{reasons})"
                reason = f'IF(NOT({own});"the curve is for another pump\'s liquid";IFERROR({fill(reasons)};""))'
                told = f'IF(AND(ISERROR({value});{reason}<>"");{self.cell("offer", one)}&", {text.strip()}: "&{reason};{told})'
                if check is not None:
                    checks.append((one, row))
                values.append((one, row))
            self.line(row, text, unit, f'=IF({reference("", row, LAST + 1)}<>"";"refused: see below";"{names}")')
            put(row, LAST + 1, "=" + told, "Text")
            self.sheet.heights[row] = 0.42
            row += 1
        first, last = min(r for _, r in values), max(r for _, r in values)
        for one in range(OFFERS):
            words = reference("", first, 3 + 2 * one, last, 3 + 2 * one)
            word = (
                "".join(f'IF(COUNTIF({words};"{name}")>0;"{name}";' for name in ("refused", "FAILS", "WATCH"))
                + '"meets")))'
            )
            put(5, 2 + 2 * one, f'=IF({self.cell("offer", one)}="";"";{word})', "VerdictBox", across=2)
        return refusals_line(self.sheet, row, LAST, first, last)

    def fill(self, text, one):
        """{key}: this offer's; {=key}: the pump's on the sheets Data and Checks; {@key}: an input of Data as a number."""
        out = text
        while "{" in out:
            start = out.index("{")
            end = out.index("}", start)
            name = out[start + 1 : end]
            if name[0] == "=":
                put = self.look.find(name[1:])
            elif name[0] == "@":
                put = limit_call(name[1:]).replace(f"{{{name[1:]}}}", self.look.one(name[1:]))
            else:
                put = self.cell(name, one)
            out = out[:start] + put + out[end + 1 :]
        return out
