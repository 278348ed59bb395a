// Every record of the family.
#pragma once

#include "formulas/viscous/parameter.hpp"
#include "formulas/viscous/performance.hpp"
#include "formulas/viscous/ratios.hpp"
