#include "libcore/formats/decadal.h"
#include "libcore/formats/decadal_line.h"
#include "libcore/formats/identifiers.h"
#include "libcore/formats/remarks.h"
#include "libcore/formats/steps.h"

#include <algorithm>
#include <map>

namespace pithward {

using namespace formats;

namespace {

constexpr int gap_code = -999;
constexpr int least_four_column_year = -999;
constexpr int least_decadal_year = -greatest_decadal_year;
constexpr long long most_steps = 999'999;

std::string right_aligned(long long number, std::size_t width) {
    std::string text = std::to_string(number);
    text.insert(0, width > text.size() ? width - text.size() : 0, ' ');
    return text;
}

/// 0.01 mm only where that changes no value and writes no end mark as a value.
WidthSeries::Unit decadal_unit(const WidthSeries& series) {
    const auto unit = writing_unit(series);
    if (unit == WidthSeries::Unit::ThousandthMm) {
        return unit;
    }
    const bool reads_as_mark = std::ranges::any_of(
        series.widths, [&](const auto& width) { return width && steps(*width, unit) == mark_hundredth; });
    return reads_as_mark ? WidthSeries::Unit::ThousandthMm : unit;
}

Outcome<void> check_series(const WidthSeries& series) {
    if (auto checked = check_widths(series); !checked) {
        return checked;
    }
    const std::string name = "series " + as_utf8(series.id);
    if (!series.dated) {
        return fail(name, "it is undated, and a decadal file has calendar years",
                    "date it, or write a .csv or a .json file");
    }
    // The end mark may stand in the year after the last.
    if (series.first_year.value() < least_decadal_year || series.last_year().value() >= greatest_decadal_year) {
        return fail(name, "a decadal file has room for years from -9999 to 9998 only", "write a .csv or a .json file");
    }
    const auto unit = decadal_unit(series);
    for (const auto& width : series.widths) {
        if (width && steps(*width, unit) > most_steps) {
            return fail(name, "a width of " + width_text(*width, unit) + " mm has no room in six columns",
                        "check the width, or write a .csv or a .json file");
        }
    }
    return {};
}

IdentifierRoom room_for(const WidthSeries& series) {
    const int first = series.first_year.value();
    const int last = series.last_year().value() + 1;
    const bool long_years = first < least_four_column_year;
    return {series.id, long_years ? identifier_columns - 1 : identifier_columns, last >= 1000};
}

std::string head(const std::string& identifier, int year) {
    const std::size_t year_columns = year_end_column - identifier_columns + (year < least_four_column_year ? 1 : 0);
    std::string text = identifier;
    text.append(year_end_column - year_columns - columns(identifier), ' ');
    return text + right_aligned(year, year_columns);
}

/// Takes the comments out that belong to the years from `from` to before `end`.
std::string comments_between(std::map<Year, std::string>& comments, int from, int end) {
    std::string text;
    const auto first = comments.lower_bound(Year(from));
    const auto last = comments.lower_bound(Year(end));
    for (auto comment = first; comment != last; ++comment) {
        text += (text.empty() ? "" : "; ") + comment->second;
    }
    comments.erase(first, last);
    std::ranges::replace_if(text, is_control, ' ');
    return std::string(trimmed(text));
}

void write_series(std::ostream& out, const WidthSeries& series, const std::string& identifier) {
    const auto unit = decadal_unit(series);
    auto comments = series.comments;
    const int end = series.last_year().value() + 1; // The year in whose place the end mark stands.
    for (int year = series.first_year.value(); year <= end;) {
        const int next = std::min(decade_of(year) + 10, end + 1);
        std::string line = head(identifier, year);
        for (int y = year; y < next; ++y) {
            if (y == end) {
                const bool hundredth = unit == WidthSeries::Unit::HundredthMm;
                line += right_aligned(hundredth ? mark_hundredth : mark_thousandth, value_columns);
            } else {
                const auto& width = series.widths[static_cast<std::size_t>(y - series.first_year.value())];
                line += right_aligned(width ? steps(*width, unit) : gap_code, value_columns);
            }
        }
        const bool is_first = year == series.first_year.value();
        const bool is_last = next > end;
        const std::string comment =
            comments_between(comments, is_first ? 2 * least_year : year, is_last ? 2 * greatest_year : next);
        if (!comment.empty()) {
            line.append(comment_column - columns(line), ' ');
            line += ' ' + comment;
        }
        out << line << '\n';
        year = next;
    }
}

Outcome<std::vector<std::string>> headers_to_write(const WidthTable& table, Remarks& remarks) {
    std::vector<std::string> headers;
    for (std::size_t i = 0; i < table.headers.size(); ++i) {
        if (i == WidthTable::most_headers) {
            remarks.add("a decadal file has at most three header lines: the others are left out");
            break;
        }
        std::string header = table.headers[i];
        std::ranges::replace_if(
            header, [](char c) { return c == '\n' || c == '\r' || c == '\0'; }, ' ');
        if (!is_blank(header) && !is_decadal_header(header, i + 1)) {
            return fail("header line " + std::to_string(i + 1), "it would read as a line of measurements",
                        "put words into it, or leave it out");
        }
        headers.push_back(std::move(header));
    }
    return headers;
}

} // namespace

Outcome<std::vector<std::string>> write_decadal(std::ostream& out, const WidthTable& table) {
    Remarks remarks;
    const auto headers = headers_to_write(table, remarks);
    if (!headers) {
        return tl::unexpected(headers.error());
    }
    std::vector<const WidthSeries*> written;
    std::vector<IdentifierRoom> rooms;
    for (const WidthSeries& series : table.series) {
        if (series.widths.empty()) {
            remarks.add("series " + as_utf8(series.id) + " has no widths and is left out");
            continue;
        }
        if (auto checked = check_series(series); !checked) {
            return tl::unexpected(std::move(checked.error()));
        }
        written.push_back(&series);
        rooms.push_back(room_for(series));
    }
    if (written.empty()) {
        return fail("", "there is no series to write", "choose an input that holds widths");
    }
    const auto identifiers = fitting_identifiers(rooms);
    for (const std::string& header : *headers) {
        out << header << '\n';
    }
    for (std::size_t i = 0; i < written.size(); ++i) {
        const WidthSeries& series = *written[i];
        const std::string name = "series " + as_utf8(series.id);
        if (identifiers[i] != series.id) {
            remarks.add(name + " is called " + as_utf8(identifiers[i]) + " in the file: its identifier doesn't fit");
        }
        if (series.unit != decadal_unit(series)) {
            remarks.add(name + " is written in 0.001 mm: in 0.01 mm a value would change or read as an end mark");
        }
        write_series(out, series, identifiers[i]);
    }
    return remarks.list();
}

} // namespace pithward
