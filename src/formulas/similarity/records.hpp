// Every record of the family.
#pragma once

#include "formulas/similarity/affinity.hpp"
#include "formulas/similarity/coefficients.hpp"
#include "formulas/similarity/efficiency.hpp"
#include "formulas/similarity/small_trim.hpp"
#include "formulas/similarity/specific_speed.hpp"
#include "formulas/similarity/trim.hpp"
