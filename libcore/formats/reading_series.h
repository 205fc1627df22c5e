#pragma once

#include "libcore/specimen/outcome.h"
#include "libcore/specimen/width_series.h"

#include <nlohmann/json.hpp>

namespace pithward::formats {

/// Series from the list `readings` of `pithward measure --json`: one for each reading, called after its scan.
[[nodiscard]] Outcome<WidthTable> series_of_readings(const nlohmann::json& list);

} // namespace pithward::formats
