#pragma once

#include "libcore/specimen/outcome.h"
#include "libcore/specimen/scan.h"
#include "libcore/specimen/units.h"

namespace pithward {

/// A straight line along a ruler on a scan.
struct RulerLine {
    ImagePoint from;
    ImagePoint to;

    [[nodiscard]] double length_px() const;
    /// Unit vector from the first point to the second.
    [[nodiscard]] ImagePoint along() const;
    /// Unit vector square to it, to the right of who walks along it (+y on a line toward +x).
    [[nodiscard]] ImagePoint across() const;

    /// Fails on points that are no numbers or lie outside the scan, and on lines too short or too long to count on.
    [[nodiscard]] Outcome<void> validate(const Scan& scan) const;

    static constexpr double least_length_px = 40.0;
    static constexpr double greatest_length_px = 300'000.0;

    friend bool operator==(const RulerLine&, const RulerLine&) = default;
};

} // namespace pithward
