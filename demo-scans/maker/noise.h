#pragma once

#include "demo-scans/maker/random.h"

#include <cmath>

namespace pithward::demo {

/// 0 below `from`, 1 above `to`, a smooth S between; half way at the middle.
[[nodiscard]] inline double smooth_step(double from, double to, double x) {
    if (to <= from) {
        return x < from ? 0.0 : 1.0;
    }
    const double t = x <= from ? 0.0 : x >= to ? 1.0 : (x - from) / (to - from);
    return t * t * (3.0 - 2.0 * t);
}

[[nodiscard]] inline double blend(double a, double b, double share) {
    return a + (b - a) * share;
}

/// Hash of a lattice point.
[[nodiscard]] inline std::uint64_t lattice(std::uint64_t seed, double x, double y = 0.0) {
    const auto ix = static_cast<std::uint64_t>(static_cast<std::int64_t>(x));
    const auto iy = static_cast<std::uint64_t>(static_cast<std::int64_t>(y));
    return mix(seed ^ (ix * 0x8DA6B343D8163841ULL), iy);
}

/// Smooth noise along a line: values in [-1, 1] at the integers, joined smoothly. Mean 0, deviation about 0.5.
[[nodiscard]] inline double noise(std::uint64_t seed, double x) {
    const double fx = std::floor(x);
    const double t = x - fx;
    const double a = unit(lattice(seed, fx));
    const double b = unit(lattice(seed, fx + 1.0));
    return 2.0 * blend(a, b, t * t * (3.0 - 2.0 * t)) - 1.0;
}

/// Smooth noise on a plane, as on a line.
[[nodiscard]] inline double noise(std::uint64_t seed, double x, double y) {
    const double fx = std::floor(x);
    const double fy = std::floor(y);
    const double tx = x - fx;
    const double ty = y - fy;
    const double sx = tx * tx * (3.0 - 2.0 * tx);
    const double sy = ty * ty * (3.0 - 2.0 * ty);
    const double top = blend(unit(lattice(seed, fx, fy)), unit(lattice(seed, fx + 1.0, fy)), sx);
    const double low = blend(unit(lattice(seed, fx, fy + 1.0)), unit(lattice(seed, fx + 1.0, fy + 1.0)), sx);
    return 2.0 * blend(top, low, sy) - 1.0;
}

/// Noise of three sizes, each half as large and half as strong as the one before.
[[nodiscard]] inline double rough_noise(std::uint64_t seed, double x, double y) {
    return (noise(seed, x, y) + 0.5 * noise(seed + 1, 2.0 * x, 2.0 * y) + 0.25 * noise(seed + 2, 4.0 * x, 4.0 * y)) /
           1.75;
}

} // namespace pithward::demo
