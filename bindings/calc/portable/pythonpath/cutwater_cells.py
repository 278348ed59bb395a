"""What a cell gives and what it shows: the arguments of a call, its results as rows of cells, and the calls that are not
one formula. What a function takes is asked of the library; no name of a function stands here."""
import ctypes
import math
import struct

from cutwater_library import (BAD_SERIES, BAD_TEXT, BUFFER_TOO_SMALL, MISSING, NO_ANSWER, NUMBER, OK, OUT_OF_INTERVAL, SERIES, TEXT,
                              UNKNOWN_FUNCTION, WRONG_KIND, FunctionInfo, Refusal, Refused, SensitivityRow,
                              UncertaintyOptions, UncertaintyReport, Value, check, function_named, functions, library,
                              questions, working, working_of_refusal)

# An error's code as the payload of a NaN: Calc shows #N/A.
NOT_AVAILABLE, = struct.unpack("<d", struct.pack("<Q", 0x7FF0000000000000 | 32767))
ASKED_NUMBER, ASKED_TEXT, ASKED_UNIT, ASKED_VALUE, ASKED_FUNCTION, ASKED_INPUT, ASKED_RESULT, ASKED_UNCERTAINTIES, REST = range(9)


def is_number(given):
    return isinstance(given, (int, float)) and not isinstance(given, bool)


def nothing(given):
    return given is None or given == ""


def rows_of(given):
    """A range or an array as rows; a list of single values is one row."""
    if given and all(isinstance(row, (tuple, list)) for row in given):
        return [list(row) for row in given]
    return [list(given)]


def what(given):
    if nothing(given):
        return "nothing"
    if isinstance(given, bool):
        return "true or false"
    if is_number(given):
        return "a number"
    if isinstance(given, str):
        return "a text"
    if isinstance(given, (tuple, list)):
        return "several cells"
    return f"{type(given).__name__}, neither a number nor a text"


def single(given):
    """The one value of a range of one cell."""
    if isinstance(given, (tuple, list)):
        cells = [cell for row in rows_of(given) for cell in row]
        if len(cells) == 1:
            return cells[0]
    return given


def blame(function, argument, tail, status, element=-1):
    refused = Refused(function.place(argument, element) + tail, argument, status=status)
    made = refused.structure()
    made.element = element
    made.name = library.cutwater_input_name(function.position, argument)[:47]
    refused.refusal = made
    return refused


def point(function, argument, element, given):
    if nothing(given):
        raise blame(function, argument, ": the cell is empty; only the last cells may be.", BAD_SERIES, element)
    if is_number(given):
        return float(given)
    if not isinstance(given, str):
        raise blame(function, argument, f" is {what(given)}.", WRONG_KIND, element)
    if "\0" in given:
        raise blame(function, argument, " has a null character in it.", BAD_TEXT, element)
    number, refusal = ctypes.c_double(), Refusal()
    status = library.cutwater_read(function.position, argument, given.encode("utf-8"), ctypes.byref(number), ctypes.byref(refusal))
    if status != OK:
        # The library blames the input; say which point of it.
        lead, sentence = function.place(argument) + ":", refusal.message.decode("utf-8")
        if sentence.startswith(lead):
            raise blame(function, argument, sentence[len(lead) - 1 :], status, element)
        check(status, refusal)
    return number.value


def series(numbers):
    return Value(kind=SERIES, series=(ctypes.c_double * max(len(numbers), 1))(*numbers), length=len(numbers), stride=1)


def read_one(function, argument, given):
    wants_series = function.inputs[argument] == SERIES
    if isinstance(given, (tuple, list)):
        rows = rows_of(given)
        cells = [cell for row in rows for cell in row]
        alone, height, width = len(cells) == 1, len(rows), max(map(len, rows), default=0)
        while cells and nothing(cells[-1]):  # room kept for more points
            cells.pop()
        if not cells:
            return Value()
        if not wants_series:
            return read_one(function, argument, cells[0]) if alone else Value(kind=SERIES)  # refused in the library's words
        if height > 1 and width > 1:
            raise blame(function, argument, f" is a block of {height} rows and {width} columns; a series is one row or one column.",
                        BAD_SERIES)
        return series([point(function, argument, element, cell) for element, cell in enumerate(cells)])
    if nothing(given):
        return Value()
    if not is_number(given) and not isinstance(given, str):
        raise blame(function, argument, f" was given {what(given)}.", WRONG_KIND)
    if wants_series:
        return series([point(function, argument, 0, given)])
    if is_number(given):
        return Value(kind=NUMBER, number=float(given))
    if "\0" in given:
        raise blame(function, argument, " has a null character in it.", BAD_TEXT)
    return Value(kind=TEXT, text=given.encode("utf-8"))


