#pragma once

#include <cmath>
#include <compare>
#include <numbers>

namespace pithward {

/// A length on the wood, in millimetres.
class Millimetres {
public:
    constexpr Millimetres() = default;
    constexpr explicit Millimetres(double value)
        : value_(value) {}
    [[nodiscard]] constexpr double value() const { return value_; }

    constexpr Millimetres& operator+=(Millimetres o) {
        value_ += o.value_;
        return *this;
    }
    constexpr Millimetres& operator-=(Millimetres o) {
        value_ -= o.value_;
        return *this;
    }
    friend constexpr Millimetres operator+(Millimetres a, Millimetres b) { return Millimetres(a.value_ + b.value_); }
    friend constexpr Millimetres operator-(Millimetres a, Millimetres b) { return Millimetres(a.value_ - b.value_); }
    friend constexpr Millimetres operator-(Millimetres a) { return Millimetres(-a.value_); }
    friend constexpr Millimetres operator*(Millimetres a, double k) { return Millimetres(a.value_ * k); }
    friend constexpr Millimetres operator*(double k, Millimetres a) { return Millimetres(a.value_ * k); }
    friend constexpr Millimetres operator/(Millimetres a, double k) { return Millimetres(a.value_ / k); }
    friend constexpr double operator/(Millimetres a, Millimetres b) { return a.value_ / b.value_; }
    friend constexpr auto operator<=>(Millimetres, Millimetres) = default;

private:
    double value_ = 0.0;
};

/// A calendar year in astronomical counting (..., -1, 0, 1, ...). A ring bears the year in which its growth began.
class Year {
public:
    constexpr Year() = default;
    constexpr explicit Year(int value)
        : value_(value) {}
    [[nodiscard]] constexpr int value() const { return value_; }

    friend constexpr Year operator+(Year y, int n) { return Year(y.value_ + n); }
    friend constexpr Year operator-(Year y, int n) { return Year(y.value_ - n); }
    friend constexpr int operator-(Year a, Year b) { return a.value_ - b.value_; }
    friend constexpr auto operator<=>(Year, Year) = default;

private:
    int value_ = 0;
};

/// A place on a scan, in pixels of the full-resolution image as stored in the file: pixel centres at integers, x right,
/// y down.
struct ImagePoint {
    double x = 0.0;
    double y = 0.0;
    friend constexpr ImagePoint operator+(ImagePoint a, ImagePoint b) { return {a.x + b.x, a.y + b.y}; }
    friend constexpr ImagePoint operator-(ImagePoint a, ImagePoint b) { return {a.x - b.x, a.y - b.y}; }
    friend constexpr ImagePoint operator*(ImagePoint a, double k) { return {a.x * k, a.y * k}; }
    friend constexpr bool operator==(ImagePoint, ImagePoint) = default;
};

/// A place on a strip, in millimetres: s along the path from its first point, u across it (positive to the right of the
/// walker, that is toward +y on a path that runs toward +x).
struct StripPoint {
    double s_mm = 0.0;
    double u_mm = 0.0;
    friend constexpr bool operator==(StripPoint, StripPoint) = default;
};

[[nodiscard]] inline double degrees(double radians) {
    return radians * 180.0 / std::numbers::pi;
}
[[nodiscard]] inline double radians(double degrees) {
    return degrees * std::numbers::pi / 180.0;
}

/// Brings the direction of an undirected line into [0, pi).
[[nodiscard]] inline double line_direction(double radians) {
    double turned = std::fmod(radians, std::numbers::pi);
    if (turned < 0.0) {
        turned += std::numbers::pi;
    }
    return turned >= std::numbers::pi ? 0.0 : turned;
}

} // namespace pithward
