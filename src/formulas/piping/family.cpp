#include "catalogue/erased.hpp"
#include "formulas/piping/records.hpp"

namespace cutwater {

using namespace formulas;

constexpr const FunctionInfo* piping_functions[] = {
    entry<static_head_from_levels_record>,      entry<nominal_pipe_bore_record>,
    entry<fitting_loss_coefficient_record>,     entry<fitting_loss_coefficient_by_size_record>,
    entry<entrance_loss_coefficient_record>,    entry<projecting_entrance_loss_coefficient_record>,
    entry<enlargement_loss_coefficient_record>, entry<contraction_loss_coefficient_record>,
    entry<loss_coefficient_at_bore_record>,     entry<hazen_williams_head_record>,
    entry<tank_discharge_time_record>,          entry<filling_time_record>,
};

extern const Family piping_family;  // a const without this would stay inside this file
constinit const Family piping_family{"piping", "Pipes, fittings and tanks", 25, piping_functions};

}  // namespace cutwater
