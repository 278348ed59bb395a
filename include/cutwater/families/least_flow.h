/* generated from the catalogue by cutwater-generate; do not edit. */
/* Least flow and heating. */
#ifndef CUTWATER_FAMILIES_LEAST_FLOW_H
#define CUTWATER_FAMILIES_LEAST_FLOW_H

#include <cutwater/base.h>

#ifdef __cplusplus
extern "C" {
#endif

/*
 * Warming of the liquid by the pump's losses, from head and efficiency.
 *
 *   head_m                       total head at the flow in question; above 0 m
 *   efficiency                   pump efficiency at that flow; above 0 up to 1
 *   specific_heat_kJkgK          specific heat of the liquid at constant pressure; from 0.1 to 20 kJ/(kg K)
 *   -> temperature_rise_K        warming from inlet to outlet
 *
 *   Equation: dT = g H (1/eta - 1)/c_p
 *   Source: energy balance; the relation of ANSI/HI 9.6.3 and of I. J. Karassik et al., Pump Handbook (from memory of
 *           both)
 *   Caution: Leaves out the heating by compression, which is beta T/(1/eta - 1) of this whatever the head: 14 % for
 *            water at 20 degC and an efficiency of 0.7, 1.4 times it for water at 160 degC and 0.75, more for light
 *            hydrocarbons. total_temperature_rise gives both.
 *   Caution: Warmed liquid that comes back to the inlet lowers NPSH available: see allowed_temperature_rise.
 *   Caution: With one specific heat, and for a liquid that stays liquid: a rise of tens of kelvin tells that the flow is
 *            too small, not how hot it gets.
 */
CUTWATER_API cutwater_status cutwater_temperature_rise(double head_m, double efficiency, double specific_heat_kJkgK,
                                          double *temperature_rise_K, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_temperature_rise_rows(size_t rows, cutwater_column head_m, cutwater_column efficiency,
                                               cutwater_column specific_heat_kJkgK,
                                               cutwater_result_column temperature_rise_K,
                                               cutwater_rows_report *report);

/*
 * Warming of the liquid by compression alone, without any loss.
 *
 *   head_m                       total head; above 0 m
 *   specific_heat_kJkgK          specific heat of the liquid at constant pressure; from 0.1 to 20 kJ/(kg K)
 *   expansion_perK               thermal expansion of the liquid, by volume; negative for water below 4 degC; from
 *                                -0.001 to 0.02 1/K
 *   inlet_temperature_degC       temperature at the inlet; above -273.15 degC
 *   -> temperature_rise_K        warming; to be added to temperature_rise
 *
 *   Equation: dT_c = g H beta T/c_p, T in kelvin
 *   Source: thermodynamics, dh = c_p dT + v (1 - beta T) dp (any textbook); checked against IAPWS-IF97 enthalpies of
 *           water to 2 %
 *   Caution: Of the losses' warming it is the part beta T/(1/eta - 1), whatever the head: small for cold water, most of
 *            it for hot or light liquids.
 *   Caution: Take specific heat and expansion at the mean of inlet and outlet state: for water of 20 to 250 degC, up to
 *            200 bar, the rise then agrees with IAPWS-IF97 enthalpies to 0.6 %, with the inlet's values to 2.4 %.
 */
CUTWATER_API cutwater_status cutwater_compression_temperature_rise(double head_m, double specific_heat_kJkgK,
                                                      double expansion_perK, double inlet_temperature_degC,
                                                      double *temperature_rise_K, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_compression_temperature_rise_rows(size_t rows, cutwater_column head_m,
                                                           cutwater_column specific_heat_kJkgK,
                                                           cutwater_column expansion_perK,
                                                           cutwater_column inlet_temperature_degC,
                                                           cutwater_result_column temperature_rise_K,
                                                           cutwater_rows_report *report);

/*
 * Warming of the liquid by losses and compression together.
 *
 *   head_m                       total head at the flow in question; above 0 m
 *   efficiency                   pump efficiency at that flow; above 0 up to 1
 *   specific_heat_kJkgK          specific heat of the liquid at constant pressure; from 0.1 to 20 kJ/(kg K)
 *   expansion_perK               thermal expansion of the liquid, by volume; negative for water below 4 degC; from
 *                                -0.001 to 0.02 1/K
 *   inlet_temperature_degC       temperature at the inlet; above -273.15 degC
 *   -> temperature_rise_K        warming from inlet to outlet
 *
 *   Equation: dT = g H (1/eta - 1)/c_p + g H beta T/c_p, T in kelvin
 *   Source: thermodynamics, dh = c_p dT + v (1 - beta T) dp (any textbook); checked against IAPWS-IF97 enthalpies of
 *           water to 2 %
 *   Caution: Warmed liquid that comes back to the inlet lowers NPSH available: see allowed_temperature_rise.
 *   Caution: Take specific heat and expansion at the mean of inlet and outlet state: for water of 20 to 250 degC, up to
 *            200 bar, the rise then agrees with IAPWS-IF97 enthalpies to 0.6 %, with the inlet's values to 2.4 %.
 *   Caution: With one specific heat, and for a liquid that stays liquid: a rise of tens of kelvin tells that the flow is
 *            too small, not how hot it gets.
 */
CUTWATER_API cutwater_status cutwater_total_temperature_rise(double head_m, double efficiency, double specific_heat_kJkgK,
                                                double expansion_perK, double inlet_temperature_degC,
                                                double *temperature_rise_K, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_total_temperature_rise_rows(size_t rows, cutwater_column head_m, cutwater_column efficiency,
                                                     cutwater_column specific_heat_kJkgK,
                                                     cutwater_column expansion_perK,
                                                     cutwater_column inlet_temperature_degC,
                                                     cutwater_result_column temperature_rise_K,
                                                     cutwater_rows_report *report);

/*
 * Warming of the liquid by the pump's losses, from power and flow.
 *
 *   power_input_kW               pump power input at that flow; above 0 kW
 *   flow_m3h                     flow through the pump; above 0 m3/h
 *   head_m                       total head at that flow; at least 0 m
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   specific_heat_kJkgK          specific heat of the liquid at constant pressure; from 0.1 to 20 kJ/(kg K)
 *   -> temperature_rise_K        warming from inlet to outlet
 *
 *   Equation: dT = (P - rho g Q H)/(rho Q c_p)
 *   Must hold of power_input: it must not be less than the hydraulic power rho g Q H
 *   Source: energy balance; the relation of ANSI/HI 9.6.3 and of I. J. Karassik et al., Pump Handbook (from memory of
 *           both)
 *   Caution: Leaves out the heating by compression, which is beta T/(1/eta - 1) of this whatever the head: 14 % for
 *            water at 20 degC and an efficiency of 0.7, 1.4 times it for water at 160 degC and 0.75, more for light
 *            hydrocarbons. total_temperature_rise gives both.
 *   Caution: Warmed liquid that comes back to the inlet lowers NPSH available: see allowed_temperature_rise.
 *   Caution: With one specific heat, and for a liquid that stays liquid: a rise of tens of kelvin tells that the flow is
 *            too small, not how hot it gets.
 */
CUTWATER_API cutwater_status cutwater_temperature_rise_at_flow(double power_input_kW, double flow_m3h, double head_m,
                                                  double density_kgm3, double specific_heat_kJkgK,
                                                  double *temperature_rise_K, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_temperature_rise_at_flow_rows(size_t rows, cutwater_column power_input_kW,
                                                       cutwater_column flow_m3h, cutwater_column head_m,
                                                       cutwater_column density_kgm3,
                                                       cutwater_column specific_heat_kJkgK,
                                                       cutwater_result_column temperature_rise_K,
                                                       cutwater_rows_report *report);

/*
 * Least flow that keeps the liquid's warming within what is allowed.
 *
 *   shutoff_power_kW             pump power input at closed valve; above 0 kW
 *   shutoff_head_m               total head at closed valve; 0 gives the handbooks' simpler, larger flow; at least 0 m
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   specific_heat_kJkgK          specific heat of the liquid at constant pressure; from 0.1 to 20 kJ/(kg K)
 *   allowed_rise_K               allowed warming; 8 K is common practice for cool water, otherwise by
 *                                allowed_temperature_rise; above 0 K
 *   expansion_perK               thermal expansion of the liquid; 0 leaves the heating by compression out; from -0.001
 *                                to 0.02 1/K; 0 if left out
 *   inlet_temperature_degC       temperature at the inlet; counts with the expansion only; above -273.15 degC; 20 if
 *                                left out
 *   -> flow_m3h                  least continuous flow for heating alone
 *
 *   Equation: Q_min = P_0/[rho (c_p dT + g H_0 (1 - beta T))], T in kelvin
 *   Source: energy balance with power and head as at closed valve; the handbooks' form, without g H_0, in I. J. Karassik
 *           et al., Pump Handbook, and ANSI/HI 9.6.3 (from memory of both); heating by compression as in
 *           compression_temperature_rise
 *   Caution: The thermal minimum is usually the smaller one: keep to the larger of this and the least continuous stable
 *            flow that the pump maker states.
 *   Caution: Liquid led back to the suction vessel keeps the whole power as heat, head and all: give shutoff_head 0 for
 *            that.
 *   Caution: With an expansion of 0 the heating by compression is left out and the flow comes out too small, for hot
 *            water under a high head by a tenth and more.
 *   Caution: Power at the small flow of a radial pump is a little above that at closed valve: add a margin.
 *   Caution: With hot, toxic or flammable liquid, vaporising at the seal or impeller can release it: follow the site's
 *            rules and the pump maker's limits.
 */
CUTWATER_API cutwater_status cutwater_thermal_minimum_flow(double shutoff_power_kW, double shutoff_head_m, double density_kgm3,
                                              double specific_heat_kJkgK, double allowed_rise_K,
                                              double expansion_perK, double inlet_temperature_degC, double *flow_m3h,
                                              cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_thermal_minimum_flow_rows(size_t rows, cutwater_column shutoff_power_kW,
                                                   cutwater_column shutoff_head_m, cutwater_column density_kgm3,
                                                   cutwater_column specific_heat_kJkgK,
                                                   cutwater_column allowed_rise_K, cutwater_column expansion_perK,
                                                   cutwater_column inlet_temperature_degC,
                                                   cutwater_result_column flow_m3h, cutwater_rows_report *report);

/*
 * Warming of the inlet liquid that still leaves NPSH3 and a margin.
 *
 *   inlet_temperature_degC       temperature of the liquid as it comes; above -273.15 degC
 *   npsh_available_m             net positive suction head available at that temperature; at least 0 m
 *   npsh3_m                      net positive suction head at 3 % head drop, at the small flow; at least 0 m
 *   npsh_margin_m                margin to keep above NPSH3; at least 0 m
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   temperatures_degC            the liquid's vapour-pressure curve: temperatures; a series of at least 2 points,
 *                                rising; each above -273.15 degC
 *   vapour_pressures_bara        the liquid's vapour-pressure curve: pressures; a series of at least 2 points, rising;
 *                                each above 0 up to 300 bara
 *   -> allowed_rise_K            warming at which the margin is used up
 *
 *   Equation: p_v(T + dT) = p_v(T) + rho g (NPSHA - NPSH3 - dNPSH)
 *   Must hold of vapour_pressures: both series must have the same number of points
 *   Must hold of npsh_available: it must exceed NPSH3 and the margin together: nothing is left to warm the liquid with
 *   Source: NPSH available falls by the rise of vapour pressure at the inlet: common practice; ln p linear in 1/T
 *           between neighbouring points (Clausius-Clapeyron)
 *   Caution: NPSH3 is already 3 % of head lost to cavitation: keep a margin above it, larger for hot, gassy or
 *            high-energy suction, as agreed with the pump maker.
 *   Caution: Take the vapour pressure at the highest temperature the liquid can have at the impeller's inlet, heating
 *            included.
 *   Caution: With hot, toxic or flammable liquid, vaporising at the seal or impeller can release it: follow the site's
 *            rules and the pump maker's limits.
 */
CUTWATER_API cutwater_status cutwater_allowed_temperature_rise(double inlet_temperature_degC, double npsh_available_m,
                                                  double npsh3_m, double npsh_margin_m, double density_kgm3,
                                                  const double *temperatures_degC, size_t temperatures_degC_count,
                                                  const double *vapour_pressures_bara,
                                                  size_t vapour_pressures_bara_count, double *allowed_rise_K,
                                                  cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_allowed_temperature_rise_rows(size_t rows, cutwater_column inlet_temperature_degC,
                                                       cutwater_column npsh_available_m, cutwater_column npsh3_m,
                                                       cutwater_column npsh_margin_m, cutwater_column density_kgm3,
                                                       const double *temperatures_degC,
                                                       size_t temperatures_degC_count,
                                                       const double *vapour_pressures_bara,
                                                       size_t vapour_pressures_bara_count,
                                                       cutwater_result_column allowed_rise_K,
                                                       cutwater_rows_report *report);

/*
 * Least flow whose warming still leaves NPSH3 and a margin at the inlet.
 *
 *   shutoff_power_kW             pump power input at closed valve; above 0 kW
 *   shutoff_head_m               total head at closed valve; at least 0 m
 *   specific_heat_kJkgK          specific heat of the liquid at constant pressure; from 0.1 to 20 kJ/(kg K)
 *   inlet_temperature_degC       temperature of the liquid as it comes; above -273.15 degC
 *   npsh_available_m             net positive suction head available at that temperature; at least 0 m
 *   npsh3_m                      net positive suction head at 3 % head drop, at the small flow; at least 0 m
 *   npsh_margin_m                margin to keep above NPSH3; at least 0 m
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   temperatures_degC            the liquid's vapour-pressure curve: temperatures; a series of at least 2 points,
 *                                rising; each above -273.15 degC
 *   vapour_pressures_bara        the liquid's vapour-pressure curve: pressures; a series of at least 2 points, rising;
 *                                each above 0 up to 300 bara
 *   expansion_perK               thermal expansion of the liquid; 0 leaves the heating by compression out; from -0.001
 *                                to 0.02 1/K; 0 if left out
 *   -> flow_m3h                  least continuous flow for heating alone
 *
 *   Equation: Q_min = P_0/[rho (c_p dT + g H_0 (1 - beta T))], p_v(T + dT) = p_v(T) + rho g (NPSHA - NPSH3 - dNPSH)
 *   Must hold of vapour_pressures: both series must have the same number of points
 *   Must hold of npsh_available: it must exceed NPSH3 and the margin together: nothing is left to warm the liquid with
 *   Source: NPSH available falls by the rise of vapour pressure at the inlet: common practice; ln p linear in 1/T
 *           between neighbouring points (Clausius-Clapeyron)
 *   Caution: The thermal minimum is usually the smaller one: keep to the larger of this and the least continuous stable
 *            flow that the pump maker states.
 *   Caution: Liquid led back to the suction vessel keeps the whole power as heat, head and all: give shutoff_head 0 for
 *            that.
 *   Caution: NPSH3 is already 3 % of head lost to cavitation: keep a margin above it, larger for hot, gassy or
 *            high-energy suction, as agreed with the pump maker.
 *   Caution: With hot, toxic or flammable liquid, vaporising at the seal or impeller can release it: follow the site's
 *            rules and the pump maker's limits.
 */
CUTWATER_API cutwater_status cutwater_thermal_minimum_flow_from_npsh(double shutoff_power_kW, double shutoff_head_m,
                                                        double specific_heat_kJkgK, double inlet_temperature_degC,
                                                        double npsh_available_m, double npsh3_m, double npsh_margin_m,
                                                        double density_kgm3, const double *temperatures_degC,
                                                        size_t temperatures_degC_count,
                                                        const double *vapour_pressures_bara,
                                                        size_t vapour_pressures_bara_count, double expansion_perK,
                                                        double *flow_m3h, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_thermal_minimum_flow_from_npsh_rows(size_t rows, cutwater_column shutoff_power_kW,
                                                             cutwater_column shutoff_head_m,
                                                             cutwater_column specific_heat_kJkgK,
                                                             cutwater_column inlet_temperature_degC,
                                                             cutwater_column npsh_available_m,
                                                             cutwater_column npsh3_m, cutwater_column npsh_margin_m,
                                                             cutwater_column density_kgm3,
                                                             const double *temperatures_degC,
                                                             size_t temperatures_degC_count,
                                                             const double *vapour_pressures_bara,
                                                             size_t vapour_pressures_bara_count,
                                                             cutwater_column expansion_perK,
                                                             cutwater_result_column flow_m3h,
                                                             cutwater_rows_report *report);

/*
 * How fast a pump at closed valve heats its liquid.
 *
 *   shutoff_power_kW             pump power input at closed valve; above 0 kW
 *   liquid_volume_l              liquid held in the casing; above 0 l
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   specific_heat_kJkgK          specific heat of the liquid at constant pressure; from 0.1 to 20 kJ/(kg K)
 *   metal_mass_kg                metal that warms with it; 0 is the safe side; at least 0 kg; 0 if left out
 *   metal_specific_heat_kJkgK    specific heat of the metal; iron and steel 0.46 to 0.50; from 0.1 to 2 kJ/(kg K); 0.46
 *                                if left out
 *   -> heating_rate_Kmin         with no heat lost to the surroundings
 *
 *   Equation: dT/dt = P_0/(V rho c_p + m c_m)
 *   Source: energy balance; the relation of I. J. Karassik et al., Pump Handbook (from memory of it)
 *   Caution: Never run a pump against a closed valve: the liquid heats, may boil and can burst the casing.
 *   Caution: With the valves on both sides closed the liquid has nowhere to expand: in a casing full of cold water the
 *            pressure rises by some 4 bar for every kelvin, by more when hot, and bursts it long before the liquid
 *            boils.
 *   Caution: With hot, toxic or flammable liquid, vaporising at the seal or impeller can release it: follow the site's
 *            rules and the pump maker's limits.
 *   Caution: Never exceed the pump maker's rated pressure and temperature; pressure equipment falls under local codes.
 */
CUTWATER_API cutwater_status cutwater_closed_valve_heating_rate(double shutoff_power_kW, double liquid_volume_l,
                                                   double density_kgm3, double specific_heat_kJkgK,
                                                   double metal_mass_kg, double metal_specific_heat_kJkgK,
                                                   double *heating_rate_Kmin, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_closed_valve_heating_rate_rows(size_t rows, cutwater_column shutoff_power_kW,
                                                        cutwater_column liquid_volume_l, cutwater_column density_kgm3,
                                                        cutwater_column specific_heat_kJkgK,
                                                        cutwater_column metal_mass_kg,
                                                        cutwater_column metal_specific_heat_kJkgK,
                                                        cutwater_result_column heating_rate_Kmin,
                                                        cutwater_rows_report *report);

/*
 * Time in which a steady heating reaches a temperature.
 *
 *   heating_rate_Kmin            as from closed_valve_heating_rate; above 0 K/min
 *   start_temperature_degC       temperature at the beginning; above -273.15 degC
 *   end_temperature_degC         temperature to be reached, such as the boiling temperature; above -273.15 degC
 *   -> time_min                  time until then
 *
 *   Equation: t = (T_2 - T_1)/(dT/dt)
 *   Must hold of end_temperature: it must lie above the start temperature
 *   Source: steady heating without loss; common practice
 *   Caution: Never run a pump against a closed valve: the liquid heats, may boil and can burst the casing.
 *   Caution: With the valves on both sides closed the liquid has nowhere to expand: in a casing full of cold water the
 *            pressure rises by some 4 bar for every kelvin, by more when hot, and bursts it long before the liquid
 *            boils.
 *   Caution: With hot, toxic or flammable liquid, vaporising at the seal or impeller can release it: follow the site's
 *            rules and the pump maker's limits.
 */
CUTWATER_API cutwater_status cutwater_time_to_temperature(double heating_rate_Kmin, double start_temperature_degC,
                                             double end_temperature_degC, double *time_min, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_time_to_temperature_rows(size_t rows, cutwater_column heating_rate_Kmin,
                                                  cutwater_column start_temperature_degC,
                                                  cutwater_column end_temperature_degC,
                                                  cutwater_result_column time_min, cutwater_rows_report *report);

/*
 * Flow from which a pump's head falls all the way: below it a drooping curve, or one with a dip, is unstable.
 *
 *   flows_m3h                    flows of the curve's points, from closed valve on; a series of at least 3 points,
 *                                rising; each at least 0 m3/h
 *   heads_m                      heads of the curve's points; a series of at least 3 points; each above 0 m
 *   -> flow_m3h                  listed flow from which every head is less than the one before it; 0 for a curve that
 *                                falls from closed valve on
 *
 *   Equation: Q_st = least Q_i from which every further H is less than the one before it
 *   Must hold of heads: both series must have the same number of points
 *   Source: definition of a stable and an unstable curve, ISO 17769-1:2012 and EN 12723 (from memory of both); ANSI/HI
 *           9.6.3-2012 treats drooping curves and curves with a dip (notice of it read)
 *   Caution: A result of 0 says that the curve's shape sets no least flow, not that the pump may run there: it is no
 *            permission to run at or near closed valve, and not the least continuous stable flow that the pump maker
 *            states.
 *   Caution: Judged by the listed points: a droop or a dip between them is not seen, and a measured point that is a
 *            little high counts as a rise.
 *   Caution: No published rule turns suction specific speed into a least flow by formula; above about 213 (1/min, m3/s,
 *            m, per eye; 11 000 in US units) the stable range is narrower (J. L. Hallam, Hydrocarbon Processing, April
 *            1982; from memory).
 *   Caution: Recirculation may set a larger least flow: see suction_recirculation_flow and the pump maker's data.
 */
CUTWATER_API cutwater_status cutwater_falling_head_flow(const double *flows_m3h, size_t flows_m3h_count, const double *heads_m,
                                           size_t heads_m_count, double *flow_m3h, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_falling_head_flow_rows(size_t rows, const double *flows_m3h, size_t flows_m3h_count,
                                                const double *heads_m, size_t heads_m_count,
                                                cutwater_result_column flow_m3h, cutwater_rows_report *report);

/*
 * Flow below which the impeller's inlet recirculates.
 *
 *   eye_diameter_mm              diameter of the impeller eye; from 1 to 10000 mm
 *   hub_diameter_mm              hub or shaft diameter in the eye; 0 for an open eye; at least 0 mm
 *   speed_rpm                    rotational speed; above 0 up to 100000 1/min
 *   velocity_ratio               inlet velocity over rim speed at which recirculation begins, read from Fraser's chart
 *                                by the inlet vane angle; from 0.01 to 0.6
 *   eyes                         2 for a double-suction impeller; a whole number from 1 to 2; 1 if left out
 *   -> flow_m3h                  flow of the whole impeller at the onset
 *
 *   Equation: Q_sr = z (V_e/U_1) (pi D_1 n) (pi/4)(D_1^2 - h^2)
 *   Must hold of hub_diameter: it must be less than the eye diameter
 *   Source: W. H. Fraser, Recirculation in centrifugal pumps, ASME winter annual meeting 1981 (from memory of it; its US
 *           constant 93.6 follows from the geometry)
 *   Caution: The onset is no limit by itself: small pumps run well below it, large and high-head ones should not
 *            (Fraser; from memory).
 *   Caution: A calculated value is a guide: the pump maker's tested data, local codes and a licensed engineer's
 *            judgement go before it.
 */
CUTWATER_API cutwater_status cutwater_suction_recirculation_flow(double eye_diameter_mm, double hub_diameter_mm, double speed_rpm,
                                                    double velocity_ratio, double eyes, double *flow_m3h,
                                                    cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_suction_recirculation_flow_rows(size_t rows, cutwater_column eye_diameter_mm,
                                                         cutwater_column hub_diameter_mm, cutwater_column speed_rpm,
                                                         cutwater_column velocity_ratio, cutwater_column eyes,
                                                         cutwater_result_column flow_m3h,
                                                         cutwater_rows_report *report);

/*
 * Flows between which a pump is best run.
 *
 *   best_efficiency_flow_m3h     best efficiency flow at the actual speed and diameter; above 0 m3/h
 *   specific_speed               specific speed n Q^0.5/H^0.75 in 1/min, m3/s, m of a stage, at best efficiency, with
 *                                the whole flow of a double-suction impeller, as the Hydraulic Institute defines it:
 *                                1.414 times the number per eye; from 1 to 500
 *   -> least_preferred_flow_m3h  lower end of the preferred region
 *   -> greatest_preferred_flow_m3h upper end of the preferred region
 *
 *   Equation: n_s <= 87.1: 0.70 Q_BEP to 1.20 Q_BEP; above: 0.80 Q_BEP to 1.15 Q_BEP
 *   Source: ANSI/HI 9.6.3-2012, preferred operating region: 70 to 120 % of best efficiency flow for most pumps (clause
 *           9.6.3.1 as quoted by a trade magazine, excerpt read; the Hydraulic Institute's Engineering Data Book, read,
 *           spans 90 to 110 % up to 70 to 120 % by specific speed), above a US specific speed of 4500 (87.1 in 1/min,
 *           m3/s, m) 80 to 115 % (from memory of it)
 *   Caution: For the highest specific speeds the region is narrower, down to 90 to 110 %. Above 4500 (US) what is read
 *            of the upper end differs: 110, 115 and 120 %.
 *   Caution: Small pumps, up to about 4 kW, are exempt from it (ANSI/HI 9.6.3, from memory) and commonly run well below:
 *            ask the pump maker.
 *   Caution: The allowable region, its least continuous stable flow with it, is the pump maker's to tell; no formula
 *            here gives it.
 */
CUTWATER_API cutwater_status cutwater_preferred_region(double best_efficiency_flow_m3h, double specific_speed,
                                          double *least_preferred_flow_m3h, double *greatest_preferred_flow_m3h,
                                          cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_preferred_region_rows(size_t rows, cutwater_column best_efficiency_flow_m3h,
                                               cutwater_column specific_speed,
                                               cutwater_result_column least_preferred_flow_m3h,
                                               cutwater_result_column greatest_preferred_flow_m3h,
                                               cutwater_rows_report *report);

/*
 * Region of its curve in which a pump runs.
 *
 *   flow_m3h                     flow at which the pump runs; at least 0 m3/h
 *   best_efficiency_flow_m3h     best efficiency flow at the actual speed and diameter; above 0 m3/h
 *   specific_speed               specific speed n Q^0.5/H^0.75 in 1/min, m3/s, m of a stage, at best efficiency, with
 *                                the whole flow of a double-suction impeller, as the Hydraulic Institute defines it:
 *                                1.414 times the number per eye; from 1 to 500
 *   allowable_minimum_flow_m3h   least continuous flow that the pump maker allows; at least 0 m3/h
 *   allowable_maximum_flow_m3h   greatest continuous flow that the pump maker allows; above 0 m3/h
 *   -> region                    preferred, allowable but not preferred, or outside of both; the ends belong to a region
 *   -> least_preferred_flow_m3h  lower end of the preferred region
 *   -> greatest_preferred_flow_m3h upper end of the preferred region
 *
 *   Equation: preferred: n_s <= 87.1: 0.70 to 1.20 Q_BEP, above: 0.80 to 1.15 Q_BEP, within the allowable; allowable:
 *             Q_min to Q_max
 *   Must hold of allowable_maximum_flow: it must exceed the allowable minimum flow
 *   Source: ANSI/HI 9.6.3-2012, preferred operating region: 70 to 120 % of best efficiency flow for most pumps (clause
 *           9.6.3.1 as quoted by a trade magazine, excerpt read; the Hydraulic Institute's Engineering Data Book, read,
 *           spans 90 to 110 % up to 70 to 120 % by specific speed), above a US specific speed of 4500 (87.1 in 1/min,
 *           m3/s, m) 80 to 115 % (from memory of it)
 *   Caution: For the highest specific speeds the region is narrower, down to 90 to 110 %. Above 4500 (US) what is read
 *            of the upper end differs: 110, 115 and 120 %.
 *   Caution: Small pumps, up to about 4 kW, are exempt from it (ANSI/HI 9.6.3, from memory) and commonly run well below:
 *            ask the pump maker.
 *   Caution: The allowable region, its least continuous stable flow with it, is the pump maker's to tell; no formula
 *            here gives it.
 *   Caution: A calculated value is a guide: the pump maker's tested data, local codes and a licensed engineer's
 *            judgement go before it.
 */
CUTWATER_API cutwater_status cutwater_operating_region(double flow_m3h, double best_efficiency_flow_m3h, double specific_speed,
                                          double allowable_minimum_flow_m3h, double allowable_maximum_flow_m3h,
                                          const char **region, double *least_preferred_flow_m3h,
                                          double *greatest_preferred_flow_m3h, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_operating_region_rows(size_t rows, cutwater_column flow_m3h,
                                               cutwater_column best_efficiency_flow_m3h,
                                               cutwater_column specific_speed,
                                               cutwater_column allowable_minimum_flow_m3h,
                                               cutwater_column allowable_maximum_flow_m3h,
                                               cutwater_result_column region,
                                               cutwater_result_column least_preferred_flow_m3h,
                                               cutwater_result_column greatest_preferred_flow_m3h,
                                               cutwater_rows_report *report);

/*
 * Flow that an orifice plate in a bypass lets through, choked or not.
 *
 *   orifice_bore_mm              bore of the plate; above 0 mm
 *   pipe_bore_mm                 inside diameter of the pipe; from 1 to 10000 mm
 *   upstream_pressure_bara       pressure before the plate; above 0 up to 1000 bara
 *   downstream_pressure_bara     recovered pressure behind the plate; from 0 to 1000 bara
 *   vapour_pressure_bara         vapour pressure at the liquid's temperature before the plate; from 0 to 300 bara
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   viscosity_mm2s               kinematic viscosity of the liquid; from 0.01 to 1000000 mm2/s
 *   discharge_coefficient        0: by ISO 5167-2, within its limits; else that of a plain orifice, 0.5 to below 1
 *                                (sharp about 0.61, thick plate about 0.8); from 0 to below 1; 0 if left out
 *   -> flow_m3h                  flow through the plate
 *   -> coefficient               discharge coefficient
 *   -> reynolds_number           Reynolds number of the pipe
 *   -> limiting_pressure_drop_bar pressure lost for good from which on the flow grows no more
 *   -> choking                   whether the liquid boils in the jet and the flow is held
 *
 *   Equation: Q = C/sqrt(1 - b^4) (pi/4) d^2 sqrt(2 dp/rho); dp_l = dp (r - C b^2)/(r + C b^2), r = sqrt(1 - b^4 (1 -
 *             C^2)), b = d/D; dp_l = p_1 - p_2, at most dp_max = (dp_l/dp)(p_1 - p_v)
 *   Must hold of orifice_bore: it must not exceed 0.75 of the pipe bore
 *   Must hold of downstream_pressure: it must be lower than the upstream pressure
 *   Must hold of vapour_pressure: it must be lower than the upstream pressure: the liquid would boil before the plate
 *   Must hold of discharge_coefficient: it must be 0, for ISO 5167-2, or from 0.5 to below 1
 *   Source: ISO 5167-2:2003, 5.3 and 5.4, tappings at D and D/2 (from memory of it; its coefficients agree with those of
 *           the open-source library fluids 1.0.22); choked flow: IEC 60534-2-1:2011, limiting pressure drop F_L^2 (p_1 -
 *           F_F p_v) (its worked examples read in that library's tests), F_L^2 from the plate's pressure loss, F_F taken
 *           as 1
 *   Caution: Choked, the liquid boils in the jet and a lower pressure behind the plate lets no more through. F_F = 1
 *            tells the least flow: near its critical point, or gassy, a liquid may pass more.
 *   Caution: A plate that takes tens of bar is thicker than ISO 5167-2 has it and erodes: take several in series and
 *            check bypass_orifice_cavitation.
 *   Caution: Small plates, below 12.5 mm of bore or 50 mm of pipe, lie outside of ISO 5167-2: give the coefficient of
 *            the plate's own calibration.
 *   Caution: Never exceed the pump maker's rated pressure and temperature; pressure equipment falls under local codes.
 */
CUTWATER_API cutwater_status cutwater_bypass_flow(double orifice_bore_mm, double pipe_bore_mm, double upstream_pressure_bara,
                                     double downstream_pressure_bara, double vapour_pressure_bara,
                                     double density_kgm3, double viscosity_mm2s, double discharge_coefficient,
                                     double *flow_m3h, double *coefficient, double *reynolds_number,
                                     double *limiting_pressure_drop_bar, const char **choking,
                                     cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_bypass_flow_rows(size_t rows, cutwater_column orifice_bore_mm, cutwater_column pipe_bore_mm,
                                          cutwater_column upstream_pressure_bara,
                                          cutwater_column downstream_pressure_bara,
                                          cutwater_column vapour_pressure_bara, cutwater_column density_kgm3,
                                          cutwater_column viscosity_mm2s, cutwater_column discharge_coefficient,
                                          cutwater_result_column flow_m3h, cutwater_result_column coefficient,
                                          cutwater_result_column reynolds_number,
                                          cutwater_result_column limiting_pressure_drop_bar,
                                          cutwater_result_column choking, cutwater_rows_report *report);

/*
 * Bore of an orifice plate that lets a bypass flow through, choked or not.
 *
 *   flow_m3h                     flow to be let through; above 0 m3/h
 *   pipe_bore_mm                 inside diameter of the pipe; from 1 to 10000 mm
 *   upstream_pressure_bara       pressure before the plate; above 0 up to 1000 bara
 *   downstream_pressure_bara     recovered pressure behind the plate; from 0 to 1000 bara
 *   vapour_pressure_bara         vapour pressure at the liquid's temperature before the plate; from 0 to 300 bara
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   viscosity_mm2s               kinematic viscosity of the liquid; from 0.01 to 1000000 mm2/s
 *   discharge_coefficient        0: by ISO 5167-2, within its limits; else that of a plain orifice, 0.5 to below 1
 *                                (sharp about 0.61, thick plate about 0.8); from 0 to below 1; 0 if left out
 *   -> orifice_bore_mm           bore of the plate
 *   -> choking                   whether the liquid boils in its jet and the flow is held
 *
 *   Equation: the d for which bypass_flow gives Q
 *   Must hold of downstream_pressure: it must be lower than the upstream pressure
 *   Must hold of vapour_pressure: it must be lower than the upstream pressure: the liquid would boil before the plate
 *   Must hold of discharge_coefficient: it must be 0, for ISO 5167-2, or from 0.5 to below 1
 *   Source: ISO 5167-2:2003, 5.3 and 5.4, tappings at D and D/2 (from memory of it; its coefficients agree with those of
 *           the open-source library fluids 1.0.22); choked flow: IEC 60534-2-1:2011, limiting pressure drop F_L^2 (p_1 -
 *           F_F p_v) (its worked examples read in that library's tests), F_L^2 from the plate's pressure loss, F_F taken
 *           as 1
 *   Caution: Choked, the liquid boils in the jet and a lower pressure behind the plate lets no more through. F_F = 1
 *            tells the least flow: near its critical point, or gassy, a liquid may pass more.
 *   Caution: A plate that takes tens of bar is thicker than ISO 5167-2 has it and erodes: take several in series and
 *            check bypass_orifice_cavitation.
 *   Caution: Small plates, below 12.5 mm of bore or 50 mm of pipe, lie outside of ISO 5167-2: give the coefficient of
 *            the plate's own calibration.
 *   Caution: Never exceed the pump maker's rated pressure and temperature; pressure equipment falls under local codes.
 */
CUTWATER_API cutwater_status cutwater_bypass_orifice_bore(double flow_m3h, double pipe_bore_mm, double upstream_pressure_bara,
                                             double downstream_pressure_bara, double vapour_pressure_bara,
                                             double density_kgm3, double viscosity_mm2s, double discharge_coefficient,
                                             double *orifice_bore_mm, const char **choking, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_bypass_orifice_bore_rows(size_t rows, cutwater_column flow_m3h, cutwater_column pipe_bore_mm,
                                                  cutwater_column upstream_pressure_bara,
                                                  cutwater_column downstream_pressure_bara,
                                                  cutwater_column vapour_pressure_bara, cutwater_column density_kgm3,
                                                  cutwater_column viscosity_mm2s,
                                                  cutwater_column discharge_coefficient,
                                                  cutwater_result_column orifice_bore_mm,
                                                  cutwater_result_column choking, cutwater_rows_report *report);

/*
 * Whether a bypass's orifice plate cavitates.
 *
 *   orifice_bore_mm              bore of the plate; above 0 mm
 *   pipe_bore_mm                 inside diameter of the pipe; from 1 to 10000 mm
 *   upstream_pressure_bara       pressure before the plate; above 0 up to 1000 bara
 *   downstream_pressure_bara     recovered pressure behind the plate; from 0 to 1000 bara
 *   vapour_pressure_bara         vapour pressure at the liquid's temperature before the plate; from 0 to 300 bara
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   viscosity_mm2s               kinematic viscosity of the liquid; from 0.01 to 1000000 mm2/s
 *   discharge_coefficient        0: by ISO 5167-2, within its limits; else that of a plain orifice, 0.5 to below 1
 *                                (sharp about 0.61, thick plate about 0.8); from 0 to below 1; 0 if left out
 *   -> pressure_ratio            share of the pressure above vapour pressure that the plate takes
 *   -> onset_ratio               that share at which cavitation is expected to begin, at this upstream pressure
 *   -> cavitation                none, cavitating, choked (boiling in the jet) or flashing (boiling behind it)
 *
 *   Equation: x_F = (p_1 - p_2)/(p_1 - p_v); x_Fzp1 = x_Fz (6 bara/p_1)^0.125, x_Fz = 0.90/sqrt(1 + 3 F_d sqrt(Cv/(1.17
 *             F_L))), F_d = 1, F_L^2 = dp_l/dp of the plate; choked when p_1 - dp <= p_v
 *   Must hold of orifice_bore: it must not exceed 0.75 of the pipe bore
 *   Must hold of downstream_pressure: it must be lower than the upstream pressure
 *   Must hold of vapour_pressure: it must be lower than the upstream pressure: the liquid would boil before the plate
 *   Must hold of discharge_coefficient: it must be 0, for ISO 5167-2, or from 0.5 to below 1
 *   Source: IEC 60534-8-4:2015, estimate of the onset for a valve without test, and its correction for the inlet
 *           pressure, as read in the open-source library fluids 1.0.22, which states that it meets the standard's three
 *           examples; F_d = 1 for one round hole, applied to a plate with the pressure loss of ISO 5167-2:2003 (from
 *           memory of it)
 *   Caution: A guide: the onset is estimated from a rule for valves. A plate that cavitates is noisy and erodes.
 *   Caution: Small plates, below 12.5 mm of bore or 50 mm of pipe, lie outside of ISO 5167-2: give the coefficient of
 *            the plate's own calibration.
 *   Caution: A calculated value is a guide: the pump maker's tested data, local codes and a licensed engineer's
 *            judgement go before it.
 */
CUTWATER_API cutwater_status cutwater_bypass_orifice_cavitation(double orifice_bore_mm, double pipe_bore_mm,
                                                   double upstream_pressure_bara, double downstream_pressure_bara,
                                                   double vapour_pressure_bara, double density_kgm3,
                                                   double viscosity_mm2s, double discharge_coefficient,
                                                   double *pressure_ratio, double *onset_ratio,
                                                   const char **cavitation, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_bypass_orifice_cavitation_rows(size_t rows, cutwater_column orifice_bore_mm,
                                                        cutwater_column pipe_bore_mm,
                                                        cutwater_column upstream_pressure_bara,
                                                        cutwater_column downstream_pressure_bara,
                                                        cutwater_column vapour_pressure_bara,
                                                        cutwater_column density_kgm3, cutwater_column viscosity_mm2s,
                                                        cutwater_column discharge_coefficient,
                                                        cutwater_result_column pressure_ratio,
                                                        cutwater_result_column onset_ratio,
                                                        cutwater_result_column cavitation,
                                                        cutwater_rows_report *report);

#ifdef __cplusplus
}
#endif

#endif
