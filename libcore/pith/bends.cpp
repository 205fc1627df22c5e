#include "libcore/pith/bends.h"

#include "libcore/pith/published.h"

#include <algorithm>

namespace pithward::pith {

namespace {

constexpr double usual_swell_mm = 0.03; ///< Bends no higher than such swells tell nothing.
constexpr double bent = 2.0;            ///< Deviations from which an arc's height tells which way it bends.

/// How many arcs surely bend round the pith's side, and how many the other way.
struct Bends {
    int right = 0;
    int wrong = 0;
};

Bends bends(std::span<const Arc> arcs) {
    Bends count;
    for (const Arc& arc : arcs) {
        if (const auto shape = chord_and_height(arc)) {
            const double sd = height_sd(arc, usual_swell_mm);
            count.right += shape->height_mm > bent * sd ? 1 : 0;
            count.wrong += shape->height_mm < -bent * sd ? 1 : 0;
        }
    }
    return count;
}

} // namespace

std::optional<std::string> wrongly_bent(std::span<const Arc> arcs) {
    const auto [right, wrong] = bends(arcs);
    if (std::min(right, wrong) > 1 && 3 * std::min(right, wrong) > std::max(right, wrong)) {
        return "the rings at the inner end bend both ways, so their curve does not tell where the pith is";
    }
    if (wrong > 1 && wrong > right) {
        return "the rings at the inner end bend away from the inner end, so the pith can't lie there";
    }
    return std::nullopt;
}

} // namespace pithward::pith
