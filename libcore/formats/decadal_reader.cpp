#include "libcore/formats/decadal.h"
#include "libcore/formats/decadal_line.h"
#include "libcore/formats/decadal_pieces.h"
#include "libcore/formats/remarks.h"

#include <algorithm>
#include <optional>
#include <utility>

namespace pithward {

using namespace formats;

namespace {

struct DecadalText {
    std::vector<std::string> headers;
    std::vector<DecadalLine> lines;
};

/// Lines with the same seven first columns and a minus in column 8, one after the other.
struct SignRun {
    std::size_t first = 0;
    std::size_t end = 0;
    std::optional<bool> is_of_year; ///< Whose the minus is, where the run tells.
};

/// The minus is the years' where they come down to zero with it, the identifier's where they go up.
std::optional<bool> minus_is_of_year(const std::vector<DecadalLine>& lines, std::size_t first, std::size_t end) {
    if (end - first >= 2) {
        return lines[first].year < lines[first + 1].year;
    }
    const DecadalLine& line = lines[first];
    if (end < lines.size() && lines[end].identifier == line.identifier) {
        return true; // It goes on with years above -1000.
    }
    const bool fits_year = line.count <= room_in_decade(line.year);
    const bool fits_identifier = line.count <= room_in_decade(-line.year);
    return fits_year == fits_identifier ? std::nullopt : std::optional(fits_year);
}

/// Gives each minus in column 8 to the year or to the identifier. A run that doesn't tell follows the others of the
/// file; where none tells, it is the year's.
void settle_signs(std::vector<DecadalLine>& lines) {
    std::vector<SignRun> runs;
    std::size_t of_years = 0;
    std::size_t of_identifiers = 0;
    for (std::size_t first = 0; first < lines.size(); ++first) {
        if (!lines[first].sign_open) {
            continue;
        }
        SignRun run{first, first + 1, std::nullopt};
        while (run.end < lines.size() && lines[run.end].sign_open &&
               lines[run.end].identifier == lines[first].identifier) {
            ++run.end;
        }
        run.is_of_year = minus_is_of_year(lines, run.first, run.end);
        of_years += run.is_of_year.value_or(false) ? 1 : 0;
        of_identifiers += run.is_of_year.value_or(true) ? 0 : 1;
        first = run.end - 1;
        runs.push_back(run);
    }
    const bool mostly_years = of_years >= of_identifiers;
    for (const SignRun& run : runs) {
        if (run.is_of_year.value_or(mostly_years)) {
            continue;
        }
        for (std::size_t i = run.first; i < run.end; ++i) {
            lines[i].year = -lines[i].year;
            lines[i].identifier += '-';
        }
    }
}

Outcome<DecadalText> parse(const std::vector<Line>& lines, Remarks& remarks) {
    DecadalText text;
    for (const Line& line : lines) {
        const bool may_be_header = text.lines.empty() && line.number <= WidthTable::most_headers;
        if (may_be_header && (is_blank(line.text) || is_decadal_header(line.text, line.number))) {
            text.headers.emplace_back(line.text);
            continue;
        }
        if (is_blank(line.text)) {
            continue;
        }
        auto parsed = parse_decadal_line(line);
        if (parsed) {
            if (parsed->comment_begins_with_number()) {
                remarks.add("a number after the tenth value is taken for a comment", line.number);
            }
            text.lines.push_back(std::move(*parsed));
        } else if (is_marked_header(line.text) && !text.lines.empty()) {
            remarks.add("a header line amid the measurements is left out", line.number);
        } else {
            return fail(place(line.number, parsed.error().column), parsed.error().what,
                        may_be_header || !text.lines.empty()
                            ? "correct the line: identifier in columns 1 to 8, year in 9 to 12, values of 6 columns"
                            : "a header has at most three lines, and measurements follow it");
        }
    }
    settle_signs(text.lines);
    return text;
}

/// The unit that all series with an end mark have.
std::optional<WidthSeries::Unit> common_unit(const std::vector<Piece>& pieces) {
    std::optional<WidthSeries::Unit> unit;
    for (const Piece& piece : pieces) {
        if (piece.unit && unit && *unit != *piece.unit) {
            return std::nullopt;
        }
        if (piece.unit) {
            unit = piece.unit;
        }
    }
    return unit;
}

/// A series that has no end mark takes the unit of all the others.
Outcome<void> settle_units(std::vector<Piece>& pieces, Remarks& remarks) {
    const auto unit = common_unit(pieces);
    for (Piece& piece : pieces) {
        if (piece.unit) {
            continue;
        }
        const std::string name = "series " + as_utf8(piece.identifier);
        if (!unit) {
            return fail(place(piece.last_line), name + " has no end mark, so its unit can't be told",
                        "put 999 (0.01 mm) or -9999 (0.001 mm) after its last value");
        }
        piece.unit = unit;
        remarks.add(name + " has no end mark (is the file cut short?): its unit is taken from the other series",
                    piece.last_line);
    }
    return {};
}

} // namespace

Outcome<WidthTable> read_decadal(std::istream& in) {
    const auto text = read_text(in);
    if (!text) {
        return tl::unexpected(text.error());
    }
    const auto lines = split_lines(*text);
    if (!lines) {
        return tl::unexpected(lines.error());
    }
    Remarks remarks;
    auto parsed = parse(*lines, remarks);
    if (!parsed) {
        return tl::unexpected(std::move(parsed.error()));
    }
    auto pieces = gather_pieces(parsed->lines, remarks);
    if (!pieces) {
        return tl::unexpected(std::move(pieces.error()));
    }
    if (auto settled = settle_units(*pieces, remarks); !settled) {
        return tl::unexpected(std::move(settled.error()));
    }
    WidthTable table;
    table.headers = std::move(parsed->headers);
    auto series = join_pieces(std::move(*pieces), remarks);
    if (!series) {
        return tl::unexpected(std::move(series.error()));
    }
    table.series = std::move(*series);
    table.remarks = remarks.list();
    return table;
}

} // namespace pithward
