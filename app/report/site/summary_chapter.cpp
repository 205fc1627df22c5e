#include "app/picture/dating/spans_sheet.h"
#include "app/report/sheet_file.h"
#include "app/report/site/chapters.h"
#include "app/report/site/figures_in_words.h"
#include "libcore/measure/series_summary.h"

#include <algorithm>
#include <set>
#include <utility>

namespace pithward::report {

namespace {

constexpr double spans_breadth = 560.0; ///< Of the years, in points of a sheet.
constexpr double spans_page = 760.0;

std::optional<std::pair<int, int>> years_of(const RingSeries& series) {
    std::optional<std::pair<int, int>> years;
    for (const Ring& ring : series.rings) {
        if (ring.year) {
            const int year = ring.year->value();
            years =
                years ? std::pair(std::min(years->first, year), std::max(years->second, year)) : std::pair(year, year);
        }
    }
    return years;
}

std::vector<std::string> row_of(const CoreRecord& core) {
    if (!core.measured) {
        return {core.name,   core.entry.tree.species, not_known, not_known, not_known, not_known, not_known, not_known,
                "no reading"};
    }
    const SeriesSummary summary = summary_of(core.measured->series);
    const auto years = years_of(core.measured->series);
    return {core.name,
            core.entry.tree.species,
            std::to_string(summary.rings),
            years ? told_years(years->first, years->second) : "undated",
            fixed(summary.length.value(), 1),
            fixed(summary.mean, 3),
            std::to_string(summary.absent),
            std::to_string(core.standing.open_findings) + " of " + std::to_string(core.standing.findings),
            word(core.standing.state)};
}

Table overview(const SiteRecord& record) {
    Table table;
    table.caption =
        "The cores. Length: sum of the ring widths. Absent: rings that the tree did not lay here, of width 0. "
        "Findings: places to look at that are open, of all.";
    table.columns = {{"core", 1.5},
                     {"species", 2.2},
                     {"rings", 0.8, true},
                     {"years", 1.7},
                     {"length mm", 1.1, true},
                     {"mean width mm", 1.1, true},
                     {"absent", 0.9, true},
                     {"findings open", 1.3, true},
                     {"state", 1.4}};
    for (const CoreRecord& core : record.cores) {
        table.rows.push_back(row_of(core));
    }
    return table;
}

void add_spans(std::vector<Block>& blocks, const SiteRecord& record) {
    std::vector<picture::SeriesSpan> spans;
    for (const CoreRecord& core : record.cores) {
        if (const auto years = core.measured ? years_of(core.measured->series) : std::nullopt) {
            spans.push_back({fit_text(core.name, 60), years->first, years->second,
                             core.age ? std::optional(core.age->pith) : std::nullopt});
        }
    }
    if (spans.empty()) {
        return;
    }
    const auto pictures = sheet_svgs(picture::spans_sheet(std::move(spans), spans_breadth), spans_page);
    for (std::size_t i = 0; i < pictures.size(); ++i) {
        blocks.push_back(Figure{"The years that each dated core covers, the oldest first" +
                                    std::string(i > 0 ? ", continued." : "."),
                                "A bar for each core from its oldest to its youngest ring, and the year of its pith",
                                "image/svg+xml", pictures[i]});
    }
}

/// What a reader must know before any number.
std::vector<std::string> reservations(const SiteRecord& record) {
    std::vector<std::string> said;
    std::size_t unpassed = 0;
    std::size_t undated = 0;
    std::size_t open = 0;
    for (const CoreRecord& core : record.cores) {
        if (core.measured) {
            unpassed += core.standing.state == Reading::State::Passed ? 0 : 1;
            undated += years_of(core.measured->series) ? 0 : 1;
            open += static_cast<std::size_t>(core.standing.open_findings);
        }
    }
    if (unpassed > 0) {
        said.push_back(counted(unpassed, "reading has", "readings have") +
                       " not been passed by a second person. What follows from them is provisional.");
    }
    if (open > 0) {
        said.push_back(counted(open, "finding is", "findings are") +
                       " open: places where a ring may be wrong and nobody has decided yet.");
    }
    if (undated > 0) {
        said.push_back(counted(undated, "series has", "series have") + " no calendar years.");
    }
    const auto changed = std::ranges::count(record.scans, ScanRecord::State::Other, &ScanRecord::state);
    if (changed > 0) {
        said.push_back(counted(static_cast<std::size_t>(changed), "scan is", "scans are") +
                       " not the file that was measured: its checksum differs (see the table of scans).");
    }
    return said;
}

} // namespace

void add_summary(std::vector<Block>& blocks, const SiteRecord& record) {
    std::set<std::pair<std::string, std::string>> trees;
    std::size_t measured = 0;
    std::size_t rings = 0;
    std::optional<std::pair<int, int>> years;
    for (const CoreRecord& core : record.cores) {
        trees.insert({core.entry.site.id, core.entry.tree.id});
        if (!core.measured) {
            continue;
        }
        ++measured;
        rings += core.measured->series.rings.size();
        if (const auto of_core = years_of(core.measured->series)) {
            years = years ? std::pair(std::min(years->first, of_core->first), std::max(years->second, of_core->second))
                          : *of_core;
        }
    }
    blocks.push_back(Heading{1, "Summary"});
    std::string text = counted(record.cores.size(), "core", "cores") + " of " + counted(trees.size(), "tree", "trees") +
                       "; " + std::to_string(measured) + " measured, with " + counted(rings, "ring", "rings") +
                       " in all";
    text += years ? ", dated " + told_years(years->first, years->second) + "." : ", none of them dated.";
    blocks.push_back(Paragraph{text});
    for (const std::string& line : record.statement) {
        blocks.push_back(Paragraph{line + "."});
    }
    for (const std::string& said : reservations(record)) {
        blocks.push_back(Paragraph{said, true});
    }
    blocks.push_back(overview(record));
    add_spans(blocks, record);
}

} // namespace pithward::report
