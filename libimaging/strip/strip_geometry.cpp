#include "libimaging/strip/strip_geometry.h"

#include <algorithm>
#include <cmath>

namespace pithward {

StripGeometry::StripGeometry(const std::vector<ImagePoint>& points, const Calibration& calibration)
    : px_per_mm_x_(calibration.px_per_mm_x)
    , px_per_mm_y_(calibration.px_per_mm_y) {
    for (const ImagePoint& point : points) {
        const Vector here{point.x / px_per_mm_x_, point.y / px_per_mm_y_};
        const double step = points_.empty() ? 0.0 : std::hypot(here.x - points_.back().x, here.y - points_.back().y);
        if (points_.empty() || step > 0.0) {
            s_.push_back(points_.empty() ? 0.0 : s_.back() + step);
            points_.push_back(here);
        }
    }
}

StripGeometry::Vector StripGeometry::centre(double s_mm) const {
    const auto after = std::upper_bound(s_.begin() + 1, s_.end() - 1, s_mm);
    const auto i = static_cast<std::size_t>(after - s_.begin());
    const double share = (s_mm - s_[i - 1]) / (s_[i] - s_[i - 1]);
    const Vector& a = points_[i - 1];
    const Vector& b = points_[i];
    return {a.x + share * (b.x - a.x), a.y + share * (b.y - a.y)};
}

StripGeometry::Vector StripGeometry::along(double s_mm) const {
    const Vector a = centre(s_mm - bend_mm);
    const Vector b = centre(s_mm + bend_mm);
    const double length = std::max(std::hypot(b.x - a.x, b.y - a.y), 1e-12);
    return {(b.x - a.x) / length, (b.y - a.y) / length};
}

ImagePoint StripGeometry::image_point(StripPoint at) const {
    const Vector c = centre(at.s_mm);
    const Vector t = along(at.s_mm);
    return {(c.x - t.y * at.u_mm) * px_per_mm_x_, (c.y + t.x * at.u_mm) * px_per_mm_y_};
}

double StripGeometry::image_direction(double s_mm, double slope) const {
    const Vector t = along(s_mm);
    return line_direction(std::atan2((t.x + slope * t.y) * px_per_mm_y_, (-t.y + slope * t.x) * px_per_mm_x_));
}

} // namespace pithward
