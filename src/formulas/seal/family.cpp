#include "catalogue/erased.hpp"
#include "formulas/seal/records.hpp"

namespace cutwater {

using namespace formulas;

constexpr const FunctionInfo* seal_functions[] = {
    entry<seal_chamber_fraction_record>,
    entry<seal_chamber_pressure_record>,
    entry<balance_hole_chamber_pressure_record>,
    entry<back_vane_chamber_pressure_record>,
    entry<seal_barrier_pressure_record>,
    entry<seal_balance_ratio_record>,
    entry<seal_face_speed_record>,
    entry<seal_face_pressure_record>,
    entry<seal_pressure_velocity_record>,
    entry<seal_face_heat_record>,
    entry<rotating_ring_film_coefficient_record>,
    entry<seal_face_temperature_rise_record>,
    entry<seal_heat_soak_record>,
    entry<seal_chamber_temperature_record>,
    entry<seal_vapour_margin_record>,
    entry<seal_temperature_margin_record>,
    entry<seal_margin_verdict_record>,
    entry<seal_allowed_temperature_record>,
    entry<seal_flush_needed_record>,
    entry<seal_flush_flow_record>,
    entry<seal_flush_orifice_bore_record>,
    entry<seal_flush_orifice_flow_record>,
    entry<seal_throat_velocity_record>,
    entry<seal_chamber_drift_record>,
    entry<seal_chamber_clearing_record>,
};

extern const Family seal_family;  // a const without this would stay inside this file
constinit const Family seal_family{"seal", "Shaft seal and its chamber", 100, seal_functions};

}  // namespace cutwater
