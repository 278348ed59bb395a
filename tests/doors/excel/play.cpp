#include "play.hpp"

#include <windows.h>

#include <psapi.h>  // after it

#include <mutex>
#include <stdexcept>

namespace play {
namespace {

using namespace cutwater::excel;

std::string narrow(const char16_t* units, std::size_t length)
{
    std::string made(4 * length + 1, '\0');
    const int bytes = WideCharToMultiByte(CP_UTF8, 0, reinterpret_cast<const wchar_t*>(units), static_cast<int>(length),
                                          made.data(), static_cast<int>(made.size()), nullptr, nullptr);
    made.resize(length ? static_cast<std::size_t>(bytes) : 0);
    return made;
}

std::u16string wide(const std::string& text)
{
    std::u16string made(text.size() + 1, u'\0');
    const int units = MultiByteToWideChar(CP_UTF8, 0, text.data(), static_cast<int>(text.size()),
                                          reinterpret_cast<wchar_t*>(made.data()), static_cast<int>(made.size()));
    made.resize(text.empty() ? 0 : static_cast<std::size_t>(units));
    return made;
}

std::string text_of(const Value& value)
{
    return (value.type & type_bits) == text_type ? narrow(value.text + 1, value.text[0]) : std::string();
}

char16_t own_file[512];

void fault(const std::string& what) { memory().faults.push_back(what); }

void expect(bool holds, const std::string& what)
{
    if (!holds) fault(what);
}

/// Excel's limits, from its description of the call that registers a function.
void check_limits(const Registered& r)
{
    for (const std::string* text : {&r.procedure, &r.types, &r.name, &r.arguments, &r.category, &r.help})
        expect(text->size() <= 255, r.name + ": a text is longer than 255: " + *text);
    for (const std::string& help : r.argument_help)
        expect(help.size() <= 255, r.name + ": a help is longer than 255: " + help);
    expect(r.argument_help.size() <= 245, r.name + ": more helps than Excel takes");
}

int register_function_asked(int count, const Value* const* given, Value* result)
{
    const auto text = [&](int i) { return i < count ? text_of(*given[i]) : std::string(); };
    const auto type = [&](int i) { return i < count ? given[i]->type & type_bits : std::uint32_t{missing_type}; };
    Registered r{text(0), text(1), text(2), text(3), text(4), 1, text(6), text(9), {}, true};
    expect(count <= 255, r.name + ": more than 255 arguments of the call");
    for (int i = 0; i < 4; ++i) expect(type(i) == text_type, r.name + ": a needed text is missing");
    if (type(5) == number_type) r.macro_type = given[5]->number;
    for (int i = 10; i < count; ++i) {
        expect(type(i) == text_type, r.name + ": a help is no text");
        r.argument_help.push_back(text(i));
    }
    check_limits(r);
    for (const auto& [number, other] : memory().functions)
        expect(!other.alive || other.name != r.name, r.name + " is registered twice");
    *result = Value{};
    result->type = number_type;
    result->number = 1000 + static_cast<double>(memory().functions.size());
    memory().functions[result->number] = r;
    return 0;
}

int unregister_asked(int count, const Value* const* given, Value* result)
{
    const auto at = count == 1 ? memory().functions.find(given[0]->number) : memory().functions.end();
    if (at == memory().functions.end() || !at->second.alive) {
        fault("a function that is not registered was to be unregistered");
        return 2;
    }
    at->second.alive = false;
    *result = Value{};
    result->type = truth_type;
    result->truth = 1;
    return 0;
}

}  // namespace

Memory& memory()
{
    static Memory memory;
    return memory;
}

}  // namespace play

/// What an add-in finds in Excel's program file.
extern "C" __declspec(dllexport) int MdCallBack12(int ask, int count, const play::Value* const* given,
                                                  play::Value* result)
{
    using namespace play;
    static std::mutex one_at_a_time;
    const std::lock_guard lock(one_at_a_time);
    switch (ask) {
    case own_file_name:
        *result = Value{};
        result->type = text_type;
        result->text = own_file;
        ++memory().names_given;
        return 0;
    case free_value:
        for (int i = 0; i < count; ++i) {
            expect((given[i]->type & type_bits) == text_type && given[i]->text == own_file,
                   "what was handed back was never given");
            ++memory().names_returned;
        }
        return 0;
    case register_function: return register_function_asked(count, given, result);
    case unregister_function: return unregister_asked(count, given, result);
    case set_name:
        expect(count == 1 && (given[0]->type & type_bits) == text_type,
               "a name is to be forgotten, without a definition");
        memory().forgotten.push_back(text_of(*given[0]));
        *result = Value{};
        result->type = truth_type;
        return 0;
    case show_alert: fault("the add-in shows: " + (count ? text_of(*given[0]) : "")); return 0;
    default: fault("an unknown call, number " + std::to_string(ask)); return 4;
    }
}

