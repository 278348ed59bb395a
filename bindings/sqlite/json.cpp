#include "json.hpp"

namespace cutwater_door {
namespace {

Given other(std::string what)
{
    Given given;
    given.kind = Kind::other;
    given.text = std::move(what);
    return given;
}

/// Event by event, so that a deeply nested text costs no stack and a long one no second copy.
class Reader : public nlohmann::json_sax<Json> {
public:
    Given array;

    bool null() override { return add({}, Kind::empty); }
    bool boolean(bool) override { return add(other("true or false"), Kind::other); }
    bool number_integer(number_integer_t value) override { return add_number(static_cast<double>(value)); }
    bool number_unsigned(number_unsigned_t value) override { return add_number(static_cast<double>(value)); }
    bool number_float(number_float_t value, const string_t&) override { return add_number(value); }
    bool string(string_t& value) override
    {
        Given text;
        text.text = value;
        return add(std::move(text), Kind::text);
    }
    bool binary(binary_t&) override { return add(other("bytes"), Kind::other); }
    bool start_object(std::size_t) override { return open(other("a JSON object")); }
    bool end_object() override { return close(); }
    bool key(string_t&) override { return true; }
    bool start_array(std::size_t) override
    {
        if (depth_ == 0) return ++depth_ > 0;
        return open(other("an array inside an array"));
    }
    bool end_array() override { return close(); }
    bool parse_error(std::size_t position, const std::string&, const nlohmann::detail::exception&) override
    {
        array = other("a text that begins with [ but is no JSON array: see its character " + std::to_string(position));
        failed_ = true;
        return false;
    }
    bool failed() const { return failed_; }

private:
    std::size_t depth_ = 0;
    bool failed_ = false;

    bool add(Given given, Kind kind)
    {
        if (depth_ != 1) return true;
        given.kind = kind;
        array.cells.push_back(std::move(given));
        return true;
    }
    bool add_number(double value)
    {
        Given number;
        number.number = value;
        return add(std::move(number), Kind::number);
    }
    bool open(Given given)
    {
        add(std::move(given), Kind::other);
        return ++depth_ > 0;
    }
    bool close()
    {
        --depth_;
        return true;
    }
};

}  // namespace

bool begins_array(std::string_view text)
{
    const std::size_t first = text.find_first_not_of(" \t\r\n");
    return first != std::string_view::npos && text[first] == '[';
}

Given read_array(std::string_view text)
{
    Reader reader;
    Json::sax_parse(text.begin(), text.end(), &reader);
    if (!reader.failed()) reader.array.kind = Kind::cells;
    return std::move(reader.array);
}

Json array_of(const double* numbers, std::size_t count)
{
    Json array = Json::array();
    for (std::size_t i = 0; i < count; ++i) array.push_back(numbers[i]);
    return array;
}

std::string written(const Json& json) { return json.dump(-1, ' ', false, Json::error_handler_t::replace); }

}  // namespace cutwater_door
