// Every record of the family.
#pragma once

#include "formulas/containment/casing_pressure.hpp"
#include "formulas/containment/flange.hpp"
#include "formulas/containment/nozzle_loads.hpp"
#include "formulas/containment/trapped.hpp"
#include "formulas/containment/wall.hpp"
