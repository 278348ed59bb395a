// Every record of the family.
#pragma once

#include "formulas/power/cube_law.hpp"
#include "formulas/power/energy.hpp"
#include "formulas/power/hydraulic.hpp"
#include "formulas/power/money.hpp"
#include "formulas/power/motor.hpp"
#include "formulas/power/motor_efficiency.hpp"
#include "formulas/power/motor_law.hpp"
#include "formulas/power/motor_rating.hpp"
#include "formulas/power/profile.hpp"
#include "formulas/power/saving.hpp"
