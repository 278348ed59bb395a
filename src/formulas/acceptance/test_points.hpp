// A whole test, point by point, translated to the rated speed.
#pragma once

#include "formulas/acceptance/measurement.hpp"
#include "formulas/curves/value.hpp"

namespace cutwater::formulas {

/// Each point keeps the speed it was measured at: a motor slows as it is loaded.
inline Outcome<std::tuple<Points<Flow>, Points<Head>, Points<Power>, Points<Fraction>>> test_points_to_rated_speed(
    Series<Flow> flows, Series<Head> heads, Series<Power> powers, Series<RotationalSpeed> test_speeds,
    RotationalSpeed rated_speed, Density test_density, Density rated_density)
{
    std::tuple<Points<Flow>, Points<Head>, Points<Power>, Points<Fraction>> translated;
    auto& [q, h, p, eta] = translated;
    for (std::size_t i = 0; i < flows.size(); ++i) {
        const Fraction efficiency{Ratio(test_density * standard_gravity * flows[i] * heads[i] / powers[i]).value()};
        if (efficiency.value > 1)
            return NoValue{CUTWATER_CONTRADICTION,
                           "powers",
                           "the point at {0} would have an efficiency of {1}: its flow, head, power and density do not "
                           "belong together",
                           {number_in(flows[i], units::m3h), number_in(efficiency, units::fraction)}};
        const auto [flow, head, power, npsh3] = test_to_rated_speed(flows[i], heads[i], powers[i], Head{},
                                                                    test_speeds[i], rated_speed, test_density,
                                                                    rated_density, Ratio(2.0));
        q.push_back(flow);
        h.push_back(head);
        p.push_back(power);
        eta.push_back(efficiency);
    }
    return translated;
}

inline constexpr auto test_points_to_rated_speed_record = record<&test_points_to_rated_speed>(
    {.name = "test_points_to_rated_speed",
     .meaning = "All points of a test translated to the rated speed and density, with their efficiencies",
     .also = "ISO 9906|speed correction of a test",
     .inputs = {series("flows", "Q_i", units::m3h, from(0), "measured flows", 1),
                series("heads", "H_i", units::metre, from(0), "measured heads", 1),
                series("powers", "P_i", units::kW, above(0), "measured pump power inputs", 1),
                series("test_speeds", "n_i", units::rpm, limits::speed_rpm, "speed at each point, as measured", 1),
                input("rated_speed", "n_sp", units::rpm, limits::speed_rpm, "rated speed"),
                input("test_density", "rho", units::kgm3, limits::density_kgm3, "density of the test liquid"),
                input("rated_density", "rho_sp", units::kgm3, limits::density_kgm3, "density of the rated liquid")},
     .results = {output_series<Flow>("rated_flows", "Q_T,i", units::m3h,
                                     "flows at the rated speed, in the order given"),
                 output_series<Head>("rated_heads", "H_T,i", units::metre, "heads at the rated speed"),
                 output_series<Power>("rated_powers", "P_T,i", units::kW,
                                      "power inputs at the rated speed and density"),
                 output_series<Fraction>("efficiencies", "eta_i", units::fraction,
                                         "pump efficiencies, which the translation keeps")},
     .equation = "Q_T = Q n_sp/n_i; H_T = H (n_sp/n_i)^2; P_T = P (n_sp/n_i)^3 rho_sp/rho; eta = rho g Q H/P",
     .source = "ISO 9906:2012, 6.1.2, translation of the test results (from memory of it); efficiency by ISO 17769-1 "
               "(from memory of it)",
     .cautions = {acceptance::thin_liquids, acceptance::near_speed,
                  "The power is the pump's power input, not what the motor takes from the mains."},
     .example = {"[0, 50, 100], [60, 55, 42], [8, 12, 16], [1490, 1486, 1480], 1450, 998, 998",
                 "[0, 48.79, 97.97], [56.82, 52.37, 40.31], [7.373, 11.149, 15.047], [0, 0.6230, 0.7136]",
                 "independent computation"}},
    pairs::equal_length<"heads", "flows">(), pairs::equal_length<"powers", "flows">(),
    pairs::equal_length<"test_speeds", "flows">("every point needs the speed that it was measured at"),
    relation<"test_speeds", "rated_speed">(
        [](Series<RotationalSpeed> n, RotationalSpeed rated) {
            for (std::size_t i = 0; i < n.size(); ++i)
                if (!acceptance::speed_within(n[i], rated, 0.5)) return false;
            return true;
        },
        "every point must be measured at 50 to 120 % of the rated speed"));

}  // namespace cutwater::formulas
