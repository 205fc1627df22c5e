#include "tests/accuracy/placed_truth.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace pithward::accuracy {

namespace {

constexpr double least_reach_px = 2.0;
constexpr double greatest_reach_mm = 0.15;
constexpr double share_of_ring = 0.25;
constexpr double lone_ring_px = 50.0; ///< Taken for the rings beside a boundary that is the only one.

/// The path with a pixel as its unit.
LegLine line_in_pixels(const demo::Truth& truth) {
    return {Leg{"", truth.path, {}}, Calibration{.px_per_mm_x = 1.0, .px_per_mm_y = 1.0}};
}

} // namespace

PlacedTruth::PlacedTruth(const demo::Truth& truth)
    : line_(line_in_pixels(truth))
    , px_per_mm_(truth.dpi / Calibration::millimetres_per_inch) {
    for (std::size_t i = 0; i < truth.boundaries.size(); ++i) {
        const double s = along(truth.boundaries[i].at);
        if (truth.boundaries[i].visible && (places_.empty() || s - places_.back().s_px >= least_ring_px)) {
            places_.push_back({i, s, 0.0});
        } else {
            neutral_.push_back(s);
        }
    }
    if (truth.bark_edge) {
        neutral_.push_back(along(*truth.bark_edge));
    }
    const std::size_t last = places_.empty() ? 0 : places_.size() - 1;
    for (std::size_t i = 0; i < places_.size(); ++i) {
        constexpr double none = std::numeric_limits<double>::infinity();
        const double outside = i > 0 ? places_[i].s_px - places_[i - 1].s_px : none;
        const double inside = i < last ? places_[i + 1].s_px - places_[i].s_px : none;
        const double ring = last == 0 ? lone_ring_px : std::min(outside, inside);
        places_[i].reach_px = std::max(least_reach_px, std::min(share_of_ring * ring, greatest_reach_mm * px_per_mm_));
    }
}

bool PlacedTruth::on_path(double s_px) const {
    return s_px >= -least_reach_px && s_px <= line_.length_mm() + least_reach_px;
}

bool PlacedTruth::neutral(double s_px) const {
    return std::ranges::any_of(neutral_,
                               [&](double s) { return std::abs(s - s_px) <= greatest_reach_mm * px_per_mm_; });
}

} // namespace pithward::accuracy
