#include "libcore/pith/pith_by_hand.h"

#include "libcore/pith/arcs.h"
#include "libcore/pith/inner_widths.h"
#include "libcore/pith/published.h"

#include <algorithm>
#include <cmath>

namespace pithward {

namespace {

using Eigen::Vector2d;

constexpr double placed_within = 0.5;       ///< Mm, on the core.
constexpr double common_half_breadth = 2.5; ///< Mm, where no curve tells how broad the core is.
constexpr double pointed_sd = 0.05;         ///< Mm, of an arc's height.
constexpr double form_share = 0.17;         ///< Of an arc's height.

tl::unexpected<Fault> no_place(const char* what, const char* remedy) {
    return fail("", what, remedy);
}

/// Equally likely distances whose quantiles are those of a range: lognormal on either side of its middle.
pith::PithPosterior spread_over(const pith::DistanceRange& range) {
    constexpr int count = 39;
    constexpr double end_at = 1.645; // deviations
    std::vector<pith::PithPlace> places;
    places.reserve(count);
    const double middle = std::max(range.middle_mm, 0.01);
    for (int i = 0; i < count; ++i) {
        // Quantile of a normal distribution, near enough (logistic, scaled to meet it at 5 and 95 %).
        const double share = (i + 0.5) / count;
        const double deviations = end_at * std::log(share / (1.0 - share)) / std::log(19.0);
        const double end = deviations < 0.0 ? middle / std::max(range.low_mm, 0.01) : *range.high_mm / middle;
        places.push_back({middle * std::pow(std::max(1.0, end), deviations / end_at), 0.0, 1.0 / count, 0.0});
    }
    return pith::PithPosterior(std::move(places));
}

pith::DistanceRange range_by_arc(double distance_mm, double half_breadth_mm) {
    const double chord = std::min(2.0 * half_breadth_mm, 2.0 * distance_mm);
    const double height = pith::arc_height(chord, distance_mm);
    return pith::radius_range(chord, distance_mm, std::hypot(pointed_sd, form_share * height));
}

} // namespace

Outcome<Pith> pith_by_hand(const Reading& reading, const RingSeries& series, ImagePoint at,
                           const pith::GrowthBeforehand& growth) {
    const std::size_t last = reading.path.legs.size() - 1;
    if (reading.path.legs.empty() || reading.boundaries.empty() || reading.boundaries.back().leg != last ||
        !reading.calibrations.contains(reading.path.legs[last].scan)) {
        return no_place("the innermost leg of the path has no boundary with a scale", "mark one first");
    }
    const std::vector<double> widths = pith::inner_widths(reading, series);
    if (widths.empty()) {
        return no_place("no ring has a width, so rings to the pith can't be counted", "mark two boundaries first");
    }
    const pith::InnerArcs inner = pith::inner_arcs(reading);
    const Vector2d place = inner.frame.on_wood(at);
    if (place.x() <= 0.0) {
        return no_place("the pith can't lie on the bark's side of the innermost boundary",
                        "put it further in, or delete the boundaries beyond it");
    }
    const double half_breadth = inner.half_breadth_mm > 0.0 ? inner.half_breadth_mm : common_half_breadth;
    const double distance = place.norm();
    Pith pith;
    pith.at = at;
    pith.source = Pith::Source::Hand;
    pith.inside = std::abs(place.y()) < half_breadth && place.x() < inner.path_end_mm + placed_within;
    const pith::DistanceRange range =
        pith.inside ? pith::DistanceRange{distance, std::max(0.0, distance - placed_within), distance + placed_within}
                    : range_by_arc(distance, half_breadth);
    if (!range.high_mm) {
        return no_place("a ring round that place would be too flat on this core to tell its distance",
                        "put the pith nearer, or leave it untold");
    }
    pith.distance = Millimetres(distance);
    pith.distance_low = Millimetres(range.low_mm);
    pith.distance_high = Millimetres(*range.high_mm);
    const pith::RingCount count = rings_to_pith(spread_over(range), widths, growth);
    if (!pith.inside || count.low > 1) {
        pith.missing_rings = count.rings;
        pith.missing_low = count.low;
        pith.missing_high = count.high;
    }
    return pith;
}

std::optional<ImagePoint> centre_of_arc(const Reading& reading, const Boundary& boundary, ImagePoint through) {
    const auto scale = reading.calibrations.find(reading.path.legs[boundary.leg].scan);
    if (scale == reading.calibrations.end()) {
        return std::nullopt;
    }
    const Vector2d mm(1.0 / scale->second.px_per_mm_x, 1.0 / scale->second.px_per_mm_y);
    const Vector2d tangent =
        Vector2d(std::cos(boundary.tangent), std::sin(boundary.tangent)).cwiseProduct(mm).normalized();
    const Vector2d normal(-tangent.y(), tangent.x());
    const Vector2d away = Vector2d(through.x - boundary.at.x, through.y - boundary.at.y).cwiseProduct(mm);
    const double height = away.dot(normal);
    if (std::abs(height) < 1e-6) {
        return std::nullopt;
    }
    // A circle through the boundary's place with its centre on the normal: |away|^2 = 2 r height.
    const Vector2d centre = normal * (away.squaredNorm() / (2.0 * height));
    return ImagePoint{boundary.at.x + centre.x() / mm.x(), boundary.at.y + centre.y() / mm.y()};
}

std::vector<double> inner_ring_radii(const Pith& pith) {
    std::vector<double> radii;
    radii.reserve(static_cast<std::size_t>(std::max(0, pith.missing_rings)));
    for (int ring = 1; ring <= pith.missing_rings; ++ring) {
        radii.push_back(pith.distance.value() * ring / pith.missing_rings);
    }
    return radii;
}

} // namespace pithward
