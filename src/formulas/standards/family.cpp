#include "catalogue/erased.hpp"
#include "formulas/standards/records.hpp"

namespace cutwater {

using namespace formulas;

constexpr const FunctionInfo* standards_functions[] = {
    entry<standard_limit_record>,
    entry<standard_check_record>,
};

extern const Family standards_family;  // a const without this would stay inside this file
constinit const Family standards_family{"standards", "What the standards ask", 170, standards_functions};

}  // namespace cutwater
