#include "app/site/site_cores.h"

#include "libcore/measure/doubtful_places.h"
#include "libcore/measure/measure.h"

#include <algorithm>

namespace pithward::bench {

bool same_readings(const SiteCores& a, const SiteCores& b) {
    return a.without == b.without && std::ranges::equal(a.cores, b.cores, [](const auto& one, const auto& other) {
               return one->reading.id == other->reading.id && one->revision == other->revision &&
                      one->name == other->name && one->tree == other->tree;
           });
}

Outcome<SiteCores> SiteShelf::cores(const record::Project& project) {
    const auto entries = project.cores();
    const auto readings = entries ? project.readings() : tl::unexpected(entries.error());
    if (!readings) {
        return tl::unexpected(readings.error());
    }
    std::map<std::string, int> names;
    for (const record::CoreEntry& entry : *entries) {
        ++names[entry.core.id];
    }
    SiteCores all;
    for (const record::CoreEntry& entry : *entries) {
        const auto reading =
            entry.accepted ? std::ranges::find(*readings, *entry.accepted, &record::ReadingEntry::id) : readings->end();
        if (reading == readings->end()) {
            ++all.without;
            continue;
        }
        const std::string name = names[entry.core.id] > 1 ? entry.site.id + "_" + entry.core.id : entry.core.id;
        if (auto found = core(project, entry, reading->revision, name)) {
            all.cores.push_back(std::move(*found));
        } else {
            all.left_out.push_back({name, found.error().what, found.error().remedy});
        }
    }
    return all;
}

Outcome<std::shared_ptr<const SiteCore>> SiteShelf::core(const record::Project& project, const record::CoreEntry& entry,
                                                         std::int64_t revision, const std::string& name) {
    const std::string tree = entry.tree.id.empty() ? name : entry.site.id + " " + entry.tree.id;
    std::shared_ptr<const SiteCore>& seen = seen_[*entry.accepted];
    if (seen && seen->revision == revision && seen->name == name && seen->tree == tree) {
        return seen;
    }
    auto reading = project.reading(*entry.accepted);
    if (!reading) {
        return tl::unexpected(std::move(reading.error()));
    }
    auto series = measure(*reading);
    if (!series) {
        return tl::unexpected(std::move(series.error()));
    }
    auto wood = doubtful_places(*reading, *series);
    if (!wood) {
        return tl::unexpected(std::move(wood.error()));
    }
    seen = std::make_shared<const SiteCore>(SiteCore{entry.id, revision, name, entry.site.id, tree, std::move(*reading),
                                                     std::move(*series), std::move(*wood)});
    return seen;
}

std::optional<ImagePoint> place_of_year(const SiteCore& core, int year) {
    const auto& placed = core.series.boundaries;
    const auto outer =
        std::ranges::find_if(placed, [&](const PlacedBoundary& one) { return one.year && one.year->value() <= year; });
    if (outer == placed.end()) {
        return std::nullopt;
    }
    const auto boundary = std::ranges::find(core.reading.boundaries, outer->id, &Boundary::id);
    return boundary == core.reading.boundaries.end() ? std::nullopt : std::optional(boundary->at);
}

const Ring* ring_of_year(const SiteCore& core, int year) {
    const auto ring =
        std::ranges::find_if(core.series.rings, [&](const Ring& one) { return one.year && one.year->value() == year; });
    return ring == core.series.rings.end() ? nullptr : &*ring;
}

} // namespace pithward::bench
