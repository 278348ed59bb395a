"""Where the cells of the committed workbook stand: its own writer tells."""
import json
import os
import pathlib
import re
import sys

SOURCE = pathlib.Path(os.environ["CUTWATER_SOURCE"])
sys.path.insert(0, str(SOURCE / "examples/plant"))

from writer import odf, pump_columns, service  # noqa: E402  after the path to it
from writer.odf import cell_name, column_letter  # noqa: E402

BOOK = SOURCE / "examples/plant/plant.fods"
VERDICT, WORST, FINDINGS, BANNER = "I7", "B7", "B8", "A6"


class Layout:
    """Where the committed workbook's cells stand."""

    def __init__(self):
        self.plant = odf.Blank(json.loads((SOURCE / "examples/plant/plant.json").read_text(encoding="utf-8")))
        made = (SOURCE / "examples/plant/make_workbook.py").read_text(encoding="utf-8")
        self.columns = len(self.plant["pumps"]) + int(re.search(r"SPARE, BLANK = (\d+)", made)[1])
        self.places = pump_columns.Places(self.columns)
        for sheet in (pump_columns.data_sheet, pump_columns.curves_sheet, pump_columns.checks_sheet):
            sheet(self.plant, self.places)
        self.service = service.Service(self.plant, self.places)
        self.service.build()
        self.tags = [pump["tag"] for pump in self.plant["pumps"]]

    def used(self, key):
        return cell_name(*self.service.tried.at[key])

    def tried(self, key):
        row, column = self.service.tried.at[key]
        return cell_name(row, column + 1)

    def tried_point(self, key, point):
        row, column, _ = self.service.tried.series_at[key]
        return cell_name(row + point - 1, column)

    def result(self, key, column=None):
        row, own = self.service.row_of[key]
        return f"{column}{row + 1}" if column else cell_name(row, own)

    def data(self, key, tag):
        return cell_name(self.places.input[key], pump_columns.FIRST + self.tags.index(tag))

    def column(self, tag):
        return column_letter(pump_columns.FIRST + self.tags.index(tag))

    def checks(self, row, tag):
        return cell_name(row, pump_columns.FIRST + self.tags.index(tag))


AT = Layout()
