// The add-in loaded and called as Excel does it. What it must answer comes from cutwater.dll, by the C API.
#include "expected.hpp"

#include "support/golden.hpp"

#include <cutwater/library.h>

#include <catch2/catch.hpp>

#include <limits>
#include <set>
#include <thread>

using namespace cutwater::excel;
using cutwater::test::golden_cases;
using cutwater::test::GoldenCase;
using play::AddIn;
using play::Answer;
using play::Cell;
using play::asked_of_library;
using play::capitals;
using play::memory;
using play::same_bits;
using play::same_cells;
using play::shows;

namespace {

constexpr double not_a_number = std::numeric_limits<double>::quiet_NaN();

const AddIn& add_in()
{
    static AddIn* loaded = [] {
        auto* made = new AddIn(CUTWATER_XLL);
        if (made->open() != 1) throw std::runtime_error("the add-in did not open");
        return made;
    }();
    return *loaded;
}

/// A series stands in a row or a column of cells.
Cell cell_of(const cutwater::ListedArgument& argument, bool in_column)
{
    switch (argument.kind) {
    case CUTWATER_NUMBER: return Cell::number(argument.number);
    case CUTWATER_TEXT: return Cell::text(argument.text);
    case CUTWATER_SERIES: {
        std::vector<Cell> cells;
        for (const double point : argument.series) cells.push_back(Cell::number(point));
        const std::size_t count = cells.size();
        return in_column ? Cell::block(std::move(cells), count, 1) : Cell::block(std::move(cells), 1, count);
    }
    default: return Cell::missing();
    }
}

std::vector<Cell> cells_of(const GoldenCase& golden, bool in_column)
{
    std::vector<Cell> cells;
    for (const auto& argument : golden.arguments) cells.push_back(cell_of(argument, in_column));
    return cells;
}

/// Cells that a formula can be given by mistake.
std::vector<std::pair<std::string, Cell>> hostile_cells()
{
    std::vector<std::pair<std::string, Cell>> cells{
        {"an empty cell", Cell::nothing()},
        {"left out", Cell::missing()},
        {"true", Cell::truth(true)},
        {"a whole number", Cell::whole(-7)},
        {"an empty text", Cell::text("")},
        {"a word", Cell::text("hello")},
        {"a date", Cell::text("2026-11-26")},
        {"a comma", Cell::text("1,500")},
        {"the longest text", Cell::text(std::string(longest_text, 'x'))},
        {"the longest number", Cell::text(std::string(longest_text, '9'))},
        {"the longest text of another script", Cell::units(std::u16string(longest_text, u'\u03c0'))},
        {"a null character", Cell::units(std::u16string(u"1\0 2", 4))},
        {"half a character", Cell::units(std::u16string(1, char16_t{0xD83D}))},
        {"a reference", Cell::of_type(0x400)},
        {"references", Cell::of_type(0x8)},
        {"other data", Cell::of_type(0x802)},
        {"a block", Cell::block({Cell::number(1), Cell::number(2), Cell::number(3), Cell::number(4)}, 2, 2)},
        {"empty cells", Cell::block({Cell::nothing(), Cell::nothing()}, 2, 1)},
        {"an empty cell between", Cell::block({Cell::number(1), Cell::nothing(), Cell::number(3)}, 3, 1)},
        {"texts", Cell::block({Cell::text("1"), Cell::text("2 furlong")}, 1, 2)},
        {"truths", Cell::block({Cell::truth(true), Cell::truth(false)}, 1, 2)},
        {"no cells", Cell::block({}, 0, 0)}};
    for (const double x : {0.0, -0.0, -1.0, 1e300, -1e300, 5e-324, 1e-300, 1e18, not_a_number,
                           std::numeric_limits<double>::infinity(), -std::numeric_limits<double>::infinity()})
        cells.emplace_back("a number", Cell::number(x));
    return cells;
}

std::string name_of(std::int32_t function) { return capitals(cutwater_function_name(function)); }

}  // namespace

