// Every record of the family.
#pragma once

#include "formulas/system/friction.hpp"
#include "formulas/system/margin.hpp"
#include "formulas/system/pipe.hpp"
#include "formulas/system/resistance.hpp"
#include "formulas/system/suction.hpp"
#include "formulas/system/sump.hpp"
#include "formulas/system/surge.hpp"
