// Every record of the family.
#pragma once

#include "formulas/duty/at_speed.hpp"
#include "formulas/duty/at_trim.hpp"
#include "formulas/duty/gas.hpp"
#include "formulas/duty/line.hpp"
#include "formulas/duty/npsh_test.hpp"
#include "formulas/duty/offers.hpp"
#include "formulas/duty/pressure_decay.hpp"
#include "formulas/duty/profile_points.hpp"
#include "formulas/duty/starting.hpp"
#include "formulas/duty/suction_limit.hpp"
#include "formulas/duty/system_points.hpp"
#include "formulas/duty/vessel_decay.hpp"
#include "formulas/duty/whole.hpp"
