#pragma once

#include "app/picture/dating/sheet.h"
#include "libcore/dating/chronology.h"

#include <optional>

namespace pithward::picture {

/// A site chronology: its values with their 90 % interval and pointer years, how many trees and series stand behind
/// each year, and the expressed population signal over windows. `breadth`: of the years, in points; nothing: by their
/// number. Refers to `chronology`, which must outlive it.
[[nodiscard]] Sheet chronology_sheet(const dating::Chronology& chronology, std::optional<double> breadth = {});

} // namespace pithward::picture
