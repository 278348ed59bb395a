// Viscosity of water from its temperature and density. IAPWS R12-08, equations (10) to (12), coefficients of Tables 1
// and 2; the critical enhancement is left out, as clause 3 allows for industrial use.
#pragma once

#include "elementary/elementary.hpp"

#include <cutwater/unit_table.hpp>

#include <cmath>

namespace cutwater::formulas::water {

namespace r12 {
inline constexpr double h_dilute[] = {1.67752, 2.20462, 0.6366564, -0.241605};
// Row: power of 1/T - 1; column: power of rho - 1.
inline constexpr double h_dense[6][7] = {
    {0.520094, 0.222531, -0.281378, 0.161913, -0.0325372, 0, 0},
    {0.0850895, 0.999115, -0.906851, 0.257399, 0, 0, 0},
    {-1.08374, 1.88797, -0.772479, 0, 0, 0, 0},
    {-0.289555, 1.26613, -0.489837, 0, 0.0698452, 0, -0.00435673},
    {0, 0, -0.257040, 0, 0, 0.00872102, 0},
    {0, 0.120573, 0, 0, 0, 0, -0.000593264},
};
inline constexpr auto reference_temperature = TemperatureDifference::from_value(647.096);
inline constexpr auto reference_density = Density::from_value(322.0);
}  // namespace r12

inline DynamicViscosity viscosity(Temperature t, Density density)
{
    const double reduced = t.above_zero() / r12::reference_temperature;
    const double over = 1 / reduced;
    const double dense = density / r12::reference_density;
    const auto& h = r12::h_dilute;
    const double dilute = 100 * std::sqrt(reduced) / (h[0] + over * (h[1] + over * (h[2] + over * h[3])));
    double sum = 0;
    for (int i = 5; i >= 0; --i) {
        double row = 0;
        for (int j = 6; j >= 0; --j) row = row * (dense - 1) + r12::h_dense[i][j];
        sum = sum * (over - 1) + row;
    }
    return units::uPas(dilute * elementary::exp(dense * sum));
}

}  // namespace cutwater::formulas::water
