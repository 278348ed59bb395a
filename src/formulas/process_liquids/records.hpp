// Every record of the family.
#pragma once

#include "formulas/process_liquids/glycol.hpp"
#include "formulas/process_liquids/sea_water.hpp"
#include "formulas/process_liquids/solutions.hpp"
#include "formulas/process_liquids/strong_acid.hpp"
#include "formulas/process_liquids/strong_lye.hpp"
#include "formulas/process_liquids/suspension.hpp"
