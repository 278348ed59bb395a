"""What is known of one pump, looked up on Data, Curves and Checks by its column's number; and the head of a sheet that is not one pump's."""
from . import points
from .odf import reference
from .pump_columns import ALTITUDE, FIRST, WORKS, works_line


class Looking:
    """index: the cell that holds the number of the pump's column, as a formula names it."""

    def __init__(self, places, index):
        self.places, self.index = places, index

    def cells(self, key):
        home, first, last = self.places.of(key)
        return home, first == last, reference(home, first, FIRST, last, self.places.last)

    def value(self, key):
        """One value, an empty cell as an empty text; or a series."""
        home, single, cells = self.cells(key)
        if not single:
            return f"INDEX({cells};0;{self.index})"
        cell = f"INDEX({cells};1;{self.index})"
        return cell if home != "Data" else f'IF({cell}="";"";{cell})'

    def one(self, key):
        """As a range of one cell, in which an empty cell is not zero."""
        if key == "altitude":
            return ALTITUDE
        cell = f"INDEX({self.cells(key)[2]};1;{self.index})"
        return f"{cell}:{cell}"

    def pair(self, name, skip="0"):
        """Flows and ordinates between the curve's own ends; skip: points left out at its beginning."""
        flows, ordinates, first, last = (self.value(part) for part in points.PAIRS[name])
        return points.pair(flows, ordinates, f"{first}+{skip}" if skip != "0" else first, last)

    def find(self, name):
        """As results' formulas ask for it."""
        if name in points.PAIRS:
            return self.pair(name)
        home, single, _ = ("Data", True, "") if name == "altitude" else self.cells(name)
        return self.one(name) if single and home == "Data" else self.value(name)


def column_of(places, tag):
    """The formula that finds a tag's column."""
    return f'=IF(TRIM({tag})="";NA();MATCH(TRIM({tag});{places.tags};0))'


def title(sheet, text, plant, spans):
    """Title, works, and the boxes of who made it: spans are five (column, how many) for them."""
    last = sheet.print_columns - 1
    sheet.heights.update({0: 0.85, 1: 0.36, 2: 0.55})
    half = spans[2][0]
    sheet.put(0, 0, text, "Title", across=half)
    sheet.put(0, half, "=" + WORKS, "Works", across=last + 1 - half, known=works_line(plant))
    for (column, wide), label in zip(spans, ("Made by", "Checked by", "Date", "Revision", "File")):
        sheet.put(1, column, label, "Box", across=wide)
        sheet.put(2, column, plant["revision"] if label == "Revision" else None, "BoxInput", across=wide)
    sheet.header_rows = 3


def refusals_line(sheet, row, last, first, until, height=1.5):
    """Why cells are refused, in full over the sheet's width: gathered from the column beside what is printed."""
    cells = reference("", first, last + 1, until, last + 1)
    sheet.heights[row] = height
    sheet.put(
        row,
        0,
        f'=IF(SUMPRODUCT(({cells}<>"")*1)=0;"Nothing was refused.";"Refused: "&LEFT(COM.MICROSOFT.TEXTJOIN("; ";1;{cells});900))',
        "Note",
        across=last + 1,
    )
    return row + 1


def foot(sheet, row, sources, cautions, letters=150):
    last = sheet.print_columns - 1
    for heading, lines in (("Sources", sources), ("Cautions", cautions)):
        for column in range(last + 1):
            sheet.put(row, column, heading if column == 0 else None, "HeadGroup")
        sheet.heights[row] = 0.4
        for line in lines:
            row += 1
            sheet.heights[row] = 0.31 * -(-len(line) // letters)
            sheet.put(row, 0, line, "Foot", across=last + 1)
        row += 1
    return row
