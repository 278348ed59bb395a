// A name that the catalogue does not have is answered by those that may have been meant.
#include <cutwater/answers.h>
#include <cutwater/library.h>

#include "catalogue/families.hpp"
#include "catalogue/nearest.hpp"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cstring>
#include <string>

using namespace cutwater;
using Catch::Matchers::Contains;

namespace {

bool suggests(std::string_view asked, std::string_view name)
{
    const Nearest near = nearest_functions(asked);
    return std::find(near.names, near.names + near.count, name) != near.names + near.count;
}

}  // namespace

TEST_CASE("a slip of the hand finds the name", "[nearest][long]")
{
    for (std::size_t f = 0; f < function_count(); ++f) {
        const std::string name = function_at(f).name;
        for (std::size_t i = 1; i + 1 < name.size(); ++i) {
            INFO(name << " at " << i);
            std::string dropped = name, doubled = name, swapped = name, wrong = name;
            dropped.erase(i, 1);
            doubled.insert(i, 1, name[i]);
            std::swap(swapped[i], swapped[i + 1 < name.size() ? i + 1 : i]);
            wrong[i] = 'q';
            CHECK(suggests(dropped, name));
            CHECK(suggests(doubled, name));
            CHECK(suggests(swapped, name));
            CHECK(suggests(wrong, name));
        }
        std::string shouted = name;
        std::transform(shouted.begin(), shouted.end(), shouted.begin(),
                       [](char c) { return c == '_' ? ' ' : static_cast<char>(std::toupper(c)); });
        CHECK(std::string(nearest_functions(shouted).names[0]) == name);
    }
}

TEST_CASE("words in another order find the name; nonsense finds none", "[nearest]")
{
    CHECK(suggests("available_npsh", "npsh_available"));
    CHECK(suggests("NPSH Available", "npsh_available"));
    for (const char* nonsense : {"", "x", "q", "sum", "vlookup", "zzzzzzzzzzzzzzzzzz", "\xFF\xFF", "if", "12345"}) {
        INFO(nonsense);
        CHECK(nearest_functions(nonsense).count == 0);
    }
    CHECK(nearest_functions(std::string(100000, 'n')).count == 0);
}

TEST_CASE("the sentence names them, at every call by name", "[nearest]")
{
    cutwater_refusal r;
    CHECK(cutwater_call("npsh_availble", nullptr, 0, nullptr, 0, &r) == CUTWATER_UNKNOWN_FUNCTION);
    CHECK_THAT(r.message, Contains("There is no function \"npsh_availble\"; is it npsh_available"));
    char text[600] = "";
    CHECK(cutwater_working("npsh_availble", nullptr, 0, CUTWATER_TEXT_UTF8, text, sizeof text, nullptr, nullptr) ==
          CUTWATER_UNKNOWN_FUNCTION);
    CHECK_THAT(text, Contains("npsh_available"));
    CHECK(cutwater_call("zzzz", nullptr, 0, nullptr, 0, &r) == CUTWATER_UNKNOWN_FUNCTION);
    CHECK(std::string(r.message) == "There is no function \"zzzz\".");
    CHECK(cutwater_call(nullptr, nullptr, 0, nullptr, 0, &r) == CUTWATER_UNKNOWN_FUNCTION);
    CHECK_THAT(r.message, Contains("name"));
    CHECK(cutwater_call("npsh_availble", nullptr, 0, nullptr, 0, nullptr) == CUTWATER_UNKNOWN_FUNCTION);
}

TEST_CASE("the names that may have been meant are told as people list them", "[nearest]")
{
    std::size_t most = 0;
    for (std::size_t f = 0; f < function_count(); ++f) {
        std::string asked = function_at(f).name;
        asked.pop_back();
        const Nearest near = nearest_functions(asked);
        if (near.count == 0) continue;
        std::string told = near.names[0];
        for (std::size_t k = 1; k < near.count; ++k) (told += k + 1 == near.count ? " or " : ", ") += near.names[k];
        cutwater_refusal r{};
        CHECK(refuse_unknown_function(asked.c_str(), &r) == CUTWATER_UNKNOWN_FUNCTION);
        CHECK(std::string(r.message) == "There is no function \"" + asked + "\"; is it " + told + "?");
        most = std::max(most, near.count);
    }
    CHECK(most > 2);
}
