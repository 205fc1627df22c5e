#pragma once

#include "libcore/dating/slips/common_signal.h"
#include "libcore/dating/slips/ring_variation.h"
#include "libcore/dating/slips/slip_prior.h"

#include <Eigen/Core>

namespace pithward::dating {

/// Greatest net shift that an alignment knows, in both directions.
inline constexpr int most_shift = 3;
inline constexpr int shift_count = 2 * most_shift + 1;

/// Rows of a table: one for each shift, from -most_shift, and one more that is always 0, so that a column fills the
/// registers of the processor.
inline constexpr int shift_rows = shift_count + 1;

/// One value for each shift, and for each shift (rows) and ring (columns, from the bark inward).
using ShiftColumn = Eigen::Array<double, shift_rows, 1>;
using ShiftTable = Eigen::Array<double, shift_rows, Eigen::Dynamic>;

/// Probability times density of each step of the alignment's chain that ends at a ring in a shift. The chain runs from
/// the bark inward; a ring is normal, is two years' rings merged, is the outer or the inner part of one that was split,
/// or was inserted.
struct StepFactors {
    ShiftTable stay;         ///< Normal to normal.
    ShiftTable lost;         ///< Normal in the next higher shift to normal: a year's ring is not there.
    ShiftTable merged;       ///< Normal to merged.
    ShiftTable after_merged; ///< Merged in the next higher shift to normal.
    ShiftTable split;        ///< Outer part in the next lower shift to inner part; the outer part's width counts here.
    ShiftTable after_split;  ///< Inner part to normal.
    ShiftTable inserted;     ///< Normal in the next lower shift to inserted.
    ShiftTable after_inserted; ///< Inserted to normal.
    ShiftTable own_way;        ///< Own way to own way, without what it costs to begin or to go on.
    ShiftTable after_own_way;  ///< Own way to normal.
    double begin_own_way = 0.0;
    double stay_own_way = 0.0;
    double begin_split = 0.0; ///< Normal to outer part, at any ring.
    ShiftColumn start;        ///< Normal, at the outermost ring.
};

/// The factors for a series whose correlation with the common growth is `loading`.
///
/// A ring's value is expected to be loading * scale * growth of its year; what is left has an autocorrelation of the
/// first order and innovations of Student's t with 4 degrees of freedom. Two rings merged are expected to have the
/// logarithm of the sum of both expectations: on a level trend, twice the width.
[[nodiscard]] StepFactors step_factors(const RingVariation& variation, const CommonSignal& signal, double loading,
                                       const SlipPrior& prior);

} // namespace pithward::dating
