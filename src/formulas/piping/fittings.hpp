// Loss coefficients of fittings that hold in laminar and in turbulent flow: the methods of two and of three constants.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "formulas/limits.hpp"
#include "formulas/piping/nominal.hpp"

#include <cstdint>
#include <iterator>
#include <tuple>

namespace cutwater::formulas {

enum class TwoConstantFitting {
    elbow_90_screwed,
    elbow_90_flanged,
    elbow_90_long,
    mitre_90_one,
    mitre_90_three,
    elbow_45,
    elbow_45_long,
    return_flanged,
    return_long,
    tee_run_screwed,
    tee_run_flanged,
    tee_branch,
    tee_branch_stub,
    gate,
    ball,
    plug,
    globe,
    angle,
    diaphragm,
    butterfly,
    lift_check,
    swing_check,
    tilting_check
};
enum class ThreeConstantFitting {
    elbow_90_screwed,
    elbow_90_screwed_long,
    elbow_90_flanged,
    bend_90_r2,
    bend_90_r4,
    bend_90_r6,
    mitre_90_one,
    mitre_90_two,
    mitre_90_three,
    elbow_45,
    elbow_45_long,
    return_screwed,
    return_flanged,
    return_long,
    tee_branch,
    tee_branch_screwed,
    tee_branch_stub,
    tee_run_screwed,
    tee_run_flanged,
    angle_45,
    angle_90,
    globe,
    plug,
    plug_branch,
    gate,
    ball,
    diaphragm,
    swing_check,
    lift_check
};

}  // namespace cutwater::formulas

template <>
inline constexpr cutwater::Words<23> cutwater::words_of<cutwater::formulas::TwoConstantFitting>{
    "90 deg elbow, standard, screwed",
    "90 deg elbow, standard, flanged or welded",
    "90 deg elbow, long radius",
    "90 deg mitre, one weld",
    "90 deg mitre, three welds",
    "45 deg elbow, standard",
    "45 deg elbow, long radius",
    "180 deg return, standard, flanged or welded",
    "180 deg return, long radius",
    "tee, run, screwed",
    "tee, run, flanged or welded",
    "tee, branch, flanged or welded",
    "tee, branch, stub-in",
    "gate valve",
    "ball valve, reduced bore",
    "plug valve, reduced bore",
    "globe valve",
    "angle or Y valve",
    "diaphragm valve, weir",
    "butterfly valve",
    "lift check valve",
    "swing check valve",
    "tilting-disc check valve"};
template <>
inline constexpr cutwater::Words<29> cutwater::words_of<cutwater::formulas::ThreeConstantFitting>{
    "90 deg elbow, standard, screwed",
    "90 deg elbow, long radius, screwed",
    "90 deg elbow, standard, flanged or welded",
    "90 deg bend, radius 2 diameters",
    "90 deg bend, radius 4 diameters",
    "90 deg bend, radius 6 diameters",
    "90 deg mitre, one weld",
    "90 deg mitre, two welds",
    "90 deg mitre, three welds",
    "45 deg elbow, standard",
    "45 deg elbow, long radius",
    "180 deg return, standard, screwed",
    "180 deg return, standard, flanged or welded",
    "180 deg return, long radius",
    "tee, branch, flanged or welded",
    "tee, branch, screwed",
    "tee, branch, stub-in",
    "tee, run, screwed",
    "tee, run, flanged or welded",
    "angle valve, 45 deg",
    "angle valve, 90 deg",
    "globe valve",
    "plug valve, straight through",
    "plug valve, branch",
    "gate valve",
    "ball valve, full bore",
    "diaphragm valve, weir",
    "swing check valve",
    "lift check valve"};

