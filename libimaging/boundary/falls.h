#pragma once

#include <vector>

namespace pithward::boundary {

/// A monotone stretch of a profile over which it gets darker toward the pith.
struct Fall {
    double column = 0.0;        ///< Where half of the change is done.
    int top = 0;                ///< Column of the light end.
    int bottom = 0;             ///< Column of the dark end.
    double height = 0.0;        ///< Value at top minus value at bottom.
    double steepest = 0.0;      ///< Greatest fall from one column to the next.
    double rise_after = 0.0;    ///< From the bottom to the highest value before the next fall of the list.
    double steepest_rise = 0.0; ///< Greatest rise from one column to the next within that.
    bool own_rise = true;       ///< False for parts (divided): their rises are no measure of their falls.
};

/// All falls of a profile higher than `least`. A shoulder within a fall divides it in two when the gradient between its
/// two steep parts drops under `shoulder` of the lesser one; a counter-rise smaller than `ripple` of the lesser of its
/// two falls does not.
[[nodiscard]] std::vector<Fall> falls_of(const std::vector<float>& profile, double least);

/// Falls with those that a finer profile of the same columns shows to be several put in parts, each at least `share` of
/// the whole: two boundaries so close that the coarser profile runs them into one.
[[nodiscard]] std::vector<Fall> divided(const std::vector<Fall>& falls, const std::vector<float>& finer, double share);

/// Column at which `share` of a fall is done, linear between columns.
[[nodiscard]] double column_of(const std::vector<float>& profile, const Fall& fall, double share);

inline constexpr double shoulder = 0.5;
inline constexpr double ripple = 0.12;

} // namespace pithward::boundary
