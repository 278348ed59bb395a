// Every record of the family.
#pragma once

#include "formulas/curves/balance.hpp"
#include "formulas/curves/balance_of_three.hpp"
#include "formulas/curves/best.hpp"
#include "formulas/curves/combined.hpp"
#include "formulas/curves/duty.hpp"
#include "formulas/curves/fit.hpp"
#include "formulas/curves/scaled.hpp"
#include "formulas/curves/shape.hpp"
#include "formulas/curves/share.hpp"
#include "formulas/curves/similar_duty.hpp"
#include "formulas/curves/value.hpp"
