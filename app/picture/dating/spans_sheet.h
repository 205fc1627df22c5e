#pragma once

#include "app/picture/dating/sheet.h"
#include "libcore/measure/age.h"

#include <optional>
#include <string>
#include <vector>

namespace pithward::picture {

/// The years that a series covers.
struct SeriesSpan {
    std::string name;
    int first = 0;
    int last = 0;
    std::optional<YearRange> pith; ///< At the height of the core.
};

/// Which years each series covers, the oldest first, with the way to the pith and its interval. `breadth`: of the
/// years, in points.
[[nodiscard]] Sheet spans_sheet(std::vector<SeriesSpan> spans, double breadth);

} // namespace pithward::picture
