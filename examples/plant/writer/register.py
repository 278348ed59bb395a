"""The register: one row a pump, the worst on top. And the same numbers as a macro finds them."""
from . import points, results
from .odf import Sheet, reference
from .pump_columns import ALTITUDE, FIRST, WORKS, WORKS_ROW, fill, works_line

# key of the result, head of the column, width
NUMBERS = (
    ("wanted", "Flow wanted m³/h", 1.3),
    ("system_head", "Head taken there m", 1.3),
    ("duty_flow", "Duty flow m³/h", 1.3),
    ("duty_head", "Duty head m", 1.2),
    ("efficiency", "Efficiency", 1.6),
    ("npsh_available", "NPSH available m", 1.4),
    ("npsh3", "NPSH3 m", 1.1),
    ("npsh_ratio", "NPSH ratio", 1.1),
    ("power_input", "Power input kW", 1.2),
    ("motor_needed", "Motor needed kW", 1.2),
    ("motor_fitted", "Motor fitted kW", 1.2),
    ("region", "Operating region", 1.6),
)
LEAD = (("No.", 0.7), ("Col.", 0.8), ("Tag", 1.4), ("Service", 3.5), ("Liquid", 3.9))
TAIL = (("Worst check", 4.2), ("All that is not met", 5.4), ("Verdict", 1.4))


def _title(sheet, plant, title, text, columns):
    sheet.heights[0] = 0.9
    sheet.put(0, 0, title, "Title", across=8)
    sheet.put(0, 8, "=" + WORKS, "Works", across=columns - 8, known=works_line(plant))
    sheet.heights[1] = 0.85
    sheet.put(1, 0, text, "Note", across=columns)


def _at_most(text, letters):
    """What a row has no room for is left out at the end, and marked."""
    return f'IF(LEN({text})>{letters};LEFT({text};{letters - 2})&" …";{text})'


def register_sheet(plant, places):
    widths = [width for _, width in LEAD] + [width for *_, width in NUMBERS] + [width for _, width in TAIL]
    sheet = Sheet("Register", widths, "Wide")
    _title(
        sheet,
        plant,
        "Register of pumps",
        "The pump with the gravest finding stands on top. Each number is a call of cutwater, with its arguments looked up in the pump's column of Data, Curves "
        "and Checks; the verdict names the worst of its checks (all of them: sheet Checks; one pump with its charts: sheet Service).",
        len(widths),
    )
    head = 2
    sheet.heights[head] = 1.15
    sheet.header_rows = 3
    for column, (text, _) in enumerate(LEAD):
        sheet.put(head, column, text, "HeadWrapLeft")
    for column, (_, text, _) in enumerate(NUMBERS, len(LEAD)):
        sheet.put(head, column, text, "HeadWrap" if text != "Operating region" else "HeadWrapCentre")
    tail = len(LEAD) + len(NUMBERS)
    for column, (text, _) in enumerate(TAIL, tail):
        sheet.put(head, column, text, "HeadWrapLeft")
    place_row = reference("Checks", places.worst["place"], FIRST, places.worst["place"], places.last)

    def looked_up(sheet_name, row, pump):
        return f"INDEX({reference(sheet_name, row, FIRST, row, places.last)};1;{pump})"

    for index in range(places.count):
        row = head + 1 + index
        pump = f"[.$B{row + 1}]"
        sheet.heights[row] = 0.9

        def shown(formula):
            return f'=IF({pump}="";"";{formula})'

        def find(name):
            if name == "altitude":
                return ALTITUDE
            if name == "tags":
                return places.tags
            if name == "this_tag":
                return f"INDEX({places.tags};1;{pump})"
            if name in points.PAIRS:
                return points.pair(*(find(part) for part in points.PAIRS[name]))
            home, first, last = places.of(name)
            if name in places.fact:
                return looked_up(home, first, pump)
            if first != last:
                return f"INDEX({reference(home, first, FIRST, last, places.last)};0;{pump})"
            cell = looked_up(home, first, pump)
            return cell if home == "Checks" else f'IF({cell}="";"";{cell})'  # an empty cell is not zero

        sheet.put(row, 0, f'=IF({pump}="";"";{index + 1})', "Value0")
        sheet.put(row, 1, f'=IFERROR(MATCH({index + 1};{place_row};0);"")', "Value0")
        sheet.put(row, 2, shown(f"INDEX({places.tags};1;{pump})"), "Text")
        for column, key in enumerate(("service", "liquid"), 3):
            cell = looked_up("Data", places.input[key], pump)
            sheet.put(row, column, shown(f'IF({cell}="";"";{_at_most(cell, 70)})'), "TextWrap")
        for column, (key, _, _) in enumerate(NUMBERS, len(LEAD)):
            one = results.RESULT[key]
            style = "Verdict" if key == "region" else f"Value{one.places}"
            sheet.put(row, column, shown(fill(one.formula, find)), style)
        sheet.put(row, tail, shown(looked_up("Checks", places.worst["check"], pump)), "Text")
        sheet.put(row, tail + 1, shown(_at_most(looked_up("Checks", places.worst["findings"], pump), 105)), "Reason")
        sheet.put(row, tail + 2, shown(looked_up("Checks", places.worst["verdict"], pump)), "Verdict")
    note = head + 2 + places.count
    sheet.heights[note] = 2.2
    remark = reference("Data", WORKS_ROW["remark"], FIRST)
    sheet.put(note, 0, f'="{NOTE}"&IF({remark}="";"";UNICHAR(10)&{remark})', "Note", across=len(widths))
    return sheet


