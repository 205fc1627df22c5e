#include "libcore/formats/archive_template.h"
#include "libcore/formats/remarks.h"
#include "libcore/formats/text_input.h"
#include "libcore/formats/year_columns.h"

#include <algorithm>
#include <map>
#include <optional>
#include <set>
#include <utility>

namespace pithward {

using namespace formats;

namespace {

constexpr std::string_view column_ending = "_raw";

std::vector<std::string_view> split(std::string_view text, char separator) {
    std::vector<std::string_view> parts;
    for (std::size_t end = text.find(separator); end != std::string_view::npos; end = text.find(separator)) {
        parts.push_back(text.substr(0, end));
        text.remove_prefix(end + 1);
    }
    parts.push_back(text);
    return parts;
}

/// What a ## line tells of a variable.
struct Variable {
    std::string name;
    std::string what;
    std::string unit;
    std::string tree_id;
    std::size_t line = 0;
};

/// "## name<tab>what,material,error,unit,seasonality,data type,detail,method,C or N,notes": some files have a space for
/// the tab.
Variable variable_from(std::string_view text, std::size_t line) {
    Variable variable;
    variable.line = line;
    const std::size_t gap = std::min(text.find('\t'), text.size());
    variable.name = trimmed(text.substr(0, gap));
    const auto parts = split(text.substr(std::min(gap + 1, text.size())), ',');
    variable.what = lower_case(trimmed(parts[0]));
    if (parts.size() > 3) {
        const std::string_view unit = parts[3];
        variable.unit =
            lower_case(trimmed(unit.substr(unit.rfind('>') == std::string_view::npos ? 0 : unit.rfind('>') + 1)));
    }
    constexpr std::string_view label = "Tree ID:";
    if (const std::size_t at = text.find(label); at != std::string_view::npos) {
        const std::string_view rest = text.substr(at + label.size());
        variable.tree_id = trimmed(rest.substr(0, rest.find(';')));
    }
    return variable;
}

/// Names of one variable differ in blanks and underscores between the ## lines and the table.
std::string bare(std::string_view name) {
    std::string kept;
    std::ranges::copy_if(name, std::back_inserter(kept), [](char c) { return c != ' ' && c != '_'; });
    return kept;
}

class TemplateReader {
public:
    Outcome<void> take(const Line& line) {
        if (line.text.starts_with('#')) {
            take_metadata(line);
            return {};
        }
        if (is_blank(line.text)) {
            return {};
        }
        return columns_.has_value() ? take_widths(line) : take_header(line);
    }

    Outcome<WidthTable> finish() {
        if (!columns_) {
            return fail("", "there is no table in this file",
                        "check that it is an archive template; a decadal file must be named .rwl");
        }
        auto table = columns_->table();
        if (table) {
            table->headers = std::move(headers_);
            const auto noticed = remarks_.list();
            table->remarks.insert(table->remarks.begin(), noticed.begin(), noticed.end());
            warn_of_raw_units(*table);
        }
        return table;
    }

private:
    void take_metadata(const Line& line) {
        const std::string_view text = line.text;
        constexpr std::string_view header_label = "Decadal_Header_";
        constexpr std::string_view missing_label = "# Missing_Values:";
        if (text.starts_with("##")) {
            Variable variable = variable_from(text.substr(2), line.number);
            variables_.emplace(bare(variable.name), std::move(variable));
        } else if (text.starts_with(missing_label)) {
            for (const std::string_view word : split(text.substr(missing_label.size()), ',')) {
                missing_.insert(std::string(trimmed(word, " \t;")));
            }
        } else if (const std::size_t at = text.find(header_label); at != std::string_view::npos) {
            const std::size_t colon = text.find(": ", at);
            if (colon == at + header_label.size() + 1 && headers_.size() < WidthTable::most_headers) {
                headers_.emplace_back(text.substr(colon + 2));
            }
        }
    }

    Outcome<void> take_header(const Line& line) {
        const auto names = split(line.text, '\t');
        const std::string key = lower_case(trimmed(names.front()));
        if (key != "age_ce" && key != "year" && key != "year_ce") {
            return fail(place(line.number, 1), "the table does not begin with a column age_CE",
                        "check that it is an archive template with years CE; a decadal file must be named .rwl");
        }
        std::vector<std::string> identifiers;
        for (std::size_t i = 1; i < names.size(); ++i) {
            const std::string_view name = trimmed(names[i]);
            if (name.empty()) {
                targets_.push_back({});
                continue;
            }
            if (columns(name) > longest_identifier + column_ending.size() || identifiers.size() == most_series) {
                return fail(place(line.number), "a name of more than 200 characters, or more series than can be read",
                            "check that it is the right file");
            }
            const auto target = target_for(name, identifiers, line.number);
            if (!target) {
                return tl::unexpected(target.error());
            }
            targets_.push_back(*target);
        }
        if (identifiers.empty()) {
            return fail(place(line.number), "the table has no series", "check that it is the right file");
        }
        columns_.emplace(std::move(identifiers));
        return {};
    }

    /// Where the values of a column go.
    struct Target {
        std::optional<std::size_t> column; ///< Nothing: they are left out.
        double mm = 1.0;                   ///< Per unit of the values.
    };

