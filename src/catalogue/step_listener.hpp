// Who hears of a call's course: a formula's intermediate results, and the relation that stopped it.
#pragma once

#include <cstddef>

namespace cutwater {

struct StepListener {
    virtual void step(const char* symbol, const char* equation, double value, const char* unit) = 0;
    /// The relation, by its position in the record, that did not hold: the call ends there.
    virtual void broken(std::size_t relation) = 0;

protected:
    ~StepListener() = default;
};

}  // namespace cutwater