namespace cutwater::formulas {

namespace fittings {

struct TwoConstants {
    double laminar, turbulent;
};
struct ThreeConstants {
    double laminar, turbulent, size;
};

// In the order of their words.
inline constexpr TwoConstants two_constants[] = {
    {800, 0.4},  {800, 0.25}, {800, 0.2},  {1000, 1.15}, {800, 0.3}, {500, 0.2},  {500, 0.15}, {1000, 0.35},
    {1000, 0.3}, {200, 0.1},  {150, 0.05}, {800, 0.8},   {1000, 1},  {300, 0.1},  {500, 0.15}, {1000, 0.25},
    {1500, 4},   {1000, 2},   {1000, 2},   {800, 0.25},  {2000, 10}, {1500, 1.5}, {1000, 0.5}};
inline constexpr ThreeConstants three_constants[] = {
    {800, 0.14, 4},    {800, 0.071, 4.2}, {800, 0.091, 4},   {800, 0.056, 3.9}, {800, 0.066, 3.9}, {800, 0.075, 4.2},
    {1000, 0.27, 4},   {800, 0.068, 4.1}, {800, 0.035, 4.2}, {500, 0.071, 4.2}, {500, 0.052, 4},   {1000, 0.23, 4},
    {1000, 0.12, 4},   {1000, 0.1, 4},    {800, 0.28, 4},    {500, 0.274, 4},   {1000, 0.34, 4},   {200, 0.091, 4},
    {150, 0.05, 4},    {950, 0.25, 4},    {1000, 0.69, 4},   {1500, 1.7, 3.6},  {300, 0.084, 3.9}, {500, 0.41, 4},
    {300, 0.037, 3.9}, {300, 0.017, 3.5}, {1000, 0.69, 4.9}, {1500, 0.46, 4},   {2000, 2.85, 3.8}};
static_assert(std::size(two_constants) == words_of<TwoConstantFitting>.size());
static_assert(std::size(three_constants) == words_of<ThreeConstantFitting>.size());

/// D_n^-0.3 of each nominal size from NPS 1/2, the fourth, on: in their order.
inline constexpr double by_size[] = {1.2311444133449163,  1.090138357569351,   1.0,
                                     0.9352484478226213,  0.8854674932955561,  0.8122523963562356,
                                     0.7596577929323739,  0.7192230933248643,  0.6867198272427282,
                                     0.6597539553864471,  0.6170338627200096,  0.5841906810678655,
                                     0.5358867312681466,  0.5011872336272722,  0.4745102806263551,
                                     0.45306612226568754, 0.43527528164806206, 0.4201634287291895,
                                     0.4070905315369044,  0.39561540624022173, 0.3854221125344267,
                                     0.37627727968301555, 0.36800404351813193, 0.36046543250433827,
                                     0.3535533905932738,  0.34718129989882107, 0.34127875184653655,
                                     0.3357878061215013,  0.33066025977478425, 0.32585561793662904,
                                     0.32133956175406575, 0.31708277511737504, 0.31306003451477077};
inline constexpr std::int32_t smallest = 3;
static_assert(std::size(by_size) == std::size(nominal::sizes) - smallest);

constexpr auto reynolds()
{
    return input("reynolds_number", "Re", units::number, between(1, 1e9), "Reynolds number on the fitting's bore");
}
inline constexpr const char* one_velocity = "The coefficient goes with the velocity head in the fitting's own bore: of "
                                            "another bore it must be turned by the fourth power of "
                                            "the ratio of bores.";
inline constexpr const char* spread =
    "Loss coefficients of one kind of fitting scatter by 25 to 50 % from maker to maker.";

}  // namespace fittings

inline Ratio fitting_loss_coefficient(TwoConstantFitting fitting, Ratio reynolds_number, Length bore)
{
    const fittings::TwoConstants k = fittings::two_constants[static_cast<int>(fitting)];
    return Ratio(k.laminar / reynolds_number.value() + k.turbulent * (1 + 1 / units::in.in(bore)));
}

inline constexpr Record<&fitting_loss_coefficient> fitting_loss_coefficient_record{
    .name = "fitting_loss_coefficient",
    .meaning = "Loss coefficient of a fitting or valve by the method of two constants, laminar flow included",
    .also = "2-K method|Hooper|K factor|resistance coefficient|elbow|tee|gate valve|check valve|minor loss",
    .inputs = {choice<TwoConstantFitting>("fitting", "fitting", "kind of fitting or valve, fully open"),
               fittings::reynolds(), input("bore", "d", units::mm, between(10, 2000), "inside diameter")},
    .results = {output("loss_coefficient", "K", units::number, "times the velocity head gives the head lost")},
    .equation = "K = K_1/Re + K_inf (1 + 1/d), d in inches",
    .source = "W. B. Hooper, Chem. Eng. 88 (1981) no. 17, 96-100 (constants as the open library fluids 1.0.22 carries "
              "them, read)",
    .cautions = {fittings::spread, fittings::one_velocity},
    .sound_anywhere = true,
    .example = {"\"90 deg elbow, standard, flanged or welded\", 100000, 102.26", "0.32010",
                "hand calculation: 0.008 + 0.25 (1 + 1/4.02598)"}};

inline Outcome<Ratio> fitting_loss_coefficient_by_size(ThreeConstantFitting fitting, Ratio reynolds_number,
                                                       Count nominal_diameter)
{
    const std::int32_t place = nominal::place_of(nominal_diameter);
    const fittings::ThreeConstants& k = fittings::three_constants[static_cast<int>(fitting)];
    const double smaller = fittings::by_size[nominal::line_of(place, fittings::smallest)];
    return {Ratio(k.laminar / reynolds_number.value() + k.turbulent * (1 + k.size * smaller)), place >= 0,
            nominal::no_such_size(nominal_diameter)};
}

inline constexpr Record<&fitting_loss_coefficient_by_size> fitting_loss_coefficient_by_size_record{
    .name = "fitting_loss_coefficient_by_size",
    .meaning = "Loss coefficient of a fitting or valve by the method of three constants, which follows the size better",
    .also = "3-K method|Darby|K factor|resistance coefficient|elbow|tee|globe valve|minor loss",
    .inputs = {choice<ThreeConstantFitting>("fitting", "fitting", "kind of fitting or valve, fully open"),
               fittings::reynolds(),
               input("nominal_diameter", "DN", units::count, between(15, 1200),
                     "nominal size DN: 100 for NPS 4, 50 for NPS 2, 25 for NPS 1")},
    .results = {output("loss_coefficient", "K", units::number, "times the velocity head gives the head lost")},
    .equation = "K = K_m/Re + K_i (1 + K_d/D_n^0.3), D_n the NPS of that DN, in inches",
    .source = "R. Darby, Chem. Eng. 108 (2001) no. 4, 127-130 (constants as the open library fluids 1.0.22 carries "
              "them, read)",
    .cautions = {fittings::spread, fittings::one_velocity},
    .example = {"\"90 deg elbow, standard, flanged or welded\", 100000, 100", "0.33915",
                "hand calculation: 0.008 + 0.091 (1 + 4/1.51572)"}};

}  // namespace cutwater::formulas
