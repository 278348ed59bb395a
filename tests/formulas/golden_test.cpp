// Every golden case through the by-name call, and the worst case of each function printed. What each case was off by
// goes to the file that CUTWATER_DEVIATIONS names, for the validation record.
#include "call/argument_list.hpp"
#include "catalogue/families.hpp"
#include "support/golden.hpp"

#include <cutwater/cutwater.h>

#include <catch2/catch.hpp>
#include <fmt/format.h>

#include <cmath>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <map>
#include <set>

using namespace cutwater;
using namespace cutwater::test;

namespace {

struct Answer {
    cutwater_status status;
    cutwater_refusal refusal{};
    std::vector<cutwater_result> results;
    std::vector<std::vector<double>> buffers;
};

Answer ask(const std::string& function, const std::vector<ListedArgument>& arguments)
{
    const int32_t position = cutwater_find(function.c_str());
    std::vector<cutwater_value> values;
    for (const auto& argument : arguments) values.push_back(argument.value());
    Answer answer;
    answer.results.resize(static_cast<std::size_t>(cutwater_result_count(position)));
    answer.buffers.assign(answer.results.size(), std::vector<double>(10000));
    for (std::size_t i = 0; i < answer.results.size(); ++i) {
        answer.results[i].series = answer.buffers[i].data();
        answer.results[i].capacity = answer.buffers[i].size();
    }
    answer.status = cutwater_call_at(position, values.data(), values.size(), answer.results.data(),
                                     answer.results.size(), &answer.refusal);
    return answer;
}

double departure(double got, double expected, bool relative)
{
    const double difference = std::abs(got - expected);
    return relative && expected != 0 ? difference / std::abs(expected) : difference;
}

/// Of an answer's worst number.
struct Deviation {
    double far = 0;    // relative or absolute, as the case says
    double share = 0;  // of what it may be
    bool good = true;
};

Deviation compare(const GoldenCase& golden, const Answer& answer)
{
    Deviation worst;
    const auto judge = [&](double got, double expected) {
        const double far = departure(got, expected, golden.relative);
        const bool good = far <= golden.within;  // false for NaN
        if (!good)
            FAIL_CHECK(golden.where << " " << golden.call << ": got " << fmt::format("{}", got) << ", off by " << far);
        worst.good = worst.good && good;
        worst.far = std::max(worst.far, far);
        worst.share = std::max(worst.share, golden.within > 0 ? far / golden.within : 0);
    };
    REQUIRE(answer.results.size() >= golden.expected.size());
    for (std::size_t i = 0; i < golden.expected.size(); ++i) {
        const ListedArgument& expected = golden.expected[i];
        const cutwater_result& got = answer.results[i];
        if (expected.kind == CUTWATER_TEXT) {
            CHECK(got.text == expected.text);
            worst.good = worst.good && got.text == expected.text;
        } else if (expected.kind == CUTWATER_SERIES) {
            REQUIRE(got.length == expected.series.size());
            for (std::size_t k = 0; k < got.length; ++k) judge(got.series[k], expected.series[k]);
        } else if (expected.kind == CUTWATER_NUMBER) {
            judge(got.number, expected.number);
        }
    }
    return worst;
}

/// Lines for the validation record: version and compiler, then case, verdict, how far, share of the bound.
class Deviations {
public:
    Deviations()
    {
        const char* const path = std::getenv("CUTWATER_DEVIATIONS");
        if (!path) return;
        std::filesystem::create_directories(std::filesystem::path(path).parent_path());
        file_.open(path);
        file_ << CUTWATER_VERSION << '\t' << compiler << '\n';
    }
    void write(const GoldenCase& golden, const std::string& verdict, const Deviation& found = {})
    {
        if (file_.is_open()) file_ << fmt::format("{}\t{}\t{}\t{}\n", golden.where, verdict, found.far, found.share);
    }

private:
#ifdef __clang__
    static constexpr const char* compiler = __VERSION__;
#else
    static constexpr const char* compiler = "GCC " __VERSION__;
#endif
    std::ofstream file_;
};

}  // namespace

TEST_CASE("golden cases come out as published", "[golden]")
{
    std::map<std::string, std::pair<double, std::string>> worst;
    Deviations deviations;
    for (const GoldenCase& golden : golden_cases()) {
        INFO(golden.where << " " << golden.call << " [" << golden.source << "]");
        CHECK(cutwater_find(golden.function.c_str()) >= 0);
        if (cutwater_find(golden.function.c_str()) < 0) continue;
        const Answer answer = ask(golden.function, golden.arguments);
        if (golden.refused) {
            CHECK(answer.status != CUTWATER_OK);
            deviations.write(golden, answer.status != CUTWATER_OK ? "good" : "was answered");
            const FunctionInfo& f = function_at(static_cast<std::size_t>(cutwater_find(golden.function.c_str())));
            if (!golden.blamed.empty() && answer.status != CUTWATER_OK) {
                REQUIRE(answer.refusal.argument >= 0);
                CHECK(golden.blamed == f.inputs[static_cast<std::size_t>(answer.refusal.argument)].name);
            }
            continue;
        }
        INFO(answer.refusal.message);
        CHECK(answer.status == CUTWATER_OK);
        if (answer.status != CUTWATER_OK) {
            deviations.write(golden, "was refused");
            continue;
        }
        const Deviation found = compare(golden, answer);
        deviations.write(golden, found.good ? "good" : fmt::format("off by {}", found.far), found);
        auto& kept = worst[golden.function];
        if (found.share >= kept.first) kept = {found.share, golden.where};
    }
    for (const auto& [function, where] : worst)
        fmt::print("{:<36} worst case {:6.2f} % of its bound ({})\n", function, 100 * where.first, where.second);
}

TEST_CASE("every function has a golden case", "[golden]")
{
    std::set<std::string> seen;
    for (const GoldenCase& golden : golden_cases())
        if (!golden.refused) seen.insert(golden.function);
    for (std::size_t i = 0; i < function_count(); ++i) {
        INFO(function_at(i).name);
        CHECK(seen.contains(function_at(i).name));
    }
}

TEST_CASE("every record's own example comes out", "[golden]")
{
    for (std::size_t i = 0; i < function_count(); ++i) {
        const FunctionInfo& f = function_at(i);
        INFO(f.name);
        const auto inputs = read_argument_list(f.example.inputs);
        const auto results = read_argument_list(f.example.results);
        REQUIRE(inputs);
        REQUIRE(results);
        const Answer answer = ask(f.name, *inputs);
        INFO(answer.refusal.message);
        REQUIRE(answer.status == CUTWATER_OK);
        REQUIRE(results->size() == f.results.size());
        for (std::size_t k = 0; k < results->size(); ++k) {
            const ListedArgument& expected = (*results)[k];
            const cutwater_result& got = answer.results[k];
            if (expected.kind == CUTWATER_TEXT) CHECK(got.text == expected.text);
            if (expected.kind == CUTWATER_NUMBER)
                CHECK(std::abs(got.number - expected.number) <= 1.001 * written_precision(expected.text));
            if (expected.kind == CUTWATER_SERIES) {
                REQUIRE(got.length == expected.series.size());
                for (std::size_t n = 0; n < got.length; ++n)
                    CHECK(std::abs(got.series[n] - expected.series[n]) <=
                          1.001 * written_precision(expected.written[n]));
            }
        }
    }
}
