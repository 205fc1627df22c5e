#pragma once

#include "libcore/edit/document.h"

namespace pithward::bench {

/// Who works at this desk, the present time and the program's version.
[[nodiscard]] EditStamp stamp_now();

} // namespace pithward::bench
