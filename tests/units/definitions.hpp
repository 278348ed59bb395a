// Every unit as UDUNITS-2 reads its definition; the list stands in udunits.cpp.
#pragma once

#include <cutwater/unit_table.hpp>

#include <udunits2.h>

#include <map>
#include <memory>
#include <string>

namespace cutwater::tests {

struct Definitions {
    const QuantityInfo* quantity;
    const char* si;
    std::map<std::string, const char*> units;
};

/// Null for a quantity that the list does not have.
const Definitions* definitions_of(const QuantityInfo* quantity);

/// Conventions that no general library holds.
bool is_convention(const QuantityInfo* quantity);

struct System {
    System();
    ut_unit* parse(const char* text) const { return ut_parse(system.get(), text, UT_UTF8); }
    std::unique_ptr<ut_system, void (*)(ut_system*)> system{nullptr, ut_free_system};
};

double by_udunits(const System& system, const char* from, const char* to, double x);

}  // namespace cutwater::tests
