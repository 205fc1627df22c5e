#include "libcore/pith/weigher.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

namespace pithward::pith {

namespace {

constexpr double usual_distance_mm = 30.0; ///< Scale of a half-Cauchy.
constexpr double usual_swell = 0.005;      ///< Height over radius: median ...
constexpr double swell_spread = 0.9;       ///< ... and deviation of its logarithm. Assumed.
constexpr double swell_radius_mm = 5.0;    ///< The radius is that of the rings seen, somewhat outside the innermost.

constexpr std::array heights_mm{0.004, 0.01, 0.025, 0.06, 0.15, 0.35};
constexpr std::array breadths_mm{1.5, 4.0};
constexpr std::array lastings{4.0, 40.0};

/// Places on both sides of the likeliest direction, in standard deviations: far ones for heavy tails.
constexpr std::array offsets{-12.0, -7.0, -4.0, -2.5, -1.5, -0.7, 0.0, 0.7, 1.5, 2.5, 4.0, 7.0, 12.0};

} // namespace

std::vector<Swells> few_swells() {
    std::vector<Swells> few;
    few.reserve(heights_mm.size());
    for (const double height : heights_mm) {
        few.push_back({height, 2.5, 15.0});
    }
    return few;
}

std::vector<Swells> all_swells() {
    std::vector<Swells> all;
    for (const double height : heights_mm) {
        for (const double breadth : breadths_mm) {
            for (const double lasting : lastings) {
                all.push_back({height, breadth, lasting});
            }
        }
    }
    return all;
}

Weigher::Weigher(std::span<const Arc> arcs, std::vector<Swells> swells)
    : swells_(std::move(swells))
    , rings_(arcs, swells_) {}

Weigher::Weighed Weigher::at(double distance_mm, double angle) const {
    std::vector<double> logs;
    rings_.log_likelihoods({distance_mm * std::cos(angle), distance_mm * std::sin(angle)}, logs);
    const double far = distance_mm / usual_distance_mm;
    const double distance_log = std::log(distance_mm) - std::log1p(far * far);
    double top = -1e300;
    for (std::size_t k = 0; k < logs.size(); ++k) {
        const double usual = usual_swell * (distance_mm + swell_radius_mm);
        const double relative = std::log(swells_[k].height_mm / usual) / swell_spread;
        logs[k] += distance_log - 0.5 * relative * relative;
        top = std::max(top, logs[k]);
    }
    double sum = 0.0;
    double swell = 0.0;
    for (std::size_t k = 0; k < logs.size(); ++k) {
        const double weight = std::exp(logs[k] - top);
        sum += weight;
        swell += weight * std::log(swells_[k].height_mm);
    }
    return {top + std::log(sum), swell / sum};
}

double Weigher::likeliest(double distance_mm, double low, double high) const {
    // Golden section.
    constexpr double golden = 0.6180339887498949;
    constexpr double near_enough = 3e-3;
    double a = high - golden * (high - low);
    double b = low + golden * (high - low);
    double at_a = at(distance_mm, a).log_weight;
    double at_b = at(distance_mm, b).log_weight;
    while (high - low > near_enough) {
        if (at_a > at_b) {
            high = std::exchange(b, a);
            at_b = at_a;
            a = high - golden * (high - low);
            at_a = at(distance_mm, a).log_weight;
        } else {
            low = std::exchange(a, b);
            at_a = at_b;
            b = low + golden * (high - low);
            at_b = at(distance_mm, b).log_weight;
        }
    }
    return 0.5 * (low + high);
}

double Weigher::deviation(double distance_mm, double angle) const {
    double step = 0.004;
    const double here = at(distance_mm, angle).log_weight;
    for (int round = 0; round < 6; ++round) {
        const double fall =
            2.0 * here - at(distance_mm, angle - step).log_weight - at(distance_mm, angle + step).log_weight;
        if (fall > 0.1) {
            return std::clamp(step / std::sqrt(fall), 5e-4, 0.3);
        }
        step *= 2.0;
    }
    return 0.3;
}

Circle Weigher::rough_circle(double distance_mm, double guess, double half) const {
    Circle circle;
    circle.likeliest_angle =
        likeliest(distance_mm, std::max(guess - half, -widest_angle), std::min(guess + half, widest_angle));
    circle.log_weight = at(distance_mm, circle.likeliest_angle).log_weight +
                        std::log(deviation(distance_mm, circle.likeliest_angle) * std::sqrt(2.0 * std::numbers::pi));
    return circle;
}

Circle Weigher::circle(double distance_mm, double guess, double half) const {
    Circle circle;
    circle.likeliest_angle =
        likeliest(distance_mm, std::max(guess - half, -widest_angle), std::min(guess + half, widest_angle));
    const double sd = deviation(distance_mm, circle.likeliest_angle);
    std::vector<double> angles;
    for (const double offset : offsets) {
        const double angle = circle.likeliest_angle + offset * sd;
        if (std::abs(angle) < widest_angle) {
            angles.push_back(angle);
        }
    }
    std::vector<Weighed> all;
    double top = -1e300;
    for (const double angle : angles) {
        all.push_back(at(distance_mm, angle));
        top = std::max(top, all.back().log_weight);
    }
    double sum = 0.0;
    for (std::size_t i = 0; i < angles.size(); ++i) { // each stands for half of the way to its neighbours
        const double from = i == 0 ? angles[i] : angles[i - 1];
        const double to = i + 1 == angles.size() ? angles[i] : angles[i + 1];
        const double weight = 0.5 * (to - from) * std::exp(all[i].log_weight - top);
        circle.places.push_back({distance_mm, angles[i], weight, all[i].log_swell});
        sum += weight;
    }
    for (PithPlace& place : circle.places) {
        place.probability /= std::max(sum, 1e-300);
    }
    circle.log_weight = top + std::log(std::max(sum, 1e-300));
    return circle;
}

double Weigher::guess(double distance_mm) const {
    double best = -1e300;
    double found = 0.0;
    for (int i = 0; i < guesses; ++i) {
        const double angle = widest_angle * (2.0 * (i + 0.5) / guesses - 1.0);
        const double here = at(distance_mm, angle).log_weight;
        if (here > best) {
            best = here;
            found = angle;
        }
    }
    return found;
}

} // namespace pithward::pith
