// generated from the catalogue by cutwater-generate; do not edit.
// Similarity and shape.
#pragma once

#include <cutwater/families/similarity.h>
#include <cutwater/refused.hpp>
#include <cutwater/unit_table.hpp>

#include <cstddef>
#include <vector>

namespace cutwater {

/// Flow of a point of a pump's curve at another speed: Q' = Q n'/n. Source: Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.B.6 (excerpt read); limits of the ratio 0.25 to 2: set here.
inline Flow flow_at_speed(Flow flow, RotationalSpeed speed, RotationalSpeed new_speed)
{
    cutwater_refusal refusal;
    double flow_at_new_speed_out;
    detail::check(cutwater_flow_at_speed(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<RotationalSpeed>("1/min"), new_speed), &flow_at_new_speed_out, &refusal), refusal);
    return detail::quantity_of(unit<Flow>("m3/h"), flow_at_new_speed_out);
}

/// Head of a point of a pump's curve at another speed: H' = H (n'/n)^2. Source: Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.B.6 (excerpt read); limits of the ratio 0.25 to 2: set here.
inline Length head_at_speed(Length head, RotationalSpeed speed, RotationalSpeed new_speed)
{
    cutwater_refusal refusal;
    double head_at_new_speed_out;
    detail::check(cutwater_head_at_speed(detail::number_in(unit<Length>("m"), head), detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<RotationalSpeed>("1/min"), new_speed), &head_at_new_speed_out, &refusal), refusal);
    return detail::quantity_of(unit<Length>("m"), head_at_new_speed_out);
}

/// Power of a point of a pump's curve at another speed, its efficiency taken as unchanged: P' = P (n'/n)^3. Source: Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.B.6 (excerpt read); limits of the ratio 0.25 to 2: set here.
inline Power power_at_speed(Power power, RotationalSpeed speed, RotationalSpeed new_speed)
{
    cutwater_refusal refusal;
    double power_at_new_speed_out;
    detail::check(cutwater_power_at_speed(detail::number_in(unit<Power>("kW"), power), detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<RotationalSpeed>("1/min"), new_speed), &power_at_new_speed_out, &refusal), refusal);
    return detail::quantity_of(unit<Power>("kW"), power_at_new_speed_out);
}

/// NPSH3 of a point of a pump's curve at another speed: NPSH3' = NPSH3 (n'/n)^x; x not given: 1.3 for n' < n, 2 for n' > n. Source: ISO 9906:2012, translation of NPSH3 to the specified speed (from memory of it), exponent 1.3 to 2 to be agreed (a public test procedure after it read in excerpt); 1.5 when slowing down and 2 when speeding up: trade literature (read); limits of the ratio: set here.
inline Length npsh3_at_speed(Length npsh3, RotationalSpeed speed, RotationalSpeed new_speed, Ratio exponent = unit<Ratio>("")(0))
{
    cutwater_refusal refusal;
    double npsh3_at_new_speed_out;
    detail::check(cutwater_npsh3_at_speed(detail::number_in(unit<Length>("m"), npsh3), detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<RotationalSpeed>("1/min"), new_speed), detail::number_in(unit<Ratio>(""), exponent), &npsh3_at_new_speed_out, &refusal), refusal);
    return detail::quantity_of(unit<Length>("m"), npsh3_at_new_speed_out);
}

/// Flow of a point of a pump's curve with the impeller trimmed: Q' = Q (D'/D)^x. Source: exponents (1, 2, 3): Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.B.7 (excerpt read); (2, 2, 4): common practice; limit of the ratio 0.7: set here.
inline Flow flow_at_trim(Flow flow, Length diameter, Length trimmed_diameter, Ratio exponent = unit<Ratio>("")(1))
{
    cutwater_refusal refusal;
    double trimmed_flow_out;
    detail::check(cutwater_flow_at_trim(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("mm"), diameter), detail::number_in(unit<Length>("mm"), trimmed_diameter), detail::number_in(unit<Ratio>(""), exponent), &trimmed_flow_out, &refusal), refusal);
    return detail::quantity_of(unit<Flow>("m3/h"), trimmed_flow_out);
}

/// Head of a point of a pump's curve with the impeller trimmed: H' = H (D'/D)^x. Source: exponents (1, 2, 3): Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.B.7 (excerpt read); (2, 2, 4): common practice; limit of the ratio 0.7: set here.
inline Length head_at_trim(Length head, Length diameter, Length trimmed_diameter, Ratio exponent = unit<Ratio>("")(2))
{
    cutwater_refusal refusal;
    double trimmed_head_out;
    detail::check(cutwater_head_at_trim(detail::number_in(unit<Length>("m"), head), detail::number_in(unit<Length>("mm"), diameter), detail::number_in(unit<Length>("mm"), trimmed_diameter), detail::number_in(unit<Ratio>(""), exponent), &trimmed_head_out, &refusal), refusal);
    return detail::quantity_of(unit<Length>("m"), trimmed_head_out);
}

