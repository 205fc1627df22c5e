#include "app/bench/tools/path_grip.h"

#include "app/picture/nearest_mark.h"
#include "libcore/edit/path_order.h"

#include <cmath>

namespace pithward::bench {

std::optional<Vertex> vertex_after(const Reading& reading, const std::string& scan, ImagePoint at, double reach_px) {
    const auto foot = picture::foot_on_path(reading, scan, at, reach_px);
    if (!foot) {
        return std::nullopt;
    }
    const Leg& leg = reading.path.legs[foot->leg];
    const double here = along_leg_px(leg, foot->at);
    std::size_t index = 1;
    while (index + 1 < leg.points.size() && along_leg_px(leg, leg.points[index]) < here) {
        ++index;
    }
    return Vertex{foot->leg, index};
}

void PathGrip::point(const picture::MeasuredCore* core, const std::string& scan, ImagePoint at, double reach_px,
                     bool bending) {
    under_.reset();
    if (core == nullptr) {
        return;
    }
    const auto& legs = core->reading.path.legs;
    double nearest = 1.5 * reach_px;
    for (std::size_t leg = 0; leg < legs.size(); ++leg) {
        for (std::size_t i = 0; legs[leg].scan == scan && i < legs[leg].points.size(); ++i) {
            const ImagePoint apart = legs[leg].points[i] - at;
            if (const double distance = std::hypot(apart.x, apart.y); distance <= nearest) {
                nearest = distance;
                const bool first = leg == 0 && i == 0;
                const bool last = leg + 1 == legs.size() && i + 1 == legs[leg].points.size();
                under_ = Under{{leg, i}, first ? At::BarkEnd : last ? At::InnerEnd : At::Bend, legs[leg].points};
            }
        }
    }
    const auto fresh =
        bending && !under_ ? vertex_after(core->reading, scan, at, 2.0 * reach_px) : std::optional<Vertex>();
    if (fresh) {
        under_ = Under{*fresh, At::Stretch, legs[fresh->leg].points};
    }
}

bool PathGrip::take() {
    dragging_ = under_.has_value();
    to_.reset();
    return dragging_;
}

void PathGrip::drag(ImagePoint to) {
    to_ = to;
}

std::optional<PathDrop> PathGrip::let_go() {
    const auto to = to_;
    const bool dragged = dragging_;
    give_up();
    if (!dragged || !to || !under_) {
        return std::nullopt;
    }
    return PathDrop{under_->vertex, under_->at == At::Stretch, *to};
}

void PathGrip::give_up() {
    dragging_ = false;
    to_.reset();
}

std::optional<Vertex> PathGrip::bend() const {
    return under_ && under_->at != At::Stretch ? std::optional(under_->vertex) : std::nullopt;
}

std::vector<ImagePoint> PathGrip::preview() const {
    if (!dragging_ || !to_ || !under_) {
        return {};
    }
    std::vector<ImagePoint> line = under_->leg;
    const auto at = line.begin() + static_cast<std::ptrdiff_t>(under_->vertex.index);
    if (under_->at == At::Stretch) {
        line.insert(at, *to_);
    } else {
        *at = *to_;
    }
    return line;
}

QString PathGrip::hint() const {
    if (!under_) {
        return {};
    }
    if (dragging_) {
        return tr("let go: the path runs here");
    }
    switch (under_->at) {
    case At::BarkEnd:
        return tr("bark end of the path\ndrag: longer or shorter · R swaps the ends");
    case At::InnerEnd:
        return tr("inner end of the path\ndrag: longer or shorter");
    case At::Bend:
        return tr("bend of the path\ndrag: move · Shift+V: take away");
    case At::Stretch:
        return tr("drag: bend the path here");
    }
    return {};
}

} // namespace pithward::bench
