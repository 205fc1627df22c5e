#include "app/project/detail_change.h"

#include "libcore/edit/edits_between.h"
#include "libcore/field/field_checks.h"
#include "libcore/measure/measure.h"

#include <algorithm>

namespace pithward::bench {

namespace {

const record::CoreEntry* entry_of(const std::vector<record::CoreEntry>& cores, record::CoreId id) {
    const auto found = std::ranges::find(cores, id, &record::CoreEntry::id);
    return found == cores.end() ? nullptr : &*found;
}

/// Checks a reading against its core's changed data. False where that changes nothing.
Outcome<bool> check_anew(record::Project& project, ReadingId id, const record::CoreEntry& was,
                         const record::CoreEntry& is, const EditStamp& stamp) {
    const auto document = project.document(id);
    const auto series = document ? measure(document->reading()) : tl::unexpected(document.error());
    if (!series) {
        return tl::unexpected(series.error());
    }
    const Reading& reading = document->reading();
    const Reading checked =
        with_changed_field_facts(reading, *series, {was.site, was.tree, was.core}, {is.site, is.tree, is.core});
    if (checked == reading) {
        return false;
    }
    EditStamp programs = stamp;
    programs.who = "Pithward"; // so that a person's undo does not meet it
    return project.edit(id, edits_between(reading, checked, "Check against the changed field data"), programs)
        .map([](const auto& made) { return made.has_value(); });
}

} // namespace

Outcome<std::vector<ReadingId>> change_details(record::Project& project, const record::CoreEntry& before,
                                               const record::CoreEntry& after, const std::string& label,
                                               const EditStamp& stamp) {
    const auto former = project.cores();
    if (!former) {
        return tl::unexpected(former.error());
    }
    if (auto written = project.put_details(before, after, label, stamp); !written) {
        return tl::unexpected(std::move(written.error()));
    }
    const auto cores = project.cores();
    const auto readings = project.readings();
    if (!cores || !readings) {
        return tl::unexpected(cores ? readings.error() : cores.error());
    }
    std::vector<ReadingId> changed;
    for (const record::ReadingEntry& reading : *readings) {
        const record::CoreEntry* was = entry_of(*former, reading.core);
        const record::CoreEntry* is = entry_of(*cores, reading.core);
        // The second side of a core that goes past the pith is no reading that stands for it.
        if (was == nullptr || is == nullptr || *was == *is || is->accepted != reading.id) {
            continue;
        }
        const auto done = check_anew(project, reading.id, *was, *is, stamp);
        if (!done) {
            return tl::unexpected(done.error());
        }
        if (*done) {
            changed.push_back(reading.id);
        }
    }
    return changed;
}

} // namespace pithward::bench
