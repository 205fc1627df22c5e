#include "app/bench/tools/pith_grip.h"

#include "app/picture/nearest_mark.h"
#include "libcore/pith/pith_by_hand.h"

#include <cmath>
#include <utility>

namespace pithward::bench {

void PithGrip::point(const picture::MeasuredCore* core, const std::string& scan, ImagePoint at, double reach_px) {
    under_.reset();
    const auto shape = core != nullptr ? pith_shape(*core, scan, 0.0) : std::nullopt;
    if (!shape) {
        return;
    }
    double nearest = 1.8 * reach_px;
    const auto look_at = [&](ImagePoint place, std::optional<BoundaryId> ring) {
        const ImagePoint apart = place - at;
        if (const double distance = std::hypot(apart.x, apart.y); distance <= nearest) {
            nearest = distance;
            under_ = Under{ring};
        }
    };
    look_at(shape->centre, std::nullopt);
    for (const PithArc& arc : shape->arcs) {
        look_at(arc.handle, arc.boundary);
    }
}

bool PithGrip::take() {
    dragging_ = under_.has_value();
    to_.reset();
    return dragging_;
}

void PithGrip::drag(ImagePoint to) {
    to_ = to;
}

std::optional<PithDrop> PithGrip::let_go() {
    const auto to = to_;
    const bool dragged = dragging_;
    give_up();
    return dragged && to && under_ ? std::optional(PithDrop{under_->ring, *to}) : std::nullopt;
}

void PithGrip::give_up() {
    dragging_ = false;
    to_.reset();
}

std::optional<ImagePoint> PithGrip::centre(const picture::MeasuredCore& core) const {
    if (!dragging_ || !to_ || !under_) {
        return std::nullopt;
    }
    const Boundary* ring = under_->ring ? picture::boundary_of(core.reading, *under_->ring) : nullptr;
    return ring != nullptr ? centre_of_arc(core.reading, *ring, *to_) : to_;
}

QString PithGrip::hint() const {
    if (!under_) {
        return {};
    }
    if (dragging_) {
        return tr("let go: the pith lies here");
    }
    return under_->ring ? tr("arc of the innermost ring\ndrag: bend it until it fits")
                        : tr("the pith\ndrag: put it elsewhere · Shift+Z judges it by the rings");
}

} // namespace pithward::bench
