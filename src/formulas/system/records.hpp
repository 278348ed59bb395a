// Every record of the family.
#pragma once

#include "formulas/system/pipe.hpp"
#include "formulas/system/suction.hpp"
