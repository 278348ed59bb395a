// Every record of the family.
#pragma once

#include "formulas/surfaces/explosive_atmosphere.hpp"
#include "formulas/surfaces/heat_loss.hpp"
#include "formulas/surfaces/heating.hpp"
