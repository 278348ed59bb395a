"""Pumps in parallel on one system: which of three unlike pumps carries what, and which is pushed back to no flow."""
from . import chart
from .odf import first_told, reference, refusal
from .upright import Upright

POINTS, COMBINED = 10, 20
WIDTHS = [4.05, 1.9, 1.35, 1.35, 1.4, 1.4, 1.7, 1.6, 2.75]
NAMES = ("one", "two", "three")
SYSTEM = (("static_head", "Static head", "m", None), ("resistance", "Resistance, valve open", "h²/m⁵", "Value8"))

SOURCES = (
    "Flows add at the same head, as ISO 17769-1 has it (from memory of it); a pump behind its non-return valve gives nothing above its closed-valve head. Curves between their points: "
    "shape-preserving cubic. Speed: Hydraulic Institute, Engineering Data Book, the similarity parabola through the duty.",
)
CAUTIONS = (
    "A pump that is pushed back runs against its closed non-return valve: the liquid in it heats, and may boil. Stop it, or lead a least flow back. See the least flow on the sheet Service.",
    "Losses between each pump and the common pipe are left out: take them off each pump's curve first. Drooping curves do not belong in parallel: the flow may swing from pump to pump.",
    "A pump that runs alone gives more flow than its share in parallel: check its motor, its NPSH and its region there, with the register's numbers and the maker's limits.",
)


