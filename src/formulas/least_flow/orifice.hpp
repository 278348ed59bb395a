// A square-edged orifice plate in a pipe: discharge coefficient and pressure loss by ISO 5167-2.
#pragma once

#include "elementary/elementary.hpp"

#include <cmath>
#include <numbers>

namespace cutwater::formulas::orifice {

struct Plate {
    double bore, pipe;  // m
    double beta() const { return bore / pipe; }
    /// b^2/sqrt(1 - b^4)
    double opening() const
    {
        const double square = beta() * beta();
        return square / std::sqrt(1 - square * square);
    }
};

/// Reader-Harris and Gallagher's equation for tappings at D and D/2 (ISO 5167-2:2003, 5.3.2.1), or the coefficient that
/// is given. Reynolds number is in it with powers of -0.3, -0.7, -0.8 and -1.1: a polynomial in y = Re^(-1/10).
class Coefficient {
public:
    Coefficient(double beta, double pipe, double given)
    {
        const double b = beta, b2 = b * b, b4 = b2 * b2;
        const double b01 = elementary::positive_pow(b, 0.1), b03 = b01 * b01 * b01, b07 = b03 * b03 * b01;
        const double b13 = b * b03, b35 = b2 * b * std::sqrt(b);
        const double m2 = 2 * 0.47 / (1 - b);                  // L2' = 0.47
        constexpr double upstream = 0.042891470512617793;      // 0.043 + 0.080 e^(-10 L1) - 0.123 e^(-7 L1), L1 = 1
        constexpr double million_to_0_3 = 63.095734448019325;  // 10^1.8
        const double a = 2648.5177066967316 * (b07 * b01);     // A without Re: (19000 b)^0.8
        const double tapping = upstream * b4 / (1 - b4);
        const double small = elementary::select(pipe < 0.07112, 0.011 * (0.75 - b) * (2.8 - pipe / 0.0254), 0.0);
        const double in_long = 0.5961 + 0.0261 * b2 - 0.216 * b4 * b4 + tapping -
                               0.031 * (m2 - 0.8 * elementary::positive_pow(m2, 1.1)) * b13 + small;
        const auto unless_given = [&](double x) { return elementary::select(given > 0, 0.0, x); };
        steady_ = elementary::select(given > 0, given, in_long);
        y3_ = unless_given(0.0188 * million_to_0_3 * b35);
        y7_ = unless_given(0.000521 * 15848.931924611135 * b07);  // 10^4.2
        y8_ = unless_given(-0.11 * a * tapping);
        y11_ = unless_given(0.0063 * million_to_0_3 * a * b35);
    }

