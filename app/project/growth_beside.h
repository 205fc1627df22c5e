#pragma once

#include "libcore/pith/growth.h"
#include "libcore/record/project.h"

#include <optional>

namespace pithward::bench {

/// What the accepted readings of the other cores of a core's site tell of growth near the pith (pith/site_growth.h);
/// nothing where fewer than three tell. For the store's thread: each of them is read and measured, but no more than so
/// many that a core opens at once.
[[nodiscard]] Outcome<std::optional<pith::GrowthBeforehand>> growth_beside(const record::Project& project,
                                                                           const record::CoreEntry& core);

} // namespace pithward::bench
