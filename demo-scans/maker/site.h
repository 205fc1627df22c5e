#pragma once

#include "demo-scans/maker/presets.h"
#include "libcore/specimen/site.h"

#include <vector>

namespace pithward::demo {

/// The demo site, "Hathering Wood": invented trees at an invented place. Twelve cores from six pines, two cores of
/// oak-like and two of maple-like wood. All cores of a kind share the site's years, the two of a tree its growth.
[[nodiscard]] std::vector<Order> demo_site();

/// The site as its field sheet tells of it. Made from the same table as the scans.
[[nodiscard]] Site demo_field_sheet();

} // namespace pithward::demo
