#pragma once

#include "libcore/dating/year_series.h"

#include <optional>
#include <vector>

namespace pithward::dating {

/// How a stretch of a series agrees with what it is held against, as dated and shifted.
struct Segment {
    int from = 0;
    int to = 0;
    std::optional<double> r;
    int best_shift = 0; ///< The shift with the highest r, up to `most_segment_shift` in both directions.
    std::optional<double> best_r;
    double chance = 1.0; ///< Of such a best r or a higher one among all these shifts, without any agreement.
};

inline constexpr int most_segment_shift = 10;

/// Stretches of `length` years every `step` years, from the youngest end backward; the last one begins with the series.
/// A series that is shorter is one stretch. A correlation needs values in two thirds of its years (and five), at every
/// shift.
[[nodiscard]] std::vector<Segment> segments(const YearSeries& series, const YearSeries& other, int length, int step);

/// The length with which a site of this typical correlation (of a series with the mean of the others) can be looked at
/// in segments: the least even number of years from 20 to 100 at which chance reaches that correlation, at the best of
/// all shifts, in less than one case in a thousand. 100 where none is enough.
[[nodiscard]] int segment_length_for(double typical_r);

} // namespace pithward::dating
