#include "libcore/edit/path_order.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace pithward {

namespace {

PathOrder order_of(const Path& path, std::size_t leg, ImagePoint at, std::int64_t id) {
    return {leg, leg < path.legs.size() ? along_leg_px(path.legs[leg], at) : 0.0, id};
}

} // namespace

double along_leg_px(const Leg& leg, ImagePoint at) {
    double nearest = std::numeric_limits<double>::infinity();
    double along = 0.0;
    double before = 0.0;
    for (std::size_t i = 1; i < leg.points.size(); ++i) {
        const ImagePoint start = leg.points[i - 1];
        const ImagePoint step = leg.points[i] - start;
        const double length = std::hypot(step.x, step.y);
        if (!(length > 0.0)) {
            continue;
        }
        const ImagePoint to = at - start;
        double share = (to.x * step.x + to.y * step.y) / (length * length);
        // Beyond either end the leg goes on straight.
        if (i > 1) {
            share = std::max(share, 0.0);
        }
        if (i + 1 < leg.points.size()) {
            share = std::min(share, 1.0);
        }
        const ImagePoint off = to - step * share;
        if (const double distance = std::hypot(off.x, off.y); distance < nearest) {
            nearest = distance;
            along = before + share * length;
        }
        before += length;
    }
    return along;
}

PathOrder path_order(const Path& path, const Boundary& boundary) {
    return order_of(path, boundary.leg, boundary.at, boundary.id.value);
}

PathOrder path_order(const Path& path, const Candidate& candidate) {
    return order_of(path, candidate.leg, candidate.at, candidate.id.value);
}

PathOrder path_order(const Path& path, const Break& stretch) {
    return order_of(path, stretch.leg, stretch.from, stretch.id.value);
}

} // namespace pithward
