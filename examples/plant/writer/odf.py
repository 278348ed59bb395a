"""A spreadsheet as one flat OpenDocument file, written with the standard library only."""
import re
from xml.sax.saxutils import escape, quoteattr

NAMESPACES = " ".join(
    f'xmlns:{prefix}="{address}"'
    for prefix, address in {
        "office": "urn:oasis:names:tc:opendocument:xmlns:office:1.0",
        "table": "urn:oasis:names:tc:opendocument:xmlns:table:1.0",
        "text": "urn:oasis:names:tc:opendocument:xmlns:text:1.0",
        "of": "urn:oasis:names:tc:opendocument:xmlns:of:1.2",
        "style": "urn:oasis:names:tc:opendocument:xmlns:style:1.0",
        "fo": "urn:oasis:names:tc:opendocument:xmlns:xsl-fo-compatible:1.0",
        "number": "urn:oasis:names:tc:opendocument:xmlns:datastyle:1.0",
        "draw": "urn:oasis:names:tc:opendocument:xmlns:drawing:1.0",
        "svg": "urn:oasis:names:tc:opendocument:xmlns:svg-compatible:1.0",
        "xlink": "http://www.w3.org/1999/xlink",
        "chart": "urn:oasis:names:tc:opendocument:xmlns:chart:1.0",
        "script": "urn:oasis:names:tc:opendocument:xmlns:script:1.0",
        "ooo": "http://openoffice.org/2004/office",
        "form": "urn:oasis:names:tc:opendocument:xmlns:form:1.0",
        "calcext": "urn:org:documentfoundation:names:experimental:calc:xmlns:calcext:1.0",
        "loext": "urn:org:documentfoundation:names:experimental:office:xmlns:loext:1.0",
    }.items()
)
SERVICE = "ORG.CUTWATER.CALC."
# A verdict's look, by the cell's word.
VERDICTS = (
    ("FAILS", "Fails"),
    ("WATCH", "Watch"),
    ("refused", "Refused"),
    ("meets", "Meets"),
    ("differs", "Fails"),
    ("same", "Meets"),
    ("off the bar", "Watch"),
)


def column_letter(column):
    """0 is A."""
    letters = ""
    column += 1
    while column:
        column, rest = divmod(column - 1, 26)
        letters = chr(65 + rest) + letters
    return letters


def cell_name(row, column, fixed=False):
    return f"${column_letter(column)}${row + 1}" if fixed else f"{column_letter(column)}{row + 1}"


def reference(sheet, row, column, last_row=None, last_column=None, fixed=True):
    """A reference as formulas hold it. With one cell given twice it is a one-cell range: an empty cell then arrives
    at an add-in as empty, where a plain reference would arrive as zero."""
    place = f"${sheet}." if sheet else "."
    text = place + cell_name(row, column, fixed)
    if last_row is not None:
        text += ":." + cell_name(last_row, last_column, fixed)
    return f"[{text}]"


def call(formula):
    """CW.NAME( is how the sheets' authors write what the file must hold in full."""
    return "of:=" + formula.replace("CW.", SERVICE)


class Nothing:
    """What a workbook without example data is made from: any key of it is nothing again, and it fills no cell."""

    def __getitem__(self, key):
        return self

    def __iter__(self):
        return iter(())

    def __len__(self):
        return 0

    def __str__(self):
        return ""

    def get(self, key, default=None):
        return default


class Blank(dict):
    """Data with keys that are not there."""

    def __missing__(self, key):
        return Nothing()


