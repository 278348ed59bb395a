// An equation with numbers for its symbols, where that can be done safely.
#pragma once

#include <span>
#include <string>
#include <string_view>

namespace cutwater {

struct Replacement {
    std::string_view symbol;
    std::string_view text;  // number and unit; empty for a symbol that stays
};

/// The clauses of the equation that are formulas, numbers put in; empty when no symbol could be replaced. A clause that
/// reads as prose, or that gives a constant, is left out: a letter there need not be the symbol. results: symbols that
/// are no inputs; one that is both makes its clauses ambiguous, and nothing is replaced.
std::string substituted(std::string_view equation, std::span<const Replacement> inputs,
                        std::span<const std::string_view> results);

}  // namespace cutwater