NOTE = (
    "FAILS: a limit is not kept. WATCH: it can be lived with, knowingly. refused: cutwater could not answer; the sheet Service says why, in a sentence. "
    "Numbers are found at the duty, where pump and system meet, not at the flow wanted. No. and Col. are counted: the pump's place by its gravest verdict, and "
    "its column among the pumps. The results support an engineer's judgement; they replace neither the maker's data and guarantee nor the rules that hold at the site."
)


def macro_sheet(plant, places):
    """Empty until the macro FillRegister has run."""
    kept = NUMBERS
    widths = [1.4, 4.4] + [width + 0.25 for *_, width in kept] + [2.2]
    sheet = Sheet("Macro", widths, "Wide")
    sheet.print_if(3, 0)
    sheet.protected = False  # the macro writes it
    sheet.header_rows = 3
    _title(
        sheet,
        plant,
        "Register by macro",
        "Filled by the macro FillRegister in this workbook (Tools, Macros, Run Macro): LibreOffice Basic calls the service org.cutwater.Calc with the cells of Data and "
        "compares each result with the cell of the sheet Checks, to the last bit.",
        len(widths),
    )
    head = 2
    sheet.heights[head] = 1.15
    sheet.put(head, 0, "Tag", "HeadWrapLeft")
    sheet.put(head, 1, "Service", "HeadWrapLeft")
    for column, (_, text, _) in enumerate(kept, 2):
        sheet.put(head, column, text, "HeadWrap" if text != "Operating region" else "HeadWrapCentre")
    sheet.put(head, 2 + len(kept), "Against the cells", "HeadWrapLeft")
    for index in range(places.count):
        row = head + 1 + index
        for column in (0, 1):
            sheet.put(row, column, None, "Text")
        for column, (key, _, _) in enumerate(kept, 2):
            sheet.put(row, column, None, "Verdict" if key == "region" else f"Value{results.RESULT[key].places}")
        sheet.put(row, 2 + len(kept), None, "Verdict")
    row = head + 2 + places.count
    sheet.put(row, 0, "All", "Head")
    for column in range(1, 2 + len(kept)):
        sheet.put(row, column, None, "Head")
    sheet.put(row, 2 + len(kept), "not run", "Verdict")
    return sheet


__all__ = ["register_sheet", "macro_sheet", "NUMBERS"]
