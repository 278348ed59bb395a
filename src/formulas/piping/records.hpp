// Every record of the family.
#pragma once

#include "formulas/piping/changes.hpp"
#include "formulas/piping/fittings.hpp"
#include "formulas/piping/hazen_williams.hpp"
#include "formulas/piping/nominal.hpp"
#include "formulas/piping/static_head.hpp"
