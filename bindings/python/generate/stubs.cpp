// What Python's help and its type checkers read: docstrings for the SWIG interface and the package's stub, from one
// text.
#include "generate/product.hpp"

#include "call/argument_list.hpp"
#include "catalogue/statuses.hpp"

#include <cctype>

namespace cutwater::generate {
namespace {

constexpr std::size_t width = 100;

void paragraph(std::string& to, std::string_view lead, std::string_view text, std::size_t indent = 0,
               std::size_t hang = 4)
{
    const std::vector<std::string> lines = wrap(formatted("{}{}", lead, text), width - indent - hang);
    for (std::size_t i = 0; i < lines.size(); ++i)
        put(to, "{}{}\n", std::string(i ? indent + hang : indent, ' '), lines[i]);
}

std::string word_list(std::span<const char* const> words)
{
    std::string text;
    for (const char* word : words) text += formatted("{}'{}'", text.empty() ? "" : ", ", word);
    return text;
}

std::string input_text(const InputInfo& in) { return formatted("{}; {}", in.meaning, permitted_text(in)); }

/// The record's argument list in Python's spelling.
std::string example_list(const char* list)
{
    std::string text;
    const auto arguments = read_argument_list(list);
    if (!arguments) return list;
    for (const ListedArgument& argument : *arguments) {
        text += text.empty() ? "" : ", ";
        if (argument.kind == CUTWATER_NUMBER) text += argument.text;
        if (argument.kind == CUTWATER_TEXT) text += formatted("'{}'", argument.text);
        if (argument.kind == CUTWATER_LEFT_OUT) text += "None";
        if (argument.kind == CUTWATER_SERIES) {
            std::string inner;
            for (const std::string& number : argument.written)
                inner += formatted("{}{}", inner.empty() ? "" : ", ", number);
            text += formatted("[{}]", inner);
        }
    }
    return text;
}

std::string docstring(const FunctionInfo& f)
{
    std::string text;
    paragraph(text, "", formatted("{}.", f.meaning), 0, 0);
    put(text, "\nInputs:\n");
    for (const InputInfo& in : f.inputs) paragraph(text, formatted("{}: ", in.full_name), input_text(in), 2);
    put(text, "\n{}:\n", f.results.size() == 1 ? "Result" : "Results");
    for (const ResultInfo& out : f.results) {
        std::string meaning = out.meaning;
        if (out.kind == Kind::choice) meaning += formatted("; one of {}", word_list(out.words));
        if (out.kind == Kind::series) meaning += "; a series";
        paragraph(text, formatted("{}: ", out.full_name), meaning, 2);
    }
    put(text, "\n");
    paragraph(text, "Equation: ", f.equation);
    for (std::size_t i = 0; i < f.relations.size(); ++i)
        paragraph(text, formatted("Must hold of {}: ", f.inputs[f.relations[i].inputs.front()].name),
                  f.relations[i].sentence);
    paragraph(text, "Source: ", f.source);
    for (const char* caution : f.cautions) paragraph(text, "Caution: ", caution);
    paragraph(text, "Example: ",
              formatted("{}({}) gives {} ({})", f.name, example_list(f.example.inputs), example_list(f.example.results),
                        f.example.source));
    text.pop_back();
    return text;
}

/// For a text between double quotes: SWIG's and Python's rules are the same here.
std::string escaped(std::string_view text)
{
    std::string made;
    for (const char c : text) {
        if (c == '"' || c == '\\') made += '\\';
        made += c;
    }
    return made;
}

std::string signature(const FunctionInfo& f)
{
    std::string text;
    for (const InputInfo& in : f.inputs) text += formatted(", {}{}", in.full_name, in.has_default ? "=None" : "");
    return formatted("{}($module{})", f.name, text);
}

std::string literal(std::span<const char* const> words) { return formatted("Literal[{}]", word_list(words)); }

/// The overloads of a call: one answer; NumPy's arrays; columns of another library, which come out as what they were;
/// Pint's quantities among these. What a checker cannot find it takes for anything: a library's type stands in an
/// overload by a type variable, which plain numbers leave unsolved, so that they never mean that overload.
enum class Form { one, rows, columns, measured };
constexpr const char* prefixes[] = {"", "_Rows", "_Columns", "_Columns"};
const char* prefix(Form form) { return prefixes[static_cast<int>(form)]; }

std::string result_type(const ResultInfo& out, Form form)
{
    if (form == Form::columns) return "_Column";
    if (form == Form::measured) return "Any";
    switch (out.kind) {
    case Kind::choice: return form == Form::rows ? "Words" : literal(out.words);
    case Kind::series: return "Numbers";
    default: return form == Form::rows ? "Numbers" : "float";
    }
}

/// A choice of one digit's words may be given as a number.
std::string input_type(const InputInfo& in, Form form)
{
    std::string type = in.kind == Kind::choice   ? literal(in.words) + " | str | float"
                       : in.kind == Kind::series ? "Series"
                       : form == Form::one       ? "Quantity"
                       : form == Form::rows      ? "Column"
                       : form == Form::columns   ? "Column | _Column"
                                                 : "Column | _Column | _Pint";
    return in.has_default ? type + " | None" : type;
}

void stub_class(std::string& to, const FunctionInfo& f, Form form)
{
    put(to, "class {}{}(NamedTuple{}):\n", prefix(form), std::string(f.type_name),
        form == Form::columns ? ", Generic[_Column]" : "");
    for (const ResultInfo& out : f.results) put(to, "    {}: {}\n", out.full_name, result_type(out, form));
    put(to, "\n");
}

void stub_function(std::string& to, const FunctionInfo& f, Form form)
{
    put(to, "def {}(", f.name);
    for (std::size_t i = 0; i < f.inputs.size(); ++i)
        put(to, "{}\n    {}: {}{}", i ? "," : "", f.inputs[i].full_name, input_type(f.inputs[i], form),
            f.inputs[i].has_default ? " = None" : "");
    std::string type = result_type(f.results[0], form);
    if (f.results.size() > 1)
        type = formatted("{}{}{}", prefix(form), f.type_name,
                         form == Form::columns    ? "[_Column]"
                         : form == Form::measured ? "[Any]"
                                                  : "");
    put(to, ",\n) -> {}:", type);
    if (form != Form::one) {
        put(to, " ...\n");
        return;
    }
    std::string text = docstring(f);
    put(to, "\n    \"\"\"");
    for (bool first = true; !text.empty(); first = false) {
        const std::size_t end = std::min(text.find('\n'), text.size());
        put(to, "{}{}{}\n", first || end == 0 ? "" : "    ", escaped(std::string_view(text).substr(0, end)), "");
        text.erase(0, end + 1);
    }
    put(to, "    \"\"\"\n    ...\n");
}

constexpr std::string_view stub_head = R"(import enum
from decimal import Decimal
from fractions import Fraction
from typing import Any, Callable, Generic, Literal, NamedTuple, Sequence, TypeVar, overload

import dask.array
import dask.dataframe
import numpy as np
import pandas
import pint
import xarray
from numpy.typing import NDArray

from .answers import Sensitivity as Sensitivity, Uncertainty as Uncertainty
from .answers import Found as Found, find_function as find_function, refusal as refusal, sensitivity as sensitivity
from .answers import solutions as solutions, solve_for as solve_for, uncertainty as uncertainty
from .answers import uncertainty_shares as uncertainty_shares
from .answers import working as working, working_line as working_line

# A number in the unit that the input's name ends in, or a text with a unit. (Not whatever has __float__: an array has
# it too.)
Number = float | Fraction | Decimal | np.floating[Any] | np.integer[Any]
Quantity = Number | str
Numbers = NDArray[np.float64]
Words = NDArray[np.object_]
Column = Quantity | Sequence[Any] | NDArray[Any]
# The columns that come out as what they were; a masked array is an array.
_Column = TypeVar(
    "_Column",
    pandas.Series[Any],
    pandas.DataFrame,
    xarray.DataArray,
    xarray.Variable,
    dask.array.Array,
    dask.dataframe.Series,
)
# Where one of Pint's is among them a number comes out of numbers, an array of arrays, a column of columns.
_Pint = TypeVar("_Pint", bound=pint.Quantity[Any])
# The points of a curve.
Series = (
    Sequence[Number | str]
    | NDArray[Any]
    | pandas.Series[Any]
    | xarray.DataArray
    | xarray.Variable
    | dask.array.Array
    | dask.dataframe.Series
    | pint.Quantity[Any]
)
_Flags = TypeVar("_Flags")

__version__: str

class Status(enum.IntEnum):
)";

constexpr std::string_view stub_library = R"(
class Refused(ValueError):
    """An input that cannot be answered: which one, its value, what is permitted, and why."""

