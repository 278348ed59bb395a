// What passes between Excel and an add-in, in its twelfth version and later: our own definitions, by Microsoft's public
// description of the interface (learn.microsoft.com, Excel XLL development).
#pragma once

#include <cstddef>
#include <cstdint>

namespace cutwater::excel {

enum Type : std::uint32_t {
    number_type = 0x1,
    text_type = 0x2,
    truth_type = 0x4,
    error_type = 0x10,
    block_type = 0x40,
    missing_type = 0x80,   // an argument left out
    nothing_type = 0x100,  // an empty cell
    whole_type = 0x800,
    type_bits = 0xfff,
    excel_frees = 0x1000,
    we_free = 0x4000
};

/// As a cell shows it: #VALUE!, #N/A. Others of the sheet's own pass through as they are.
enum Error : std::int32_t { value_error = 15, not_available = 42 };

struct Value {
    struct Block {
        Value* cells;  // row by row
        std::int32_t rows;
        std::int32_t columns;
    };
    union {
        double number;
        char16_t* text;  // its first unit is the length of what follows; no end is marked
        std::int32_t truth;
        std::int32_t error;
        std::int32_t whole;
        Block block;
        std::uint64_t room[3];  // references to cells, which are never asked for, fill it
    };
    std::uint32_t type;
};
static_assert(sizeof(void*) != 8 || (sizeof(Value) == 32 && offsetof(Value, type) == 24));

inline constexpr std::size_t longest_text = 32767;

/// What Excel is asked for, by its number.
enum Ask : int {
    set_name = 88,
    register_function = 149,
    unregister_function = 201,
    free_value = 0x4000,
    own_file_name = 0x4000 | 9,
    show_alert = 0x8000 | 118
};

/// Excel's one entry point, which its program file exports as MdCallBack12. Answers 0 when all went well.
using CallBack = int (*)(int ask, int count, const Value* const* arguments, Value* result);

}  // namespace cutwater::excel
