#include "app/batch/each_accepted.h"

#include "libcore/measure/measure.h"

namespace pithward::batch {

Outcome<void> each_accepted(
    const record::Project& project, std::span<const record::CoreEntry> cores,
    const std::function<void(const record::CoreEntry& core, const Reading& reading, const RingSeries& series)>& see) {
    for (const record::CoreEntry& core : cores) {
        if (!core.accepted) {
            continue;
        }
        const auto reading = project.reading(*core.accepted);
        if (!reading) {
            return tl::unexpected(reading.error());
        }
        if (const auto series = measure(*reading)) {
            see(core, *reading, *series);
        }
    }
    return {};
}

} // namespace pithward::batch
