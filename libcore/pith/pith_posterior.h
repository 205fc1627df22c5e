#pragma once

#include "libcore/pith/arcs.h"
#include "libcore/specimen/work.h"

#include <Eigen/Core>

#include <cmath>
#include <span>
#include <vector>

namespace pithward::pith {

/// A place where the pith may be.
struct PithPlace {
    double distance_mm = 0.0; ///< From the innermost boundary on the path.
    double angle = 0.0;       ///< Of the way there against the path, radians, toward y.
    double probability = 0.0;
    double log_swell = 0.0; ///< Mean of ln(height of swells in mm), were the pith here.

    [[nodiscard]] Eigen::Vector2d at() const { return {distance_mm * std::cos(angle), distance_mm * std::sin(angle)}; }
};

/// Where the pith is, as the arcs of a core tell: places with probabilities that sum to 1.
class PithPosterior {
public:
    explicit PithPosterior(std::vector<PithPlace> places);

    [[nodiscard]] std::span<const PithPlace> places() const { return places_; }
    /// Distance below which the share `share` of the probability lies.
    [[nodiscard]] double distance_quantile(double share) const;
    /// The place at the median distance in the mean direction of those about as far.
    [[nodiscard]] Eigen::Vector2d middle() const;
    /// Height of the rings' swells: their standard deviation.
    [[nodiscard]] double swell_mm() const;

private:
    std::vector<PithPlace> places_; ///< By distance.
};

/// Weighs places of the pith by the likelihood of the arcs under nested rings (nested_rings.h), over heights, breadths
/// and lastings of swells. Distances are cut ever finer where they are likely; at each, directions about the likeliest
/// one are weighed. What is known beforehand is weak: cores are aimed at the pith, so beyond some 30 mm a distance is
/// the less likely the longer it is; swells are mostly under 2 % of the radius. Needs at least one arc.
[[nodiscard]] PithPosterior pith_posterior(std::span<const Arc> arcs, const Work& work = {});

/// Distances beyond this are not considered.
inline constexpr double farthest_mm = 300.0;

} // namespace pithward::pith
