#include "libimaging/strip/sweep.h"

#include <bit>
#include <cstdint>

namespace pithward::strip {

namespace {

/// Every bit of the answer hangs on every bit of the value (the finalizer of SplitMix64; G. L. Steele, D. Lea and C. H.
/// Flood, 2014; from memory).
std::uint64_t scattered(std::uint64_t value) {
    value = (value ^ (value >> 30U)) * 0xBF58476D1CE4E5B9ULL;
    value = (value ^ (value >> 27U)) * 0x94D049BB133111EBULL;
    return value ^ (value >> 31U);
}

/// Two chains over the same values, begun and stepped differently.
class Hash {
public:
    void add(std::uint64_t value) {
        key_.high = scattered(key_.high ^ value) + 0x9E3779B97F4A7C15ULL;
        key_.low = scattered(key_.low + std::rotl(value, 29)) ^ 0xD1B54A32D192ED03ULL;
    }
    void add(double value) { add(std::bit_cast<std::uint64_t>(value)); }
    void add(ImagePoint point) {
        add(point.x);
        add(point.y);
    }
    [[nodiscard]] PieceKey key() const { return key_; }

private:
    PieceKey key_{0x243F6A8885A308D3ULL, 0x13198A2E03707344ULL};
};

} // namespace

std::vector<Sweep> sweeps_of(const StripGeometry& geometry, const StripGrid& grid, int from, int to) {
    std::vector<Sweep> sweeps;
    sweeps.reserve(static_cast<std::size_t>(to - from));
    for (int column = from; column < to; ++column) {
        const double s = grid.s(column);
        const ImagePoint middle = geometry.image_point({s, 0.0});
        sweeps.push_back({middle, (geometry.image_point({s, 1.0}) - middle) * grid.px_mm});
    }
    return sweeps;
}

PieceKey key_of(const std::vector<Sweep>& sweeps, int rows, int rows_per_lane) {
    Hash hash;
    hash.add(static_cast<std::uint64_t>(rows));
    hash.add(static_cast<std::uint64_t>(rows_per_lane));
    for (const Sweep& sweep : sweeps) {
        hash.add(sweep.middle);
        hash.add(sweep.step);
    }
    return hash.key();
}

} // namespace pithward::strip
