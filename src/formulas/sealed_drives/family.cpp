#include "catalogue/erased.hpp"
#include "formulas/sealed_drives/records.hpp"

namespace cutwater {

using namespace formulas;

constexpr const FunctionInfo* sealed_drives_functions[] = {
    entry<magnetic_coupling_torque_record>, entry<magnetic_coupling_start_torque_record>,
    entry<magnetic_coupling_margin_record>, entry<shell_end_factor_record>,
    entry<shell_eddy_loss_record>,          entry<recirculation_temperature_rise_record>,
    entry<shell_temperature_rise_record>,   entry<shell_vapour_margin_record>,
    entry<loss_of_flow_time_record>,
};

extern const Family sealed_drives_family;  // a const without this would stay inside this file
constinit const Family sealed_drives_family{"sealed_drives", "Magnetic drives and other sealed drives", 150,
                                            sealed_drives_functions};

}  // namespace cutwater
