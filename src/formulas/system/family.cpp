#include "catalogue/erased.hpp"
#include "formulas/system/records.hpp"

namespace cutwater {

using namespace formulas;

constexpr const FunctionInfo* system_functions[] = {
    entry<pipe_velocity_record>,
    entry<velocity_head_record>,
    entry<npsh_available_record>,
    entry<npsh_available_from_gauge_record>,
};

extern const Family system_family;  // a const without this would stay inside this file
constinit const Family system_family{"system", "System and suction", system_functions};

}  // namespace cutwater
