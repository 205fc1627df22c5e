#include "libcore/specimen/path_check.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace pithward {

namespace {

constexpr double step_mm = 0.25;
constexpr double beside_mm = 0.5;    ///< Nearer than this a later stretch runs over the same wood.
constexpr double corner_mm = 1.5;    ///< So much of the path makes a corner, which is no way back.
constexpr double opposite = -0.7071; ///< Cosine of the angle from which on a direction counts as back.

/// A step of a path, in mm.
struct Step {
    double x = 0.0;
    double y = 0.0;
    double dx = 0.0; ///< Direction, of length 1.
    double dy = 0.0;
    double s = 0.0;
};

std::vector<Step> steps_of(const std::vector<ImagePoint>& points, const Calibration& calibration) {
    std::vector<Step> steps;
    double start = 0.0;
    for (std::size_t i = 1; i < points.size(); ++i) {
        const double length = calibration.distance(points[i - 1], points[i]).value();
        if (length <= 0.0) {
            continue;
        }
        const double x = points[i - 1].x / calibration.px_per_mm_x;
        const double y = points[i - 1].y / calibration.px_per_mm_y;
        const double dx = (points[i].x / calibration.px_per_mm_x - x) / length;
        const double dy = (points[i].y / calibration.px_per_mm_y - y) / length;
        const int count = static_cast<int>(std::ceil(length / step_mm));
        for (int k = 0; k < count; ++k) {
            const double along = length * (k + 0.5) / count;
            steps.push_back({x + along * dx, y + along * dy, dx, dy, start + along});
        }
        start += length;
    }
    return steps;
}

/// Where the path runs back over itself, in pixels.
std::optional<ImagePoint> way_back(const std::vector<Step>& steps, const Calibration& calibration) {
    for (auto later = steps.begin(); later != steps.end(); ++later) {
        const auto same_wood = [&](const Step& step) {
            return later->s - step.s > corner_mm && std::abs(later->x - step.x) < beside_mm &&
                   std::hypot(later->x - step.x, later->y - step.y) < beside_mm &&
                   later->dx * step.dx + later->dy * step.dy < opposite;
        };
        if (std::any_of(steps.begin(), later, same_wood)) {
            return ImagePoint{later->x * calibration.px_per_mm_x, later->y * calibration.px_per_mm_y};
        }
    }
    return std::nullopt;
}

std::string rounded(double value) {
    return std::to_string(std::lround(value));
}

} // namespace

std::optional<Fault> fault_of_path(const std::vector<ImagePoint>& points, const Scan& scan,
                                   const Calibration& calibration) {
    const auto outside = [&](const ImagePoint& p) {
        return !std::isfinite(p.x) || !std::isfinite(p.y) || p.x < -0.5 || p.y < -0.5 || p.x > scan.width - 0.5 ||
               p.y > scan.height - 0.5;
    };
    const auto at_first = [&](const ImagePoint& p) {
        return std::hypot(p.x - points.front().x, p.y - points.front().y) < 1.0;
    };
    if (points.size() < 2 || std::ranges::all_of(points, at_first)) {
        return Fault{scan.file, "the path has only one point", "give at least two points, more than a pixel apart"};
    }
    if (points.size() > most_path_points) {
        return Fault{scan.file, "the path has more than 10,000 points", "give fewer points"};
    }
    if (std::ranges::any_of(points, outside)) {
        return Fault{scan.file,
                     "the path leaves the scan, which is " + std::to_string(scan.width) + " x " +
                         std::to_string(scan.height) + " pixels",
                     "keep every point of the path on the scan"};
    }
    double length = 0.0;
    for (std::size_t i = 1; i < points.size(); ++i) {
        length += calibration.distance(points[i - 1], points[i]).value();
    }
    if (!(length <= longest_path_mm)) {
        return Fault{scan.file, "the path is longer than 3 m of wood", "give a shorter path, and check the resolution"};
    }
    if (const auto back = way_back(steps_of(points, calibration), calibration)) {
        return Fault{scan.file,
                     "the path runs back over itself near " + rounded(back->x) + "," + rounded(back->y) +
                         ", so rings would count twice",
                     "draw it one way, from end to end"};
    }
    return std::nullopt;
}

} // namespace pithward
