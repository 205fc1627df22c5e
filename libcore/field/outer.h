#pragma once

#include "libcore/field/remark.h"
#include "libcore/specimen/site.h"

#include <optional>

namespace pithward::field {

/// Bark or outer wood is lost, as the field sheet says or the reading has it: an unknown number of outer rings is gone.
/// The date of coring does not date the series, crossdating must; the outermost year is the earliest possible last
/// year.
[[nodiscard]] std::optional<Remark> lost_wood_remark(const Core& core, const Reading& reading);

} // namespace pithward::field
