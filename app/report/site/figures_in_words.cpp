#include "app/report/site/figures_in_words.h"

#include <array>
#include <charconv>
#include <cmath>

namespace pithward::report {

std::string fixed(double value, int digits) {
    if (!std::isfinite(value)) {
        return not_known;
    }
    std::array<char, 400> text{}; // The greatest double has 309 digits.
    const auto end = std::to_chars(text.data(), text.data() + text.size(), value, std::chars_format::fixed, digits);
    const std::string written(text.data(), end.ptr);
    const bool negative = written.starts_with('-');
    const bool zero = written.find_first_of("123456789") == std::string::npos;
    return negative ? (zero ? written.substr(1) : "\xE2\x88\x92" + written.substr(1)) : written;
}

std::string fixed(const std::optional<double>& value, int digits) {
    return value ? fixed(*value, digits) : not_known;
}

std::string fixed(const std::optional<Millimetres>& value, int digits) {
    return value ? fixed(value->value(), digits) : not_known;
}

std::string told(const std::optional<YearRange>& range) {
    if (!range) {
        return not_known;
    }
    std::string text = std::to_string(range->year.value());
    if (range->low != range->year || range->high != range->year) {
        text += " (" + told_years(range->low.value(), range->high.value()) + ")";
    }
    return text;
}

std::string told_years(int first, int last) {
    return std::to_string(first) + " to " + std::to_string(last);
}

std::string or_dash(const std::string& text) {
    return text.empty() ? not_known : text;
}

std::string counted(std::size_t count, const std::string& one, const std::string& many) {
    return std::to_string(count) + ' ' + (count == 1 ? one : many);
}

} // namespace pithward::report
