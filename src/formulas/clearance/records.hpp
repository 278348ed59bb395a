// Running clearance, wear and wall (family 11).
#pragma once

#include "formulas/clearance/adjustment.hpp"
#include "formulas/clearance/corrosion.hpp"
#include "formulas/clearance/field_check.hpp"
#include "formulas/clearance/payback.hpp"
#include "formulas/clearance/performance.hpp"
#include "formulas/clearance/ring_leakage.hpp"
#include "formulas/clearance/vane_edge.hpp"
