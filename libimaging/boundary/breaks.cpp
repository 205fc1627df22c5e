#include "libimaging/boundary/breaks.h"

#include <algorithm>
#include <cmath>
#include <iterator>

namespace pithward::boundary {

namespace {

constexpr int lanes_beside = 2;     ///< Lanes on either side of the path that have to be dark too.
constexpr double least_mm = 0.08;   ///< Shorter dark stretches are dirt.
constexpr double least_share = 0.5; ///< A crack crosses at least this share of the core.
constexpr double core_mm = 1.0;     ///< Half breadth over which that share is taken.

double dark_share(const FlatStrip& strip, int column, int half) {
    double dark = 0.0;
    for (int lane = strip.centre() - half; lane <= strip.centre() + half; ++lane) {
        dark += strip.weight(lane, column) < 0.3F ? 1.0 : 0.0;
    }
    return dark / (2 * half + 1);
}

} // namespace

std::vector<Gap> gaps_on_path(const FlatStrip& strip, double first, double last) {
    std::vector<Gap> gaps;
    const int half = std::min(strip.centre(), static_cast<int>(core_mm / strip.lane_mm));
    const int from = std::max(0, static_cast<int>(std::ceil(first)));
    const int to = std::min(strip.columns() - 1, static_cast<int>(std::floor(last)));
    int start = -1;
    for (int c = from; c <= to + 1; ++c) {
        const bool dark = c <= to && dark_share(strip, c, lanes_beside) > 0.5;
        if (dark && start < 0) {
            start = c;
        } else if (!dark && start >= 0) {
            const Gap gap{start - 0.5, c - 0.5, dark_share(strip, (start + c) / 2, half)};
            if ((gap.to - gap.from) * strip.px_mm >= least_mm && gap.breadth_share >= least_share) {
                gaps.push_back(gap);
            }
            start = -1;
        }
    }
    return gaps;
}

std::vector<Gap> together(std::vector<Gap> gaps, const std::vector<Gap>& others) {
    const std::vector<Gap> first = gaps;
    std::ranges::copy_if(others, std::back_inserter(gaps), [&](const Gap& other) {
        return std::ranges::none_of(first,
                                    [&](const Gap& gap) { return other.from <= gap.to && gap.from <= other.to; });
    });
    std::ranges::sort(gaps, {}, &Gap::from);
    return gaps;
}

double without_gaps(const std::vector<Gap>& gaps, double column) {
    double less = 0.0;
    for (const Gap& gap : gaps) {
        less += std::clamp(column - gap.from, 0.0, gap.to - gap.from);
    }
    return column - less;
}

} // namespace pithward::boundary
