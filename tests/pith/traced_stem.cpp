#include "tests/pith/traced_stem.h"

#include <array>
#include <cmath>
#include <numbers>
#include <random>

namespace pithward::test {

namespace {

constexpr ImagePoint innermost_px{2000.0, 300.0};
constexpr double point_step_mm = 0.3;
constexpr double tangent_step_mm = 0.001;

/// Swells as a sum of waves round the stem whose heights fade from ring to ring and come anew.
class Waves {
public:
    Waves(const TracedStem& stem, std::mt19937_64& random)
        : kept_(std::exp(-1.0 / stem.lasting))
        , random_(random) {
        double square_sum = 0.0;
        for (std::size_t k = 0; k < height_.size(); ++k) {
            height_[k] = {bell_(random_), bell_(random_)};
            length_mm_[k] = 4.0 * std::pow(1.4, static_cast<double>(k));
            square_sum += length_mm_[k] * length_mm_[k];
        }
        for (std::size_t k = 0; k < height_.size(); ++k) { // long waves are the higher ones
            sd_[k] = 0.5 * stem.swell * length_mm_[k] / std::sqrt(square_sum);
        }
    }
    void next_ring() {
        const double fresh = std::sqrt(1.0 - kept_ * kept_);
        for (auto& pair : height_) {
            pair[0] = kept_ * pair[0] + fresh * bell_(random_);
            pair[1] = kept_ * pair[1] + fresh * bell_(random_);
        }
    }
    /// Relative to the radius; waves are some 4 to 22 mm long.
    [[nodiscard]] double at(double angle, double radius_mm) const {
        double sum = 0.0;
        for (std::size_t k = 0; k < height_.size(); ++k) {
            const double turns = 2.0 * std::numbers::pi * radius_mm * angle / length_mm_[k];
            sum += sd_[k] * (height_[k][0] * std::cos(turns) + height_[k][1] * std::sin(turns));
        }
        return sum;
    }

private:
    double kept_;
    std::mt19937_64& random_;
    std::normal_distribution<double> bell_;
    std::array<std::array<double, 2>, 6> height_{};
    std::array<double, 6> length_mm_{};
    std::array<double, 6> sd_{};
};

double wrapped(double angle) {
    return std::remainder(angle, 2.0 * std::numbers::pi);
}

} // namespace

ImagePoint pith_on_scan(const TracedStem& stem) {
    return innermost_px + ImagePoint{stem.pith_x_mm, stem.pith_y_mm} * traced_px_per_mm;
}

Reading traced_reading(const TracedStem& stem) {
    std::mt19937_64 random(stem.seed);
    std::normal_distribution<double> bell;
    Waves waves(stem, random);
    const double to_core = std::atan2(-stem.pith_y_mm, -stem.pith_x_mm);
    const auto form = [&](double angle) {
        return 1.0 + stem.eccentricity * std::cos(angle - stem.widest) +
               stem.oval * std::cos(2.0 * (angle - stem.widest) + 1.0);
    };
    // Radius of a boundary, relative to its nominal one, in the direction of a place.
    const auto relative = [&](double x, double y, double nominal) {
        const double angle = std::atan2(y - stem.pith_y_mm, x - stem.pith_x_mm);
        return form(angle) + waves.at(wrapped(angle - to_core), nominal);
    };
    const auto distance = [&](double x, double y) { return std::hypot(x - stem.pith_x_mm, y - stem.pith_y_mm); };

    Reading reading;
    reading.path.legs = {Leg{"scan", {}, {}}};
    Calibration scale;
    scale.px_per_mm_x = scale.px_per_mm_y = traced_px_per_mm;
    reading.calibrations["scan"] = scale;
    double nominal = std::hypot(stem.pith_x_mm, stem.pith_y_mm) / form(to_core);
    double x = 0.0;
    for (std::size_t k = 0; k <= stem.widths_mm.size(); ++k) {
        // The innermost boundary crosses the path at the origin whatever the swells: its nominal radius is what fits.
        const auto crossing = [&](double y, double size) -> std::optional<double> {
            double out = -1000.0;
            double in = stem.pith_x_mm;
            if (distance(in, y) > size * relative(in, y, size)) {
                return std::nullopt;
            }
            for (int round = 0; round < 60; ++round) {
                const double middle = 0.5 * (out + in);
                (distance(middle, y) > size * relative(middle, y, size) ? out : in) = middle;
            }
            return out;
        };
        if (k == 0) {
            for (int round = 0; round < 20; ++round) {
                nominal = distance(0.0, 0.0) / relative(0.0, 0.0, nominal);
            }
        } else {
            nominal += stem.widths_mm[k - 1] / form(to_core);
            waves.next_ring();
        }
        const auto at = crossing(0.0, nominal);
        if (!at) {
            continue;
        }
        x = *at;
        Boundary boundary;
        boundary.id = BoundaryId{static_cast<std::int64_t>(stem.widths_mm.size() - k) + 1};
        boundary.at = innermost_px + ImagePoint{x, 0.0} * traced_px_per_mm;
        const auto left = crossing(-tangent_step_mm, nominal);
        const auto right = crossing(tangent_step_mm, nominal);
        boundary.tangent =
            line_direction(left && right ? std::atan2(2.0 * tangent_step_mm, *right - *left) : 0.5 * std::numbers::pi);
        boundary.sd = Millimetres(0.01);
        for (double y = -stem.half_breadth_mm; y <= stem.half_breadth_mm; y += point_step_mm) {
            if (const auto place = crossing(y, nominal)) {
                boundary.curve.push_back(innermost_px +
                                         ImagePoint{*place + stem.noise_mm * bell(random), y} * traced_px_per_mm);
            }
        }
        reading.boundaries.insert(reading.boundaries.begin(), std::move(boundary));
    }
    reading.path.legs.front().points = {innermost_px + ImagePoint{x - 1.0, 0.0} * traced_px_per_mm,
                                        innermost_px + ImagePoint{stem.path_beyond_mm, 0.0} * traced_px_per_mm};
    return reading;
}

} // namespace pithward::test
