/* generated from the catalogue by cutwater-generate; do not edit. */
/* Magnetic drives and other sealed drives. */
#ifndef CUTWATER_FAMILIES_SEALED_DRIVES_H
#define CUTWATER_FAMILIES_SEALED_DRIVES_H

#include <cutwater/base.h>

#ifdef __cplusplus
extern "C" {
#endif

/*
 * Pull-out torque of a magnetic coupling at the temperature of its magnets.
 *
 *   cold_torque_Nm               pull-out torque at the reference temperature, from the pump maker; above 0 N m
 *   inner_temperature_degC       greatest temperature of the inner magnets, near that of the liquid round them; from
 *                                -100 to 400 degC
 *   outer_temperature_degC       greatest temperature of the outer magnets; from -100 to 400 degC
 *   inner_coefficient_percentperK of the inner magnets' remanence: Nd-Fe-B -0.10 to -0.13, Sm2Co17 -0.03 to -0.05, SmCo5
 *                                 -0.043; from -0.5 to 0 %/K
 *   outer_coefficient_percentperK the same of the outer magnets; from -0.5 to 0 %/K
 *   reference_temperature_degC   temperature that the torque is stated at; from 0 to 100 degC; 20 if left out
 *   -> torque_Nm                 pull-out torque at those temperatures
 *   -> share                     part of the cold torque that is left
 *
 *   Equation: T = T_0 (1 + alpha_i (t_i - t_0))(1 + alpha_o (t_o - t_0))
 *   Must hold of inner_temperature: with that coefficient less than 30 % of the magnet's strength would be left: a
 *                                   linear change does not reach so far
 *   Must hold of outer_temperature: with that coefficient less than 30 % of the magnet's strength would be left: a
 *                                   linear change does not reach so far
 *   Source: torque of a synchronous coupling goes with the product of both remanences (common practice); coefficients:
 *           IEC TR 62518:2009 as summarised by a digest (excerpt read), records of the open Modelica Standard Library
 *           (read), a laboratory's page for SmCo5 (read)
 *   Caution: Above the magnets' limit part of their strength is lost for good, well below the Curie point: the pump
 *            maker's limit of the magnets' temperature stands.
 *   Caution: Reversible change alone, linear: good to some per cent over 100 K.
 *   Caution: A coupling that is overloaded slips and does not catch again while it runs: the drive turns, nothing is
 *            pumped, shell and magnets heat within seconds. Stop it.
 *   Caution: A calculated value is a guide: the pump maker's tested data, local codes and a licensed engineer's
 *            judgement go before it.
 */
CUTWATER_API cutwater_status cutwater_magnetic_coupling_torque(double cold_torque_Nm, double inner_temperature_degC,
                                                  double outer_temperature_degC, double inner_coefficient_percentperK,
                                                  double outer_coefficient_percentperK,
                                                  double reference_temperature_degC, double *torque_Nm, double *share,
                                                  cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_magnetic_coupling_torque_rows(size_t rows, cutwater_column cold_torque_Nm,
                                                       cutwater_column inner_temperature_degC,
                                                       cutwater_column outer_temperature_degC,
                                                       cutwater_column inner_coefficient_percentperK,
                                                       cutwater_column outer_coefficient_percentperK,
                                                       cutwater_column reference_temperature_degC,
                                                       cutwater_result_column torque_Nm, cutwater_result_column share,
                                                       cutwater_rows_report *report);

/*
 * Torque through a coupling while the motor runs the pump up.
 *
 *   motor_torque_Nm              greatest torque of the motor during the start: locked-rotor or breakdown torque; above
 *                                0 N m
 *   load_torque_Nm               torque that the pump asks for at that moment; at least 0 N m
 *   motor_inertia_kgm2           motor and outer magnets; above 0 kg m2
 *   pump_inertia_kgm2            inner magnets, shaft, impeller and the liquid in it; above 0 kg m2
 *   -> torque_Nm                 torque that the coupling must pass on
 *
 *   Equation: T_C = T_L + (T_M - T_L) J_P/(J_M + J_P)
 *   Must hold of load_torque: it must be less than the motor's: the motor would not start the pump
 *   Source: Newton's second law for two masses on a stiff shaft; common practice
 *   Caution: Mean torque: a start on the mains swings, and the first peaks reach about twice the mean. Starting direct
 *            on line decouples more drives than running does; use a soft start or a converter.
 *   Caution: A coupling that is overloaded slips and does not catch again while it runs: the drive turns, nothing is
 *            pumped, shell and magnets heat within seconds. Stop it.
 */
CUTWATER_API cutwater_status cutwater_magnetic_coupling_start_torque(double motor_torque_Nm, double load_torque_Nm,
                                                        double motor_inertia_kgm2, double pump_inertia_kgm2,
                                                        double *torque_Nm, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_magnetic_coupling_start_torque_rows(size_t rows, cutwater_column motor_torque_Nm,
                                                             cutwater_column load_torque_Nm,
                                                             cutwater_column motor_inertia_kgm2,
                                                             cutwater_column pump_inertia_kgm2,
                                                             cutwater_result_column torque_Nm,
                                                             cutwater_rows_report *report);

/*
 * Pull-out torque of a magnetic coupling over the greatest torque it has to carry.
 *
 *   coupling_torque_Nm           pull-out torque hot, as from magnetic_coupling_torque; above 0 N m
 *   greatest_power_kW            greatest shaft power: end of curve, greatest density, cold and viscous start, losses
 *                                behind the coupling; above 0 kW
 *   speed_rpm                    speed at that power; above 0 up to 100000 1/min
 *   start_torque_Nm              torque during the start, as from magnetic_coupling_start_torque; 0 for none; at least 0
 *                                N m
 *   -> margin                    coupling torque over the greater of running and starting torque; must exceed 1 with a
 *                                margin
 *   -> running_torque_Nm         torque at the greatest power
 *
 *   Equation: T_R = P/(2 pi n), margin = T/max(T_R, T_C)
 *   Source: mechanics; the margin itself is for user and pump maker to agree
 *   Caution: A coupling that is overloaded slips and does not catch again while it runs: the drive turns, nothing is
 *            pumped, shell and magnets heat within seconds. Stop it.
 *   Caution: Above the magnets' limit part of their strength is lost for good, well below the Curie point: the pump
 *            maker's limit of the magnets' temperature stands.
 *   Caution: T_C is a mean: on a direct start double it.
 *   Caution: Solids, crystals, ice and worn plain bearings raise the torque without notice.
 *   Caution: A calculated value is a guide: the pump maker's tested data, local codes and a licensed engineer's
 *            judgement go before it.
 */
CUTWATER_API cutwater_status cutwater_magnetic_coupling_margin(double coupling_torque_Nm, double greatest_power_kW,
                                                  double speed_rpm, double start_torque_Nm, double *margin,
                                                  double *running_torque_Nm, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_magnetic_coupling_margin_rows(size_t rows, cutwater_column coupling_torque_Nm,
                                                       cutwater_column greatest_power_kW, cutwater_column speed_rpm,
                                                       cutwater_column start_torque_Nm, cutwater_result_column margin,
                                                       cutwater_result_column running_torque_Nm,
                                                       cutwater_rows_report *report);

/*
 * Part of the eddy loss of a long shell that a short one has, since its currents must turn back at the ends.
 *
 *   pole_pairs                   pairs of magnet poles round the coupling; a whole number from 1 to 50
 *   length_mm                    length of the magnets along the shell; above 0 up to 2000 mm
 *   diameter_mm                  mean diameter of the shell; from 1 to 10000 mm
 *   -> end_factor                factor of the loss; near 1 for a long shell
 *
 *   Equation: k_e = 1 - tanh(x)/x, x = p L/D
 *   Source: R. L. Russell and K. H. Norsworthy, Proc. IEE 105A (1958) 166 (from memory of it): currents that close
 *           within the length of the magnets
 *   Caution: Real shells reach past the magnets and let the currents close outside, which brings the loss back up:
 *            without the factor the loss is on the safe side.
 */
CUTWATER_API cutwater_status cutwater_shell_end_factor(double pole_pairs, double length_mm, double diameter_mm, double *end_factor,
                                          cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_shell_end_factor_rows(size_t rows, cutwater_column pole_pairs, cutwater_column length_mm,
                                               cutwater_column diameter_mm, cutwater_result_column end_factor,
                                               cutwater_rows_report *report);

/*
 * Heat that eddy currents make in the metal shell of a magnetic drive.
 *
 *   flux_density_T               peak flux density in the shell's wall, of a wave that is taken for a sine; above 0 up
 *                                to 3 T
 *   conductivity_MSm             of the shell hot: 316 1.3, Ni-Mo-Cr alloys 0.77 to 0.8, titanium alloy 0.6; plastic and
 *                                ceramic none; above 0 up to 70 MS/m
 *   speed_rpm                    speed of the magnets against the shell; above 0 up to 100000 1/min
 *   diameter_mm                  mean diameter of the shell; from 1 to 10000 mm
 *   wall_mm                      wall of the shell in the magnets' gap; above 0 up to 50 mm
 *   length_mm                    length of the magnets along the shell; above 0 up to 2000 mm
 *   end_factor                   as from shell_end_factor; 1 is the safe side; above 0 up to 1; 1 if left out
 *   -> loss_W                    heat in the shell, which the motor pays for
 *   -> torque_Nm                 torque on the outer magnets that it takes
 *   -> shielding                 how much the currents weaken the field that makes them; the loss is high by 1 + s^2 at
 *                                most
 *
 *   Equation: P_e = k_e pi sigma (2 pi n)^2 (D/2)^3 t L B^2, T_e = P_e/(2 pi n), s = mu_0 sigma (2 pi n)(D/2) t/2; pole
 *             pairs do not appear
 *   Must hold of wall: the wall must be at most a tenth of the diameter: the relation is for a thin shell
 *   Must hold of conductivity: the currents in so conductive, thick or fast a shell would weaken the field by more than
 *                              the relation allows (mu_0 sigma v t/2 above 0.3)
 *   Source: induced current in a thin shell, integral of sigma (v B)^2; agrees with the low-speed limit of N. H. Frank's
 *           solid shaft, MIT RLE Technical Report 23, 1946 (abstract and set-up read), whose difference for two radii it
 *           is
 *   Caution: The flux density in the shell is the weak point, and its square counts: take the pump maker's, or a loss
 *            that was measured. Plus or minus 30 %.
 *   Caution: It grows with the square of speed and field and the cube of the diameter. It heats the liquid that cools
 *            the shell: see shell_vapour_margin.
 *   Caution: The conductivity falls as the shell gets hot, and the loss with it.
 *   Caution: A calculated value is a guide: the pump maker's tested data, local codes and a licensed engineer's
 *            judgement go before it.
 */
CUTWATER_API cutwater_status cutwater_shell_eddy_loss(double flux_density_T, double conductivity_MSm, double speed_rpm,
                                         double diameter_mm, double wall_mm, double length_mm, double end_factor,
                                         double *loss_W, double *torque_Nm, double *shielding,
                                         cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_shell_eddy_loss_rows(size_t rows, cutwater_column flux_density_T,
                                              cutwater_column conductivity_MSm, cutwater_column speed_rpm,
                                              cutwater_column diameter_mm, cutwater_column wall_mm,
                                              cutwater_column length_mm, cutwater_column end_factor,
                                              cutwater_result_column loss_W, cutwater_result_column torque_Nm,
                                              cutwater_result_column shielding, cutwater_rows_report *report);

/*
 * Warming of the liquid that cools the shell, bearings or canned motor of a sealed drive.
 *
 *   heat_W                       shell loss, friction of liquid and plain bearings; for a canned motor its losses; at
 *                                least 0 W
 *   flow_lmin                    liquid recirculated through the drive; above 0 l/min
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   specific_heat_kJkgK          specific heat of the liquid: water 4.18, oils about 2, light hydrocarbons 2.2; from 0.1
 *                                to 20 kJ/(kg K)
 *   -> rise_K                    mean rise from inlet to outlet of the path
 *
 *   Equation: dT = P/(q rho c_p)
 *   Source: balance of heat; common practice
 *   Caution: Mean of the stream: at the shell's wall, in eddies and behind the bearings it is warmer.
 *   Caution: Monitor it: shell temperature, power or flow. Dry running, a shut suction or a blocked path destroys plain
 *            bearings and shell within a minute.
 */
CUTWATER_API cutwater_status cutwater_recirculation_temperature_rise(double heat_W, double flow_lmin, double density_kgm3,
                                                        double specific_heat_kJkgK, double *rise_K,
                                                        cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_recirculation_temperature_rise_rows(size_t rows, cutwater_column heat_W,
                                                             cutwater_column flow_lmin, cutwater_column density_kgm3,
                                                             cutwater_column specific_heat_kJkgK,
                                                             cutwater_result_column rise_K,
                                                             cutwater_rows_report *report);

/*
 * How much hotter the wall of a shell is than the liquid that cools it.
 *
 *   heat_W                       shell loss, friction of liquid and plain bearings; for a canned motor its losses; at
 *                                least 0 W
 *   diameter_mm                  inside diameter of the shell; from 1 to 10000 mm
 *   length_mm                    length of the heated zone; above 0 up to 2000 mm
 *   film_coefficient_Wm2K        from wall to liquid: water in the turning gap 2000 to 10 000, oils 200 to 800
 *                                (judgement); above 0 up to 50000 W/(m2 K)
 *   -> rise_K                    mean rise of the wetted wall above the liquid's mean
 *
 *   Equation: dT = P/(pi D L h)
 *   Source: definition of the film coefficient; all heat taken to the liquid inside, the safe side for it
 *   Caution: The film coefficient is the weak point, and the magnets' pattern makes hot strips. The liquid at the wall
 *            may boil before its mean does.
 *   Caution: Monitor it: shell temperature, power or flow. Dry running, a shut suction or a blocked path destroys plain
 *            bearings and shell within a minute.
 */
CUTWATER_API cutwater_status cutwater_shell_temperature_rise(double heat_W, double diameter_mm, double length_mm,
                                                double film_coefficient_Wm2K, double *rise_K,
                                                cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_shell_temperature_rise_rows(size_t rows, cutwater_column heat_W, cutwater_column diameter_mm,
                                                     cutwater_column length_mm, cutwater_column film_coefficient_Wm2K,
                                                     cutwater_result_column rise_K, cutwater_rows_report *report);

/*
 * How far the liquid that cools a sealed drive stays from boiling.
 *
 *   inlet_temperature_degC       temperature of the liquid where it enters the path; above -273.15 degC
 *   heat_W                       shell loss, friction of liquid and plain bearings; for a canned motor its losses; at
 *                                least 0 W
 *   flow_lmin                    liquid recirculated through the drive; above 0 l/min
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   specific_heat_kJkgK          specific heat of the liquid: water 4.18, oils about 2, light hydrocarbons 2.2; from 0.1
 *                                to 20 kJ/(kg K)
 *   lowest_pressure_bara         lowest absolute pressure where the liquid is warm: the return's end, near suction
 *                                pressure when it returns to the eye; above 0 up to 500 bara
 *   margin_wanted_bar            margin to be kept above the vapour pressure; at least 0 bar
 *   temperatures_degC            temperatures of the vapour-pressure curve; a series of at least 2 points, rising; each
 *                                above -273.15 degC
 *   vapour_pressures_bara        vapour pressures at them; a series of at least 2 points, rising; each above 0 up to 300
 *                                bara
 *   -> verdict                   kept: the margin is at least the one wanted and more than none; lost: it is not
 *   -> margin_bar                pressure above the vapour pressure; negative: it boils
 *   -> pressure_ratio            of the absolute pressures
 *   -> outlet_temperature_degC   temperature of the warmed liquid
 *   -> vapour_pressure_bara      vapour pressure there
 *
 *   Equation: T_2 = T_1 + P/(q rho c_p), margin = p - p_v(T_2), ln p_v linear in 1/T between the points
 *   Must hold of vapour_pressures: both series must have the same number of points
 *   Source: balance of heat; Clausius-Clapeyron between neighbouring points; common practice
 *   Caution: Judged at the stream's mean: the shell's wall is hotter by shell_temperature_rise; add that to the inlet
 *            temperature for the wall.
 *   Caution: After a stop the heat in magnets and shell goes on into liquid that stands: a hot restart is the worst
 *            case.
 *   Caution: Monitor it: shell temperature, power or flow. Dry running, a shut suction or a blocked path destroys plain
 *            bearings and shell within a minute.
 *   Caution: With hot, toxic or flammable liquid, vaporising at the seal or impeller can release it: follow the site's
 *            rules and the pump maker's limits.
 *   Caution: A calculated value is a guide: the pump maker's tested data, local codes and a licensed engineer's
 *            judgement go before it.
 */
CUTWATER_API cutwater_status cutwater_shell_vapour_margin(double inlet_temperature_degC, double heat_W, double flow_lmin,
                                             double density_kgm3, double specific_heat_kJkgK,
                                             double lowest_pressure_bara, double margin_wanted_bar,
                                             const double *temperatures_degC, size_t temperatures_degC_count,
                                             const double *vapour_pressures_bara, size_t vapour_pressures_bara_count,
                                             const char **verdict, double *margin_bar, double *pressure_ratio,
                                             double *outlet_temperature_degC, double *vapour_pressure_bara,
                                             cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_shell_vapour_margin_rows(size_t rows, cutwater_column inlet_temperature_degC,
                                                  cutwater_column heat_W, cutwater_column flow_lmin,
                                                  cutwater_column density_kgm3, cutwater_column specific_heat_kJkgK,
                                                  cutwater_column lowest_pressure_bara,
                                                  cutwater_column margin_wanted_bar, const double *temperatures_degC,
                                                  size_t temperatures_degC_count, const double *vapour_pressures_bara,
                                                  size_t vapour_pressures_bara_count, cutwater_result_column verdict,
                                                  cutwater_result_column margin_bar,
                                                  cutwater_result_column pressure_ratio,
                                                  cutwater_result_column outlet_temperature_degC,
                                                  cutwater_result_column vapour_pressure_bara,
                                                  cutwater_rows_report *report);

/*
 * Time in which a sealed drive reaches a temperature once its cooling liquid stands still.
 *
 *   heat_W                       shell loss; after decoupling it stays, since the outer magnets go on turning; above 0 W
 *   liquid_volume_ml             liquid that stands in the shell; 0 when it has run or boiled dry; at least 0 ml
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   specific_heat_kJkgK          specific heat of the liquid: water 4.18, oils about 2, light hydrocarbons 2.2; from 0.1
 *                                to 20 kJ/(kg K)
 *   metal_mass_kg                metal that warms with it: the shell alone is the safe side; above 0 kg
 *   metal_specific_heat_kJkgK    specific heat of the metal: austenitic steel 0.50, nickel alloys 0.43, titanium 0.53;
 *                                from 0.1 to 2 kJ/(kg K)
 *   start_temperature_degC       temperature at the beginning; from -273.15 to 1000 degC
 *   limit_temperature_degC       temperature not to be reached: boiling, magnets' limit, class of the surface; from
 *                                -273.15 to 1000 degC
 *   -> time_s                    time until then, nothing lost to the air
 *   -> heating_rate_Ks           rate of warming
 *
 *   Equation: dT/dt = P/(V rho c_p + m c_m), t = (T_1 - T_0)/(dT/dt)
 *   Must hold of limit_temperature: it must lie above the start temperature
 *   Source: balance of heat; common practice
 *   Caution: Monitor it: shell temperature, power or flow. Dry running, a shut suction or a blocked path destroys plain
 *            bearings and shell within a minute.
 *   Caution: Above the magnets' limit part of their strength is lost for good, well below the Curie point: the pump
 *            maker's limit of the magnets' temperature stands.
 *   Caution: Dry running, a closed valve, a failed bearing, seal or sealed-drive circuit make surfaces hotter than the
 *            duty does: they are outside the class unless the certificate covers them.
 *   Caution: With hot, toxic or flammable liquid, vaporising at the seal or impeller can release it: follow the site's
 *            rules and the pump maker's limits.
 */
CUTWATER_API cutwater_status cutwater_loss_of_flow_time(double heat_W, double liquid_volume_ml, double density_kgm3,
                                           double specific_heat_kJkgK, double metal_mass_kg,
                                           double metal_specific_heat_kJkgK, double start_temperature_degC,
                                           double limit_temperature_degC, double *time_s, double *heating_rate_Ks,
                                           cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_loss_of_flow_time_rows(size_t rows, cutwater_column heat_W, cutwater_column liquid_volume_ml,
                                                cutwater_column density_kgm3, cutwater_column specific_heat_kJkgK,
                                                cutwater_column metal_mass_kg,
                                                cutwater_column metal_specific_heat_kJkgK,
                                                cutwater_column start_temperature_degC,
                                                cutwater_column limit_temperature_degC, cutwater_result_column time_s,
                                                cutwater_result_column heating_rate_Ks, cutwater_rows_report *report);

#ifdef __cplusplus
}
#endif

#endif
