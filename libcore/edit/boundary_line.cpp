#include "libcore/edit/boundary_line.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace pithward {

namespace {

double length_of(ImagePoint v) {
    return std::hypot(v.x, v.y);
}

double cross(ImagePoint a, ImagePoint b) {
    return a.x * b.y - a.y * b.x;
}

/// Where two stretches cross; nothing when they don't or run alike.
std::optional<ImagePoint> meeting(ImagePoint a, ImagePoint b, ImagePoint c, ImagePoint d) {
    const ImagePoint along = b - a;
    const ImagePoint across = d - c;
    const double turn = cross(along, across);
    if (turn == 0.0) {
        return std::nullopt;
    }
    const double share = cross(c - a, across) / turn;
    const double other = cross(c - a, along) / turn;
    if (share < 0.0 || share > 1.0 || other < 0.0 || other > 1.0) {
        return std::nullopt;
    }
    return a + along * share;
}

/// A leg's line, going on straight past its ends.
std::vector<ImagePoint> longer(std::vector<ImagePoint> points, double at_start, double at_end) {
    const auto on = [](ImagePoint from, ImagePoint to, double by) {
        const double length = length_of(to - from);
        return length > 0.0 ? to + (to - from) * (by / length) : to;
    };
    if (points.size() > 1) {
        points.front() = on(points[1], points.front(), at_start);
        points.back() = on(points[points.size() - 2], points.back(), at_end);
    }
    return points;
}

} // namespace

BoundaryLine::BoundaryLine(const std::vector<ImagePoint>& curve, ImagePoint at, double tangent, double reach_px) {
    const ImagePoint way{std::cos(tangent), std::sin(tangent)};
    points_ = curve.size() > 1 ? curve : std::vector{at};
    const ImagePoint whole = points_.back() - points_.front();
    const double sense = whole.x * way.x + whole.y * way.y < 0.0 ? -reach_px : reach_px;
    points_.insert(points_.begin(), points_.front() - way * sense);
    points_.push_back(points_.back() + way * sense);
}

std::optional<ImagePoint> BoundaryLine::crossing(const Leg& leg, ImagePoint near, double beyond_start,
                                                 double beyond_end) const {
    const std::vector<ImagePoint> way = longer(leg.points, beyond_start, beyond_end);
    std::optional<ImagePoint> nearest;
    for (std::size_t i = 1; i < way.size(); ++i) {
        for (std::size_t k = 1; k < points_.size(); ++k) {
            const auto here = meeting(way[i - 1], way[i], points_[k - 1], points_[k]);
            if (here && (!nearest || length_of(*here - near) < length_of(*nearest - near))) {
                nearest = here;
            }
        }
    }
    return nearest;
}

ImagePoint BoundaryLine::at_length(double along) const {
    for (std::size_t k = 1; k < points_.size(); ++k) {
        const ImagePoint step = points_[k] - points_[k - 1];
        const double span = length_of(step);
        if (along <= span && span > 0.0) {
            return points_[k - 1] + step * (std::max(along, 0.0) / span);
        }
        along -= span;
    }
    return points_.back();
}

BoundaryLine::Foot BoundaryLine::foot(ImagePoint of) const {
    constexpr double about = 15.0; // pixels to either side: what was traced is rough from point to point
    Foot best;
    double least = std::numeric_limits<double>::infinity();
    double passed = 0.0;
    double along = 0.0;
    for (std::size_t k = 1; k < points_.size(); ++k) {
        const ImagePoint step = points_[k] - points_[k - 1];
        const double span = length_of(step);
        if (span <= 0.0) {
            continue;
        }
        const ImagePoint to = of - points_[k - 1];
        const double share = std::clamp((to.x * step.x + to.y * step.y) / (span * span), 0.0, 1.0);
        const ImagePoint at = points_[k - 1] + step * share;
        if (const double apart = length_of(of - at); apart < least) {
            least = apart;
            best.at = at;
            along = passed + share * span;
        }
        passed += span;
    }
    const ImagePoint way = at_length(along + about) - at_length(along - about);
    best.tangent = line_direction(std::atan2(way.y, way.x));
    return best;
}

} // namespace pithward
