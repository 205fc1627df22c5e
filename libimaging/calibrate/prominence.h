#pragma once

#include <vector>

namespace pithward::calibrate {

/// A lowest place of a profile, and how far the profile rises on both sides before it falls below it.
struct Dip {
    int at = 0;
    double depth = 0.0;
};

/// All dips deeper than `least`, from left to right. Of dips equally low with a rise between, one counts in full. Takes
/// time in proportion to the length.
[[nodiscard]] std::vector<Dip> dips_of(const std::vector<double>& profile, double least);

} // namespace pithward::calibrate
