#include "libcore/formats/chronology_files.h"

#include <array>
#include <charconv>

namespace pithward {

namespace {

std::string decimal_or_empty(const std::optional<double>& value) {
    constexpr int digits = 4;
    std::array<char, 64> text{};
    if (!value) {
        return {};
    }
    const auto end =
        std::to_chars(text.data(), text.data() + text.size(), *value, std::chars_format::fixed, digits).ptr;
    return {text.data(), end};
}

} // namespace

Outcome<void> write_chronology_csv(std::ostream& out, const dating::Chronology& chronology,
                                   const std::string& /*identifier*/) {
    out << "year,value,low,high,series,trees\n";
    for (const dating::ChronologyYear& year : chronology.years) {
        out << std::to_string(year.year) << ',' << decimal_or_empty(year.value) << ',' << decimal_or_empty(year.low)
            << ',' << decimal_or_empty(year.high) << ',' << std::to_string(year.series) << ','
            << std::to_string(year.trees) << '\n';
    }
    return {};
}

} // namespace pithward
