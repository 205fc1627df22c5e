#include "app/report/site/chapters.h"
#include "app/report/site/figures_in_words.h"

#include <cmath>
#include <set>
#include <utility>

namespace pithward::report {

namespace {

std::string told_pith(FieldPith pith) {
    switch (pith) {
    case FieldPith::Reached:
        return "reached";
    case FieldPith::Near:
        return "near";
    case FieldPith::Missed:
        return "missed";
    case FieldPith::Unknown:
        break;
    }
    return "unknown";
}

std::string told_degrees(const std::optional<double>& latitude, char positive, char negative) {
    return latitude ? fixed(std::abs(*latitude), 4) + "\xC2\xB0 " + (*latitude < 0.0 ? negative : positive)
                    : std::string(not_known);
}

Table sites_table(const SiteRecord& record) {
    Table table;
    table.caption = "The sites, by the field sheet.";
    table.columns = {
        {"site", 1.6},        {"latitude", 1.3, true}, {"longitude", 1.3, true}, {"elevation m", 1.1, true},
        {"trees", 0.8, true}, {"cores", 0.8, true},    {"collected by", 2.0}};
    std::set<std::string> seen;
    for (const CoreRecord& first : record.cores) {
        const Site& site = first.entry.site;
        if (!seen.insert(site.id).second) {
            continue;
        }
        std::set<std::string> trees;
        std::set<std::string> collectors;
        std::size_t cores = 0;
        for (const CoreRecord& core : record.cores) {
            if (core.entry.site.id == site.id) {
                ++cores;
                trees.insert(core.entry.tree.id);
                if (!core.entry.core.collector.empty()) {
                    collectors.insert(core.entry.core.collector);
                }
            }
        }
        std::string people;
        for (const std::string& one : collectors) {
            people += (people.empty() ? "" : ", ") + one;
        }
        table.rows.push_back({site.id, told_degrees(site.latitude, 'N', 'S'), told_degrees(site.longitude, 'E', 'W'),
                              fixed(site.elevation_m, 0), std::to_string(trees.size()), std::to_string(cores),
                              or_dash(people)});
    }
    return table;
}

Table trees_table(const SiteRecord& record) {
    Table table;
    table.caption =
        "The trees. Lean and slope: compass degrees of the way the stem leans and of the way the ground falls.";
    table.columns = {{"site", 1.2},
                     {"tree", 1.4},
                     {"species", 2.2},
                     {"wood", 1.5},
                     {"state", 0.9},
                     {"diameter cm", 1.1, true},
                     {"bark mm", 0.8, true},
                     {"lean \xC2\xB0", 1.0, true},
                     {"toward \xC2\xB0", 0.9, true},
                     {"slope toward \xC2\xB0", 1.0, true}};
    std::set<std::pair<std::string, std::string>> seen;
    for (const CoreRecord& core : record.cores) {
        const Tree& tree = core.entry.tree;
        if (!seen.insert({core.entry.site.id, tree.id}).second) {
            continue;
        }
        table.rows.push_back({core.entry.site.id, tree.id, or_dash(tree.species),
                              tree.wood ? word(*tree.wood) : not_known,
                              tree.living ? (*tree.living ? "living" : "dead") : not_known, fixed(tree.dbh_cm, 1),
                              fixed(tree.bark_mm, 0), fixed(tree.lean_deg, 0), fixed(tree.lean_azimuth_deg, 0),
                              fixed(tree.slope_aspect_deg, 0)});
    }
    return table;
}

std::string notes_of(const Core& core) {
    std::string notes = core.notes;
    for (const auto& [column, value] : core.others) {
        if (!value.empty()) {
            notes.append(notes.empty() ? "" : "; ").append(column).append(": ").append(value);
        }
    }
    return or_dash(notes);
}

Table cores_table(const SiteRecord& record) {
    Table table;
    table.caption =
        "The cores as they were taken. Side: compass degrees of the side that the borer entered. Outer wood and "
        "pith as they were seen in the field.";
    table.columns = {{"core", 1.4},
                     {"tree", 1.3},
                     {"cored", 1.3},
                     {"height cm", 0.9, true},
                     {"side \xC2\xB0", 0.7, true},
                     {"borer mm", 0.8, true},
                     {"outer wood", 1.3},
                     {"pith", 1.0},
                     {"pieces", 0.8, true},
                     {"notes", 3.0}};
    for (const CoreRecord& one : record.cores) {
        const Core& core = one.entry.core;
        table.rows.push_back({one.name, one.entry.tree.id, or_dash(core.date_cored), fixed(core.core_height_cm, 0),
                              fixed(core.azimuth_deg, 0), fixed(core.borer_mm, 2), word(core.outer),
                              told_pith(core.pith), core.pieces ? std::to_string(*core.pieces) : not_known,
                              notes_of(core)});
    }
    return table;
}

} // namespace

void add_samples(std::vector<Block>& blocks, const SiteRecord& record) {
    blocks.push_back(Heading{1, "Site and samples"});
    blocks.push_back(sites_table(record));
    blocks.push_back(trees_table(record));
    blocks.push_back(cores_table(record));
}

} // namespace pithward::report
