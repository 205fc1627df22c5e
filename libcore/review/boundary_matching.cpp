#include "libcore/review/boundary_matching.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace pithward::review {

namespace {

constexpr double least_reach_mm = 0.05;
constexpr double greatest_reach_mm = 1.0;
constexpr double cost_alone = 0.5;

double reach_of(const RingSeries& series, std::size_t index) {
    double nearest = 2.0 * greatest_reach_mm;
    const auto s = [&](std::size_t i) { return series.boundaries[i].s.value(); };
    if (index > 0) {
        nearest = std::min(nearest, s(index) - s(index - 1));
    }
    if (index + 1 < series.boundaries.size()) {
        nearest = std::min(nearest, s(index + 1) - s(index));
    }
    return std::clamp(0.5 * nearest, least_reach_mm, greatest_reach_mm);
}

/// Direction of a boundary on the wood, where the scan's two scales may differ.
double angle_on_wood(double tangent, const Calibration& scale) {
    return std::atan2(std::sin(tangent) / scale.px_per_mm_y, std::cos(tangent) / scale.px_per_mm_x);
}

} // namespace

std::vector<MarkedPlace> marked_places(const Reading& reading, const RingSeries& series) {
    std::vector<MarkedPlace> places;
    places.reserve(reading.boundaries.size());
    for (std::size_t i = 0; i < reading.boundaries.size() && i < series.boundaries.size(); ++i) {
        const Boundary& boundary = reading.boundaries[i];
        if (boundary.leg >= reading.path.legs.size()) {
            continue;
        }
        const std::string& scan = reading.path.legs[boundary.leg].scan;
        const auto scale = reading.calibrations.find(scan);
        if (scale != reading.calibrations.end()) {
            places.push_back({&boundary, &scan, &scale->second, reach_of(series, i)});
        }
    }
    return places;
}

double way_across_mm(const MarkedPlace& a, const MarkedPlace& b) {
    const double x = (b.boundary->at.x - a.boundary->at.x) / a.scale->px_per_mm_x;
    const double y = (b.boundary->at.y - a.boundary->at.y) / a.scale->px_per_mm_y;
    const double one = angle_on_wood(a.boundary->tangent, *a.scale);
    const double other = angle_on_wood(b.boundary->tangent, *a.scale);
    // Tangents are lines without a sense: their mean is half of the mean of the doubled angles.
    const double mean =
        0.5 * std::atan2(std::sin(2.0 * one) + std::sin(2.0 * other), std::cos(2.0 * one) + std::cos(2.0 * other));
    return std::abs(y * std::cos(mean) - x * std::sin(mean));
}

std::vector<std::pair<std::size_t, std::size_t>> matched_places(const std::vector<MarkedPlace>& a,
                                                                const std::vector<MarkedPlace>& b) {
    const std::size_t columns = b.size() + 1;
    enum class Step : unsigned char { Twin, SkipA, SkipB };
    std::vector<Step> steps((a.size() + 1) * columns, Step::SkipB);
    std::vector<double> above(columns);
    std::vector<double> cost(columns);
    for (std::size_t j = 0; j < columns; ++j) {
        above[j] = cost_alone * static_cast<double>(j);
    }
    for (std::size_t i = 1; i <= a.size(); ++i) {
        cost[0] = cost_alone * static_cast<double>(i);
        steps[i * columns] = Step::SkipA;
        for (std::size_t j = 1; j <= b.size(); ++j) {
            const MarkedPlace& one = a[i - 1];
            const MarkedPlace& other = b[j - 1];
            double twin = std::numeric_limits<double>::infinity();
            if (*one.scan == *other.scan) {
                const double share = way_across_mm(one, other) / std::min(one.reach_mm, other.reach_mm);
                twin = above[j - 1] + share * share;
            }
            const double skip_a = above[j] + cost_alone;
            const double skip_b = cost[j - 1] + cost_alone;
            cost[j] = std::min({twin, skip_a, skip_b});
            steps[i * columns + j] = twin <= std::min(skip_a, skip_b) ? Step::Twin
                                     : skip_a <= skip_b               ? Step::SkipA
                                                                      : Step::SkipB;
        }
        std::swap(above, cost);
    }
    std::vector<std::pair<std::size_t, std::size_t>> pairs;
    pairs.reserve(std::min(a.size(), b.size()));
    for (std::size_t i = a.size(), j = b.size(); i > 0 || j > 0;) {
        const Step step = steps[i * columns + j];
        if (step == Step::Twin) {
            pairs.emplace_back(i - 1, j - 1);
        }
        i -= step == Step::SkipB ? 0 : 1;
        j -= step == Step::SkipA ? 0 : 1;
    }
    std::ranges::reverse(pairs);
    return pairs;
}

} // namespace pithward::review
