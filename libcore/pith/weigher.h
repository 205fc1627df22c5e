#pragma once

#include "libcore/pith/nested_rings.h"
#include "libcore/pith/pith_posterior.h"

#include <numbers>
#include <span>
#include <vector>

namespace pithward::pith {

/// Swells of every height that is thought of, for a first look ...
[[nodiscard]] std::vector<Swells> few_swells();
/// ... and in every breadth and lasting.
[[nodiscard]] std::vector<Swells> all_swells();

/// All places at one distance.
struct Circle {
    std::vector<PithPlace> places; ///< With shares of the circle's own weight.
    double log_weight = 0.0;       ///< Per unit of log distance.
    double likeliest_angle = 0.0;
};

/// Weighs places of the pith by the arcs and what is known beforehand (pith_posterior.h).
class Weigher {
public:
    Weigher(std::span<const Arc> arcs, std::vector<Swells> swells);

    /// Weighs the directions at one distance about the likeliest one, which is sought within `half` of `guess`.
    [[nodiscard]] Circle circle(double distance_mm, double guess, double half) const;

    /// The same without its places, with a weight as of a normal curve about the likeliest direction (Laplace's
    /// method): half the work.
    [[nodiscard]] Circle rough_circle(double distance_mm, double guess, double half) const;

    /// The likeliest of some directions all round, `guess_step` apart.
    [[nodiscard]] double guess(double distance_mm) const;

    static constexpr double widest_angle = 80.0 * std::numbers::pi / 180.0; ///< Radians against the path.
    static constexpr int guesses = 11;
    static constexpr double guess_step = 2.0 * widest_angle / guesses;

private:
    /// The log of a place's probability (per unit of log distance and angle), and the mean of the log of the swells'
    /// height there.
    struct Weighed {
        double log_weight = 0.0;
        double log_swell = 0.0;
    };
    [[nodiscard]] Weighed at(double distance_mm, double angle) const;
    [[nodiscard]] double likeliest(double distance_mm, double low, double high) const;
    /// Standard deviation of the angle, from how the log weight bends at its top.
    [[nodiscard]] double deviation(double distance_mm, double angle) const;

    std::vector<Swells> swells_;
    NestedRings rings_;
};

} // namespace pithward::pith
