"""The shared library by its C interface: what it is told and what it tells, without a word about cells."""
import ctypes
import pathlib
import sys

OK, OUT_OF_INTERVAL, NO_ANSWER, BAD_TEXT, MISSING, WRONG_KIND, BAD_SERIES, BUFFER_TOO_SMALL = 0, 2, 4, 6, 10, 11, 12, 13
UNKNOWN_FUNCTION = 15
LEFT_OUT, NUMBER, TEXT, SERIES = range(4)
MOST_INPUTS, MOST_RESULTS = 32, 16


class Refusal(ctypes.Structure):
    _fields_ = [
        ("status", ctypes.c_int32), ("argument", ctypes.c_int32), ("element", ctypes.c_int64), ("value", ctypes.c_double),
        ("low", ctypes.c_double), ("high", ctypes.c_double), ("low_open", ctypes.c_int32), ("high_open", ctypes.c_int32),
        ("name", ctypes.c_char * 48), ("unit", ctypes.c_char * 32), ("message", ctypes.c_char * 512),
    ]


class Value(ctypes.Structure):
    _fields_ = [
        ("kind", ctypes.c_int32), ("number", ctypes.c_double), ("text", ctypes.c_char_p),
        ("series", ctypes.POINTER(ctypes.c_double)), ("length", ctypes.c_size_t), ("stride", ctypes.c_ssize_t),
    ]


class Result(ctypes.Structure):
    _fields_ = [
        ("kind", ctypes.c_int32), ("number", ctypes.c_double), ("text", ctypes.c_char_p),
        ("series", ctypes.POINTER(ctypes.c_double)), ("capacity", ctypes.c_size_t), ("length", ctypes.c_size_t),
    ]


class FunctionInfo(ctypes.Structure):
    _fields_ = [("size", ctypes.c_size_t)] + [
        (name, ctypes.c_char_p)
        for name in ("name", "type_name", "family", "family_title", "meaning", "also", "equation", "source",
                     "example_inputs", "example_results", "example_source")
    ] + [(name, ctypes.c_int32) for name in ("inputs", "results", "relations", "cautions", "has_rows")]


class QuestionInfo(ctypes.Structure):
    _fields_ = [("size", ctypes.c_size_t)] + [
        (name, ctypes.c_char_p) for name in ("name", "c_name", "meaning", "example")
    ] + [(name, ctypes.c_int32) for name in ("arguments", "results", "layout")]


class QuestionPart(ctypes.Structure):
    _fields_ = [("size", ctypes.c_size_t), ("name", ctypes.c_char_p), ("meaning", ctypes.c_char_p),
                ("asked", ctypes.c_int32), ("optional", ctypes.c_int32), ("word", ctypes.c_int32)]


class SensitivityRow(ctypes.Structure):
    _fields_ = [("input", ctypes.c_int32), ("relative", ctypes.c_int32), ("relative_change", ctypes.c_double),
                ("slope", ctypes.c_double)]


class UncertaintyOptions(ctypes.Structure):
    _fields_ = [("size", ctypes.c_size_t), ("result", ctypes.c_char_p), ("spreads", ctypes.POINTER(ctypes.c_int32)),
                ("correlations", ctypes.c_void_p), ("correlation_count", ctypes.c_size_t), ("monte_carlo", ctypes.c_int32),
                ("trials", ctypes.c_size_t), ("seed", ctypes.c_uint64), ("coverage", ctypes.c_double)]


class UncertaintyReport(ctypes.Structure):
    _fields_ = [("size", ctypes.c_size_t), ("shares", ctypes.POINTER(ctypes.c_double)),
                ("slopes", ctypes.POINTER(ctypes.c_double)), ("value", ctypes.c_double), ("standard", ctypes.c_double),
                ("low", ctypes.c_double), ("high", ctypes.c_double), ("second_order", ctypes.c_double),
                ("trusted", ctypes.c_int32), ("trials", ctypes.c_size_t), ("refused", ctypes.c_size_t),
                ("mean", ctypes.c_double), ("deviation", ctypes.c_double), ("trial_low", ctypes.c_double),
                ("trial_high", ctypes.c_double), ("remark", ctypes.c_char * 384), ("relation", ctypes.c_double),
                ("relation_share", ctypes.c_double)]


