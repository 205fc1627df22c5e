#include "app/picture/dating/growth_sheet.h"
#include "app/report/sheet_file.h"
#include "app/report/site/chapters.h"
#include "app/report/site/figures_in_words.h"

#include <algorithm>
#include <map>
#include <utility>

namespace pithward::report {

namespace {

std::string told_allowance(const Age& age) {
    return age.allowance ? fixed(age.allowance->years, 0) + " \xC2\xB1 " + fixed(age.allowance->sd, 1)
                         : std::string(not_known);
}

/// The year of each tree of a species, by its oldest core: that of establishment where it is told, else the pith's.
std::map<std::string, std::vector<int>> years_of_trees(const SiteRecord& record, bool establishment) {
    std::map<std::pair<std::string, std::string>, std::pair<std::string, int>> trees;
    for (const CoreRecord& core : record.cores) {
        if (!core.age || (establishment && !core.age->establishment)) {
            continue;
        }
        const int year = (establishment ? *core.age->establishment : core.age->pith).year.value();
        const std::pair tree{core.entry.site.id, core.entry.tree.id};
        const auto [at, first] = trees.try_emplace(tree, core.entry.tree.species, year);
        at->second.second = std::min(at->second.second, year);
    }
    std::map<std::string, std::vector<int>> years;
    for (const auto& [tree, told] : trees) {
        years[told.first].push_back(told.second);
    }
    return years;
}

void add_histograms(std::vector<Block>& blocks, const SiteRecord& record) {
    constexpr int decade = 10;
    constexpr std::size_t fewest_to_draw = 3;
    for (const bool establishment : {true, false}) {
        const auto all = years_of_trees(record, establishment);
        for (const auto& [species, years] : all) {
            if (years.size() < fewest_to_draw) {
                continue; // The table says as much.
            }
            const auto counts = results::year_histogram(years, decade);
            for (const std::string& svg : sheet_svgs(picture::histogram_sheet(counts), 400.0)) {
                blocks.push_back(
                    Figure{(species.empty() ? "Species not told" : species) +
                               (establishment ? ": establishment of trees by decade"
                                              : ": year of the pith of trees by decade, at the height of the core") +
                               ". Of several cores of a tree the oldest counts.",
                           "Number of trees by decade", "image/svg+xml", svg});
            }
        }
        if (!all.empty()) {
            return; // Without an allowance for the height only the pith's year is known.
        }
    }
}

} // namespace

void add_ages(std::vector<Block>& blocks, const SiteRecord& record) {
    blocks.push_back(Heading{1, "Ages"});
    Table table;
    table.caption =
        "The year of the pith at the height of the core and that of establishment, each with its 90 % interval. "
        "Years to the height: the allowance for growing up to it, with its standard deviation.";
    table.columns = {{"core", 1.3},
                     {"tree", 1.2},
                     {"species", 2.0},
                     {"height cm", 0.9, true},
                     {"year of the pith", 2.2},
                     {"years to the height", 1.4, true},
                     {"year of establishment", 2.2}};
    std::vector<std::string> without;
    for (const CoreRecord& core : record.cores) {
        if (!core.age) {
            if (core.measured) {
                without.push_back(core.name);
            }
            continue;
        }
        table.rows.push_back({core.name, core.entry.tree.id, or_dash(core.entry.tree.species),
                              fixed(core.entry.core.core_height_cm, 0), told(core.age->pith), told_allowance(*core.age),
                              told(core.age->establishment)});
    }
    if (!without.empty()) {
        std::string names;
        for (const std::string& name : without) {
            names += (names.empty() ? "" : ", ") + name;
        }
        table.note = "No year of the pith is told for " + names +
                     ": the series is undated, or the curves of its rings say "
                     "nothing of where the pith lies. Such a core gives a least age only.";
    }
    if (table.rows.empty()) {
        blocks.push_back(
            Paragraph{"No core tells the year of its pith." + (table.note.empty() ? "" : " " + table.note)});
        return;
    }
    blocks.push_back(std::move(table));
    add_histograms(blocks, record);
    blocks.push_back(Paragraph{"The intervals hold the doubt about where the pith lies and how wide the rings to it "
                               "are, not the doubt about the "
                               "dating itself. Two cores of one tree need not tell the same year where they were taken "
                               "at different heights."});
}

} // namespace pithward::report