    message: str
    status: Status
    argument: int | None
    element: int | None
    value: float
    low: float
    high: float
    low_open: bool
    high_open: bool
    name: str
    unit: str
    refused_rows: int

class Rows(NamedTuple, Generic[_Flags]):
    results: Any
    refused: _Flags
    first: Refused | None

@overload
def rows(
    function: str | Callable[..., Any],
    /,
    *arguments: Column | None,
    out: Any = None,
    threads: int = 1,
    **named: Column | None,
) -> Rows[NDArray[np.bool_]]:
    """The array form that does not raise for a refused row: its results are NaN (None for a word)."""
    ...
@overload
def rows(
    function: str | Callable[..., Any], /, *arguments: Column | _Column | None, **named: Column | _Column | None
) -> Rows[_Column]: ...
@overload
def rows(
    function: str | Callable[..., Any],
    /,
    *arguments: Column | _Column | _Pint | None,
    **named: Column | _Column | _Pint | None,
) -> Rows[Any]: ...
@overload
def convert_unit(value: Number, from_unit: str, to_unit: str) -> float:
    """A number, or an array of them, from one unit to another of the same quantity."""
    ...
@overload
def convert_unit(value: Sequence[Any] | NDArray[Any], from_unit: str, to_unit: str) -> Numbers: ...
@overload
def quantity(value: str | Number, unit: str) -> float:
    """A text with a unit as a number in another unit of the same quantity; a number has that unit already.
    A list gives an array."""
    ...
@overload
def quantity(value: Sequence[Any] | NDArray[Any], unit: str) -> Numbers: ...
def read(function: str | Callable[..., Any], input: str, text: str) -> float:
    """A text as a number of that input, in the unit that the input's name ends in."""
    ...
def cutwater_version() -> str: ...
def version() -> str: ...
def interface() -> int: ...
def self_test() -> None:
    """Computes every worked example of the catalogue; raises Refused for the first that does not come out."""
    ...
def catalogue() -> dict[str, Any]:
    """All that the library knows of its functions and units; as a dictionary made from its JSON."""
    ...
def functions() -> tuple[str, ...]:
    """Every function's name, in the catalogue's order."""
    ...
)";

