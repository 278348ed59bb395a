"""Holds the audit against the sheet Checks of the recalculated workbook (an .ods): every number and every word."""
import math
import xml.etree.ElementTree as xml
import zipfile

from writer.results import WEIGHT

TABLE = "{urn:oasis:names:tc:opendocument:xmlns:table:1.0}"
OFFICE = "{urn:oasis:names:tc:opendocument:xmlns:office:1.0}"
FIRST = 3  # the first pump's column


def _cells(row):
    for cell in row:
        value = cell.get(OFFICE + "value")
        content = "".join("".join(part.itertext()) for part in cell) if value is None else float(value)
        yield from [content] * min(int(cell.get(TABLE + "number-columns-repeated", "1")), 100)


def checks_sheet(path):
    """[(key, label, values)], top to bottom."""
    with zipfile.ZipFile(path) as archive:
        root = xml.fromstring(archive.read("content.xml"))
    sheet = next(table for table in root.iter(TABLE + "table") if table.get(TABLE + "name") == "Checks")
    rows = [list(_cells(row)) for row in sheet.iter(TABLE + "table-row")]
    return [(row[0], row[1], row[FIRST:]) for row in rows if len(row) > FIRST]


def compare(c, path):
    """(how many were compared, lines that tell what differs). A number must agree in the 15 digits that the file holds."""
    seen, compared, differing = set(), 0, []
    tags = [" ".join(str(pump["tag"]).split()) for pump in c.pumps]
    for key, label, values in checks_sheet(path):
        if key == "Tag" and values[: len(tags)] != tags:
            return 0, [f"the workbook's pumps are {values[:len(tags)]}"]
        words = None
        if key in seen and key in WEIGHT:  # the second time it is the verdict
            words = [verdicts[key] for verdicts in c.verdicts]
        elif key in c.found and key not in seen:
            words = ["refused" if i in c.why.get(key, ()) else c.found[key][i] for i in range(len(tags))]
        elif label == "Verdict":
            words = [word for word, _ in c.worst]
        elif label == "Place in the register":
            words = [float(c.order.index(i) + 1) for i in range(len(tags))]
        seen.add(key)
        for tag, mine, theirs in zip(tags, words or (), values):
            if isinstance(theirs, float):
                same = not isinstance(mine, str) and math.isclose(mine, theirs, rel_tol=5e-15)
            elif isinstance(mine, str):
                same = mine == theirs or mine == "refused" and (theirs.startswith("Err:") or theirs.startswith("#"))
            else:
                same = theirs == "–" and mine != mine
            compared += 1
            if not same:
                differing.append(f"{tag} {label}: {mine} here, {theirs} in the workbook")
    return compared, differing
