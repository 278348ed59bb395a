#!/usr/bin/env python3
"""Writes plant.fods from plant.json: run it after a change of either the data or the layout. Needs Python only."""
import json
import pathlib

from writer import acceptance, build, clearance, containment, energy, odf, parallel, pump_columns, register, rotor, seal_chamber, service
from writer.inputs import CHOICES
from writer.styles import DATA_STYLES, Styles

HERE = pathlib.Path(__file__).parent


def validations(places):
    def one(name, condition, message):
        return (f'<table:content-validation table:name="{name}" table:condition="of:cell-content-is-in-list({condition})" table:allow-empty-cell="true" '
                f'table:display-list="unsorted" table:base-cell-address="Service.A1"><table:error-message table:message-type="warning" table:display="true" '
                f'table:title="cutwater"><text:p>{message}</text:p></table:error-message></table:content-validation>')

    choices = "".join(one(f"choice_{key}", ";".join(f"&quot;{word}&quot;" for word in words), "One of: " + ", ".join(words)) for key, words in {**CHOICES, **acceptance.CHOICES, **build.CHOICES}.items())
    return choices + one("tags", places.row_range("tag"), "No pump on the sheet Data has this tag.")


def main():
    plant = json.loads((HERE / "plant.json").read_text(encoding="utf-8"))
    places = pump_columns.Places(len(plant["pumps"]))
    data = pump_columns.data_sheet(plant, places)
    curves = pump_columns.curves_sheet(plant, places)
    checks = pump_columns.checks_sheet(plant, places)
    pump_columns.fill_curves(curves, places)
    pump_columns.fill_checks(checks, places)
    turning = rotor.Rotor(plant, places)
    seal = seal_chamber.SealChamber(plant, places, turning)
    reset = clearance.Clearance(plant, places, turning, seal)
    pump_itself = [turning.build(), seal.build(), reset.build(), containment.Containment(plant, places, turning, seal, reset).build(), build.Build(plant).sheet()]
    sheets = [register.register_sheet(plant, places), service.Service(plant, places).build(),
              parallel.Parallel(plant, places).build(), energy.Energy(plant, places).build(), acceptance.Acceptance(plant, places).build(), *pump_itself, data, curves, checks, register.macro_sheet(plant, places)]
    macro = (HERE / "FillRegister.bas").read_text(encoding="utf-8")
    footer = f'{plant["works"]}, {plant["unit"]}. An invented works; calculated with cutwater.'
    text = odf.workbook(sheets, Styles(footer, [sheet.name for sheet in sheets]), validations(places), macro, DATA_STYLES)
    (HERE / "plant.fods").write_text(text, encoding="utf-8")


if __name__ == "__main__":
    main()
