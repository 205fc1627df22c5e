#include "app/batch/accepted_readings.h"

#include "libcore/field/height_allowance.h"
#include "libcore/measure/measure.h"

#include <algorithm>
#include <map>

namespace pithward::batch {

namespace {

ProjectNote note_of(const record::CoreEntry& core, const review::Standing& standing) {
    return {.site = core.site.id,
            .tree = core.tree.id,
            .marked_by = standing.marked_by,
            .passed_by = standing.passed_by,
            .own_work = standing.passer_marked || standing.passer_changed,
            .looked_at = standing.looked_at,
            .in_bulk = standing.in_bulk};
}

/// Adds a core with its tree and site, each once.
void add_core(std::vector<Site>& sites, const record::CoreEntry& entry) {
    auto site = std::ranges::find(sites, entry.site.id, &Site::id);
    if (site == sites.end()) {
        site = sites.insert(site, entry.site);
    }
    auto tree = std::ranges::find(site->trees, entry.tree.id, &Tree::id);
    if (tree == site->trees.end()) {
        tree = site->trees.insert(tree, entry.tree);
    }
    tree->cores.push_back(entry.core);
}

} // namespace

Outcome<AcceptedReadings> accepted_readings(const record::Project& project, bool only_passed,
                                            const std::optional<HeightAllowance>& allowance) {
    const auto cores = project.cores();
    if (!cores) {
        return tl::unexpected(cores.error());
    }
    std::map<std::string, int> names;
    for (const record::CoreEntry& core : *cores) {
        ++names[core.core.id];
    }
    AcceptedReadings accepted;
    std::vector<Site> sites;
    accepted.readings.reserve(cores->size());
    accepted.standings.reserve(cores->size());
    for (const record::CoreEntry& core : *cores) {
        if (!core.accepted) {
            ++accepted.cores_without;
            continue;
        }
        const auto document = project.document(*core.accepted);
        if (!document) {
            return tl::unexpected(document.error());
        }
        if (only_passed && document->reading().state != Reading::State::Passed) {
            ++accepted.not_passed;
            continue;
        }
        auto series = measure(document->reading());
        if (!series) {
            accepted.left_out.push_back({core.core.id, series.error().what, series.error().remedy});
            continue;
        }
        const review::Standing standing = review::standing(document->reading(), document->log());
        MeasuredReading measured{document->reading(), std::move(*series), note_of(core, standing),
                                 field::height_allowance(core.core, allowance)};
        measured.reading.core = names[core.core.id] > 1 ? core.site.id + "_" + core.core.id : core.core.id;
        accepted.readings.push_back(std::move(measured));
        accepted.standings.push_back(standing);
        add_core(sites, core);
    }
    accepted.notes = study_notes(sites);
    accepted.sites = std::move(sites);
    return accepted;
}

} // namespace pithward::batch
