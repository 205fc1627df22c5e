#include "libcore/record/curve_bytes.h"

#include <algorithm>
#include <bit>
#include <cmath>
#include <cstdint>

namespace pithward::record {

namespace {

constexpr double grid = 64.0;
constexpr double most_on_grid_px = 1e6;
constexpr std::size_t longest_curve_bytes = std::size_t{1} << 22U;
constexpr char in_steps = 's';
constexpr char as_is = 'd';

bool on_grid(double value) {
    return std::abs(value) <= most_on_grid_px && std::round(value * grid) == value * grid &&
           !(value == 0.0 && std::signbit(value));
}

/// A signed number in as few bytes as it needs, seven bits in each, the sign in the lowest.
void put_step(std::string& bytes, std::int64_t step) {
    auto rest = static_cast<std::uint64_t>(step < 0 ? -2 * step - 1 : 2 * step);
    while (rest >= 0x80U) {
        bytes += static_cast<char>((rest & 0x7FU) | 0x80U);
        rest >>= 7U;
    }
    bytes += static_cast<char>(rest);
}

std::optional<std::int64_t> take_step(std::string_view& bytes) {
    std::uint64_t value = 0;
    for (unsigned shift = 0; shift < 63 && !bytes.empty(); shift += 7) {
        const auto byte = static_cast<unsigned char>(bytes.front());
        bytes.remove_prefix(1);
        value |= std::uint64_t{byte & 0x7FU} << shift;
        if ((byte & 0x80U) == 0) {
            const auto half = static_cast<std::int64_t>(value >> 1U);
            return (value & 1U) != 0 ? -half - 1 : half;
        }
    }
    return std::nullopt;
}

void put_number(std::string& bytes, double value) {
    auto bits = std::bit_cast<std::uint64_t>(value);
    for (int i = 0; i < 8; ++i) {
        bytes += static_cast<char>(bits & 0xFFU);
        bits >>= 8U;
    }
}

double number_at(std::string_view bytes, std::size_t at) {
    std::uint64_t bits = 0;
    for (std::size_t i = 8; i-- > 0;) {
        bits = bits << 8U | static_cast<unsigned char>(bytes[at + i]);
    }
    return std::bit_cast<double>(bits);
}

} // namespace

std::vector<ImagePoint> on_curve_grid(std::vector<ImagePoint> curve) {
    for (ImagePoint& point : curve) {
        point = {std::round(point.x * grid) / grid + 0.0, std::round(point.y * grid) / grid + 0.0};
    }
    return curve;
}

std::string curve_bytes(const std::vector<ImagePoint>& curve) {
    if (curve.empty()) {
        return {};
    }
    const bool short_form =
        std::ranges::all_of(curve, [](const ImagePoint& at) { return on_grid(at.x) && on_grid(at.y); });
    std::string bytes(1, short_form ? in_steps : as_is);
    std::int64_t x = 0;
    std::int64_t y = 0;
    for (const ImagePoint& point : curve) {
        if (!short_form) {
            put_number(bytes, point.x);
            put_number(bytes, point.y);
            continue;
        }
        const std::int64_t at_x = std::llround(point.x * grid);
        const std::int64_t at_y = std::llround(point.y * grid);
        put_step(bytes, at_x - x);
        put_step(bytes, at_y - y);
        x = at_x;
        y = at_y;
    }
    return bytes;
}

std::optional<std::vector<ImagePoint>> curve_from(std::string_view bytes) {
    std::vector<ImagePoint> curve;
    if (bytes.empty()) {
        return curve;
    }
    const char form = bytes.front();
    bytes.remove_prefix(1);
    if (bytes.size() > longest_curve_bytes || (form != in_steps && form != as_is)) {
        return std::nullopt;
    }
    if (form == as_is) {
        if (bytes.size() % 16 != 0) {
            return std::nullopt;
        }
        for (std::size_t at = 0; at < bytes.size(); at += 16) {
            curve.push_back({number_at(bytes, at), number_at(bytes, at + 8)});
        }
        return curve;
    }
    // The last byte of each step has no high bit.
    const auto steps =
        std::ranges::count_if(bytes, [](char byte) { return (static_cast<unsigned char>(byte) & 0x80U) == 0; });
    curve.reserve(static_cast<std::size_t>(steps) / 2);
    // Unsigned, so that hostile steps wrap round and do no harm.
    std::uint64_t x = 0;
    std::uint64_t y = 0;
    while (!bytes.empty()) {
        const auto step_x = take_step(bytes);
        const auto step_y = take_step(bytes);
        if (!step_x || !step_y) {
            return std::nullopt;
        }
        x += static_cast<std::uint64_t>(*step_x);
        y += static_cast<std::uint64_t>(*step_y);
        curve.push_back({static_cast<double>(static_cast<std::int64_t>(x)) / grid,
                         static_cast<double>(static_cast<std::int64_t>(y)) / grid});
    }
    return curve;
}

} // namespace pithward::record
