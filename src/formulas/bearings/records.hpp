// Every record of the family.
#pragma once

#include "formulas/bearings/equivalent.hpp"
#include "formulas/bearings/life.hpp"
#include "formulas/bearings/modified.hpp"
#include "formulas/bearings/running.hpp"
#include "formulas/bearings/static.hpp"
#include "formulas/bearings/temperature.hpp"
