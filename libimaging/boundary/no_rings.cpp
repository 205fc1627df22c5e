#include "libimaging/boundary/no_rings.h"

#include <algorithm>
#include <span>

namespace pithward::boundary {

namespace {

constexpr double least_mean_confidence =
    0.55; ///< Less is met on mounts and lids, not even on the hardest rendered wood.
constexpr double greatest_mean_width_mm = 12.0; ///< Rings wider than this on average are no rings.

} // namespace

bool has_no_rings(const std::vector<Boundary>& boundaries, double path_mm) {
    // The edge of something under the bark is no ring boundary by itself.
    if (std::ranges::all_of(boundaries, [](const Boundary& boundary) { return boundary.curve.empty(); })) {
        return true;
    }
    const auto sure_ones =
        std::ranges::count_if(boundaries, [](const Boundary& boundary) { return boundary.confidence > 0.9; });
    const auto mean = [](std::span<const Boundary> part) {
        double sum = 0.0;
        for (const Boundary& boundary : part) {
            sum += boundary.confidence;
        }
        return part.empty() ? 0.0 : sum / static_cast<double>(part.size());
    };
    // Past the pith the signs are the wrong way round, so one half of the path is enough.
    const std::span<const Boundary> all(boundaries);
    const std::size_t half = all.size() / 2;
    const double confidence = std::max(mean(all.first(half)), mean(all.subspan(half)));
    const double mean_width_mm = path_mm / static_cast<double>(all.size());
    return confidence < least_mean_confidence || mean_width_mm > greatest_mean_width_mm ||
           (sure_ones == 0 && path_mm > greatest_mean_width_mm);
}

} // namespace pithward::boundary
