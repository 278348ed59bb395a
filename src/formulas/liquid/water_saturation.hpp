// Where water boils: IAPWS-IF97 region 4. IAPWS R7-97(2012), clause 8, equations (29) to (31), coefficients of
// Table 34. The equation is dimensional: kelvin and megapascal.
#pragma once

#include <cutwater/unit_table.hpp>

#include <cmath>

namespace cutwater::formulas::water {

namespace region4 {
inline constexpr double n[] = {0,  // the release counts from 1
                               0.11670521452767e4,
                               -0.72421316703206e6,
                               -0.17073846940092e2,
                               0.12020824702470e5,
                               -0.32325550322333e7,
                               0.14915108613530e2,
                               -0.48232657361591e4,
                               0.40511340542057e6,
                               -0.23855557567849,
                               0.65017534844798e3};
}  // namespace region4

inline AbsolutePressure saturation_pressure(Temperature t)
{
    using region4::n;
    const double kelvin = units::kelvin.in(t);
    const double theta = kelvin + n[9] / (kelvin - n[10]);
    const double a = (theta + n[1]) * theta + n[2];
    const double b = (n[3] * theta + n[4]) * theta + n[5];
    const double c = (n[6] * theta + n[7]) * theta + n[8];
    const double beta = 2 * c / (-b + std::sqrt(b * b - 4 * a * c));
    const double squared = beta * beta;
    return units::MPa_a(squared * squared);
}

inline Temperature saturation_temperature(AbsolutePressure p)
{
    using region4::n;
    const double beta = std::sqrt(std::sqrt(units::MPa_a.in(p)));
    const double e = (beta + n[3]) * beta + n[6];
    const double f = (n[1] * beta + n[4]) * beta + n[7];
    const double g = (n[2] * beta + n[5]) * beta + n[8];
    const double d = 2 * g / (-f - std::sqrt(f * f - 4 * e * g));
    const double sum = n[10] + d;
    return units::kelvin((sum - std::sqrt(sum * sum - 4 * (n[9] + n[10] * d))) / 2);
}

}  // namespace cutwater::formulas::water
