// Every record of the family.
#pragma once

#include "formulas/curves/duty.hpp"
#include "formulas/curves/value.hpp"
