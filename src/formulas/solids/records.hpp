// Every record of the family.
#pragma once

#include "formulas/solids/pipe_friction.hpp"
#include "formulas/solids/settling.hpp"
#include "formulas/solids/slurry.hpp"
#include "formulas/solids/slurry_curve.hpp"
