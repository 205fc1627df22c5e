#include "libcore/field/scan_place.h"

#include <charconv>
#include <cmath>
#include <vector>

namespace pithward::field {

namespace {

constexpr int greatest_place = 1'000'000; ///< Pixels along the greatest scan that is read.

/// The whole numbers of a text with blanks between them; nothing where something else stands in it.
std::optional<std::vector<int>> whole_numbers(std::string_view text) {
    std::vector<int> numbers;
    while (!text.empty()) {
        if (text.front() == ' ') {
            text.remove_prefix(1);
            continue;
        }
        int number = 0;
        const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
        const auto length = static_cast<std::size_t>(end - text.data());
        const bool ends = length == text.size() || text[length] == ' ';
        if (error != std::errc() || !ends || number < 0 || number > greatest_place) {
            return std::nullopt;
        }
        numbers.push_back(number);
        text.remove_prefix(length);
    }
    return numbers;
}

} // namespace

std::string text_of(const ScanPlace& place) {
    if (const int* number = std::get_if<int>(&place)) {
        return std::to_string(*number);
    }
    const auto at = std::get<ImagePoint>(place);
    return std::to_string(std::lround(at.x)) + " " + std::to_string(std::lround(at.y));
}

std::optional<ScanPlace> scan_place_from(std::string_view text) {
    const auto numbers = whole_numbers(text);
    if (!numbers || numbers->empty() || numbers->size() > 2) {
        return std::nullopt;
    }
    if (numbers->size() == 2) {
        return ImagePoint{static_cast<double>(numbers->front()), static_cast<double>(numbers->back())};
    }
    return numbers->front() > 0 ? std::optional<ScanPlace>(numbers->front()) : std::nullopt;
}

std::optional<ScanPlace> scan_place_of(const Core& core) {
    const auto column = core.others.find(scan_place_column);
    return column == core.others.end() ? std::nullopt : scan_place_from(column->second);
}

void set_scan_place(Core& core, const std::optional<ScanPlace>& place) {
    if (place) {
        core.others[scan_place_column] = text_of(*place);
    } else {
        core.others.erase(scan_place_column);
    }
}

} // namespace pithward::field
