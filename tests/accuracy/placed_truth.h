#pragma once

#include "demo-scans/maker/truth.h"
#include "libcore/measure/leg_line.h"

#include <cstddef>
#include <span>
#include <vector>

namespace pithward::accuracy {

/// A true boundary that a reading is judged by.
struct TruePlace {
    std::size_t boundary = 0; ///< Index into the truth's boundaries.
    double s_px = 0.0;        ///< Along the true path.
    double reach_px = 0.0;    ///< A boundary found nearer than this shows it.
};

/// The truth of a core along its path, in pixels of the scan.
///
/// A visible boundary counts; one less than `least_ring_px` inside the last that counted is at the limit of sampling
/// and does not. Its reach is the quarter of the narrower ring beside it, at most 0.15 mm and at least 2 px.
class PlacedTruth {
public:
    explicit PlacedTruth(const demo::Truth& truth);

    [[nodiscard]] std::span<const TruePlace> places() const { return places_; }
    [[nodiscard]] double along(ImagePoint at) const { return line_.along(at); }
    [[nodiscard]] double px_per_mm() const { return px_per_mm_; }
    /// Whether a place lies on the path, or up to 2 px beyond its ends.
    [[nodiscard]] bool on_path(double s_px) const;
    /// Whether a boundary that doesn't count, or the bark's edge, is within 0.15 mm: what is found there is neither
    /// right nor wrong.
    [[nodiscard]] bool neutral(double s_px) const;

private:
    LegLine line_;
    double px_per_mm_;
    std::vector<TruePlace> places_;
    std::vector<double> neutral_;
};

inline constexpr double least_ring_px = 3.0;

} // namespace pithward::accuracy