namespace play {

Cell Cell::number(double number)
{
    Cell made = of_type(number_type);
    made.value_.number = number;
    return made;
}
Cell Cell::text(const std::string& utf8) { return units(wide(utf8)); }
Cell Cell::units(std::u16string units)
{
    Cell made = of_type(text_type);
    made.units_ = static_cast<char16_t>(units.size()) + units;
    return made;
}
Cell Cell::truth(bool truth)
{
    Cell made = of_type(truth_type);
    made.value_.truth = truth;
    return made;
}
Cell Cell::error(std::int32_t error)
{
    Cell made = of_type(error_type);
    made.value_.error = error;
    return made;
}
Cell Cell::whole(std::int32_t whole)
{
    Cell made = of_type(whole_type);
    made.value_.whole = whole;
    return made;
}
Cell Cell::missing() { return of_type(missing_type); }
Cell Cell::nothing() { return of_type(nothing_type); }
Cell Cell::of_type(std::uint32_t type)
{
    Cell made;
    made.value_.type = type;
    return made;
}
Cell Cell::block(std::vector<Cell> cells, std::size_t rows, std::size_t columns)
{
    Cell made = of_type(block_type);
    made.value_.block = {nullptr, static_cast<std::int32_t>(rows), static_cast<std::int32_t>(columns)};
    made.cells_ = std::move(cells);
    return made;
}

const Value& Cell::value() const
{
    if (value_.type == text_type) value_.text = const_cast<char16_t*>(units_.data());
    if (value_.type == block_type) {
        values_.clear();
        for (const Cell& cell : cells_) values_.push_back(cell.value());
        value_.block.cells = values_.data();
    }
    return value_;
}

bool Answer::is_error(std::int32_t which) const { return type == error_type && error == which; }

AddIn::AddIn(const std::string& path)
{
    module_ = LoadLibraryA(path.c_str());
    if (!module_) throw std::runtime_error("cannot load " + path + ": error " + std::to_string(GetLastError()));
    const std::u16string name = wide(path);
    own_file[0] = static_cast<char16_t>(name.size());
    name.copy(own_file + 1, std::size(own_file) - 1);
}

AddIn::~AddIn() { FreeLibrary(static_cast<HMODULE>(module_)); }

void* AddIn::procedure(const char* name) const
{
    return reinterpret_cast<void*>(GetProcAddress(static_cast<HMODULE>(module_), name));
}

bool AddIn::exports(const std::string& name) const { return procedure(name.c_str()); }

int AddIn::open() const { return reinterpret_cast<int (*)()>(procedure("xlAutoOpen"))(); }
int AddIn::close() const { return reinterpret_cast<int (*)()>(procedure("xlAutoClose"))(); }
int AddIn::remove() const { return reinterpret_cast<int (*)()>(procedure("xlAutoRemove"))(); }

Answer AddIn::manager_text(double action) const
{
    const Cell cell = Cell::number(action);
    return taken(reinterpret_cast<Value* (*)(const Value*)>(procedure("xlAddInManagerInfo12"))(&cell.value()));
}

namespace {

Answer copied(const Value& value)
{
    Answer made;
    made.type = value.type & type_bits;
    switch (made.type) {
    case number_type: made.number = value.number; break;
    case text_type: made.text = text_of(value); break;
    case error_type: made.error = value.error; break;
    case block_type:
        made.rows = static_cast<std::size_t>(value.block.rows);
        made.columns = static_cast<std::size_t>(value.block.columns);
        for (std::size_t i = 0; i < made.rows * made.columns; ++i) made.cells.push_back(copied(value.block.cells[i]));
        break;
    default: break;
    }
    return made;
}

const Registered& registered(const std::string& name)
{
    for (const auto& [number, r] : memory().functions)
        if (r.alive && r.name == name) return r;
    throw std::runtime_error(name + " is not registered");
}

constexpr std::size_t most = 48;

/// A function of the Windows convention takes what it knows and leaves the rest where it lies.
template <std::size_t... I>
Value* call_with(void* procedure, const Value* const (&given)[most], std::index_sequence<I...>)
{
    using Function = Value* (*)(decltype((void)I, static_cast<const Value*>(nullptr))...);
    return reinterpret_cast<Function>(procedure)(given[I]...);
}

}  // namespace

Answer AddIn::taken(Value* answer) const
{
    if (!answer) throw std::runtime_error("an answer is a null pointer");
    Answer made = copied(*answer);
    if (answer->type & we_free) reinterpret_cast<void (*)(Value*)>(procedure("xlAutoFree12"))(answer);
    return made;
}

Answer AddIn::call(const std::string& name, const std::vector<Cell>& arguments) const
{
    const Registered& r = registered(name);
    const std::size_t takes = r.types.size() - 2;
    if (arguments.size() > takes || takes > most)
        throw std::runtime_error(name + ": Excel would not let that many be given");
    static const Cell left_out = Cell::missing();
    static const Value poison{{.room = {0xdeaddeaddeaddead, 0xdeaddeaddeaddead, 0xdeaddeaddeaddead}}, 0xfff};
    const Value* given[most];
    for (std::size_t i = 0; i < most; ++i)
        given[i] = i < arguments.size() ? &arguments[i].value() : i < takes ? &left_out.value() : &poison;
    return taken(call_with(procedure(r.procedure.c_str()), given, std::make_index_sequence<most>()));
}

std::size_t memory_in_use()
{
    PROCESS_MEMORY_COUNTERS counters{};
    if (!GetProcessMemoryInfo(GetCurrentProcess(), &counters, sizeof counters))
        throw std::runtime_error("memory is not told");
    return counters.PagefileUsage;
}

}  // namespace play
