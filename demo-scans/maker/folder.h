#pragma once

#include "demo-scans/maker/presets.h"

#include <filesystem>
#include <vector>

namespace pithward::demo {

/// Renders scans into a folder, with NAME.truth.json beside each (for a tray one for each core, by the core's name) and
/// cases.json, the list of all. Says on standard error what it is doing.
[[nodiscard]] Outcome<void> render_folder(const std::filesystem::path& folder, const std::vector<Order>& orders);

} // namespace pithward::demo
