"""Every unit of the catalogue against python3-pint. Usage: check_pint.py catalogue.json

Where pint holds a rounded factor (Btu) or none, the definition is spelled out for its parser."""

import json
import math
import re
import sys

import pint

PSI = "lb*g_0/inch**2"
BTU = "(1055.05585262 J)"
MMHG = "13595.1 kg/m**3*g_0*mm"
INHG = "13595.1 kg/m**3*g_0*inch"
WATER = "1000 kg/m**3*g_0"

# spelling here -> spelling for pint; symbols that pint reads as they are need no row
SPELLINGS = {
    "um": "micrometer", "in": "inch", "thou": "thou", "l": "liter", "ml": "milliliter", "US gal": "gallon", "imp gal": "imperial_gallon",
    "bbl": "oil_barrel", "h": "hour", "d": "day", "month": "common_year/12", "year": "common_year", "mm/year": "mm/common_year", "thou/year": "thou/common_year",
    "gn": "g_0", "t": "metric_ton", "US ton": "short_ton", "imp ton": "long_ton", "lbf": "lb*g_0", "kgf": "kg*g_0", "daN": "10 N",
    "lbf/in": "lb*g_0/inch", "1/in": "1/inch", "in/s": "inch/s", "US gpm": "gallon/min", "imp gpm": "imperial_gallon/min",
    "bbl/d": "oil_barrel/day", "US mgd": "1e6 gallon/day", "Ml/d": "1e6 liter/day", "l/s": "liter/s", "l/min": "liter/min", "l/h": "liter/hour",
    "t/h": "metric_ton/hour", "lb/US gal": "lb/gallon", "lb/imp gal": "lb/imperial_gallon", "lbf s/ft2": "lb*g_0*s/ft**2",
    "P": "poise", "St": "stokes", "uPa s": "micropascal*s", "mPa s": "centipoise", "mm2/s": "centistokes",
    "psi": PSI, "ksi": "1000 " + PSI, "mmHg": MMHG, "inHg": INHG, "mH2O": WATER + "*m", "mmH2O": WATER + "*mm", "ftH2O": WATER + "*ft",
    "inH2O": WATER + "*inch", "kgf/cm2": "kg*g_0/cm**2", "torr": "atm/760", "N/mm2": "N/mm**2",
    "delta degF": "delta_degF", "degR": "degR", "K": "kelvin",
    "Btu": BTU, "Btu/h": BTU + "/hour", "Btu/(lb degF)": BTU + "/lb/delta_degF", "Btu/degF": BTU + "/delta_degF",
    "Btu/(h ft2 degF)": BTU + "/hour/ft**2/delta_degF", "Btu/(h ft degF)": BTU + "/hour/ft/delta_degF",
    "Btu/(h degF)": BTU + "/hour/delta_degF",
    "%/K": "0.01/kelvin", "ppm/K": "1e-6/kelvin", "Btu/(h ft)": BTU + "/hour/ft", "Btu/lb": BTU + "/lb",
    "kcal/kg": "4186.8 J/kg", "1/psi": "1/(" + PSI + ")",
    "kcal": "4186.8 J", "kcal/h": "4186.8 J/hour", "kcal/(kg K)": "4186.8 J/kg/kelvin",
    "degF/min": "delta_degF/min", "degF/h": "delta_degF/hour", "1/degF": "1/delta_degF", "1e-6/K": "1e-6/kelvin",
    "hp": "550 ft*lb*g_0/s", "PS": "metric_horsepower", "hp(E)": "electrical_horsepower",
    "lbf ft": "lb*g_0*ft", "lbf in": "lb*g_0*inch", "kgf m": "kg*g_0*m", "psi ft/min": PSI + "*ft/min", "kWh/US gal": "kWh/gallon",
    "1/h": "1/hour", "G": "1e-4 tesla", "uohm m": "microohm*m", "uohm cm": "microohm*cm", "ohm m": "ohm*m", "deg/s": "degree/s", "deg": "degree",
    "lb in2": "lb*inch**2", "oz in": "oz*inch",
    "": "dimensionless", "%": "0.01 dimensionless", "ppm": "1e-6 dimensionless", "in2": "inch**2", "in3": "inch**3", "kPa": "kilopascal",
}
BY_QUANTITY = {
    ("rotational speed", "rad/s"): "1/s/(2*pi)",
    ("frequency", "Hz"): "1/s", ("frequency", "kHz"): "1000/s",
}
SCALES = {"degC": "degC", "degF": "degF", "degR": "degR", "K": "kelvin"}
CONVENTIONS = {"money", "specific speed (1/min, m3/s, m)", "specific speed (1/min, US gal/min, ft)", "Saybolt Universal viscosity", "valve flow coefficient"}


def spelled(quantity, symbol):
    if (quantity, symbol) in BY_QUANTITY:
        return BY_QUANTITY[quantity, symbol]
    if quantity in ("absolute pressure", "gauge pressure"):
        symbol = symbol.replace("(a)", "").replace("(g)", "")
        symbol = {"bara": "bar", "barg": "bar", "psia": "psi", "psig": "psi"}.get(symbol, symbol)
    if symbol in SPELLINGS:
        return SPELLINGS[symbol]
    text = re.sub(r"(?<=[A-Za-z])(\d)", r"**\1", symbol.replace(" ", "*"))  # m3/h -> m**3/h; blanks are products
    return re.sub(r"\bh\b", "hour", text)  # pint's h is Planck's constant


def main(path):
    registry = pint.UnitRegistry(autoconvert_offset_to_baseunit=True)
    compared, wrong = 0, []
    with open(path, encoding="utf-8") as file:
        units = json.load(file)["units"]
    for quantity, rows in units.items():
        if quantity in CONVENTIONS:
            continue
        for row in rows:
            symbol, ours = row["symbol"], row["factor"]
            if quantity == "temperature":
                for x in (0.0, 68.0, 451.0):
                    theirs = registry.Quantity(x, SCALES[symbol]).to("kelvin").magnitude
                    mine = (x + row["offset"]) * ours
                    compared += 1
                    if not math.isclose(mine, theirs, rel_tol=3e-15):
                        wrong.append((quantity, symbol, mine, theirs))
                continue
            theirs = registry(spelled(quantity, symbol))
            theirs = theirs.to_base_units().magnitude if hasattr(theirs, "to_base_units") else theirs
            compared += 1
            if not math.isclose(ours, theirs, rel_tol=3e-15):
                wrong.append((quantity, symbol, ours, theirs))
    for line in wrong:
        print("differs: %s %r: %.17g here, %.17g by pint" % line)
    print("%d units compared with pint %s, %d differ" % (compared, pint.__version__, len(wrong)))
    return 1 if wrong or compared < 150 else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1]))
