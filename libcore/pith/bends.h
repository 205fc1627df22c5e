#pragma once

#include "libcore/pith/arcs.h"

#include <optional>
#include <span>
#include <string>

namespace pithward::pith {

/// Why arcs can't be those of rings round a pith at the core's inner end, in words: they bend away from it, or both
/// ways. Nothing when they can.
[[nodiscard]] std::optional<std::string> wrongly_bent(std::span<const Arc> arcs);

} // namespace pithward::pith