    static double y(double reynolds) { return elementary::positive_pow(reynolds, -0.1); }
    double at(double y) const
    {
        const double cube = y * y * y;
        return steady_ + cube * (y3_ + (cube * y) * (y7_ + y * (y8_ + cube * y11_)));
    }
    /// How much it falls for a rise of ln Re by 1.
    double fall(double y) const
    {
        const double cube = y * y * y;
        return 0.1 * cube * (3 * y3_ + (cube * y) * (7 * y7_ + y * (8 * y8_ + cube * 11 * y11_)));
    }

private:
    double steady_, y3_, y7_, y8_, y11_;
};

/// s + sqrt(1 + s^2) with s = C b^2/sqrt(1 - b^4): its square is the pressure difference at the tappings over the
/// pressure lost for good. ISO 5167-2:2003, 5.4, has (r + C b^2)/(r - C b^2), r = sqrt(1 - b^4 (1 - C^2)), and r is
/// sqrt(1 - b^4) sqrt(1 + s^2).
inline double gain(double s) { return s + std::sqrt(1 + s * s); }

/// Pressure lost for good over the pressure difference at the tappings.
inline double loss_ratio(double s) { return 1 / (gain(s) * gain(s)); }

/// The pipe's area times sqrt(2/rho): a flow over s and the root of the pressure difference at the tappings.
inline double flow_per_root(double pipe, double density)
{
    return std::numbers::pi / 4 * pipe * pipe * std::sqrt(2 / density);
}

inline double reynolds(double pipe, double flow, double viscosity)
{
    return 4 * flow / (std::numbers::pi * pipe * viscosity);
}

/// Least pipe Reynolds number for D and D/2 tappings (ISO 5167-2:2003, 5.3.1).
constexpr double least_reynolds(double beta) { return elementary::select(beta <= 0.56, 5000.0, 16000 * beta * beta); }

inline constexpr double first_coefficient = 0.6;

/// The root of the pressure difference at the tappings, in Pa.
struct Drive {
    double free, choked;  // the root of what is lost for good; where the liquid boils in the jet, infinite if left out
    Drive(double lost, double most) : free(std::sqrt(lost)), choked(std::sqrt(most)) {}
    bool is_choked(double s) const { return free * gain(s) >= choked; }
    double root(double s) const { return elementary::select(is_choked(s), choked, free * gain(s)); }
};

struct Passing {
    double flow, c, reynolds;  // m3/s
    double loss_ratio;
};

/// The flow that a plate passes. Coefficient and flow depend on each other a little, by at most 0.07 of one for the
/// other: of Newton's steps the first leaves 3e-3, the third 4e-14, the fourth rounding error. The count is fixed so
/// that rows of an array take the same path. Below the least Reynolds number the coefficient stays as it is there.
inline Passing passing(const Plate& plate, const Drive& drive, double density, double viscosity, double given)
{
    const Coefficient coefficient(plate.beta(), plate.pipe, given);
    const double opening = plate.opening(), per_root = flow_per_root(plate.pipe, density);
    const double least = least_reynolds(plate.beta());
    double c = elementary::select(given > 0, given, first_coefficient);
    for (int step = 0; step < 4; ++step) {
        const double s = c * opening;
        const double re = reynolds(plate.pipe, per_root * s * drive.root(s), viscosity);
        const bool within = re >= least;
        const double y = Coefficient::y(elementary::select(within, re, least));
        const double rise = 1 + elementary::select(drive.is_choked(s), 0.0, s / std::sqrt(1 + s * s));  // of ln Q
        const double fall = elementary::select(within, coefficient.fall(y) * rise, 0.0);
        c += (coefficient.at(y) - c) / (1 + fall / c);
    }
    const double s = c * opening, flow = per_root * s * drive.root(s);
    return {flow, c, reynolds(plate.pipe, flow, viscosity), loss_ratio(s)};
}

/// The bore over the pipe's for which C b^2/sqrt(1 - b^4) is s at a pipe Reynolds number; the coefficient stays as it
/// is at the least and the greatest ratio beyond them. The bore hangs on the coefficient directly and that on the bore
/// a little: of secant steps on the coefficient the second leaves 3e-9, the fourth rounding error.
inline double beta_for(double s, double pipe, double reynolds, double given, double least, double greatest)
{
    const double y = Coefficient::y(reynolds);
    const auto beta = [&](double c) {
        const double opening = s / c;
        return std::sqrt(opening / std::sqrt(1 + opening * opening));
    };
    const auto off = [&](double c) {
        const double b = beta(c), raised = elementary::select(b < least, least, b);
        return Coefficient(elementary::select(raised > greatest, greatest, raised), pipe, given).at(y) - c;
    };
    double before = elementary::select(given > 0, given, first_coefficient);
    double off_before = off(before);
    double c = before + off_before;
    for (int step = 0; step < 4; ++step) {
        const double off_now = off(c);
        const double change = off_now * (c - before) / (off_now - off_before);
        before = c;
        c -= elementary::select(off_now == off_before, 0.0, change);
        off_before = off_now;
    }
    return beta(c);
}

}  // namespace cutwater::formulas::orifice
