// Who hears a formula's intermediate results.
#pragma once

namespace cutwater {

struct StepListener {
    virtual void step(const char* symbol, const char* equation, double value, const char* unit) = 0;

protected:
    ~StepListener() = default;
};

}  // namespace cutwater
