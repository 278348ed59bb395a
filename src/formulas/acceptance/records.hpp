// Every record of the family.
#pragma once

#include "formulas/acceptance/measurement.hpp"
#include "formulas/acceptance/tolerances.hpp"
#include "formulas/acceptance/verdict.hpp"
