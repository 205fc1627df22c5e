#pragma once

#include "tests/accuracy/placed_truth.h"

#include <cstddef>
#include <span>
#include <vector>

namespace pithward::accuracy {

/// A true place and the found one that shows it, as indices.
struct Pair {
    std::size_t truth = 0;
    std::size_t found = 0;
};

/// Pairs true places with found ones within their reach, one to one and in order: most pairs first, then the least sum
/// of distances, each as a share of its reach. Both lists run along the path.
///
/// Pairs that cross could not do better: true places are 3 px apart and more, and a reach is at most 2 px or a quarter
/// of a ring, so two crossed pairs can always be uncrossed to nearer ones.
[[nodiscard]] std::vector<Pair> paired(std::span<const TruePlace> truth, std::span<const double> found_px);

} // namespace pithward::accuracy
