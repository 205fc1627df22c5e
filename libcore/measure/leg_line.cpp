#include "libcore/measure/leg_line.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace pithward {

WoodVector on_wood(ImagePoint at, const Calibration& calibration) {
    return {at.x / calibration.px_per_mm_x, at.y / calibration.px_per_mm_y};
}

double direction_on_wood(double image_direction, const Calibration& calibration) {
    return std::atan2(std::sin(image_direction) / calibration.px_per_mm_y,
                      std::cos(image_direction) / calibration.px_per_mm_x);
}

LegLine::LegLine(const Leg& leg, const Calibration& calibration)
    : calibration_(calibration) {
    for (const ImagePoint& point : leg.points) {
        const WoodVector here = on_wood(point, calibration);
        const double step = points_.empty() ? 0.0 : std::hypot(here.x - points_.back().x, here.y - points_.back().y);
        if (points_.empty() || step > 0.0) {
            s_.push_back(points_.empty() ? 0.0 : s_.back() + step);
            points_.push_back(here);
        }
    }
}

double LegLine::direction(ImagePoint at) const {
    const std::size_t i = foot(at).segment;
    const WoodVector step = points_[i + 1] - points_[i];
    return std::atan2(step.y, step.x);
}

LegLine::Foot LegLine::foot(ImagePoint at) const {
    const WoodVector here = on_wood(at, calibration_);
    double nearest = std::numeric_limits<double>::infinity();
    Foot place;
    for (std::size_t i = 0; i + 1 < points_.size(); ++i) {
        const WoodVector step = points_[i + 1] - points_[i];
        const WoodVector away = here - points_[i];
        const double length = s_[i + 1] - s_[i];
        double share = (away.x * step.x + away.y * step.y) / (length * length);
        share = i == 0 ? share : std::max(share, 0.0);
        share = i + 2 == points_.size() ? share : std::min(share, 1.0);
        const double distance = std::hypot(away.x - share * step.x, away.y - share * step.y);
        if (distance < nearest) {
            nearest = distance;
            place = {s_[i] + share * length, i};
        }
    }
    return place;
}

} // namespace pithward
