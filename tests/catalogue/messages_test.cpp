// Sentences in fixed buffers: whatever goes in and wherever they end, they are UTF-8.
#include <cutwater/answers.h>
#include <cutwater/library.h>

#include "catalogue/families.hpp"
#include "catalogue/prose.hpp"
#include "catalogue/refusal.hpp"
#include "units/message.hpp"
#include "units/text.hpp"

#include <cutwater/unit_table.hpp>

#include <catch2/catch.hpp>

#include <array>
#include <cstdlib>
#include <cstring>
#include <cwchar>
#include <string>

using namespace cutwater;

namespace {

/// UTF-8 by the rules of RFC 3629, read otherwise than the library reads it: by its table of permitted byte ranges.
bool is_utf8(std::string_view text)
{
    const auto in = [](unsigned char c, int low, int high) { return c >= low && c <= high; };
    for (std::size_t i = 0; i < text.size();) {
        const auto byte = [&](std::size_t k) {
            return i + k < text.size() ? static_cast<unsigned char>(text[i + k]) : static_cast<unsigned char>(0);
        };
        const unsigned char a = byte(0), b = byte(1), c = byte(2), d = byte(3);
        const auto tail = [&](unsigned char x) { return in(x, 0x80, 0xBF); };
        if (in(a, 0x00, 0x7F))
            i += 1;
        else if (in(a, 0xC2, 0xDF) && tail(b))
            i += 2;
        else if (((a == 0xE0 && in(b, 0xA0, 0xBF)) || (in(a, 0xE1, 0xEC) && tail(b)) ||
                  (a == 0xED && in(b, 0x80, 0x9F)) || (in(a, 0xEE, 0xEF) && tail(b))) &&
                 tail(c))
            i += 3;
        else if (((a == 0xF0 && in(b, 0x90, 0xBF)) || (in(a, 0xF1, 0xF3) && tail(b)) ||
                  (a == 0xF4 && in(b, 0x80, 0x8F))) &&
                 tail(c) && tail(d))
            i += 4;
        else
            return false;
    }
    return true;
}

std::string repeated(const char* piece, std::size_t times)
{
    std::string made;
    while (times--) made += piece;
    return made;
}

/// Everything that a refusal says.
bool whole(const cutwater_refusal& r)
{
    return std::memchr(r.message, 0, sizeof r.message) && std::memchr(r.name, 0, sizeof r.name) &&
           std::memchr(r.unit, 0, sizeof r.unit) && is_utf8(r.message) && is_utf8(r.name) && is_utf8(r.unit);
}

const char* const characters[] = {"x", "\u00B2", "\u20AC", "\U0001F4A7"};  // of one to four bytes

}  // namespace

TEST_CASE("a sentence is cut between characters, and nothing follows the cut", "[messages]")
{
    for (const char* character : characters)
        for (std::size_t lead = 0; lead < 5; ++lead)
            for (std::size_t capacity = 1; capacity < 40; ++capacity) {
                std::array<char, 48> buffer;
                buffer.fill('#');
                Message message(buffer.data(), capacity);
                const std::string text = repeated("a", lead) + repeated(character, 20);
                message.add("{}", text).add("!");
                const std::string got = buffer.data();
                INFO(character << " " << lead << " " << capacity << " " << got);
                CHECK(got.size() < capacity);
                CHECK(is_utf8(got));
                CHECK(buffer[capacity] == '#');
                if (text.size() + 1 < capacity)
                    CHECK(got == text + "!");
                else {
                    CHECK(text.compare(0, got.size(), got) == 0);
                    CHECK(got.size() + std::strlen(character) > capacity - 1);  // no character more would have fitted
                }
            }
}

TEST_CASE("bytes that are no UTF-8 are cut without harm", "[messages]")
{
    CHECK(whole_characters("\x80\x80\x80\x80\x80\x80\x80", 5) == 5);
    CHECK(whole_characters("\xE2\x82\xAC", 2) == 0);
    CHECK(whole_characters("\xE2\x82\xAC", 3) == 3);
    CHECK(whole_characters("a\xE2\x82\xAC", 0) == 0);
}

