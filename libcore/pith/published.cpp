#include "libcore/pith/published.h"

#include <Eigen/Dense>

#include <algorithm>
#include <cmath>

namespace pithward::pith {

namespace {

using Eigen::Vector2d;

constexpr double two_sided_90 = 1.645; ///< Deviations of a normal distribution.

} // namespace

bool DistanceRange::meets(const DistanceRange& other) const {
    return (!high_mm || other.low_mm <= *high_mm) && (!other.high_mm || low_mm <= *other.high_mm);
}

double duncan_radius(const ChordAndHeight& arc) {
    return arc.chord_mm * arc.chord_mm / (8.0 * arc.height_mm) + 0.5 * arc.height_mm;
}

double arc_height(double chord_mm, double radius_mm) {
    return radius_mm - std::sqrt(std::max(0.0, radius_mm * radius_mm - 0.25 * chord_mm * chord_mm));
}

std::optional<ChordAndHeight> chord_and_height(const Arc& arc) {
    if (arc.points.size() < 3) {
        return std::nullopt;
    }
    const Vector2d from = arc.points.front();
    const Vector2d chord = arc.points.back() - from;
    const double length = chord.norm();
    const Vector2d along = chord / length;
    const Vector2d out(-along.y(), along.x()); // away from the pith where y grows along the arc
    const auto n = static_cast<Eigen::Index>(arc.points.size());
    Eigen::MatrixXd basis(n, 3);
    Eigen::VectorXd height(n);
    for (Eigen::Index i = 0; i < n; ++i) {
        const Vector2d away = arc.points[static_cast<std::size_t>(i)] - from;
        const double t = 2.0 * away.dot(along) / length - 1.0;
        basis.row(i) << 1.0, t, t * t;
        height(i) = away.dot(out);
    }
    const Eigen::VectorXd fit = basis.colPivHouseholderQr().solve(height);
    return ChordAndHeight{length, -fit(2)};
}

double height_sd(const Arc& arc, double swell_mm) {
    constexpr double swell_breadth_mm = 3.0;
    constexpr double form = 0.17;
    const auto shape = chord_and_height(arc);
    if (!shape) {
        return 0.0;
    }
    const auto alike = [&](double apart) {
        const double t = apart / swell_breadth_mm;
        return 1.0 / (1.0 + 0.5 * t * t);
    };
    // The height is nearly the middle less the mean of both ends.
    const double swell = 1.5 + 0.5 * alike(shape->chord_mm) - 2.0 * alike(0.5 * shape->chord_mm);
    double noise = 0.0;
    for (const double variance : arc.variance) {
        noise += variance;
    }
    const auto n = static_cast<double>(arc.variance.size());
    noise *= 7.0 / (n * n); // seven points: the square of a parabola's bend has the variance of about one
    return std::sqrt(noise + swell_mm * swell_mm * std::max(0.0, swell) +
                     form * form * shape->height_mm * shape->height_mm);
}

DistanceRange radius_range(double chord_mm, double radius_mm, double height_sd_mm) {
    const double chord = std::min(chord_mm, 2.0 * radius_mm);
    const double height = arc_height(chord, radius_mm);
    const double most = std::min(height + two_sided_90 * height_sd_mm, 0.5 * chord);
    const double least = height - two_sided_90 * height_sd_mm;
    DistanceRange range{radius_mm, std::min(radius_mm, duncan_radius({chord, most})), std::nullopt};
    if (least > 1e-6) {
        range.high_mm = duncan_radius({chord, least});
    }
    return range;
}

double stem_radius(double diameter_cm, double bark_mm) {
    return 5.0 * diameter_cm - bark_mm;
}

DistanceRange distance_by_stem(double stem_radius_mm, double wood_length_mm) {
    constexpr double shrinkage = 0.04;
    constexpr double shrinkage_sd = 0.012; // 2 to 6 % as nine tenths of all
    constexpr double eccentric_sd = 0.06;
    const double fresh = wood_length_mm / (1.0 - shrinkage);
    const double sd = std::hypot(fresh * shrinkage_sd, stem_radius_mm * eccentric_sd);
    const double distance = stem_radius_mm - fresh;
    return {std::max(0.0, distance), std::max(0.0, distance - two_sided_90 * sd),
            std::max(0.0, distance + two_sided_90 * sd)};
}

} // namespace pithward::pith
