#include "app/picture/view_transform.h"

#include <algorithm>
#include <cmath>

namespace pithward::picture {

namespace {

QPointF rotated(QPointF p, double degrees_) {
    const double angle = radians(degrees_);
    const double c = std::cos(angle);
    const double s = std::sin(angle);
    return {c * p.x() - s * p.y(), s * p.x() + c * p.y()};
}

QPointF middle(QSizeF size) {
    return {0.5 * size.width(), 0.5 * size.height()};
}

} // namespace

ViewTransform::ViewTransform(QSizeF view, ImagePoint centre, double scale, double turn_deg)
    : view_(view)
    , centre_(centre)
    , scale_(scale)
    , turn_deg_(std::remainder(turn_deg, 360.0)) {}

ViewTransform ViewTransform::fit(QSizeF view, QSize scan, double margin, double turn_deg) {
    const QRectF box = QTransform().rotate(turn_deg).mapRect(QRectF(QPointF(), QSizeF(scan)));
    const double across = std::max(1.0, view.width() - 2.0 * margin) / std::max(1.0, box.width());
    const double down = std::max(1.0, view.height() - 2.0 * margin) / std::max(1.0, box.height());
    // Pixel centres lie at integers, so the middle of n pixels is at (n - 1) / 2.
    const ImagePoint centre{0.5 * (scan.width() - 1), 0.5 * (scan.height() - 1)};
    return {view, centre, std::min(across, down), turn_deg};
}

QPointF ViewTransform::to_view(ImagePoint image) const {
    const ImagePoint offset = (image - centre_) * scale_;
    return middle(view_) + rotated({offset.x, offset.y}, turn_deg_);
}

ImagePoint ViewTransform::to_image(QPointF view) const {
    const QPointF offset = rotated(view - middle(view_), -turn_deg_) / scale_;
    return centre_ + ImagePoint{offset.x(), offset.y()};
}

QTransform ViewTransform::painter_transform() const {
    QTransform transform;
    transform.translate(0.5 * view_.width(), 0.5 * view_.height());
    transform.rotate(turn_deg_);
    transform.scale(scale_, scale_);
    transform.translate(-centre_.x, -centre_.y);
    return transform;
}

QRectF ViewTransform::visible_region() const {
    return painter_transform().inverted().mapRect(QRectF(QPointF(), view_));
}

ViewTransform ViewTransform::zoomed(double factor, QPointF at, double least, double greatest) const {
    const ImagePoint held = to_image(at);
    ViewTransform next = *this;
    next.scale_ = std::clamp(scale_ * factor, std::min(least, greatest), greatest);
    return next.panned(at - next.to_view(held));
}

ViewTransform ViewTransform::panned(QPointF by) const {
    return centred(to_image(middle(view_) - by));
}

ViewTransform ViewTransform::centred(ImagePoint at) const {
    ViewTransform next = *this;
    next.centre_ = at;
    return next;
}

ViewTransform ViewTransform::scaled_to(double scale) const {
    ViewTransform next = *this;
    next.scale_ = scale;
    return next;
}

ViewTransform ViewTransform::resized(QSizeF view) const {
    ViewTransform next = *this;
    next.view_ = view;
    return next;
}

ViewTransform ViewTransform::turned(double by_deg) const {
    return {view_, centre_, scale_, turn_deg_ + by_deg};
}

ViewTransform ViewTransform::kept_on(QSize scan) const {
    return centred({std::clamp(centre_.x, -0.5, std::max(0.5, scan.width() - 0.5)),
                    std::clamp(centre_.y, -0.5, std::max(0.5, scan.height() - 0.5))});
}

double upright_turn(int orientation) {
    switch (orientation) {
    case 3:
    case 4:
        return 180.0;
    case 5:
    case 6:
        return 90.0;
    case 7:
    case 8:
        return 270.0;
    default:
        return 0.0;
    }
}

} // namespace pithward::picture
