#include "answers/sensitivity.hpp"

#include "answers/slope.hpp"

#include <algorithm>
#include <cmath>

namespace cutwater {
namespace {

constexpr double nan = std::numeric_limits<double>::quiet_NaN();

/// From absolute zero where the unit has an offset: a per cent of 20 degC means nothing, of 293.15 K it does.
double from_zero(double value, const UnitInfo& unit) { return value + unit.offset; }

cutwater_sensitivity_row number_row(Probe& probe, std::size_t i, const InputInfo& in, const UnitInfo& out,
                                    double centre)
{
    double& x = probe.given[i].number;
    const double at = x;
    const Slope slope = slope_at([&](double moved) { return x = moved, probe(); }, at, centre, 0, in.whole);
    x = at;
    const double input = from_zero(at, *in.unit);
    const double result = from_zero(centre, out);
    cutwater_sensitivity_row row{static_cast<std::int32_t>(i), input != 0 && result != 0, nan, slope.value};
    if (row.relative) row.relative_change = slope.value * input / result;
    if (!std::isfinite(row.relative_change)) row.relative = 0;
    return row;
}

/// A series is scaled as a whole.
cutwater_sensitivity_row series_row(Probe& probe, std::size_t i, const InputInfo& in, const UnitInfo& out,
                                    double centre)
{
    const RawSeries at = probe.given[i].series;
    std::vector<double> scaled(at.length);
    const auto ask = [&](double factor) {
        for (std::size_t k = 0; k < at.length; ++k)
            scaled[k] = in.unit->offset == 0 ? at[k] * factor : from_zero(at[k], *in.unit) * factor - in.unit->offset;
        probe.given[i].series = {scaled.data(), scaled.size(), 1};
        return probe();
    };
    const Slope slope = slope_at(ask, 1, centre, 0, false);
    probe.given[i].series = at;
    const double result = from_zero(centre, out);
    const bool relative = result != 0 && std::isfinite(slope.value);
    return {static_cast<std::int32_t>(i), relative, relative ? slope.value / result : nan, nan};
}

}  // namespace

cutwater_status sensitivity(const FunctionInfo& f, std::span<const cutwater_value> values, const char* result,
                            std::vector<cutwater_sensitivity_row>& rows, double& value, cutwater_refusal* refusal)
{
    std::size_t which = 0;
    if (const auto status = choose_result(f, result, which, refusal); status != CUTWATER_OK) return status;
    GivenInputs given;
    if (const auto status = read_arguments(f, values, given, refusal); status != CUTWATER_OK) return status;
    Probe probe(f, given, which);
    if (const auto status = probe.ask(value, refusal); status != CUTWATER_OK) return status;
    const UnitInfo& out = *f.results[which].unit;
    for (std::size_t i = 0; i < f.inputs.size(); ++i) {
        const InputInfo& in = f.inputs[i];
        if (in.kind == Kind::quantity) rows.push_back(number_row(probe, i, in, out, value));
        if (in.kind == Kind::series) rows.push_back(series_row(probe, i, in, out, value));
    }
    // Ranked ones first; of the others the steepest; what could not be told (NaN) last.
    const auto weight = [](const cutwater_sensitivity_row& row) {
        const double w = std::abs(row.relative ? row.relative_change : row.slope);
        return std::isnan(w) ? -1 : w;
    };
    std::stable_sort(rows.begin(), rows.end(), [&](const auto& a, const auto& b) {
        return a.relative != b.relative ? a.relative > b.relative : weight(a) > weight(b);
    });
    return CUTWATER_OK;
}

}  // namespace cutwater
