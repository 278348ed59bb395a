// The array form with random strides and overlaps: every row as the scalar call has it, or refused as a whole.
#include "fuzz/feed.hpp"

using namespace cutwater::fuzz;

namespace {

/// A column of exactly the numbers that its rows reach, or a place in the block that several columns share.
class Columns {
public:
    Columns(Feed& feed, std::size_t rows) : feed_(&feed), rows_(rows), common_(std::make_unique<double[]>(most_common))
    {
        for (std::size_t k = 0; k < most_common; ++k) common_[k] = k < 24 ? feed.number() : common_[k - 24];
    }

    double* place(std::ptrdiff_t& stride)
    {
        constexpr std::ptrdiff_t strides[] = {1, 1, 1, 1, 0, 2, 3, -1, -2};
        stride = strides[feed_->below(9)];
        const std::size_t reach = rows_ ? (rows_ - 1) * static_cast<std::size_t>(std::abs(stride)) + 1 : 1;
        double* first;
        if (feed_->one_in(3) && reach <= most_common) {
            first = common_.get() + feed_->below(static_cast<int>(most_common - reach + 1));
        } else {
            own_.push_back(std::make_unique<double[]>(reach));
            first = own_.back().get();
            const std::size_t fresh = std::min<std::size_t>(reach, 12);
            for (std::size_t k = 0; k < reach; ++k) first[k] = k < fresh ? feed_->number() : first[k - fresh];
        }
        return stride < 0 ? first + reach - 1 : first;
    }

private:
    static constexpr std::size_t most_common = 600;
    Feed* feed_;
    std::size_t rows_;
    std::unique_ptr<double[]> common_;
    std::vector<std::unique_ptr<double[]>> own_;
};

struct Row {
    cutwater_status status;
    std::vector<double> numbers;
};

/// What the scalar call makes of each row.
std::vector<Row> expected(int function, std::size_t rows, const std::vector<cutwater_column>& columns,
                          const std::vector<cutwater_value>& shared)
{
    const auto inputs = static_cast<std::size_t>(cutwater_input_count(function)),
               count = static_cast<std::size_t>(cutwater_result_count(function));
    std::vector<Row> made;
    for (std::size_t r = 0; r < rows; ++r) {
        std::vector<cutwater_value> values(inputs);
        for (std::size_t i = 0; i < inputs; ++i) {
            if (cutwater_input_kind(function, static_cast<int>(i)) != CUTWATER_NUMBER)
                values[i] = shared[i];
            else if (columns[i].data)
                values[i] = {CUTWATER_NUMBER,
                             columns[i].data[static_cast<std::ptrdiff_t>(r) * columns[i].stride],
                             nullptr,
                             nullptr,
                             0,
                             1};
        }
        std::vector<cutwater_result> results(count);
        Row row{cutwater_call_at(function, values.data(), inputs, results.data(), count, nullptr), {}};
        for (std::size_t j = 0; j < count; ++j) {
            double number = results[j].number;
            if (row.status == CUTWATER_OK && results[j].kind == CUTWATER_TEXT)
                for (number = 0;
                     std::strcmp(cutwater_result_word(function, static_cast<int>(j), static_cast<int>(number)),
                                 results[j].text) != 0;)
                    ++number;
            row.numbers.push_back(number);
        }
        made.push_back(std::move(row));
    }
    return made;
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    Feed feed(data, size);
    const int function = feed.below(cutwater_function_count());
    const auto inputs = static_cast<std::size_t>(cutwater_input_count(function)),
               count = static_cast<std::size_t>(cutwater_result_count(function));
    const auto rows = static_cast<std::size_t>(feed.one_in(8) ? feed.below(1100) : feed.below(20));
    Arguments words(feed, function);
    words.values.resize(inputs);
    Columns room(feed, rows);
    std::vector<cutwater_column> columns(inputs);
    for (cutwater_column& column : columns) {
        column.data = room.place(column.stride);
        if (feed.one_in(24)) column.data = nullptr;
    }
    std::vector<cutwater_result_column> results(count);
    for (cutwater_result_column& column : results) {
        column.data = room.place(column.stride);
        if (feed.one_in(4)) {
            const cutwater_column& same = columns[static_cast<std::size_t>(feed.below(static_cast<int>(inputs)))];
            column = {const_cast<double*>(same.data), same.stride};
        }
    }
    const std::vector<Row> scalar = expected(function, rows, columns, words.values);
    const auto bitmap = std::make_unique<std::uint8_t[]>((rows + 7) / 8);
    cutwater_rows_report report{};
    report.bitmap = feed.one_in(4) ? nullptr : bitmap.get();
    report.threads = feed.below(4) - 1;
    const cutwater_status status = cutwater_rows_at(function, rows, columns.data(), words.values.data(), results.data(),
                                                    &report);
    if (rows == 0) return 0;
    check_refusal(status, report.first, cutwater_input_count(function));
    const bool whole = status != CUTWATER_OK && report.first.element < 0;
    std::size_t refused = 0;
    for (std::size_t r = 0; r < rows; ++r) {
        const bool bad = whole || scalar[r].status != CUTWATER_OK;
        refused += bad;
        if (report.bitmap) must(((bitmap[r / 8] >> (r % 8)) & 1) == bad, "the bit tells whether the row is refused");
        for (std::size_t j = 0; j < count; ++j) {
            if (!results[j].data) continue;
            const double number = results[j].data[static_cast<std::ptrdiff_t>(r) * results[j].stride];
            if (bad)
                must(std::isnan(number), "a refused row's results are NaN");
            else
                must(std::memcmp(&number, &scalar[r].numbers[j], sizeof number) == 0,
                     "a row has the bits of the scalar call");
        }
    }
    must(report.refused == refused, "the refused rows are counted");
    return 0;
}
