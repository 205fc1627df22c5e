#pragma once

#include "app/bench/model/opened_scan.h"

#include <vector>

namespace pithward::bench {

/// How a leg is straightened.
struct LegStrip {
    std::function<Outcome<StripImage>(const StripRequest&, const Work&)> strip; ///< Of its scan.
    StripRequest request;
};

/// The strips of legs that follow each other, put end to end at the scale of the first.
[[nodiscard]] Outcome<StripImage> joined_strips(const std::vector<LegStrip>& legs, const Work& work);

} // namespace pithward::bench
