#include "libimaging/calibrate/prominence.h"

#include <algorithm>
#include <span>

namespace pithward::calibrate {

namespace {

/// For each sample the highest value between it and the last one before it that is lower (or, if `equal_stops`, as
/// low).
std::vector<double> barriers(std::span<const double> values, bool equal_stops) {
    struct Step {
        double value;
        double barrier;
    };
    std::vector<Step> stack;
    std::vector<double> out;
    out.reserve(values.size());
    for (const double value : values) {
        double barrier = value;
        while (!stack.empty() && (stack.back().value > value || (!equal_stops && stack.back().value == value))) {
            barrier = std::max(barrier, stack.back().barrier);
            stack.pop_back();
        }
        stack.push_back({value, barrier});
        out.push_back(barrier);
    }
    return out;
}

} // namespace

std::vector<Dip> dips_of(const std::vector<double>& profile, double least) {
    const std::vector<double> before = barriers(profile, true);
    std::vector<double> after = barriers(std::vector<double>(profile.rbegin(), profile.rend()), false);
    std::ranges::reverse(after);
    std::vector<Dip> dips;
    for (std::size_t i = 0; i < profile.size(); ++i) {
        const double depth = std::min(before[i], after[i]) - profile[i];
        if (depth > least) {
            dips.push_back({static_cast<int>(i), depth});
        }
    }
    return dips;
}

} // namespace pithward::calibrate
