"""Values tried beside those of the sheet Data: used for one tag only, shown in colour and in the heading of every page, and undone in one place."""
from .inputs import IDLE, POINTS
from .odf import cell_name, reference
from .pump_columns import FIRST, fill


class Tried:
    """A value's row: label, the value used, the cell to try another, unit. Beside the printed columns stands what differs, by name."""

    def __init__(self, sheet, places, marks):
        self.sheet, self.places, self.marks = sheet, places, marks
        self.formulas = {}  # cells that must hold a formula still
        self.at, self.rows, self.series_at = {}, {}, {}

    def value(self, row, label, unit, key, text, told, unit_text, values, validation):
        put, used, tried = self.sheet.put, unit - 2, unit - 1
        put(row, label, text, "Label", across=used - label)
        given = values if key == "site_altitude" else f"INDEX({values};1;pump_column)"
        cell = reference("", row, tried, row, tried)
        put(
            row,
            used,
            f'=IF(AND(tries_count;{cell}<>"");IF({cell}="empty";"";{cell});IF(ISERROR(pump_column);"";IF({given}="";"";{given})))',
            "TextRight",
        )
        put(row, tried, None, "Input", validation=validation)
        put(row, unit, unit_text, "Unit")
        self.sheet.name_range(key, row, used)
        self.formulas[row, used] = key
        self.at[key] = (row, used)
        self.rows[row, tried] = (told, f'EXACT({cell}&"";IF({given}="";"empty";{given}&""))')
        self._look(row, used, row, tried)

    def series(self, row, used, tried, key, told):
        """Tried as a whole: one number in the cream column, and the others count as empty where they are empty."""
        put, places = self.sheet.put, self.places
        column = reference("", row, tried, row + POINTS - 1, tried)
        _, first, _ = places.of(key)
        for point in range(POINTS):
            values = reference("Data", first + point, FIRST, first + point, places.last)
            cell = reference("", row + point, tried, row + point, tried)
            put(
                row + point,
                used,
                f'=IF(AND(tries_count;COUNTA({column})>0);IF({cell}="";"";{cell});IF(ISERROR(pump_column);"";IF(INDEX({values};1;pump_column)="";"";INDEX({values};1;pump_column))))',
                "TextRight",
            )
            put(row + point, tried, None, "Input")
            self.formulas[row + point, used] = key
        self.sheet.name_range(key, row, used, row + POINTS - 1)
        self.series_at[key] = (row, tried, told)
        whole = f"COUNTA([.${cell_name(row, tried, True)[1:]}:.{cell_name(row + POINTS - 1, tried, True)}])>0"
        self.sheet.condition(row, used, row + POINTS - 1, used, f"AND(tries_count;{whole})", "Tried")
        self._look(row, tried, row + POINTS - 1, tried)

    def _look(self, row, column, last_row, tried):
        cell = f"[.${cell_name(row, tried)}]"
        self.sheet.condition(row, column, last_row, tried, f'AND(tries_count;{cell}<>"")', "Tried")
        self.sheet.condition(row, tried, last_row, tried, f'AND(NOT(tries_count);{cell}<>"")', "Aside")

    def idle(self):
        for key, idle in IDLE.items():
            row, used = self.at[key]
            condition = fill(idle, lambda name: name)
            self.sheet.condition(row, used, row, used, f'AND({key}<>"";{condition})', "Unused")
            self.sheet.condition(row, used, row, used, condition, "Idle")

    def banner(self, row, across):
        """In the heading, which every page repeats."""
        put, sheet = self.sheet.put, self.sheet
        top = min(r for r, _ in self.rows)
        put(top - 1, self.marks, "What differs from Data", "Head")
        put(top - 1, self.marks + 1, "What is typed to be tried", "Head")
        at, last = top, top
        marks = [(told, reference("", r, c, r, c), same) for (r, c), (told, same) in self.rows.items()]
        for first, column, told in self.series_at.values():
            marks.append((told, None, reference("", first, column, first + POINTS - 1, column)))
        for told, cell, same in marks:
            given = f'{cell}<>""' if cell else f"COUNTA({same})>0"
            put(
                at,
                self.marks,
                f'=IF(OR(NOT(tries_count);ISERROR(pump_column));"";IF(AND({given}{f";NOT({same})" if cell else ""});"{told}";""))',
                "Text",
            )
            put(at, self.marks + 1, f'=IF({given};"{told}";"")', "Text")
            last, at = at, at + 1
        differ, typed = (reference("", top, column, last, column) for column in (self.marks, self.marks + 1))
        here = at
        for index, (name, text, formula) in enumerate(
            (
                ("tries_count", "Values tried are used", 'AND(TRIM(tried_for)<>"";TRIM(tried_for)=TRIM(tag))'),
                ("differing", "Inputs that differ from Data", f'SUMPRODUCT(({differ}<>"")*1)'),
                ("set_aside", "Values typed and not used", f'IF(tries_count;0;SUMPRODUCT(({typed}<>"")*1))'),
                ("overwritten", "Formulas overwritten", self._overwritten()),
            )
        ):
            put(here + index, self.marks, text, "Label")
            put(here + index, self.marks + 1, "=" + formula, "Text")
            sheet.name_cell(name, here + index, self.marks + 1)
        text = (
            f'=IF(overwritten>0;"Formulas of this sheet were overwritten, "&overwritten&": do not use it. Undo, or load the workbook anew.";IF(differing>0;differing&IF(differing=1;'
            f'" input differs";" inputs differ")&" from Data: "&COM.MICROSOFT.TEXTJOIN(", ";1;{differ})&{self._temperature()};IF(set_aside>0;set_aside&IF(set_aside=1;" value is";" values are")'
            f'&" typed to be tried and not used: "&IF(TRIM(tried_for)="";"“Values tried are for” names no pump.";"for "&TRIM(tried_for)&".");"")))'
        )
        put(row, 0, text, "Banner", across=across, known=" ")
        sheet.condition(row, 0, row, across - 1, f"LEN(TRIM([.{cell_name(row, 0, True)}]))>0", "Alarm")

    def _temperature(self):
        """What is given by a value was given for the temperature on Data."""
        row, used = self.at["temperature"]
        stale = []
        for key, by, name in (
            ("density", "density_by", "density"),
            ("vapour_pressure", "vapour_by", "vapour pressure"),
            ("viscosity", "viscosity_by", "viscosity"),
        ):
            at, column = self.at[key]
            stale.append(
                f'IF(AND({by}<>"water";{by}<>"two points";{reference("", at, column + 1, at, column + 1)}="");"{name}";"")'
            )
        joined = f'COM.MICROSOFT.TEXTJOIN(", ";1;{";".join(stale)})'
        tried = reference("", row, used + 1, row, used + 1)
        return f'IF(AND({tried}<>"";{joined}<>"");". Mind: "&{joined}&" still those of the temperature on Data";"")'

    def _overwritten(self):
        """How many of the cells that were written as formulas hold none any more: they are counted column by column."""
        columns = {}
        for r, c in self.formulas:
            columns.setdefault(c, []).append(r)
        found = "-".join(
            f"SUMPRODUCT(ISFORMULA({reference('', min(rows), c, max(rows), c)})*1)" for c, rows in columns.items()
        )
        expected = sum(
            sum((r, c) in self.formulas or self._is_formula(r, c) for r in range(min(rows), max(rows) + 1))
            for c, rows in columns.items()
        )
        return f"{expected}-{found}"

    def _is_formula(self, row, column):
        content = self.sheet.cells.get((row, column), (None,))[0]
        return isinstance(content, str) and content.startswith("=")


__all__ = ["Tried"]
