#pragma once

#include <algorithm>
#include <vector>

namespace pithward::calibrate {

/// The middle value, the upper one of two; of at least one value.
[[nodiscard]] inline double median(std::vector<double> values) {
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    return *middle;
}

} // namespace pithward::calibrate
