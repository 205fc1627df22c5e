#include "app/picture/dating/climate_sheet.h"
#include "app/picture/dating/growth_sheet.h"
#include "app/report/sheet_file.h"
#include "app/report/site/chapters.h"
#include "app/report/site/figures_in_words.h"
#include "libcore/measure/basal_area.h"

#include <algorithm>
#include <map>
#include <utility>

namespace pithward::report {

namespace {

constexpr double growth_page = 900.0; ///< In points of a sheet.

void add_sheet(std::vector<Block>& blocks, const picture::Sheet& sheet, const std::string& caption,
               const std::string& alternative) {
    for (const std::string& svg : sheet_svgs(sheet, growth_page)) {
        blocks.push_back(Figure{caption, alternative, "image/svg+xml", svg});
    }
}

/// The measured cores of each species, in order of first sight.
std::vector<std::pair<std::string, std::vector<results::GrowthCore>>> by_species(const SiteRecord& record) {
    std::vector<std::pair<std::string, std::vector<results::GrowthCore>>> all;
    for (const CoreRecord& core : record.cores) {
        if (!core.measured) {
            continue;
        }
        const std::string species = core.entry.tree.species.empty() ? "species not told" : core.entry.tree.species;
        auto at = std::ranges::find_if(all, [&](const auto& one) { return one.first == species; });
        if (at == all.end()) {
            at = all.insert(at, {species, {}});
        }
        at->second.push_back({core.measured->series,
                              basal_area_increments(core.measured->reading, core.measured->series),
                              core.age ? std::optional(core.age->pith.year) : std::nullopt});
    }
    return all;
}

Table climate_table(const DatedGroup& group) {
    const results::ClimateResponse& response = *group.climate;
    Table table;
    table.caption = group.name + ": correlation of the chronology with each window of months, with its 90 % interval.";
    table.columns = {
        {"months", 2.0},  {"years", 0.8, true}, {"r", 0.8, true}, {"interval", 1.6}, {"r, lines taken off", 1.2, true},
        {"interval", 1.6}};
    const auto interval = [](const results::WindowCorrelation& one) {
        return one.low && one.high ? fixed(*one.low, 2) + " to " + fixed(*one.high, 2) : std::string(not_known);
    };
    for (std::size_t k = 0; k < response.as_is.size() && k < response.detrended.size(); ++k) {
        const results::WindowCorrelation& one = response.as_is[k];
        table.rows.push_back({words_of(one.window), std::to_string(one.years), fixed(one.r, 2), interval(one),
                              fixed(response.detrended[k].r, 2), interval(response.detrended[k])});
    }
    return table;
}

} // namespace

void add_growth(std::vector<Block>& blocks, const SiteRecord& record) {
    blocks.push_back(Heading{1, "Growth over time"});
    blocks.push_back(
        Paragraph{"Means of the cores that have a value: by calendar year, and by cambial age (the ring round the pith "
                  "has age 1, at "
                  "the height of the core). Toward the past fewer and other trees remain, so a slope of these means "
                  "need not be one "
                  "of growth. Basal area increments take rings as circles about the pith, the wood as measured."});
    for (const auto& [species, cores] : by_species(record)) {
        const auto years = results::growth_by_year(cores);
        const auto ages = results::growth_by_age(cores);
        if (!years.empty()) {
            add_sheet(blocks, picture::growth_sheet(years, QStringLiteral("year")),
                      species + ": mean growth by calendar year, and the number of cores.",
                      "Mean ring width and basal area increment over calendar years");
        }
        if (!ages.empty()) {
            add_sheet(blocks, picture::growth_sheet(ages, QStringLiteral("age")),
                      species + ": mean growth by cambial age, and the number of cores.",
                      "Mean ring width and basal area increment over age");
        }
    }
}

void add_climate(std::vector<Block>& blocks, const SiteRecord& record) {
    if (record.climate_file.empty()) {
        return;
    }
    blocks.push_back(Heading{1, "Growth and climate"});
    blocks.push_back(Paragraph{"Held against " + record.climate_file +
                               ". Keep that file with this report. Windows are months and "
                               "seasons of the ring's year and of the year before, half a year later south of the "
                               "equator. Intervals draw blocks of "
                               "years anew, 1,000 times from a fixed seed. Of many windows the best always looks good: "
                               "the chance told is that of "
                               "the best of all that were tried. A correlation is no cause."});
    for (const DatedGroup& group : record.groups) {
        if (!group.climate || !group.climate->strongest || !group.climate->chance) {
            blocks.push_back(
                Paragraph{group.name + ": too few years in common with the climate series, or no chronology."});
            continue;
        }
        const results::WindowCorrelation& best = *group.climate->strongest;
        blocks.push_back(Paragraph{group.name + ": " + std::to_string(group.climate->tried) +
                                   " correlations were tried. The strongest is that with " + words_of(best.window) +
                                   (best.detrended ? ", straight lines taken off" : ", as the series are") + ", r " +
                                   fixed(best.r, 2) +
                                   "; the strongest of so many is as strong by chance with probability " +
                                   fixed(*group.climate->chance, 3) + "."});
        add_sheet(blocks, picture::climate_sheet(*group.climate),
                  group.name + ": correlation with months and seasons, and the strongest over stretches of years.",
                  "Correlations of the chronology with windows of months, with intervals");
        blocks.push_back(climate_table(group));
    }
}

} // namespace pithward::report
