#include "libcore/formats/series_json.h"

#include "libcore/formats/identifiers.h"
#include "libcore/formats/json_input.h"
#include "libcore/formats/json_numbers.h"
#include "libcore/formats/reading_series.h"
#include "libcore/formats/remarks.h"
#include "libcore/formats/steps.h"
#include "libcore/formats/text_input.h"

#include <algorithm>
#include <utility>

namespace pithward {

using namespace formats;
using nlohmann::json;
using nlohmann::ordered_json;

namespace {

Outcome<std::map<Year, std::string>> comments_from(const json& value, const std::string& where) {
    std::map<Year, std::string> comments;
    if (value.is_null()) {
        return comments;
    }
    const auto broken = fail(where, "comments must be texts by year", R"(write for instance {"1850": "text"})");
    if (!value.is_object()) {
        return broken;
    }
    for (const auto& [key, text] : value.items()) {
        const auto year = whole_number(key);
        if (!year || *year < least_year || *year > greatest_year + 1 || !text.is_string()) {
            return broken;
        }
        comments.emplace(*year, text_from(text));
    }
    return comments;
}

Outcome<WidthSeries> series_from(const json& value, const std::string& where) {
    WidthSeries series;
    const auto id = short_text(member(value, "id"));
    if (!id || id->empty()) {
        return fail(where, "it has no usable id", "give it an id of 1 to 200 characters");
    }
    series.id = *id;
    const std::string name = where + " (" + *id + ")";
    const json& widths = member(value, "widths_mm");
    if (!widths.is_array() || widths.empty() || widths.size() > static_cast<std::size_t>(greatest_year)) {
        return fail(name, "it has no list widths_mm, or one of no usable length", "give one width a year");
    }
    const json& first = member(value, "first_year");
    const auto first_year = first.is_null() ? std::optional(1) : whole_in(first, least_year, greatest_year);
    series.dated = !first.is_null();
    if (!first_year || *first_year + static_cast<int>(widths.size()) - 1 > greatest_year) {
        return fail(name, "its first_year is no usable year",
                    "give a whole number, or null for an undated series, so that all years lie in -20000 to 20000");
    }
    series.first_year = Year(*first_year);
    const int last_year = *first_year + static_cast<int>(widths.size()) - 1;
    if (const json& told = member(value, "last_year"); !told.is_null() && (first.is_null() || told != last_year)) {
        return fail(name + ", last_year",
                    first.is_null() ? "it is given, and first_year is not"
                                    : "it should be " + std::to_string(last_year) + ", by first_year and the " +
                                          std::to_string(widths.size()) + " widths",
                    "correct it, or leave it out");
    }
    const json& step = member(value, "step_mm");
    series.unit = step == 0.01 ? WidthSeries::Unit::HundredthMm : WidthSeries::Unit::ThousandthMm;
    for (std::size_t i = 0; i < widths.size(); ++i) {
        const auto width = width_from(widths[i], name + ", " + nth("width", i));
        if (!width) {
            return tl::unexpected(width.error());
        }
        series.widths.push_back(*width);
    }
    auto comments = comments_from(member(value, "comments"), name);
    if (!comments) {
        return tl::unexpected(std::move(comments.error()));
    }
    series.comments = std::move(*comments);
    return series;
}

Outcome<std::vector<std::string>> headers_from(const json& value) {
    std::vector<std::string> headers;
    if (value.is_null()) {
        return headers;
    }
    const bool usable = value.is_array() && value.size() <= WidthTable::most_headers &&
                        std::ranges::all_of(value, [](const json& line) { return line.is_string(); });
    if (!usable) {
        return fail("headers", "they must be at most three texts", "shorten the list, or leave it out");
    }
    for (const json& line : value) {
        headers.push_back(text_from(line));
    }
    return headers;
}

Outcome<WidthTable> table_from_series(const json& root) {
    WidthTable table;
    const json& list = member(root, "series");
    if (list.size() > most_series) {
        return fail("series", "there are more than 20,000", "divide the file");
    }
    auto headers = headers_from(member(root, "headers"));
    if (!headers) {
        return tl::unexpected(std::move(headers.error()));
    }
    table.headers = std::move(*headers);
    std::vector<IdentifierRoom> rooms;
    for (std::size_t i = 0; i < list.size(); ++i) {
        auto series = series_from(list[i], nth("series", i));
        if (!series) {
            return tl::unexpected(std::move(series.error()));
        }
        rooms.push_back({series->id, longest_identifier, false});
        table.series.push_back(std::move(*series));
    }
    const auto identifiers = fitting_identifiers(rooms);
    for (std::size_t i = 0; i < identifiers.size(); ++i) {
        if (identifiers[i] != table.series[i].id) {
            table.remarks.push_back("the id " + table.series[i].id + " is there twice: the second is called " +
                                    identifiers[i]);
            table.series[i].id = identifiers[i];
        }
    }
    return table;
}

ordered_json json_of(const WidthSeries& series, const std::string& id) {
    ordered_json value;
    value["id"] = id;
    value["first_year"] = series.dated ? ordered_json(series.first_year.value()) : ordered_json();
    value["last_year"] = series.dated ? ordered_json(series.last_year().value()) : ordered_json();
    value["step_mm"] = series.unit == WidthSeries::Unit::HundredthMm ? 0.01 : 0.001;
    ordered_json& widths = value["widths_mm"] = ordered_json::array();
    for (const auto& width : series.widths) {
        widths.push_back(width ? json_number(width->value(), millimetre_digits) : ordered_json());
    }
    if (!series.comments.empty()) {
        ordered_json& comments = value["comments"] = ordered_json::object();
        for (const auto& [year, text] : series.comments) {
            comments[std::to_string(year.value())] = as_utf8(text);
        }
    }
    return value;
}

} // namespace

Outcome<WidthTable> read_series_json(std::istream& in) {
    const auto root = read_json(in);
    if (!root) {
        return tl::unexpected(root.error());
    }
    if (const json& series = member(*root, "series"); series.is_array() && !series.empty()) {
        return table_from_series(*root);
    }
    if (const json& readings = member(*root, "readings"); readings.is_array()) {
        return series_of_readings(readings);
    }
    return fail("", "there is no series in this JSON file",
                "give it a list called series, as pithward convert writes, or readings, as pithward measure does");
}

Outcome<std::vector<std::string>> write_series_json(std::ostream& out, const WidthTable& table) {
    Remarks remarks;
    std::vector<const WidthSeries*> written;
    std::vector<IdentifierRoom> rooms;
    for (const WidthSeries& series : table.series) {
        const std::string name = "series " + as_utf8(series.id);
        if (series.widths.empty()) {
            remarks.add(name + " has no widths and is left out");
            continue;
        }
        if (auto checked = check_widths(series); !checked) {
            return tl::unexpected(std::move(checked.error()));
        }
        if (series.first_year.value() < least_year || series.last_year().value() > greatest_year) {
            return fail(name, "its years lie outside -20000 to 20000", "correct them");
        }
        written.push_back(&series);
        rooms.push_back({as_utf8(series.id), longest_identifier, false});
    }
    if (written.empty()) {
        return fail("", "there is no series to write", "choose an input that holds widths");
    }
    const auto identifiers = fitting_identifiers(rooms);
    ordered_json root;
    ordered_json& headers = root["headers"] = ordered_json::array();
    for (const std::string& header : table.headers) {
        headers.push_back(as_utf8(header));
    }
    ordered_json& list = root["series"] = ordered_json::array();
    for (std::size_t i = 0; i < written.size(); ++i) {
        list.push_back(json_of(*written[i], identifiers[i]));
        if (identifiers[i] != written[i]->id) {
            remarks.add("series " + as_utf8(written[i]->id) + " is called " + identifiers[i] + " in the file");
        }
    }
    out << root.dump(1) << '\n';
    return remarks.list();
}

} // namespace pithward
