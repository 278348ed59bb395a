// Every record of the family.
#pragma once

#include "formulas/sealed_drives/cooling.hpp"
#include "formulas/sealed_drives/coupling.hpp"
#include "formulas/sealed_drives/eddy.hpp"
