"""An acceptance test of one pump: points as measured, translated to the rated speed, against the guarantee."""
from . import chart
from .odf import first_told, reference, refusal
from .upright import Upright

CHOICES = {"grade": ("1U", "1E", "1B", "2B", "2U", "3B"), "small_pump_rule": ("standard", "grade")}
POINTS = 10
WIDTHS = [3.9, 1.55, 1.55, 1.55, 1.55, 1.55, 1.55, 1.55, 2.55]
FIRST_TRANSLATED = 5

SOURCES = (
    "ISO 9906:2012: translation 6.1.2, tolerances 4.4.1, tolerance cross for flow and head, efficiency and power on the line from the origin through the guaranteed point.",
    "Efficiency: ISO 17769-1. Curve between its points: shape-preserving cubic. Pages in docs/functions tell which edition and clause, and whether they were read.",
)
CAUTIONS = (
    "Flow and head are kept when the curve crosses or touches one bar of the cross: either margin not negative is enough. The nearest test point says nothing by itself.",
    "Up to 10 kW of power input, the greatest of the test here, the standard's wider rule takes the grade's place, unless otherwise agreed: then give the rule as grade.",
    "The tolerances hold the measuring uncertainty and the making's scatter already; nothing is added. The 1999 edition's grades 1 and 2 are others. The contract goes before.",
    "Points are translated each by the speed it was measured at, and the power by the densities. For thin liquids only: a viscous one needs its own correction.",
    "Efficiency is the pump's alone: power is the shaft's, not the mains'. NPSH3 and vibration are tests of their own, and are not judged here.",
)


