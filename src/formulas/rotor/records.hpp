// Every record of the family.
#pragma once

#include "formulas/rotor/axial.hpp"
#include "formulas/rotor/balancing.hpp"
#include "formulas/rotor/critical.hpp"
#include "formulas/rotor/deflection.hpp"
#include "formulas/rotor/drive.hpp"
#include "formulas/rotor/radial.hpp"
#include "formulas/rotor/shroud.hpp"
#include "formulas/rotor/strength.hpp"
#include "formulas/rotor/vibration.hpp"
