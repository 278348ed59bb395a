// The same relations as an engineer would write them by hand on doubles, without a check: what cutwater is measured
// against.
#pragma once

#include <cstddef>

namespace by_hand {

double npsh_available(double surface_bara, double vapour_bara, double density, double level, double friction);

void npsh_available_rows(std::size_t rows, const double* surface_bara, const double* vapour_bara, const double* density,
                         const double* level, const double* friction, double* npsh);

double friction_head(double flow_m3h, double bore_mm, double length, double roughness_mm, double viscosity_mm2s);

void friction_head_rows(std::size_t rows, const double* flow_m3h, double bore_mm, double length, double roughness_mm,
                        double viscosity_mm2s, double* head);

}  // namespace by_hand
