// Every record of the family.
#pragma once

#include "formulas/power/hydraulic.hpp"
#include "formulas/power/motor_rating.hpp"
