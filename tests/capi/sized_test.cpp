// Callers compiled against a header with fewer or more fields than the library's own.
#include <cutwater/cutwater.h>

#include "answers/records.hpp"

#include <catch2/catch.hpp>

#include <cmath>
#include <cstddef>
#include <cstring>
#include <vector>

using cutwater::test::number;

namespace {

/// A struct that begins with its size, as a caller with a header of another time has it; what lies behind it is
/// watched.
template <class T>
class OfSize {
public:
    explicit OfSize(std::size_t size) : size_(size), bytes_(size)
    {
        bytes_.resize(size + 64, 0x5a);
        set(0, size);
    }
    T* get() { return reinterpret_cast<T*>(bytes_.data()); }
    template <class V>
    void set(std::size_t offset, V value)
    {
        std::memcpy(bytes_.data() + offset, &value, sizeof value);
    }
    template <class V>
    V field(std::size_t offset) const
    {
        V value;
        std::memcpy(&value, bytes_.data() + offset, sizeof value);
        return value;
    }
    bool untouched_behind() const
    {
        for (std::size_t i = size_; i < bytes_.size(); ++i)
            if (bytes_[i] != 0x5a) return false;
        return field<std::size_t>(0) == size_;
    }

private:
    std::size_t size_;
    std::vector<unsigned char> bytes_;
};

using Options = OfSize<cutwater_uncertainty_options>;
using Report = OfSize<cutwater_uncertainty_report>;

cutwater_status ask(Options* options, Report& report, cutwater_refusal& refusal)
{
    const cutwater_value inputs[] = {number(100), number(998)};
    const cutwater_value uncertainties[] = {number(1)};
    return cutwater_uncertainty("pressure_from_head", inputs, 2, uncertainties, 1, options ? options->get() : nullptr,
                                report.get(), &refusal);
}

constexpr double slope = 998 * 9.80665e-5;  // bar a metre, p = rho g h

}  // namespace

TEST_CASE("structures of an older or newer header are taken by their size", "[capi]")
{
    cutwater_refusal refusal{};
    constexpr std::size_t standard = offsetof(cutwater_uncertainty_report, standard);
    constexpr std::size_t mean = offsetof(cutwater_uncertainty_report, mean);
    for (const std::size_t report_size :
         {offsetof(cutwater_uncertainty_report, low), offsetof(cutwater_uncertainty_report, trusted),
          offsetof(cutwater_uncertainty_report, remark), sizeof(cutwater_uncertainty_report),
          sizeof(cutwater_uncertainty_report) + 24})
        for (const std::size_t options_size :
             {sizeof(std::size_t), offsetof(cutwater_uncertainty_options, monte_carlo),
              offsetof(cutwater_uncertainty_options, seed), sizeof(cutwater_uncertainty_options),
              sizeof(cutwater_uncertainty_options) + 16}) {
            Report report(report_size);
            Options options(options_size);
            const bool trials = options_size > offsetof(cutwater_uncertainty_options, monte_carlo);
            if (trials) options.set(offsetof(cutwater_uncertainty_options, monte_carlo), std::int32_t{CUTWATER_ALWAYS});
            INFO("report of " << report_size << " bytes, options of " << options_size << ": " << refusal.message);
            REQUIRE(ask(&options, report, refusal) == CUTWATER_OK);
            CHECK(report.field<double>(standard) == Approx(slope).epsilon(1e-6));
            if (report_size > mean + sizeof(double)) CHECK(std::isnan(report.field<double>(mean)) == !trials);
            CHECK(report.untouched_behind());
            CHECK(options.untouched_behind());
        }
    std::vector<double> shares(2, 7);
    Report report(offsetof(cutwater_uncertainty_report, low));
    report.set(offsetof(cutwater_uncertainty_report, shares), shares.data());
    REQUIRE(ask(nullptr, report, refusal) == CUTWATER_OK);
    CHECK(shares == std::vector<double>{1, 0});
}

TEST_CASE("sizes that cannot be are refused", "[capi]")
{
    cutwater_refusal refusal{};
    constexpr std::size_t value = offsetof(cutwater_uncertainty_report, value);
    Report report(sizeof(cutwater_uncertainty_report));
    Options unset(sizeof(cutwater_uncertainty_options));
    for (const std::size_t size :
         {std::size_t{0}, std::size_t{4}, sizeof(cutwater_uncertainty_options) + 100000, ~std::size_t{0}}) {
        unset.set(0, size);
        report.set(value, 7.0);
        CHECK(ask(&unset, report, refusal) == CUTWATER_WRONG_COUNT);
        CHECK(std::isnan(report.field<double>(value)));
    }
    Options newer(sizeof(cutwater_uncertainty_options) + 8);  // asks for something that this library does not know
    newer.set(sizeof(cutwater_uncertainty_options), 1.0);
    CHECK(ask(&newer, report, refusal) == CUTWATER_WRONG_COUNT);
    CHECK(report.untouched_behind());

    Report small(value - 1);
    CHECK(ask(nullptr, small, refusal) == CUTWATER_WRONG_COUNT);
    CHECK(small.untouched_behind());
}
