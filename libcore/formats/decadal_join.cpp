#include "libcore/formats/decadal_pieces.h"
#include "libcore/formats/identifiers.h"

#include <algorithm>
#include <utility>

namespace pithward::formats {

namespace {

std::optional<Millimetres> width_of(std::optional<int> step, WidthSeries::Unit unit) {
    if (!step || *step < 0) {
        return std::nullopt;
    }
    return Millimetres(*step / (unit == WidthSeries::Unit::HundredthMm ? 100.0 : 1000.0));
}

WidthSeries series_from(Piece&& piece) {
    WidthSeries series;
    series.id = std::move(piece.identifier);
    series.first_year = Year(piece.first_year);
    series.unit = piece.unit.value_or(WidthSeries::Unit::ThousandthMm);
    series.comments = std::move(piece.comments);
    series.widths.reserve(piece.steps.size());
    for (const auto& step : piece.steps) {
        series.widths.push_back(width_of(step, series.unit));
    }
    return series;
}

/// Puts a piece before or after a series; they don't overlap.
void attach(WidthSeries& series, WidthSeries&& piece) {
    if (piece.first_year < series.first_year) {
        std::swap(series.first_year, piece.first_year);
        std::swap(series.widths, piece.widths);
    }
    series.widths.resize(static_cast<std::size_t>(piece.first_year - series.first_year));
    series.widths.insert(series.widths.end(), piece.widths.begin(), piece.widths.end());
    for (auto& [year, comment] : piece.comments) {
        std::string& whole = series.comments[year];
        whole += (whole.empty() ? "" : "; ") + comment;
    }
    if (series.unit != piece.unit) {
        series.unit = WidthSeries::Unit::ThousandthMm;
    }
}

bool overlap(const WidthSeries& a, const WidthSeries& b) {
    return a.first_year <= b.last_year() && b.first_year <= a.last_year();
}

/// Names for the series that share theirs with an earlier one.
void rename_repeated(std::vector<WidthSeries>& series, const std::vector<std::size_t>& first_lines, Remarks& remarks) {
    std::vector<IdentifierRoom> wanted;
    wanted.reserve(series.size());
    for (const WidthSeries& one : series) {
        wanted.push_back({one.id, std::max(identifier_columns, columns(one.id)), false});
    }
    const auto names = fitting_identifiers(wanted);
    for (std::size_t i = 0; i < series.size(); ++i) {
        if (names[i] != series[i].id) {
            remarks.add("series " + as_utf8(series[i].id) +
                            " is there twice for the same years: the second is called " + as_utf8(names[i]),
                        first_lines[i]);
            series[i].id = names[i];
        }
    }
}

} // namespace

Outcome<std::vector<WidthSeries>> join_pieces(std::vector<Piece> pieces, Remarks& remarks) {
    std::vector<WidthSeries> all;
    std::vector<std::size_t> first_lines;
    std::map<std::string, std::size_t> by_name;
    std::size_t values = 0;
    for (Piece& piece : pieces) {
        const std::size_t line = piece.first_line;
        if (piece.steps.empty()) {
            remarks.add("series " + as_utf8(piece.identifier) + " has an end mark and no values", line);
            continue;
        }
        WidthSeries series = series_from(std::move(piece));
        values += series.widths.size();
        const auto found = by_name.find(series.id);
        if (found != by_name.end() && !overlap(all[found->second], series)) {
            WidthSeries& whole = all[found->second];
            const bool units_differ = whole.unit != series.unit;
            values -= whole.widths.size() + series.widths.size();
            remarks.add("series " + as_utf8(series.id) + " goes on after an end mark: the years between are a gap" +
                            (units_differ ? ", and its parts differ in unit" : ""),
                        line);
            attach(whole, std::move(series));
            values += whole.widths.size();
        } else {
            by_name.emplace(series.id, all.size());
            all.push_back(std::move(series));
            first_lines.push_back(line);
        }
        if (all.size() > most_series || values > most_values) {
            return too_many_values(line);
        }
    }
    if (all.empty()) {
        return fail("", "there are no measurements in this file", "check that it is a decadal file");
    }
    rename_repeated(all, first_lines, remarks);
    return all;
}

} // namespace pithward::formats
