// Every record of the family.
#pragma once

#include "formulas/acceptance/margins.hpp"
#include "formulas/acceptance/measurement.hpp"
#include "formulas/acceptance/test_points.hpp"
#include "formulas/acceptance/tolerances.hpp"
#include "formulas/acceptance/verdict.hpp"
