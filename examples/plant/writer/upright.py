"""What the sheets of one page A4 upright share: the title block, rows of inputs, and the foot."""
from .odf import Sheet, cell_name, reference
from .pump_columns import FIRST, WORKS, works_line


class Upright:
    """A pump is chosen by its tag; what is known of it is looked up on Data, Curves and Checks, as the register does."""

    def __init__(self, name, title, widths, boxes, plant, places, tag, height=0.43):
        self.plant, self.places, self.last = plant, places, len(widths) - 1
        self.sheet = Sheet(name, widths, "Upright", height)
        self.pump = reference("", 6, 1)
        self._title_block(title, boxes, tag)

    def looked_up(self, key):
        """One value of the pump; an empty cell is not zero."""
        home, first, last = self.places.of(key)
        cells = reference(home, first, FIRST, last, self.places.last)
        if first != last:
            return f"INDEX({cells};0;{self.pump})"
        cell = f"INDEX({cells};1;{self.pump})"
        return cell if home == "Checks" else f'IF({cell}="";"";{cell})'

    def square_resistance(self):
        """The system's resistance, where its losses go with the square of the flow; in slow, viscous flow they do not."""
        return f'IF({self.looked_up("line_law")}="square";{self.looked_up("resistance")};NA())'

    def _title_block(self, title, boxes, tag):
        put, sheet, across = self.sheet.put, self.sheet, self.last + 1
        sheet.heights.update({0: 0.9, 1: 0.36, 2: 0.62, 3: 0.36, 4: 0.82, 5: 0.6})
        put(0, 0, title, "Title", across=4)
        put(0, 4, "=" + WORKS, "Works", across=across - 4, known=works_line(self.plant))
        put(1, 0, "Tag", "Box")
        put(2, 0, tag, "InputTag", validation="tags")
        self.sheet.print_if(2, 0)
        for column, wide, label, value in (
            (1, 2, "Made by", None),
            (3, 2, "Checked by", None),
            (5, 2, "Date", None),
            (7, 1, "Revision", self.plant["revision"]),
            (8, 1, "File", None),
        ):
            put(1, column, label, "Box", across=wide)
            put(2, column, value, "BoxInput", across=wide)
        known = next((pump for pump in self.plant["pumps"] if pump["tag"] == tag), {})
        for (column, wide), key, label in zip(
            ((0, 1), (1, 4), (5, across - 6)), ("service", "liquid", "pump"), ("Service", "Liquid", "Form of pump")
        ):
            put(3, column, label, "Box", across=wide)
            put(4, column, "=" + self.looked_up(key), "BoxText", across=wide, known=known.get(key, " "))
        # What is typed on the sheet belongs to one pump: the sheet says so when another is chosen.
        put(3, across - 1, "Typed here for", "Box")
        put(4, across - 1, tag, "BoxInput", validation="tags")
        self.foreign = f'TRIM([.$A$3])<>TRIM({reference("", 4, across - 1)})'
        sheet.header_rows = 5
        put(5, 0, boxes, "Box")
        put(6, 0, "Column on the sheet Data", "Label")
        put(6, 1, f'=IF(TRIM([.$A$3])="";NA();MATCH(TRIM([.$A$3]);{self.places.tags};0))', "Value0")
        put(
            6,
            2,
            f'=IF({self.foreign};"What is typed on this sheet is for "&{reference("", 4, across - 1)}&", not for "&[.$A$3]&": nothing here holds for this pump.";"")',
            "Banner",
            across=across - 2,
        )
        sheet.condition(6, 2, 6, across - 1, '[.$C$7]<>""', "Alarm")

    def head(self, row, *texts):
        """(column, text, style or none): the rest of the band stays empty."""
        for column in range(self.last + 1):
            self.sheet.put(row, column, None, "Head")
        for column, text, style, wide in texts:
            self.sheet.put(row, column, text, style, across=wide)

    def band(self, row, text):
        for column in range(self.last + 1):
            self.sheet.put(row, column, text if column == 0 else None, "HeadGroup")
        self.sheet.heights[row] = 0.4

    def area(self, row, column, last_row=None, last_column=None):
        """As a chart names cells."""
        end = cell_name(row if last_row is None else last_row, column if last_column is None else last_column)
        return f"{self.sheet.name}.{cell_name(row, column)}:{self.sheet.name}.{end}"

    def label(self, row, column):
        return f"{self.sheet.name}.{cell_name(row, column)}"

    def top(self, row):
        """Height in cm at which a row begins."""
        return sum(self.sheet.heights.get(r, self.sheet.height) for r in range(row))

    def foot(self, row, sources, cautions):
        """The last that a sheet writes: what stands in the box for its result holds for one pump only."""
        for (at, column), (content, style, validation) in list(self.sheet.cells.items()):
            if not isinstance(content, str) or not content.startswith("="):
                continue
            if at == 5 and column:
                content = f'=IF({self.foreign};"refused";{content[1:]})'
            if at in (4, 5) or at > 6:  # without a tag the sheet is empty
                self.sheet.cells[at, column] = (f'=IF(TRIM([.$A$3])="";"";{content[1:]})', style, validation)
        for title, lines in (("Sources", sources), ("Cautions", cautions)):
            self.band(row, title)
            for line in lines:
                row += 1
                self.sheet.heights[row] = 0.58 if len(line) > 150 else 0.31
                self.sheet.put(row, 0, line, "Foot", across=self.last + 1)
            row += 1
