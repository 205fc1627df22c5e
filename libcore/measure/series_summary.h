#pragma once

#include "libcore/specimen/ring_series.h"

#include <optional>

namespace pithward {

/// What is told first of a series.
struct SeriesSummary {
    int rings = 0;    ///< All, absent and unmeasured ones included.
    int measured = 0; ///< Rings with a width, absent ones (of width 0) included.
    int absent = 0;
    Millimetres length;              ///< Sum of the widths.
    std::optional<Millimetres> mean; ///< Arithmetic mean of the widths, absent rings as 0; nothing without a width.
    friend bool operator==(const SeriesSummary&, const SeriesSummary&) = default;
};

[[nodiscard]] SeriesSummary summary_of(const RingSeries& series);

} // namespace pithward
