#include "app/review/review_case.h"

#include "libcore/measure/measure.h"

#include <algorithm>

namespace pithward::bench {

namespace {

constexpr std::size_t most_siblings = 3;

bool of_one_tree(const record::CoreEntry& a, const record::CoreEntry& b) {
    return a.id != b.id && a.site.id == b.site.id && a.tree.id == b.tree.id;
}

/// The core of a reading.
Outcome<record::CoreEntry> core_of_reading(const record::Project& project, const std::vector<record::CoreEntry>& cores,
                                           ReadingId id) {
    return project.readings().and_then([&](const auto& readings) -> Outcome<record::CoreEntry> {
        const auto reading = std::ranges::find(readings, id, &record::ReadingEntry::id);
        const auto core =
            reading == readings.end() ? cores.end() : std::ranges::find(cores, reading->core, &record::CoreEntry::id);
        if (core == cores.end()) {
            return fail(project.file().string(), "this reading is not there", "look at the list again");
        }
        return *core;
    });
}

Outcome<RingSeries> series_of(const record::Project& project, ReadingId id) {
    return project.reading(id).and_then(measure);
}

} // namespace

const Finding* ReviewCase::finding(const QueueItem& item) const {
    const auto& all = reading().findings;
    const auto found = item.finding ? std::ranges::find(all, *item.finding, &Finding::id) : all.end();
    return found == all.end() ? nullptr : &*found;
}

Outcome<ReviewCase> read_case(const record::Project& project, const QueueItem& item) {
    ReviewCase one;
    const auto cores = project.cores();
    auto core = cores ? core_of_reading(project, *cores, item.reading) : tl::unexpected(cores.error());
    auto document = core ? project.document(item.reading) : tl::unexpected(core.error());
    auto measured = document ? picture::measured(document->reading()) : tl::unexpected(document.error());
    if (!measured) {
        return tl::unexpected(measured.error());
    }
    one.core = std::move(*core);
    one.document = std::move(*document);
    one.measured = std::move(*measured);
    for (const record::CoreEntry& other : *cores) {
        if (of_one_tree(one.core, other) && other.accepted && one.siblings.size() < most_siblings) {
            if (auto beside = series_of(project, *other.accepted)) { // one that can't be measured is no help
                one.siblings.push_back({other.core.id, std::move(*beside)});
            }
        }
    }
    return one;
}

} // namespace pithward::bench