TEST_CASE("every function and every question is registered, within Excel's limits", "[excel]")
{
    REQUIRE(add_in().manager_text(1).text.find("Cutwater") == 0);
    CHECK(add_in().manager_text(2).is_error(value_error));
    for (const std::string& fault : memory().faults) FAIL_CHECK(fault);
    CHECK(memory().names_given == memory().names_returned);
    std::map<std::string, const play::Registered*> names;
    for (const auto& [number, r] : memory().functions)
        if (r.alive) names[r.name] = &r;
    const auto wanted = [&](const std::string& name, std::size_t arguments, std::size_t named) {
        INFO(name);
        REQUIRE(names.contains(name));
        const play::Registered& shown = *names[name];
        CHECK(shown.macro_type == 1);
        CHECK(shown.procedure == name);
        CHECK(add_in().exports(shown.procedure));
        CHECK(shown.types == std::string(arguments + 1, 'Q') + "$");
        CHECK(static_cast<std::size_t>(std::count(shown.arguments.begin(), shown.arguments.end(), ',')) +
                  (arguments > 0) ==
              named);
        CHECK(shown.category.find("Cutwater: ") == 0);
        CHECK(shown.help.size() > 20);
        REQUIRE(shown.argument_help.size() == arguments + 1);
        CHECK(shown.argument_help.back().empty());
        for (std::size_t i = 0; i < arguments; ++i) CHECK(shown.argument_help[i].size() > 5);
        REQUIRE(names.contains("ORG.CUTWATER.CALC." + name));
        const play::Registered& hidden = *names["ORG.CUTWATER.CALC." + name];
        CHECK(hidden.macro_type == 0);
        CHECK(hidden.procedure == shown.procedure);
        CHECK(hidden.types == shown.types);
    };
    std::set<std::string> categories;
    for (std::int32_t i = 0; i < cutwater_function_count(); ++i) {
        const auto inputs = static_cast<std::size_t>(cutwater_input_count(i));
        wanted(name_of(i), inputs, inputs);
        const play::Registered& r = *names[name_of(i)];
        CHECK(r.arguments.find(cutwater_input_name(i, 0)) == 0);
        categories.insert(r.category);
    }
    CHECK(categories.size() > 15);
    cutwater_question_info q{};
    q.size = sizeof q;
    cutwater_question_part part{};
    part.size = sizeof part;
    for (std::int32_t i = 0; i < cutwater_question_count(); ++i) {
        cutwater_describe_question(i, &q);
        std::size_t arguments = 0;
        for (std::int32_t k = 0; k < q.arguments; ++k) {
            cutwater_describe_question_argument(i, k, &part);
            arguments += part.asked == CUTWATER_ASKED_ARGUMENTS ? CUTWATER_MOST_INPUTS : 1;
        }
        wanted(capitals(q.name), arguments, arguments);
    }
    CHECK(names.size() == 2 * static_cast<std::size_t>(cutwater_function_count() + cutwater_question_count()));
}

TEST_CASE("the golden files come out in cells to the last bit", "[excel]")
{
    std::size_t answered = 0;
    std::size_t refused = 0;
    for (const GoldenCase& golden : golden_cases()) {
        INFO(golden.where << " " << golden.call);
        const play::Asked expected = asked_of_library(golden);
        if (golden.arguments.size() >
            static_cast<std::size_t>(cutwater_input_count(cutwater_find(golden.function.c_str()))))
            continue;
        const std::string name = (answered % 2 ? "ORG.CUTWATER.CALC." : "") + capitals(golden.function);
        for (const bool in_column : {true, false}) {
            const Answer got = add_in().call(name, cells_of(golden, in_column));
            CHECK(same_cells(got, expected.answer));
        }
        std::vector<Cell> told = cells_of(golden, true);
        told.insert(told.begin(), Cell::text(golden.function));
        const Answer why = add_in().call("REFUSAL", told);
        CHECK(why.type == text_type);
        CHECK(why.text == (expected.status == CUTWATER_OK ? "" : expected.refusal.message));
        ++(expected.status == CUTWATER_OK ? answered : refused);
    }
    CHECK(answered > 500);
    CHECK(refused > 100);
}

TEST_CASE("a cell shows #VALUE! for a refusal, and the sheet's own error where one was given", "[excel]")
{
    const auto npsh = [](Cell surface) {
        return add_in().call("NPSH_AVAILABLE", {surface, Cell::number(0.0234), Cell::number(998.2), Cell::text("6 ft"),
                                                Cell::number(0.5)});
    };
    CHECK(npsh(Cell::number(1.013)).type == number_type);
    CHECK(npsh(Cell::whole(1)).type == number_type);
    CHECK(npsh(Cell::block({Cell::number(1.013)}, 1, 1)).type == number_type);
    CHECK(npsh(Cell::text("1.013 barg")).is_error(value_error));
    CHECK(npsh(Cell::number(-1)).is_error(value_error));
    CHECK(npsh(Cell::nothing()).is_error(value_error));  // an empty cell is not 0
    CHECK(npsh(Cell::truth(true)).is_error(value_error));
    for (const std::int32_t error : {0, 7, 15, 23, 29, 36, 42, 43}) {
        CHECK(npsh(Cell::error(error)).is_error(error));
        CHECK(npsh(Cell::block({Cell::number(1), Cell::error(error)}, 1, 2)).is_error(error));
        CHECK(add_in()
                  .call("SOLVE_FOR", {Cell::text("velocity_head"), Cell::text("flow"), Cell::missing(),
                                      Cell::text("1 m"), Cell::missing(), Cell::error(error)})
                  .is_error(error));
    }
    const Answer why = add_in().call("REFUSAL", {Cell::text("npsh_available"), Cell::error(42)});
    CHECK(why.text == "npsh_available: surface_pressure_bara was given an error of the sheet's own.");
}

