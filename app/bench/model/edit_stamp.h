#pragma once

#include "libcore/edit/document.h"

namespace pithward::bench {

/// Who makes the edits that the program makes by itself.
inline constexpr auto programs_name = "Pithward";

/// Who works at this desk, the present time and the program's version.
[[nodiscard]] EditStamp stamp_now();

} // namespace pithward::bench