TEST_CASE("every refusal that a record makes is UTF-8, however long its words are", "[messages]")
{
    for (const char* character : characters)
        for (std::size_t length = 480; length < 520; ++length) {
            const std::string words = repeated("a", length % 4) + repeated(character, length / std::strlen(character));
            const std::string name = repeated(character, 47 / std::strlen(character));
            const char* const choices[] = {words.c_str(), "b"};
            const InputInfo input{.name = "x",
                                  .full_name = name.c_str(),
                                  .symbol = "x",
                                  .kind = Kind::quantity,
                                  .quantity = &quantity_info<Length>,
                                  .unit = units::metre.info,
                                  .interval = between(0, 1),
                                  .meaning = words.c_str(),
                                  .words = choices,
                                  .has_default = false,
                                  .fallback = 0,
                                  .whole = false,
                                  .least_points = 2,
                                  .rising = true};
            const ResultInfo result{
                "y", name.c_str(), "y", Kind::quantity, &quantity_info<Length>, units::metre.info, words.c_str(), {}};
            const std::size_t first = 0;
            const RelationInfo relation{words.c_str(), {&first, 1}};
            const FunctionText f{.name = "f",
                                 .type_name = "F",
                                 .meaning = words.c_str(),
                                 .also = "",
                                 .inputs = {&input, 1},
                                 .results = {&result, 1},
                                 .equation = "",
                                 .relations = {&relation, 1},
                                 .source = "",
                                 .cautions = {},
                                 .example = {},
                                 .turns = false};
            cutwater_refusal r;
            INFO(character << " " << length);
            const auto check = [&] { CHECK(whole(r)); };
            const NoValue why{CUTWATER_NO_ANSWER, "x", words.c_str(), {}};
            refuse_number(f, 0, 5, 3, &r), check();
            refuse_word(f, 0, words.c_str(), &r), check();
            refuse_series(f, 0, {}, &r), check();
            refuse_relation(f, 0, 5, 0, &r), check();
            refuse_no_value(f, why, 5, &r), check();
            const bool none_finite[] = {false};
            refuse_overflow(f, none_finite, &r), check();
            refuse_missing(f, 0, &r), check();
            refuse_kind(f, 0, words.c_str(), &r), check();
            refuse_buffer(f, 0, 9, 8, &r), check();
            refuse(CUTWATER_INTERNAL, words, &r), check();
            blame(f, 0, 7, &r), check();
        }
}

TEST_CASE("what a caller wrote is quoted as UTF-8 at every call", "[messages]")
{
    std::vector<std::string> texts;
    for (const char* character : characters)
        for (std::size_t length = 1; length < 200; length += 3)
            texts.push_back(repeated("a", length % 4) + repeated(character, length / 2));
    texts.push_back("\xFF\xFE");
    texts.push_back("\xE2\x82");
    texts.push_back("tab\tand\nline");
    for (const std::string& text : texts) {
        const char* const t = text.c_str();
        INFO(text);
        cutwater_refusal r{};
        double number = 0;
        cutwater_value values[5] = {};
        for (cutwater_value& v : values)
            v = {.kind = CUTWATER_NUMBER, .number = 1, .text = nullptr, .series = nullptr, .length = 0, .stride = 1};
        cutwater_result results[8] = {};
        CHECK(cutwater_call(t, values, 5, results, 1, &r) == CUTWATER_UNKNOWN_FUNCTION);
        CHECK(whole(r));
        CHECK(cutwater_working(t, values, 5, CUTWATER_TEXT_UTF8, nullptr, 0, nullptr, &r) == CUTWATER_UNKNOWN_FUNCTION);
        CHECK(whole(r));
        CHECK(cutwater_convert_unit(1, t, "m", &number, &r) != CUTWATER_OK);
        CHECK(whole(r));
        const cutwater_value foreign{CUTWATER_TEXT, 0, t, nullptr, 0, 1};
        CHECK(cutwater_quantity(&foreign, "m", &number, &r) != CUTWATER_OK);
        CHECK(whole(r));
        CHECK(cutwater_solve_for("npsh_available", values, 5, t, nullptr, &values[0], NAN, NAN, &number, &r) ==
              CUTWATER_WRONG_KIND);
        CHECK(whole(r));
        CHECK(cutwater_solve_for("npsh_available", values, 5, "density", t, &values[0], NAN, NAN, &number, &r) ==
              CUTWATER_WRONG_KIND);
        CHECK(whole(r));
        values[0].kind = CUTWATER_TEXT;
        values[0].text = t;
        CHECK(cutwater_call("npsh_available", values, 5, results, 1, &r) != CUTWATER_OK);
        CHECK(whole(r));
        for (std::size_t f = 0; f < function_count(); ++f) {  // a word among the inputs
            const FunctionInfo& info = function_at(f);
            if (info.inputs.empty() || info.inputs[0].kind != Kind::choice) continue;
            CHECK(cutwater_call(info.name, values, 1, results, 8, &r) == CUTWATER_UNKNOWN_WORD);
            CHECK(whole(r));
        }
    }
}

