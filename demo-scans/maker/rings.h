#pragma once

#include "demo-scans/maker/growth.h"

#include <array>
#include <cstddef>
#include <optional>
#include <vector>

namespace pithward::demo {

/// A place in the tree's cross-section, mm: the pith at the origin, x toward the core's outer end along the core, y
/// across the core. `b` of a core point is y minus the centre line's y.
struct TreePoint {
    double x = 0.0;
    double y = 0.0;
};

/// The rings of one cross-section: boundary k lies at distance radius(k, angle) from the pith, boundary 0 is the pith
/// itself, boundary k the outer edge of ring k.
/// Properties: boundaries are nested (radius never falls with k) and smooth in the angle; on the core's centre line the
/// width of each ring, square to it, is the planned one to within 1 micrometre where the line meets the ring.
/// The radii are a table over k and angle, closer where the core is, joined by cubics; picture and truth both use it,
/// so that the geometry of the picture is known exactly.
class RingField {
public:
    RingField(const Scene& scene, const std::vector<PlannedRing>& plan);

    /// Number of boundaries beside the pith.
    [[nodiscard]] int count() const { return count_; }
    /// y of the core's centre line.
    [[nodiscard]] double centre_y() const { return centre_y_; }
    /// x of the outermost boundary on the centre line.
    [[nodiscard]] double outer_x() const { return outer_x_; }

    /// The weights of one direction, to look up many boundaries there.
    struct Direction {
        std::size_t node = 0;
        std::array<double, 4> weight{};
        std::array<double, 4> slope{}; ///< Weights of the derivative by the angle.
    };
    [[nodiscard]] Direction direction(double angle) const;
    [[nodiscard]] double radius(int k, const Direction& at) const { return gather(k, at, at.weight); }
    /// Derivative of the radius by the angle, mm per radian.
    [[nodiscard]] double slope(int k, const Direction& at) const { return gather(k, at, at.slope); }

    /// How far `p` lies outside boundary k, along the radius; negative inside.
    [[nodiscard]] double outside(int k, TreePoint p) const;
    /// The side of the core's outer end, where x is positive, and the one beyond the pith.
    enum class Side { Near, Far };
    /// Where boundary k crosses the line y = `y` on a side of the pith; nothing where it does not.
    [[nodiscard]] std::optional<double> crossing_x(int k, double y, Side side = Side::Near) const;
    /// Shortest distance from `p` to boundary k.
    [[nodiscard]] double distance(int k, TreePoint p) const;
    /// Width of ring k between two places on its boundaries: the mean of the two shortest distances.
    [[nodiscard]] double width_between(int k, TreePoint outer, TreePoint inner) const;

private:
    [[nodiscard]] double gather(int k, const Direction& at, const std::array<double, 4>& weight) const {
        const double* cell = radii_.data() + at.node * stride_ + static_cast<std::size_t>(k);
        return weight[0] * cell[0] + weight[1] * cell[stride_] + weight[2] * cell[2 * stride_] +
               weight[3] * cell[3 * stride_];
    }
    void lay(const Scene& scene, const std::vector<PlannedRing>& plan, const std::vector<double>& nominal);

    int count_ = 0;
    std::size_t stride_ = 0;
    double centre_y_ = 0.0;
    double outer_x_ = 0.0;
    std::vector<double> radii_; ///< [direction][boundary]
};

} // namespace pithward::demo
