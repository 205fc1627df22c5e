#pragma once

#include "libcore/specimen/outcome.h"
#include "libcore/specimen/reading.h"
#include "libcore/specimen/ring_series.h"

#include <optional>
#include <utility>
#include <vector>

namespace pithward::review {

/// A reading with its series, for comparing.
struct ComparedReading {
    const Reading& reading;
    const RingSeries& series;
};

/// What two readings of one core have in common, and where they differ.
struct Comparison {
    std::vector<std::pair<BoundaryId, BoundaryId>> matched; ///< From bark to pith.
    std::vector<BoundaryId> only_first;
    std::vector<BoundaryId> only_second;

    int agreeing_rings = 0; ///< Between the same two boundaries in both, with none between.
    /// Of all rings between boundaries, the share that both have: twice the agreeing ones by the rings of both (the
    /// coefficient of L. R. Dice, Ecology 26, 1945). Nothing where neither has a ring.
    std::optional<double> share_agreeing;
    int years_differ = 0; ///< Of the agreeing rings that have a year in both.

    int widths = 0;                  ///< Agreeing rings with a width in both.
    std::optional<Millimetres> bias; ///< Mean of the second's width less the first's.
    std::optional<Millimetres> sd;   ///< Sample standard deviation of those differences; from two widths on.
    /// Standard deviation of one reading's width, if both are as good: `sd` by the root of 2 (common practice for
    /// double determinations, after G. Dahlberg 1940; from memory).
    std::optional<Millimetres> sd_of_one;
};

/// Compares two readings of one core. Boundaries are matched by where they lie on the scan, in their order from bark to
/// pith, so that the most and the nearest match (docs/methods.md, "Two readings of one core"). Fails where the readings
/// have no scan in common, and on more than 5,000 boundaries.
[[nodiscard]] Outcome<Comparison> compare(const ComparedReading& first, const ComparedReading& second);

} // namespace pithward::review
