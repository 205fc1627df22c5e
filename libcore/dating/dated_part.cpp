#include "libcore/dating/dated_part.h"

#include <algorithm>

namespace pithward::dating {

RingSeries dated_part(RingSeries series) {
    if (!series.rings.empty() && series.rings.front().year) {
        const auto floating = std::ranges::find_if(series.rings, [](const Ring& ring) { return !ring.year; });
        series.rings.erase(floating, series.rings.end());
    }
    return series;
}

} // namespace pithward::dating
