#include "libcore/specimen/outermost_year.h"

#include <charconv>

namespace pithward {

namespace {

std::optional<int> number_at(const std::string& date, std::size_t from, std::size_t length) {
    int value = 0;
    if (date.size() < from + length) {
        return std::nullopt;
    }
    const char* begin = date.data() + from;
    const auto read = std::from_chars(begin, begin + length, value);
    return read.ec == std::errc() && read.ptr == begin + length ? std::optional(value) : std::nullopt;
}

} // namespace

std::optional<Year> outermost_year(const Core& core, std::optional<double> latitude) {
    constexpr int mid_year = 7; // the first month of the second half
    const auto year = number_at(core.date_cored, 0, 4);
    const auto month = number_at(core.date_cored, 5, 2);
    if (!year || !latitude) {
        return std::nullopt;
    }
    const bool north = *latitude >= 0.0;
    if (core.outer == OuterWood::Unfinished) {
        if (north) {
            return Year(*year - 1);
        }
        return month ? std::optional(Year(*month >= mid_year ? *year - 1 : *year - 2)) : std::nullopt;
    }
    if (core.outer == OuterWood::Complete) {
        if (!north) {
            return Year(*year - 1);
        }
        return month ? std::optional(Year(*month >= mid_year ? *year : *year - 1)) : std::nullopt;
    }
    return std::nullopt;
}

} // namespace pithward
