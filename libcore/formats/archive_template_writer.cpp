#include "libcore/formats/archive_template.h"
#include "libcore/formats/identifiers.h"
#include "libcore/formats/remarks.h"
#include "libcore/formats/steps.h"
#include "libcore/formats/text_input.h"

#include <algorithm>

namespace pithward {

using namespace formats;

namespace {

/// The bank's outline of metadata, with what is not known left empty.
constexpr const char* outline = R"(#----------------------------------------------------
# Template Version 4.0
# Encoding: UTF-8
#
# Description/Documentation lines begin with #
# Data lines have no #
#
# NOAA_Landing_Page:
# Data_Type: Tree Ring
# Dataset_DOI:
#--------------------
# Contribution_Date
#   Date:
#--------------------
# Title
#   Study_Name:
#--------------------
# Investigators
#   Investigators:
#--------------------
# Publication
#   Authors:
#   Published_Title:
#   DOI:
#--------------------
# Funding_Agency
#   Funding_Agency_Name:
#   Grant:
#--------------------
# Site_Information
#   Site_Name:
#   Location:
#   Northernmost_Latitude:
#   Southernmost_Latitude:
#   Easternmost_Longitude:
#   Westernmost_Longitude:
#   Elevation_m:
#--------------------
)";

std::string in_one_line(std::string_view text) {
    std::string line = as_utf8(text);
    std::ranges::replace_if(
        line, [](char c) { return c == '\n' || c == '\r' || c == '\0'; }, ' ');
    return line;
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

Outcome<std::vector<std::string>> write_archive_template(std::ostream& out, const WidthTable& table) {
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
    out << outline << "# Data_Collection\n#   Collection_Name:\n#   First_Year: " << std::to_string(first)
        << "\n#   Last_Year: " << std::to_string(last)
        << "\n#   Time_Unit: CE\n#   Parameter_Keywords: ring width\n#   Notes:\n";
    for (std::size_t i = 0; i < table.headers.size(); ++i) {
        out << "#   Decadal_Header_" << std::to_string(i + 1) << ": " << in_one_line(table.headers[i]) << '\n';
    }
    out << "#--------------------\n# Species\n#   Species_Name:\n#   Common_Name:\n#   Tree_Species_Code:\n"
           "#--------------------\n";
    write_variables(out, names, identifiers);
    write_table(out, written, names, first, last);
    for (std::size_t i = 0; i < identifiers.size(); ++i) {
        if (identifiers[i] != written[i]->id) {
            remarks.add("series " + as_utf8(written[i]->id) + " is called " + identifiers[i] + " in the file");
        }
    }
    remarks.add("the study's metadata are left empty: fill in the lines with # before sending it to the archive");
    return remarks.list();
}

} // namespace pithward
