#include "unit_refusal.hpp"

#include "message.hpp"
#include "turning.hpp"

#include <limits>

namespace cutwater {

namespace {

constexpr const QuantityInfo* difference = &quantity_info<PressureDifference>;
constexpr const QuantityInfo* absolute = &quantity_info<AbsolutePressure>;
constexpr const QuantityInfo* gauge = &quantity_info<GaugePressure>;

/// The unit of the same size on another list: bara for bar, mmHg for torr (a ten-millionth apart). Null where there is
/// none.
const UnitInfo* counterpart(const QuantityInfo& quantity, const UnitInfo& unit) noexcept
{
    for (const UnitInfo& candidate : quantity) {
        const double ratio = candidate.numerator * unit.denominator / (unit.numerator * candidate.denominator);
        if (ratio > 1 - 1e-6 && ratio < 1 + 1e-6) return &candidate;
    }
    return nullptr;
}

/// "write bara", or "write it in bara, Pa(a), ..." where the unit has no counterpart: another size must not be
/// suggested.
void advise_counterpart(Message& message, const QuantityInfo& quantity, const UnitInfo& unit) noexcept
{
    if (const UnitInfo* same = counterpart(quantity, unit)) {
        message.add("write {}", same->symbol);
    } else {
        message.add("write it ");
        list_units(message, quantity);
    }
}

/// " with FUNCTION", where a record says that it turns the one into the other.
void advise_function(Message& message, const QuantityInfo& from, const QuantityInfo& to) noexcept
{
    if (const char* function = function_between(from, to)) message.add(" with {}", function);
}

/// The cases of which the trade makes the most mistakes get sentences of their own.
bool explain_known_confusion(Message& message, std::string_view given, const Owners& owners,
                             const QuantityInfo& expected, const UnitInfo* asked) noexcept
{
    const auto first = [&](const QuantityInfo* q) -> const UnitInfo* {
        for (int i = 0; i < owners.count; ++i)
            if (owners.quantity[i] == q) return owners.unit[i];
        return nullptr;
    };
    if (&expected == absolute || &expected == gauge) {
        const bool wants_absolute = &expected == absolute;
        if (const UnitInfo* unit = first(difference)) {
            message.add("'{}' says neither gauge nor absolute; {} is needed: ", given, expected.name);
            advise_counterpart(message, expected, *unit);
            message.add(" if that is meant, and turn {} pressure into {} otherwise",
                        wants_absolute ? "gauge" : "absolute", wants_absolute ? "absolute" : "gauge");
            advise_function(message, wants_absolute ? *gauge : *absolute, expected);
            return true;
        }
        if (first(wants_absolute ? gauge : absolute)) {
            message.add("'{}' is {} pressure; {} is needed: {} the ambient pressure", given,
                        wants_absolute ? "gauge" : "absolute", expected.name, wants_absolute ? "add" : "take off");
            advise_function(message, wants_absolute ? *gauge : *absolute, expected);
            return true;
        }
    }
    if (&expected == difference) {
        const UnitInfo* unit = first(gauge);
        const bool is_gauge = unit != nullptr;
        if (!unit) unit = first(absolute);
        const UnitInfo* same = unit && asked ? counterpart(is_gauge ? *gauge : *absolute, *asked) : nullptr;
        if (same) {  // the unit was the caller's choice: it is that which does not fit
            message.add("'{}' is {} pressure, and {} says neither gauge nor absolute: ask for {}", given,
                        is_gauge ? "gauge" : "absolute", asked->symbol, same->symbol);
            return true;
        }
        if (unit) {
            message.add("'{}' is {} pressure; a pressure difference, or a stress, is needed: if the number is one, ",
                        given, is_gauge ? "gauge" : "absolute");
            advise_counterpart(message, expected, *unit);
            return true;
        }
    }
    if (&expected == &quantity_info<TemperatureDifference> && first(&quantity_info<Temperature>)) {
        message.add("'{}' is a temperature; a temperature difference is needed: write it in K (a step of 1 degC is 1 "
                    "K) or in delta degF "
                    "(a step of 1 degF)",
                    given);
        return true;
    }
    const bool wants_kinematic = &expected == &quantity_info<KinematicViscosity>;
    if (wants_kinematic ? first(&quantity_info<DynamicViscosity>) != nullptr
                        : &expected == &quantity_info<DynamicViscosity> && first(&quantity_info<KinematicViscosity>)) {
        message.add("'{}' is {} viscosity; {} is needed: {} the density", given,
                    wants_kinematic ? "dynamic" : "kinematic", expected.name,
                    wants_kinematic ? "divide by" : "multiply by");
        advise_function(message, wants_kinematic ? quantity_info<DynamicViscosity> : quantity_info<KinematicViscosity>,
                        expected);
        return true;
    }
    if (&expected == &quantity_info<Temperature> && first(&quantity_info<TemperatureDifference>)) {
        message.add("'{}' is a temperature difference; a temperature is needed: write it ", given);
        list_units(message, expected);
        return true;
    }
    return false;
}

}  // namespace

void clear_refusal(cutwater_refusal* refusal, cutwater_status status, std::string_view unit) noexcept
{
    if (!refusal) return;
    refusal->status = status;
    refusal->argument = -1;
    refusal->element = -1;
    refusal->value = std::numeric_limits<double>::quiet_NaN();
    refusal->low = -std::numeric_limits<double>::infinity();
    refusal->high = std::numeric_limits<double>::infinity();
    refusal->low_open = refusal->high_open = 1;  // an infinite end is always open: infinities are refused everywhere
    refusal->name[0] = 0;
    refusal->message[0] = 0;
    Message(refusal->unit, sizeof refusal->unit).add("{}", unit);
}

void list_units(Message& message, const QuantityInfo& quantity) noexcept
{
    constexpr std::size_t most = 8;
    const bool unitless = !*quantity.units[0].symbol;
    if (unitless) message.add("without unit");
    for (std::size_t i = unitless ? 1 : 0; i < quantity.count && i < most; ++i)
        message.add("{}{}", i == 0 ? "in " : i == 1 && unitless ? " or in " : ", ", quantity.units[i].symbol);
    if (quantity.count > most) message.add(", ...");
}

Owners::Owners(const Spelling& spelling) noexcept
{
    bool exact = false;
    for (const QuantityInfo* candidate : all_quantities()) {
        const FoundUnit found = find_unit(*candidate, spelling);
        if (!found || (exact && !found.exact)) continue;
        if (found.exact && !exact) count = 0;  // exact spellings push the others out
        exact = found.exact;
        if (count == most) continue;
        quantity[count] = candidate;
        unit[count++] = found.unit;
    }
}

bool Owners::has(const QuantityInfo& which) const noexcept
{
    for (int i = 0; i < count; ++i)
        if (quantity[i] == &which) return true;
    return false;
}

void explain_wrong_quantity(Message& message, std::string_view given, const Owners& owners,
                            const QuantityInfo& expected, const UnitInfo* asked) noexcept
{
    if (explain_known_confusion(message, given, owners, expected, asked)) return;
    message.add("'{}' is a unit of ", given);
    for (int i = 0; i < owners.count; ++i)
        message.add("{}{}", i == 0 ? "" : i + 1 < owners.count ? ", " : " or ", owners.quantity[i]->name);
    message.add("; {} is needed, ", expected.name);
    list_units(message, expected);
    // which gallon, which ton: a hint for a unit that is in no table, and beside the point here
    if (!std::string_view(expected.hint).starts_with("say which")) add_hint(message, expected);
}

void add_hint(Message& message, const QuantityInfo& expected) noexcept
{
    if (!*expected.hint) return;
    message.add(" ({}", expected.hint);
    for (const QuantityInfo* candidate : all_quantities())
        if (std::string_view(candidate->type) == expected.mistaken)
            if (const char* function = function_between(*candidate, expected)) message.add(": use {}", function);
    message.add(")");
}

}  // namespace cutwater
