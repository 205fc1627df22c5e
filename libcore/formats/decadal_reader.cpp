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

constexpr std::size_t most_headers = 3;

struct DecadalText {
    std::vector<std::string> headers;
    std::vector<DecadalLine> lines;
};

/// The lines of a run have the same seven first columns and a minus in column 8. It is the years' if they come down to
/// zero, or if nothing tells: the identifier's if they go up.
bool minus_belongs_to_identifier(const std::vector<DecadalLine>& lines, std::size_t first, std::size_t end) {
    if (end - first >= 2) {
        return lines[first].year > lines[first + 1].year;
    }
    const DecadalLine& line = lines[first];
    const bool year_goes_on = end < lines.size() && lines[end].identifier == line.identifier;
    const bool fits_decade = line.count <= room_in_decade(line.year);
    return !year_goes_on && !fits_decade;
}

void settle_signs(std::vector<DecadalLine>& lines) {
    for (std::size_t first = 0; first < lines.size();) {
        std::size_t end = first + 1;
        if (lines[first].sign_open) {
            const auto same = [&](const DecadalLine& l) {
                return l.sign_open && l.identifier == lines[first].identifier;
            };
            end = static_cast<std::size_t>(std::find_if_not(lines.begin() + first, lines.end(), same) - lines.begin());
            if (minus_belongs_to_identifier(lines, first, end)) {
                for (std::size_t i = first; i < end; ++i) {
                    lines[i].year = -lines[i].year;
                    lines[i].identifier += '-';
                }
            }
        }
        first = end;
    }
}

Outcome<DecadalText> parse(const std::vector<Line>& lines, Remarks& remarks) {
    DecadalText text;
    for (const Line& line : lines) {
        const bool may_be_header = text.lines.empty() && line.number <= most_headers;
        if (may_be_header && (is_blank(line.text) || is_decadal_header(line.text, line.number))) {
            text.headers.emplace_back(line.text);
            continue;
        }
        if (is_blank(line.text)) {
            continue;
        }
        auto parsed = parse_decadal_line(line);
        if (parsed) {
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
