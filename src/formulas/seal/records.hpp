// The shaft seal and its chamber (family 10).
#pragma once

#include "formulas/seal/chamber_pressure.hpp"
#include "formulas/seal/chamber_temperature.hpp"
#include "formulas/seal/drift.hpp"
#include "formulas/seal/face_temperature.hpp"
#include "formulas/seal/faces.hpp"
#include "formulas/seal/flush_orifice.hpp"
#include "formulas/seal/margin.hpp"