/// Power of a point of a pump's curve with the impeller trimmed, its efficiency taken as unchanged: P' = P (D'/D)^x. Source: exponents (1, 2, 3): Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.B.7 (excerpt read); (2, 2, 4): common practice; limit of the ratio 0.7: set here.
inline Power power_at_trim(Power power, Length diameter, Length trimmed_diameter, Ratio exponent = unit<Ratio>("")(3))
{
    cutwater_refusal refusal;
    double trimmed_power_out;
    detail::check(cutwater_power_at_trim(detail::number_in(unit<Power>("kW"), power), detail::number_in(unit<Length>("mm"), diameter), detail::number_in(unit<Length>("mm"), trimmed_diameter), detail::number_in(unit<Ratio>(""), exponent), &trimmed_power_out, &refusal), refusal);
    return detail::quantity_of(unit<Power>("kW"), trimmed_power_out);
}

struct point_at_small_trim_results {
    Flow trimmed_flow;  // flow of the corresponding point
    Length trimmed_head;  // head of the corresponding point
};

/// Flow and head of a point of a pump's curve after a cut of up to 5 %, by ISO 9906: Q' = R Q; H' = R^2 H; R = sqrt((D'^2 - D_1^2)/(D^2 - D_1^2)). Source: ISO 9906:2012, reduction of the impeller diameter after a test (relation from memory of it); its limits, a cut of 5 %, type number up to 1.5, the same vane shape after the cut, and that it takes the mean diameter of the vanes' leading edges: read in a trade encyclopaedia (excerpt).
inline point_at_small_trim_results point_at_small_trim(Flow flow, Length head, Length diameter, Length trimmed_diameter, Length inlet_diameter)
{
    cutwater_refusal refusal;
    double trimmed_flow_out;
    double trimmed_head_out;
    detail::check(cutwater_point_at_small_trim(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("m"), head), detail::number_in(unit<Length>("mm"), diameter), detail::number_in(unit<Length>("mm"), trimmed_diameter), detail::number_in(unit<Length>("mm"), inlet_diameter), &trimmed_flow_out, &trimmed_head_out, &refusal), refusal);
    return {detail::quantity_of(unit<Flow>("m3/h"), trimmed_flow_out), detail::quantity_of(unit<Length>("m"), trimmed_head_out)};
}

/// NPSH3 with a trimmed impeller at one flow, between two diameters for which the pump maker tells it: NPSH3' = NPSH3_D + (NPSH3_d - NPSH3_D)(D - D')/(D - d). Source: straight line between two tested diameters; common practice. That no rule predicts the change, and that a smaller impeller needs more at the same flow: a trade magazine's series on NPSH (read).
inline Length npsh3_at_trim(Length npsh3_at_greatest, Length greatest_diameter, Length npsh3_at_least, Length least_diameter, Length trimmed_diameter)
{
    cutwater_refusal refusal;
    double npsh3_out;
    detail::check(cutwater_npsh3_at_trim(detail::number_in(unit<Length>("m"), npsh3_at_greatest), detail::number_in(unit<Length>("mm"), greatest_diameter), detail::number_in(unit<Length>("m"), npsh3_at_least), detail::number_in(unit<Length>("mm"), least_diameter), detail::number_in(unit<Length>("mm"), trimmed_diameter), &npsh3_out, &refusal), refusal);
    return detail::quantity_of(unit<Length>("m"), npsh3_out);
}

/// Specific speed in metric units: 1/min, m3/s, m: n_s = n sqrt(Q/i)/(H/z)^(3/4); n in 1/min, Q in m3/s, H in m. Source: Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.D.1 to 1.D.3 (excerpt read); flow per eye as in ISO 17769-1 (from memory of it).
inline SpecificSpeed specific_speed(RotationalSpeed speed, Flow flow, Length head, Count eyes = unit<Count>("")(1), Count stages = unit<Count>("")(1))
{
    cutwater_refusal refusal;
    double specific_speed_out;
    detail::check(cutwater_specific_speed(detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("m"), head), detail::number_in(unit<Count>(""), eyes), detail::number_in(unit<Count>(""), stages), &specific_speed_out, &refusal), refusal);
    return detail::quantity_of(unit<SpecificSpeed>(""), specific_speed_out);
}