def _loaded():
    """The library that lies beside this file's folder, by the name that this system gives it."""
    beside = pathlib.Path(__file__).resolve().parent.parent
    pattern = {"win32": "cutwater*.dll", "darwin": "libcutwater*.dylib"}.get(sys.platform, "libcutwater.so*")
    found = sorted(beside.glob(pattern))
    if not found:
        raise ImportError(f"{beside} holds no {pattern}: the library for this system is missing")
    library = ctypes.CDLL(str(found[0]))
    for name in ("version", "function_name", "input_name", "result_name"):
        getattr(library, "cutwater_" + name).restype = ctypes.c_char_p
    library.cutwater_convert_unit.argtypes = [ctypes.c_double, ctypes.c_char_p, ctypes.c_char_p,
                                              ctypes.POINTER(ctypes.c_double), ctypes.POINTER(Refusal)]
    library.cutwater_solve_for.argtypes = [
        ctypes.c_char_p, ctypes.POINTER(Value), ctypes.c_size_t, ctypes.c_char_p, ctypes.c_char_p, ctypes.POINTER(Value),
        ctypes.c_double, ctypes.c_double, ctypes.POINTER(ctypes.c_double), ctypes.POINTER(Refusal)]
    library.cutwater_solutions.argtypes = library.cutwater_solve_for.argtypes[:-1] + [
        ctypes.c_size_t, ctypes.POINTER(ctypes.c_size_t), ctypes.POINTER(Refusal)]
    library.cutwater_working.argtypes = [
        ctypes.c_char_p, ctypes.POINTER(Value), ctypes.c_size_t, ctypes.c_int32, ctypes.c_char_p, ctypes.c_size_t,
        ctypes.POINTER(ctypes.c_size_t), ctypes.POINTER(Refusal)]
    library.cutwater_refusal_text.argtypes = [ctypes.POINTER(Refusal), ctypes.c_int32, ctypes.c_char_p, ctypes.c_size_t,
                                              ctypes.POINTER(ctypes.c_size_t)]
    library.cutwater_call_at.argtypes = [ctypes.c_int32, ctypes.POINTER(Value), ctypes.c_size_t, ctypes.POINTER(Result),
                                         ctypes.c_size_t, ctypes.POINTER(Refusal)]
    library.cutwater_call.argtypes = [ctypes.c_char_p, *library.cutwater_call_at.argtypes[1:]]
    library.cutwater_uncertainty.argtypes = [
        ctypes.c_char_p, ctypes.POINTER(Value), ctypes.c_size_t, ctypes.POINTER(Value), ctypes.c_size_t,
        ctypes.POINTER(UncertaintyOptions), ctypes.POINTER(UncertaintyReport), ctypes.POINTER(Refusal)]
    library.cutwater_sensitivity.argtypes = [
        ctypes.c_char_p, ctypes.POINTER(Value), ctypes.c_size_t, ctypes.c_char_p, ctypes.POINTER(SensitivityRow),
        ctypes.c_size_t, ctypes.POINTER(ctypes.c_size_t), ctypes.POINTER(ctypes.c_double), ctypes.POINTER(Refusal)]
    return library


library = _loaded()


class Refused(Exception):
    """A call that is not answered: the sentence, and which argument is to blame."""

    def __init__(self, sentence, argument=-1, refusal=None, status=WRONG_KIND):
        super().__init__(sentence)
        self.argument = argument
        self.status = status
        self.refusal = refusal

    def structure(self):
        """What the library wants to hear of a refusal that it did not make itself."""
        if self.refusal is not None:
            return self.refusal
        made = Refusal(status=self.status, argument=self.argument, element=-1, value=float("nan"), low=float("-inf"),
                       high=float("inf"), low_open=1, high_open=1)
        made.message = str(self).encode("utf-8")[:511].decode("utf-8", "ignore").encode("utf-8")
        return made