TEST_CASE("the questions answer in cells", "[excel]")
{
    const auto ask = [](const std::string& name, std::vector<Cell> cells) { return add_in().call(name, cells); };
    CHECK(ask("QUANTITY", {Cell::text("440 US gpm"), Cell::text("m3/h")}).number ==
          Approx(440 * 0.003785411784 * 60).epsilon(1e-15));  // NIST SP 811
    CHECK(ask("CONVERT_UNIT", {Cell::number(1), Cell::text("ft"), Cell::text("m")}).number == 0.3048);
    CHECK(ask("CUTWATER_VERSION", {}).text == cutwater_version());
    const Answer found = ask("FIND_FUNCTION", {Cell::text("suction safe")});
    REQUIRE(found.type == block_type);
    CHECK(found.columns == 2);
    const std::vector<Cell> velocity{Cell::text("velocity_head"), Cell::number(100), Cell::number(150)};
    const Answer working = ask("WORKING", velocity);
    CHECK(working.type == text_type);
    std::size_t needed = 0;
    std::string text(10000, '\0');
    const cutwater_value values[] = {{CUTWATER_NUMBER, 100, nullptr, nullptr, 0, 0},
                                     {CUTWATER_NUMBER, 150, nullptr, nullptr, 0, 0}};
    REQUIRE(cutwater_working("velocity_head", values, 2, CUTWATER_TEXT_UTF8, text.data(), text.size(), &needed,
                             nullptr) == CUTWATER_OK);
    text.resize(needed);
    CHECK(working.text == text);
    double flow = 0;
    const cutwater_value target{CUTWATER_TEXT, 0, "1 m", nullptr, 0, 0};
    const cutwater_value bore[] = {{CUTWATER_LEFT_OUT, 0, nullptr, nullptr, 0, 0}, values[1]};
    REQUIRE(cutwater_solve_for("velocity_head", bore, 2, "flow", nullptr, &target, not_a_number, not_a_number, &flow,
                               nullptr) == CUTWATER_OK);
    CHECK(same_bits(ask("SOLVE_FOR", {Cell::text("velocity_head"), Cell::text("flow"), Cell::missing(),
                                      Cell::text("1 m"), Cell::nothing(), Cell::number(150)})
                        .number,
                    flow));
    CHECK(
        ask("SENSITIVITY", {Cell::text("velocity_head"), Cell::missing(), Cell::number(100), Cell::number(150)}).rows ==
        2);
    const Answer spread = ask("UNCERTAINTY", {Cell::text("velocity_head"), Cell::missing(),
                                              Cell::block({Cell::text("2 m3/h"), Cell::number(0.5)}, 1, 2),
                                              Cell::number(100), Cell::number(150)});
    REQUIRE(spread.columns == 5);
    CHECK(spread.cells[1].number > 0);
    CHECK(ask("REFUSAL", {Cell::text("no_such_function")}).text.find("no_such_function") != std::string::npos);
}

TEST_CASE("bad cells at every argument of every function", "[excel]")
{
    const auto hostile = hostile_cells();
    std::size_t tried = 0;
    std::set<std::string> seen;
    for (const GoldenCase& golden : golden_cases()) {
        if (golden.refused || !seen.insert(golden.function).second) continue;
        const std::int32_t position = cutwater_find(golden.function.c_str());
        const std::vector<Cell> good = cells_of(golden, true);
        for (std::size_t i = 0; i < good.size(); ++i)
            for (const auto& [what, cell] : hostile) {
                std::vector<Cell> given = good;
                given[i] = cell;
                INFO(golden.function << ", argument " << i << ": " << what);
                const Answer got = add_in().call(capitals(golden.function), given);
                CHECK(shows(got));
                CHECK((got.type != error_type || got.error == value_error));
                ++tried;
                if (what != "a number" && tried % 7) continue;
                std::vector<Cell> told = given;
                told.insert(told.begin(), Cell::text(cutwater_function_name(position)));
                const Answer why = add_in().call("REFUSAL", told);
                CHECK(why.text.empty() == (got.type != error_type));
            }
    }
    CHECK(seen.size() == static_cast<std::size_t>(cutwater_function_count()));
    CHECK(tried > 20000);
}

