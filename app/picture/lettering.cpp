#include "app/picture/lettering.h"

namespace pithward::picture {

YearLettering::YearLettering(double ring_width) {
    for (const int step : {1, 10, 20, 50, 100, 500, 1000}) {
        step_ = step;
        if (ring_width * step >= least_room) {
            break;
        }
    }
}

std::optional<LetteredYear> YearLettering::at(const PlacedBoundary& boundary) const {
    const int value = boundary.year ? boundary.year->value() : boundary.ring_number;
    if (value % step_ != 0 || (!boundary.year && value == 0)) {
        return std::nullopt;
    }
    return LetteredYear{QString::number(value), value % 10 == 0};
}

} // namespace pithward::picture
