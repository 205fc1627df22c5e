#include "app/bench/tools/boundary_grip.h"

namespace pithward::bench {

bool BoundaryGrip::point(const picture::MeasuredCore* core, const std::string& scan, ImagePoint at, double reach_px) {
    const BoundaryId before = under_ ? under_->id : BoundaryId{};
    const QString said = hint();
    under_.reset();
    on_wood_ = on_candidate_ = confirmed_ = false;
    if (core != nullptr) {
        on_wood_ = picture::foot_on_path(core->reading, scan, at, core->half_breadth_px).has_value();
        under_ = picture::nearest_boundary(*core, scan, at, reach_px);
        on_candidate_ = !under_ && picture::nearest_candidate(*core, scan, at, reach_px).has_value();
    }
    if (under_) {
        const Boundary* boundary = picture::boundary_of(core->reading, under_->id);
        centre_ = boundary->at;
        confirmed_ = boundary->confirmation != Confirmation::None;
    }
    return before != (under_ ? under_->id : BoundaryId{}) || said != hint();
}

bool BoundaryGrip::take() {
    dragging_ = under_.has_value();
    to_.reset();
    return dragging_;
}

void BoundaryGrip::drag(ImagePoint to) {
    to_ = to;
}

std::optional<GripDrop> BoundaryGrip::let_go() {
    const auto to = to_;
    const bool dragged = dragging_;
    give_up();
    if (!dragged || !to || !under_) {
        return std::nullopt;
    }
    return GripDrop{under_->id, under_->at_end, *to, picture::line_direction(centre_, *to)};
}

void BoundaryGrip::give_up() {
    dragging_ = false;
    to_.reset();
}

std::optional<Boundary> BoundaryGrip::preview(const picture::MeasuredCore& core, const std::string& scan) const {
    const Boundary* boundary = dragging_ && to_ && under_ ? picture::boundary_of(core.reading, under_->id) : nullptr;
    if (boundary == nullptr) {
        return std::nullopt;
    }
    Boundary moved = *boundary;
    moved.curve.clear();
    if (under_->at_end) {
        moved.tangent = picture::line_direction(centre_, *to_);
        return moved;
    }
    const auto foot = picture::foot_on_path(core.reading, scan, *to_, 1.5 * core.half_breadth_px);
    if (!foot) {
        return std::nullopt;
    }
    moved.at = foot->at;
    return moved;
}

QString BoundaryGrip::hint() const {
    if (dragging_) {
        return under_->at_end ? tr("let go: turn it so") : tr("let go: put it here");
    }
    if (under_) {
        const QString click =
            confirmed_ ? tr("click: take up · Del deletes") : tr("click: take up · C confirms · Del deletes");
        return under_->at_end ? tr("%1\ndrag: turn").arg(click) : tr("%1\ndrag: move").arg(click);
    }
    if (on_candidate_) {
        return tr("turned down\nShift+F takes it as a boundary");
    }
    return on_wood_ ? tr("double click: add a boundary") : QString();
}

} // namespace pithward::bench
