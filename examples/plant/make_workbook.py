#!/usr/bin/env python3
"""Writes a plant's workbook.

    make_workbook.py                                the example, plant.fods from plant.json
    make_workbook.py --blank pumps.fods             without data, with room for fifty pumps
    make_workbook.py --data MY.json --out MY.fods   from data of one's own

Run it after a change of the data or of the layout. Needs Python only.
"""
import argparse
import json
import pathlib

from writer import (
    acceptance,
    build,
    cases,
    clearance,
    containment,
    energy,
    field,
    odf,
    offers,
    parallel,
    pump_columns,
    register,
    rotor,
    seal_chamber,
    service,
)
from writer.inputs import CHOICES
from writer.styles import DATA_STYLES, Styles

HERE = pathlib.Path(__file__).parent
SPARE, BLANK = 8, 50  # empty columns beside the data's pumps; columns of a workbook without data
MACROS = {"Register": "FillRegister.bas", "Asking": "Asking.bas", "Printing": "Printing.bas"}


def validations(places):
    def one(name, condition, message):
        return (
            f'<table:content-validation table:name="{name}" table:condition="of:cell-content-is-in-list({condition})" table:allow-empty-cell="true" '
            f'table:display-list="unsorted" table:base-cell-address="Service.A1"><table:error-message table:message-type="warning" table:display="true" '
            f'table:title="cutwater"><text:p>{message}</text:p></table:error-message></table:content-validation>'
        )

    lists = {**CHOICES, **acceptance.CHOICES, **service.CHOICES, **build.CHOICES}
    choices = "".join(
        one(f"choice_{key}", ";".join(f"&quot;{word}&quot;" for word in words), "One of: " + ", ".join(words))
        for key, words in lists.items()
    )
    return choices + one("tags", places.row_range("tag"), "No pump on the sheet Data has this tag.")


def workbook(plant, columns):
    places = pump_columns.Places(columns)
    data = pump_columns.data_sheet(plant, places)
    curves = pump_columns.curves_sheet(plant, places)
    checks = pump_columns.checks_sheet(plant, places)
    pump_columns.fill_curves(curves, places)
    pump_columns.fill_checks(checks, places)
    turning = rotor.Rotor(plant, places)
    seal = seal_chamber.SealChamber(plant, places, turning)
    reset = clearance.Clearance(plant, places, turning, seal)
    pump_itself = [
        turning.build(),
        seal.build(),
        reset.build(),
        containment.Containment(plant, places, turning, seal, reset).build(),
        build.Build(plant).sheet(),
    ]
    sheets = [
        register.register_sheet(plant, places),
        service.Service(plant, places).build(),
        cases.Cases(plant, places).build(),
        parallel.Parallel(plant, places).build(),
        energy.Energy(plant, places).build(),
        acceptance.Acceptance(plant, places).build(),
        field.Field(plant, places).build(),
        offers.Offers(plant, places).build(),
        *pump_itself,
        data,
        curves,
        checks,
        register.macro_sheet(plant, places),
    ]
    macros = {name: (HERE / file).read_text(encoding="utf-8") for name, file in MACROS.items()}
    footer = "Calculated with cutwater: a guide, before which go the maker's data and the rules of the site."
    return odf.workbook(sheets, Styles(footer), validations(places), macros, DATA_STYLES)


def main():
    parser = argparse.ArgumentParser(description="Writes a plant's workbook.")
    parser.add_argument(
        "--data", type=pathlib.Path, default=HERE / "plant.json", help="pumps and cases, as README.md describes them"
    )
    parser.add_argument("--out", type=pathlib.Path, default=HERE / "plant.fods")
    parser.add_argument("--blank", type=pathlib.Path, metavar="FILE", help="write a workbook without data")
    parser.add_argument("--columns", type=int, help="columns for pumps, the empty ones included")
    given = parser.parse_args()
    if given.blank:
        columns, out = given.columns or BLANK, given.blank
        plant = odf.Blank(pumps=[], room=columns)
    else:
        plant = odf.Blank(json.loads(given.data.read_text(encoding="utf-8")))
        columns, out = given.columns or len(plant["pumps"]) + SPARE, given.out
        if columns < len(plant["pumps"]):
            parser.error(f"{columns} columns are too few for {len(plant['pumps'])} pumps")
    out.write_text(workbook(plant, columns), encoding="utf-8")


if __name__ == "__main__":
    main()
