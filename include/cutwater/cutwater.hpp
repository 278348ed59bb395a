// generated from the catalogue by cutwater-generate; do not edit.
// The typed C++ door, header only over the flat C API: quantities in and out, a refusal thrown as cutwater::Refused.
#pragma once

#include <cutwater/cutwater.h>

#include <cutwater/families/liquid.hpp>  // Liquid properties, pressure and head
#include <cutwater/families/process_liquids.hpp>  // Process liquids
#include <cutwater/families/system.hpp>  // System and suction
#include <cutwater/families/piping.hpp>  // Pipes, fittings and tanks
#include <cutwater/families/similarity.hpp>  // Similarity and shape
#include <cutwater/families/power.hpp>  // Power, motor, energy
#include <cutwater/families/viscous.hpp>  // Viscous liquids
#include <cutwater/families/solids.hpp>  // Solids-bearing liquids
#include <cutwater/families/least_flow.hpp>  // Least flow and heating
#include <cutwater/families/curves.hpp>  // Curves
#include <cutwater/families/duty.hpp>  // The whole duty
#include <cutwater/families/acceptance.hpp>  // Acceptance test
#include <cutwater/families/rotor.hpp>  // Rotor: thrusts, shaft, vibration
#include <cutwater/families/seal.hpp>  // Shaft seal and its chamber
#include <cutwater/families/bearings.hpp>  // Rolling bearings
#include <cutwater/families/clearance.hpp>  // Running clearance, wear and wall
#include <cutwater/families/containment.hpp>  // Containment: casing, flanges, walls, loads
#include <cutwater/families/surfaces.hpp>  // Surface temperatures, heat loss and jackets
#include <cutwater/families/sealed_drives.hpp>  // Magnetic drives and other sealed drives
#include <cutwater/families/special_builds.hpp>  // Vertical, self-priming, recessed and close-coupled pumps
#include <cutwater/families/standards.hpp>  // What the standards ask