def read(function, given):
    """The arguments as the library takes them; too many are left for it to count."""
    values = (Value * len(given))()
    if len(given) <= len(function.inputs):
        for i, one in enumerate(given):
            values[i] = read_one(function, i, one)
    return values


def shown(value):
    return value if isinstance(value, str) or math.isfinite(value) else NOT_AVAILABLE


def grid(results):
    """Side by side, a series down its column, gaps where there is nothing."""
    height = max([1] + [len(result) for result in results if isinstance(result, list)])
    return tuple(
        tuple(
            (shown(r[row]) if row < len(r) else NOT_AVAILABLE) if isinstance(r, list) else shown(r) if row == 0 else NOT_AVAILABLE
            for r in results
        )
        for row in range(height)
    )


def call(name, given):
    function = functions.get(name)
    if function is None:
        raise Refused("The library beside this add-in is of another version.", status=UNKNOWN_FUNCTION)
    return grid(function.call(read(function, given)))


class Asking:
    """One of the calls that are not one formula: what each argument is, the library's records say."""

    def __init__(self, name, given, rest):
        self.question, self.rest, self.units = questions[name], list(rest), []
        self.function = self.input = self.result = self.text = ""
        self.number, self.value, self.uncertainties = 0.0, Value(), None
        for i, asked in enumerate(self.question.asked):
            if asked != REST:
                self.read(i, asked, given[i] if i < len(given) else None)

    def fail(self, argument, sentence, status=WRONG_KIND):
        return Refused(f"{self.question.name}: {self.question.arguments[argument]} {sentence}", argument, status=status)

    def word(self, i, one, wanted):
        if not isinstance(one, str) or not one:
            raise self.fail(i, wanted)
        if "\0" in one:
            raise self.fail(i, "has a null character in it.", BAD_TEXT)
        return one

    def read(self, i, asked, whole):
        one = single(whole)
        if asked == ASKED_NUMBER:
            if not is_number(one):
                raise self.fail(i, "must be a number.")
            self.number = float(one)
        elif asked == ASKED_TEXT:
            self.text = self.word(i, one, "must be a text.")
        elif asked == ASKED_UNIT:
            self.units.append(self.word(i, one, "must be a unit, as a text."))
        elif asked == ASKED_FUNCTION:
            self.function = self.word(i, one, "must be the name of a function, as a text.")
        elif asked == ASKED_INPUT:
            self.input = self.word(i, one, "must be the name of an input, as a text.")
        elif asked == ASKED_RESULT:
            self.result = "" if nothing(one) else self.word(i, one, "must be the name of a result, as a text.")
        elif asked == ASKED_VALUE:
            if nothing(one):
                raise self.fail(i, "is not given.", MISSING)
            if is_number(one):
                self.value = Value(kind=NUMBER, number=float(one))
            else:
                self.value = Value(kind=TEXT, text=self.word(i, one, "must be a number, or a text with a unit.").encode("utf-8"))
        else:
            self.uncertainties = whole

    def answer(self):
        answer = getattr(self, self.question.name, None)
        if answer is None:
            raise Refused(f"{self.question.name}: this add-in does not know the question.", status=UNKNOWN_FUNCTION)
        return answer()

    def cutwater_version(self):
        return ((library.cutwater_version().decode(),),)

    def convert_unit(self):
        number, refusal = ctypes.c_double(), Refusal()
        check(library.cutwater_convert_unit(self.number, *(u.encode("utf-8") for u in self.units), number, refusal), refusal)
        return ((number.value,),)

    def quantity(self):
        number, refusal = ctypes.c_double(), Refusal()
        check(library.cutwater_quantity(ctypes.byref(self.value), self.units[0].encode("utf-8"), ctypes.byref(number),
                                        ctypes.byref(refusal)), refusal)
        return ((number.value,),)

    def find_function(self):
        found, count, refusal = (ctypes.c_int32 * 64)(), ctypes.c_size_t(), Refusal()
        library.cutwater_find_function(self.text.encode("utf-8"), found, ctypes.c_size_t(64), ctypes.byref(count), ctypes.byref(refusal))
        if not count.value:
            raise Refused(f'find_function: no function is known for "{self.text}"; try other words.', status=NO_ANSWER)
        rows, info = [], FunctionInfo(size=ctypes.sizeof(FunctionInfo))
        for position in found[: min(count.value, 64)]:
            library.cutwater_describe_function(position, ctypes.byref(info))
            rows.append((info.name.decode(), info.meaning.decode("utf-8")))
        return tuple(rows)

    def refusal(self):
        try:
            other = self.function.lower()
            if other in questions:  # also of another question: REFUSAL("quantity"; …)
                own = len([a for a in questions[other].asked if a != REST])
                Asking(other, self.rest[:own], self.rest[own:]).answer()
            else:
                function = function_named(self.function)
                function.call(read(function, self.rest))
        except Refused as refused:
            return ((str(refused),),)
        return (("",),)

    def working_text(self):
        try:
            function = function_named(self.function)
            return working(function, read(function, self.rest))
        except Refused as refused:
            return working_of_refusal(refused)

    def working(self):
        return ((self.working_text(),),)

    def working_line(self):
        if not self.number >= 1 or self.number != math.floor(self.number):
            raise self.fail(0, "must be a whole number from 1.", OUT_OF_INTERVAL)
        lines = self.working_text().split("\n")
        return ((lines[int(self.number) - 1] if self.number <= len(lines) else "",),)

    def asked_of(self):
        function = function_named(self.function)
        return function, read(function, self.rest), self.result.encode("utf-8") if self.result else None

    def solve_for(self):
        function, values, result = self.asked_of()
        found, refusal = ctypes.c_double(), Refusal()
        check(library.cutwater_solve_for(function.name.encode(), values, len(values), self.input.encode("utf-8"), result,
                                         self.value, math.nan, math.nan, found, refusal), refusal)
        return ((found.value,),)

    def solutions(self):
        function, values, result = self.asked_of()
        room, count, refusal = 16, ctypes.c_size_t(), Refusal()
        while True:
            roots = (ctypes.c_double * room)()
            status = library.cutwater_solutions(function.name.encode(), values, len(values), self.input.encode("utf-8"), result,
                                                self.value, math.nan, math.nan, roots, room, count, refusal)
            if status == BUFFER_TOO_SMALL and count.value > room:
                room = count.value
                continue
            check(status, refusal)
            if not count.value:
                raise Refused("There is no such value.", status=NO_ANSWER)
            return tuple((root,) for root in roots[: count.value])

    def sensitivity(self):
        function, values, result = self.asked_of()
        rows, count, refusal = (SensitivityRow * max(len(function.inputs), 1))(), ctypes.c_size_t(), Refusal()
        check(library.cutwater_sensitivity(function.name.encode(), values, len(values), result, rows, len(rows), count, None,
                                           refusal), refusal)
        if not count.value:
            raise Refused("The function has no input that is a number.", status=NO_ANSWER)
        return tuple(
            (library.cutwater_input_name(function.position, row.input).decode(),
             shown(row.relative_change) if row.relative else NOT_AVAILABLE, shown(row.slope))
            for row in rows[: count.value]
        )

    def uncertainty_report(self, monte_carlo):
        function, values, result = self.asked_of()
        given = self.uncertainties
        cells = [c for row in rows_of(given) for c in row] if isinstance(given, (tuple, list)) else [] if nothing(given) else [given]
        while cells and nothing(cells[-1]):
            cells.pop()
        standard = (Value * len(cells))()
        for i, cell in enumerate(cells):
            if nothing(cell):
                continue
            if is_number(cell):
                standard[i] = Value(kind=NUMBER, number=float(cell))
            elif isinstance(cell, str):
                standard[i] = Value(kind=TEXT, text=cell.encode("utf-8"))
            else:
                raise Refused(f"{self.question.name}: an uncertainty must be a number, or a text with a unit.")
        shares, slopes = ((ctypes.c_double * len(function.inputs))() for _ in range(2))
        options = UncertaintyOptions(size=ctypes.sizeof(UncertaintyOptions), result=result, monte_carlo=monte_carlo)
        report, refusal = UncertaintyReport(size=ctypes.sizeof(UncertaintyReport), shares=shares, slopes=slopes), Refusal()
        check(library.cutwater_uncertainty(function.name.encode(), values, len(values), standard, len(standard), options, report,
                                           refusal), refusal)
        return report, shares

    def uncertainty(self):
        r, _ = self.uncertainty_report(0)
        tried = r.trials > 0
        return ((shown(r.value), shown(r.deviation if tried else r.standard), shown(r.trial_low if tried else r.low),
                 shown(r.trial_high if tried else r.high), r.remark.decode("utf-8")),)

    def uncertainty_shares(self):
        report, shares = self.uncertainty_report(2)
        shown_shares = [*shares, report.relation_share] if report.relation > 0 else shares
        return tuple((shown(share),) for share in shown_shares)


def ask(name, given):
    """All in one row: the question's own arguments, then the rest."""
    question = questions[name]
    own = len([asked for asked in question.asked if asked != REST])
    if REST in question.asked and len(given) > own:
        given, rest = given[:own], given[own] if isinstance(given[own], (tuple, list)) else given[own:]
    else:
        rest = ()
    return Asking(name, given, rest or ()).answer()
