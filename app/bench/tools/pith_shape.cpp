#include "app/bench/tools/pith_shape.h"

#include "app/picture/ring_places.h"
#include "libcore/pith/pith_by_hand.h"

#include <algorithm>
#include <cmath>

namespace pithward::bench {

namespace {

constexpr double fan_angle = 0.7; ///< Radians to either side that estimated rings are drawn.
constexpr double angle_step = 0.02;

/// Circles on the wood as they lie on the scan, whose two directions may have different scales.
class Circles {
public:
    Circles(const Calibration& scale, ImagePoint centre, ImagePoint toward)
        : x_(scale.px_per_mm_x)
        , y_(scale.px_per_mm_y)
        , centre_(centre)
        , toward_(std::atan2((toward.y - centre.y) / y_, (toward.x - centre.x) / x_)) {}

    [[nodiscard]] double distance_mm(ImagePoint at) const {
        return std::hypot((at.x - centre_.x) / x_, (at.y - centre_.y) / y_);
    }
    /// `angle` from the direction to the core.
    [[nodiscard]] ImagePoint at(double radius_mm, double angle) const {
        return {centre_.x + radius_mm * x_ * std::cos(toward_ + angle),
                centre_.y + radius_mm * y_ * std::sin(toward_ + angle)};
    }
    [[nodiscard]] std::vector<ImagePoint> arc(double radius_mm, double from, double to) const {
        const int steps = std::max(2, static_cast<int>(std::abs(to - from) / angle_step));
        std::vector<ImagePoint> line;
        line.reserve(static_cast<std::size_t>(steps) + 1);
        for (int i = 0; i <= steps; ++i) {
            line.push_back(at(radius_mm, from + (to - from) * i / steps));
        }
        return line;
    }

private:
    double x_;
    double y_;
    ImagePoint centre_;
    double toward_;
};

/// The pieces of a line that lie off the wood.
void add_off_wood(const picture::MeasuredCore& core, const std::string& scan, const std::vector<ImagePoint>& line,
                  std::vector<std::vector<ImagePoint>>& pieces) {
    std::vector<ImagePoint> piece;
    for (const ImagePoint& at : line) {
        const auto off = picture::distance_to_path(core.reading, scan, at);
        if (off && *off <= core.half_breadth_px) {
            if (piece.size() > 1) {
                pieces.push_back(piece);
            }
            piece.clear();
        } else {
            piece.push_back(at);
        }
    }
    if (piece.size() > 1) {
        pieces.push_back(std::move(piece));
    }
}

void add_rings(const picture::MeasuredCore& core, const std::string& scan, const Circles& circles, double gap_px,
               double px_per_mm, PithShape& shape) {
    const std::vector<double> radii = inner_ring_radii(*core.reading.pith);
    if (radii.empty()) {
        return;
    }
    const double gap = radii.front() * px_per_mm;
    const std::size_t every = gap >= gap_px ? 1 : 5.0 * gap >= gap_px ? 5 : 10;
    for (std::size_t k = every; k < radii.size(); k += every) { // counted inward; the boundary itself is drawn
        add_off_wood(core, scan, circles.arc(radii[radii.size() - 1 - k], -fan_angle, fan_angle), shape.rings);
    }
}

void add_arcs(const picture::MeasuredCore& core, const Circles& circles, double px_per_mm, PithShape& shape) {
    const Boundary& innermost = core.reading.boundaries.back();
    const double radius = circles.distance_mm(innermost.at);
    const double breadth = core.half_breadth_px / px_per_mm;
    const double from = std::asin(std::min(0.9, 1.15 * breadth / radius));
    const double to = std::asin(std::min(0.99, 2.1 * breadth / radius));
    for (const double side : {-1.0, 1.0}) {
        PithArc arc{innermost.id, circles.arc(radius, side * from, side * to), {}};
        arc.handle = arc.line.back();
        shape.arcs.push_back(std::move(arc));
    }
}

} // namespace

std::optional<PithShape> pith_shape(const picture::MeasuredCore& core, const std::string& scan, double least_gap_px) {
    const Reading& reading = core.reading;
    if (!reading.pith || reading.boundaries.empty() || reading.path.legs.back().scan != scan) {
        return std::nullopt;
    }
    const auto scale = reading.calibrations.find(scan);
    if (scale == reading.calibrations.end()) {
        return std::nullopt;
    }
    const Pith& pith = *reading.pith;
    PithShape shape;
    shape.centre = pith.at;
    shape.inside = pith.inside;
    const ImagePoint from = reading.boundaries.back().at;
    const Circles circles(scale->second, pith.at, from);
    const double distance = circles.distance_mm(from);
    if (!pith.inside && distance > 0.0) {
        // Away from the core beyond the centre, toward it before.
        shape.range = {circles.at(distance - pith.distance_low.value(), 0.0),
                       circles.at(distance - pith.distance_high.value(), 0.0)};
        add_rings(core, scan, circles, least_gap_px, scale->second.px_per_mm(), shape);
        add_arcs(core, circles, scale->second.px_per_mm(), shape);
    }
    return shape;
}

std::vector<std::vector<ImagePoint>> circles_about(const picture::MeasuredCore& core, ImagePoint centre) {
    constexpr std::size_t most_circles = 7;
    std::vector<std::vector<ImagePoint>> lines;
    const Reading& reading = core.reading;
    const auto scale = reading.calibrations.find(reading.path.legs.back().scan);
    if (scale == reading.calibrations.end()) {
        return lines;
    }
    for (auto it = reading.boundaries.rbegin(); it != reading.boundaries.rend() && lines.size() < most_circles; ++it) {
        const Circles circles(scale->second, centre, it->at);
        const double radius = circles.distance_mm(it->at);
        const double breadth = core.half_breadth_px / scale->second.px_per_mm();
        const double reach = std::asin(std::min(0.9, 1.3 * breadth / std::max(radius, 1e-6)));
        lines.push_back(circles.arc(radius, -reach, reach));
    }
    return lines;
}

} // namespace pithward::bench
