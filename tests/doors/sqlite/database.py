"""Connections with the extension loaded, and calls with values bound as they are."""
import json
import os
import pathlib
import re
import sqlite3

EXTENSION = os.environ["CUTWATER_SQLITE_PACKAGE"] + "/cutwater"
CATALOGUE = json.loads(pathlib.Path(os.environ["CUTWATER_CATALOGUE"]).read_text(encoding="utf-8"))
FUNCTIONS = {f["name"]: f for f in CATALOGUE["functions"]}
HEADER = pathlib.Path(os.environ["CUTWATER_SOURCE"], "include/cutwater/status.h").read_text(encoding="utf-8")
STATUS = {int(value): name.lower() for name, value in re.findall(r"CUTWATER_(\w+) = (\d+)", HEADER)}


def connect(file=":memory:"):
    db = sqlite3.connect(file)
    db.enable_load_extension(True)
    db.load_extension(EXTENSION)
    db.enable_load_extension(False)
    return db


def bound(value):
    """A series is a JSON array."""
    return json.dumps(value, ensure_ascii=False) if isinstance(value, list) else value


def marks(arguments):
    return ", ".join("?" * len(arguments))


def value(db, name, arguments):
    """What the call gives as one SQL value."""
    return db.execute(f"SELECT {name}({marks(arguments)})", [bound(a) for a in arguments]).fetchone()[0]


def rows(db, name, arguments):
    """What it gives as a table: (column names, rows)."""
    cursor = db.execute(f"SELECT * FROM {name}({marks(arguments)})", [bound(a) for a in arguments])
    return [column[0] for column in cursor.description], cursor.fetchall()
