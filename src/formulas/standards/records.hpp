// Every record of the family.
#pragma once

#include "formulas/standards/limit.hpp"
