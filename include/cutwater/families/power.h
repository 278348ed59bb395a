/* generated from the catalogue by cutwater-generate; do not edit. */
/* Power, motor, energy. */
#ifndef CUTWATER_FAMILIES_POWER_H
#define CUTWATER_FAMILIES_POWER_H

#include <cutwater/base.h>

#ifdef __cplusplus
extern "C" {
#endif

/*
 * Power that a pump gives to the liquid (pump power output).
 *
 *   flow_m3h                     flow delivered; at least 0 m3/h
 *   head_m                       pump total head; at least 0 m
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   -> hydraulic_power_kW        pump power output
 *
 *   Equation: P_u = rho g Q H
 *   Source: ISO 17769-1:2012, pump power output (from memory of it); Hydraulic Institute, Engineering Data Book, 2nd
 *           edition, Eq. 1.B.3 (excerpt read)
 */
CUTWATER_API cutwater_status cutwater_hydraulic_power(double flow_m3h, double head_m, double density_kgm3,
                                         double *hydraulic_power_kW, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_hydraulic_power_rows(size_t rows, cutwater_column flow_m3h, cutwater_column head_m,
                                              cutwater_column density_kgm3, cutwater_result_column hydraulic_power_kW,
                                              cutwater_rows_report *report);

/*
 * Power that a pump takes at its shaft.
 *
 *   flow_m3h                     flow delivered; at least 0 m3/h
 *   head_m                       pump total head; at least 0 m
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   efficiency                   pump efficiency at that flow; above 0 up to 1
 *   -> power_input_kW            pump power input
 *
 *   Equation: P = rho g Q H/eta
 *   Source: ISO 17769-1:2012, pump power input (from memory of it); Hydraulic Institute, Engineering Data Book, 2nd
 *           edition, Eq. 1.B.4 (excerpt read)
 *   Caution: At no flow the formula gives no power; the true shut-off power is read from the pump's curve.
 */
CUTWATER_API cutwater_status cutwater_pump_power_input(double flow_m3h, double head_m, double density_kgm3, double efficiency,
                                          double *power_input_kW, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_pump_power_input_rows(size_t rows, cutwater_column flow_m3h, cutwater_column head_m,
                                               cutwater_column density_kgm3, cutwater_column efficiency,
                                               cutwater_result_column power_input_kW, cutwater_rows_report *report);

/*
 * Efficiency of a pump from its flow, head and shaft power.
 *
 *   flow_m3h                     flow delivered; at least 0 m3/h
 *   head_m                       pump total head; at least 0 m
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   power_input_kW               power at the pump's shaft; above 0 kW
 *   -> efficiency                pump efficiency
 *
 *   Equation: eta = rho g Q H/P
 *   Must hold of power_input: the shaft power must be at least the power given to the liquid, rho g Q H: no pump gives
 *                             out more than it takes
 *   Source: ISO 17769-1:2012, pump efficiency (from memory of it); Hydraulic Institute, Engineering Data Book, 2nd
 *           edition, Eq. 1.B.5 (excerpt read)
 */
CUTWATER_API cutwater_status cutwater_pump_efficiency(double flow_m3h, double head_m, double density_kgm3, double power_input_kW,
                                         double *efficiency, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_pump_efficiency_rows(size_t rows, cutwater_column flow_m3h, cutwater_column head_m,
                                              cutwater_column density_kgm3, cutwater_column power_input_kW,
                                              cutwater_result_column efficiency, cutwater_rows_report *report);

/*
 * Torque of a shaft from its power and speed.
 *
 *   power_input_kW               power at the shaft; at least 0 kW
 *   speed_rpm                    speed of rotation; above 0 up to 100000 1/min
 *   -> torque_Nm                 torque
 *
 *   Equation: T = P/(2 pi n)
 *   Source: mechanics; common practice
 */
CUTWATER_API cutwater_status cutwater_shaft_torque(double power_input_kW, double speed_rpm, double *torque_Nm,
                                      cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_shaft_torque_rows(size_t rows, cutwater_column power_input_kW, cutwater_column speed_rpm,
                                           cutwater_result_column torque_Nm, cutwater_rows_report *report);

/*
 * Least ratio of a motor's rating to the pump's power input.
 *
 *   motor_rating_kW              rated output of the motor; above 0 up to 100000 kW
 *   rule                         "ISO 13709": 1.25 below 22 kW, 1.15 from 22 to 55 kW, 1.10 above; "process": 1.20 up to
 *                                7.5 kW, 1.15 up to 40 kW, 1.10 above; "ISO 13709" or "process"; "ISO 13709" if left out
 *   -> margin                    rated motor output over pump power input at the rated duty, at least
 *
 *   Equation: ISO 13709: 1.25 for P_N < 22 kW; 1.15 for P_N <= 55 kW; 1.10 above. process: 1.20 for P_N <= 7.5 kW; 1.15
 *             for P_N <= 40 kW; 1.10 above
 *   Source: "ISO 13709": ISO 13709:2009, 7.1.5, driver margin (from memory of it); "process": common practice for pumps
 *           to ISO 5199, ISO 9905 and ISO 9908, whose own curve could not be read
 *   Caution: The bracket goes by the motor's rating, not by the pump's power; a motor's service factor is no margin.
 *   Caution: Check the power at the end of the curve too, and at the greatest density and viscosity the pump will meet,
 *            starting cold included.
 *   Caution: ISO 5199's own curve asks more of small motors (from memory).
 */
CUTWATER_API cutwater_status cutwater_motor_power_margin(double motor_rating_kW, const char *rule, double *margin,
                                            cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_motor_power_margin_rows(size_t rows, cutwater_column motor_rating_kW, const char *rule,
                                                 cutwater_result_column margin, cutwater_rows_report *report);

/*
 * Smallest listed motor rating that leaves the margin over the pump's power input.
 *
 *   power_input_kW               pump power input at the rated duty; above 0 kW
 *   rule                         "ISO 13709": 1.25 below 22 kW, 1.15 from 22 to 55 kW, 1.10 above; "process": 1.20 up to
 *                                7.5 kW, 1.15 up to 40 kW, 1.10 above; "ISO 13709" or "process"; "ISO 13709" if left out
 *   series                       "primary": first series of IEC 60072-1; "secondary": both its series; "trade": ratings
 *                                kept in stock; "primary", "secondary" or "trade"; "trade" if left out
 *   -> motor_rating_kW           rated output of the motor
 *   -> margin_obtained           that rating over the pump power input
 *
 *   Equation: P_N = the least rating of the series with P_N >= m(P_N) P, m the margin for that rating
 *   Source: IEC 60072-1:1991, table 7, both series (from memory of it). Margin: "ISO 13709": ISO 13709:2009, 7.1.5 (from
 *           memory of it); "process" and "trade": common practice
 *   Caution: The bracket goes by the motor's rating, not by the pump's power; a motor's service factor is no margin.
 *   Caution: Check the power at the end of the curve too, and at the greatest density and viscosity the pump will meet,
 *            starting cold included.
 *   Caution: What is kept in stock differs from maker to maker and by country: some list 280 kW between 250 and 315;
 *            North American motors go by horsepower.
 */
CUTWATER_API cutwater_status cutwater_motor_rating_needed(double power_input_kW, const char *rule, const char *series,
                                             double *motor_rating_kW, double *margin_obtained,
                                             cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_motor_rating_needed_rows(size_t rows, cutwater_column power_input_kW, const char *rule,
                                                  const char *series, cutwater_result_column motor_rating_kW,
                                                  cutwater_result_column margin_obtained,
                                                  cutwater_rows_report *report);

/*
 * Nominal full-load efficiency that a motor of an efficiency class has at least.
 *
 *   rated_power_kW               rated output of the motor; from 0.12 to 1000 kW
 *   poles                        number of poles: 2, 4, 6 or 8; a whole number from 2 to 8
 *   frequency_Hz                 mains frequency: 50 or 60 Hz; from 50 to 60 Hz; 50 if left out
 *   efficiency_class             efficiency class of the motor; what law asks: see motor_class_required_eu; "IE1",
 *                                "IE2", "IE3", "IE4" or "IE5"; "IE3" if left out
 *   -> efficiency                nominal efficiency at rated output
 *
 *   Equation: 50 Hz, up to 200 kW: eta_M = A x^3 + B x^2 + C x + D per cent, x = log10(P_N/kW), rounded to a tenth; IE1,
 *             above 200 kW and 60 Hz: tables; 60 Hz between ratings: the nearer rating; IE5: 0.8 of the losses of IE4,
 *             eta = 1/(1 + 0.8 (1/eta_IE4 - 1)), rounded to a tenth
 *   Must hold of poles: a motor's poles come in pairs: give an even number
 *   Must hold of frequency: the classes are set for 50 Hz and 60 Hz only
 *   Source: IEC 60034-30-1:2014; its 50 Hz coefficients for IE2 to IE4 and the rules between ratings: Regulation (EU)
 *           2019/1781, Annex I, read as retained in UK SI 2021/745, Schedule 16; IE1, above 200 kW, and 60 Hz tables
 *           (from memory of it, 129 of the IE2 and IE3 values at 60 Hz checked against 10 CFR 431.25, 10 CFR 431.446 and
 *           42 U.S.C. 6313; IE2 at 0.75 kW, 1.1 kW 8 poles, 150 kW 8 poles and 185 kW 4 and 8 poles differ from the
 *           North American table and stay unconfirmed). IE5: a fifth less loss than IE4, named as its goal (secondary);
 *           IEC TS 60034-30-2:2016 has a table of its own, not read. The edition of 2025 was not read
 *   Caution: IE5 is tabled by IEC TS 60034-30-2 for motors made for converters only; from memory its table lies within
 *            0.1 points of this, for four poles from 0.75 kW on.
 *   Caution: The class's least nominal value at full load: real motors differ, are less efficient at low load, and may
 *            be off by the tolerance of IEC 60034-1.
 */
CUTWATER_API cutwater_status cutwater_motor_efficiency(double rated_power_kW, double poles, double frequency_Hz,
                                          const char *efficiency_class, double *efficiency, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_motor_efficiency_rows(size_t rows, cutwater_column rated_power_kW, cutwater_column poles,
                                               cutwater_column frequency_Hz, const char *efficiency_class,
                                               cutwater_result_column efficiency, cutwater_rows_report *report);

/*
 * Least efficiency class that Regulation (EU) 2019/1781 asks of a motor placed on the market.
 *
 *   rated_power_kW               rated output of the motor, within the regulation's 0.12 to 1000 kW; from 0.12 to 1000
 *                                kW
 *   poles                        number of poles: 2, 4, 6 or 8; a whole number from 2 to 8
 *   kind                         three-phase; brake motor; Ex eb, increased safety; other Ex, other explosion-protected;
 *                                single-phase; "three-phase", "brake motor", "Ex eb", "other Ex" or "single-phase";
 *                                "three-phase" if left out
 *   in_force_from                which of the regulation's steps; "1 July 2021" or "1 July 2023"; "1 July 2023" if left
 *                                out
 *   -> efficiency_class          least class; none: not yet asked at that step
 *
 *   Equation: from 1 July 2021: IE2 below 0.75 kW, IE3 from 0.75 kW, but for Ex eb and single-phase; from 1 July 2023:
 *             IE2 for these, IE4 for three-phase motors of 75 to 200 kW with 2, 4 or 6 poles that are neither brake nor
 *             explosion-protected motors
 *   Must hold of poles: a motor's poles come in pairs: give an even number
 *   Source: Commission Regulation (EU) 2019/1781, Annex I, as amended by (EU) 2021/341: its steps as told by the IEA's
 *           Electric Motor Systems Annex and by trade notices (read); its scope, article 2 (excerpt read)
 *   Caution: No legal finding: it holds for single-speed motors on the mains, 50 to 1000 V, continuous duty; check the
 *            regulation in force, its exceptions, and the law of other countries: in the United States 10 CFR 431.25.
 */
CUTWATER_API cutwater_status cutwater_motor_class_required_eu(double rated_power_kW, double poles, const char *kind,
                                                 const char *in_force_from, const char **efficiency_class,
                                                 cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_motor_class_required_eu_rows(size_t rows, cutwater_column rated_power_kW,
                                                      cutwater_column poles, const char *kind,
                                                      const char *in_force_from,
                                                      cutwater_result_column efficiency_class,
                                                      cutwater_rows_report *report);

/*
 * Efficiency of a motor at part load and full speed, from that at its rated output.
 *
 *   rated_efficiency             efficiency at the rated output, as from motor_efficiency or the plate; above 0 up to 1
 *   load                         shaft power over rated output; above 0 up to 1.25
 *   constant_loss_share          share of the motor's full-load losses that does not change with load; 0.36 puts its
 *                                best efficiency at 75 % load; from 0 to 1; 0.36 if left out
 *   -> efficiency                efficiency at that load
 *
 *   Equation: eta_M = x/(x + (1/eta_N - 1)(c + (1 - c) x^2))
 *   Source: motor losses a constant part and a part with the square of the load: IEC TS 60034-31, efficiency at part
 *           load (from memory of it); best efficiency near 75 % load: US Department of Energy, Determining Electric
 *           Motor Load and Efficiency (from memory of it), common practice
 *   Caution: The share of constant losses differs from motor to motor: take the maker's efficiencies at 50, 75 and 100 %
 *            where they are known.
 *   Caution: On a frequency converter at reduced speed the losses differ: see duty_profile_energy.
 */
CUTWATER_API cutwater_status cutwater_motor_efficiency_at_load(double rated_efficiency, double load, double constant_loss_share,
                                                  double *efficiency, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_motor_efficiency_at_load_rows(size_t rows, cutwater_column rated_efficiency,
                                                       cutwater_column load, cutwater_column constant_loss_share,
                                                       cutwater_result_column efficiency,
                                                       cutwater_rows_report *report);

/*
 * Speed of the turning field of a motor.
 *
 *   frequency_Hz                 frequency of the supply or of the drive's output; from 1 to 400 Hz
 *   poles                        number of poles, an even number; a whole number from 2 to 48
 *   -> speed_rpm                 synchronous speed
 *
 *   Equation: n_s = 2 f/(2p), 120 f/(2p) in 1/min
 *   Must hold of poles: a motor's poles come in pairs: give an even number
 *   Source: IEC 60034-1, synchronous speed (from memory of it)
 */
CUTWATER_API cutwater_status cutwater_synchronous_speed(double frequency_Hz, double poles, double *speed_rpm,
                                           cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_synchronous_speed_rows(size_t rows, cutwater_column frequency_Hz, cutwater_column poles,
                                                cutwater_result_column speed_rpm, cutwater_rows_report *report);

/*
 * Speed of an induction motor with its slip.
 *
 *   frequency_Hz                 frequency of the supply or of the drive's output; from 1 to 400 Hz
 *   poles                        number of poles, an even number; a whole number from 2 to 48
 *   slip                         slip at the load, from the motor's plate; 0 for a synchronous motor; from 0 to 0.2
 *   -> speed_rpm                 speed of rotation
 *
 *   Equation: n = (1 - s) 2 f/(2p)
 *   Must hold of poles: a motor's poles come in pairs: give an even number
 *   Source: IEC 60034-1, slip (from memory of it)
 *   Caution: Slip grows about in proportion to the load, from nil at no load to the plate's value at rated output.
 */
CUTWATER_API cutwater_status cutwater_motor_speed(double frequency_Hz, double poles, double slip, double *speed_rpm,
                                     cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_motor_speed_rows(size_t rows, cutwater_column frequency_Hz, cutwater_column poles,
                                          cutwater_column slip, cutwater_result_column speed_rpm,
                                          cutwater_rows_report *report);

/*
 * Line current of a three-phase motor.
 *
 *   shaft_power_kW               power at the motor's shaft; at least 0 kW
 *   voltage_V                    voltage between lines; above 0 up to 20000 V
 *   motor_efficiency             efficiency of the motor at that load; above 0 up to 1
 *   power_factor                 power factor at that load; above 0 up to 1
 *   -> current_A                 line current
 *
 *   Equation: I = P/(sqrt(3) U eta_M cos phi)
 *   Source: three-phase power; common practice
 *   Caution: Running current at that load; the starting current is several times as large. Cables and protection follow
 *            local codes.
 */
CUTWATER_API cutwater_status cutwater_motor_current(double shaft_power_kW, double voltage_V, double motor_efficiency,
                                       double power_factor, double *current_A, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_motor_current_rows(size_t rows, cutwater_column shaft_power_kW, cutwater_column voltage_V,
                                            cutwater_column motor_efficiency, cutwater_column power_factor,
                                            cutwater_result_column current_A, cutwater_rows_report *report);

/*
 * Power drawn from the mains for a power at the shaft.
 *
 *   shaft_power_kW               power at the motor's shaft; at least 0 kW
 *   motor_efficiency             efficiency of the motor at that load; above 0 up to 1
 *   drive_efficiency             efficiency of the frequency converter; 1 without one; above 0 up to 1; 1 if left out
 *   -> electrical_power_kW       power drawn from the mains
 *
 *   Equation: P_el = P/(eta_M eta_D)
 *   Source: definition of efficiency; IEC 60034-1 (from memory of it)
 */
CUTWATER_API cutwater_status cutwater_electrical_power(double shaft_power_kW, double motor_efficiency, double drive_efficiency,
                                          double *electrical_power_kW, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_electrical_power_rows(size_t rows, cutwater_column shaft_power_kW,
                                               cutwater_column motor_efficiency, cutwater_column drive_efficiency,
                                               cutwater_result_column electrical_power_kW,
                                               cutwater_rows_report *report);

/*
 * Efficiency of a frequency converter at part load: a representative value.
 *
 *   rated_power_kW               rated output of the converter; its 3 to 400 hp are taken as 2.2 to 300 kW; from 2.2 to
 *                                300 kW
 *   load                         output over rated output; from 0.016 to 1
 *   -> efficiency                efficiency of the converter
 *
 *   Equation: table of efficiency by rating and load, straight lines between its points
 *   Source: US Department of Energy, Motor Systems Tip Sheet 11, Adjustable Speed Drive Part-Load Efficiency, table 1,
 *           pulse-width modulated drives (from memory of it; python3-fluids 1.0.22 holds the same values)
 *   Caution: Representative of drives of about 2010, no standard's limit: take the maker's losses (IEC 61800-9-2) where
 *            they are known.
 */
CUTWATER_API cutwater_status cutwater_drive_efficiency(double rated_power_kW, double load, double *efficiency,
                                          cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_drive_efficiency_rows(size_t rows, cutwater_column rated_power_kW, cutwater_column load,
                                               cutwater_result_column efficiency, cutwater_rows_report *report);

/*
 * Efficiency from wire to water, of pump, motor and drive together.
 *
 *   pump_efficiency              efficiency of the pump at the duty; above 0 up to 1
 *   motor_efficiency             efficiency of the motor at that load; above 0 up to 1
 *   drive_efficiency             efficiency of the converter or gear; 1 without one; above 0 up to 1; 1 if left out
 *   -> overall_efficiency        power given to the liquid over power from the mains
 *
 *   Equation: eta = eta_P eta_M eta_D
 *   Source: ISO 17769-1:2012, overall efficiency (from memory of it)
 */
CUTWATER_API cutwater_status cutwater_overall_efficiency(double pump_efficiency, double motor_efficiency, double drive_efficiency,
                                            double *overall_efficiency, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_overall_efficiency_rows(size_t rows, cutwater_column pump_efficiency,
                                                 cutwater_column motor_efficiency, cutwater_column drive_efficiency,
                                                 cutwater_result_column overall_efficiency,
                                                 cutwater_rows_report *report);

/*
 * Efficiency from wire to water as measured: flow and head against power from the mains.
 *
 *   flow_m3h                     flow delivered; at least 0 m3/h
 *   head_m                       pump total head; at least 0 m
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   electrical_power_kW          power drawn from the mains; above 0 kW
 *   -> overall_efficiency        power given to the liquid over power from the mains
 *
 *   Equation: eta = rho g Q H/P_el
 *   Must hold of electrical_power: the power from the mains must be at least the power given to the liquid, rho g Q H
 *   Source: ISO 17769-1:2012, overall efficiency (from memory of it)
 */
CUTWATER_API cutwater_status cutwater_wire_to_water_efficiency(double flow_m3h, double head_m, double density_kgm3,
                                                  double electrical_power_kW, double *overall_efficiency,
                                                  cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_wire_to_water_efficiency_rows(size_t rows, cutwater_column flow_m3h, cutwater_column head_m,
                                                       cutwater_column density_kgm3,
                                                       cutwater_column electrical_power_kW,
                                                       cutwater_result_column overall_efficiency,
                                                       cutwater_rows_report *report);

/*
 * Energy from the mains for each cubic metre pumped.
 *
 *   head_m                       pump total head; at least 0 m
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   overall_efficiency           wire to water: pump, motor and drive together; above 0 up to 1
 *   -> specific_energy_kWhm3     energy for each volume
 *
 *   Equation: e = rho g H/eta
 *   Source: ISO 17769-1:2012, pump power output over flow (from memory of it); common practice
 */
CUTWATER_API cutwater_status cutwater_specific_energy(double head_m, double density_kgm3, double overall_efficiency,
                                         double *specific_energy_kWhm3, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_specific_energy_rows(size_t rows, cutwater_column head_m, cutwater_column density_kgm3,
                                              cutwater_column overall_efficiency,
                                              cutwater_result_column specific_energy_kWhm3,
                                              cutwater_rows_report *report);

/*
 * Energy for each cubic metre pumped, from power and flow as measured.
 *
 *   electrical_power_kW          power drawn from the mains; at least 0 kW
 *   flow_m3h                     flow delivered; above 0 m3/h
 *   -> specific_energy_kWhm3     energy for each volume
 *
 *   Equation: e = P_el/Q
 *   Source: definition; common practice
 */
CUTWATER_API cutwater_status cutwater_specific_energy_from_power(double electrical_power_kW, double flow_m3h,
                                                    double *specific_energy_kWhm3, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_specific_energy_from_power_rows(size_t rows, cutwater_column electrical_power_kW,
                                                         cutwater_column flow_m3h,
                                                         cutwater_result_column specific_energy_kWhm3,
                                                         cutwater_rows_report *report);

/*
 * Energy that a year's duty profile takes from the mains.
 *
 *   flows_m3h                    flow at each point of the profile; a series of at least 1 point; each at least 0 m3/h
 *   heads_m                      pump total head at each point; a series of at least 1 point; each at least 0 m
 *   overall_efficiencies         wire-to-water efficiency at each point; a series of at least 1 point; each above 0 up
 *                                to 1
 *   hours_h                      hours a year at each point of the profile; a series of at least 1 point; each at least
 *                                0 h
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3; 998.2 if left out
 *   -> energy_kWh                energy from the mains in the year
 *   -> volume_m3                 volume pumped in the year
 *   -> specific_energy_kWhm3     energy for each volume, mean of the year
 *
 *   Equation: E = sum(rho g Q_i H_i/eta_i t_i); V = sum(Q_i t_i)
 *   Must hold of heads: there must be as many heads as flows
 *   Must hold of overall_efficiencies: there must be as many efficiencies as flows
 *   Must hold of hours: there must be as many hours as flows
 *   Must hold of hours: the hours must add up to at most a year, 8784 h
 *   Must hold of flows: the profile must pump something: give at least one flow above 0 with hours above 0
 *   Source: Hydraulic Institute, Europump and US Department of Energy, Pump Life Cycle Costs, 2001, energy costs (from
 *           memory of it)
 *   Caution: At closed valve a pump takes power that this sum does not hold: add those hours with
 *            annual_energy_from_power.
 */
CUTWATER_API cutwater_status cutwater_annual_energy(const double *flows_m3h, size_t flows_m3h_count, const double *heads_m,
                                       size_t heads_m_count, const double *overall_efficiencies,
                                       size_t overall_efficiencies_count, const double *hours_h, size_t hours_h_count,
                                       double density_kgm3, double *energy_kWh, double *volume_m3,
                                       double *specific_energy_kWhm3, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_annual_energy_rows(size_t rows, const double *flows_m3h, size_t flows_m3h_count,
                                            const double *heads_m, size_t heads_m_count,
                                            const double *overall_efficiencies, size_t overall_efficiencies_count,
                                            const double *hours_h, size_t hours_h_count, cutwater_column density_kgm3,
                                            cutwater_result_column energy_kWh, cutwater_result_column volume_m3,
                                            cutwater_result_column specific_energy_kWhm3,
                                            cutwater_rows_report *report);

/*
 * Energy of a year from the power drawn at each point of the duty profile.
 *
 *   electrical_powers_kW         power drawn from the mains at each point; a series of at least 1 point; each at least 0
 *                                kW
 *   hours_h                      hours a year at each point of the profile; a series of at least 1 point; each at least
 *                                0 h
 *   -> energy_kWh                energy from the mains in the year
 *
 *   Equation: E = sum(P_i t_i)
 *   Must hold of hours: there must be as many hours as powers
 *   Must hold of hours: the hours must add up to at most a year, 8784 h
 *   Source: Hydraulic Institute, Europump and US Department of Energy, Pump Life Cycle Costs, 2001, energy costs (from
 *           memory of it)
 */
CUTWATER_API cutwater_status cutwater_annual_energy_from_power(const double *electrical_powers_kW,
                                                  size_t electrical_powers_kW_count, const double *hours_h,
                                                  size_t hours_h_count, double *energy_kWh, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_annual_energy_from_power_rows(size_t rows, const double *electrical_powers_kW,
                                                       size_t electrical_powers_kW_count, const double *hours_h,
                                                       size_t hours_h_count, cutwater_result_column energy_kWh,
                                                       cutwater_rows_report *report);

/*
 * Cost of a year's energy.
 *
 *   energy_kWh                   energy from the mains in the year; at least 0 kWh
 *   price_per_kWh                price of a kilowatt-hour, in any one currency; at least 0
 *   -> cost                      cost in that currency
 *
 *   Equation: C = c E
 *   Source: definition; common practice
 *   Caution: Charges for peak demand and reactive power are not in it.
 */
CUTWATER_API cutwater_status cutwater_annual_energy_cost(double energy_kWh, double price_per_kWh, double *cost,
                                            cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_annual_energy_cost_rows(size_t rows, cutwater_column energy_kWh,
                                                 cutwater_column price_per_kWh, cutwater_result_column cost,
                                                 cutwater_rows_report *report);

/*
 * Carbon dioxide that goes with an amount of energy.
 *
 *   energy_kWh                   energy from the mains; at least 0 kWh
 *   emission_factor_kgkWh        emissions of the supply for each unit of energy, of its year and country; from 0 to 5
 *                                kg/kWh
 *   -> emission_kg               mass of carbon dioxide
 *
 *   Equation: m = f E
 *   Source: definition; common practice
 *   Caution: Emission factors change from year to year and by the way they are drawn up: state which was taken.
 */
CUTWATER_API cutwater_status cutwater_carbon_emission(double energy_kWh, double emission_factor_kgkWh, double *emission_kg,
                                         cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_carbon_emission_rows(size_t rows, cutwater_column energy_kWh,
                                              cutwater_column emission_factor_kgkWh,
                                              cutwater_result_column emission_kg, cutwater_rows_report *report);

/*
 * Present value of a cost that returns every year, for one unit of it at today's prices.
 *
 *   interest_rate                interest a year; from -0.2 to 1
 *   years                        years of life; a whole number from 1 to 60
 *   inflation_rate               rise of prices a year; from -0.2 to 1; 0 if left out
 *   -> present_value_factor      factor on the yearly cost
 *
 *   Equation: F = q + q^2 + ... + q^n, q = (1 + p)/(1 + i)
 *   Source: Hydraulic Institute, Europump and US Department of Energy, Pump Life Cycle Costs: A Guide to LCC Analysis
 *           for Pumping Systems, 2001 (from memory of it; the four results of its example come out to the unit)
 *   Caution: Exact compounding, payments at the ends of the years, as in the guide's own example. Interest less
 *            inflation taken for one rate gives a little less.
 */
CUTWATER_API cutwater_status cutwater_present_value_factor(double interest_rate, double years, double inflation_rate,
                                              double *present_value_factor, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_present_value_factor_rows(size_t rows, cutwater_column interest_rate, cutwater_column years,
                                                   cutwater_column inflation_rate,
                                                   cutwater_result_column present_value_factor,
                                                   cutwater_rows_report *report);

/*
 * Present value of all that a pump costs over its life.
 *
 *   purchase                     initial cost: pump, motor, drive, pipework; at least 0
 *   installation                 installation and commissioning; at least 0
 *   energy                       energy a year, at today's price; at least 0
 *   operation                    operation a year: supervision; at least 0
 *   maintenance                  maintenance and repair a year; at least 0
 *   downtime                     loss of production a year; at least 0
 *   environment                  environmental cost a year; at least 0
 *   disposal                     decommissioning at the end, at today's price; at least 0
 *   interest_rate                interest a year; from -0.2 to 1
 *   years                        years of life; a whole number from 1 to 60
 *   inflation_rate               rise of prices a year; from -0.2 to 1; 0 if left out
 *   energy_price_rise            rise of the energy price a year over and above inflation; from -0.2 to 1; 0 if left out
 *   -> life_cycle_cost           present value of all costs
 *   -> energy_present_value      of which energy
 *
 *   Equation: LCC = C_ic + C_in + F_e C_e + F (C_o + C_m + C_s + C_env) + q^n C_d; F = q + ... + q^n, q = (1 + p)/(1 +
 *             i); F_e the same with q (1 + p_e)
 *   Source: Hydraulic Institute, Europump and US Department of Energy, Pump Life Cycle Costs: A Guide to LCC Analysis
 *           for Pumping Systems, 2001 (from memory of it; the four results of its example come out to the unit)
 *   Caution: Exact compounding, payments at the ends of the years, as in the guide's own example. Interest less
 *            inflation taken for one rate gives a little less.
 *   Caution: All sums in one currency, at the prices of the same day.
 */
CUTWATER_API cutwater_status cutwater_life_cycle_cost(double purchase, double installation, double energy, double operation,
                                         double maintenance, double downtime, double environment, double disposal,
                                         double interest_rate, double years, double inflation_rate,
                                         double energy_price_rise, double *life_cycle_cost,
                                         double *energy_present_value, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_life_cycle_cost_rows(size_t rows, cutwater_column purchase, cutwater_column installation,
                                              cutwater_column energy, cutwater_column operation,
                                              cutwater_column maintenance, cutwater_column downtime,
                                              cutwater_column environment, cutwater_column disposal,
                                              cutwater_column interest_rate, cutwater_column years,
                                              cutwater_column inflation_rate, cutwater_column energy_price_rise,
                                              cutwater_result_column life_cycle_cost,
                                              cutwater_result_column energy_present_value,
                                              cutwater_rows_report *report);

/*
 * Years until the savings of every year have repaid an outlay.
 *
 *   outlay                       what the measure costs more than going on as before, now; at least 0
 *   yearly_saving                what it saves a year, at the end of each year; above 0
 *   interest_rate                interest a year; 0 for simple payback; from 0 to 1; 0 if left out
 *   -> payback_time              years; parts of a year by the same formula
 *
 *   Equation: n = C/S for i = 0; n = -ln(1 - i C/S)/ln(1 + i)
 *   Must hold of yearly_saving: the savings of a year must be more than a year's interest on the outlay, or it is never
 *                               repaid
 *   Source: present value of equal payments, solved for their number; common practice
 *   Caution: Simple payback leaves out interest and all that comes after; to choose between measures compare
 *            life_cycle_cost.
 */
CUTWATER_API cutwater_status cutwater_payback_time(double outlay, double yearly_saving, double interest_rate, double *payback_time,
                                      cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_payback_time_rows(size_t rows, cutwater_column outlay, cutwater_column yearly_saving,
                                           cutwater_column interest_rate, cutwater_result_column payback_time,
                                           cutwater_rows_report *report);

/*
 * Shaft power spent on the head that a throttle valve destroys.
 *
 *   flows_m3h                    flows of the pump curve's points; a series of at least 2 points, rising; each at least
 *                                0 m3/h
 *   heads_m                      heads of the curve's points; a series of at least 2 points; each a finite number in m
 *   efficiencies                 pump efficiencies at the curve's points; 0 at no flow; a series of at least 2 points;
 *                                each from 0 to 1
 *   static_head_m                system head at no flow: levels and the vessels' pressures; a finite number in m
 *   resistance_h2m5              system losses over the square of the flow, the valve open; from 0 to 1000000000 h2/m5
 *   flow_m3h                     flow wanted, less than the unthrottled duty; above 0 m3/h
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3; 998.2 if left out
 *   -> power_loss_kW             shaft power that goes into the valve
 *   -> valve_head_m              head lost in the valve
 *
 *   Equation: P_v = rho g Q h_v/eta(Q), h_v = H(Q) - (H_s + k Q^2)
 *   Must hold of heads: there must be as many heads as flows
 *   Must hold of efficiencies: there must be as many efficiencies as flows
 *   Source: energy balance at the duty of the pump's and the system's curves; Hydraulic Institute, Europump and US
 *           Department of Energy, Variable Speed Pumping, 2004 (from memory of it)
 *   Caution: Not all of it can be saved: another pump, trim or speed has its own efficiency at the duty.
 *   Caution: A system of another kind, laminar or given by points: put its head at this flow in for the static head, and
 *            0 for the resistance.
 */
CUTWATER_API cutwater_status cutwater_throttling_power_loss(const double *flows_m3h, size_t flows_m3h_count, const double *heads_m,
                                               size_t heads_m_count, const double *efficiencies,
                                               size_t efficiencies_count, double static_head_m,
                                               double resistance_h2m5, double flow_m3h, double density_kgm3,
                                               double *power_loss_kW, double *valve_head_m, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_throttling_power_loss_rows(size_t rows, const double *flows_m3h, size_t flows_m3h_count,
                                                    const double *heads_m, size_t heads_m_count,
                                                    const double *efficiencies, size_t efficiencies_count,
                                                    cutwater_column static_head_m, cutwater_column resistance_h2m5,
                                                    cutwater_column flow_m3h, cutwater_column density_kgm3,
                                                    cutwater_result_column power_loss_kW,
                                                    cutwater_result_column valve_head_m, cutwater_rows_report *report);

/*
 * Power that speed control saves at a flow against throttling.
 *
 *   flows_m3h                    flows of the pump curve's points; a series of at least 2 points, rising; each at least
 *                                0 m3/h
 *   heads_m                      heads of the curve's points; a series of at least 2 points; each a finite number in m
 *   efficiencies                 pump efficiencies at the curve's points; 0 at no flow; a series of at least 2 points;
 *                                each from 0 to 1
 *   speed_rpm                    speed of that curve; above 0 up to 100000 1/min
 *   static_head_m                system head at no flow: levels and the vessels' pressures; a finite number in m
 *   resistance_h2m5              system losses over the square of the flow, the valve open; from 0 to 1000000000 h2/m5
 *   flow_m3h                     flow wanted, less than the unthrottled duty; above 0 m3/h
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3; 998.2 if left out
 *   drive_efficiency             efficiency of the converter at that load; 1 leaves its losses out; above 0 up to 1;
 *                                0.96 if left out
 *   -> saving_kW                 power saved; negative when the converter loses more than the speed gains
 *   -> reduced_speed_rpm         speed that gives the duty with the valve open
 *   -> throttled_power_kW        shaft power at full speed, throttled
 *   -> controlled_power_kW       shaft power at the reduced speed, over the converter's efficiency
 *
 *   Equation: dP = rho g Q H(Q)/eta(Q) - rho g Q H_sys/(eta(Q_x) eta_D); H_sys = H_s + k Q^2; n' = n Q/Q_x, where H =
 *             H_sys (Q_x/Q)^2 on the curve
 *   Must hold of heads: there must be as many heads as flows
 *   Must hold of efficiencies: there must be as many efficiencies as flows
 *   Source: energy balance at the duty of the pump's and the system's curves; Hydraulic Institute, Europump and US
 *           Department of Energy, Variable Speed Pumping, 2004 (from memory of it)
 *   Caution: The affinity laws scale a pump's curve, not a system's duty: with static head the new duty is where the
 *            scaled curve meets the system curve.
 *   Caution: The default of 0.96 is a converter's efficiency at full load; at part load it loses more, see
 *            drive_efficiency, and below about a quarter of the load much more.
 *   Caution: Efficiency is taken as unchanged along the similarity parabola; motor losses at part load are left out.
 *   Caution: A system of another kind, laminar or given by points: put its head at this flow in for the static head, and
 *            0 for the resistance.
 *   Caution: Mind the least speed of the motor's cooling, the seal and the bearings, and resonances in the range.
 */
CUTWATER_API cutwater_status cutwater_speed_control_saving(const double *flows_m3h, size_t flows_m3h_count, const double *heads_m,
                                              size_t heads_m_count, const double *efficiencies,
                                              size_t efficiencies_count, double speed_rpm, double static_head_m,
                                              double resistance_h2m5, double flow_m3h, double density_kgm3,
                                              double drive_efficiency, double *saving_kW, double *reduced_speed_rpm,
                                              double *throttled_power_kW, double *controlled_power_kW,
                                              cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_speed_control_saving_rows(size_t rows, const double *flows_m3h, size_t flows_m3h_count,
                                                   const double *heads_m, size_t heads_m_count,
                                                   const double *efficiencies, size_t efficiencies_count,
                                                   cutwater_column speed_rpm, cutwater_column static_head_m,
                                                   cutwater_column resistance_h2m5, cutwater_column flow_m3h,
                                                   cutwater_column density_kgm3, cutwater_column drive_efficiency,
                                                   cutwater_result_column saving_kW,
                                                   cutwater_result_column reduced_speed_rpm,
                                                   cutwater_result_column throttled_power_kW,
                                                   cutwater_result_column controlled_power_kW,
                                                   cutwater_rows_report *report);

/*
 * Energy of a year's duty profile, the pump throttled, speed-controlled or switched on and off.
 *
 *   flows_m3h                    flows of the pump curve's points; a series of at least 2 points, rising; each at least
 *                                0 m3/h
 *   heads_m                      heads of the curve's points; a series of at least 2 points; each a finite number in m
 *   efficiencies                 pump efficiencies at the curve's points; 0 at no flow; a series of at least 2 points;
 *                                each from 0 to 1
 *   static_head_m                system head at no flow: levels and the vessels' pressures; a finite number in m
 *   resistance_h2m5              system losses over the square of the flow, the valve open; from 0 to 1000000000 h2/m5
 *   profile_flows_m3h            flow wanted at each point of the duty profile; 0 while the pump stands still; a series
 *                                of at least 1 point; each at least 0 m3/h
 *   hours_h                      hours a year at each point of the profile; a series of at least 1 point; each at least
 *                                0 h
 *   control                      throttling at full speed; speed, by a frequency converter; on-off, at the unthrottled
 *                                duty into a tank; "throttling", "speed" or "on-off"
 *   motor_rating_kW              rated output of the motor; from 0.12 to 1000 kW
 *   motor_efficiency             efficiency of the motor at its rated output; above 0 up to 1
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3; 998.2 if left out
 *   drive_efficiency             efficiency of the converter at full load; of use for speed control only; above 0 up to
 *                                1; 0.96 if left out
 *   constant_loss_share          share of the motor's full-load losses that does not change with load; 0.36 puts its
 *                                best efficiency at 75 % load; from 0 to 1; 0.36 if left out
 *   -> energy_kWh                energy from the mains in the year
 *   -> volume_m3                 volume pumped in the year
 *   -> specific_energy_kWhm3     energy for each volume, mean of the year
 *   -> running_time_h            hours that the pump runs in the year
 *   -> least_speed_ratio         lowest speed over full speed; 1 without speed control
 *
 *   Equation: E = sum(P_el,j t_run,j). Throttling: P = rho g Q_j H(Q_j)/eta(Q_j). Speed: P = rho g Q_j H_sys/eta(Q_x),
 *             H_sys = H_s + k Q_j^2 = H(Q_x) (Q_j/Q_x)^2, n'/n = Q_j/Q_x. On-off: P at the duty Q_d for t_run,j = t_j
 *             Q_j/Q_d. Motor: P_M = P + P_N (1/eta_N - 1)(c + (1 - c) x^2), x = (P/P_N)/(n'/n). P_el = P_M; with a
 *             converter P_el = P_M + (P_N/eta_N)(1/eta_D - 1) l(y)/l(1), y = P_M eta_N/P_N (0.016 at least), l(y) = y
 *             (1/eta_T(y) - 1), eta_T from drive_efficiency at P_N
 *   Must hold of heads: there must be as many heads as flows
 *   Must hold of efficiencies: there must be as many efficiencies as flows
 *   Must hold of hours: there must be as many hours as flows of the profile
 *   Must hold of hours: the hours must add up to at most a year, 8784 h
 *   Must hold of profile_flows: the profile must pump something: give at least one flow above 0 with hours above 0
 *   Source: energy balance at the meeting of pump and system curve, as for speed_control_saving; motor losses a constant
 *           part and a part with the square of the load: IEC TS 60034-31, efficiency at part load (from memory of it);
 *           best efficiency near 75 % load: US Department of Energy, Determining Electric Motor Load and Efficiency
 *           (from memory of it), common practice; converter losses: see drive_efficiency; on-off: volume balance, common
 *           practice
 *   Caution: On-off: a tank takes up the difference between profile and pump; its change of level, starting losses and
 *            the permitted starts an hour are left out.
 *   Caution: Speed: the pump's efficiency is taken as unchanged along the similarity parabola, the affinity laws down to
 *            a quarter of the speed.
 *   Caution: Speed: the motor's constant losses are held at their value of full speed, which is rather too much, and the
 *            losses from the converter's harmonics left out, which is too little.
 *   Caution: The converter's losses at part load follow a representative table for 2.2 to 300 kW, the nearest end
 *            beyond: take the maker's where they are known.
 *   Caution: Nothing is counted while the pump stands still; converters and controls on standby take a little.
 *   Caution: Mind the least speed of the motor's cooling, the seal and the bearings, and the pump's least flow when
 *            throttled.
 */
CUTWATER_API cutwater_status cutwater_duty_profile_energy(const double *flows_m3h, size_t flows_m3h_count, const double *heads_m,
                                             size_t heads_m_count, const double *efficiencies,
                                             size_t efficiencies_count, double static_head_m, double resistance_h2m5,
                                             const double *profile_flows_m3h, size_t profile_flows_m3h_count,
                                             const double *hours_h, size_t hours_h_count, const char *control,
                                             double motor_rating_kW, double motor_efficiency, double density_kgm3,
                                             double drive_efficiency, double constant_loss_share, double *energy_kWh,
                                             double *volume_m3, double *specific_energy_kWhm3, double *running_time_h,
                                             double *least_speed_ratio, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_duty_profile_energy_rows(size_t rows, const double *flows_m3h, size_t flows_m3h_count,
                                                  const double *heads_m, size_t heads_m_count,
                                                  const double *efficiencies, size_t efficiencies_count,
                                                  cutwater_column static_head_m, cutwater_column resistance_h2m5,
                                                  const double *profile_flows_m3h, size_t profile_flows_m3h_count,
                                                  const double *hours_h, size_t hours_h_count, const char *control,
                                                  cutwater_column motor_rating_kW, cutwater_column motor_efficiency,
                                                  cutwater_column density_kgm3, cutwater_column drive_efficiency,
                                                  cutwater_column constant_loss_share,
                                                  cutwater_result_column energy_kWh, cutwater_result_column volume_m3,
                                                  cutwater_result_column specific_energy_kWhm3,
                                                  cutwater_result_column running_time_h,
                                                  cutwater_result_column least_speed_ratio,
                                                  cutwater_rows_report *report);

/*
 * Pump power at another flow by the cube law: speed control on a system that is all friction, refused where there is
 * static head.
 *
 *   power_kW                     pump power input at the flow; at least 0 kW
 *   flow_m3h                     duty flow at that power; above 0 m3/h
 *   new_flow_m3h                 flow wanted by a change of speed; above 0 m3/h
 *   static_head_m                system head at no flow: levels and the vessels' pressures; must be 0; a finite number
 *                                in m
 *   -> new_power_kW              pump power input at the flow wanted
 *
 *   Equation: P' = P (Q'/Q)^3, where H_s = 0, so that Q'/Q = n'/n
 *   Must hold of static_head: the cube law holds only where the system's head is all friction: against static head the
 *                             flow falls faster than the speed, the head does not fall with its square, and the law
 *                             promises savings that do not come; use speed_control_saving or duty_profile_energy
 *   Must hold of new_flow: the new flow must be 0.25 to 2 times the flow: beyond that the affinity laws are not relied
 *                          upon here
 *   Source: Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.B.6 (excerpt read); limits of the ratio 0.25
 *           to 2: set here
 *   Caution: Never on a system with static head: the duty moves off the similarity parabola. Control valves and
 *            equipment that hold a fixed pressure count as static head.
 *   Caution: Pump efficiency is taken as unchanged; motor and converter losses do not follow the cube and are left out.
 */
CUTWATER_API cutwater_status cutwater_cube_law_power(double power_kW, double flow_m3h, double new_flow_m3h, double static_head_m,
                                        double *new_power_kW, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_cube_law_power_rows(size_t rows, cutwater_column power_kW, cutwater_column flow_m3h,
                                             cutwater_column new_flow_m3h, cutwater_column static_head_m,
                                             cutwater_result_column new_power_kW, cutwater_rows_report *report);

#ifdef __cplusplus
}
#endif

#endif
