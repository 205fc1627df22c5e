#pragma once

#include <optional>
#include <vector>

namespace pithward::calibrate {

/// Equal steps along a profile: place `first + k * period` in samples.
struct Lattice {
    double first = 0.0;
    double period = 0.0;
    int count = 0;      ///< Places from the first mark seen to the last.
    double score = 0.0; ///< Share of the places with a mark times the share of the marks on a place.

    [[nodiscard]] double place(int index) const { return first + period * index; }
};

/// The steps at which the marks of a profile stand, dark or pale. The marks are its dips (or rises), weighed by their
/// depth; periods are the peaks of the spectrum of their places, and the one with the best score wins: half the true
/// period has a mark on every other place only, twice the period leaves every other mark off. Good to a tenth of a
/// period over the whole length. Nothing when fewer than `least_marks` were seen or no steps fit.
[[nodiscard]] std::optional<Lattice> find_lattice(const std::vector<double>& profile);

inline constexpr int least_marks = 8;
inline constexpr double least_period = 5.0; ///< In samples: narrower marks run into each other.

} // namespace pithward::calibrate
