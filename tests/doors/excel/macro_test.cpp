// What the macro module calls, with variants as Visual Basic makes them. What it must answer comes from the C API of
// the same DLL.
#include "expected.hpp"

#include <catch2/catch.hpp>

#include <windows.h>

#include <oleauto.h>  // after it

#include <cmath>
#include <limits>

using cutwater::test::golden_cases;
using cutwater::test::GoldenCase;
using play::Answer;

extern "C" __declspec(dllimport) std::int32_t cutwater_macro_call(const VARIANT* name, const VARIANT* given,
                                                                  VARIANT* answer, VARIANT* sentence);

namespace {

using namespace cutwater::excel;

/// A variant that frees what it holds.
struct Variant : VARIANT {
    Variant() : VARIANT{} {}
    Variant(Variant&& other) noexcept : VARIANT(other) { static_cast<VARIANT&>(other) = VARIANT{}; }
    Variant& operator=(Variant&& other) noexcept
    {
        VariantClear(this);
        static_cast<VARIANT&>(*this) = other;
        static_cast<VARIANT&>(other) = VARIANT{};
        return *this;
    }
    ~Variant() { VariantClear(this); }
};

Variant number(double value)
{
    Variant made;
    made.vt = VT_R8;
    made.dblVal = value;
    return made;
}

Variant text(const std::string& utf8)
{
    std::wstring units(utf8.size() + 1, L'\0');
    const int length = MultiByteToWideChar(CP_UTF8, 0, utf8.data(), static_cast<int>(utf8.size()), units.data(),
                                           static_cast<int>(units.size()));
    Variant made;
    made.vt = VT_BSTR;
    made.bstrVal = SysAllocStringLen(units.data(), static_cast<UINT>(utf8.empty() ? 0 : length));
    return made;
}

Variant of_type(VARTYPE type, SCODE code = 0)
{
    Variant made;
    made.vt = type;
    made.scode = code;
    return made;
}

Variant missing() { return of_type(VT_ERROR, DISP_E_PARAMNOTFOUND); }

/// As Array(…) makes it; the list's variants go into it.
Variant array(std::vector<Variant> list)
{
    SAFEARRAYBOUND bound{static_cast<ULONG>(list.size()), 0};
    Variant made;
    made.vt = VT_ARRAY | VT_VARIANT;
    made.parray = SafeArrayCreate(VT_VARIANT, 1, &bound);
    for (std::size_t i = 0; i < list.size(); ++i) {
        static_cast<VARIANT*>(made.parray->pvData)[i] = list[i];
        static_cast<VARIANT&>(list[i]) = VARIANT{};
    }
    return made;
}

/// As Dim … (lower To …) As Double makes it.
Variant doubles(const std::vector<double>& list, LONG lower)
{
    SAFEARRAYBOUND bound{static_cast<ULONG>(list.size()), lower};
    Variant made;
    made.vt = VT_ARRAY | VT_R8;
    made.parray = SafeArrayCreate(VT_R8, 1, &bound);
    std::copy(list.begin(), list.end(), static_cast<double*>(made.parray->pvData));
    return made;
}

/// As the Value of a range of one column, or of one row.
Variant range(const std::vector<double>& list, bool column)
{
    const auto count = static_cast<ULONG>(list.size());
    SAFEARRAYBOUND bounds[] = {{column ? count : 1, 1}, {column ? 1 : count, 1}};
    Variant made;
    made.vt = VT_ARRAY | VT_VARIANT;
    made.parray = SafeArrayCreate(VT_VARIANT, 2, bounds);
    for (ULONG i = 0; i < count; ++i) {
        LONG at[] = {column ? static_cast<LONG>(i + 1) : 1, column ? 1 : static_cast<LONG>(i + 1)};
        Variant cell = number(list[i]);
        SafeArrayPutElement(made.parray, at, &cell);
    }
    return made;
}

Variant argument(const cutwater::ListedArgument& listed, int way)
{
    switch (listed.kind) {
    case CUTWATER_NUMBER: return number(listed.number);
    case CUTWATER_TEXT: return text(listed.text);
    case CUTWATER_SERIES: return way == 0 ? doubles(listed.series, 1) : range(listed.series, way == 1);
    default: return way == 0 ? missing() : of_type(VT_EMPTY);
    }
}

Answer copied(const VARIANT& value)
{
    Answer made;
    switch (value.vt) {
    case VT_R8:
        made.type = number_type;
        made.number = value.dblVal;
        break;
    case VT_BSTR: {
        made.type = text_type;
        std::string bytes(4 * SysStringLen(value.bstrVal) + 1, '\0');
        const int length = WideCharToMultiByte(CP_UTF8, 0, value.bstrVal, static_cast<int>(SysStringLen(value.bstrVal)),
                                               bytes.data(), static_cast<int>(bytes.size()), nullptr, nullptr);
        made.text = bytes.substr(0, static_cast<std::size_t>(length));
        break;
    }
    case VT_ERROR:
        REQUIRE(value.scode == static_cast<SCODE>(0x800A07FA));  // CVErr(2042)
        made.type = error_type;
        made.error = not_available;
        break;
    default: {
        REQUIRE(value.vt == (VT_ARRAY | VT_VARIANT));
        REQUIRE(SafeArrayGetDim(value.parray) == 2);
        LONG first[2], last[2];
        for (UINT i = 0; i < 2; ++i) {
            SafeArrayGetLBound(value.parray, i + 1, first + i);
            SafeArrayGetUBound(value.parray, i + 1, last + i);
            REQUIRE(first[i] == 1);
        }
        made.type = block_type;
        made.rows = static_cast<std::size_t>(last[0]);
        made.columns = static_cast<std::size_t>(last[1]);
        for (LONG r = 1; r <= last[0]; ++r)
            for (LONG c = 1; c <= last[1]; ++c) {
                LONG at[] = {r, c};
                Variant cell;
                SafeArrayGetElement(value.parray, at, &cell);
                made.cells.push_back(copied(cell));
            }
    }
    }
    return made;
}

struct Told {
    std::int32_t status;
    Answer answer;
    std::string sentence;
};

Told call(const std::string& function, std::vector<Variant> list)
{
    const Variant name = text(function);
    const Variant given = array(std::move(list));
    Variant by_reference;  // as a parameter of a Basic procedure reaches a library
    by_reference.vt = VT_BYREF | VT_VARIANT;
    by_reference.pvarVal = const_cast<Variant*>(&given);
    Variant answer = text("what was there before");
    Variant sentence;
    Told told{cutwater_macro_call(&name, &by_reference, &answer, &sentence), {}, {}};
    by_reference.vt = VT_EMPTY;
    if (told.status == CUTWATER_OK) {
        told.answer = copied(answer);
        CHECK(sentence.vt == VT_EMPTY);
    } else {
        CHECK(copied(answer).text == "what was there before");
        told.sentence = copied(sentence).text;
    }
    return told;
}

std::vector<Variant> npsh(Variant surface)
{
    std::vector<Variant> list;
    list.push_back(std::move(surface));
    for (const double x : {0.0234, 998.2, 2.0, 0.5}) list.push_back(number(x));
    return list;
}

}  // namespace

