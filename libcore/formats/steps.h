#pragma once

#include "libcore/specimen/outcome.h"
#include "libcore/specimen/width_series.h"

#include <optional>
#include <string>

namespace pithward::formats {

/// A width as a whole number of steps of a unit: rounded to the nearest.
[[nodiscard]] long long steps(Millimetres width, WidthSeries::Unit unit);
/// True where a width is a whole number of hundredths, but for what binary numbers can't hold.
[[nodiscard]] bool is_whole_hundredths(Millimetres width);

/// The unit in which a series is written: its own, but 0.001 mm where that would change a value.
[[nodiscard]] WidthSeries::Unit writing_unit(const WidthSeries& series);

/// A width as text in mm: two decimals in 0.01 mm, three in 0.001 mm.
[[nodiscard]] std::string width_text(Millimetres width, WidthSeries::Unit unit);

/// Refuses a series that can't be written in steps of 0.001 mm without saying something else: widths that aren't
/// finite, are negative or over `greatest_width_mm`, and measured ones so narrow that they would read as absent rings.
[[nodiscard]] Outcome<void> check_widths(const WidthSeries& series);

/// The unit for widths read from text with up to this many decimals.
[[nodiscard]] WidthSeries::Unit unit_for_decimals(std::size_t most_decimals);

} // namespace pithward::formats
