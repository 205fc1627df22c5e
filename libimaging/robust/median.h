#pragma once

#include <algorithm>
#include <iterator>
#include <vector>

namespace pithward {

/// A median of distances from a median, times this, estimates the standard deviation of normal values.
inline constexpr double deviation_of_median = 1.4826;

/// The middle value, the upper one of two; of at least one value. Changes their order.
template <typename T>
[[nodiscard]] T median_in_place(std::vector<T>& values) {
    const auto middle = values.begin() + std::ssize(values) / 2;
    std::nth_element(values.begin(), middle, values.end());
    return *middle;
}

/// The same of values that keep their order.
template <typename T>
[[nodiscard]] T median(std::vector<T> values) {
    return median_in_place(values);
}

} // namespace pithward
