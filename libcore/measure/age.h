#pragma once

#include "libcore/specimen/reading.h"
#include "libcore/specimen/ring_series.h"

#include <optional>

namespace pithward {

/// A year with its 90 % interval, both ends included.
struct YearRange {
    Year year;
    Year low;
    Year high;
    friend bool operator==(const YearRange&, const YearRange&) = default;
};

/// Years that a tree took to grow up to the height that it was cored at, as a user gives them.
struct HeightAllowance {
    double years = 0.0;
    double sd = 0.0; ///< Standard deviation, in years.
    friend bool operator==(const HeightAllowance&, const HeightAllowance&) = default;
};

/// How old a tree is, by one core. Ages of living trees end with the year of the outermost ring.
struct Age {
    YearRange pith; ///< The year of the innermost ring at the height of the core.
    std::optional<HeightAllowance> allowance;
    std::optional<YearRange> establishment; ///< With an allowance.
    friend bool operator==(const Age&, const Age&) = default;
};

/// Whether nobody knows how many rings went with lost wood: what is beyond floats, the pith with it.
[[nodiscard]] bool pith_floats(const Reading& reading);

/// The year of the pith at the height of the core: the oldest year among the rings less the rings to the pith (design,
/// section 5), with their interval. Nothing without a pith, without years, or where the innermost rings float.
[[nodiscard]] std::optional<YearRange> pith_year(const Reading& reading, const RingSeries& series);

/// The year in which the tree was established: the pith's less the allowance. Each side of the interval is the root of
/// the squares of the pith's side and of 1.645 deviations of the allowance (both taken as independent and near normal).
[[nodiscard]] YearRange establishment_year(const YearRange& pith, const HeightAllowance& allowance);

[[nodiscard]] std::optional<Age> age_of(const Reading& reading, const RingSeries& series,
                                        const std::optional<HeightAllowance>& allowance);

} // namespace pithward
