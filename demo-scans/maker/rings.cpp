#include "demo-scans/maker/rings.h"

#include "demo-scans/maker/noise.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace pithward::demo {

namespace {

// Directions are spaced evenly in asinh(angle / fine_angle): about 0.03 mm apart on a core 100 mm from the pith.
constexpr double fine_angle = 0.01;
constexpr std::size_t directions = 513;
const double half_range = std::asinh(1.02 * std::numbers::pi / fine_angle);
const double step = 2.0 * half_range / static_cast<double>(directions - 1);

double angle_of_node(std::size_t node) {
    return fine_angle * std::sinh(-half_range + step * static_cast<double>(node));
}

/// Share of a ring's width that is laid at `b` mm beside the centre line.
double laid_share(const PlannedRing& ring, std::uint64_t seed, double b) {
    if (ring.width_mm > 0.0 && !ring.wedging) {
        return 1.0;
    }
    Random random(seed, static_cast<std::uint64_t>(ring.year + 50'000));
    const double side = random.sign();
    if (ring.width_mm == 0.0) {
        const double bare = random.uniform(0.7, 2.6);
        return smooth_step(bare, bare + 1.2, std::abs(b - 0.3 * side));
    }
    return smooth_step(-random.uniform(1.0, 1.9), 1.3, b * side);
}

/// How far the rings of about this place lie outside smooth curves, in units of the wave's height: hollows and swells
/// of some millimetres that last for a few rings, and small ones that last for one or two.
double swell(std::uint64_t seed, double arc, int ring) {
    return noise(mix(seed, 31), arc / 5.5, ring / 5.0) + 0.35 * noise(mix(seed, 32), arc / 1.6, ring / 1.7);
}

} // namespace

RingField::RingField(const Scene& scene, const std::vector<PlannedRing>& plan)
    : count_(static_cast<int>(plan.size()))
    , stride_(plan.size() + 1)
    , centre_y_(-scene.pith_offset_mm)
    , radii_(directions * (plan.size() + 1), 0.0) {
    std::vector<double> nominal;
    nominal.reserve(plan.size());
    for (const PlannedRing& ring : plan) {
        nominal.push_back(ring.width_mm > 0.0 ? ring.width_mm : 0.25);
    }
    lay(scene, plan, nominal);
    // Turn the nominal widths until the widths on the centre line are those planned.
    for (int round = 0; round < 10; ++round) {
        std::optional<double> inner;
        for (int k = 0; k <= count_; ++k) {
            const std::optional<double> x = crossing_x(k, centre_y_);
            if (k > 0 && x && inner && plan[static_cast<std::size_t>(k - 1)].width_mm > 0.0) {
                const double width = width_between(k, {*x, centre_y_}, {*inner, centre_y_});
                const double ratio = plan[static_cast<std::size_t>(k - 1)].width_mm / std::max(width, 1e-6);
                nominal[static_cast<std::size_t>(k - 1)] *= std::clamp(ratio, 0.5, 2.0);
            }
            inner = x;
        }
        lay(scene, plan, nominal);
    }
    outer_x_ = crossing_x(count_, centre_y_).value_or(0.0);
}

void RingField::lay(const Scene& scene, const std::vector<PlannedRing>& plan, const std::vector<double>& nominal) {
    const std::uint64_t seed = mix(scene.seed, 30);
    const RingShape& shape = scene.shape;
    const double widest = radians(shape.widest_deg);
    for (std::size_t node = 0; node < directions; ++node) {
        const double angle = angle_of_node(node);
        const double fade = 0.5 * (1.0 + std::cos(angle)); // joins both ends of the table behind the pith
        const double beyond = angle - std::copysign(std::numbers::pi, angle); // the angle as the far side counts it
        const double across = std::sin(std::clamp(angle, -0.5 * std::numbers::pi, 0.5 * std::numbers::pi));
        const double form = 1.0 + shape.eccentricity * std::cos(angle - widest) +
                            shape.ellipticity * std::cos(2.0 * (angle - widest) + 1.0);
        double radius = 0.0;
        double target = 0.0; // of smooth growth
        double wave = 0.0;
        double smooth_width = nominal.empty() ? 0.0 : nominal[0];
        double* row = radii_.data() + node * stride_;
        row[0] = 0.0;
        for (std::size_t k = 0; k < plan.size(); ++k) {
            smooth_width = 0.85 * smooth_width + 0.15 * nominal[k];
            const double even = nominal[k] * form;
            const double mean_radius = target + 0.5 * even;
            const double height = 0.20 * shape.waviness * std::min(smooth_width, 0.12 * mean_radius);
            double next_wave = fade * height * swell(seed, mean_radius * angle, static_cast<int>(k));
            if (scene.has_far_side()) {
                next_wave += (1.0 - fade) * height * swell(mix(seed, 33), mean_radius * beyond, static_cast<int>(k));
            }
            // A hollow left by a ring that ran out is filled again over some years.
            const double catch_up = 0.2 * (target + wave - radius);
            const double share = laid_share(plan[k], seed, radius * across - centre_y_);
            const double width = std::max(0.45 * even, even + (next_wave - wave) + catch_up) * share;
            target += even;
            wave = next_wave;
            radius += width;
            row[k + 1] = radius;
        }
    }
}

RingField::Direction RingField::direction(double any_angle) const {
    const double angle = std::remainder(any_angle, 2.0 * std::numbers::pi);
    const double place =
        std::clamp((std::asinh(angle / fine_angle) + half_range) / step, 1.0, static_cast<double>(directions) - 2.001);
    const double cell = std::floor(place);
    const double t = place - cell;
    const double t2 = t * t;
    const double t3 = t2 * t;
    const double by_angle = 1.0 / (step * std::sqrt(angle * angle + fine_angle * fine_angle));
    Direction at;
    at.node = static_cast<std::size_t>(cell) - 1;
    at.weight = {0.5 * (-t + 2.0 * t2 - t3), 0.5 * (2.0 - 5.0 * t2 + 3.0 * t3), 0.5 * (t + 4.0 * t2 - 3.0 * t3),
                 0.5 * (-t2 + t3)};
    at.slope = {0.5 * (-1.0 + 4.0 * t - 3.0 * t2) * by_angle, 0.5 * (-10.0 * t + 9.0 * t2) * by_angle,
                0.5 * (1.0 + 8.0 * t - 9.0 * t2) * by_angle, 0.5 * (-2.0 * t + 3.0 * t2) * by_angle};
    return at;
}

double RingField::outside(int k, TreePoint p) const {
    return std::hypot(p.x, p.y) - radius(k, direction(std::atan2(p.y, p.x)));
}

std::optional<double> RingField::crossing_x(int k, double y, Side side) const {
    const double sign = side == Side::Near ? 1.0 : -1.0;
    if (k == 0) {
        return std::abs(y) < 1e-9 ? std::optional<double>(0.0) : std::nullopt;
    }
    double low = 0.0;
    double high = 1.0;
    while (outside(k, {sign * high, y}) < 0.0 && high < 1e4) {
        high *= 2.0;
    }
    if (outside(k, {sign * low, y}) >= 0.0) {
        return std::nullopt;
    }
    for (int round = 0; round < 60; ++round) {
        const double middle = 0.5 * (low + high);
        (outside(k, {sign * middle, y}) < 0.0 ? low : high) = middle;
    }
    return sign * 0.5 * (low + high);
}

double RingField::distance(int k, TreePoint p) const {
    const double angle = std::atan2(p.y, p.x);
    const double gap = std::abs(outside(k, p));
    const double reach = std::min(1.2 * (gap + 0.02) / std::max(std::hypot(p.x, p.y), 0.05), 1.5);
    const auto square = [&](double at) {
        const double r = radius(k, direction(at));
        const double dx = r * std::cos(at) - p.x;
        const double dy = r * std::sin(at) - p.y;
        return dx * dx + dy * dy;
    };
    double low = angle - reach;
    double high = angle + reach;
    constexpr double golden = 0.6180339887498949;
    for (int round = 0; round < 44; ++round) {
        const double a = high - golden * (high - low);
        const double b = low + golden * (high - low);
        if (square(a) < square(b)) {
            high = b;
        } else {
            low = a;
        }
    }
    return std::sqrt(square(0.5 * (low + high)));
}

double RingField::width_between(int k, TreePoint outer, TreePoint inner) const {
    return 0.5 * (distance(k - 1, outer) + distance(k, inner));
}

} // namespace pithward::demo