TEST_CASE("the golden files through the macro module's call", "[macro]")
{
    std::size_t answered = 0;
    std::size_t refused = 0;
    for (const GoldenCase& golden : golden_cases()) {
        INFO(golden.where << " " << golden.call);
        const play::Asked expected = play::asked_of_library(golden);
        for (int way = 0; way < 3; ++way) {
            std::vector<Variant> list;
            for (const auto& listed : golden.arguments) list.push_back(argument(listed, way));
            const Told told = call(golden.function, std::move(list));
            CHECK(told.status == expected.status);
            if (told.status == CUTWATER_OK)
                CHECK(play::same_cells(told.answer, expected.answer));
            else
                CHECK(told.sentence == expected.refusal.message);
        }
        ++(expected.status == CUTWATER_OK ? answered : refused);
    }
    CHECK(answered > 500);
    CHECK(refused > 100);
}

TEST_CASE("numbers of every type of Visual Basic's, by value and by reference", "[macro]")
{
    const double expected = call("npsh_available", npsh(number(2))).answer.number;
    const auto gives = [&](Variant surface) {
        CHECK(call("npsh_available", npsh(std::move(surface))).answer.number == expected);
    };
    for (const VARTYPE type : {VT_I1, VT_UI1, VT_I2, VT_UI2, VT_I4, VT_UI4, VT_I8, VT_UI8, VT_INT, VT_UINT}) {
        Variant made = of_type(type);
        made.llVal = 2;
        gives(std::move(made));
    }
    Variant single = of_type(VT_R4);
    single.fltVal = 2;
    gives(std::move(single));
    Variant currency = of_type(VT_CY);
    currency.cyVal.int64 = 20000;
    gives(std::move(currency));
    Variant decimal;
    DECIMAL two{};
    two.Lo64 = 20;
    two.scale = 1;
    decimal.decVal = two;
    decimal.vt = VT_DECIMAL;
    gives(std::move(decimal));
    gives(text("2 bara"));
    double there = 2;
    Variant reference = of_type(VT_BYREF | VT_R8);
    reference.pdblVal = &there;
    gives(std::move(reference));
    CHECK(call("NPSH_Available", npsh(number(2))).answer.number == expected);
    CHECK(call("npsh_available", npsh(range({2}, true))).answer.number == expected);
}