TEST_CASE("an end that is not there is open in every refusal", "[messages]")
{
    const auto ends_agree = [](const cutwater_refusal& r) {
        return (std::isfinite(r.low) || r.low_open == 1) && (std::isfinite(r.high) || r.high_open == 1);
    };
    const auto of_text = [](const char* given, const char* unit, double* to, cutwater_refusal* why) {
        const cutwater_value value{CUTWATER_TEXT, 0, given, nullptr, 0, 1};
        return cutwater_quantity(&value, unit, to, why);
    };
    cutwater_refusal r;
    double number = 0;
    CHECK(of_text("5 furlong", "m", &number, &r) == CUTWATER_UNKNOWN_UNIT);
    CHECK(ends_agree(r));
    CHECK(of_text("5 kg", "m", &number, &r) == CUTWATER_WRONG_QUANTITY);
    CHECK(ends_agree(r));
    CHECK(cutwater_convert_unit(1, "kg", "m", &number, &r) == CUTWATER_WRONG_QUANTITY);
    CHECK(ends_agree(r));
    CHECK(cutwater_convert_unit(-300, "degC", "K", &number, &r) == CUTWATER_OUT_OF_INTERVAL);
    CHECK(ends_agree(r));
    CHECK(r.low == -273.15);
    CHECK(r.low_open == 0);  // absolute zero itself converts
    CHECK(cutwater_convert_unit(-273.15, "degC", "K", &number, &r) == CUTWATER_OK);
    CHECK(cutwater_call("no_such_function", nullptr, 0, nullptr, 0, &r) == CUTWATER_UNKNOWN_FUNCTION);
    CHECK(ends_agree(r));
}

TEST_CASE("a refusal of solving tells the ends it searched, open or not", "[messages]")
{
    cutwater_value values[5] = {};
    const double numbers[] = {1.013, 0.0234, 998.2, 2, 0.5};
    for (std::size_t i = 0; i < 5; ++i)
        values[i] = {.kind = CUTWATER_NUMBER,
                     .number = numbers[i],
                     .text = nullptr,
                     .series = nullptr,
                     .length = 0,
                     .stride = 1};
    cutwater_value target{.kind = CUTWATER_NUMBER,
                          .number = 1e9,
                          .text = nullptr,
                          .series = nullptr,
                          .length = 0,
                          .stride = 1};
    double found = 0;
    cutwater_refusal r;
    // the record: surface_pressure above 0, friction_head from 0
    CHECK(cutwater_solve_for("npsh_available", values, 5, "surface_pressure", nullptr, &target, NAN, 2, &found, &r) ==
          CUTWATER_NO_ANSWER);
    CHECK(r.low == 0);
    CHECK(r.low_open == 1);
    CHECK(r.high == 2);
    CHECK(r.high_open == 0);
    CHECK(cutwater_solve_for("npsh_available", values, 5, "friction_head", nullptr, &target, NAN, NAN, &found, &r) ==
          CUTWATER_NO_ANSWER);
    CHECK(r.low == 0);
    CHECK(r.low_open == 0);
    CHECK(r.high_open == 1);
}

namespace {

/// Every word permitted, or whole ones from the first on and how many there are besides. Tells whether it is cut.
bool check_list(std::string_view message, std::span<const char* const> words)
{
    if (message.find(prose(write_words, words)) != message.npos) return false;
    std::string list;
    bool found = false;
    for (std::size_t k = 0; k < words.size() && !found; ++k) {
        list += "\"" + std::string(words[k]) + "\", ";
        found = message.find(list + "... (" + std::to_string(words.size() - k - 1) + " more)") != message.npos;
    }
    CHECK(found);
    return true;
}

}  // namespace

TEST_CASE("a list of words ends at a whole word, and the word that was likely meant goes before it", "[messages]")
{
    std::size_t cut = 0, inputs = 0;
    for (std::size_t k = 0; k < function_count(); ++k)
        for (std::size_t i = 0; i < function_at(k).inputs.size(); ++i) {
            const FunctionInfo& f = function_at(k);
            const InputInfo& in = f.inputs[i];
            if (in.kind != Kind::choice) continue;
            ++inputs;
            const std::string end = " (" + std::string(in.meaning) + ").";
            cutwater_refusal r;
            for (const char* word : in.words) {
                const std::string typed = std::string(word) + "q";
                refuse_word(f, i, typed.c_str(), &r);
                INFO(r.message);
                const std::string start = std::string(f.name) + ": " + in.full_name + " is \"" + typed + "\"; ";
                const std::size_t length = std::strlen(word);  // "5q" may have meant anything, "40q" 40 or 40S
                const std::string suggested = "is it \"" + (length > 5 ? std::string(word) + "\"? It must be \"" : "");
                CHECK(std::string(r.message).starts_with(start + (length > 1 ? suggested : "it must be \"")));
                check_list(r.message, in.words);
                CHECK(std::string(r.message).ends_with(end));
            }
            refuse_word(f, i, "~", &r);
            INFO(r.message);
            cut += check_list(r.message, in.words);
            CHECK(std::string(r.message).ends_with(end));
            refuse_word(f, i, nullptr, &r);
            check_list(r.message, in.words);
            refuse_kind(f, i, "a series", &r);
            check_list(r.message, in.words);
            CHECK(std::string(r.message).ends_with(end));
            if (in.has_default) continue;
            refuse_missing(f, i, &r);
            check_list(r.message, in.words);
            CHECK(std::string(r.message).ends_with(")."));
        }
    CHECK(inputs > 50);
    CHECK(cut > 0);
}
