// A square-edged orifice plate in a pipe: discharge coefficient and pressure loss by ISO 5167-2.
#pragma once

#include "elementary/elementary.hpp"

#include <cmath>
#include <numbers>

namespace cutwater::formulas::orifice {

struct Plate {
    double bore, pipe;  // m
    double beta() const { return bore / pipe; }
    double beta4() const
    {
        const double b = beta();
        return b * b * b * b;
    }
};

/// Reader-Harris and Gallagher's equation for tappings at D and D/2 (ISO 5167-2:2003, 5.3.2.1).
inline double discharge_coefficient(const Plate& plate, double reynolds)
{
    constexpr double l1 = 1;
    constexpr double l2 = 0.47;
    const double b = plate.beta();
    const double b2 = b * b;
    const double b4 = b2 * b2;
    const double a = elementary::positive_pow(19000 * b / reynolds, 0.8);
    const double m2 = 2 * l2 / (1 - b);
    const double b35 = b2 * b * std::sqrt(b);
    double c = 0.5961 + 0.0261 * b2 - 0.216 * b4 * b4 + 0.000521 * elementary::positive_pow(1e6 * b / reynolds, 0.7) +
               (0.0188 + 0.0063 * a) * b35 * elementary::positive_pow(1e6 / reynolds, 0.3) +
               (0.043 + 0.080 * elementary::exp(-10 * l1) - 0.123 * elementary::exp(-7 * l1)) * (1 - 0.11 * a) * b4 /
                   (1 - b4) -
               0.031 * (m2 - 0.8 * elementary::positive_pow(m2, 1.1)) * elementary::positive_pow(b, 1.3);
    const double inches = plate.pipe / 0.0254;
    if (plate.pipe < 0.07112) c += 0.011 * (0.75 - b) * (2.8 - inches);
    return c;
}

/// Pressure lost for good over the pressure difference at the tappings (ISO 5167-2:2003, 5.4).
inline double loss_ratio(const Plate& plate, double c)
{
    const double root = std::sqrt(1 - plate.beta4() * (1 - c * c));
    const double cb2 = c * plate.beta() * plate.beta();
    return (root - cb2) / (root + cb2);
}

/// Flow in m3/s for a pressure lost for good in Pa.
inline double flow(const Plate& plate, double c, double pressure_loss, double density)
{
    const double difference = pressure_loss / loss_ratio(plate, c);
    return c / std::sqrt(1 - plate.beta4()) * (std::numbers::pi / 4) * plate.bore * plate.bore *
           std::sqrt(2 * difference / density);
}

inline double reynolds(const Plate& plate, double flow, double viscosity)
{
    return 4 * flow / (std::numbers::pi * plate.pipe * viscosity);
}

/// Least pipe Reynolds number for D and D/2 tappings (ISO 5167-2:2003, 5.3.1).
inline double least_reynolds(double beta) { return beta <= 0.56 ? 5000 : 16000 * beta * beta; }

struct Passing {
    double flow = 0, c = 0, reynolds = 0;
    bool settled = false;
};

/// The flow that a plate passes. Coefficient and flow depend on each other a little: a few rounds settle them.
inline Passing passing(const Plate& plate, double pressure_loss, double density, double viscosity,
                       double given_coefficient)
{
    Passing now{.c = given_coefficient > 0 ? given_coefficient : 0.6};
    for (int round = 0; round < 60; ++round) {
        now.flow = flow(plate, now.c, pressure_loss, density);
        now.reynolds = reynolds(plate, now.flow, viscosity);
        const double next = given_coefficient > 0 ? given_coefficient : discharge_coefficient(plate, now.reynolds);
        if (!(next > 0 && next < 1)) return now;
        now.settled = std::abs(next - now.c) <= 4e-16;
        now.c = next;
        if (now.settled) return now;
    }
    now.settled = true;  // it swings in the last place
    return now;
}

}  // namespace cutwater::formulas::orifice