class Sheet:
    """conditions: (first row, column, last row, column, formula, style), the formula as seen from the first of the cells."""

    def __init__(self, name, widths, page, height=0.46):
        self.name, self.widths, self.page, self.height = name, widths, page, height
        self.cells, self.known, self.heights, self.spans, self.breaks = {}, {}, {}, {}, set()
        self.blocks = {}
        self.frames, self.names, self.header_rows, self.header_first, self.header_columns = [], [], 0, 0, 0
        self.conditions, self.buttons, self.protected = [], [], True
        self.last_column = len(widths) - 1
        self.print_columns, self.printed = len(widths), []

    def put(self, row, column, content=None, style="Plain", across=1, down=1, validation=None, known=None):
        """A number, a text, or a formula (a text that begins with '='). known: a formula's text result; LibreOffice 7.4 does
        not calculate every cell of repeated heading rows when it loads, so they bring theirs along."""
        content = None if isinstance(content, Nothing) else content
        self.cells[row, column] = (content, style, validation)
        if known is not None:
            self.known[row, column] = known
        if across > 1 or down > 1:
            self.spans[row, column] = (across, down)
            for r in range(row, row + down):
                for c in range(column, column + across):
                    if (r, c) != (row, column):
                        self.cells[r, c] = (None, style, "covered")

    def block(self, row, column, rows, columns, formula, styles):
        """One formula whose answer fills a block of cells; a style for each column."""
        for r in range(row, row + rows):
            for c in range(column, column + columns):
                self.put(r, c, None, styles[c - column])
        self.put(row, column, formula, styles[0])
        self.blocks[row, column] = (rows, columns)

    def name_range(self, name, row, column, last_row=None):
        self.names.append((name, row, column, row if last_row is None else last_row))

    def name_cell(self, name, row, column):
        """For a result: its own error shows where it is used."""
        self.names.append((name, row, column, None))

    def _cell(self, row, column):
        content, style, validation = self.cells.get((row, column), (None, None, None))
        tag = "table:covered-table-cell" if validation == "covered" else "table:table-cell"
        attributes = f' table:style-name="{style}"' if style else ""
        if validation and validation != "covered":
            attributes += f' table:content-validation-name="{validation}"'
        if (row, column) in self.spans:
            across, down = self.spans[row, column]
            attributes += f' table:number-columns-spanned="{across}" table:number-rows-spanned="{down}"'
        if (row, column) in self.blocks:
            rows, columns = self.blocks[row, column]
            attributes += f' table:number-matrix-columns-spanned="{columns}" table:number-matrix-rows-spanned="{rows}"'
        if content is None:
            return f"<{tag}{attributes}/>"
        if isinstance(content, (int, float)):
            return f'<{tag}{attributes} office:value-type="float" office:value="{content!r}"/>'
        if content.startswith("=") and (row, column) in self.known:
            known = self.known[row, column]
            attributes += f' table:formula={quoteattr(call(content[1:]))} office:value-type="string" office:string-value={quoteattr(known)}'
            return f"<{tag}{attributes}><text:p>{escape(known)}</text:p></{tag}>"
        if content.startswith("="):
            return f"<{tag}{attributes} table:formula={quoteattr(call(content[1:]))}/>"
        return f'<{tag}{attributes} office:value-type="string"><text:p>{escape(content)}</text:p></{tag}>'

    def print_if(self, row, column, count=1):
        """The macro Printing leaves the sheet out where these cells, the pumps chosen, are all empty."""
        self.printed.append(("printed_if", row, column, count))

    def print_tags(self, row, column, count):
        """The macro Printing prints no column behind the last of these that is filled."""
        self.printed.append(("printed_tags", row, column, count))

    @staticmethod
    def _named(name, first, area):
        return f'<table:named-range table:name="{name}" table:base-cell-address="{first}" table:cell-range-address="{area}"/>'

    def xml(self):
        last_row = max(row for row, _ in self.cells)
        rows = []
        for row in range(last_row + 1):
            height = ("b" if row in self.breaks else "r") + str(self.heights.get(row, self.height))
            line = f'<table:table-row table:style-name="{height}">'
            line += "".join(self._cell(row, column) for column in range(self.last_column + 1)) + "</table:table-row>"
            if self.header_rows and row == self.header_first:
                line = "<table:table-header-rows>" + line
            if self.header_rows and row == self.header_rows - 1:
                line += "</table:table-header-rows>"
            rows.append(line)
        shapes = "".join(self.frames) + "".join(one[-1] for one in self.buttons)
        frames = f"<table:shapes>{shapes}</table:shapes>" if shapes else ""
        columns = [f'<table:table-column table:style-name="c{width}"/>' for width in self.widths]
        if self.header_columns:
            columns.insert(self.header_columns, "</table:table-header-columns>")
            columns.insert(0, "<table:table-header-columns>")
        columns = "".join(columns)
        area = f"{self.name}.A1:{self.name}.{cell_name(last_row, self.print_columns - 1)}"
        whole = f"${self.name}.$A$1:.{cell_name(last_row, self.print_columns - 1, True)}"
        names = self._named("printed", f"${self.name}.$A$1", whole)
        for name, row, column, count in self.printed:
            first, last = (cell_name(row, at, True) for at in (column, column + count - 1))
            names += self._named(name, f"${self.name}.{first}", f"${self.name}.{first}:.{last}")
        for name, row, column, end in self.names:
            first = f"${self.name}.{cell_name(row, column, True)}"
            area_of = first if end is None else f"{first}:.{cell_name(end, column, True)}"
            names += self._named(name, first, area_of)
        names = f"<table:named-expressions>{names}</table:named-expressions>"
        protected = ' table:protected="true"' if self.protected else ""
        return (
            f'<table:table table:name="{self.name}" table:style-name="t{self.page}"{protected} table:print-ranges="{area}">'
            f"{self._forms()}{frames}{columns}\n" + "\n".join(rows) + f"{names}{self._conditions()}</table:table>"
        )

    def condition(self, row, column, last_row, last_column, formula, style):
        self.conditions.append((row, column, last_row, last_column, formula, style))

    def _conditions(self):
        """Of one range's conditions the first that holds counts."""
        ranges = {}
        for row, column, last_row, last_column, formula, style in self.conditions:
            ranges.setdefault((row, column, last_row, last_column), []).append((formula, style))
        text = ""
        for (row, column, last_row, last_column), ones in ranges.items():
            text += self._conditional([(row, column, last_row, last_column)], ones)
        runs = self._verdict_runs()
        if runs:
            cell = f"[.{cell_name(*runs[0][:2])}]"
            text += self._conditional(runs, [(f'{cell}="{word}"', style) for word, style in VERDICTS])
        return f"<calcext:conditional-formats>{text}</calcext:conditional-formats>" if text else ""

    def _conditional(self, areas, ones):
        where = " ".join(f"{self.name}.{cell_name(*area[:2])}:{self.name}.{cell_name(*area[2:])}" for area in areas)
        base = f"{self.name}.{cell_name(*areas[0][:2])}"
        text = f'<calcext:conditional-format calcext:target-range-address="{where}">'
        for formula, style in ones:
            text += f'<calcext:condition calcext:apply-style-name="{style}" calcext:value={quoteattr(f"formula-is({formula})")} calcext:base-cell-address="{base}"/>'
        return text + "</calcext:conditional-format>"

    def _verdict_runs(self):
        """The cells of verdicts, those below each other as one area, the topmost left one first."""
        runs = []
        for row, column in sorted(
            (cell for cell, (_, style, _) in self.cells.items() if style in ("Verdict", "VerdictBox")),
            key=lambda cell: cell[::-1],
        ):
            if runs and runs[-1][3] == column and runs[-1][2] == row - 1:
                runs[-1] = (*runs[-1][:2], row, column)
            else:
                runs.append((row, column, row, column))
        return sorted(runs, key=lambda run: (run[0], run[1]))

    def button(self, label, macro, x, y, width, height):
        """A push button that runs a macro of the workbook; not printed."""
        name = f"{self.name}{len(self.buttons) + 1}"
        control = (
            f'<form:button form:name="{name}" form:control-implementation="ooo:com.sun.star.form.component.CommandButton" xml:id="{name}" form:id="{name}" '
            f'form:label="{label}" form:printable="false" office:target-frame=""><office:event-listeners><script:event-listener script:language="ooo:script" '
            f'script:event-name="form:performaction" xlink:href="vnd.sun.star.script:Standard.{macro}?language=Basic&amp;location=document" xlink:type="simple"/>'
            "</office:event-listeners></form:button>"
        )
        self.buttons.append(
            (
                control,
                f'<draw:control draw:z-index="9" svg:width="{width}cm" svg:height="{height}cm" svg:x="{x}cm" svg:y="{y}cm" draw:control="{name}"/>',
            )
        )

    def _forms(self):
        if not self.buttons:
            return ""
        return (
            '<office:forms form:automatic-focus="false" form:apply-design-mode="false"><form:form form:name="Form" form:apply-filter="true" form:command-type="table" '
            'form:control-implementation="ooo:com.sun.star.form.component.Form" office:target-frame="">'
            + "".join(one[0] for one in self.buttons)
            + "</form:form></office:forms>"
        )

    def dimension_styles(self, seen):
        text = ""
        for width in self.widths:
            if ("c", width) not in seen:
                seen.add(("c", width))
                text += (
                    f'<style:style style:name="c{width}" style:family="table-column">'
                    f'<style:table-column-properties style:column-width="{width}cm"/></style:style>'
                )
        for height in sorted(set(self.heights.values()) | {self.height}):
            for kind, before in (("r", "auto"), ("b", "page")):
                if (kind, height) not in seen:
                    seen.add((kind, height))
                    text += (
                        f'<style:style style:name="{kind}{height}" style:family="table-row"><style:table-row-properties '
                        f'style:row-height="{height}cm" style:use-optimal-row-height="false" fo:break-before="{before}"/></style:style>'
                    )
        return text