TEST_CASE("what is no argument is refused, and the sentence says what was given", "[macro]")
{
    const auto refused = [](Variant surface) {
        const Told told = call("npsh_available", npsh(std::move(surface)));
        CHECK(told.status != CUTWATER_OK);
        CHECK(told.sentence.find("npsh_available: surface_pressure_bara") == 0);
        return told.sentence;
    };
    refused(of_type(VT_EMPTY));
    refused(missing());
    refused(text("1.013 barg"));
    CHECK(refused(of_type(VT_BOOL, -1)).find("true or false") != std::string::npos);
    CHECK(refused(of_type(VT_DATE)).find("a date") != std::string::npos);
    CHECK(refused(of_type(VT_NULL)).find("Null") != std::string::npos);
    CHECK(refused(of_type(VT_DISPATCH)).find("an object") != std::string::npos);
    CHECK(refused(of_type(VT_ERROR, static_cast<SCODE>(0x800A07FA))).find("an error of the sheet's own") !=
          std::string::npos);
    refused(doubles({1, 2}, 0));
    refused(number(std::numeric_limits<double>::quiet_NaN()));
    std::vector<Variant> none;
    Variant unset = of_type(VT_ARRAY | VT_R8);  // an array without its ReDim
    none.push_back(std::move(unset));
    none.push_back(doubles({40, 38}, 0));
    none.push_back(number(1));
    CHECK(call("curve_value", std::move(none)).status != CUTWATER_OK);
    CHECK(call("no_such_function", {}).sentence.find("no_such_function") != std::string::npos);
    CHECK(call("", {}).status == CUTWATER_UNKNOWN_FUNCTION);
    CHECK(call("npsh_available", {}).status == CUTWATER_MISSING);
    Variant answer;
    CHECK(cutwater_macro_call(nullptr, nullptr, &answer, nullptr) == CUTWATER_MISSING);
    CHECK(cutwater_macro_call(&answer, &answer, &answer, &answer) == CUTWATER_UNKNOWN_FUNCTION);
}

TEST_CASE("arrays of every kind that a macro has for a curve", "[macro]")
{
    const auto value = [](Variant flows, Variant heads) {
        std::vector<Variant> list;
        list.push_back(std::move(flows));
        list.push_back(std::move(heads));
        list.push_back(number(75));
        return call("curve_value", std::move(list));
    };
    const double expected = value(doubles({0, 50, 100}, 0), doubles({40, 38, 30}, 0)).answer.number;
    CHECK(expected < 38);
    CHECK(expected > 30);
    CHECK(value(doubles({0, 50, 100}, -5), range({40, 38, 30}, true)).answer.number == expected);
    SAFEARRAYBOUND bound{3, 1};
    Variant bytes = of_type(VT_ARRAY | VT_UI1);
    bytes.parray = SafeArrayCreate(VT_UI1, 1, &bound);
    for (const unsigned i : {0U, 1U, 2U})
        static_cast<unsigned char*>(bytes.parray->pvData)[i] = static_cast<unsigned char>(50 * i);
    Variant money = of_type(VT_ARRAY | VT_CY);
    money.parray = SafeArrayCreate(VT_CY, 1, &bound);
    for (const unsigned i : {0U, 1U, 2U})
        static_cast<CY*>(money.parray->pvData)[i].int64 = 10000 * (i == 0 ? 40 : i == 1 ? 38 : 30);
    CHECK(value(std::move(bytes), std::move(money)).answer.number == expected);

    Variant flows = doubles({0, 50, 100}, 1);  // a Dim … As Double that is passed on
    Variant passed = of_type(VT_BYREF | VT_ARRAY | VT_R8);
    passed.pparray = &flows.parray;
    double head[] = {40, 38, 30};
    std::vector<Variant> heads;  // what a ParamArray holds
    for (double& h : head) {
        heads.push_back(of_type(VT_BYREF | VT_R8));
        heads.back().pdblVal = &h;
    }
    CHECK(value(std::move(passed), array(std::move(heads))).answer.number == expected);

    std::vector<Variant> nested;
    for (int i = 0; i < 3; ++i) nested.push_back(range({40.0 - i}, true));
    CHECK(value(doubles({0, 50, 100}, 0), array(std::move(nested))).sentence.find("curve_value: ") == 0);
    std::vector<Variant> objects;
    for (int i = 0; i < 3; ++i) objects.push_back(of_type(VT_DISPATCH));
    CHECK(value(array(std::move(objects)), doubles({40, 38, 30}, 0)).sentence.find("an object") != std::string::npos);
    SAFEARRAYBOUND block[] = {{2, 1}, {3, 1}};
    Variant square = of_type(VT_ARRAY | VT_R8);
    square.parray = SafeArrayCreate(VT_R8, 2, block);
    CHECK(value(std::move(square), doubles({40, 38, 30}, 0)).status != CUTWATER_OK);
}