class Acceptance(Upright):
    def __init__(self, plant, places):
        self.case = plant["acceptance"]
        super().__init__("Acceptance", "Acceptance test", WIDTHS, "Guarantee", plant, places, self.case["tag"])

    def inputs(self, row):
        put, at = self.sheet.put, {}
        self.head(row, (0, "Guaranteed, at rated speed and density", "Head", 4), (4, "Test", "Head", 3))
        left = (
            ("flow", "Flow", "m³/h", self.case["flow"]),
            ("head", "Head", "m", self.case["head"]),
            ("efficiency", "Efficiency; none: empty", "–", self.case.get("efficiency")),
            ("power", "Power input; none: empty", "kW", self.case.get("power")),
        )
        right = (
            ("grade", "Acceptance grade", "ISO 9906:2012", self.case["grade"]),
            ("speed", "Rated speed", "1/min", "=" + self.looked_up("speed")),
            ("density", "Rated density", "kg/m³", "=" + self.looked_up("density_used")),
            ("test_density", "Density of the test liquid", "kg/m³", self.case["test_density"]),
            ("small_pump_rule", "Rule up to 10 kW", "standard, grade", self.case.get("small_pump_rule", "standard")),
        )
        for rows, label, wide, value in ((left, 0, 1, 1), (right, 4, 3, 7)):
            for index, (key, text, unit, given) in enumerate(rows, row + 1):
                put(index, label, text, "Label", across=wide)
                look_up = isinstance(given, str) and given.startswith("=")
                put(
                    index,
                    value,
                    given,
                    "Value1" if key == "density" else "TextRight" if look_up else "Input",
                    validation=f"choice_{key}" if key in CHOICES else None,
                )
                put(index, value + 1, unit, "Unit")
                at[key] = reference("", index, value, index, value)
        for index in range(row + 1, row + 6):
            for column in range(4):
                if (index, column) not in self.sheet.cells:
                    put(index, column, None, "Plain")
        return at, row + 6

    def points(self, row, at):
        """The translation is one formula over a block."""
        put = self.sheet.put
        self.head(
            row,
            (0, "Test points", "Head", 1),
            (1, "as measured", "HeadRight", 4),
            (FIRST_TRANSLATED, "at the rated speed and density", "HeadRight", 4),
        )
        heads = ("Flow", "Head", "Power", "Speed", "Flow", "=[.$A$3]", "Power", "Efficiency")
        units = ("m³/h", "m", "kW", "1/min", "m³/h", "head, m", "kW", "–")
        put(row + 1, 0, None, "Sense")
        put(row + 2, 0, None, "Sense")
        for column, (text, unit) in enumerate(zip(heads, units), 1):
            put(row + 1, column, text, "HeadRight")
            put(row + 2, column, unit, "Sense")
        put(row + 1, 0, None, "Head")
        first, last = row + 3, row + 2 + POINTS
        for point in range(POINTS):
            put(first + point, 0, f"Point {point + 1}", "Label")
            for column, key in enumerate(("flows", "heads", "powers", "speeds"), 1):
                values = self.case[key]
                put(first + point, column, values[point] if point < len(values) else None, "Input")
        measured = ";".join(reference("", first, column, last, column) for column in range(1, 5))
        call = f'CW.TEST_POINTS_TO_RATED_SPEED({measured};{at["speed"]};{at["test_density"]};{at["density"]})'
        self.sheet.block(
            first,
            FIRST_TRANSLATED,
            POINTS,
            4,
            f'=IF({reference("", first, 1, last, 1)}="";"";{call})',
            ("Value2", "Value2", "Value2", "Value4"),
        )
        series = {
            key: (first, column, last)
            for column, key in enumerate(("flows", "heads", "powers", "efficiencies"), FIRST_TRANSLATED)
        }
        return {"series": series, "refusals": [refusal(call)], "head_label": (row + 1, FIRST_TRANSLATED + 1)}, last + 1

    def verdicts(self, row, at, found):
        put, cell = self.sheet.put, {}
        flows, heads, powers, efficiencies = (
            reference("", first, column, last, column) for first, column, last in found["series"].values()
        )
        guarantee = f'{at["grade"]};{at["flow"]};{at["head"]}'
        curve = f"{flows};{heads}"
        rule = f'MAX({powers});{at["small_pump_rule"]}'
        verdict, margins = (
            f"CW.ACCEPTANCE_VERDICT({guarantee};{curve};{rule})",
            f"CW.ACCEPTANCE_MARGINS({guarantee};{curve};{rule})",
        )
        by_efficiency = (
            f'CW.ACCEPTANCE_VERDICT_EFFICIENCY({guarantee};{at["efficiency"]};{curve};{efficiencies};{rule})'
        )
        by_power = f'CW.ACCEPTANCE_VERDICT_POWER({guarantee};{at["power"]};{curve};{powers};{rule})'
        self.head(
            row,
            (0, "Against the guarantee", "Head", 1),
            *(
                (column, text, style, 1)
                for column, text, style in (
                    (1, "Wanted", "HeadRight"),
                    (2, "Lowest", "HeadRight"),
                    (3, "Highest", "HeadRight"),
                    (4, "Found", "HeadRight"),
                    (5, "Deviation", "HeadRight"),
                    (6, "Margin", "HeadRight"),
                    (7, "Verdict", "HeadCentre"),
                    (8, "Found by", "Head"),
                )
            ),
        )
        lines = (
            ("head", "Head at that flow, m", 2, f"INDEX({verdict};1;2)", "acceptance_verdict"),
            ("flow", "Flow at that head, m³/h", 1, f"INDEX({verdict};1;3)", "acceptance_verdict"),
            ("efficiency", "Efficiency on the line", 3, f"INDEX({by_efficiency};1;2)", "… _efficiency"),
            ("power", "Power input on the line, kW", 2, f"INDEX({by_power};1;2)", "… _power"),
        )
        first = row + 1
        for index, (key, text, places, measured, name) in enumerate(lines, first):
            given, wanted, value = at[key], reference("", index, 1), reference("", index, 4)
            optional = key in ("efficiency", "power")

            def shown(formula):
                return f'=IF({given}="";"–";{formula})' if optional else "=" + formula

            limits = f'CW.ACCEPTANCE_LIMITS({at["grade"]};"{key}";{wanted};{rule})'
            put(index, 0, text, "Label")
            unit = {"flow": "m³/h", "head": "m", "efficiency": "-", "power": "kW"}[key]
            put(index, 1, shown(f'CW.QUANTITY({given};"{unit}")'), f"Value{places}")
            put(
                index,
                2,
                "–" if key == "power" else shown(f"INDEX({limits};1;1)"),
                "TextRight" if key == "power" else f"Value{places}",
            )
            put(
                index,
                3,
                "–" if key == "efficiency" else shown(f"INDEX({limits};1;2)"),
                "TextRight" if key == "efficiency" else f"Value{places}",
            )
            put(index, 4, shown(measured), f"Value{places}")
            if optional:
                pair = f'CW.ACCEPTANCE_MARGIN({at["grade"]};"{key}";{wanted};{value};{rule})'
                deviation, margin = f"INDEX({pair};1;1)", f"INDEX({pair};1;2)"
            else:
                deviation, margin = (f"INDEX({margins};1;{n})" for n in ((1, 2) if key == "head" else (3, 4)))
            put(index, 5, shown(deviation), "Value4")
            put(index, 6, shown(margin), "Value4")
            kept = f'IF(ISERROR({reference("", index, 6)});"refused";IF({reference("", index, 6)}>=0;"{"meets" if optional else "on the bar"}";"{"FAILS" if optional else "off the bar"}"))'
            put(index, 7, shown(kept), "Verdict")
            put(index, 8, name, "Small")
            cell[key] = index
        row = first + len(lines)
        put(row, 0, "Flow and head by the cross", "Label")
        for column in range(1, 7):
            put(row, column, None, "Label")
        put(
            row,
            7,
            f'=IF(ISERROR(INDEX({verdict};1;1));"refused";IF(INDEX({verdict};1;1)&""="pass";"meets";"FAILS"))',
            "Verdict",
        )
        put(row, 8, "acceptance_verdict", "Small")
        refusals = found["refusals"] + [
            refusal(verdict),
            refusal(margins),
            f'IF({at["efficiency"]}="";"";' + refusal(by_efficiency) + ")",
            f'IF({at["power"]}="";"";' + refusal(by_power) + ")",
        ]
        self.sheet.heights[row + 1] = 0.5
        put(
            row + 1,
            0,
            f'=IF(ISERROR({self.pump});"There is no pump of this tag on the sheet Data.";{first_told(refusals)})',
            "NoteBold",
            across=9,
        )
        words = [reference("", r, 7) for r in (row, cell["efficiency"], cell["power"])]
        word = (
            "".join(
                f'IF(OR({";".join(f"{w}=" + chr(34) + bad + chr(34) for w in words)});"{bad}";'
                for bad in ("refused", "FAILS")
            )
            + '"meets"))'
        )
        put(5, 7, "=" + word, "VerdictBox", across=2)
        put(
            5,
            1,
            f'="Grade "&{at["grade"]}&IF({at["efficiency"]}="";"";", efficiency guaranteed")&IF({at["power"]}="";"";", power guaranteed")',
            "BoxValue",
            across=6,
        )
        return cell, row + 2

    def marks(self, row, at, found, cell):
        """The cross and the guaranteed point, for the chart: a bar's ends stand one below the other."""
        put, where = self.sheet.put, {}
        columns = ((1, "Bar of the flow"), (3, "Bar of the head"), (5, "Guaranteed point"), (7, "Test curve there"))
        self.head(
            row, (0, "Marks in the charts", "Head", 1), *((column, text, "HeadRight", 2) for column, text in columns)
        )
        wanted, low, high = (
            {key: reference("", cell[key], column) for key in ("flow", "head")} for column in (1, 2, 3)
        )
        ends = {
            "Bar of the flow": ((low["flow"], wanted["head"]), (high["flow"], wanted["head"])),
            "Bar of the head": ((wanted["flow"], low["head"]), (wanted["flow"], high["head"])),
            "Guaranteed point": ((wanted["flow"], wanted["head"]),),
        }
        flows, heads = (
            reference("", first, column, last, column) for first, column, last in list(found["series"].values())[:2]
        )
        ends["Test curve there"] = tuple(
            (flow, f'IFERROR(CW.CURVE_HEAD({flows};{heads};{flow});"–")')
            for flow in (low["flow"], wanted["flow"], high["flow"])
        )
        for end, text in enumerate(("First", "Second", "Third"), row + 1):
            put(end, 0, text, "Label")
        for column, text in columns:
            for end, (flow, head) in enumerate(ends[text], row + 1):
                put(end, column, "=" + flow, "Value1")
                put(end, column + 1, "=" + head, "Value2")
            where[text] = (row, column, row + len(ends[text]))
        return where, row + 4

    def charts(self, row, found, where):
        series, height = found["series"], 6.9

        def column_of(key):
            first, column, last = series[key]
            return self.area(first, column, last, column)

        def mark(text, look):
            top, column, last = where[text]
            return (
                self.label(top, column),
                self.area(top + 1, column, last, column),
                self.area(top + 1, column + 1, last, column + 1),
                look,
                False,
            )

        top, frames, flow = self.top(row) + 0.1, self.sheet.frames, "Flow, m³/h"
        cross = [mark("Bar of the flow", "bar"), mark("Bar of the head", "bar"), mark("Guaranteed point", "wanted")]
        curve = (self.label(*found["head_label"]), column_of("flows"), column_of("heads"))
        points = (self.label(series["heads"][0] - 3, 0),) + curve[1:]
        frames.append(
            chart.frame(
                0,
                0,
                top,
                8.55,
                height,
                "Test curve",
                flow,
                "Head, m",
                [(*curve, "pump", False), (*points, "points", False), cross[2]],
                below=2.55,
            )
        )
        frames.append(
            chart.frame(
                1,
                8.75,
                top,
                8.55,
                height,
                "The cross of tolerances",
                flow,
                "Head, m",
                [mark("Test curve there", "pump"), *cross],
                from_zero=False,
                y_number="C1",
                below=2.55,
            )
        )
        efficiency, power = series["efficiencies"], series["powers"]
        self.sheet.heights[row] = height + 0.2
        self.sheet.put(row, 0, None)
        row += 1
        self.sheet.breaks.add(row)
        frames.append(
            chart.frame(
                2,
                0,
                self.top(row),
                17.3,
                height,
                "Efficiency and power",
                flow,
                "Efficiency",
                [
                    (
                        self.label(efficiency[0] - 2, efficiency[1]),
                        column_of("flows"),
                        column_of("efficiencies"),
                        "efficiency",
                        False,
                    ),
                    (self.label(power[0] - 2, power[1]), column_of("flows"), column_of("powers"), "power", True),
                ],
                second_title="Power input, kW",
                y_number="C1",
                second_number="C0",
            )
        )
        self.sheet.heights[row] = height + 0.2
        self.sheet.put(row, 0, None)
        return row + 1

    def build(self):
        at, row = self.inputs(7)
        found, row = self.points(row, at)
        cell, row = self.verdicts(row, at, found)
        where, row = self.marks(row, at, found, cell)
        row = self.charts(row, found, where)
        self.foot(row, SOURCES, CAUTIONS)
        return self.sheet
