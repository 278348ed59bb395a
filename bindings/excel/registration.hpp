// What Excel is told of each function: made from what the library says of itself, within Excel's limits.
#pragma once

#include <string>
#include <vector>

namespace cutwater::excel {

inline constexpr std::size_t longest_told = 255;  // of any text
inline constexpr std::size_t most_arguments = 255;

struct Registration {
    std::string procedure;  // as this file exports it
    std::string types;      // one Q an argument after the answer's own, and $: safe in any thread
    std::string name;       // in a cell
    std::string arguments;  // their names, parted by commas
    std::string category;
    std::string help;
    std::vector<std::string> argument_help;
};

/// A function of the catalogue or a question each.
std::vector<Registration> registrations();

/// The name under which LibreOffice Calc writes the same call into a workbook of Excel's.
std::string calc_name(const std::string& name);

}  // namespace cutwater::excel
