"""A spreadsheet as one flat OpenDocument file, written with the standard library only."""
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
        "loext": "urn:org:documentfoundation:names:experimental:office:xmlns:loext:1.0",
    }.items()
)
SERVICE = "ORG.CUTWATER.CALC."
# Styles that depend on the content: LibreOffice 7.4 heeds such a style on one sheet only, so each sheet has its own.
CONDITIONAL = ("Verdict", "VerdictBox")


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


class Sheet:
    def __init__(self, name, widths, page, height=0.46):
        self.name, self.widths, self.page, self.height = name, widths, page, height
        self.cells, self.known, self.heights, self.spans, self.breaks = {}, {}, {}, {}, set()
        self.blocks = {}
        self.frames, self.names, self.header_rows = [], [], 0
        self.last_column = len(widths) - 1

    def put(self, row, column, content=None, style="Plain", across=1, down=1, validation=None, known=None):
        """A number, a text, or a formula (a text that begins with '='). known: a formula's text result; LibreOffice 7.4 does
        not calculate every cell of repeated heading rows when it loads, so they bring theirs along."""
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
        if style in CONDITIONAL:
            style += self.name
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

    def xml(self):
        last_row = max(row for row, _ in self.cells)
        rows = []
        for row in range(last_row + 1):
            height = ("b" if row in self.breaks else "r") + str(self.heights.get(row, self.height))
            line = f'<table:table-row table:style-name="{height}">'
            line += "".join(self._cell(row, column) for column in range(self.last_column + 1)) + "</table:table-row>"
            if self.header_rows and row == 0:
                line = "<table:table-header-rows>" + line
            if self.header_rows and row == self.header_rows - 1:
                line += "</table:table-header-rows>"
            rows.append(line)
        frames = f"<table:shapes>{''.join(self.frames)}</table:shapes>" if self.frames else ""
        columns = "".join(f'<table:table-column table:style-name="c{width}"/>' for width in self.widths)
        area = f"{self.name}.A1:{self.name}.{cell_name(last_row, self.last_column)}"
        names = ""
        for name, row, column, end in self.names:
            first = f"${self.name}.{cell_name(row, column, True)}"
            area_of = first if end is None else f"{first}:.{cell_name(end, column, True)}"
            names += f'<table:named-range table:name="{name}" table:base-cell-address="{first}" table:cell-range-address="{area_of}"/>'
        if names:
            names = f"<table:named-expressions>{names}</table:named-expressions>"
        return (f'<table:table table:name="{self.name}" table:style-name="t{self.page}" table:print-ranges="{area}">'
                f'{frames}{columns}\n' + "\n".join(rows) + f"{names}</table:table>")

    def dimension_styles(self, seen):
        text = ""
        for width in self.widths:
            if ("c", width) not in seen:
                seen.add(("c", width))
                text += (f'<style:style style:name="c{width}" style:family="table-column">'
                         f'<style:table-column-properties style:column-width="{width}cm"/></style:style>')
        for height in sorted(set(self.heights.values()) | {self.height}):
            for kind, before in (("r", "auto"), ("b", "page")):
                if (kind, height) not in seen:
                    seen.add((kind, height))
                    text += (f'<style:style style:name="{kind}{height}" style:family="table-row"><style:table-row-properties '
                             f'style:row-height="{height}cm" style:use-optimal-row-height="false" fo:break-before="{before}"/></style:style>')
        return text


def refusal(call):
    """The formula that tells why a call is refused."""
    name, rest = call.split("(", 1)
    return f'CW.REFUSAL("{name[3:].lower()}";{rest}'


def first_told(refusals):
    """The first of them that can be told; what stands on a refused cell shows an error of its own."""
    text = '"Nothing was refused."'
    for one in reversed(refusals):
        text = f'IF(IFERROR({one};"")<>"";"Refused: "&{one};{text})'
    return text


def workbook(sheets, styles, validations, macro, data_styles):
    seen = set()
    dimensions = "".join(sheet.dimension_styles(seen) for sheet in sheets)
    tables = "\n".join(sheet.xml() for sheet in sheets)
    scripts = ('<office:scripts><office:script script:language="ooo:Basic"><ooo:libraries><ooo:library-embedded ooo:name="Standard">'
               f'<ooo:module ooo:name="Register"><ooo:source-code>{escape(macro)}</ooo:source-code></ooo:module>'
               "</ooo:library-embedded></ooo:libraries></office:script></office:scripts>")
    return ('<?xml version="1.0" encoding="UTF-8"?>\n'
            f'<office:document {NAMESPACES} office:version="1.3" office:mimetype="application/vnd.oasis.opendocument.spreadsheet">'
            f"{scripts}<office:styles>{data_styles}{styles.named}</office:styles>"
            f"<office:automatic-styles>{dimensions}{styles.automatic}</office:automatic-styles>"
            f"<office:master-styles>{styles.masters}</office:master-styles>\n"
            '<office:body><office:spreadsheet><table:calculation-settings table:automatic-find-labels="false" table:use-regular-expressions="false"/>'
            f"<table:content-validations>{validations}</table:content-validations>\n{tables}"
            "</office:spreadsheet></office:body></office:document>\n")
