/* generated from the catalogue by cutwater-generate; do not edit. */
/* Surface temperatures, heat loss and jackets. */
#ifndef CUTWATER_FAMILIES_SURFACES_H
#define CUTWATER_FAMILIES_SURFACES_H

#include <cutwater/base.h>

#ifdef __cplusplus
extern "C" {
#endif

/*
 * Temperature class of equipment by its greatest surface temperature.
 *
 *   surface_temperature_degC     greatest temperature of any surface that the atmosphere can reach, at the greatest
 *                                ambient temperature; from -273.15 to 2000 degC
 *   margin_K                     margin for classes T4, T5 and T6; 0 for a value that already holds it; from 0 to 50 K;
 *                                5 if left out
 *   margin_hot_K                 margin for classes T1, T2 and T3; for T3 one source has 5 K, another 10 K; from 0 to 50
 *                                K; 10 if left out
 *   -> temperature_class         class that the surface keeps, T6 the coolest
 *   -> class_limit_degC          greatest surface temperature of the class
 *
 *   Equation: first class of T6 85, T5 100, T4 135, T3 200, T2 300, T1 450 degC with T_s + margin <= T_class
 *   Source: IEC 60079-0, table of temperature classes (quoted alike in six places, excerpts read; clause 5.3.2.2 from
 *           memory); margins: IEC 60079-0:2017 26.5.1.3 and ISO 80079-36:2016 8.2 (from memory of both, 5 K to T3, 10 K
 *           above; another supplier's page has 10 K for T3, taken here)
 *   Caution: The equipment's certificate and marking rule, with their ambient range, usually -20 to 40 degC; this tells
 *            no more than a number. Zoning, selection and inspection belong to a competent person under the local code.
 *   Caution: The pumped liquid often sets the surface temperature: take its greatest temperature, heating in the pump
 *            included, when that is above the pump's own.
 *   Caution: Dry running, a closed valve, a failed bearing, seal or sealed-drive circuit make surfaces hotter than the
 *            duty does: they are outside the class unless the certificate covers them.
 */
CUTWATER_API cutwater_status cutwater_temperature_class(double surface_temperature_degC, double margin_K, double margin_hot_K,
                                           const char **temperature_class, double *class_limit_degC,
                                           cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_temperature_class_rows(size_t rows, cutwater_column surface_temperature_degC,
                                                cutwater_column margin_K, cutwater_column margin_hot_K,
                                                cutwater_result_column temperature_class,
                                                cutwater_result_column class_limit_degC, cutwater_rows_report *report);

/*
 * Temperature class that equipment needs at least in the vapour of a substance.
 *
 *   ignition_temperature_degC    ignition (auto-ignition) temperature of the gas or vapour; from 0 to 1000 degC
 *   -> temperature_class         class needed; a class with a higher number does too
 *   -> class_limit_degC          greatest surface temperature of the class
 *
 *   Equation: first class of T1 450, T2 300, T3 200, T4 135, T5 100, T6 85 degC with T_i > T_class
 *   Source: IEC 60079-0, table of temperature classes (quoted alike in six places, excerpts read; clause 5.3.2.2 from
 *           memory): surface at most the class's value, the gas's ignition temperature above it
 *   Caution: A class is no ignition temperature: take the substance's own from its data sheet or IEC 60079-20-1.
 *   Caution: The equipment's certificate and marking rule, with their ambient range, usually -20 to 40 degC; this tells
 *            no more than a number. Zoning, selection and inspection belong to a competent person under the local code.
 *   Caution: Dry running, a closed valve, a failed bearing, seal or sealed-drive circuit make surfaces hotter than the
 *            duty does: they are outside the class unless the certificate covers them.
 */
CUTWATER_API cutwater_status cutwater_temperature_class_for_gas(double ignition_temperature_degC, const char **temperature_class,
                                                   double *class_limit_degC, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_temperature_class_for_gas_rows(size_t rows, cutwater_column ignition_temperature_degC,
                                                        cutwater_result_column temperature_class,
                                                        cutwater_result_column class_limit_degC,
                                                        cutwater_rows_report *report);

/*
 * Greatest surface temperature beside a gas or vapour.
 *
 *   ignition_temperature_degC    ignition (auto-ignition) temperature of the gas or vapour; from 0 to 1000 degC
 *   share                        part of the ignition temperature in degC: 0.80, demanded for zone 0; 1 for what may
 *                                have the full value; from 0.5 to 1; 0.8 if left out
 *   margin_K                     further margin; from 0 to 100 K; 0 if left out
 *   -> allowed_temperature_degC  greatest surface temperature
 *
 *   Equation: T_max = f T_i - dT, both temperatures in degC
 *   Source: 80 %: a test laboratory's page (read; it limits it to no zone); EN 1127-1 6.4.2 and ISO 80079-36 (from
 *           memory of both): demanded for category 1 and EPL Ga
 *   Caution: The equipment's certificate and marking rule, with their ambient range, usually -20 to 40 degC; this tells
 *            no more than a number. Zoning, selection and inspection belong to a competent person under the local code.
 *   Caution: The pumped liquid often sets the surface temperature: take its greatest temperature, heating in the pump
 *            included, when that is above the pump's own.
 *   Caution: Dry running, a closed valve, a failed bearing, seal or sealed-drive circuit make surfaces hotter than the
 *            duty does: they are outside the class unless the certificate covers them.
 *   Caution: The part is taken of degrees Celsius, as the rule has it, not of kelvins or degrees Fahrenheit.
 */
CUTWATER_API cutwater_status cutwater_surface_temperature_allowed(double ignition_temperature_degC, double share, double margin_K,
                                                     double *allowed_temperature_degC, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_surface_temperature_allowed_rows(size_t rows, cutwater_column ignition_temperature_degC,
                                                          cutwater_column share, cutwater_column margin_K,
                                                          cutwater_result_column allowed_temperature_degC,
                                                          cutwater_rows_report *report);

/*
 * Greatest surface temperature among combustible dust.
 *
 *   cloud_ignition_degC          ignition temperature of the dust cloud; from 0 to 1000 degC
 *   layer_ignition_degC          ignition (smouldering) temperature of a layer 5 mm thick; from 0 to 1000 degC
 *   -> allowed_temperature_degC  greatest surface temperature
 *
 *   Equation: T_max = lesser of (2/3) T_c and T_5 - 75 K, in degC
 *   Source: IEC 60079-14 for layers up to 5 mm, as quoted by a trade page on ISO/IEC 80079-20-2 (read)
 *   Caution: For layers up to 5 mm. A thicker layer insulates and ignites far below; keep surfaces clean.
 *   Caution: Dust has no temperature classes: the value itself is marked.
 *   Caution: The equipment's certificate and marking rule, with their ambient range, usually -20 to 40 degC; this tells
 *            no more than a number. Zoning, selection and inspection belong to a competent person under the local code.
 *   Caution: Dry running, a closed valve, a failed bearing, seal or sealed-drive circuit make surfaces hotter than the
 *            duty does: they are outside the class unless the certificate covers them.
 */
CUTWATER_API cutwater_status cutwater_surface_temperature_allowed_dust(double cloud_ignition_degC, double layer_ignition_degC,
                                                          double *allowed_temperature_degC, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_surface_temperature_allowed_dust_rows(size_t rows, cutwater_column cloud_ignition_degC,
                                                               cutwater_column layer_ignition_degC,
                                                               cutwater_result_column allowed_temperature_degC,
                                                               cutwater_rows_report *report);

/*
 * Heat that liquid and metal of a pump take up for each kelvin.
 *
 *   liquid_volume_l              liquid held in the casing; 0 when dry; at least 0 l
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   specific_heat_kJkgK          specific heat of the liquid: water 4.18, oils about 2, 98 % sulphuric acid 1.4; from
 *                                0.1 to 20 kJ/(kg K)
 *   metal_mass_kg                metal that warms with it; 0 is the safe side for heating and freezing times, not for
 *                                jacket_heat_duty; at least 0 kg; 0 if left out
 *   metal_specific_heat_kJkgK    specific heat of the metal; iron and steel 0.46 to 0.50; from 0.1 to 2 kJ/(kg K); 0.46
 *                                if left out
 *   -> heat_capacity_kJK         of liquid and metal together
 *
 *   Equation: C = V rho c_p + m c_m
 *   Source: definition
 */
CUTWATER_API cutwater_status cutwater_pump_heat_capacity(double liquid_volume_l, double density_kgm3, double specific_heat_kJkgK,
                                            double metal_mass_kg, double metal_specific_heat_kJkgK,
                                            double *heat_capacity_kJK, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_pump_heat_capacity_rows(size_t rows, cutwater_column liquid_volume_l,
                                                 cutwater_column density_kgm3, cutwater_column specific_heat_kJkgK,
                                                 cutwater_column metal_mass_kg,
                                                 cutwater_column metal_specific_heat_kJkgK,
                                                 cutwater_result_column heat_capacity_kJK,
                                                 cutwater_rows_report *report);

/*
 * Temperature of a pump that runs against a closed valve, after a time and in the end.
 *
 *   shutoff_power_kW             pump power input at closed valve; at least 0 kW
 *   heat_capacity_kJK            liquid and metal, as from pump_heat_capacity; above 0 kJ/K
 *   start_temperature_degC       temperature at the beginning; from -273.15 to 1000 degC
 *   time_min                     time at closed valve; at least 0 min
 *   surface_m2                   outside surface of the casing and cover; above 0 up to 1000 m2
 *   ambient_temperature_degC     temperature of the air; from -60 to 100 degC
 *   surface_coefficient_Wm2K     heat given to still air, radiation included: about 10 bare, less when insulated; see
 *                                surface_coefficient; above 0 up to 1000 W/(m2 K); 10 if left out
 *   -> temperature_degC          temperature after that time
 *   -> settled_temperature_degC  temperature in the end, if nothing stops it
 *   -> time_constant_min         time in which 63 % of the change is done
 *
 *   Equation: T = T_e - (T_e - T_0) exp(-t/tau), T_e = T_a + P_0/(h A), tau = C/(h A)
 *   Source: balance of heat of one body, C dT/dt = P - h A (T - T_a); Newton's law of cooling; common practice, checked
 *           against a numerical integration
 *   Caution: Never run a pump against a closed valve: the liquid heats, may boil and can burst the casing.
 *   Caution: Liquid that boils keeps its temperature and raises pressure instead, or leaves the seal dry: find its
 *            boiling temperature at the casing's pressure.
 *   Caution: One lump of even temperature: places where the heat arises are hotter and get hot sooner. Draughts, rain
 *            and pipes carry more heat away.
 *   Caution: Dry running, a closed valve, a failed bearing, seal or sealed-drive circuit make surfaces hotter than the
 *            duty does: they are outside the class unless the certificate covers them.
 *   Caution: With hot, toxic or flammable liquid, vaporising at the seal or impeller can release it: follow the site's
 *            rules and the pump maker's limits.
 */
CUTWATER_API cutwater_status cutwater_dead_headed_temperature(double shutoff_power_kW, double heat_capacity_kJK,
                                                 double start_temperature_degC, double time_min, double surface_m2,
                                                 double ambient_temperature_degC, double surface_coefficient_Wm2K,
                                                 double *temperature_degC, double *settled_temperature_degC,
                                                 double *time_constant_min, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_dead_headed_temperature_rows(size_t rows, cutwater_column shutoff_power_kW,
                                                      cutwater_column heat_capacity_kJK,
                                                      cutwater_column start_temperature_degC,
                                                      cutwater_column time_min, cutwater_column surface_m2,
                                                      cutwater_column ambient_temperature_degC,
                                                      cutwater_column surface_coefficient_Wm2K,
                                                      cutwater_result_column temperature_degC,
                                                      cutwater_result_column settled_temperature_degC,
                                                      cutwater_result_column time_constant_min,
                                                      cutwater_rows_report *report);

/*
 * Time until a pump at closed valve reaches a temperature, heat lost to the air counted.
 *
 *   shutoff_power_kW             pump power input at closed valve; above 0 kW
 *   heat_capacity_kJK            liquid and metal, as from pump_heat_capacity; above 0 kJ/K
 *   start_temperature_degC       temperature at the beginning; from -273.15 to 1000 degC
 *   limit_temperature_degC       temperature to be reached: the boiling temperature, a lining's limit, a class's; from
 *                                -273.15 to 1000 degC
 *   surface_m2                   outside surface of the casing and cover; above 0 up to 1000 m2
 *   ambient_temperature_degC     temperature of the air; from -60 to 100 degC
 *   surface_coefficient_Wm2K     heat given to still air, radiation included: about 10 bare, less when insulated; see
 *                                surface_coefficient; above 0 up to 1000 W/(m2 K); 10 if left out
 *   -> time_min                  time until then
 *   -> settled_temperature_degC  temperature in the end, if nothing stops it
 *
 *   Equation: t = tau ln((T_e - T_0)/(T_e - T_1)), T_e = T_a + P_0/(h A), tau = C/(h A)
 *   Must hold of limit_temperature: it must lie above the start temperature
 *   Source: balance of heat of one body, C dT/dt = P - h A (T - T_a); Newton's law of cooling; common practice, checked
 *           against a numerical integration
 *   Caution: Never run a pump against a closed valve: the liquid heats, may boil and can burst the casing.
 *   Caution: Liquid that boils keeps its temperature and raises pressure instead, or leaves the seal dry: find its
 *            boiling temperature at the casing's pressure.
 *   Caution: One lump of even temperature: places where the heat arises are hotter and get hot sooner. Draughts, rain
 *            and pipes carry more heat away.
 *   Caution: Dry running, a closed valve, a failed bearing, seal or sealed-drive circuit make surfaces hotter than the
 *            duty does: they are outside the class unless the certificate covers them.
 *   Caution: With hot, toxic or flammable liquid, vaporising at the seal or impeller can release it: follow the site's
 *            rules and the pump maker's limits.
 */
CUTWATER_API cutwater_status cutwater_dead_headed_time(double shutoff_power_kW, double heat_capacity_kJK,
                                          double start_temperature_degC, double limit_temperature_degC,
                                          double surface_m2, double ambient_temperature_degC,
                                          double surface_coefficient_Wm2K, double *time_min,
                                          double *settled_temperature_degC, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_dead_headed_time_rows(size_t rows, cutwater_column shutoff_power_kW,
                                               cutwater_column heat_capacity_kJK,
                                               cutwater_column start_temperature_degC,
                                               cutwater_column limit_temperature_degC, cutwater_column surface_m2,
                                               cutwater_column ambient_temperature_degC,
                                               cutwater_column surface_coefficient_Wm2K,
                                               cutwater_result_column time_min,
                                               cutwater_result_column settled_temperature_degC,
                                               cutwater_rows_report *report);

/*
 * Mean temperature of a part that rubs dry: seal faces, a bush, a ring.
 *
 *   friction_power_kW            heat of the dry rubbing: friction coefficient x load x rubbing speed, dry coefficients
 *                                are several times the wet ones; at least 0 kW
 *   heat_capacity_kJK            metal that warms with it; the parts next to the rubbing alone are the safe side; above
 *                                0 kJ/K
 *   start_temperature_degC       temperature at the beginning; from -273.15 to 1000 degC
 *   time_min                     time of running dry; at least 0 min
 *   surface_m2                   surface that gives heat to the air; above 0 up to 1000 m2
 *   ambient_temperature_degC     temperature of the air; from -60 to 100 degC
 *   surface_coefficient_Wm2K     heat given to still air, radiation included: about 10 bare, less when insulated; see
 *                                surface_coefficient; above 0 up to 1000 W/(m2 K); 10 if left out
 *   -> temperature_degC          mean temperature after that time
 *   -> settled_temperature_degC  mean temperature in the end
 *   -> time_constant_min         time in which 63 % of the change is done
 *
 *   Equation: T = T_e - (T_e - T_0) exp(-t/tau), T_e = T_a + P/(h A), tau = C/(h A)
 *   Source: balance of heat of one body, C dT/dt = P - h A (T - T_a); Newton's law of cooling; common practice, checked
 *           against a numerical integration
 *   Caution: The rubbing faces themselves are far hotter than the mean, within seconds: this tells how the parts around
 *            them fare, not the faces.
 *   Caution: The dry friction coefficient is the weak point: take both ends of its range.
 *   Caution: One lump of even temperature: places where the heat arises are hotter and get hot sooner. Draughts, rain
 *            and pipes carry more heat away.
 *   Caution: Dry running, a closed valve, a failed bearing, seal or sealed-drive circuit make surfaces hotter than the
 *            duty does: they are outside the class unless the certificate covers them.
 */
CUTWATER_API cutwater_status cutwater_dry_running_temperature(double friction_power_kW, double heat_capacity_kJK,
                                                 double start_temperature_degC, double time_min, double surface_m2,
                                                 double ambient_temperature_degC, double surface_coefficient_Wm2K,
                                                 double *temperature_degC, double *settled_temperature_degC,
                                                 double *time_constant_min, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_dry_running_temperature_rows(size_t rows, cutwater_column friction_power_kW,
                                                      cutwater_column heat_capacity_kJK,
                                                      cutwater_column start_temperature_degC,
                                                      cutwater_column time_min, cutwater_column surface_m2,
                                                      cutwater_column ambient_temperature_degC,
                                                      cutwater_column surface_coefficient_Wm2K,
                                                      cutwater_result_column temperature_degC,
                                                      cutwater_result_column settled_temperature_degC,
                                                      cutwater_result_column time_constant_min,
                                                      cutwater_rows_report *report);

/*
 * Time until the liquid in a standing pump has cooled to a temperature, such as where it freezes or crystallises.
 *
 *   heat_capacity_kJK            liquid and metal, as from pump_heat_capacity; above 0 kJ/K
 *   start_temperature_degC       temperature at the beginning; from -273.15 to 1000 degC
 *   limit_temperature_degC       temperature not to be reached: freezing, crystallising, greatest viscosity; from
 *                                -273.15 to 1000 degC
 *   surface_m2                   outside surface; above 0 up to 1000 m2
 *   ambient_temperature_degC     temperature of the air; from -60 to 100 degC
 *   surface_coefficient_Wm2K     heat given to the air, radiation included: bare about 10 in still air, 25 in wind
 *                                (judgement), less when insulated; the greater is the safe side; above 0 up to 1000
 *                                W/(m2 K); 25 if left out
 *   -> time_h                    time until then
 *
 *   Equation: t = tau ln((T_0 - T_a)/(T_1 - T_a)), tau = C/(h A)
 *   Must hold of limit_temperature: it must lie below the start temperature
 *   Source: Newton's law of cooling, one body; common practice, checked against a numerical integration
 *   Caution: Small bores, drains, seal lines and instrument tappings freeze long before the casing does.
 *   Caution: One lump of even temperature: places where the heat arises are hotter and get hot sooner. Draughts, rain
 *            and pipes carry more heat away.
 *   Caution: A calculated value is a guide: the pump maker's tested data, local codes and a licensed engineer's
 *            judgement go before it.
 */
CUTWATER_API cutwater_status cutwater_cooling_time(double heat_capacity_kJK, double start_temperature_degC,
                                      double limit_temperature_degC, double surface_m2,
                                      double ambient_temperature_degC, double surface_coefficient_Wm2K,
                                      double *time_h, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_cooling_time_rows(size_t rows, cutwater_column heat_capacity_kJK,
                                           cutwater_column start_temperature_degC,
                                           cutwater_column limit_temperature_degC, cutwater_column surface_m2,
                                           cutwater_column ambient_temperature_degC,
                                           cutwater_column surface_coefficient_Wm2K, cutwater_result_column time_h,
                                           cutwater_rows_report *report);

/*
 * Heat that a surface gives to still air, by free convection and radiation.
 *
 *   surface_temperature_degC     temperature of the surface; from -60 to 400 degC
 *   ambient_temperature_degC     temperature of the air and of what stands around; from -60 to 100 degC
 *   size_mm                      diameter of the cylinder or sphere, height of the wall; from 10 to 10000 mm
 *   shape                        what the surface is most like; "horizontal cylinder", "vertical wall" or "sphere";
 *                                "horizontal cylinder" if left out
 *   emissivity                   paint or rust 0.9, aluminium cladding 0.1 to 0.3, bright steel 0.3; from 0 to 1; 0.9 if
 *                                left out
 *   ambient_pressure_bara        barometric pressure; from 0.5 to 1.2 bara; 1.01325 if left out
 *   -> surface_coefficient_Wm2K  both together
 *   -> convection_Wm2K           by free convection
 *   -> radiation_Wm2K            by radiation
 *
 *   Equation: h = h_c + h_r, h_c = Nu k/L, h_r = eps sigma (T_s^2 + T_a^2)(T_s + T_a); Nu of Ra and Pr: cylinder (0.60 +
 *             0.387 Ra^(1/6)/[1 + (0.559/Pr)^(9/16)]^(8/27))^2, wall 0.825 and 0.492 for 0.60 and 0.559, sphere 2 +
 *             0.589 Ra^(1/4)/a^(4/9) (1 + 7.44e-8 Ra/a^(16/9))^(1/12), a = 1 + (0.469/Pr)^(9/16)
 *   Source: S. W. Churchill and H. H. S. Chu, Int. J. Heat Mass Transfer 18 (1975) 1049 and 1323; S. W. Churchill 1983
 *           (the three as in the open library ht 1.0.7, read and run); air: U.S. Standard Atmosphere 1976, equations 51
 *           and 53 (as in python3-fluids 1.0.22)
 *   Caution: Still air. Wind, draughts and rain double or treble it; a casing taken as a cylinder or box of equal area:
 *            plus or minus 25 % (judgement).
 *   Caution: Bare metal above about 60 degC burns the hand that touches it: guard or insulate it.
 */
CUTWATER_API cutwater_status cutwater_surface_coefficient(double surface_temperature_degC, double ambient_temperature_degC,
                                             double size_mm, const char *shape, double emissivity,
                                             double ambient_pressure_bara, double *surface_coefficient_Wm2K,
                                             double *convection_Wm2K, double *radiation_Wm2K,
                                             cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_surface_coefficient_rows(size_t rows, cutwater_column surface_temperature_degC,
                                                  cutwater_column ambient_temperature_degC, cutwater_column size_mm,
                                                  const char *shape, cutwater_column emissivity,
                                                  cutwater_column ambient_pressure_bara,
                                                  cutwater_result_column surface_coefficient_Wm2K,
                                                  cutwater_result_column convection_Wm2K,
                                                  cutwater_result_column radiation_Wm2K, cutwater_rows_report *report);

/*
 * Heat that a bare casing gives to the air.
 *
 *   surface_temperature_degC     temperature of the surface; from -100 to 1000 degC
 *   ambient_temperature_degC     temperature of the air; the lowest, for tracing and jackets; from -60 to 100 degC
 *   area_m2                      surface of the casing, cover and feet; above 0 up to 1000 m2
 *   surface_coefficient_Wm2K     heat given to still air, radiation included; see surface_coefficient; above 0 up to
 *                                1000 W/(m2 K); 10 if left out
 *   -> heat_loss_kW              heat lost; negative: heat taken up
 *
 *   Equation: Q = h A (T_s - T_a)
 *   Source: Newton's law of cooling; common practice
 *   Caution: Still air. Wind, draughts and rain double or treble it; a casing taken as a cylinder or box of equal area:
 *            plus or minus 25 % (judgement).
 *   Caution: Bare metal above about 60 degC burns the hand that touches it: guard or insulate it.
 */
CUTWATER_API cutwater_status cutwater_casing_heat_loss(double surface_temperature_degC, double ambient_temperature_degC,
                                          double area_m2, double surface_coefficient_Wm2K, double *heat_loss_kW,
                                          cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_casing_heat_loss_rows(size_t rows, cutwater_column surface_temperature_degC,
                                               cutwater_column ambient_temperature_degC, cutwater_column area_m2,
                                               cutwater_column surface_coefficient_Wm2K,
                                               cutwater_result_column heat_loss_kW, cutwater_rows_report *report);

/*
 * Heat that an insulated casing gives to the air, and how hot the cladding is.
 *
 *   hot_temperature_degC         temperature of the liquid and casing; from -100 to 1000 degC
 *   ambient_temperature_degC     temperature of the air; the lowest, for tracing and jackets; from -60 to 100 degC
 *   area_m2                      outside surface of the insulation; above 0 up to 1000 m2
 *   insulation_thickness_mm      thickness of the insulation; 0 for bare; from 0 to 1000 mm
 *   conductivity_WmK             conductivity of the insulation at its mean temperature: mineral wool 0.04 to 0.06, wet
 *                                far more; from 0.01 to 10 W/(m K)
 *   surface_coefficient_Wm2K     heat given to still air, radiation included; see surface_coefficient; above 0 up to
 *                                1000 W/(m2 K); 10 if left out
 *   -> heat_loss_kW              heat lost; negative: heat taken up
 *   -> surface_temperature_degC  temperature of the cladding
 *
 *   Equation: Q = A (T_1 - T_a)/(s/k + 1/h), T_s = T_a + Q/(h A)
 *   Source: conduction through a plane or cylindrical layer and a surface film in series; J. P. Holman, Heat Transfer,
 *           and any text on it (from memory)
 *   Caution: Feet, nozzles, bolts and the bearing bracket are bridges through the insulation: add for them. Never
 *            insulate bearing housings or what the pump maker leaves bare.
 *   Caution: Still air. Wind, draughts and rain double or treble it; a casing taken as a cylinder or box of equal area:
 *            plus or minus 25 % (judgement).
 *   Caution: Bare metal above about 60 degC burns the hand that touches it: guard or insulate it.
 *   Caution: Bright cladding gives off about half: take 5 for its temperature, 10 and more for the loss.
 *   Caution: Wet insulation hardly insulates, and hides corrosion.
 */
CUTWATER_API cutwater_status cutwater_insulated_casing_heat_loss(double hot_temperature_degC, double ambient_temperature_degC,
                                                    double area_m2, double insulation_thickness_mm,
                                                    double conductivity_WmK, double surface_coefficient_Wm2K,
                                                    double *heat_loss_kW, double *surface_temperature_degC,
                                                    cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_insulated_casing_heat_loss_rows(size_t rows, cutwater_column hot_temperature_degC,
                                                         cutwater_column ambient_temperature_degC,
                                                         cutwater_column area_m2,
                                                         cutwater_column insulation_thickness_mm,
                                                         cutwater_column conductivity_WmK,
                                                         cutwater_column surface_coefficient_Wm2K,
                                                         cutwater_result_column heat_loss_kW,
                                                         cutwater_result_column surface_temperature_degC,
                                                         cutwater_rows_report *report);

/*
 * Heat that each metre of an insulated or bare pipe gives to the air.
 *
 *   hot_temperature_degC         temperature of the liquid, which the pipe wall shares; from -100 to 1000 degC
 *   ambient_temperature_degC     temperature of the air; the lowest, for tracing and jackets; from -60 to 100 degC
 *   outside_diameter_mm          outside diameter of the pipe; from 1 to 10000 mm
 *   insulation_thickness_mm      thickness of the insulation; 0 for bare; from 0 to 1000 mm
 *   conductivity_WmK             conductivity of the insulation at its mean temperature: mineral wool 0.04 to 0.06, wet
 *                                far more; from 0.01 to 10 W/(m K)
 *   surface_coefficient_Wm2K     heat given to still air, radiation included; see surface_coefficient; above 0 up to
 *                                1000 W/(m2 K); 10 if left out
 *   -> heat_per_length_Wm        heat lost by each metre
 *   -> surface_temperature_degC  temperature of the surface
 *
 *   Equation: q = (T_1 - T_a)/(ln((D + 2 s)/D)/(2 pi k) + 1/(h pi (D + 2 s))), T_s = T_a + q/(h pi (D + 2 s))
 *   Source: conduction through a plane or cylindrical layer and a surface film in series; J. P. Holman, Heat Transfer,
 *           and any text on it (from memory)
 *   Caution: Valves, flanges and supports lose as much as some metres of pipe each: add them.
 *   Caution: Still air. Wind, draughts and rain double or treble it; a casing taken as a cylinder or box of equal area:
 *            plus or minus 25 % (judgement).
 *   Caution: Bare metal above about 60 degC burns the hand that touches it: guard or insulate it.
 *   Caution: Bright cladding gives off about half: take 5 for its temperature, 10 and more for the loss.
 *   Caution: Wet insulation hardly insulates, and hides corrosion.
 */
CUTWATER_API cutwater_status cutwater_pipe_heat_loss(double hot_temperature_degC, double ambient_temperature_degC,
                                        double outside_diameter_mm, double insulation_thickness_mm,
                                        double conductivity_WmK, double surface_coefficient_Wm2K,
                                        double *heat_per_length_Wm, double *surface_temperature_degC,
                                        cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_pipe_heat_loss_rows(size_t rows, cutwater_column hot_temperature_degC,
                                             cutwater_column ambient_temperature_degC,
                                             cutwater_column outside_diameter_mm,
                                             cutwater_column insulation_thickness_mm,
                                             cutwater_column conductivity_WmK,
                                             cutwater_column surface_coefficient_Wm2K,
                                             cutwater_result_column heat_per_length_Wm,
                                             cutwater_result_column surface_temperature_degC,
                                             cutwater_rows_report *report);

/*
 * Heat that tracing must bring to hold insulated lines and a pump at a temperature.
 *
 *   hot_temperature_degC         temperature to be held; from -100 to 1000 degC
 *   ambient_temperature_degC     temperature of the air; the lowest, for tracing and jackets; from -60 to 100 degC
 *   outside_diameter_mm          outside diameter of the pipe; from 1 to 10000 mm
 *   insulation_thickness_mm      thickness of the insulation; 0 for bare; from 0 to 1000 mm
 *   conductivity_WmK             conductivity of the insulation at its mean temperature: mineral wool 0.04 to 0.06, wet
 *                                far more; from 0.01 to 10 W/(m K)
 *   length_m                     length of traced pipe, with the lengths that valves and flanges stand for; at least 0 m
 *   casing_area_m2               outside surface of the pump's insulation; at least 0 m2; 0 if left out
 *   surface_coefficient_Wm2K     heat given to still air, radiation included; see surface_coefficient; above 0 up to
 *                                1000 W/(m2 K); 10 if left out
 *   margin                       margin for wind, gaps, voltage and ageing: 10 to 30 % is usual; from 0 to 1; 0.2 if
 *                                left out
 *   -> duty_kW                   heat for pipe and pump together
 *   -> pipe_duty_kW              heat for the pipe
 *   -> casing_duty_kW            heat for the pump
 *
 *   Equation: Q = (1 + m)(q l + A (T_1 - T_a)/(s/k + 1/h)), q as in pipe_heat_loss
 *   Must hold of hot_temperature: it must be above the temperature of the air
 *   Source: conduction in series as in pipe_heat_loss and insulated_casing_heat_loss; the margin: common practice
 *   Caution: It holds a temperature; it does not melt what has set: see jacket_heat_duty for warming up.
 *   Caution: Tracing that stays on against closed valves heats trapped liquid: see trapped_liquid_pressure_rise.
 *            Electric tracing in explosive atmospheres needs its own certificate.
 *   Caution: Still air. Wind, draughts and rain double or treble it; a casing taken as a cylinder or box of equal area:
 *            plus or minus 25 % (judgement).
 */
CUTWATER_API cutwater_status cutwater_heat_tracing_duty(double hot_temperature_degC, double ambient_temperature_degC,
                                           double outside_diameter_mm, double insulation_thickness_mm,
                                           double conductivity_WmK, double length_m, double casing_area_m2,
                                           double surface_coefficient_Wm2K, double margin, double *duty_kW,
                                           double *pipe_duty_kW, double *casing_duty_kW, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_heat_tracing_duty_rows(size_t rows, cutwater_column hot_temperature_degC,
                                                cutwater_column ambient_temperature_degC,
                                                cutwater_column outside_diameter_mm,
                                                cutwater_column insulation_thickness_mm,
                                                cutwater_column conductivity_WmK, cutwater_column length_m,
                                                cutwater_column casing_area_m2,
                                                cutwater_column surface_coefficient_Wm2K, cutwater_column margin,
                                                cutwater_result_column duty_kW, cutwater_result_column pipe_duty_kW,
                                                cutwater_result_column casing_duty_kW, cutwater_rows_report *report);

/*
 * Heat that a jacket must bring: what the casing loses, and what warming it up takes.
 *
 *   heat_loss_kW                 heat lost when hot, as from insulated_casing_heat_loss; at least 0 kW
 *   heat_capacity_kJK            liquid and metal, as from pump_heat_capacity; add the heat of melting over the warming,
 *                                where there is one; at least 0 kJ/K
 *   warming_K                    warming from standstill; 0 for holding alone; at least 0 K
 *   time_h                       time allowed for it; above 0 h; 1 if left out
 *   -> duty_kW                   heat at the end of the warming, when the loss is whole
 *
 *   Equation: Q = Q_0 + C dT/t
 *   Source: balance of heat; common practice
 *   Caution: Warm up as slowly as the pump maker and the lining allow; a cast iron or enamelled casing cracks. Do not
 *            start until what has set has melted everywhere.
 *   Caution: Liquid shut in while it warms bursts the casing: leave a way out, see trapped_liquid_pressure_rise.
 */
CUTWATER_API cutwater_status cutwater_jacket_heat_duty(double heat_loss_kW, double heat_capacity_kJK, double warming_K,
                                          double time_h, double *duty_kW, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_jacket_heat_duty_rows(size_t rows, cutwater_column heat_loss_kW,
                                               cutwater_column heat_capacity_kJK, cutwater_column warming_K,
                                               cutwater_column time_h, cutwater_result_column duty_kW,
                                               cutwater_rows_report *report);

/*
 * Temperature that the heating medium in a jacket must have.
 *
 *   duty_kW                      heat to bring, as from jacket_heat_duty; at least 0 kW
 *   product_temperature_degC     temperature of the pumped liquid; from -100 to 1000 degC
 *   area_m2                      heated surface between jacket and liquid; above 0 up to 1000 m2
 *   overall_coefficient_Wm2K     overall coefficient: standing viscous liquid 30 to 100, water stirred by the pump 300
 *                                to 800 (judgement); measure it; above 0 up to 10000 W/(m2 K)
 *   -> jacket_temperature_degC   mean temperature of the medium
 *
 *   Equation: T_j = T + Q/(U A)
 *   Source: definition of the overall coefficient
 *   Caution: The jacket's wall may reach the medium's temperature: check it against the liquid's decomposition, the
 *            lining and the seal.
 *   Caution: A jacket is a pressure part with its own rating.
 */
CUTWATER_API cutwater_status cutwater_jacket_temperature_needed(double duty_kW, double product_temperature_degC, double area_m2,
                                                   double overall_coefficient_Wm2K, double *jacket_temperature_degC,
                                                   cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_jacket_temperature_needed_rows(size_t rows, cutwater_column duty_kW,
                                                        cutwater_column product_temperature_degC,
                                                        cutwater_column area_m2,
                                                        cutwater_column overall_coefficient_Wm2K,
                                                        cutwater_result_column jacket_temperature_degC,
                                                        cutwater_rows_report *report);

/*
 * Steam that condenses in a jacket or tracer.
 *
 *   duty_kW                      heat to bring, as from jacket_heat_duty or heat_tracing_duty; at least 0 kW
 *   latent_heat_kJkg             heat of condensation: 2202 at 2 bara, 2133 at 4, 2086 at 6, 2014 at 10 (IAPWS-IF97);
 *                                from 500 to 2600 kJ/kg
 *   -> steam_kgh                 dry saturated steam; wet steam is more
 *
 *   Equation: m = Q/r
 *   Source: balance of heat; latent heats by IAPWS-IF97 (library iapws 1.5.2, run)
 *   Caution: At start-up cold metal takes several times as much for a while.
 */
CUTWATER_API cutwater_status cutwater_jacket_steam_flow(double duty_kW, double latent_heat_kJkg, double *steam_kgh,
                                           cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_jacket_steam_flow_rows(size_t rows, cutwater_column duty_kW,
                                                cutwater_column latent_heat_kJkg, cutwater_result_column steam_kgh,
                                                cutwater_rows_report *report);

#ifdef __cplusplus
}
#endif

#endif
