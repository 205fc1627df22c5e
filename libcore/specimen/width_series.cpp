#include "libcore/specimen/width_series.h"

#include <algorithm>
#include <iterator>
#include <utility>

namespace pithward {

std::string series_id(const std::string& scan_stem, std::size_t index, std::size_t count) {
    return count == 1 ? scan_stem : scan_stem + "-" + std::to_string(index + 1);
}

WidthSeries width_series(std::string id, const RingSeries& rings) {
    WidthSeries series;
    series.id = std::move(id);
    series.first_year = Year(1);
    series.dated = false;
    if (!rings.rings.empty() && rings.rings.back().year) {
        series.first_year = *rings.rings.back().year;
        series.dated = true;
    }
    series.widths.reserve(rings.rings.size());
    std::transform(rings.rings.rbegin(), rings.rings.rend(), std::back_inserter(series.widths),
                   [](const Ring& ring) { return ring.width; });
    return series;
}

} // namespace pithward
