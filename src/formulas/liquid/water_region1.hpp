// Liquid water: IAPWS-IF97 region 1, the basic equation for the specific Gibbs free energy.
// IAPWS R7-97(2012), clause 5.1, equation (7), coefficients of Table 2.
#pragma once

#include <cutwater/units.hpp>

#include <array>
#include <cstddef>
#include <utility>

namespace cutwater::formulas::water {

namespace region1 {

struct Term {
    int i;  // power of 7.1 - pi
    int j;  // power of tau - 1.222
    double n;
};

inline constexpr std::array<Term, 34> terms{{
    {0, -2, 0.14632971213167},        {0, -1, -0.84548187169114},       {0, 0, -0.37563603672040e1},
    {0, 1, 0.33855169168385e1},       {0, 2, -0.95791963387872},        {0, 3, 0.15772038513228},
    {0, 4, -0.16616417199501e-1},     {0, 5, 0.81214629983568e-3},      {1, -9, 0.28319080123804e-3},
    {1, -7, -0.60706301565874e-3},    {1, -1, -0.18990068218419e-1},    {1, 0, -0.32529748770505e-1},
    {1, 1, -0.21841717175414e-1},     {1, 3, -0.52838357969930e-4},     {2, -3, -0.47184321073267e-3},
    {2, 0, -0.30001780793026e-3},     {2, 1, 0.47661393906987e-4},      {2, 3, -0.44141845330846e-5},
    {2, 17, -0.72694996297594e-15},   {3, -4, -0.31679644845054e-4},    {3, 0, -0.28270797985312e-5},
    {3, 6, -0.85205128120103e-9},     {4, -5, -0.22425281908000e-5},    {4, -2, -0.65171222895601e-6},
    {4, 10, -0.14341729937924e-12},   {5, -8, -0.40516996860117e-6},    {8, -11, -0.12734301741641e-8},
    {8, -6, -0.17424871230634e-9},    {21, -29, -0.68762131295531e-18}, {23, -31, 0.14478307828521e-19},
    {29, -38, 0.26335781662795e-22},  {30, -39, -0.11947622640071e-22}, {31, -40, 0.18228094581404e-23},
    {32, -41, -0.93537087292458e-25},
}};

/// Derivatives of the dimensionless Gibbs free energy gamma(pi, tau); the letter tells what by.
struct Gamma {
    double pi = 0;
    double pi_pi = 0;
    double tau_tau = 0;
    double pi_tau = 0;
};

template <int N>
constexpr double power(double x)
{
    if constexpr (N == 0)
        return 1;
    else if constexpr (N % 2 == 0)
        return power<N / 2>(x * x);
    else
        return x * power<N / 2>(x * x);
}

/// b^j, with 1/b found once for all negative powers.
template <int J>
constexpr double power(double b, double over_b)
{
    if constexpr (J < 0)
        return power<-J>(over_b);
    else
        return power<J>(b);
}

template <std::size_t K>
constexpr void add_term(Gamma& sum, double a, double b, double over_b)
{
    constexpr Term t = terms[K];
    const double of_tau = power<t.j>(b, over_b);
    if constexpr (t.i > 0) sum.pi -= t.n * t.i * power<t.i - 1>(a) * of_tau;
    if constexpr (t.i > 1) sum.pi_pi += t.n * t.i * (t.i - 1) * power<t.i - 2>(a) * of_tau;
    if constexpr (t.j * (t.j - 1) != 0)
        sum.tau_tau += t.n * power<t.i>(a) * t.j * (t.j - 1) * power<t.j - 2>(b, over_b);
    if constexpr (t.i > 0 && t.j != 0) sum.pi_tau -= t.n * t.i * power<t.i - 1>(a) * t.j * power<t.j - 1>(b, over_b);
}

inline Gamma gamma(double pi, double tau)
{
    const double a = 7.1 - pi;
    const double b = tau - 1.222;
    const double over_b = 1 / b;
    Gamma sum;
    [&]<std::size_t... K>(std::index_sequence<K...>) {
        (add_term<K>(sum, a, b, over_b), ...);
    }(std::make_index_sequence<terms.size()>());
    return sum;
}

inline constexpr auto gas_constant = SpecificHeat::from_value(461.526);             // clause 4
inline constexpr auto reducing_pressure = PressureDifference::from_value(16.53e6);  // with equation (7)
inline constexpr auto reducing_temperature = TemperatureDifference::from_value(1386.0);

}  // namespace region1

/// The state of liquid water that everything else is read from.
class Liquid {
public:
    Liquid(Temperature t, AbsolutePressure p)
        : t_(t.above_zero()), p_(p.above_zero()), pi_(p_ / region1::reducing_pressure),
          tau_(region1::reducing_temperature / t_), gamma_(region1::gamma(pi_, tau_))
    {
    }

    Ratio pi() const { return pi_; }
    Ratio tau() const { return tau_; }
    const region1::Gamma& gamma() const { return gamma_; }

    Density density() const { return region1::reducing_pressure / (region1::gas_constant * t_ * gamma_.pi); }

    SpecificHeat specific_heat() const { return -region1::gas_constant * (tau_ * tau_ * gamma_.tau_tau); }

    /// Volume expansion at constant pressure, (1/v)(dv/dT).
    ThermalExpansion expansion() const { return (1.0 - tau_ * gamma_.pi_tau / gamma_.pi) / t_; }

    /// rho w^2 = rho (dp/drho) at constant entropy.
    PressureDifference isentropic_bulk_modulus() const
    {
        const double mixed = gamma_.pi - tau_ * gamma_.pi_tau;
        const double stiffness = mixed * mixed / (tau_ * tau_ * gamma_.tau_tau) - gamma_.pi_pi;
        return region1::reducing_pressure * gamma_.pi / stiffness;
    }

private:
    TemperatureDifference t_;
    PressureDifference p_;
    Ratio pi_;
    Ratio tau_;
    region1::Gamma gamma_;
};

}  // namespace cutwater::formulas::water
