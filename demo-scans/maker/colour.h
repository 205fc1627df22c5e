#pragma once

namespace pithward::demo {

/// A colour as the file holds it: 0 to 255 in each channel, encoded, not linear light.
/// Mixing and blurring happen in these values, so that "half-way" means half-way in the file.
struct Colour {
    float r = 0.0F;
    float g = 0.0F;
    float b = 0.0F;

    friend constexpr Colour operator+(Colour p, Colour q) { return {p.r + q.r, p.g + q.g, p.b + q.b}; }
    friend constexpr Colour operator-(Colour p, Colour q) { return {p.r - q.r, p.g - q.g, p.b - q.b}; }
    friend constexpr Colour operator*(Colour p, float k) { return {p.r * k, p.g * k, p.b * k}; }
    friend constexpr Colour operator*(Colour p, Colour q) { return {p.r * q.r, p.g * q.g, p.b * q.b}; }
    constexpr Colour& operator+=(Colour q) {
        r += q.r;
        g += q.g;
        b += q.b;
        return *this;
    }
};

[[nodiscard]] constexpr Colour blend(Colour p, Colour q, double share) {
    return p + (q - p) * static_cast<float>(share);
}

[[nodiscard]] constexpr Colour scaled(Colour p, double k) {
    return p * static_cast<float>(k);
}

} // namespace pithward::demo