/// Specific speed in US units: 1/min, US gal/min, ft: N_s = n sqrt(Q/i)/(H/z)^(3/4); n in 1/min, Q in US gal/min, H in ft. Source: Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.D.1 and 1.D.2 (excerpt read); flow per eye as in ISO 17769-1 (from memory of it).
inline SpecificSpeedUs specific_speed_us(RotationalSpeed speed, Flow flow, Length head, Count eyes = unit<Count>("")(1), Count stages = unit<Count>("")(1))
{
    cutwater_refusal refusal;
    double specific_speed_us_out;
    detail::check(cutwater_specific_speed_us(detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("m"), head), detail::number_in(unit<Count>(""), eyes), detail::number_in(unit<Count>(""), stages), &specific_speed_us_out, &refusal), refusal);
    return detail::quantity_of(unit<SpecificSpeedUs>(""), specific_speed_us_out);
}

/// Type number: specific speed without units: K = 2 pi n sqrt(Q/i)/(g H/z)^(3/4). Source: ISO 17769-1:2012 and ISO 9906:2012, type number (from memory of both); Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.D.3 (excerpt read).
inline Ratio type_number(RotationalSpeed speed, Flow flow, Length head, Count eyes = unit<Count>("")(1), Count stages = unit<Count>("")(1))
{
    cutwater_refusal refusal;
    double type_number_out;
    detail::check(cutwater_type_number(detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("m"), head), detail::number_in(unit<Count>(""), eyes), detail::number_in(unit<Count>(""), stages), &type_number_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), type_number_out);
}

/// Metric specific speed (or suction specific speed) from that in US units: n_s = N_s/51.6452. Source: definitions of the US gallon and the foot (NIST SP 811); Hydraulic Institute, Engineering Data Book, 2nd edition, prints 51.6 (excerpt read).
inline SpecificSpeed specific_speed_from_us(SpecificSpeedUs specific_speed_us)
{
    cutwater_refusal refusal;
    double specific_speed_out;
    detail::check(cutwater_specific_speed_from_us(detail::number_in(unit<SpecificSpeedUs>(""), specific_speed_us), &specific_speed_out, &refusal), refusal);
    return detail::quantity_of(unit<SpecificSpeed>(""), specific_speed_out);
}

/// Metric specific speed from the type number: n_s = K g^(3/4)/(2 pi/60) = 52.919 K. Source: ISO 17769-1:2012, type number (from memory of it); g = 9.80665 m/s2.
inline SpecificSpeed specific_speed_from_type_number(Ratio type_number)
{
    cutwater_refusal refusal;
    double specific_speed_out;
    detail::check(cutwater_specific_speed_from_type_number(detail::number_in(unit<Ratio>(""), type_number), &specific_speed_out, &refusal), refusal);
    return detail::quantity_of(unit<SpecificSpeed>(""), specific_speed_out);
}

/// Specific speed (or suction specific speed) in US units from the metric one: N_s = 51.6452 n_s. Source: definitions of the US gallon and the foot (NIST SP 811); Hydraulic Institute, Engineering Data Book, 2nd edition, prints 51.6 (excerpt read).
inline SpecificSpeedUs specific_speed_us_from_metric(SpecificSpeed specific_speed)
{
    cutwater_refusal refusal;
    double specific_speed_us_out;
    detail::check(cutwater_specific_speed_us_from_metric(detail::number_in(unit<SpecificSpeed>(""), specific_speed), &specific_speed_us_out, &refusal), refusal);
    return detail::quantity_of(unit<SpecificSpeedUs>(""), specific_speed_us_out);
}

/// Specific speed in US units from the type number: N_s = 2733.0 K. Source: ISO 17769-1:2012, type number (from memory of it); definitions of the US gallon and the foot (NIST SP 811).
inline SpecificSpeedUs specific_speed_us_from_type_number(Ratio type_number)
{
    cutwater_refusal refusal;
    double specific_speed_us_out;
    detail::check(cutwater_specific_speed_us_from_type_number(detail::number_in(unit<Ratio>(""), type_number), &specific_speed_us_out, &refusal), refusal);
    return detail::quantity_of(unit<SpecificSpeedUs>(""), specific_speed_us_out);
}

/// Type number from the metric specific speed: K = n_s (2 pi/60)/g^(3/4) = n_s/52.919. Source: ISO 17769-1:2012, type number (from memory of it); g = 9.80665 m/s2.
inline Ratio type_number_from_specific_speed(SpecificSpeed specific_speed)
{
    cutwater_refusal refusal;
    double type_number_out;
    detail::check(cutwater_type_number_from_specific_speed(detail::number_in(unit<SpecificSpeed>(""), specific_speed), &type_number_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), type_number_out);
}

