"""The record as a PDF that can be filed: with version, compiler, date and a mark of the library that was tried."""
from xml.sax.saxutils import escape

from reportlab.lib import colors
from reportlab.lib.pagesizes import A4, landscape
from reportlab.lib.styles import getSampleStyleSheet
from reportlab.lib.units import mm
from reportlab.platypus import LongTable, Paragraph, SimpleDocTemplate, Spacer, TableStyle

import words

GRID = TableStyle([("GRID", (0, 0), (-1, -1), 0.25, colors.grey), ("VALIGN", (0, 0), (-1, -1), "TOP"),
                   ("BACKGROUND", (0, 0), (-1, 0), colors.whitesmoke), ("LEFTPADDING", (0, 0), (-1, -1), 2),
                   ("RIGHTPADDING", (0, 0), (-1, -1), 2), ("TOPPADDING", (0, 0), (-1, -1), 1), ("BOTTOMPADDING", (0, 0), (-1, -1), 1)])


def styles():
    sheet = getSampleStyleSheet()
    small = sheet["BodyText"].clone("small", fontSize=7, leading=8.5, spaceBefore=0)
    code = small.clone("code", fontName="Courier", fontSize=6.5, leading=8, wordWrap="CJK")  # breaks long calls anywhere
    return sheet, small, code


def signatures(small):
    """Where the plant's people sign that they have looked."""
    empty = [["looked at by", "function in the plant", "date", "signature"], [""] * 4, [""] * 4]
    return LongTable([[Paragraph(text, small) for text in row] for row in empty], colWidths=[65 * mm] * 4, style=GRID,
                     rowHeights=[None, 9 * mm, 9 * mm])


def write(path, record, identity):
    """`identity`: rows (what, value) that say which build was tried."""
    sheet, small, code = styles()
    flow = [Paragraph("cutwater: " + words.TITLE.lower(), sheet["Title"]), Paragraph(words.WHAT, sheet["BodyText"]), Spacer(1, 4 * mm)]

    def table(head, rows, widths):
        cells = [[Paragraph(f"<b>{text}</b>", small) for text in head]]
        cells += [[text if hasattr(text, "wrap") else Paragraph(escape(str(text)), small) for text in row] for row in rows]
        flow.append(LongTable(cells, colWidths=[width * mm for width in widths], repeatRows=1, style=GRID))

    table(("which build", ""), identity, (60, 200))
    flow.append(Spacer(1, 4 * mm))
    table(("totals", "count"), words.totals(record), (200, 60))
    if record.faults:
        flow.append(Paragraph("Faults", sheet["Heading1"]))
        flow += [Paragraph(escape(fault), small) for fault in record.faults]
    flow += [Spacer(1, 6 * mm), signatures(small)]
    argued = [f for f in record.functions if f.why_none]
    if argued:
        flow.append(Paragraph("Without an outside witness, and why", sheet["Heading1"]))
        table(("function", "best check", "why there is none"), [(f.name, f.best(), f.why_none) for f in argued], (60, 20, 180))
    for family, functions in words.families(record).items():
        flow.append(Paragraph(family, sheet["Heading1"]))
        for f in functions:
            flow.append(Paragraph(f"{f.name} &nbsp; <font size=7>refusals: {f.refusals}</font>", sheet["Heading3"]))
            rows = []
            for check in f.checks:
                far, call = words.worst(check)
                rows.append((check.kind, check.source, len(check.cases), words.bounds(check), far, Paragraph(escape(call), code)))
            table(("kind", "source", "cases", "bound", "worst deviation", "at"), rows, (17, 110, 10, 27, 27, 69))
    document = SimpleDocTemplate(str(path), pagesize=landscape(A4), leftMargin=18 * mm, rightMargin=18 * mm, topMargin=14 * mm,
                                 bottomMargin=14 * mm, title="cutwater: " + words.TITLE.lower(), author="", subject="; ".join(map(": ".join, identity)))

    def foot(canvas, _):
        canvas.setFont("Helvetica", 7)
        canvas.drawString(18 * mm, 8 * mm, "; ".join(f"{what} {value}" for what, value in identity[:3]))
        canvas.drawRightString(279 * mm, 8 * mm, f"page {canvas.getPageNumber()}")

    document.build(flow, onFirstPage=foot, onLaterPages=foot)
