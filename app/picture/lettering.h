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
    /// `path_length`: of the whole path in view pixels.
    YearLettering(const RingSeries& series, double path_length);

    /// Nothing where no lettering goes.
    [[nodiscard]] std::optional<LetteredYear> at(const PlacedBoundary& boundary) const;

    static constexpr double least_room = 46.0; ///< View pixels from one lettering to the next.

private:
    int step_ = 10;
};

} // namespace pithward::picture
