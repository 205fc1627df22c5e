#include "libcore/formats/package_check.h"

#include "libcore/formats/archive_template.h"
#include "libcore/formats/decadal.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <sstream>

namespace pithward {

namespace {

/// A line of metadata, what a person calls it and where it comes from.
struct KnownLine {
    std::string_view name;
    const char* words;
    const char* remedy;
    bool needed;
};

constexpr const char* from_sheet = "fill it in on the field sheet";
constexpr const char* from_person = "write it into the template file before sending it";

/// Needed is what each of the 70 published studies that the tests look at has filled in; of the publication 24 have
/// something, of the funding 13.
constexpr std::array known_lines{
    KnownLine{"Study_Name", "the study's name", from_person, true},
    KnownLine{"Investigators", "the investigators", "fill in collector on the field sheet", true},
    KnownLine{"Site_Name", "the site's name", from_sheet, true},
    KnownLine{"Northernmost_Latitude", "the latitude", "fill in latitude on the field sheet", true},
    KnownLine{"Southernmost_Latitude", "", "", true}, // These two come with their counterparts.
    KnownLine{"Easternmost_Longitude", "the longitude", "fill in longitude on the field sheet", true},
    KnownLine{"Westernmost_Longitude", "", "", true},
    KnownLine{"Elevation_m", "the elevation", "fill in elevation_m on the field sheet", true},
    KnownLine{"Species_Name", "the species", "fill in species on the field sheet", true},
    KnownLine{"Tree_Species_Code", "the archive's code of the species", from_person, true},
    KnownLine{"Location", "the region of the site", from_person, true},
    KnownLine{"Collection_Name", "the collection's name", from_person, true},
    KnownLine{"Common_Name", "the species' common name", from_person, true},
    KnownLine{"Date", "", "", false}, // The archive sets it.
};

std::string_view bare_text(std::string_view text) {
    const auto first = text.find_first_not_of(" \t\r");
    return first == std::string_view::npos ? std::string_view()
                                           : text.substr(first, text.find_last_not_of(" \t\r") - first + 1);
}

void add_gap(std::vector<PackageGap>& gaps, std::string_view name) {
    const auto known = std::ranges::find(known_lines, name, &KnownLine::name);
    if (known == known_lines.end()) {
        gaps.push_back({std::string(name), from_person, false});
    } else if (*known->words != '\0') {
        gaps.push_back({std::string(name) + ", " + known->words, known->remedy, known->needed});
    }
}

bool same_width(const std::optional<Millimetres>& a, const std::optional<Millimetres>& b) {
    constexpr double half_step = 0.0005;
    return a.has_value() == b.has_value() &&
           (!a || (std::abs(a->value() - b->value()) < half_step && (a->value() == 0.0) == (b->value() == 0.0)));
}

/// Gaps at either end are told by one of the two files only.
WidthSeries without_end_gaps(WidthSeries series) {
    auto& widths = series.widths;
    while (!widths.empty() && !widths.back()) {
        widths.pop_back();
    }
    const auto first = std::ranges::find_if(widths, [](const auto& width) { return width.has_value(); });
    series.first_year = series.first_year + static_cast<int>(first - widths.begin());
    widths.erase(widths.begin(), first);
    return series;
}

} // namespace

std::vector<PackageGap> template_gaps(std::string_view archive_template) {
    std::vector<PackageGap> gaps;
    while (!archive_template.empty() && archive_template.front() == '#') {
        const auto end = std::min(archive_template.find('\n'), archive_template.size());
        const std::string_view line = archive_template.substr(0, end);
        archive_template.remove_prefix(std::min(end + 1, archive_template.size()));
        const auto colon = line.find(':');
        if (!line.starts_with("#   ") || colon == std::string_view::npos ||
            !bare_text(line.substr(colon + 1)).empty()) {
            continue;
        }
        const std::string_view name = bare_text(line.substr(1, colon - 1));
        if (!name.starts_with("Decadal_Header")) {
            add_gap(gaps, name);
        }
    }
    return gaps;
}

Outcome<void> check_package_series(const std::string& decadal, const std::string& archive_template) {
    std::istringstream decadal_in(decadal);
    std::istringstream template_in(archive_template);
    const auto first = read_decadal(decadal_in);
    const auto second = first ? read_archive_template(template_in) : tl::unexpected(first.error());
    if (!second) {
        return tl::unexpected(second.error());
    }
    if (first->series.size() != second->series.size()) {
        return fail("", "the decadal file and the template file differ in their number of series",
                    "please report this");
    }
    for (std::size_t i = 0; i < first->series.size(); ++i) {
        const WidthSeries one = without_end_gaps(first->series[i]);
        const WidthSeries other = without_end_gaps(second->series[i]);
        if (one.first_year != other.first_year || !std::ranges::equal(one.widths, other.widths, same_width)) {
            return fail("series " + one.id, "the decadal file and the template file differ", "please report this");
        }
    }
    return {};
}

} // namespace pithward