/// Type number from the specific speed in US units: K = N_s/2733.0. Source: ISO 17769-1:2012, type number (from memory of it); definitions of the US gallon and the foot (NIST SP 811).
inline Ratio type_number_from_us(SpecificSpeedUs specific_speed_us)
{
    cutwater_refusal refusal;
    double type_number_out;
    detail::check(cutwater_type_number_from_us(detail::number_in(unit<SpecificSpeedUs>(""), specific_speed_us), &type_number_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), type_number_out);
}

/// Suction specific speed in metric units: 1/min, m3/s, m, always per eye: n_ss = n sqrt(Q/i)/NPSH3^(3/4); n in 1/min, Q in m3/s, NPSH3 in m. Source: Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.D.4 and 1.D.5 (excerpt read).
inline SpecificSpeed suction_specific_speed(RotationalSpeed speed, Flow flow, Length npsh3, Count eyes = unit<Count>("")(1))
{
    cutwater_refusal refusal;
    double suction_specific_speed_out;
    detail::check(cutwater_suction_specific_speed(detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("m"), npsh3), detail::number_in(unit<Count>(""), eyes), &suction_specific_speed_out, &refusal), refusal);
    return detail::quantity_of(unit<SpecificSpeed>(""), suction_specific_speed_out);
}

/// Suction specific speed in US units: 1/min, US gal/min, ft, always per eye: N_ss = n sqrt(Q/i)/NPSH3^(3/4); n in 1/min, Q in US gal/min, NPSH3 in ft. Source: Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.D.4 and 1.D.5 (excerpt read).
inline SpecificSpeedUs suction_specific_speed_us(RotationalSpeed speed, Flow flow, Length npsh3, Count eyes = unit<Count>("")(1))
{
    cutwater_refusal refusal;
    double suction_specific_speed_us_out;
    detail::check(cutwater_suction_specific_speed_us(detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("m"), npsh3), detail::number_in(unit<Count>(""), eyes), &suction_specific_speed_us_out, &refusal), refusal);
    return detail::quantity_of(unit<SpecificSpeedUs>(""), suction_specific_speed_us_out);
}

/// Peripheral speed of an impeller's outside diameter: u_2 = pi D n. Source: definition; ISO 17769-1:2012, peripheral velocity (from memory of it).
inline Velocity tip_speed(Length diameter, RotationalSpeed speed)
{
    cutwater_refusal refusal;
    double tip_speed_out;
    detail::check(cutwater_tip_speed(detail::number_in(unit<Length>("mm"), diameter), detail::number_in(unit<RotationalSpeed>("1/min"), speed), &tip_speed_out, &refusal), refusal);
    return detail::quantity_of(unit<Velocity>("m/s"), tip_speed_out);
}

/// Head coefficient of an impeller, psi = g H/u2^2: psi = g H/u_2^2, u_2 = pi D n. Source: definition as in ANSI/HI 1.3 (from memory of it).
inline Ratio head_coefficient(Length head, Length diameter, RotationalSpeed speed)
{
    cutwater_refusal refusal;
    double head_coefficient_out;
    detail::check(cutwater_head_coefficient(detail::number_in(unit<Length>("m"), head), detail::number_in(unit<Length>("mm"), diameter), detail::number_in(unit<RotationalSpeed>("1/min"), speed), &head_coefficient_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), head_coefficient_out);
}

/// Flow coefficient of an impeller, phi = c2m/u2: phi = Q/(pi D b_2 u_2), u_2 = pi D n. Source: definition; J. F. Guelich, Centrifugal Pumps, 3rd edition, 2014 (from memory of it).
inline Ratio flow_coefficient(Flow flow, Length diameter, Length width, RotationalSpeed speed)
{
    cutwater_refusal refusal;
    double flow_coefficient_out;
    detail::check(cutwater_flow_coefficient(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("mm"), diameter), detail::number_in(unit<Length>("mm"), width), detail::number_in(unit<RotationalSpeed>("1/min"), speed), &flow_coefficient_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), flow_coefficient_out);
}

/// Specific diameter of an impeller, without units: D_s = D (g H)^(1/4)/sqrt(Q). Source: O. Cordier (1953); O. E. Balje, Turbomachines, 1981 (from memory of both).
inline Ratio specific_diameter(Flow flow, Length head, Length diameter)
{
    cutwater_refusal refusal;
    double specific_diameter_out;
    detail::check(cutwater_specific_diameter(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("m"), head), detail::number_in(unit<Length>("mm"), diameter), &specific_diameter_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), specific_diameter_out);
}