TEST_CASE("texts with signs beyond the code page", "[macro]")
{
    const auto velocity = [](const Variant& flow) {
        std::vector<Variant> list;
        list.emplace_back();
        list.back().vt = VT_BSTR;
        list.back().bstrVal = SysAllocStringLen(flow.bstrVal, SysStringLen(flow.bstrVal));
        list.push_back(number(150));
        return call("velocity_head", std::move(list));
    };
    const double expected = velocity(text("100 m3/h")).answer.number;
    CHECK(velocity(text("100 m\u00B3/h")).answer.number == expected);
    CHECK(velocity(text("100\u00A0m\u00B3/h")).answer.number == expected);
    CHECK(velocity(text("100,0 m3/h")).answer.number == expected);  // as where Windows is set to a comma
    for (const char* wrong : {"100 \u0412\u0442", "\U0001F4A7", "1\u202E00 m3/h"}) {
        const Told told = velocity(text(wrong));
        CHECK(told.sentence.find("velocity_head: flow_m3h") == 0);
        CHECK(told.sentence.find('?') == std::string::npos);
    }
    Variant broken = text("100 m3/h");
    broken.bstrVal[3] = 0xD800;  // half of a pair
    CHECK(velocity(broken).status != CUTWATER_OK);
    broken.bstrVal[3] = 0;
    CHECK(velocity(broken).status != CUTWATER_OK);
    const Told endless = velocity(text(std::string(40000, '9') + " m3/h"));
    CHECK(endless.status != CUTWATER_OK);
    CHECK(endless.sentence.size() < 512);
}

TEST_CASE("the questions through the macro module's call", "[macro]")
{
    std::vector<Variant> list;
    list.push_back(text("440 US gpm"));
    list.push_back(text("m3/h"));
    CHECK(call("quantity", std::move(list)).answer.number ==
          Approx(440 * 0.003785411784 * 60).epsilon(1e-15));  // NIST SP 811
    list.clear();
    for (const char* word : {"velocity_head", "flow"}) list.push_back(text(word));
    list.push_back(of_type(VT_EMPTY));
    list.push_back(text("1 m"));
    list.push_back(of_type(VT_EMPTY));
    list.push_back(number(150));
    const Told flow = call("solve_for", std::move(list));
    REQUIRE(flow.status == CUTWATER_OK);
    list.clear();
    list.push_back(number(flow.answer.number));
    list.push_back(number(150));
    CHECK(call("velocity_head", std::move(list)).answer.number == Approx(1).epsilon(1e-12));
    list = npsh(number(-1));
    list.insert(list.begin(), text("npsh_available"));
    CHECK(call("refusal", std::move(list)).answer.text.find("-1 bara") != std::string::npos);
    list = npsh(number(1));
    list.insert(list.begin(), text("npsh_available"));
    CHECK(call("working", std::move(list)).answer.text.find("NPSHA") != std::string::npos);
    list.clear();
    list.push_back(text("suction safe"));
    CHECK(call("find_function", std::move(list)).answer.columns == 2);
    CHECK(call("cutwater_version", {}).answer.text == cutwater_version());
}
