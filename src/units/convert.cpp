// Values from unit to unit.
#include "message.hpp"
#include "spelling.hpp"
#include "text.hpp"
#include "turning.hpp"
#include "unit_refusal.hpp"

#include <cmath>
#include <cstdint>
#include <limits>
#include <numeric>

namespace cutwater {

namespace {

constexpr double nan = std::numeric_limits<double>::quiet_NaN();

/// x -> (x numerator + shift) / denominator.
struct Affine {
    double numerator;
    double shift;
    double denominator;
};

constexpr double exact_below =
    9007199254740992;  // 2^53: whole numbers up to here are exact, and so are their products up to here

/// A factor as a whole number; 0 where it is none.
std::uint64_t whole(double factor) noexcept
{
    constexpr double most = 1.8e19;  // below 2^64
    return factor >= 1 && factor < most && factor == std::floor(factor) ? static_cast<std::uint64_t>(factor) : 0;
}

/// Takes out what two factors have in common.
void cancel(double& a, double& b) noexcept
{
    const std::uint64_t x = whole(a), y = whole(b);
    if (x && y) {
        const std::uint64_t common = std::gcd(x, y);
        a = static_cast<double>(x / common);
        b = static_cast<double>(y / common);
    } else if (a == b) {
        a = b = 1;
    }
}

/// Two units as one factor in lowest terms, so that what is exact on paper (1 in = 25.4 mm) is exact here.
Affine between(const UnitInfo& from, const UnitInfo& to) noexcept
{
    double from_numerator = from.numerator, from_denominator = from.denominator;
    double to_numerator = to.numerator, to_denominator = to.denominator;
    cancel(from_numerator, to_numerator);
    cancel(to_denominator, from_denominator);
    cancel(from_numerator, from_denominator);
    cancel(to_denominator, to_numerator);
    const Affine map{from_numerator * to_denominator, 0, from_denominator * to_numerator};
    if (from.offset == to.offset && map.numerator == map.denominator) return map;
    if (from.offset == 0 && to.offset == 0) return map;
    // zero points are given to 0.01 (273.15, 459.67): counted in hundredths they are whole
    const double shift = std::round(from.offset * 100) * map.numerator - std::round(to.offset * 100) * map.denominator;
    return {100 * map.numerator, shift, 100 * map.denominator};
}

/// The affine map with its roundings carried along by fused multiply-add: the exact result, rounded once or nearly so.
double apply(const Affine& map, double x) noexcept
{
    const double product = x * map.numerator;
    if (!std::isfinite(product)) return x / map.denominator * map.numerator + map.shift / map.denominator;
    const double product_error = std::fma(x, map.numerator, -product);
    const double sum = product + map.shift;
    const double part = sum - product;
    const double sum_error = (product - (sum - part)) + (map.shift - part);
    const double quotient = sum / map.denominator;
    const double remainder = std::fma(-quotient, map.denominator, sum);
    return quotient + (remainder + (product_error + sum_error)) / map.denominator;
}

/// A double of at most 15 digits as the decimal that it stands for: digits / power. Others are kept as they are,
/// over 1.
struct Decimal {
    double digits;
    double power;
};

Decimal as_decimal(double value) noexcept
{
    constexpr double fifteen_digits = 1e15;
    double power = 1;
    for (int places = 0; places <= 22; ++places, power *= 10) {  // powers of ten are exact up to 1e22
        const double digits = std::round(value * power);
        if (!(std::abs(digits) < fifteen_digits)) break;
        if (digits / power == value) return {digits, power};
    }
    return {value, 1};
}

cutwater_status refuse_unknown(std::string_view text, int argument, const char* name,
                               cutwater_refusal* refusal) noexcept
{
    clear_refusal(refusal, CUTWATER_UNKNOWN_UNIT, "");
    if (refusal) {
        refusal->argument = argument;
        Message(refusal->name, sizeof refusal->name).add("{}", name);
        Message message(refusal->message, sizeof refusal->message);
        message.add("'{}' is no unit that is known here", Quoted(text).view());
        // a gallon or a ton without its country is the commonest cause
        const Spelling us_before(text);
        const std::string_view folded = us_before.folded();
        if (folded.find("gal") != folded.npos || folded.find("gpm") != folded.npos || folded.find("gd") != folded.npos)
            message.add("; say which gallon: US gal or imp gal, US gpm or imp gpm");
        else if (folded.find("ton") != folded.npos)
            message.add("; say which ton: t (1000 kg), US ton or imp ton");
    }
    return CUTWATER_UNKNOWN_UNIT;
}

cutwater_status refuse_unlike(std::string_view from, std::string_view to, const Owners& sources, const Owners& targets,
                              cutwater_refusal* refusal) noexcept
{
    clear_refusal(refusal, CUTWATER_WRONG_QUANTITY, "");
    if (!refusal) return CUTWATER_WRONG_QUANTITY;
    refusal->argument = 2;
    Message(refusal->name, sizeof refusal->name).add("to");
    Message message(refusal->message, sizeof refusal->message);
    const Quoted given(from), wanted(to);
    const bool from_gauge = sources.has(quantity_info<GaugePressure>),
               to_gauge = targets.has(quantity_info<GaugePressure>);
    const bool from_absolute = sources.has(quantity_info<AbsolutePressure>),
               to_absolute = targets.has(quantity_info<AbsolutePressure>);
    if ((from_gauge && to_absolute) || (from_absolute && to_gauge)) {
        message.add("'{}' is {} pressure and '{}' is {} pressure: an ambient pressure is needed between them",
                    given.view(), from_gauge ? "gauge" : "absolute", wanted.view(), from_gauge ? "absolute" : "gauge");
        const QuantityInfo& gauge = quantity_info<GaugePressure>;
        const QuantityInfo& absolute = quantity_info<AbsolutePressure>;
        if (const char* function = from_gauge ? function_between(gauge, absolute) : function_between(absolute, gauge))
            message.add("; use {}", function);
        return CUTWATER_WRONG_QUANTITY;
    }
    message.add("cannot convert '{}' into '{}': ", given.view(), wanted.view());
    explain_wrong_quantity(message, given.view(), sources, *targets.quantity[0], targets.unit[0]);
    return CUTWATER_WRONG_QUANTITY;
}

/// The first quantity that knows both spellings; exact spellings of both go before others.
const QuantityInfo* common_quantity(const Spelling& from, const Spelling& to, FoundUnit& source,
                                    FoundUnit& target) noexcept
{
    const QuantityInfo* best = nullptr;
    int best_rank = -1;
    for (const QuantityInfo* candidate : all_quantities()) {
        const FoundUnit a = find_unit(*candidate, from);
        if (!a) continue;
        const FoundUnit b = find_unit(*candidate, to);
        if (!b) continue;
        const int rank = int(a.exact) + int(b.exact);
        if (rank <= best_rank) continue;
        best_rank = rank;
        best = candidate;
        source = a;
        target = b;
        if (rank == 2) break;
    }
    return best;
}

}  // namespace

double rescale(double value, const UnitInfo& from, const UnitInfo& to) noexcept
{
    if (&from == &to) return value;
    const Affine map = between(from, to);
    // 25.4 mm is meant, not the double nearest to it: in whole numbers it comes to 1 in
    Decimal decimal = as_decimal(value);
    Affine scaled = map;
    cancel(scaled.numerator, decimal.power);
    scaled.shift *= decimal.power;
    scaled.denominator *= decimal.power;
    const bool exact = std::abs(scaled.shift) < exact_below && scaled.denominator < exact_below;
    return exact ? apply(scaled, decimal.digits) : apply(map, value);
}

cutwater_status convert(double value, std::string_view from, std::string_view to, double& out,
                        cutwater_refusal* refusal) noexcept
{
    out = nan;
    const auto refuse_value = [&](cutwater_status status, std::string_view unit) {
        clear_refusal(refusal, status, unit);
        if (refusal) {
            refusal->argument = 0;
            refusal->value = value;
            Message(refusal->name, sizeof refusal->name).add("value");
        }
        return Message(refusal ? refusal->message : nullptr, refusal ? sizeof refusal->message : 0);
    };

    if (!std::isfinite(value)) {
        refuse_value(CUTWATER_NOT_FINITE, "").add("the value to convert is not a finite number");
        return CUTWATER_NOT_FINITE;
    }
    if (from.empty()) from = "-";  // a number without unit
    if (to.empty()) to = "-";
    const Spelling source_spelling(from), target_spelling(to);
    FoundUnit source, target;
    const QuantityInfo* quantity = common_quantity(source_spelling, target_spelling, source, target);
    if (!quantity) {
        const Owners sources(source_spelling), targets(target_spelling);
        if (!sources.count) return refuse_unknown(from, 1, "from", refusal);
        if (!targets.count) return refuse_unknown(to, 2, "to", refusal);
        return refuse_unlike(from, to, sources, targets, refusal);
    }
    const bool has_lowest = quantity == &quantity_info<Temperature> || quantity == &quantity_info<AbsolutePressure>;
    const double lowest = -source.unit->offset;  // absolute zero, or vacuum
    if (has_lowest && value < lowest) {
        Message message = refuse_value(CUTWATER_OUT_OF_INTERVAL, source.unit->symbol);
        if (refusal) {
            refusal->low = lowest;
            refusal->low_open = 0;
        }
        message.add("{} {} lies below {} ({} {})", value, source.unit->symbol,
                    quantity == &quantity_info<Temperature> ? "absolute zero" : "vacuum", lowest, source.unit->symbol);
        return CUTWATER_OUT_OF_INTERVAL;
    }
    const double converted = rescale(value, *source.unit, *target.unit);
    if (!std::isfinite(converted)) {
        refuse_value(CUTWATER_OVERFLOW, source.unit->symbol)
            .add("{} {} is too large a number in {}", value, source.unit->symbol, target.unit->symbol);
        return CUTWATER_OVERFLOW;
    }
    out = converted;
    return CUTWATER_OK;
}

cutwater_status read_in_unit(std::string_view unit, std::string_view text, double& value,
                             cutwater_refusal* refusal) noexcept
{
    value = nan;
    if (unit.empty()) unit = "-";  // a number without unit
    const Owners owners{Spelling(unit)};
    if (!owners.count) return refuse_unknown(unit, 1, "unit", refusal);
    // Several quantities may share the spelling (m: a length, a head): the text fits any of them, or the first says why
    // not. But of a temperature and a difference, kelvins mean the difference: 8 degC must not pass for 281 K of it.
    int first = 0;
    for (int i = 0; i < owners.count; ++i)
        if (owners.quantity[i] == &quantity_info<TemperatureDifference>) first = i;
    const bool difference = owners.quantity[first] == &quantity_info<TemperatureDifference>;
    for (int i = 0; i < owners.count && !difference; ++i)
        if (read_quantity(*owners.quantity[i], *owners.unit[i], text, value, nullptr) == CUTWATER_OK)
            return CUTWATER_OK;
    const cutwater_status status = read_quantity(*owners.quantity[first], *owners.unit[first], text, value, refusal,
                                                 UnitIs::asked_for);
    if (status == CUTWATER_OK) return CUTWATER_OK;
    if (refusal) {
        refusal->argument = 0;
        Message(refusal->name, sizeof refusal->name).add("value");
    }
    return status;
}

}  // namespace cutwater
