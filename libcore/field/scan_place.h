#pragma once

#include "libcore/specimen/site.h"
#include "libcore/specimen/units.h"

#include <optional>
#include <string>
#include <string_view>
#include <variant>

namespace pithward::field {

/// Which core of a scan is meant, where it shows several: its number, from 1 at the top, or from the left where they
/// stand upright; or a place on the scan that is on the core or beside it.
using ScanPlace = std::variant<int, ImagePoint>;

/// The column of the field sheet that holds it.
inline constexpr const char* scan_place_column = "scan_place";

/// "2", or "1204 388" in whole pixels of the scan.
[[nodiscard]] std::string text_of(const ScanPlace& place);
/// Nothing where the text is neither.
[[nodiscard]] std::optional<ScanPlace> scan_place_from(std::string_view text);

/// What the field sheet or a person says of a core; nothing where they say nothing.
[[nodiscard]] std::optional<ScanPlace> scan_place_of(const Core& core);
void set_scan_place(Core& core, const std::optional<ScanPlace>& place);

} // namespace pithward::field