TEST_CASE("bad cells at every argument of every question", "[excel]")
{
    const auto hostile = hostile_cells();
    for (const auto& [number, r] : memory().functions) {
        if (r.category != "Cutwater: answers") continue;
        for (std::size_t i = 0; i < r.types.size() - 2; ++i)
            for (const auto& [what, cell] : hostile) {
                std::vector<Cell> given{Cell::text("velocity_head"), Cell::text("flow"), Cell::missing(),
                                        Cell::number(1), Cell::number(100)};
                given.resize(std::max<std::size_t>(i + 1, std::min(given.size(), r.types.size() - 2)), Cell::missing());
                given.resize(std::min(given.size(), r.types.size() - 2), Cell::missing());
                given[i] = cell;
                INFO(r.name << ", argument " << i << ": " << what);
                CHECK(shows(add_in().call(r.name, given)));
            }
    }
}

TEST_CASE("a long text is taken and given back whole, a longer one says that it was cut", "[excel]")
{
    const std::string longest(longest_text, 'x');
    const Answer why = add_in().call("REFUSAL", {Cell::text("npsh_available"), Cell::text(longest)});
    CHECK(why.type == text_type);
    CHECK(why.text.find("surface_pressure_bara") != std::string::npos);
    // A curve of so many points that its working is longer than a cell.
    std::vector<Cell> flows, heads;
    for (int i = 0; i < 8000; ++i) {
        flows.push_back(Cell::number(i));
        heads.push_back(Cell::number(40 - 1e-7 * i * i));
    }
    const Answer working = add_in().call("WORKING", {Cell::text("curve_value"), Cell::block(flows, 8000, 1),
                                                     Cell::block(heads, 1, 8000), Cell::number(75.5)});
    CHECK(working.type == text_type);
    CHECK(working.text.size() > 100);
}

TEST_CASE("what Excel hands back is freed", "[excel]")
{
    const std::vector<Cell> velocity{Cell::text("velocity_head"), Cell::number(100), Cell::number(150)};
    const std::size_t length = add_in().call("WORKING", velocity).text.size();
    const std::size_t before = play::memory_in_use();
    constexpr std::size_t calls = 20000;
    for (std::size_t i = 0; i < calls; ++i) add_in().call("WORKING", velocity);
    const std::size_t after = play::memory_in_use();
    CHECK(after < before + calls * length / 10);
}

TEST_CASE("many threads get the same bits", "[excel]")
{
    const auto cases = golden_cases();
    std::vector<Answer> alone;
    const auto call = [](const GoldenCase& golden) {
        return add_in().call(capitals(golden.function), cells_of(golden, true));
    };
    const auto fits = [](const GoldenCase& golden) {
        return golden.arguments.size() <=
               static_cast<std::size_t>(cutwater_input_count(cutwater_find(golden.function.c_str())));
    };
    for (const GoldenCase& golden : cases) alone.push_back(fits(golden) ? call(golden) : Answer());
    std::atomic<std::size_t> wrong{0};
    std::atomic<std::size_t> right{0};
    std::vector<std::thread> threads;
    for (std::size_t t = 0; t < 8; ++t)
        threads.emplace_back([&, t] {
            for (std::size_t i = 0; i < cases.size(); ++i) {
                const std::size_t k = (i + t * cases.size() / 8) % cases.size();
                if (fits(cases[k])) ++(same_cells(call(cases[k]), alone[k]) ? right : wrong);
            }
        });
    for (auto& thread : threads) thread.join();
    CHECK(wrong == 0);
    CHECK(right > 8 * 600);
}

TEST_CASE("what the add-in took it gives back when it is removed, and it can be loaded again", "[excel][.unload]")
{
    // Alone, in a program that has loaded nothing yet.
    for (int turn = 0; turn < 2; ++turn) {
        const std::size_t before = memory().functions.size();
        AddIn loaded(CUTWATER_XLL);
        REQUIRE(loaded.open() == 1);
        REQUIRE(loaded.open() == 1);  // Excel may ask twice
        const std::size_t registered = memory().functions.size() - before;
        CHECK(loaded.call("CUTWATER_VERSION", {}).text == cutwater_version());
        CHECK(loaded.close() == 1);
        CHECK(loaded.call("CUTWATER_VERSION", {}).text == cutwater_version());  // the user chose to stay
        CHECK(loaded.remove() == 1);
        std::size_t alive = 0;
        for (const auto& [number, r] : memory().functions) alive += r.alive;
        CHECK(alive == 0);
        CHECK(registered > 700);
        CHECK(memory().forgotten.size() == memory().functions.size());
        CHECK(memory().names_given == memory().names_returned);
    }
    for (const std::string& fault : memory().faults) FAIL_CHECK(fault);
}
