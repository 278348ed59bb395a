// Every record of the family.
#pragma once

#include "formulas/liquid/density.hpp"
#include "formulas/liquid/pressure.hpp"
#include "formulas/liquid/saybolt.hpp"
#include "formulas/liquid/slurry.hpp"
#include "formulas/liquid/vapour_pressure.hpp"
#include "formulas/liquid/viscosity_temperature.hpp"
#include "formulas/liquid/water.hpp"
#include "formulas/liquid/water_boiling.hpp"
