#include "libcore/formats/series_csv.h"

#include "libcore/formats/csv_rows.h"
#include "libcore/formats/identifiers.h"
#include "libcore/formats/remarks.h"
#include "libcore/formats/steps.h"
#include "libcore/formats/text_input.h"
#include "libcore/formats/year_columns.h"

#include <algorithm>
#include <memory>
#include <optional>
#include <set>
#include <utility>

namespace pithward {

using namespace formats;

namespace {

bool is_empty_cell(std::string_view text) {
    return text.empty() || text == "NA" || text == "NaN";
}

/// A text without the lines at its start that only say something of it; they tell nothing of the separator.
std::string_view after_remarks(std::string_view text) {
    while (text.starts_with('#') || text.starts_with("\"#")) {
        text.remove_prefix(std::min(text.find_first_of("\r\n"), text.size()));
        text.remove_prefix(std::min(text.find_first_not_of("\r\n"), text.size()));
    }
    return text;
}

/// Takes the rows of a table one by one.
class CsvSeriesReader {
public:
    explicit CsvSeriesReader(CsvDialect dialect)
        : dialect_(dialect) {}

    Outcome<void> take(const CsvRow& row) {
        if (!columns_ && row.front().text.starts_with('#')) {
            take_remark(row.front().text);
            return {};
        }
        return columns_ ? take_widths(row) : take_header(row);
    }

    Outcome<WidthTable> finish() const {
        if (!columns_) {
            return fail("", "the file is empty", "give a table with a header row that begins with year or ring");
        }
        return columns_->table().map([&](WidthTable table) {
            table.headers = headers_;
            return table;
        });
    }

private:
    void take_remark(std::string_view text) {
        if (headers_.size() < WidthTable::most_headers) {
            headers_.emplace_back(trimmed(text.substr(1)));
        }
    }

    Outcome<void> take_header(const CsvRow& row) {
        std::size_t keys = 0;
        const auto is_key = [&](const char* word) { return keys < row.size() && lower_case(row[keys].text) == word; };
        if (is_key("year")) {
            year_key_ = keys++;
        }
        if (is_key("ring")) {
            ring_key_ = keys++;
        }
        if (keys == 0) {
            return csv_fault(row.front(), "the first column must be called year or ring",
                             "put the years down and the series across, under a header row");
        }
        keys_ = keys;
        std::vector<std::string> identifiers;
        for (std::size_t i = keys; i < row.size(); ++i) {
            if (columns(row[i].text) > longest_identifier) {
                return csv_fault(row[i], "an identifier of more than 200 characters", "shorten it");
            }
            identifiers.push_back(row[i].text);
        }
        while (!identifiers.empty() && identifiers.back().empty()) {
            identifiers.pop_back(); // Spreadsheets write empty columns at the end.
        }
        if (identifiers.empty() || identifiers.size() > most_series) {
            return csv_fault(row.front(), "the header row names no series, or more than can be read",
                             "check that it is the right file");
        }
        if (const auto unnamed = std::ranges::find(identifiers, ""); unnamed != identifiers.end()) {
            return csv_fault(row[keys + static_cast<std::size_t>(unnamed - identifiers.begin())],
                             "this column has no name", "name the series");
        }
        width_ = keys + identifiers.size();
        columns_ = std::make_unique<YearColumns>(std::move(identifiers));
        return {};
    }

    Outcome<void> take_widths(const CsvRow& row) {
        if (std::ranges::all_of(row, [](const CsvField& field) { return field.text.empty(); })) {
            return {};
        }
        const CsvField* year = key(row, year_key_);
        const CsvField* ring = key(row, ring_key_);
        if ((year != nullptr) == (ring != nullptr)) {
            return csv_fault(row.front(),
                             year != nullptr ? "a row has a year or a ring, not both" : "the year is missing",
                             "give each row one year, or one ring number in the column ring");
        }
        const CsvField& at = year != nullptr ? *year : *ring;
        const auto number = whole_number(at.text);
        const int least = year != nullptr ? least_year : 1;
        if (!number || *number < least || *number > greatest_year) {
            return csv_fault(at, "'" + as_utf8(at.text) + "' is no " + (year != nullptr ? "year" : "ring number"),
                             "write a whole number from " + std::to_string(least) + " to " +
                                 std::to_string(greatest_year));
        }
        auto& seen = year != nullptr ? years_ : rings_;
        if (!seen.insert(*number).second) {
            return csv_fault(at, at.text + " is there twice", "leave out or correct one of the two rows");
        }
        return take_cells(row, *number, year != nullptr);
    }

    Outcome<void> take_cells(const CsvRow& row, int number, bool dated) {
        for (std::size_t i = keys_; i < row.size(); ++i) {
            const CsvField& cell = row[i];
            if (is_empty_cell(cell.text)) {
                continue;
            }
            if (i >= width_) {
                return csv_fault(cell, "there is no series above this cell", "name the column, or empty the cell");
            }
            const auto width = decimal_number(cell.text, dialect_.decimal_comma());
            if (!width || *width < 0.0 || *width > greatest_width_mm) {
                return csv_fault(cell, "'" + as_utf8(cell.text) + "' is no width in mm",
                                 "write a number, 0 for a locally absent ring, or leave the cell empty for a gap");
            }
            if (dated) {
                columns_->put_year(i - keys_, number, *width, decimals(cell.text));
            } else {
                columns_->put_ring(i - keys_, number, *width, decimals(cell.text));
            }
            if (++values_ > most_values) {
                return csv_fault(cell, "the table holds more values than can be read", "divide the file");
            }
        }
        return {};
    }

