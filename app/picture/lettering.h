#pragma once

#include "libcore/specimen/ring_series.h"

#include <QString>
#include <optional>

namespace pithward::picture {

/// What is lettered at a boundary: the year of the ring that ends there, or its number from the bark when undated.
struct LetteredYear {
    QString text;
    bool decade = false;
};

/// Chooses which boundaries are lettered, so that there is room between two of them.
class YearLettering {
public:
    /// `ring_width`: of a ring that is seen, the mean in view pixels.
    explicit YearLettering(double ring_width);

    /// Nothing where no lettering goes.
    [[nodiscard]] std::optional<LetteredYear> at(const PlacedBoundary& boundary) const;

    static constexpr double least_room = 46.0; ///< View pixels from one lettering to the next.

private:
    int step_ = 10;
};

} // namespace pithward::picture
