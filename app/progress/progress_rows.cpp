#include "app/progress/progress_rows.h"

#include "app/site/site_dating.h"

#include <algorithm>
#include <map>

namespace pithward::bench {

namespace {

progress::ReadingFacts facts_of(const record::ReadingEntry& entry) {
    return {progress::state_of(entry.state), entry.boundaries, entry.looked_at + entry.in_bulk, entry.open_findings};
}

/// What dating says of each reading, as it was at a revision.
using Said = std::map<std::pair<ReadingId, std::int64_t>, progress::DatingFacts>;

Said said_by(const SiteDating* dating) {
    Said said;
    for (std::size_t row = 0; dating != nullptr && row < dating->lines.size(); ++row) {
        const SiteLine& line = dating->lines[row];
        const SiteCore& core = dating->core(line);
        progress::DatingFacts& facts = said[{core.reading.id, core.revision}];
        const dating::DatedResult* series = dating->dated(line);
        facts.can_be_dated = series == nullptr;
        facts.shift = series != nullptr ? series->whole_shift : 0;
        for (std::size_t slip = 0; series != nullptr && slip < series->slips.size(); ++slip) {
            facts.slips += dating->settled(line, slip) ? 0 : 1;
        }
    }
    return said;
}

void put_rings(ProgressRow& row) {
    row.rings = static_cast<int>(row.read->series.rings.size());
    for (const Ring& ring : row.read->series.rings) {
        if (ring.year) {
            const int year = ring.year->value();
            row.first_year = std::min(row.first_year.value_or(year), year);
            row.last_year = std::max(row.last_year.value_or(year), year);
        }
    }
}

} // namespace

std::vector<ProgressRow> progress_rows(const ProjectOverview& overview, const SiteCores& seen, const SiteDating* dating,
                                       const std::set<std::string>& scans_there) {
    std::map<record::CoreId, std::shared_ptr<const SiteCore>> read;
    for (const auto& core : seen.cores) {
        read[core->core] = core;
    }
    std::map<ReadingId, const record::ReadingEntry*> readings;
    for (const record::ReadingEntry& entry : overview.readings) {
        readings[entry.id] = &entry;
    }
    const auto said = said_by(dating);
    std::vector<ProgressRow> rows;
    rows.reserve(overview.cores.size());
    for (const record::CoreEntry& core : overview.cores) {
        ProgressRow row{core, {}, {}, {}, 0, {}, {}};
        progress::CoreFacts facts;
        facts.scan_named = !core.core.scan.empty();
        facts.scan_there = scans_there.contains(core.core.scan);
        const auto reading = core.accepted ? readings.find(*core.accepted) : readings.end();
        if (reading != readings.end()) {
            row.reading = *reading->second;
            facts.reading = facts_of(*row.reading);
            const auto site_core = read.find(core.id);
            if (site_core != read.end() && site_core->second->reading.id == *core.accepted) {
                row.read = site_core->second;
                put_rings(row);
            }
            facts.has_years = row.last_year.has_value();
            const auto dated = said.find({*core.accepted, row.reading->revision});
            facts.dating = dated == said.end() ? std::nullopt : std::optional(dated->second);
        }
        row.progress = progress::core_progress(facts);
        rows.push_back(std::move(row));
    }
    return rows;
}

} // namespace pithward::bench