    static const CsvField* key(const CsvRow& row, std::optional<std::size_t> at) {
        return at && *at < row.size() && !row[*at].text.empty() ? &row[*at] : nullptr;
    }

    CsvDialect dialect_;
    std::vector<std::string> headers_;
    std::optional<std::size_t> year_key_;
    std::optional<std::size_t> ring_key_;
    std::size_t keys_ = 0;
    std::size_t width_ = 0;
    std::size_t values_ = 0;
    std::set<int> years_;
    std::set<int> rings_;
    std::unique_ptr<YearColumns> columns_;
};

/// The series of a table that can be written, and the names of their columns.
struct CsvColumns {
    std::vector<const WidthSeries*> series;
    std::vector<std::string> names;
    bool with_years = false;
    bool with_rings = false;
};

Outcome<CsvColumns> columns_to_write(const WidthTable& table, Remarks& remarks) {
    CsvColumns columns;
    std::vector<IdentifierRoom> rooms;
    for (const WidthSeries& series : table.series) {
        const std::string name = "series " + as_utf8(series.id);
        if (std::ranges::none_of(series.widths, [](const auto& width) { return width.has_value(); })) {
            remarks.add(name + " has no width and is left out");
            continue;
        }
        if (auto checked = check_widths(series); !checked) {
            return tl::unexpected(std::move(checked.error()));
        }
        if (series.first_year.value() < least_year || series.last_year().value() > greatest_year) {
            return fail(name, "its years lie outside -20000 to 20000", "correct them");
        }
        columns.series.push_back(&series);
        rooms.push_back({as_utf8(series.id), longest_identifier, false});
        // A series called ring in the second column would read as the column of ring numbers.
        const bool name_is_key = lower_case(series.id) == "ring";
        columns.with_years = columns.with_years || series.dated || name_is_key;
        columns.with_rings = columns.with_rings || !series.dated || name_is_key;
    }
    if (columns.series.empty()) {
        return fail("", "there is no series to write", "choose an input that holds widths");
    }
    columns.names = fitting_identifiers(rooms);
    for (std::size_t i = 0; i < columns.names.size(); ++i) {
        if (columns.names[i] != columns.series[i]->id) {
            remarks.add("series " + as_utf8(columns.series[i]->id) + " is called " + columns.names[i] + " in the file");
        }
    }
    return columns;
}

/// The width of a series in a year, or at a ring that counts from the bark.
std::optional<Millimetres> width_at(const WidthSeries& series, int number, bool dated) {
    if (series.dated != dated) {
        return std::nullopt;
    }
    const auto size = static_cast<long long>(series.widths.size());
    const long long index = dated ? static_cast<long long>(number) - series.first_year.value() : size - number;
    return index >= 0 && index < size ? series.widths[static_cast<std::size_t>(index)] : std::nullopt;
}

void write_rows(std::ostream& out, const CsvColumns& columns, int from, int to, bool dated) {
    std::vector<WidthSeries::Unit> units;
    for (const WidthSeries* series : columns.series) {
        units.push_back(writing_unit(*series));
    }
    for (int number = from; number <= to; ++number) {
        const std::string text = std::to_string(number);
        std::string row = columns.with_years && !dated ? "," + text : text;
        row += columns.with_rings && columns.with_years && dated ? "," : "";
        for (std::size_t i = 0; i < columns.series.size(); ++i) {
            const auto width = width_at(*columns.series[i], number, dated);
            row += ',';
            row += width ? width_text(*width, units[i]) : "";
        }
        out << row << '\n';
    }
}

} // namespace

Outcome<WidthTable> read_series_csv(std::istream& in) {
    const auto text = read_utf8(in);
    if (!text) {
        return tl::unexpected(text.error());
    }
    const CsvDialect dialect = csv_dialect(after_remarks(*text));
    CsvSeriesReader reader(dialect);
    auto read = read_csv_rows(*text, dialect, [&](const CsvRow& row) { return reader.take(row); });
    if (!read) {
        return tl::unexpected(std::move(read.error()));
    }
    return reader.finish();
}

void write_csv_headers(std::ostream& out, std::span<const std::string> headers) {
    for (std::string line : headers) {
        std::ranges::replace_if(line, is_control, ' ');
        line.insert(0, "# ");
        out << csv_field(line) << '\n';
    }
}

Outcome<std::vector<std::string>> write_series_csv(std::ostream& out, const WidthTable& table) {
    Remarks remarks;
    const auto columns = columns_to_write(table, remarks);
    if (!columns) {
        return tl::unexpected(columns.error());
    }
    int first = greatest_year;
    int last = least_year;
    int rings = 0;
    std::string header = columns->with_years ? "year" : "";
    header += columns->with_rings ? (header.empty() ? "ring" : ",ring") : "";
    for (std::size_t i = 0; i < columns->series.size(); ++i) {
        const WidthSeries& series = *columns->series[i];
        header += ',' + csv_field(columns->names[i]);
        if (series.dated) {
            first = std::min(first, series.first_year.value());
            last = std::max(last, series.last_year().value());
        } else {
            rings = std::max(rings, static_cast<int>(series.widths.size()));
        }
    }
    out << header << '\n';
    write_rows(out, *columns, first, last, true);
    write_rows(out, *columns, 1, rings, false);
    if (!table.headers.empty()) {
        remarks.add("the header lines have no place in a CSV and are left out");
    }
    return remarks.list();
}

} // namespace pithward
