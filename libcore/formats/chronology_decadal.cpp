#include "libcore/formats/chronology_files.h"
#include "libcore/formats/text_input.h"

#include <algorithm>
#include <cmath>

namespace pithward {

namespace {

constexpr int no_value = 9990;
constexpr int most_series_written = 999;

std::string right(int number, std::size_t columns) {
    const std::string text = std::to_string(number);
    return std::string(columns - std::min(columns, text.size()), ' ') + text;
}

std::string six_characters(const std::string& identifier) {
    std::string id;
    for (const char c : identifier) {
        const bool plain = c > ' ' && c < '\x7f';
        if (id.size() < 6 && plain) {
            id += c;
        }
    }
    id.resize(6, ' ');
    return id;
}

/// The decade that a year lies in, also before year 0.
int decade_of(int year) {
    return 10 * static_cast<int>(std::floor(year / 10.0));
}

} // namespace

Outcome<void> write_chronology_decadal(std::ostream& out, const dating::Chronology& chronology,
                                       const std::string& identifier) {
    if (chronology.years.empty()) {
        return fail("", "there is no year to write", "choose series with widths");
    }
    const int first = chronology.years.front().year;
    const int last = chronology.years.back().year;
    if (decade_of(first) < -999 || last > 9999) {
        return fail("", "a year of more than four characters has no room in a decadal chronology",
                    "write .csv or .json");
    }
    const std::string id = six_characters(identifier);
    for (int decade = decade_of(first); decade <= last; decade += 10) {
        std::string line = id + right(decade, 4);
        for (int year = decade; year < decade + 10; ++year) {
            int thousandths = no_value;
            int series = 0;
            if (year >= first && year <= last) {
                const dating::ChronologyYear& here = chronology.years[static_cast<std::size_t>(year - first)];
                if (here.value) {
                    const double rounded = std::round(*here.value * 1000.0);
                    if (!(rounded >= 0.0 && rounded < no_value)) {
                        return fail("year " + std::to_string(year),
                                    "a decadal chronology holds values of 0 to 9.989 only",
                                    "write .csv or .json, or detrend by division without prewhitening");
                    }
                    thousandths = static_cast<int>(rounded);
                    series = std::min(here.series, most_series_written);
                }
            }
            line += right(thousandths, 4) + right(series, 3);
        }
        out << line << '\n';
    }
    return {};
}

} // namespace pithward
