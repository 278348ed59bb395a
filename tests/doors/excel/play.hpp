// Plays Excel's side of the add-in's interface: exports the entry point that add-ins look for, loads one, keeps what it
// registers, and calls its functions with cells' values.
#pragma once

#include "excel.hpp"

#include <atomic>
#include <map>
#include <string>
#include <vector>

namespace play {

using cutwater::excel::Value;

struct Registered {
    std::string module;
    std::string procedure;
    std::string types;
    std::string name;
    std::string arguments;
    double macro_type = 1;
    std::string category;
    std::string help;
    std::vector<std::string> argument_help;
    bool alive = true;
};

/// What Excel would remember, and what it was asked against its rules.
struct Memory {
    std::map<double, Registered> functions;  // by the number that the add-in was given
    std::vector<std::string> forgotten;      // names whose definitions were taken back
    std::vector<std::string> faults;
    int names_given = 0;  // texts of Excel's own that the add-in must hand back
    int names_returned = 0;
};
Memory& memory();

/// A value as a cell holds it, with all that it needs.
class Cell {
public:
    static Cell number(double number);
    static Cell text(const std::string& utf8);
    static Cell units(std::u16string units);  // UTF-16 as it is, right or wrong
    static Cell truth(bool truth);
    static Cell error(std::int32_t error);
    static Cell whole(std::int32_t whole);
    static Cell missing();
    static Cell nothing();
    static Cell of_type(std::uint32_t type);
    static Cell block(std::vector<Cell> cells, std::size_t rows, std::size_t columns);

    const Value& value() const;

private:
    mutable Value value_{};
    std::u16string units_;
    std::vector<Cell> cells_;
    mutable std::vector<Value> values_;
};

/// What came back, copied before it was handed back.
struct Answer {
    std::uint32_t type = 0;
    double number = 0;
    std::string text;
    std::int32_t error = 0;
    std::size_t rows = 0;
    std::size_t columns = 0;
    std::vector<Answer> cells;

    bool is_error(std::int32_t which) const;
    bool operator==(const Answer&) const = default;
};

class AddIn {
public:
    explicit AddIn(const std::string& path);
    ~AddIn();
    AddIn(const AddIn&) = delete;
    AddIn& operator=(const AddIn&) = delete;

    int open() const;
    int close() const;
    int remove() const;
    Answer manager_text(double action) const;
    /// By its name in a cell, under which it must be registered. Arguments up to those it takes; the rest are left out.
    Answer call(const std::string& name, const std::vector<Cell>& arguments) const;
    bool exports(const std::string& procedure) const;

private:
    void* module_ = nullptr;
    void* procedure(const char* name) const;
    Answer taken(Value* answer) const;
};

/// Of this program, in bytes.
std::size_t memory_in_use();

}  // namespace play
