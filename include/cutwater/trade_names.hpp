// Units under the names that the trade also writes. There is no gpm and no ton: each is US or imperial.
#pragma once

#include <cutwater/unit_table.hpp>

namespace cutwater::units {

inline constexpr Unit<Length> meter = metre;
inline constexpr Unit<Length> foot = ft;
inline constexpr Unit<Length> inch = in;
inline constexpr Unit<Length> mil = thou;
inline constexpr Unit<Volume> liter = litre;
inline constexpr Unit<Volume> usgal = us_gal;
inline constexpr Unit<Volume> impgal = imp_gal;
inline constexpr Unit<Volume> barrel = bbl;
inline constexpr Unit<Mass> uston = us_ton;
inline constexpr Unit<Mass> impton = imp_ton;
inline constexpr Unit<Velocity> fps = fts;
inline constexpr Unit<Velocity> ips = ins;
inline constexpr Unit<Velocity> mpy = thou_year;

inline constexpr Unit<Flow> usgpm = us_gpm;
inline constexpr Unit<Flow> impgpm = imp_gpm;
inline constexpr Unit<Flow> usmgd = us_mgd;
inline constexpr Unit<Flow> lps = ls;
inline constexpr Unit<Flow> lpm = lmin;
inline constexpr Unit<Flow> lph = lh;
inline constexpr Unit<Flow> cfs = ft3s;
inline constexpr Unit<Flow> cfm = ft3min;
inline constexpr Unit<Flow> bpd = bbl_d;
inline constexpr Unit<MassFlow> tph = th;
inline constexpr Unit<MassFlow> pph = lbh;
inline constexpr Unit<Density> pcf = lbft3;
inline constexpr Unit<DynamicViscosity> cP = mPas;
inline constexpr Unit<KinematicViscosity> cSt = mm2s;
inline constexpr Unit<KinematicViscosity> St = stokes;
inline constexpr Unit<SayboltSeconds> SUS = saybolt;
inline constexpr Unit<SayboltSeconds> SSU = saybolt;
inline constexpr Unit<ValveCoefficient> Kv = kv;
inline constexpr Unit<ValveCoefficient> Cv = cv;

inline constexpr Unit<PressureDifference> psid = psi;
inline constexpr Unit<PressureDifference> mWC = mH2O;
inline constexpr Unit<PressureDifference> inWC = inH2O;
inline constexpr Unit<AbsolutePressure> torr = torr_a;
inline constexpr Unit<TemperatureDifference> delta_K = kelvin_difference;
inline constexpr Unit<TemperatureDifference> delta_degC = kelvin_difference;
inline constexpr Unit<TemperatureDifference> delta_degF = degF_difference;

inline constexpr Unit<Power> PS = metric_hp;
inline constexpr Unit<Power> bhp = hp;
inline constexpr Unit<Torque> ftlb = lbfft;
inline constexpr Unit<Torque> inlb = lbfin;
inline constexpr Unit<Frequency> Hz = hertz;

}  // namespace cutwater::units