def refusal(call):
    """The formula that tells why a call is refused."""
    name, rest = call.split("(", 1)
    return f'CW.REFUSAL("{name[3:].lower()}";{rest}'


def calls_in(formula):
    """The calls of cutwater in a formula, the outermost first."""
    found, stack = [], []
    for place in range(len(formula)):
        if formula[place] == "(":
            start = re.search(r"CW\.[A-Z0-9_]+$", formula[:place])
            stack.append((start.start() if start else None, sum(one[0] is not None for one in stack)))
        elif formula[place] == ")" and stack:
            start, depth = stack.pop()
            if start is not None:
                found.append((depth, formula[start : place + 1]))
    return list(dict.fromkeys(call for _, call in sorted(found, key=lambda one: one[0])))


def first_told(refusals):
    """The first of them that can be told; what stands on a refused cell shows an error of its own."""
    text = '"Nothing was refused."'
    for one in reversed(refusals):
        text = f'IF(IFERROR({one};"")<>"";"Refused: "&{one};{text})'
    return text


def workbook(sheets, styles, validations, macros, data_styles):
    """macros: {name of the module: Basic}"""
    seen = set()
    dimensions = "".join(sheet.dimension_styles(seen) for sheet in sheets)
    tables = "\n".join(sheet.xml() for sheet in sheets)
    modules = "".join(
        f'<ooo:module ooo:name="{name}"><ooo:source-code>{escape(text)}</ooo:source-code></ooo:module>'
        for name, text in macros.items()
    )
    scripts = (
        '<office:scripts><office:script script:language="ooo:Basic"><ooo:libraries><ooo:library-embedded ooo:name="Standard">'
        f"{modules}</ooo:library-embedded></ooo:libraries></office:script></office:scripts>"
    )
    return (
        '<?xml version="1.0" encoding="UTF-8"?>\n'
        f'<office:document {NAMESPACES} office:version="1.3" office:mimetype="application/vnd.oasis.opendocument.spreadsheet">'
        f"{scripts}<office:styles>{data_styles}{styles.named}</office:styles>"
        f"<office:automatic-styles>{dimensions}{styles.automatic}</office:automatic-styles>"
        f"<office:master-styles>{styles.masters}</office:master-styles>\n"
        '<office:body><office:spreadsheet><table:calculation-settings table:automatic-find-labels="false" table:use-regular-expressions="false"/>'
        f"<table:content-validations>{validations}</table:content-validations>\n{tables}"
        "</office:spreadsheet></office:body></office:document>\n"
    )
