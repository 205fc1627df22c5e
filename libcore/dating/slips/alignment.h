#pragma once

#include "libcore/dating/slips/common_signal.h"
#include "libcore/dating/slips/ring_variation.h"
#include "libcore/dating/slips/slip_prior.h"
#include "libcore/dating/slips/step_factors.h"

#include <Eigen/Core>

namespace pithward::dating {

/// What is known of the slips of a series after all ways of aligning it with the others have been weighed.
struct Alignment {
    int first_year = 0;     ///< Of the two arrays by year.
    Eigen::ArrayXd missing; ///< Expected number of rings missing, by the calendar year of the ring outside the slip.
    Eigen::ArrayXd extra;   ///< The same of rings too many.
    /// Probability of each shift for each ring, oldest ring first, lowest shift first: a shift of k means that the
    /// ring's year has to be raised by k.
    Eigen::Array<double, Eigen::Dynamic, shift_count> shift;
    double no_slip = 1.0;      ///< Probability that there is none.
    double loading = 0.0;      ///< Correlation with the growth in common: posterior mean.
    double log_evidence = 0.0; ///< Logarithm of the density of the series.
};

/// Weighs all alignments of a series with the growth in common, exactly: forward and backward sums over a chain from
/// the bark inward (Rabiner 1989, Proceedings of the IEEE 77), whose state is the shift and what the ring is (see
/// StepFactors). The loading is not fitted but averaged over, 0.1 to 0.9 with normal weights about 0.55 (deviation 0.2,
/// assumed), so that a series is not held to fit the dates that it came with.
///
/// Loadings are tried from `near` outward until one weighs less than a thousandth, as the evidence has one peak: a good
/// guess saves time and hardly changes the result.
///
/// Without enough of either, a series of any length is said to have no slip.
[[nodiscard]] Alignment align(const RingVariation& variation, const CommonSignal& signal, const SlipPrior& prior,
                              double near = 0.5);

} // namespace pithward::dating
