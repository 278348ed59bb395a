// generated from the catalogue by cutwater-generate; do not edit.
// The typed C++ door, header only over the flat C API: quantities in and out, a refusal thrown as cutwater::Refused.
#pragma once

#include <cutwater/cutwater.h>

#include <cutwater/families/liquid.hpp>  // Liquid properties, pressure and head
#include <cutwater/families/system.hpp>  // System and suction
#include <cutwater/families/similarity.hpp>  // Similarity and shape
#include <cutwater/families/power.hpp>  // Power, motor, energy
#include <cutwater/families/viscous.hpp>  // Viscous liquids
#include <cutwater/families/solids.hpp>  // Solids-bearing liquids
#include <cutwater/families/least_flow.hpp>  // Least flow and heating
#include <cutwater/families/curves.hpp>  // Curves
#include <cutwater/families/acceptance.hpp>  // Acceptance test
