// Every record of the family.
#pragma once

#include "formulas/least_flow/bypass.hpp"
#include "formulas/least_flow/closed_valve.hpp"
#include "formulas/least_flow/heating.hpp"
#include "formulas/least_flow/region.hpp"
#include "formulas/least_flow/vapour_limit.hpp"
