#include "libcore/formats/archive_template.h"
#include "libcore/formats/identifiers.h"
#include "libcore/formats/remarks.h"
#include "libcore/formats/steps.h"
#include "libcore/formats/text_input.h"

#include <algorithm>
#include <iomanip>
#include <locale>
#include <sstream>

namespace pithward {

using namespace formats;

namespace {

std::string in_one_line(std::string_view text) {
    std::string line = as_utf8(text);
    std::ranges::replace_if(
        line, [](char c) { return c == '\n' || c == '\r' || c == '\0'; }, ' ');
    return line;
}

/// The template's parts are set apart by these.
constexpr const char* dashes = "#--------------------\n";

std::string decimal(const std::optional<double>& value, int digits) {
    std::ostringstream text;
    text.imbue(std::locale::classic());
    if (value) {
        text << std::fixed << std::setprecision(digits) << *value;
    }
    return text.str();
}

/// A line of metadata: "#   Name: what", with nothing after the colon where nothing is known.
void put(std::ostream& out, const char* name, const std::string& what = {}) {
    out << "#   " << name << ':' << (what.empty() ? "" : " ") << in_one_line(what) << '\n';
}

/// The bank's outline of metadata, with what is not known left empty.
void write_outline(std::ostream& out, const StudyNotes& notes) {
    constexpr int degree_digits = 4;
    out << "#----------------------------------------------------\n# Template Version 4.0\n# Encoding: UTF-8\n#\n"
           "# Description/Documentation lines begin with #\n# Data lines have no #\n#\n# NOAA_Landing_Page:\n"
           "# Data_Type: Tree Ring\n# Dataset_DOI:\n"
        << dashes << "# Contribution_Date\n";
    put(out, "Date");
    out << dashes << "# Title\n";
    put(out, "Study_Name", notes.sites);
    out << dashes << "# Investigators\n";
    put(out, "Investigators", notes.collectors);
    out << dashes << "# Publication\n";
    for (const char* name : {"Authors", "Published_Title", "DOI"}) {
        put(out, name);
    }
    out << dashes << "# Funding_Agency\n";
    put(out, "Funding_Agency_Name");
    put(out, "Grant");
    out << dashes << "# Site_Information\n";
    put(out, "Site_Name", notes.sites);
    put(out, "Location");
    put(out, "Northernmost_Latitude", decimal(notes.north, degree_digits));
    put(out, "Southernmost_Latitude", decimal(notes.south, degree_digits));
    put(out, "Easternmost_Longitude", decimal(notes.east, degree_digits));
    put(out, "Westernmost_Longitude", decimal(notes.west, degree_digits));
    put(out, "Elevation_m", decimal(notes.elevation_m, 0));
    out << dashes;
}

void write_collection(std::ostream& out, const WidthTable& table, const StudyNotes& notes, int first, int last) {
    out << "# Data_Collection\n";
    put(out, "Collection_Name");
    put(out, "First_Year", std::to_string(first));
    put(out, "Last_Year", std::to_string(last));
    put(out, "Time_Unit", "CE");
    put(out, "Parameter_Keywords", "ring width");
    put(out, "Notes", notes.notes);
    for (std::size_t i = 0; i < table.headers.size(); ++i) {
        // With its blank, so that a header without text is told from no header.
        out << "#   Decadal_Header_" << std::to_string(i + 1) << ": " << in_one_line(table.headers[i]) << '\n';
    }
    out << dashes << "# Species\n";
    put(out, "Species_Name", notes.species);
    put(out, "Common_Name");
    put(out, "Tree_Species_Code");
    out << dashes;
}

/// Names of columns: identifiers with an underscore for each blank, all different.
std::vector<std::string> column_names(const std::vector<std::string>& identifiers) {
    std::vector<IdentifierRoom> rooms;
    for (std::string name : identifiers) {
        std::ranges::replace_if(
            name, [](char c) { return c == ' ' || c == ',' || c == ';' || is_control(c); }, '_');
        rooms.push_back({std::move(name), longest_identifier, false});
    }
    return fitting_identifiers(rooms);
}

void write_variables(std::ostream& out, const std::vector<std::string>& names,
                     const std::vector<std::string>& identifiers) {
    out << "# Variables\n#\n"
           "# Data variables follow that are preceded by '##' in columns one and two.\n"
           "# Variables format: shortname-tab-var components: what, material, error, units, seasonality, data type, "
           "detail, method, C or N for Character or Numeric data)\n#\n"
           "## age_CE\tage,,,year Common Era,,tree ring,,,N,\n";
    for (std::size_t i = 0; i < names.size(); ++i) {
        out << "## " << names[i] << "_raw\ttotal ring width,,,millimeter,,tree ring,,,N,Tree ID: " << identifiers[i]
            << '\n';
    }
    out << "#---------------------\n# Data:\n# Missing_Values: NA\n";
}

void write_table(std::ostream& out, const std::vector<const WidthSeries*>& series,
                 const std::vector<std::string>& names, int first, int last) {
    out << "age_CE";
    for (const std::string& name : names) {
        out << '\t' << name << "_raw";
    }
    out << '\n';
    std::vector<WidthSeries::Unit> units;
    units.reserve(series.size());
    for (const WidthSeries* one : series) {
        units.push_back(writing_unit(*one));
    }
    for (int year = first; year <= last; ++year) {
        std::string row = std::to_string(year);
        for (std::size_t i = 0; i < series.size(); ++i) {
            const auto& widths = series[i]->widths;
            const long long index = static_cast<long long>(year) - series[i]->first_year.value();
            const bool inside = index >= 0 && index < static_cast<long long>(widths.size());
            const auto width = inside ? widths[static_cast<std::size_t>(index)] : std::nullopt;
            row += '\t' + (width ? width_text(*width, units[i]) : "NA");
        }
        out << row << '\n';
    }
}

} // namespace

Outcome<std::vector<std::string>> write_archive_template(std::ostream& out, const WidthTable& table,
                                                         const StudyNotes& notes) {
    Remarks remarks;
    std::vector<const WidthSeries*> written;
    std::vector<std::string> wanted;
    int first = greatest_year;
    int last = least_year;
    for (const WidthSeries& series : table.series) {
        const std::string name = "series " + as_utf8(series.id);
        if (std::ranges::none_of(series.widths, [](const auto& width) { return width.has_value(); })) {
            remarks.add(name + " has no width and is left out");
            continue;
        }
        if (!series.dated) {
            return fail(name, "it is undated, and the archive template is a table of calendar years",
                        "date it, or write a .csv or a .json file");
        }
        if (series.first_year.value() < least_year || series.last_year().value() > greatest_year) {
            return fail(name, "its years lie outside -20000 to 20000", "correct them");
        }
        if (auto checked = check_widths(series); !checked) {
            return tl::unexpected(std::move(checked.error()));
        }
        first = std::min(first, series.first_year.value());
        last = std::max(last, series.last_year().value());
        written.push_back(&series);
        wanted.push_back(as_utf8(series.id));
        std::ranges::replace(wanted.back(), ';', '_'); // It ends the identifier in a ## line.
    }
    if (written.empty()) {
        return fail("", "there is no series to write", "choose an input that holds widths");
    }
    std::vector<IdentifierRoom> rooms;
    rooms.reserve(wanted.size());
    for (const std::string& id : wanted) {
        rooms.push_back({id, longest_identifier, false});
    }
    const auto identifiers = fitting_identifiers(rooms);
    const auto names = column_names(identifiers);
    write_outline(out, notes);
    write_collection(out, table, notes, first, last);
    write_variables(out, names, identifiers);
    write_table(out, written, names, first, last);
    for (std::size_t i = 0; i < identifiers.size(); ++i) {
        if (identifiers[i] != written[i]->id) {
            remarks.add("series " + as_utf8(written[i]->id) + " is called " + identifiers[i] + " in the file");
        }
    }
    remarks.add(notes == StudyNotes()
                    ? "the study's metadata are left empty: fill in the lines with # before sending it to the archive"
                    : "of the study's metadata only what the field sheet tells is filled in: look at the lines with # "
                      "before sending it to the archive");
    return remarks.list();
}

Outcome<std::vector<std::string>> write_archive_template(std::ostream& out, const WidthTable& table) {
    return write_archive_template(out, table, StudyNotes());
}

} // namespace pithward
