#include "libcore/formats/steps.h"

#include "libcore/formats/text_input.h"

#include <algorithm>
#include <cmath>

namespace pithward::formats {

namespace {

constexpr double steps_a_mm(WidthSeries::Unit unit) {
    return unit == WidthSeries::Unit::HundredthMm ? 100.0 : 1000.0;
}

} // namespace

long long steps(Millimetres width, WidthSeries::Unit unit) {
    return std::llround(width.value() * steps_a_mm(unit));
}

bool is_whole_hundredths(Millimetres width) {
    constexpr double slack = 1e-6; // Of a step; far below anything measured.
    const double hundredths = width.value() * 100.0;
    return std::abs(hundredths - std::round(hundredths)) < slack;
}

WidthSeries::Unit writing_unit(const WidthSeries& series) {
    const bool whole =
        std::ranges::all_of(series.widths, [](const auto& width) { return !width || is_whole_hundredths(*width); });
    return whole ? series.unit : WidthSeries::Unit::ThousandthMm;
}

std::string width_text(Millimetres width, WidthSeries::Unit unit) {
    const std::size_t places = unit == WidthSeries::Unit::HundredthMm ? 2 : 3;
    std::string digits = std::to_string(steps(width, unit));
    if (digits.size() <= places) {
        digits.insert(0, places + 1 - digits.size(), '0');
    }
    digits.insert(digits.size() - places, 1, '.');
    return digits;
}

Outcome<void> check_widths(const WidthSeries& series) {
    for (std::size_t i = 0; i < series.widths.size(); ++i) {
        if (!series.widths[i]) {
            continue;
        }
        const double mm = series.widths[i]->value();
        std::string what;
        if (!(mm >= 0.0 && mm <= greatest_width_mm)) {
            what = "a width must lie between 0 and 100,000 mm";
        } else if (mm > 0.0 && steps(*series.widths[i], WidthSeries::Unit::ThousandthMm) == 0) {
            what = "a width under 0.0005 mm would read as a locally absent ring";
        } else {
            continue;
        }
        const std::string year = std::to_string((series.first_year + static_cast<int>(i)).value());
        return fail("series " + as_utf8(series.id) + ", " + (series.dated ? "year " : "ring ") + year, what,
                    "correct the width, or leave it out as a gap");
    }
    return {};
}

WidthSeries::Unit unit_for_decimals(std::size_t most_decimals) {
    return most_decimals <= 2 ? WidthSeries::Unit::HundredthMm : WidthSeries::Unit::ThousandthMm;
}

} // namespace pithward::formats
