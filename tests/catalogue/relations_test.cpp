// Series that belong together point by point: of every function, each of them too long or too short is refused.
#include "call/argument_list.hpp"
#include "call/arguments.hpp"
#include "catalogue/families.hpp"

#include <cutwater/library.h>

#include <catch2/catch.hpp>

#include <string>
#include <string_view>
#include <vector>

using namespace cutwater;
using Catch::Matchers::Contains;

namespace {

/// A point more or one less, that its neighbour's rise goes on with.
std::vector<double> changed(std::vector<double> points, bool longer)
{
    if (!longer)
        points.pop_back();
    else
        points.push_back(points.size() > 1 ? 2 * points.back() - points[points.size() - 2] : points.back());
    return points;
}

}  // namespace

TEST_CASE("series that belong together are refused when they are not equally long", "[relations]")
{
    std::size_t asked = 0, told = 0;
    for (std::size_t f = 0; f < function_count(); ++f) {
        const FunctionInfo& info = function_at(f);
        for (const RelationInfo& relation : info.relations) {
            const std::string_view sentence = relation.sentence;
            if (sentence.find("same number of points") == sentence.npos && sentence.find("as many") == sentence.npos)
                continue;
            for (const std::size_t input : relation.inputs)
                for (const bool longer : {true, false}) {
                    const auto listed = read_argument_list(info.example.inputs).value();
                    std::vector<cutwater_value> values;
                    for (const ListedArgument& one : listed) values.push_back(one.value());
                    const std::vector<double> other = changed(listed[input].series, longer);
                    values[input].series = other.data();
                    values[input].length = other.size();
                    if (other.size() < info.inputs[input].least_points) continue;
                    std::vector<cutwater_result> results(info.results.size());
                    cutwater_refusal r{};
                    INFO(info.name << ", " << info.inputs[input].name << ", " << longer);
                    CHECK(cutwater_call_at(static_cast<int32_t>(f), values.data(), values.size(), results.data(),
                                           results.size(), &r) != CUTWATER_OK);
                    INFO(r.message);
                    ++asked;
                    if (r.status != CUTWATER_CONTRADICTION) continue;  // the point put on was not permitted
                    ++told;
                    CHECK_THAT(r.message, Contains("must be as many") || Contains("the same number of points"));
                }
        }
    }
    CHECK(asked > 200);
    CHECK(told * 10 > asked * 9);
}

TEST_CASE("a shaft of too many sections, or under too many masses or forces, is refused", "[relations]")
{
    const std::vector<double> many(1001, 1), one{500};
    const auto series = [](const std::vector<double>& x) {
        return cutwater_value{CUTWATER_SERIES, 0, nullptr, x.data(), x.size(), 1};
    };
    const auto number = [](double x) { return cutwater_value{CUTWATER_NUMBER, x, nullptr, nullptr, 0, 1}; };
    for (const char* function : {"shaft_deflection", "first_critical_speed"})
        for (const bool loads : {true, false}) {
            const auto& loaded = loads ? many : one;
            const auto& sections = loads ? one : many;
            const cutwater_value values[] = {series(loaded), series(loaded), series(sections), series(sections),
                                             number(0),      number(400),    number(300)};
            std::vector<cutwater_result> results(3);
            cutwater_refusal r{};
            INFO(function << " " << loads);
            CHECK(cutwater_call(function, values, 7, results.data(), results.size(), &r) == CUTWATER_CONTRADICTION);
            CHECK_THAT(r.message, Contains("a series of 1001 points: there must not be more than 1000 of them"));
            CHECK(r.argument == (loads ? 0 : 2));
        }
}
