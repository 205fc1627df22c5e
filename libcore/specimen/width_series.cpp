#include "libcore/specimen/width_series.h"

#include <utility>

namespace pithward {

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
    for (auto ring = rings.rings.rbegin(); ring != rings.rings.rend(); ++ring) {
        series.widths.push_back(ring->width);
    }
    return series;
}

} // namespace pithward
