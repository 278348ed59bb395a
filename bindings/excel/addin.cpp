// What Excel calls when it loads and unloads the add-in.
#include "answer.hpp"
#include "registration.hpp"

#include <windows.h>

#include <deque>

#define CUTWATER_EXCEL_CALLS extern "C" __declspec(dllexport)

namespace cutwater::excel {
namespace {

CallBack excel_entry()
{
    return reinterpret_cast<CallBack>(
        reinterpret_cast<void*>(GetProcAddress(GetModuleHandleW(nullptr), "MdCallBack12")));
}

/// Values given to Excel for one call.
class Given {
public:
    Given& text(const std::string& text)
    {
        std::u16string counted = u'\0' + utf16(text);
        counted[0] = static_cast<char16_t>(counted.size() - 1);
        texts_.push_back(std::move(counted));
        Value& value = add(text_type);
        value.text = texts_.back().data();
        return *this;
    }
    Given& number(double number)
    {
        add(number_type).number = number;
        return *this;
    }
    Given& missing()
    {
        add(missing_type);
        return *this;
    }
    Given& copy(const Value& value)
    {
        add(value.type) = value;
        return *this;
    }
    bool ask(Ask what, Value* result) const
    {
        const CallBack excel = excel_entry();
        return excel && excel(what, static_cast<int>(pointers_.size()), pointers_.data(), result) == 0;
    }

private:
    Value& add(std::uint32_t type)
    {
        Value& value = values_.emplace_back();
        value.type = type;
        pointers_.push_back(&value);
        return value;
    }

    std::deque<Value> values_;
    std::deque<std::u16string> texts_;
    std::vector<const Value*> pointers_;
};

/// This file's name, which Excel keeps and is given back.
class OwnFile {
public:
    OwnFile() { Given().ask(own_file_name, &name_); }
    ~OwnFile() { Given().copy(name_).ask(free_value, nullptr); }
    OwnFile(const OwnFile&) = delete;
    OwnFile& operator=(const OwnFile&) = delete;
    const Value& name() const { return name_; }

private:
    Value name_{};
};

struct Registered {
    std::string name;
    double number;  // by which Excel knows it
};
std::vector<Registered> registered;

enum class Shown { in_wizard, hidden };

bool register_one(const Value& file, const Registration& r, const std::string& name, Shown shown)
{
    Given given;
    given.copy(file).text(r.procedure).text(r.types).text(name);
    if (shown == Shown::in_wizard) {
        given.text(r.arguments).number(1).text(r.category).missing().missing().text(r.help);
        for (const std::string& help : r.argument_help) given.text(help);
        given.text("");  // without it Excel may cut the last help's end off
    } else {
        given.missing().number(0);
    }
    Value number{};
    if (!given.ask(register_function, &number) || (number.type & type_bits) != number_type) return false;
    registered.push_back({name, number.number});
    return true;
}

void unregister_all()
{
    for (const Registered& r : registered) {
        Value done{};
        Given().number(r.number).ask(unregister_function, &done);
        Given().text(r.name).ask(set_name, &done);  // with no value: forgotten
    }
    registered.clear();
}

void register_all()
{
    unregister_all();
    const OwnFile file;
    std::vector<std::string> failed;
    for (const Registration& r : registrations()) {
        if (!register_one(file.name(), r, r.name, Shown::in_wizard)) failed.push_back(r.name);
        if (!register_one(file.name(), r, calc_name(r.name), Shown::hidden)) failed.push_back(calc_name(r.name));
    }
    if (failed.empty()) return;
    Value done{};
    Given()
        .text("Cutwater: Excel did not take " + std::to_string(failed.size()) + " functions, the first is " +
              failed.front() + ".")
        .number(2)
        .ask(show_alert, &done);
}

}  // namespace
}  // namespace cutwater::excel

using cutwater::excel::Value;

CUTWATER_EXCEL_CALLS int xlAutoOpen()
{
    try {
        cutwater::excel::register_all();
    } catch (...) {  // no memory
        return 0;
    }
    return 1;
}

/// Excel may still be kept open after this, so the functions stay.
CUTWATER_EXCEL_CALLS int xlAutoClose() { return 1; }

/// The add-in was taken off the list of add-ins.
CUTWATER_EXCEL_CALLS int xlAutoRemove()
{
    try {
        cutwater::excel::unregister_all();
    } catch (...) {
        return 0;
    }
    return 1;
}

/// What the list of add-ins shows; Excel asks with 1.
CUTWATER_EXCEL_CALLS Value* xlAddInManagerInfo12(const Value* action) noexcept
{
    using namespace cutwater::excel;
    try {
        if (CellHost::kind(action) != cutwater_door::Kind::number || CellHost::number(action) != 1)
            return error_answer(value_error);
        return answer(
            cutwater_door::Grid::row({cutwater_door::Cell(std::string("Cutwater: checked pump calculations"))}));
    } catch (...) {
        return error_answer(value_error);
    }
}

CUTWATER_EXCEL_CALLS void xlAutoFree12(Value* answer) noexcept { cutwater::excel::release(answer); }
