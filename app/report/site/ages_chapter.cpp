#include "app/report/site/chapters.h"
#include "app/report/site/figures_in_words.h"

#include <algorithm>

namespace pithward::report {

namespace {

std::string told_allowance(const Age& age) {
    return age.allowance ? fixed(age.allowance->years, 0) + " \xC2\xB1 " + fixed(age.allowance->sd, 1)
                         : std::string(not_known);
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
    blocks.push_back(Paragraph{"The intervals hold the doubt about where the pith lies and how wide the rings to it "
                               "are, not the doubt about the "
                               "dating itself. Two cores of one tree need not tell the same year where they were taken "
                               "at different heights."});
}

} // namespace pithward::report
