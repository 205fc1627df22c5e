#include "libcore/formats/year_columns.h"

#include "libcore/formats/identifiers.h"
#include "libcore/formats/steps.h"
#include "libcore/formats/text_input.h"

#include <algorithm>
#include <utility>

namespace pithward::formats {

YearColumns::YearColumns(std::vector<std::string> identifiers)
    : columns_(identifiers.size()) {
    for (std::size_t i = 0; i < identifiers.size(); ++i) {
        columns_[i].identifier = std::move(identifiers[i]);
    }
}

void YearColumns::put_year(std::size_t column, int year, double width_mm, std::size_t decimals) {
    columns_[column].years.push_back({year, width_mm});
    columns_[column].decimals = std::max(columns_[column].decimals, decimals);
}

void YearColumns::put_ring(std::size_t column, int ring, double width_mm, std::size_t decimals) {
    columns_[column].rings.push_back({ring, width_mm});
    columns_[column].decimals = std::max(columns_[column].decimals, decimals);
}

WidthSeries YearColumns::series_of(const Column& column) {
    WidthSeries series;
    series.id = column.identifier;
    series.unit = unit_for_decimals(column.decimals);
    series.dated = !column.years.empty();
    const auto& cells = series.dated ? column.years : column.rings;
    const auto [least, greatest] = std::ranges::minmax(cells, {}, &Cell::at);
    // Rings count inward from the bark, so the outermost is there even where it has no width.
    const int oldest = series.dated ? least.at : greatest.at;
    series.first_year = series.dated ? Year(oldest) : Year(1);
    series.widths.resize(static_cast<std::size_t>(series.dated ? greatest.at - oldest + 1 : oldest));
    for (const Cell& cell : cells) {
        series.widths[static_cast<std::size_t>(std::abs(cell.at - oldest))] = Millimetres(cell.width_mm);
    }
    return series;
}

Outcome<WidthTable> YearColumns::table() const {
    WidthTable table;
    std::size_t values = 0;
    for (const Column& column : columns_) {
        if (column.years.empty() && column.rings.empty()) {
            table.remarks.push_back("series " + as_utf8(column.identifier) + " has no width and is left out");
            continue;
        }
        if (!column.years.empty() && !column.rings.empty()) {
            return fail("series " + as_utf8(column.identifier), "it has widths for years and for rings without years",
                        "make two series of it, or give all its rings a year");
        }
        table.series.push_back(series_of(column));
        values += table.series.back().widths.size();
        if (values > most_values) {
            return fail("series " + as_utf8(column.identifier), "the table holds more years than can be read",
                        "check the years, or divide the file");
        }
    }
    if (table.series.empty()) {
        return fail("", "there is no width in this file", "check that it is the right file");
    }
    std::vector<IdentifierRoom> rooms;
    for (const WidthSeries& series : table.series) {
        rooms.push_back({series.id, longest_identifier, false});
    }
    const auto identifiers = fitting_identifiers(rooms);
    for (std::size_t i = 0; i < identifiers.size(); ++i) {
        if (identifiers[i] != table.series[i].id) {
            table.remarks.push_back("series " + as_utf8(table.series[i].id) + " is called " + as_utf8(identifiers[i]) +
                                    " here: its identifier is there twice or is no plain text");
            table.series[i].id = identifiers[i];
        }
    }
    return table;
}

} // namespace pithward::formats
