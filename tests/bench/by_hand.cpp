#include "by_hand.hpp"

#include <cmath>

namespace by_hand {

double npsh_available(double surface_bara, double vapour_bara, double density, double level, double friction)
{
    return (surface_bara - vapour_bara) * 1e5 / (density * 9.80665) + level - friction;
}

void npsh_available_rows(std::size_t rows, const double* surface_bara, const double* vapour_bara, const double* density,
                         const double* level, const double* friction, double* npsh)
{
    for (std::size_t r = 0; r < rows; ++r)
        npsh[r] = (surface_bara[r] - vapour_bara[r]) * 1e5 / (density[r] * 9.80665) + level[r] - friction[r];
}

double friction_head(double flow_m3h, double bore_mm, double length, double roughness_mm, double viscosity_mm2s)
{
    const double d = bore_mm / 1000;
    const double v = flow_m3h / 3600 / (3.14159265358979323846 / 4 * d * d);
    const double re = v * d / (viscosity_mm2s * 1e-6);
    double f = 64 / re;
    if (re > 2000) {
        double x = 8;
        for (int i = 0; i < 50; ++i) {  // fixed-point iteration, as sheets do it
            const double next = -2 * std::log10(roughness_mm / bore_mm / 3.7 + 2.51 / re * x);
            if (std::fabs(next - x) < 1e-12) break;
            x = next;
        }
        f = 1 / (x * x);
    }
    return f * length / d * v * v / (2 * 9.80665);
}

void friction_head_rows(std::size_t rows, const double* flow_m3h, double bore_mm, double length, double roughness_mm,
                        double viscosity_mm2s, double* head)
{
    for (std::size_t r = 0; r < rows; ++r)
        head[r] = friction_head(flow_m3h[r], bore_mm, length, roughness_mm, viscosity_mm2s);
}

}  // namespace by_hand
