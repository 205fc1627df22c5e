#pragma once

#include "libcore/edit/boundary_line.h"
#include "libcore/edit/object_lists.h"
#include "libcore/specimen/reading.h"

#include <algorithm>

namespace pithward {

/// How far a boundary's line is followed beyond what was traced, in pixels: as long again as the longest curve.
[[nodiscard]] double line_reach_px(const Reading& reading);

/// Puts what lies on a path onto another one.
class OntoPath {
public:
    OntoPath(const Path& path, double reach_px)
        : path_(path)
        , reach_px_(reach_px) {}

    /// False where the path does not reach it.
    template <typename Line>
    [[nodiscard]] bool put(Line& line, std::size_t leg) const {
        constexpr double touch = 1.0; // pixels
        const BoundaryLine across(line.curve, line.at, line.tangent, reach_px_);
        // Where legs are joined they go on straight, as they do for all that is measured along them.
        const auto crossing = across.crossing(path_.legs[leg], line.at, leg == 0 ? touch : reach_px_,
                                              leg + 1 == path_.legs.size() ? touch : reach_px_);
        if (crossing) {
            // The direction turns as the curve does from the old place to the new one.
            const double turned = across.foot(*crossing).tangent - across.foot(line.at).tangent;
            line.tangent = line_direction(line.tangent + turned);
            line.at = *crossing;
            line.leg = leg;
        }
        return crossing.has_value();
    }

    void put(Break& stretch, std::size_t leg) const;
    void put(Finding& finding, std::size_t leg) const;
    /// The place of a leg that is nearest to a point.
    [[nodiscard]] ImagePoint foot(std::size_t leg, ImagePoint of) const;

private:
    const Path& path_;
    double reach_px_;
};

/// The locally absent rings that stand at a boundary.
[[nodiscard]] int absent_at(const Reading& reading, BoundaryId id);

template <typename T>
void sort_along(std::vector<T>& list, const Path& path) {
    std::ranges::sort(list, [&](const T& a, const T& b) { return stands_before(path, a, b); });
}

} // namespace pithward
