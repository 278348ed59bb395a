// Calls of the flat C API with pointers left out, and the texts of refusals that a door makes itself.
#include <cutwater/answers.h>
#include <cutwater/library.h>

#include <catch2/catch.hpp>

#include <cmath>
#include <cstring>
#include <string>

TEST_CASE("a door's own refusal is shown in every form", "[capi]")
{
    cutwater_refusal refusal{};
    refusal.status = CUTWATER_WRONG_KIND;
    std::strcpy(refusal.message, "the cell holds µ, a text.");
    char text[512];
    size_t needed = 0;
    const auto shown = [&](int32_t form, size_t capacity) {
        return cutwater_refusal_text(&refusal, form, text, capacity, &needed);
    };
    CHECK(shown(CUTWATER_TEXT_UTF8, sizeof text) == CUTWATER_OK);
    CHECK(std::string(text).find("the cell holds µ, a text.") != std::string::npos);
    CHECK(std::strlen(text) == needed);
    CHECK(shown(CUTWATER_TEXT_ASCII, sizeof text) == CUTWATER_OK);
    for (const char* c = text; *c; ++c) CHECK(static_cast<unsigned char>(*c) < 0x80);
    CHECK(shown(CUTWATER_TEXT_MARKDOWN, sizeof text) == CUTWATER_OK);
    CHECK(std::string(text).starts_with("**Refused:** the cell holds"));
    CHECK(shown(CUTWATER_TEXT_JSON, sizeof text) == CUTWATER_OK);
    CHECK(std::string(text).find("\"message\": \"the cell holds µ, a text.\"") != std::string::npos);
    CHECK(shown(CUTWATER_TEXT_UTF8, 8) == CUTWATER_BUFFER_TOO_SMALL);
    CHECK(std::strlen(text) < 8);
    CHECK(needed > 8);
    CHECK(shown(9, sizeof text) == CUTWATER_UNKNOWN_WORD);
    CHECK(*text == 0);
    CHECK(cutwater_refusal_text(nullptr, CUTWATER_TEXT_UTF8, text, sizeof text, &needed) == CUTWATER_MISSING);
    CHECK(cutwater_refusal_text(&refusal, CUTWATER_TEXT_UTF8, nullptr, 0, nullptr) == CUTWATER_BUFFER_TOO_SMALL);
}

TEST_CASE("a bare number in a unit is judged, and kept as it is", "[capi]")
{
    cutwater_refusal r;
    double number = 0;
    const auto read = [&](const cutwater_value& value, const char* unit) {
        return cutwater_quantity(&value, unit, &number, &r);
    };
    CHECK(read({CUTWATER_NUMBER, 440, nullptr, nullptr, 0, 1}, "US gpm") == CUTWATER_OK);
    CHECK(number == 440);
    CHECK(read({CUTWATER_NUMBER, 440, nullptr, nullptr, 0, 1}, "furlong") == CUTWATER_UNKNOWN_UNIT);
    CHECK(std::isnan(number));
    CHECK(read({CUTWATER_NUMBER, HUGE_VAL, nullptr, nullptr, 0, 1}, "m") == CUTWATER_NOT_FINITE);
    CHECK(read({}, "m") == CUTWATER_MISSING);
    CHECK(read({CUTWATER_SERIES, 0, nullptr, &number, 1, 1}, "m") == CUTWATER_WRONG_KIND);
}

TEST_CASE("what there is not is told without harm", "[capi]")
{
    const int32_t f = cutwater_find("specific_speed");
    REQUIRE(f >= 0);
    for (const int32_t input : {-1, 99}) {
        CHECK(cutwater_input_optional(f, input) == 0);
        CHECK(*cutwater_input_word(f, input, 0) == 0);
        CHECK(*cutwater_input_name(f, input) == 0);
    }
    CHECK(cutwater_input_optional(-1, 0) == 0);
    CHECK(*cutwater_input_word(f, 0, 0) == 0);  // a number has no words
    const int32_t margin = cutwater_find("nominal_pipe_bore");
    CHECK(*cutwater_input_word(margin, 1, 0) != 0);
    CHECK(*cutwater_input_word(margin, 1, -1) == 0);
    CHECK(*cutwater_input_word(margin, 1, 999) == 0);

    cutwater_refusal r;
    cutwater_value values[7] = {};
    const double numbers[] = {1.013, 0.0234, 998.2, 2, 0.5};
    for (int i = 0; i < 5; ++i) values[i] = {CUTWATER_NUMBER, numbers[i], nullptr, nullptr, 0, 1};
    const cutwater_value target{CUTWATER_NUMBER, 11, nullptr, nullptr, 0, 1};
    CHECK(cutwater_solve_for("npsh_available", values, 5, "friction_head", nullptr, &target, NAN, NAN, nullptr, &r) ==
          CUTWATER_MISSING);
    size_t count = 9;
    CHECK(cutwater_solutions("npsh_available", values, 5, "friction_head", nullptr, &target, NAN, NAN, nullptr, 0,
                             &count, &r) == CUTWATER_BUFFER_TOO_SMALL);
    CHECK(count == 1);
    cutwater_uncertainty_report report{};
    report.size = sizeof report;
    CHECK(cutwater_uncertainty("npsh_available", values, 5, nullptr, 2, nullptr, &report, &r) == CUTWATER_MISSING);
    CHECK(cutwater_uncertainty("npsh_available", values, 5, values, 7, nullptr, &report, &r) == CUTWATER_WRONG_COUNT);
    cutwater_uncertainty_options options{};
    options.size = sizeof options;
    const auto asked = [&] {
        return cutwater_uncertainty("npsh_available", values, 5, values, 0, &options, &report, &r);
    };
    for (const double coverage : {-0.5, 1.0, 95.0, static_cast<double>(NAN)}) {
        options.coverage = coverage;
        CHECK(asked() == CUTWATER_OUT_OF_INTERVAL);
    }
    options.coverage = 0;
    options.monte_carlo = 7;
    CHECK(asked() == CUTWATER_UNKNOWN_WORD);
    options.monte_carlo = CUTWATER_NEVER;
    options.trials = 10;
    CHECK(asked() == CUTWATER_OUT_OF_INTERVAL);
    options.trials = 0;
    options.correlation_count = 1;
    CHECK(asked() == CUTWATER_MISSING);
}

TEST_CASE("signs beyond ASCII are read as what they stand for", "[capi]")
{
    const struct {
        const char *written, *plain, *unit;
    } pairs[] = {{"5 m⁄s", "5 m/s", "m/s"},  {"5 m∕s", "5 m/s", "m/s"},     {"5 ℉", "5 degF", "degC"},
                 {"5 ℓ/s", "5 l/s", "m3/h"}, {"5 ″", "5 \"", "mm"},         {"5 ”", "5 \"", "mm"},
                 {"5 ％", "5 %", "-"},       {"5 m²/s", "5 m2/s", "mm2/s"}, {"5 µm", "5 um", "mm"}};
    for (const auto& [written, plain, unit] : pairs) {
        double a = 0, b = 0;
        cutwater_refusal r;
        const cutwater_value as_written{CUTWATER_TEXT, 0, written, nullptr, 0, 1},
            in_ascii{CUTWATER_TEXT, 0, plain, nullptr, 0, 1};
        INFO(written);
        CHECK(cutwater_quantity(&in_ascii, unit, &b, &r) == CUTWATER_OK);
        CHECK(cutwater_quantity(&as_written, unit, &a, &r) == CUTWATER_OK);
        CHECK(a == b);
    }
}
