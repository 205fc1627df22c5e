#include "app/batch/undated_cores.h"

#include "libcore/dating/bark_year.h"
#include "libcore/dating/growing_season.h"

#include <algorithm>
#include <utility>

namespace pithward::batch {

namespace {

std::string with_commas(const std::vector<std::string>& words) {
    std::string all;
    for (const std::string& one : words) {
        all += (all.empty() ? "" : ", ") + one;
    }
    return all;
}

/// What the field sheet has to tell for a year and does not.
std::vector<std::string> missing_for_year(const Site& site, const Tree& tree, const Core& core) {
    std::vector<std::string> missing;
    if (!tree.living) {
        missing.emplace_back("status");
    }
    if (core.date_cored.empty()) {
        missing.emplace_back("date_cored");
    }
    if (!site.latitude && !dating::season_set(core)) {
        missing.emplace_back("latitude");
    }
    return missing;
}

UndatedCore reason_of(const Site& site, const Tree& tree, const Core& core, OuterWood outer) {
    const auto year = dating::bark_year(site, tree, core, outer);
    if (year) {
        return {core.id, "its outermost ring was given no year", "set the year by hand"};
    }
    const auto missing = missing_for_year(site, tree, core);
    const bool by_sheet =
        tree.living.value_or(true) && (outer == OuterWood::Complete || outer == OuterWood::Unfinished);
    if (by_sheet && !missing.empty()) {
        return {core.id, "the field sheet does not tell " + with_commas(missing),
                "fill it in on the field sheet, or set the year by hand"};
    }
    const std::string begins = "its years are not known: ";
    const std::string& what = year.error().what;
    return {core.id, what.starts_with(begins) ? what.substr(begins.size()) : what, year.error().remedy};
}

/// The names of cores that have the same reason, the first few of them.
std::string names_of(const std::vector<UndatedCore>& cores, const std::string& reason) {
    constexpr int most = 3;
    std::vector<std::string> names;
    int more = 0;
    for (const UndatedCore& core : cores) {
        if (core.reason == reason) {
            if (std::ssize(names) < most) {
                names.push_back(core.name);
            } else {
                ++more;
            }
        }
    }
    return with_commas(names) + (more > 0 ? " and " + std::to_string(more) + " more" : "");
}

} // namespace

UndatedCore why_undated(const AcceptedReadings& accepted, const MeasuredReading& one) {
    for (const Site& site : accepted.sites) {
        for (const Tree& tree : site.trees) {
            if (!one.note || site.id != one.note->site || tree.id != one.note->tree) {
                continue;
            }
            const auto core = std::ranges::find_if(tree.cores, [&](const Core& of_tree) {
                return one.reading.core == of_tree.id || one.reading.core == site.id + "_" + of_tree.id;
            });
            if (core != tree.cores.end()) {
                UndatedCore undated = reason_of(site, tree, *core, one.reading.outer);
                undated.name = one.reading.core;
                return undated;
            }
        }
    }
    return {one.reading.core, "its outermost ring was given no year", "date it against the site's other cores"};
}

PackageGap gap_of(const UndatedCore& core) {
    return {"core " + core.name + " has no calendar years and is left out of the series: " + core.reason, core.remedy,
            false};
}

Fault none_dated(const std::string& project, const std::vector<UndatedCore>& cores, const StudyNotes& notes) {
    std::vector<std::string> reasons;
    for (const UndatedCore& core : cores) {
        if (std::ranges::find(reasons, core.reason) == reasons.end()) {
            reasons.push_back(core.reason);
        }
    }
    std::string what = "no core has calendar years, and the archive takes dated series only";
    for (const std::string& reason : reasons) {
        what += "; " + names_of(cores, reason) + ": " + reason;
    }
    std::vector<std::string> also;
    for (const auto& [column, missing] :
         {std::pair("latitude", !notes.north), std::pair("longitude", !notes.east),
          std::pair("elevation_m", !notes.elevation_m), std::pair("species", notes.species.empty()),
          std::pair("collector", notes.collectors.empty())}) {
        if (missing) {
            also.emplace_back(column);
        }
    }
    what += also.empty() ? "" : "; of the field sheet the archive will miss " + with_commas(also);
    return {project, what,
            "fill in the field sheet, date a core by hand, or write the widths with pithward export --csv"};
}

} // namespace pithward::batch
