#include "libimaging/boundary/bark_or_wood.h"

#include "libimaging/robust/median.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

namespace pithward::boundary {

namespace {

constexpr double bark_mm = 2.0;          ///< So much bark is learnt from ...
constexpr double learnt_wood_mm = 4.0;   ///< ... and so much wood ...
constexpr double learnt_margin_mm = 0.2; ///< ... so far from the edge.
constexpr double least_learnt_mm = 0.15; ///< Less of either teaches nothing.
constexpr double least_colour = 0.008;   ///< Deviations within one material.
constexpr double least_tone = 0.06;
constexpr double most_odds = 4.0;

std::vector<double> tones_of(std::span<const ColumnLook> looks) {
    std::vector<double> tones;
    tones.reserve(looks.size());
    for (const ColumnLook& look : looks) {
        tones.push_back(look.tone);
    }
    return tones;
}

double median_distance(std::vector<double> values, double from) {
    for (double& value : values) {
        value = std::abs(value - from);
    }
    return quantile(values, 0.5);
}

} // namespace

BarkOrWood::Material::Material(std::span<const ColumnLook> looks)
    : red(line_through(looks, &ColumnLook::red, least_colour))
    , blue(line_through(looks, &ColumnLook::blue, least_colour)) {}

double BarkOrWood::Material::log_likelihood(const ColumnLook& look) const {
    const double r = red.strangeness(look.tone, look.red);
    const double b = blue.strangeness(look.tone, look.blue);
    return -0.5 * (r * r + b * b) - std::log(red.deviation * blue.deviation);
}

BarkOrWood::BarkOrWood(std::span<const ColumnLook> bark, std::span<const ColumnLook> wood)
    : bark_(bark)
    , wood_(wood)
    , bark_tone_(quantile(tones_of(bark), 0.5))
    , bark_tone_deviation_(std::max(least_tone, deviation_of_median * median_distance(tones_of(bark), bark_tone_)))
    , wood_tone_range_(std::max(least_tone, quantile(tones_of(wood), 0.98) - quantile(tones_of(wood), 0.02))) {}

std::optional<BarkOrWood> BarkOrWood::learnt(std::span<const ColumnLook> looks, int edge, double px_mm) {
    const auto part = [&](double from_mm, double to_mm) {
        const auto column = [&](double mm) {
            return static_cast<std::size_t>(
                std::clamp(edge + static_cast<int>(std::lround(mm / px_mm)), 0, static_cast<int>(looks.size())));
        };
        return looks.subspan(column(from_mm), column(to_mm) - column(from_mm));
    };
    const auto bark = part(-learnt_margin_mm - bark_mm, -learnt_margin_mm);
    const auto wood = part(learnt_margin_mm, learnt_margin_mm + learnt_wood_mm);
    const auto enough = static_cast<std::size_t>(std::max(10.0, least_learnt_mm / px_mm));
    if (std::min(bark.size(), wood.size()) < enough) {
        return std::nullopt;
    }
    return BarkOrWood(bark, wood);
}

double BarkOrWood::evidence_for_bark(const ColumnLook& look) const {
    const double colour = bark_.log_likelihood(look) - wood_.log_likelihood(look);
    const double z = (look.tone - bark_tone_) / bark_tone_deviation_;
    const double tone =
        std::log(wood_tone_range_ / (bark_tone_deviation_ * std::sqrt(2.0 * std::numbers::pi))) - 0.5 * z * z;
    return std::clamp(std::clamp(colour, -most_odds, most_odds) + std::max(tone, -most_odds), -most_odds, most_odds);
}

} // namespace pithward::boundary
