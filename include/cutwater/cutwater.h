/* generated from the catalogue by cutwater-generate; do not edit. */
/* The flat C API. Every function returns a cutwater_status; on refusal numbers are NaN, words are "" and refusal, if not
   null, tells which argument, its value, what is permitted and why. Numbers carry the unit that their name ends in. An input
   with a default is left out by cutwater_left_out(), a choice by a null pointer. The form ending in _rows computes a column
   a call; it stores a word as its position among the words. */
#ifndef CUTWATER_H
#define CUTWATER_H

#include <cutwater/library.h>

#include <cutwater/families/liquid.h>  /* Liquid properties, pressure and head */
#include <cutwater/families/process_liquids.h>  /* Process liquids */
#include <cutwater/families/system.h>  /* System and suction */
#include <cutwater/families/piping.h>  /* Pipes, fittings and tanks */
#include <cutwater/families/similarity.h>  /* Similarity and shape */
#include <cutwater/families/power.h>  /* Power, motor, energy */
#include <cutwater/families/viscous.h>  /* Viscous liquids */
#include <cutwater/families/solids.h>  /* Solids-bearing liquids */
#include <cutwater/families/least_flow.h>  /* Least flow and heating */
#include <cutwater/families/curves.h>  /* Curves */
#include <cutwater/families/duty.h>  /* The whole duty */
#include <cutwater/families/acceptance.h>  /* Acceptance test */
#include <cutwater/families/rotor.h>  /* Rotor: thrusts, shaft, vibration */
#include <cutwater/families/seal.h>  /* Shaft seal and its chamber */
#include <cutwater/families/bearings.h>  /* Rolling bearings */
#include <cutwater/families/clearance.h>  /* Running clearance, wear and wall */
#include <cutwater/families/containment.h>  /* Containment: casing, flanges, walls, loads */
#include <cutwater/families/surfaces.h>  /* Surface temperatures, heat loss and jackets */
#include <cutwater/families/sealed_drives.h>  /* Magnetic drives and other sealed drives */
#include <cutwater/families/special_builds.h>  /* Vertical, self-priming, recessed and close-coupled pumps */
#include <cutwater/families/standards.h>  /* What the standards ask */

#endif
