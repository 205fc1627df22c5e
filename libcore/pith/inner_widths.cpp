#include "libcore/pith/inner_widths.h"

namespace pithward::pith {

std::vector<double> inner_widths(const Reading& reading, const RingSeries& series) {
    std::vector<double> widths;
    auto ring = series.rings.rbegin();
    if (reading.pith && reading.pith->inside && reading.pith->missing_rings == 0 && ring != series.rings.rend()) {
        ++ring;
    }
    for (; ring != series.rings.rend(); ++ring) {
        if (ring->width && ring->width->value() > 0.0) {
            widths.push_back(ring->width->value());
        }
    }
    return widths;
}

} // namespace pithward::pith
