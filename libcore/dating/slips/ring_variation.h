#pragma once

#include "libcore/dating/year_series.h"

#include <Eigen/Core>

namespace pithward::dating {

/// A width series as the search for slips sees it: how each ring differs from its neighbours, on the logarithmic scale.
struct RingVariation {
    YearSeries value;    ///< Logarithm of the width less its trend, held to four robust deviations.
    Eigen::ArrayXd pair; ///< The same of this ring and the next younger one taken as one ring; NaN for the youngest.
    Eigen::ArrayXd
        pair_odds;        ///< How well the two would pass as parts of one ring, times the change of scale; see below.
    Eigen::ArrayXd scale; ///< Local standard deviation of the innovations, by ring.
    double persistence = 0.0; ///< First-order autocorrelation of `value`.

    [[nodiscard]] bool usable() const { return scale.size() > 0; }
};

/// Takes a spline with a response of one half at `period` years off the logarithms of the widths.
///
/// `pair_odds`: of one ring counted as two, the outer has the share p of the width, with the density 6 p (1 - p)
/// (assumed). To compare it with two rings of their own, whose density is by their two logarithms, that is multiplied
/// with p (1 - p), the Jacobian from (logarithm of the sum, p) to the two logarithms.
///
/// `scale` is the root of the mean square of the innovations, value(t) - persistence * value(t + 1), held to three
/// robust deviations, over 15 rings on both sides, drawn toward the whole series' by ten rings of it (assumed). Not
/// usable with fewer than ten innovations or none at all.
[[nodiscard]] RingVariation ring_variation(const YearSeries& widths, double period);

} // namespace pithward::dating
