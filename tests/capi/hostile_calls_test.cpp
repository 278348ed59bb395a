// Every input of every function given what it must not have, a call at a time; rows have a sweep of their own.
#include <cutwater/library.h>

#include "call/argument_list.hpp"
#include "catalogue/families.hpp"
#include "catalogue/prose.hpp"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <cstring>
#include <limits>
#include <string>
#include <vector>

using namespace cutwater;

namespace {

constexpr double infinite = std::numeric_limits<double>::infinity();

std::vector<double> hostile_numbers(const InputInfo& in)
{
    std::vector<double> numbers{std::nan(""), infinite, -infinite, 2e9, -2e9, 1e300, -1e300, 0,
                                -0.0,         5e-324,   -0.5,      0.5, 1,    1e18};
    for (const double end : {in.interval.low, in.interval.high})
        if (std::isfinite(end))
            numbers.insert(numbers.end(), {end, std::nextafter(end, infinite), std::nextafter(end, -infinite)});
    return numbers;
}

/// Calls by name; what comes back is a whole answer or a whole refusal.
class Call {
public:
    explicit Call(const FunctionInfo& f) : f_(f), series_(f.results.size())
    {
        for (std::size_t j = 0; j < series_.size(); ++j)
            if (f.results[j].kind == Kind::series) series_[j].resize(4096);
    }

    cutwater_status operator()(const std::vector<cutwater_value>& values)
    {
        std::vector<cutwater_result> results(f_.results.size());
        for (std::size_t j = 0; j < results.size(); ++j) {
            results[j].number = 7;
            results[j].series = series_[j].data();
            results[j].capacity = series_[j].size();
        }
        refusal = {};
        const cutwater_status status = cutwater_call(f_.name, values.data(), values.size(), results.data(),
                                                     results.size(), &refusal);
        INFO(f_.name << ": " << refusal.message);
        CHECK(refusal.status == status);
        CHECK(status < CUTWATER_INTERNAL);
        CHECK(status != CUTWATER_BUFFER_TOO_SMALL);
        if (status != CUTWATER_OK) {
            const std::string message = refusal.message;
            CHECK(message.starts_with(std::string(f_.name) + ": "));
            CHECK((message.ends_with(".") || message.ends_with("?")));
            CHECK(refusal.argument < static_cast<std::int32_t>(f_.inputs.size()));
        }
        for (const cutwater_result& result : results) {
            if (status != CUTWATER_OK) {
                CHECK(std::isnan(result.number));
                continue;
            }
            if (result.kind == CUTWATER_NUMBER) CHECK(std::isfinite(result.number));
            if (result.kind == CUTWATER_TEXT) CHECK(std::strlen(result.text) > 0);
            for (std::size_t k = 0; result.kind == CUTWATER_SERIES && k < result.length; ++k)
                CHECK(std::isfinite(result.series[k]));
        }
        return status;
    }

    cutwater_refusal refusal{};

private:
    const FunctionInfo& f_;
    std::vector<std::vector<double>> series_;
};

/// A number that is not permitted is blamed with its name, its value, its interval and its unit.
void check_blamed(const FunctionInfo& f, std::size_t i, double bad, const cutwater_refusal& r)
{
    const InputInfo& in = f.inputs[i];
    INFO(r.message);
    CHECK(r.status == (std::isfinite(bad) ? CUTWATER_OUT_OF_INTERVAL : CUTWATER_NOT_FINITE));
    CHECK(r.argument == static_cast<std::int32_t>(i));
    CHECK((r.value == bad || std::isnan(bad)));
    CHECK(r.low == in.interval.low);
    CHECK(r.high == in.interval.high);
    const std::string message = r.message;
    CHECK(message.find(in.full_name) != message.npos);
    CHECK(message.find(prose(write_interval, in)) != message.npos);
    CHECK(message.find(unit_symbol(in.unit)) != message.npos);
}

bool permitted(const InputInfo& in, double x)
{
    return std::isfinite(x) && in.interval.contains(x) && (!in.whole || x == std::floor(x));
}

void numbers_of(const FunctionInfo& f, std::vector<cutwater_value> values, std::size_t i, Call& call)
{
    for (const double bad : hostile_numbers(f.inputs[i])) {
        values[i] = {CUTWATER_NUMBER, bad, nullptr, nullptr, 0, 1};
        call(values);
        if (!permitted(f.inputs[i], bad)) check_blamed(f, i, bad, call.refusal);
    }
}

void series_of(const FunctionInfo& f, std::vector<cutwater_value> values, std::size_t i, Call& call)
{
    const std::vector<double> good(values[i].series, values[i].series + values[i].length);
    std::vector<double> tried;
    const auto give = [&] {
        values[i] = {CUTWATER_SERIES, 0, nullptr, tried.data(), tried.size(), 1};
        return call(values);
    };
    for (const double bad : hostile_numbers(f.inputs[i]))
        for (const std::size_t at : {std::size_t{0}, good.size() / 2, good.size() - 1}) {
            tried = good;
            tried[at] = bad;
            give();
            if (permitted(f.inputs[i], bad)) continue;
            check_blamed(f, i, bad, call.refusal);
            CHECK(call.refusal.element == static_cast<std::int64_t>(at));
        }
    for (std::size_t length = 0; length < f.inputs[i].least_points; ++length) {
        tried.assign(good.begin(), good.begin() + static_cast<std::ptrdiff_t>(std::min(length, good.size())));
        CHECK(give() == CUTWATER_BAD_SERIES);
    }
    tried.assign(good.rbegin(), good.rend());  // falling, where rising may be asked
    give();
    tried.assign(good.size(), good[0]);
    give();
    tried = good;
    tried.push_back(good.back());  // one more than its partner
    give();
}

}  // namespace

TEST_CASE("hostile numbers in any input of any function end in an answer or a whole refusal", "[capi][sweep]")
{
    for (std::size_t k = 0; k < function_count(); ++k) {
        const FunctionInfo& f = function_at(k);
        const auto arguments = read_argument_list(f.example.inputs);
        REQUIRE(arguments);
        std::vector<cutwater_value> values;
        for (const ListedArgument& a : *arguments) values.push_back(a.value());
        values.resize(f.inputs.size());
        Call call(f);
        REQUIRE(call(values) == CUTWATER_OK);
        for (std::size_t i = 0; i < values.size(); ++i) {
            if (f.inputs[i].kind == Kind::quantity) numbers_of(f, values, i, call);
            if (f.inputs[i].kind == Kind::series) series_of(f, values, i, call);
            if (f.inputs[i].kind != Kind::choice) continue;
            auto wrong = values;
            for (const char* word : {"", " ", "no such word", "\xFF", "5"}) {
                wrong[i] = {CUTWATER_TEXT, 0, word, nullptr, 0, 1};
                const auto words = f.inputs[i].words;
                if (std::find_if(words.begin(), words.end(), [&](const char* w) { return !std::strcmp(w, word); }) !=
                    words.end())
                    continue;
                CHECK(call(wrong) != CUTWATER_OK);
                CHECK(call.refusal.argument == static_cast<std::int32_t>(i));
            }
        }
    }
}