std::string stub()
{
    std::string text;
    put(text, "# {}.\n# mypy: disable-error-code=misc\n{}", made_by, stub_head);
    for (const StatusInfo& status : statuses()) put(text, "    {} = {}\n", status.name, status.value);
    text += stub_library;
    for (const Family* family : families()) {
        put(text, "\n# ---- {} ----\n\n", family->title);
        for (const FunctionInfo* f : family->functions) {
            bool column = false;
            for (const InputInfo& in : f->inputs) column = column || in.kind == Kind::quantity;
            const std::vector<Form> forms = f->rows && column
                                                ? std::vector{Form::one, Form::rows, Form::columns, Form::measured}
                                                : std::vector{Form::one};
            for (const Form form : forms)
                if (f->results.size() > 1 && form != Form::measured) stub_class(text, *f, form);
            for (const Form form : forms) {
                if (forms.size() > 1) put(text, "@overload\n");
                stub_function(text, *f, form);
            }
        }
    }
    return text;
}

std::string status_module()
{
    std::string text;
    put(text, "# {}.\nimport enum\n\n\nclass Status(enum.IntEnum):\n    \"\"\"Why a call was refused.\"\"\"\n\n",
        made_by);
    for (const StatusInfo& status : statuses()) put(text, "    {} = {}\n", status.name, status.value);
    return text;
}

std::string docstrings()
{
    std::string text;
    put(text, "// {}.\n// The first line is what inspect.signature() reads.\n", made_by);
    for (const Family* family : families())
        for (const FunctionInfo* f : family->functions)
            put(text, "\n%feature(\"docstring\") cutwater_door::{} \"{}\n--\n\n{}\";\n", f->name, signature(*f),
                escaped(docstring(*f)));
    return text;
}

std::vector<Product> python_stubs()
{
    return {{"python/__init__.pyi", stub()},
            {"python/status.py", status_module()},
            {"python/docstrings.i", docstrings()}};
}

const Registered registered(python_stubs);

}  // namespace
}  // namespace cutwater::generate
