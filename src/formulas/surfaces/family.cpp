#include "catalogue/erased.hpp"
#include "formulas/surfaces/records.hpp"

namespace cutwater {

using namespace formulas;

constexpr const FunctionInfo* surfaces_functions[] = {
    entry<temperature_class_record>,
    entry<temperature_class_for_gas_record>,
    entry<surface_temperature_allowed_record>,
    entry<surface_temperature_allowed_dust_record>,
    entry<pump_heat_capacity_record>,
    entry<dead_headed_temperature_record>,
    entry<dead_headed_time_record>,
    entry<dry_running_temperature_record>,
    entry<cooling_time_record>,
    entry<surface_coefficient_record>,
    entry<casing_heat_loss_record>,
    entry<insulated_casing_heat_loss_record>,
    entry<pipe_heat_loss_record>,
    entry<heat_tracing_duty_record>,
    entry<jacket_heat_duty_record>,
    entry<jacket_temperature_needed_record>,
    entry<jacket_steam_flow_record>,
};

extern const Family surfaces_family;  // a const without this would stay inside this file
constinit const Family surfaces_family{"surfaces", "Surface temperatures, heat loss and jackets", 140,
                                       surfaces_functions};

}  // namespace cutwater