class Parallel(Upright):
    def __init__(self, plant, places):
        self.case = plant["parallel"]
        super().__init__("Parallel", "Pumps in parallel", WIDTHS, "All three running", plant, places, self.case["tag"])

    def inputs(self, row):
        """The system, then the three curves; the first pump's are the register's."""
        put, at = self.sheet.put, {}
        self.head(row, (0, "System", "Head", 1))
        for index, (key, text, unit, style) in enumerate(SYSTEM, row + 1):
            put(index, 0, text, "Label")
            put(
                index,
                1,
                "=" + (self.looked_up(key) if key != "resistance" else self.square_resistance()),
                style or "TextRight",
            )
            put(index, 2, unit, "Unit")
            at[key] = reference("", index, 1) if style else reference("", index, 1, index, 1)
        at["system"] = f'{at["static_head"]};{at["resistance"]}'
        row += 1 + len(SYSTEM)
        self.head(
            row,
            (0, "Pump curves on the liquid", "Head", 1),
            (1, "=[.$A$3]", "HeadRight", 2),
            *((column, None, "HeadRight", 2) for column in (3, 5)),
        )
        for column, pump in ((3, "second"), (5, "third")):
            put(row, column, self.case[pump]["name"], "InputSmall", across=2)
        at["names"] = [reference("", row, column) for column in (1, 3, 5)]
        at["labels"] = [self.label(row, column) for column in (1, 3, 5)]
        put(row + 1, 0, None, "Sense")
        for column in range(1, 7):
            put(row + 1, column, "m³/h" if column % 2 else "head, m", "Sense")
        first, last = row + 2, row + 1 + POINTS
        for point in range(POINTS):
            put(first + point, 0, f"Point {point + 1}", "Label")
            for column, key in ((1, "used_flows"), (2, "used_heads")):
                cell = f"INDEX({self.looked_up(key)};{point + 1})"
                put(first + point, column, f'=IF({cell}="";"";{cell})', "Value1" if column == 1 else "Value2")
            for column, pump in ((3, "second"), (5, "third")):
                for offset, key in enumerate(("flows", "heads")):
                    values = self.case[pump][key]
                    put(first + point, column + offset, values[point] if point < len(values) else None, "Input")
        for name, column in zip(NAMES, (1, 3, 5)):
            at[name] = ";".join(reference("", first, c, last, c) for c in (column, column + 1))
            at[name, "area"] = [self.area(first, c, last, c) for c in (column, column + 1)]
        return at, last + 1

    def shapes(self, row, at):
        """Whether each curve may stand in parallel at all."""
        put = self.sheet.put
        for index, (text, style) in enumerate((("Shape", "TextRight"), ("Rise to closed valve, alone", "Value3")), row):
            put(index, 0, text, "Label")
            for name, column in zip(NAMES, (1, 3, 5)):
                alone = f'CW.DUTY_FLOW({at[name]};{at["system"]})'
                call = (
                    f'INDEX(CW.CURVE_IS_STABLE({at[name]});1;1)&""'
                    if style == "TextRight"
                    else f"CW.SHUTOFF_HEAD_RISE({at[name]};{alone})"
                )
                put(index, column, "=" + call, style, across=2)
            put(index, 8, "curve_is_stable" if style == "TextRight" else "shutoff_head_rise", "Small")
        return row + 2

    def sharing(self, row, at):
        put = self.sheet.put
        self.head(
            row,
            (0, "Running", "Head", 1),
            *((column, text, "HeadRight", 1) for column, text in ((1, "Flow, m³/h"), (2, "Head, m"))),
            *((column, "=" + name, "HeadRight", 1) for column, name in zip((3, 4, 5), at["names"])),
            (6, "Delivering", "HeadRight", 2),
            (8, "Function", "Head", 1),
        )
        refusals, first = [], row + 1
        alone = [((i,), f'CW.DUTY_FLOW({at[NAMES[i]]};{at["system"]})') for i in range(3)]
        pairs = [
            ((i, j), f'CW.FLOW_BALANCE({at[NAMES[i]]};{at[NAMES[j]]};{at["system"]})')
            for i, j in ((0, 1), (0, 2), (1, 2))
        ]
        three = [((0, 1, 2), f'CW.FLOW_BALANCE_OF_THREE({";".join(at[name] for name in NAMES)};{at["system"]})')]
        for index, (pumps, call) in enumerate(alone + pairs + three, first):
            put(index, 0, "=" + '&" + "&'.join(at["names"][i] for i in pumps), "Label")
            if len(pumps) == 1:
                values = {1: call, 2: call.replace("DUTY_FLOW", "DUTY_HEAD"), 3 + pumps[0]: call}
                values[6] = f'IF(ISERROR({reference("", index, 1)});"refused";{at["names"][pumps[0]]})'
            else:
                values = {
                    1: f"INDEX({call};1;1)",
                    2: f"INDEX({call};1;2)",
                    **{3 + pump: f"INDEX({call};1;{place})" for place, pump in enumerate(pumps, 3)},
                }
                back = "&".join(f'IF({reference("", index, 3 + pump)}=0;" "&{at["names"][pump]};"")' for pump in pumps)
                values[
                    6
                ] = f'IF(ISERROR({reference("", index, 1)});"refused";IF(LEN({back})=0;"all";"pushed back:"&{back}))'
            for column in range(1, 6):
                put(
                    index,
                    column,
                    "=" + values[column] if column in values else None,
                    "Value2" if column == 2 else "Value1",
                )
            put(index, 6, "=" + values[6], "TextRight", across=2)
            name = call[3:].split("(")[0]
            put(index, 8, "duty_flow, duty_head" if name == "DUTY_FLOW" else name.lower(), "Small")
            refusals.append(refusal(call))
        last = first + len(refusals) - 1
        self.sheet.heights[last + 1] = 0.5
        put(
            last + 1,
            0,
            f'=IF(ISERROR({self.pump});"There is no pump of this tag on the sheet Data.";{first_told(refusals)})',
            "NoteBold",
            across=9,
        )
        put(5, 1, f'={reference("", last, 6)}', "BoxValue", across=8)
        return {"first": first, "last": last}, last + 2

    def speed(self, row, at):
        """The first pump alone, for the flow wanted of it: slowed, or its impeller cut."""
        put = self.sheet.put
        self.head(row, (0, '=[.$A$3]&" alone, for the flow wanted"', "Head", 3), (8, "Function", "Head", 1))
        flow, speed, diameter = (
            f"{self.looked_up('wanted')}",
            f"{self.looked_up('speed')}",
            reference("", row + 3, 1, row + 3, 1),
        )
        head = reference("", row + 2, 1)
        lines = (
            ("Flow wanted", "m³/h", "Value1", "=" + flow, "register"),
            ("Head the system takes there", "m", "Value2", f'=CW.SYSTEM_HEAD({at["system"]};{flow})', "system_head"),
            ("Impeller diameter, full", "mm", "Input", self.case["diameter"], "given"),
            (
                "Speed for it, full impeller",
                "1/min",
                "Value0",
                f"=CW.SPEED_FOR_DUTY({at['one']};{speed};{flow};{head})",
                "speed_for_duty",
            ),
            (
                "Impeller for it, full speed",
                "mm",
                "Value0",
                f"=CW.TRIM_FOR_DUTY({at['one']};{diameter};{flow};{head})",
                "trim_for_duty",
            ),
        )
        for index, (text, unit, style, value, name) in enumerate(lines, row + 1):
            put(index, 0, text, "Label")
            put(index, 1, value, style)
            put(index, 2, unit, "Unit")
            for column in range(3, 8):
                put(index, column, None, "Label")
            put(index, 8, name, "Small")
        return row + 1 + len(lines)

    def combined(self, row, at):
        """The curve of all three and the system's along it, for the chart."""
        put = self.sheet.put
        self.head(
            row,
            (0, "Combined curves", "Head", 1),
            (1, f'={at["names"][0]}&", "&{at["names"][1]}', "HeadRight", 2),
            (3, "All three", "HeadRight", 2),
            (5, "System at the flow of all three", "HeadRight", 3),
            (8, "Function", "Head", 1),
        )
        row += 1
        for column in range(8):
            put(row, column, ("", "m³/h", "head, m", "m³/h", "head, m", "", "head, m", "")[column] or None, "Sense")
        first, last = row + 1, row + COMBINED
        two = f'CW.TWO_CURVES_IN_PARALLEL({at["one"]};{at["two"]})'
        three = f'CW.TWO_CURVES_IN_PARALLEL({";".join(reference("", first, c, last, c) for c in (1, 2))};{at["three"]})'
        for index in range(COMBINED):
            put(first + index, 0, f"Point {index + 1}", "Label")
            for column, call, result in ((1, two, 1), (2, two, 2), (3, three, 1), (4, three, 2)):
                put(
                    first + index,
                    column,
                    f'=IFERROR(INDEX({call};{index + 1};{result});"")',
                    "Value1" if result == 1 else "Value2",
                )
            flow = reference("", first + index, 3)
            system, most = (
                f'CW.SYSTEM_HEAD({at["system"]};{flow})',
                f"MAX({reference('', first, 4, last, 4)})",
            )  # above the pumps it only flattens the chart
            put(first + index, 5, f'=IF({flow}="";"";IF({system}>{most};"";{system}))', "Value2", across=2)
            put(first + index, 7, None, "Label")
            put(first + index, 8, "two_curves_in_parallel" if index == 0 else None, "Small")
        areas = {
            "two": [self.area(first, c, last, c) for c in (1, 2)],
            "three": [self.area(first, c, last, c) for c in (3, 4)],
            "system": [self.area(first, c, last, c) for c in (3, 5)],
        }
        return {
            key: (self.label(row - 1, {"two": 1, "three": 3, "system": 5}[key]), *area) for key, area in areas.items()
        }, last + 1

    def build(self):
        at, row = self.inputs(7)
        row = self.shapes(row, at)
        rows, row = self.sharing(row, at)
        row = self.speed(row, at)
        where, height = row, 6.9
        self.sheet.put(row, 0, None)
        self.sheet.heights[row] = height + 0.2
        self.sheet.breaks.add(row + 1)
        curves, row = self.combined(row + 1, at)
        looks = ("pump", "power", "efficiency")
        last = rows["last"]
        self.sheet.frames.append(
            chart.frame(
                0,
                0,
                self.top(where) + 0.1,
                17.3,
                height,
                "Three unlike pumps and their system",
                "Flow, m³/h",
                "Head, m",
                [
                    *((label, *at[name, "area"], look, False) for label, name, look in zip(at["labels"], NAMES, looks)),
                    (*curves["three"], "bar", False),
                    (*curves["system"], "system", False),
                    (self.label(last, 0), self.area(last, 1), self.area(last, 2), "duty", False),
                ],
                below=2.55,
            )
        )
        self.sheet.put(row, 0, None)
        self.foot(row + 1, SOURCES, CAUTIONS)
        return self.sheet
