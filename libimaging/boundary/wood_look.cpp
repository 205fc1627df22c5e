#include "libimaging/boundary/wood_look.h"

#include <algorithm>
#include <cmath>

namespace pithward::boundary {

namespace {

constexpr double deviation_factor = 2.0; ///< Standard deviation over median deviation, with room for stains.
constexpr double doubt = 3.5;            ///< Half squared deviations under this speak for wood.

} // namespace

LookLine line_through(std::span<const ColumnLook> wood, double ColumnLook::*value, double least_deviation) {
    double t = 0.0;
    double v = 0.0;
    double tt = 1e-9;
    double tv = 0.0;
    const auto n = static_cast<double>(wood.size());
    for (const ColumnLook& look : wood) {
        t += look.tone / n;
        v += look.*value / n;
    }
    for (const ColumnLook& look : wood) {
        tt += (look.tone - t) * (look.tone - t);
        tv += (look.tone - t) * (look.*value - v);
    }
    LookLine line;
    line.slope = tv / tt;
    line.constant = v - line.slope * t;
    std::vector<double> residuals;
    residuals.reserve(wood.size());
    for (const ColumnLook& look : wood) {
        residuals.push_back(std::abs(look.*value - line.constant - line.slope * look.tone));
    }
    line.deviation = std::max(least_deviation, deviation_factor * quantile(residuals, 0.5));
    return line;
}

double quantile(std::vector<double> values, double share) {
    const auto k = static_cast<std::ptrdiff_t>(share * static_cast<double>(values.size() - 1));
    std::nth_element(values.begin(), values.begin() + k, values.end());
    return values[static_cast<std::size_t>(k)];
}

WoodLook::WoodLook(const std::vector<ColumnLook>& wood)
    : red(line_through(wood, &ColumnLook::red, 0.008))
    , blue(line_through(wood, &ColumnLook::blue, 0.012))
    , rough(line_through(wood, &ColumnLook::rough, 0.3)) {
    std::vector<double> tones;
    tones.reserve(wood.size());
    for (const ColumnLook& look : wood) {
        tones.push_back(look.tone);
    }
    darkest = quantile(tones, 0.02);
    lightest = quantile(tones, 0.98);
}

double WoodLook::evidence_against(const ColumnLook& look, double colour_limit) const {
    const auto square = [](double z, double most) { return 0.5 * std::min(z * z, most * most); };
    const double range = std::max(lightest - darkest, 0.05);
    const double beyond = std::max({0.0, darkest - look.tone, look.tone - lightest}) / (0.12 * range);
    const double colour = square(red.strangeness(look.tone, look.red), colour_limit) +
                          square(blue.strangeness(look.tone, look.blue), colour_limit);
    const double coarse = square(std::max(0.0, rough.strangeness(look.tone, look.rough)), 3.0);
    const double gap = look.solid < 0.4 ? 4.0 : 0.0;
    return std::clamp(colour + coarse + square(beyond, 3.0) + gap - doubt, -3.0, 3.0);
}

double WoodLook::colour_strangeness(const ColumnLook& look) const {
    return std::hypot(red.strangeness(look.tone, look.red), blue.strangeness(look.tone, look.blue));
}

} // namespace pithward::boundary
