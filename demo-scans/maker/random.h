#pragma once

#include <cstdint>

namespace pithward::demo {

/// Mixes two numbers into one, well spread over all 64 bits (finaliser of SplitMix64, after Steele, Lea and Flood
/// 2014).
[[nodiscard]] constexpr std::uint64_t mix(std::uint64_t a, std::uint64_t b = 0) {
    std::uint64_t z = a + 0x9E3779B97F4A7C15ULL * (b + 1);
    z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9ULL;
    z = (z ^ (z >> 27)) * 0x94D049BB133111EBULL;
    return z ^ (z >> 31);
}

/// A number in [0, 1) from a hash.
[[nodiscard]] constexpr double unit(std::uint64_t hash) {
    return static_cast<double>(hash >> 11) * 0x1.0p-53;
}

/// A number of mean 0 and standard deviation 1 from a hash: the sum of four uniform ones, so never beyond 3.5.
[[nodiscard]] constexpr double bell(std::uint64_t hash) {
    const double sum = static_cast<double>(hash & 0xFFFF) + static_cast<double>((hash >> 16) & 0xFFFF) +
                       static_cast<double>((hash >> 32) & 0xFFFF) + static_cast<double>(hash >> 48);
    return (sum / 65536.0 - 2.0 + 2.0 / 65536.0) * 1.7320508075688772;
}

/// A small generator that gives the same numbers with every compiler and library.
class Random {
public:
    constexpr explicit Random(std::uint64_t seed, std::uint64_t stream = 0)
        : state_(mix(seed, stream)) {}

    constexpr std::uint64_t next() {
        state_ += 0x9E3779B97F4A7C15ULL;
        return mix(state_);
    }
    /// Uniform in [low, high).
    constexpr double uniform(double low = 0.0, double high = 1.0) { return low + (high - low) * unit(next()); }
    /// Bell-shaped, never more than 3.5 deviations off.
    constexpr double normal(double mean = 0.0, double sd = 1.0) { return mean + sd * bell(next()); }
    /// A whole number from low to high, both included.
    constexpr int whole(int low, int high) {
        return low + static_cast<int>(next() % static_cast<std::uint64_t>(high - low + 1));
    }
    constexpr bool chance(double probability) { return uniform() < probability; }
    /// -1 or 1.
    constexpr double sign() { return chance(0.5) ? 1.0 : -1.0; }

private:
    std::uint64_t state_;
};

} // namespace pithward::demo
