// What a name of this door calls: a function or a question; and how SQL's NULL goes through it.
#pragma once

#include "host.hpp"

#include "common/questions.hpp"

#include <span>
#include <string>
#include <vector>

namespace cutwater_door {

struct Callee {
    std::string name;
    const Function* function = nullptr;  // null for a question
    std::int32_t question = -1;
    bool checked = false;  // a refusal is a row of its own beside NULL, no error
    std::vector<std::string> results;
    std::vector<std::string> arguments;
    std::vector<bool> required;  // an argument each: NULL makes NULL of the whole
};

/// Every function, then every question; they live as long as the program.
const std::vector<Callee>& callees();
/// The same functions once more, under NAME_checked.
const std::vector<Callee>& checked_callees();

/// Whether NULL stands where a value must.
bool null_given(const Callee& callee, std::span<const Given> given);

/// The question's answer. `null` is set where a function asked about lacks a value because NULL was given for it.
cutwater_status ask(const Callee& callee, std::span<const Given> given, Grid& grid, bool& null,
                    cutwater_refusal& refusal);

/// The name of the argument to blame; empty for none.
std::string blamed(const Callee& callee, const cutwater_refusal& refusal);

}  // namespace cutwater_door
