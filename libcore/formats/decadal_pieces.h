#pragma once

#include "libcore/formats/decadal_line.h"
#include "libcore/formats/remarks.h"
#include "libcore/specimen/outcome.h"
#include "libcore/specimen/width_series.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace pithward::formats {

/// A run of lines of one series up to its end mark.
struct Piece {
    std::string identifier;
    int first_year = 0;
    std::vector<std::optional<int>> steps; ///< One a year; nothing for a gap.
    std::optional<WidthSeries::Unit> unit; ///< Told by the end mark.
    std::map<Year, std::string> comments;
    std::size_t first_line = 0;
    std::size_t last_line = 0;
};

/// Puts lines together into pieces: finds the end marks and holds each line against the one before it.
[[nodiscard]] Outcome<std::vector<Piece>> gather_pieces(const std::vector<DecadalLine>& lines, Remarks& remarks);

/// Series from pieces, whose units are all known by now. Pieces of one identifier become one series with gaps between;
/// where they overlap in time, the later one is a series with a name of its own.
[[nodiscard]] Outcome<std::vector<WidthSeries>> join_pieces(std::vector<Piece> pieces, Remarks& remarks);

/// The fault of a file that holds more than `most_series` or `most_values`.
[[nodiscard]] tl::unexpected<Fault> too_many_values(std::size_t line);

} // namespace pithward::formats
