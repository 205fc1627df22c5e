#pragma once

#include "libcore/specimen/edit.h"

#include <string>

namespace pithward::review {

/// The edit that brings a reading back to what it was, under a label. What was measured comes back; its state and its
/// analyst stay as they are now, and a finding that comes back otherwise than it is now has no verdict: nobody has
/// passed it so.
[[nodiscard]] Edit bring_back(const Reading& now, Reading then, std::string label);

} // namespace pithward::review
