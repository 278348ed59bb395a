// Density and viscosity of the acids, lyes and brines of the trade in water, by their concentration and temperature.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "elementary/elementary.hpp"

#include <algorithm>

namespace cutwater::formulas {

enum class Solute {
    sulphuric_acid,
    hydrochloric_acid,
    nitric_acid,
    phosphoric_acid,
    caustic_soda,
    caustic_potash,
    sodium_chloride,
    calcium_chloride,
    sodium_carbonate,
    iron_chloride
};

}  // namespace cutwater::formulas

template <>
inline constexpr cutwater::Words<10> cutwater::words_of<cutwater::formulas::Solute>{
    "sulphuric acid", "hydrochloric acid", "nitric acid",      "phosphoric acid",  "caustic soda",
    "caustic potash", "sodium chloride",   "calcium chloride", "sodium carbonate", "iron(III) chloride"};

namespace cutwater::formulas {

namespace solutions {

/// Where a correlation was fitted: temperatures in degC, greatest share by mass.
struct Fitted {
    double coldest, warmest, strongest;
};

struct Constants {
    double density[5];
    Fitted density_range;
    double viscosity[6];
    Fitted viscosity_range;
};

// In the order of Solute.
inline constexpr Constants table[] = {
    {{70.8395152347122, 142.352693909248, 0.68779459618793, 0.00649299683206703, 1667.23864629522},
     {-11.15, 75, 0.782},
     {7.77699477516578, 1.23443056779035, 1.91643392633129, 0.00563631536944214, 46.0065393457232, 2.83071965329322},
     {-10, 75, 0.782}},  // H2SO4
    {{0.000283872260482906, 0.00394946957169882, 2.85020047681807, -0.0157747012568046, -3766.20868665006},
     {5, 98.82, 0.375},
     {10.3259686042518, 1.71378270014506, 1.48613181961032, 0.00127907449231391, 23.7644188926256, 2.1827423115052},
     {10, 42.5, 0.36}},  // HCl
    {{0.272070788161643, -0.399605969016834, -2.33691977745914, 0.00662112384275969, -3089.01794099058},
     {-10, 95, 0.701},
     {8.22640393251524e-05, -1.39718811419252, 0.11961884204502, -0.0199197916008091, -1.44481163970687,
      0.906940098315068},
     {4, 25, 0.308}},  // HNO3
    {{1288.25499332174, -4126.67487464815, -4.64682626086799, 0.00466168016728373, -944.459685828192},
     {15.85, 81.4, 0.85},
     {5.40936381181384, 2.85113005922925, 4.18309800502585, 0.0160667795897231, 3.4709124824548, 4.24236571675822},
     {20, 25, 0.8}},  // H3PO4
    {{319.020509469838, 528.592358475315, -0.102197896602724, 0.000350420706415566, 765.970470238438},
     {4, 120, 0.502},
     {448.457566713375, 0.00871452408983102, -431.97212334697, 0.0160144202049452, 104.011738670148, 4.64493684488816},
     {12.5, 70, 0.56}},  // NaOH
    {{821.119043254761, 1043.20173374381, 0.112873330222752, 0.00124023636407386, 539.630388368877},
     {4, 95, 0.518},
     {57.4198157197363, 3.80481406171296, 2.62270093659636, 0.0103144776487057, 5202.71048053244, 10.9425874221815},
     {-14.1, 40, 0.518}},  // KOH
    {{-0.00324112223655149, 0.0636354335906616, 1.01371399467365, 0.0145951015210159, 3317.34854426537},
     {0, 140, 0.265},
     {16.221788633396, 1.32293086770011, 1.48485985010431, 0.00746912559657377, 30.7802007540575, 2.05826852322558},
     {5, 154, 0.264}},  // NaCl
    {{-9.72893747074295, 14.7005352975276, 4.19033341468332, 0.0397403624277021, 2708.12778894614},
     {15, 126.7, 0.513},
     {32.0143699446531, 0.788104085857794, -1.14120453890547, 0.00270010693201763, 776516.746907194, 5.83888130672249},
     {0, 100, 0.513}},  // CaCl2
    {{5.45486543455015e-07, 1.72154929405038e-07, -0.0825850207323492, 0.00168822949783412, 4705.39822185746},
     {0, 100.14, 0.209},
     {27.6831996816743, 1.56324040665499, 6.80529471973068, 0.0150777050822261, 22452.3440720574, 28.2362397327323},
     {20, 90, 0.308}},  // Na2CO3
    {{-14.9299417767922, 63.3168799033122, 1.15885132665007, 0.0104820838890175, 2163.05805284003},
     {0, 35, 0.5},
     {30.7678610527733, 2.52602258923568, 5.10319073938405, 0.0110125014904606, 511.020484261649, 6.07916687150556},
     {0, 35, 0.432}},  // FeCl3
};

inline const Constants& constants(Solute solute) { return table[static_cast<int>(solute)]; }
inline double celsius(Temperature t) { return units::degC.in(t); }

inline bool holds(const Fitted& range, double celsius, double share)
{
    constexpr double rounding = 1e-9;  // a limit that went through kelvins and back is still the limit
    return (celsius >= range.coldest - rounding) & (celsius <= range.warmest + rounding) &
           (share <= range.strongest + rounding);
}

/// Refuses what lies outside the measurements behind the correlation.
inline NoValue outside(const Fitted& range, Temperature t, Fraction share)
{
    if (share.value > range.strongest)
        return {CUTWATER_OUT_OF_INTERVAL,
                "mass_fraction",
                "{0} is stronger than the measurements behind the correlation of this solute, which end at {1}",
                {number_in(share, units::fraction), {range.strongest, ""}}};
    return {CUTWATER_OUT_OF_INTERVAL,
            "temperature",
            "{0} lies outside the measurements behind the correlation of this solute, which reach from {1} to {2}",
            {number_in(t, units::degC),
             {range.coldest, units::degC.info->symbol},
             {range.warmest, units::degC.info->symbol}}};
}

inline double water_density(double t)
{
    const double above =
        ((((-2.8054253e-10 * t + 1.0556302e-7) * t - 4.6170461e-5) * t - 0.0079870401) * t + 16.945176) * t + 999.83952;
    return above / (1 + 0.01687985 * t);
}

/// In kg/m3; w the solute's share by mass.
inline double density(const double (&c)[5], double t, double w)
{
    const double apparent = (c[0] * w + c[1]) * elementary::exp(1e-6 * (t + c[4]) * (t + c[4])) / (w + c[2] + c[3] * t);
    return elementary::select(w == 0, water_density(t), 1 / ((1 - w) / water_density(t) + w / apparent));
}

inline double water_viscosity(double t) { return (t + 246) / ((0.05594 * t + 5.2842) * t + 137.37); }

/// In mPa s. One solute's fit runs away towards no solute at all: below a thousandth the last sound value goes on.
inline double viscosity(const double (&v)[6], double t, double w)
{
    const double of_water = elementary::log(water_viscosity(t));
    const double sound = std::max(w, 1e-3);
    const double of_solute = (v[0] * elementary::positive_pow(sound, v[1]) + v[2]) / (v[3] * t + 1) -
                             elementary::log(v[4] * elementary::positive_pow(sound, v[5]) + 1);
    return elementary::select(w == 0, water_viscosity(t), elementary::exp((1 - w) * of_water + w * of_solute));
}

constexpr auto solute() { return choice<Solute>("solute", "solute", "what is dissolved in the water"); }
constexpr auto mass_fraction()
{
    return input("mass_fraction", "w", units::fraction, between(0, 0.9),
                 "the solute's share of the solution by mass, taken as anhydrous");
}
constexpr auto temperature()
{
    return input("temperature", "t", units::degC, between(-20, 160), "temperature of the solution");
}

inline constexpr const char* strong_acid =
    "Sulphuric acid is covered to 78 % only: for the strong acid's density see strong_sulphuric_acid_density, for its "
    "viscosity and for oleum take measured data.";
inline constexpr const char* thin_acid =
    "The fits' viscosity below 0.1 % by mass goes straight to that of water: the one of nitric acid would run away "
    "there.";
inline constexpr const char* pure_solute = "Technical grades hold other salts, and a brine may be at its limit of "
                                           "solubility or freezing: neither is checked here.";
inline constexpr const char* corrosive = "With strong acid, lye or hot brine a leak injures: the site's rules, the "
                                         "pump maker's limits and the material's data go before this.";

}  // namespace solutions

inline Outcome<Density> solution_density(Solute solute, Fraction mass_fraction, Temperature temperature)
{
    const solutions::Constants& c = solutions::constants(solute);
    const double t = solutions::celsius(temperature);
    const bool holds = solutions::holds(c.density_range, t, mass_fraction.value);
    return {solutions::density(c.density, t, mass_fraction.value) * units::kgm3, holds,
            holds ? NoValue{} : solutions::outside(c.density_range, temperature, mass_fraction)};
}

inline constexpr Record<&solution_density> solution_density_record{
    .name = "solution_density",
    .meaning = "Density of an acid, a lye or a brine by its concentration and temperature",
    .also = "acid density|caustic density|brine density|specific gravity of "
            "acid|NaOH|H2SO4|HCl|HNO3|H3PO4|KOH|NaCl|CaCl2|lye",
    .inputs = {solutions::solute(), solutions::mass_fraction(), solutions::temperature()},
    .results = {output("density", "rho", units::kgm3, "density of the solution near atmospheric pressure")},
    .equation = "1/rho = (1 - w)/rho_w(t) + w/rho_a; rho_a = (c0 w + c1) exp(1e-6 (t + c4)^2)/(w + c2 + c3 t)",
    .source = "M. Laliberte and W. E. Cooper, J. Chem. Eng. Data 49 (2004) 1141, constants of M. Laliberte, J. Chem. "
              "Eng. Data 54 (2009) 1725"
              "; equations and constants as the open library thermo carries them (read)",
    .cautions = {solutions::strong_acid,
                 "Against a handbook's table at 20 degC (read) it is within 0.3 %, caustic potash within 0.7 %.",
                 "Sulphuric acid of 70 to 78 % comes out too heavy when hot, against the International Critical "
                 "Tables by 0.9 % at 60 degC and 1.5 % at 75 degC: from 74 % on take strong_sulphuric_acid_density. "
                 "Hot caustic soda of 50 % too, by 1.6 % at 100 degC: see strong_caustic_soda_density.",
                 solutions::pure_solute,
                 "Size the motor and the casing for the greatest density: the coldest and strongest solution.",
                 solutions::corrosive},
    .example = {"\"caustic soda\", 0.2, 20", "1218.7431",
                "the equation computed apart; a handbook's table (read): 1219.2"}};

inline Outcome<DynamicViscosity> solution_dynamic_viscosity(Solute solute, Fraction mass_fraction,
                                                            Temperature temperature)
{
    const solutions::Constants& c = solutions::constants(solute);
    const double t = solutions::celsius(temperature);
    const bool holds = solutions::holds(c.viscosity_range, t, mass_fraction.value);
    return {solutions::viscosity(c.viscosity, t, mass_fraction.value) * units::mPas, holds,
            holds ? NoValue{} : solutions::outside(c.viscosity_range, temperature, mass_fraction)};
}

inline constexpr Record<&solution_dynamic_viscosity> solution_dynamic_viscosity_record{
    .name = "solution_dynamic_viscosity",
    .meaning = "Dynamic viscosity of an acid, a lye or a brine by its concentration and temperature",
    .also = "acid viscosity|caustic viscosity|brine viscosity|NaOH|H2SO4|HCl|HNO3|H3PO4|KOH|NaCl|CaCl2|lye",
    .inputs = {solutions::solute(), solutions::mass_fraction(), solutions::temperature()},
    .results = {output("viscosity", "mu", units::mPas, "dynamic viscosity of the solution")},
    .equation = "ln mu = (1 - w) ln mu_w(t) + w ln mu_s; mu_s = exp[(v1 w^v2 + v3)/(v4 t + 1)]/(v5 w^v6 + 1), in mPa s",
    .source = "M. Laliberte, J. Chem. Eng. Data 52 (2007) 321, constants of the same, J. Chem. Eng. Data 54 (2009) 1725"
              "; equations and constants as the open library thermo carries them (read)",
    .cautions =
        {solutions::strong_acid,
         "Against a handbook's table at 20 degC (read) it is within about 6 %, caustic potash of 50 % within 9 %.",
         solutions::thin_acid, "Strong lye thickens steeply in the cold: take the viscosity of the coldest start.",
         solutions::pure_solute, solutions::corrosive},
    .sound_anywhere = true,
    .example = {"\"caustic soda\", 0.3, 20", "13.2707",
                "the equation computed apart; a handbook's table (read): 13.517"}};

}  // namespace cutwater::formulas
