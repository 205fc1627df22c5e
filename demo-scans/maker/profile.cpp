#include "demo-scans/maker/profile.h"

#include "demo-scans/maker/noise.h"

#include <algorithm>
#include <cmath>

namespace pithward::demo {

namespace {

constexpr double even_latewood_mm = 0.07; // the last cells of a ring are alike

/// What differs from ring to ring.
struct RingCharacter {
    double width_mm = 1.0;
    double share = 0.25; ///< Latewood.
    double gradual = 0.3;
    double dark = 0.85;  ///< Density of the latewood.
    double pale = 0.04;  ///< Density of the first earlywood.
    double climb = 0.10; ///< Rise of density within the earlywood.
    double compression = 0.0;
    const std::vector<FalseRing>* bands = nullptr;
    int year = 0;
};

RingCharacter character(const Scene& scene, const PlannedRing& ring) {
    const TimberLook& look = look_of(scene.timber);
    const Disturbances& d = scene.disturbances;
    Random random(mix(scene.seed, 40), static_cast<std::uint64_t>(ring.year + 50'000));
    RingCharacter c;
    c.year = ring.year;
    c.bands = &d.false_rings;
    c.width_mm = std::max(ring.width_mm, 0.03);
    const double latewood = (look.latewood_mm + look.latewood_share * c.width_mm) * std::exp(random.normal(0.0, 0.28));
    c.share = std::clamp(latewood / c.width_mm, 0.13, 0.52);
    c.gradual = std::clamp(look.gradual * random.uniform(0.6, 1.5), 0.05, 0.9 * (1.0 - c.share));
    c.dark = std::clamp(random.normal(look.darkness, look.darkness_sd), 0.45, 1.0);
    c.pale = random.uniform(0.0, 0.09);
    c.climb = random.uniform(0.03, 0.17);
    if (c.width_mm < 0.25) { // few cells, none of them very thick-walled
        c.dark *= blend(0.68, 1.0, c.width_mm / 0.25);
    }
    if (std::find(d.pale.begin(), d.pale.end(), ring.year) != d.pale.end()) {
        c.dark = random.uniform(0.24, 0.36);
        c.share *= 0.6;
    }
    for (const Years& stretch : d.compression) {
        if (ring.year >= stretch.from && ring.year <= stretch.to) {
            c.compression = stretch.strength;
            c.share = blend(c.share, random.uniform(0.5, 0.7), stretch.strength);
            c.gradual = blend(c.gradual, 0.9 * (1.0 - c.share), stretch.strength);
            c.dark = blend(c.dark, random.uniform(0.62, 0.75), stretch.strength);
        }
    }
    if (!ring.complete) { // growth broke off before the latewood
        c.share = 0.02;
        c.dark = 0.2;
    }
    return c;
}

double conifer_density(const RingCharacter& c, double phase) {
    const double start = 1.0 - c.share;
    const double change = smooth_step(start - c.gradual, start + 0.25 * c.share, phase);
    const double even = std::clamp(even_latewood_mm / c.width_mm, 0.28 * c.share, 0.6 * c.share);
    const double ripening = smooth_step(start, 1.0 - even, phase);
    double density = blend(c.pale + c.climb * phase, c.dark * (0.84 + 0.16 * ripening), change);
    for (const FalseRing& band : *c.bands) {
        if (band.year == c.year) {
            // Soft on both sides, a little steeper outside.
            const double off = phase - band.phase;
            const double inner = std::max(0.075, 0.05 / c.width_mm);
            const double outer = blend(std::max(0.055, 0.04 / c.width_mm), inner, band.evenness);
            const double breadth = band.breadth * (off < 0.0 ? inner : outer);
            density = std::max(density, blend(c.pale + c.climb * phase, c.dark,
                                              band.strength * std::exp(-off * off / (breadth * breadth))));
        }
    }
    return density;
}

double ring_porous_density(const RingCharacter& c, double phase) {
    // Pale tissue between the large vessels, then dense fibres.
    const double early = std::clamp(0.42 / c.width_mm, 0.25, 0.75);
    return blend(0.10 + c.pale, c.dark * blend(0.88, 1.0, phase), smooth_step(0.45 * early, 1.1 * early, phase));
}

double diffuse_porous_density(const RingCharacter& c, double phase, double terminal_mm) {
    const double line = std::clamp(terminal_mm / c.width_mm, 0.02, 0.35);
    const double even = 0.10 + c.pale + 0.10 * phase * phase;
    return blend(even, c.dark, smooth_step(1.0 - 1.7 * line, 1.0 - 0.6 * line, phase));
}

} // namespace

Colour tissue_colour(const TimberLook& look, double density) {
    const double d = std::clamp(density, 0.0, 1.0);
    return d < 0.5 ? blend(look.early, look.middle, 2.0 * d) : blend(look.middle, look.late, 2.0 * d - 1.0);
}

std::vector<RingProfile> profiles(const Scene& scene, const std::vector<PlannedRing>& plan) {
    const TimberLook& look = look_of(scene.timber);
    const WoodType wood = wood_type(scene.timber);
    std::vector<RingProfile> all(plan.size());
    for (std::size_t k = 0; k < plan.size(); ++k) {
        const RingCharacter c = character(scene, plan[k]);
        all[k].latewood_from_ = 1.0 - c.share;
        for (int i = 0; i < RingProfile::steps; ++i) {
            const double phase = static_cast<double>(i) / (RingProfile::steps - 1);
            const double density = wood == WoodType::Conifer      ? conifer_density(c, phase)
                                   : wood == WoodType::RingPorous ? ring_porous_density(c, phase)
                                                                  : diffuse_porous_density(c, phase, look.terminal_mm);
            Colour colour = tissue_colour(look, density);
            if (c.compression > 0.0) { // reaction wood is redder and duller
                colour = blend(colour, colour * Colour{0.95F, 0.84F, 0.74F}, c.compression);
            }
            all[k].colours_[static_cast<std::size_t>(i)] = colour;
        }
    }
    return all;
}

} // namespace pithward::demo
