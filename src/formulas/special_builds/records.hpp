// Every record of the family.
#pragma once

#include "formulas/special_builds/other.hpp"
#include "formulas/special_builds/vertical.hpp"
