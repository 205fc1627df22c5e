#pragma once

#include <nlohmann/json.hpp>

#include <cmath>

namespace pithward::formats {

inline constexpr int millimetre_digits = 4; ///< Lengths in JSON: 0.0001 mm.
inline constexpr int pixel_digits = 3;
inline constexpr int share_digits = 6; ///< Probabilities and relative deviations.
inline constexpr int angle_digits = 3;

/// A number for JSON with so many decimals; null where it isn't finite.
[[nodiscard]] inline nlohmann::ordered_json json_number(double value, int digits) {
    if (!std::isfinite(value)) {
        return nullptr;
    }
    const double scale = std::pow(10.0, digits);
    const double rounded = std::round(value * scale) / scale;
    return rounded == 0.0 ? 0.0 : rounded; // No minus before a zero.
}

} // namespace pithward::formats