def check(status, refusal):
    if status != OK:
        kept = Refusal.from_buffer_copy(refusal)
        raise Refused(refusal.message.decode("utf-8"), refusal.argument, kept, status)


class Function:
    def __init__(self, position):
        self.position = position
        self.name = library.cutwater_function_name(position).decode()
        self.inputs = [library.cutwater_input_kind(position, i) for i in range(library.cutwater_input_count(position))]
        self.results = [library.cutwater_result_kind(position, i) for i in range(library.cutwater_result_count(position))]
        if len(self.inputs) > MOST_INPUTS or len(self.results) > MOST_RESULTS:
            raise ImportError(f"{self.name} has more inputs or results than this add-in has room for")

    def place(self, argument, element=-1):
        told = f"{self.name}: {library.cutwater_input_name(self.position, argument).decode()}"
        return told if element < 0 else f"{told}, point {element + 1} (counted from 1)"

    def call(self, values):
        """Its results: numbers, texts, lists."""
        room = max([64] + [value.length for value in values if value.kind == SERIES])
        while True:
            results = (Result * len(self.results))()
            kept = []
            for result, kind in zip(results, self.results):
                if kind == SERIES:
                    kept.append((ctypes.c_double * room)())
                    result.series, result.capacity = kept[-1], room
            refusal = Refusal()
            status = library.cutwater_call_at(self.position, values, len(values), results, len(results), refusal)
            needed = max((r.length for r, kind in zip(results, self.results) if kind == SERIES), default=0)
            if status == BUFFER_TOO_SMALL and needed > room:
                room = needed
                continue
            check(status, refusal)
            return [
                r.text.decode("utf-8") if kind == TEXT else r.series[: r.length] if kind == SERIES else r.number
                for r, kind in zip(results, self.results)
            ]


class Question:
    def __init__(self, position):
        info, part = QuestionInfo(size=ctypes.sizeof(QuestionInfo)), QuestionPart(size=ctypes.sizeof(QuestionPart))
        library.cutwater_describe_question(position, ctypes.byref(info))
        self.name = info.name.decode()
        self.several = info.layout != 0  # more than one cell
        self.arguments, self.asked = [], []
        for i in range(info.arguments):
            library.cutwater_describe_question_argument(position, i, ctypes.byref(part))
            self.arguments.append(part.name.decode())
            self.asked.append(part.asked)


functions = {f.name: f for f in map(Function, range(library.cutwater_function_count()))}
questions = {q.name: q for q in map(Question, range(library.cutwater_question_count()))}


def function_named(name):
    wanted = name.lower()
    if not wanted:
        raise Refused("The name of a function must be given, as a text.", status=UNKNOWN_FUNCTION)
    if wanted not in functions:
        refusal = Refusal()  # the library's own sentence
        status = library.cutwater_call(wanted.encode("utf-8"), None, 0, None, 0, refusal)
        check(status or UNKNOWN_FUNCTION, refusal)
    return functions[wanted]


def working(function, values, form=0):
    """The text, also of a call that is refused: it says why."""
    needed, refusal = ctypes.c_size_t(4095), Refusal()
    while True:
        room = needed.value + 1
        buffer = ctypes.create_string_buffer(room)
        library.cutwater_working(function.name.encode(), values, len(values), form, buffer, room, needed, refusal)
        if needed.value < room:
            return buffer.value.decode("utf-8")


def working_of_refusal(refused, form=0):
    needed, refusal = ctypes.c_size_t(2047), refused.structure()
    while True:
        room = needed.value + 1
        buffer = ctypes.create_string_buffer(room)
        if library.cutwater_refusal_text(refusal, form, buffer, room, needed) != BUFFER_TOO_SMALL:
            return buffer.value.decode("utf-8")
