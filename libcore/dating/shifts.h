#pragma once

#include "libcore/dating/year_series.h"

#include <optional>
#include <vector>

namespace pithward::dating {

/// A series with so many years added to its own, beside another.
struct ShiftMatch {
    int shift = 0;
    int overlap = 0;
    double r = 0.0;
    double t = 0.0;
    double chance = 1.0; ///< Of such a t or a higher one at this one position, without any agreement.
    friend bool operator==(const ShiftMatch&, const ShiftMatch&) = default;
};

/// The least overlap that is looked at: 30 years, or all of a shorter series but at least 5.
[[nodiscard]] int least_overlap_of(const YearSeries& series);

/// First-order autocorrelation of a series; 0 where it has none.
[[nodiscard]] double lag_one(const YearSeries& series);

/// The share of years that count as independent for series of these first-order autocorrelations:
/// (1 - a b) / (1 + a b), 1 at most (Bartlett 1935; Dawdy and Matalas 1964; from memory).
[[nodiscard]] double independent_share(double a, double b);

/// The probability of such a correlation or a higher one at one position, without any agreement.
[[nodiscard]] double chance_at(double r, int overlap, double independent_share);

/// Every shift with at least `least_overlap` years in common and a correlation, in order of the shifts.
///
/// `chance` counts fewer independent years where both series are autocorrelated, see `independent_share`.
[[nodiscard]] std::vector<ShiftMatch> every_shift(const YearSeries& series, const YearSeries& other, int least_overlap);

/// The same by the height of t, best first, with the probability that a best match of this height arises by chance
/// among all positions looked at: 1 - (1 - chance)^positions.
struct RankedMatch {
    ShiftMatch match;
    double chance_of_best = 1.0;
};
[[nodiscard]] std::vector<RankedMatch> ranked(std::vector<ShiftMatch> matches, std::size_t most);

/// The best of every shift: as `ranked` of `every_shift`, but sooner, since no other's chance is reckoned.
[[nodiscard]] std::vector<RankedMatch> best_shifts(const YearSeries& series, const YearSeries& other, int least_overlap,
                                                   std::size_t most);

} // namespace pithward::dating
