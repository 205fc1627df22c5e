#pragma once

#include "libcore/record/project.h"
#include "libcore/specimen/ring_series.h"

#include <functional>
#include <span>

namespace pithward::batch {

/// Hands each core's accepted reading and its series to `see`. Left out are cores without one and readings that can't
/// be measured. Fails where the project can't be read.
[[nodiscard]] Outcome<void> each_accepted(
    const record::Project& project, std::span<const record::CoreEntry> cores,
    const std::function<void(const record::CoreEntry& core, const Reading& reading, const RingSeries& series)>& see);

} // namespace pithward::batch