    /// What the ## lines say of a column: the line of that very name, or else of one that differs in blanks only.
    [[nodiscard]] const Variable* variable_of(std::string_view name) const {
        const auto [begin, end] = variables_.equal_range(bare(name));
        const auto exact = std::find_if(begin, end, [&](const auto& one) { return one.second.name == name; });
        const auto found = exact != end ? exact : begin;
        return found == end ? nullptr : &found->second;
    }

    Outcome<Target> target_for(std::string_view name, std::vector<std::string>& identifiers, std::size_t line) {
        const Variable* variable = variable_of(name);
        Target target;
        std::string identifier(name.ends_with(column_ending) ? name.substr(0, name.size() - column_ending.size())
                                                             : name);
        if (variable != nullptr) {
            if (!variable->what.empty() && variable->what.find("width") == std::string::npos) {
                remarks_.add("column " + as_utf8(name) + " holds no ring widths and is left out", line);
                return target;
            }
            if (variable->unit == "micrometer" || variable->unit == "micrometre") {
                target.mm = 0.001;
            } else if (!variable->unit.empty() && variable->unit != "millimeter" && variable->unit != "millimetre" &&
                       variable->unit != "mm") {
                return fail(place(variable->line), "widths in '" + as_utf8(variable->unit) + "' can't be read",
                            "give them in millimeter or micrometer");
            }
            // Some files repeat the column's name there.
            const bool is_identifier = !variable->tree_id.empty() && variable->tree_id != name;
            if (is_identifier && columns(variable->tree_id) <= longest_identifier) {
                identifier = variable->tree_id;
            }
        }
        target.column = identifiers.size();
        identifiers.push_back(std::move(identifier));
        return target;
    }

    Outcome<void> take_widths(const Line& line) {
        const auto cells = split(line.text, '\t');
        const auto year = decimal_number(trimmed(cells.front()));
        if (!year || *year < least_year || *year > greatest_year || *year != static_cast<int>(*year)) {
            return fail(place(line.number, 1), "'" + as_utf8(trimmed(cells.front())) + "' is no year",
                        "begin each row of the table with a whole year");
        }
        if (!years_.insert(static_cast<int>(*year)).second) {
            return fail(place(line.number, 1), "this year is there twice", "leave out or correct one of the two rows");
        }
        std::size_t column = cells.front().size() + 2;
        for (std::size_t i = 1; i < cells.size(); ++i) {
            const std::string_view cell = trimmed(cells[i]);
            if (auto taken = take_cell(cell, i - 1, static_cast<int>(*year), line.number, column); !taken) {
                return taken;
            }
            column += cells[i].size() + 1;
        }
        if (cells.size() < targets_.size() + 1) {
            remarks_.add("a row has fewer cells than the table has columns: the last are read as missing", line.number);
        }
        return {};
    }

    Outcome<void> take_cell(std::string_view cell, std::size_t index, int year, std::size_t line, std::size_t column) {
        if (cell.empty() || cell == "NA" || cell == "NaN" || missing_.contains(std::string(cell))) {
            return {};
        }
        if (index >= targets_.size()) {
            return fail(place(line, column), "there is no series above this cell",
                        "name the column, or empty the cell");
        }
        const Target& target = targets_[index];
        if (!target.column) {
            return {};
        }
        const auto width = decimal_number(cell);
        if (!width || *width > greatest_width_mm) {
            return fail(place(line, column), "'" + as_utf8(cell) + "' is no width", "write a number or NA");
        }
        if (*width < 0.0) {
            remarks_.add("a negative number is read as a gap", line);
            return {};
        }
        if (++values_ > most_values) {
            return fail(place(line), "the table holds more values than can be read", "divide the file");
        }
        const std::size_t places = decimals(cell) + (target.mm < 1.0 ? 3 : 0);
        columns_->put_year(*target.column, year, target.mm < 1.0 ? *width / 1000.0 : *width, places);
        return {};
    }

    /// Some files of the archive give lengths in the raw unit of their decadal file. They can't be told from wide rings
    /// with certainty, so they are read as they stand, with a warning.
    void warn_of_raw_units(WidthTable& table) const {
        constexpr double improbable_mm = 30.0;
        std::size_t wide = 0;
        for (const WidthSeries& series : table.series) {
            wide += static_cast<std::size_t>(std::ranges::count_if(
                series.widths, [](const auto& width) { return width && width->value() > improbable_mm; }));
        }
        if (2 * wide > values_) {
            table.remarks.emplace_back("most widths are over 30 mm: the file may hold raw steps of 0.01 or 0.001 mm; "
                                       "they are read as mm, as it says");
        }
    }

    std::multimap<std::string, Variable> variables_;
    std::set<std::string> missing_;
    std::vector<std::string> headers_;
    std::vector<Target> targets_;
    std::optional<YearColumns> columns_;
    std::set<int> years_;
    std::size_t values_ = 0;
    Remarks remarks_;
};

} // namespace

Outcome<WidthTable> read_archive_template(std::istream& in) {
    const auto text = read_utf8(in);
    if (!text) {
        return tl::unexpected(text.error());
    }
    const auto lines = split_lines(*text);
    if (!lines) {
        return tl::unexpected(lines.error());
    }
    TemplateReader reader;
    for (const Line& line : *lines) {
        if (auto taken = reader.take(line); !taken) {
            return tl::unexpected(std::move(taken.error()));
        }
    }
    return reader.finish();
}

} // namespace pithward
