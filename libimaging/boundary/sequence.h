#pragma once

#include "libimaging/boundary/mark.h"

#include <cstddef>
#include <vector>

namespace pithward::boundary {

/// The marks of a path judged together.
struct Sequence {
    std::vector<std::size_t> chosen; ///< Indices of the most probable sequence of boundaries, in path order.
    std::vector<double> probability; ///< For every mark: that it is annual, over all sequences.
};

struct SequenceOptions {
    /// Widths of neighbouring rings are alike: the change of their logarithm follows Student's t with this scale ...
    double width_scale = 0.45;
    /// ... and these degrees of freedom. Mean sensitivities of 0.2 to 0.4 are usual (common practice of the trade).
    double width_freedom = 3.0;
    double width_weight = 0.8; ///< Weight of the widths against the signs of the marks.
    /// Added for each boundary taken: the likelihood of the widths counts against every boundary. Fitted to rendered
    /// cores so that the probabilities hold.
    double taken = 0.0;
    double narrowest_mm = 0.03; ///< Rings narrower than this cost extra.
    std::size_t farthest = 12;  ///< So many marks may be passed over between two boundaries.

    /// Mean score of a change of width. E[ln(1 + t^2 / 3)] of Student's t with 3 degrees of freedom is psi(2) -
    /// psi(3/2) = 0.386.
    [[nodiscard]] double usual_width_score() const { return -0.5 * (width_freedom + 1.0) * 0.386 * width_weight; }
};

/// Chooses among marks as a whole: a chain over pairs of neighbouring boundaries, whose score adds up the log odds of
/// the marks taken and the likelihood of each change of width. Solved exactly: the best sequence by dynamic programming
/// (Viterbi), the probabilities by the forward-backward sums over all sequences. `s_mm` are the marks' places,
/// ascending, breaks taken off.
[[nodiscard]] Sequence best_sequence(const std::vector<double>& s_mm, const std::vector<double>& log_odds,
                                     const SequenceOptions& options = {});

} // namespace pithward::boundary
