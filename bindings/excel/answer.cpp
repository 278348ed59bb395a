#include "answer.hpp"

#include <algorithm>
#include <cstdlib>
#include <cstring>
#include <new>

namespace cutwater::excel {
namespace {

using cutwater_door::Cell;
using cutwater_door::Grid;

/// A longer text ends in a word that says so.
std::u16string fitting(const std::string& text)
{
    std::u16string made = utf16(text);
    if (made.size() <= longest_text) return made;
    constexpr std::u16string_view tail = u"… (more than a cell holds)";
    std::size_t length = longest_text - tail.size();
    if (made[length - 1] >= 0xD800 && made[length - 1] < 0xDC00) --length;  // half a character
    made.resize(length);
    return made.append(tail);
}

void put(const Cell& cell, const std::u16string& text, char16_t*& room, Value& to)
{
    switch (cell.kind) {
    case Cell::Kind::number:
        to.type = number_type;
        to.number = cell.number;
        break;
    case Cell::Kind::text:
        to.type = text_type;
        to.text = room;
        *room++ = static_cast<char16_t>(text.size());
        room = std::copy(text.begin(), text.end(), room);
        break;
    case Cell::Kind::gap:
        to.type = error_type;
        to.error = not_available;
        break;
    }
}

}  // namespace

Value* answer(const Grid& grid)
{
    const std::size_t count = grid.cells.size();
    std::vector<std::u16string> texts(count);
    std::size_t units = 0;
    for (std::size_t i = 0; i < count; ++i) {
        if (grid.cells[i].kind != Cell::Kind::text) continue;
        texts[i] = fitting(grid.cells[i].text);
        units += texts[i].size() + 1;
    }
    const bool one = count == 1;
    // One piece of memory: the value, its cells, their texts.
    const std::size_t values = 1 + (one ? 0 : count);
    void* memory = std::malloc(values * sizeof(Value) + units * sizeof(char16_t));
    if (!memory) throw std::bad_alloc();
    Value* const made = new (memory) Value[values]{};
    auto* room = reinterpret_cast<char16_t*>(made + values);
    Value* const cells = one ? made : made + 1;
    for (std::size_t i = 0; i < count; ++i) put(grid.cells[i], texts[i], room, cells[i]);
    if (!one) {
        made->type = block_type;
        made->block = {cells, static_cast<std::int32_t>(grid.rows), static_cast<std::int32_t>(grid.columns)};
    }
    made->type |= we_free;
    return made;
}

void release(Value* answer)
{
    if (answer && answer->type & we_free) std::free(answer);
}

Value* error_answer(std::int32_t error)
{
    static const auto errors = [] {
        std::vector<Value> made(64);
        for (std::size_t i = 0; i < made.size(); ++i) {
            made[i].type = error_type;
            made[i].error = static_cast<std::int32_t>(i);
        }
        return made;
    }();
    const bool known = error >= 0 && static_cast<std::size_t>(error) < errors.size();
    return const_cast<Value*>(&errors[static_cast<std::size_t>(known ? error : value_error)]);  // Excel only reads it
}

}  // namespace cutwater::excel
