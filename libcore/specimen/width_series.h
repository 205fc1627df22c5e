#pragma once

#include "libcore/specimen/ring_series.h"
#include "libcore/specimen/units.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace pithward {

/// A width series as files hold it: one value a year, oldest first.
struct WidthSeries {
    /// The step in which a file gives its values.
    enum class Unit { HundredthMm, ThousandthMm };

    std::string id;
    Year first_year;
    bool dated = true; ///< False where `first_year` only counts rings.
    /// One a year: a width in mm, 0 for a locally absent ring, nothing for a gap.
    std::vector<std::optional<Millimetres>> widths;
    Unit unit = Unit::ThousandthMm;
    /// Text that stands beside the values of a decadal file, by the first year of its line.
    std::map<Year, std::string> comments;

    [[nodiscard]] Year last_year() const { return first_year + static_cast<int>(widths.size()) - 1; }
    friend bool operator==(const WidthSeries&, const WidthSeries&) = default;
};

/// A file of series, with what it says beside them.
struct WidthTable {
    static constexpr std::size_t most_headers = 3;

    std::vector<std::string> headers; ///< Header lines of a decadal file, at most `most_headers`, as they stand.
    std::vector<WidthSeries> series;
    std::vector<std::string> remarks; ///< What the reader noticed and a person should know, in words.
    friend bool operator==(const WidthTable&, const WidthTable&) = default;
};

/// The identifier of the `index`-th of `count` series read from one scan: the scan's name without ending, numbered when
/// there are several.
[[nodiscard]] std::string series_id(const std::string& scan_stem, std::size_t index, std::size_t count);

/// The rings of a reading as a width series, oldest first. Undated rings count from 1, the innermost.
[[nodiscard]] WidthSeries width_series(std::string id, const RingSeries& rings);

} // namespace pithward