/// Form of impeller that suits a specific speed: radial: n_s < 40; mixed: 40 <= n_s < 175; axial: n_s >= 175 (US units 2000 and 9000). Source: common practice; the bands of the trade's books overlap.
inline const char* impeller_form(SpecificSpeed specific_speed)
{
    cutwater_refusal refusal;
    const char* form_out;
    detail::check(cutwater_impeller_form(detail::number_in(unit<SpecificSpeed>(""), specific_speed), &form_out, &refusal), refusal);
    return form_out;
}

struct minimum_efficiency_eu_results {
    Fraction best_efficiency_limit;  // least efficiency at best-efficiency flow
    Fraction part_load_limit;  // least efficiency at 75 % of that flow
    Fraction overload_limit;  // least efficiency at 110 % of that flow
};

/// Least hydraulic efficiency of a water pump under Regulation (EU) No 547/2012: eta_BEP = (88.59 x + 13.46 y - 11.48 x^2 - 0.85 y^2 - 0.38 x y - C)/100; x = ln(n_s), n_s = n sqrt(Q m3/s)/(H/z)^(3/4); y = ln(Q m3/h); eta_PL = 0.947 eta_BEP; eta_OL = 0.985 eta_BEP. Source: Commission Regulation (EU) No 547/2012: constants C of Annex III and scope of Article 2 (excerpt read); coefficients of the formula, 0.947 and 0.985 (from memory of it; the coefficients agree with those of 10 CFR 431, subpart Y, appendix A, read in 80 FR 22939, turned into US units, the flow taken to 60 Hz by a factor of 1.2).
inline minimum_efficiency_eu_results minimum_efficiency_eu(Flow flow, Length head, RotationalSpeed nominal_speed, const char* pump_type, Ratio minimum_efficiency_index = unit<Ratio>("")(0.4), Count stages = unit<Count>("")(1))
{
    cutwater_refusal refusal;
    double best_efficiency_limit_out;
    double part_load_limit_out;
    double overload_limit_out;
    detail::check(cutwater_minimum_efficiency_eu(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("m"), head), detail::number_in(unit<RotationalSpeed>("1/min"), nominal_speed), pump_type, detail::number_in(unit<Ratio>(""), minimum_efficiency_index), detail::number_in(unit<Count>(""), stages), &best_efficiency_limit_out, &part_load_limit_out, &overload_limit_out, &refusal), refusal);
    return {detail::quantity_of(unit<Fraction>(""), best_efficiency_limit_out), detail::quantity_of(unit<Fraction>(""), part_load_limit_out), detail::quantity_of(unit<Fraction>(""), overload_limit_out)};
}

/// Best efficiency that a good single-stage radial pump of that duty attains: a guide: eta = 1 - 0.095 (1/Q)^m - 0.3 (0.35 - log10(n_s/23))^2 (1/Q)^0.05; m = 0.1 a (1/Q)^0.15 (45/n_s)^0.06; Q in m3/s; a = 1 up to 1 m3/s, 0.5 above. Source: J. F. Guelich, Centrifugal Pumps, 3rd edition, Springer 2014, table 3.8, single-stage radial pumps (from memory of it); limits of flow and specific speed: set here.
inline Fraction attainable_efficiency(Flow flow, Length head, RotationalSpeed speed)
{
    cutwater_refusal refusal;
    double efficiency_out;
    detail::check(cutwater_attainable_efficiency(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("m"), head), detail::number_in(unit<RotationalSpeed>("1/min"), speed), &efficiency_out, &refusal), refusal);
    return detail::quantity_of(unit<Fraction>(""), efficiency_out);
}

/// Efficiency to be expected of a usual centrifugal pump by its flow alone: an estimate for costs: eta = -0.316 + 0.24015 ln Q - 0.01199 (ln Q)^2, Q in US gal/min. Source: A. B. Corripio, K. S. Chrien and L. B. Evans, Chemical Engineering 89 (1982), as in W. D. Seider et al., Product and Process Design Principles (from memory of both; read and run in the open-source library fluids 1.0.22).
inline Fraction usual_efficiency(Flow flow)
{
    cutwater_refusal refusal;
    double efficiency_out;
    detail::check(cutwater_usual_efficiency(detail::number_in(unit<Flow>("m3/h"), flow), &efficiency_out, &refusal), refusal);
    return detail::quantity_of(unit<Fraction>(""), efficiency_out);
}

}  // namespace cutwater
