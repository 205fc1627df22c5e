#pragma once

namespace pithward::dating {

/// What is assumed of slips before looking. Rates are per ring. All of it assumed, none of it fitted.
struct SlipPrior {
    double missing = 0.0002; ///< A ring of the tree that the series doesn't have.
    double extra = 0.0002;   ///< A ring of the series that the tree doesn't have.
    double merged = 0.5;     ///< Share of the missing: two rings taken as one. The others leave no trace.
    double split = 0.8;      ///< Share of those too many: one ring taken as two. The others are of any width.
    double narrowness =
        1.0; ///< A ring without trace is lost rather where growth was low: by exp(-narrowness * expected value).
    double own_way =
        0.003;          ///< That a stretch begins in which the tree goes its own way and tells nothing of its shift.
    double back = 0.15; ///< That such a stretch ends.
    double whole_series = 0.01; ///< That all of the series is dated a year off; half for each direction.
    int jump = 1; ///< Years by which a slip shifts. Only 1 is real: others tell what chance alone would find.
};

} // namespace pithward::dating
