#include "demo-scans/maker/tissue.h"

#include "demo-scans/maker/noise.h"

#include <algorithm>
#include <cmath>

namespace pithward::demo {

namespace {

/// Files of cells run from the pith outward and new ones come in between as the stem grows: at each doubling of the
/// radius there are twice as many. The two nearest sets are blended.
struct Files {
    double arc;   ///< Arc in the inner set, mm.
    double share; ///< How much of the outer set, in which the arc counts double.
    std::uint64_t set;
};

Files files_at(double radius, double angle) {
    int exponent = 0;
    const double mantissa = std::frexp(std::max(radius, 0.2), &exponent); // radius = mantissa * 2^exponent
    const double inner = std::ldexp(0.5, exponent);
    return {angle * inner, smooth_step(0.0, 1.0, 2.0 * mantissa - 1.0), static_cast<std::uint64_t>(exponent + 100)};
}

double file_noise(std::uint64_t seed, const Files& f, double size, double radius, double length) {
    const double r = radius / length;
    const double inner = noise(mix(seed, f.set), f.arc / size, r);
    const double outer = noise(mix(seed, f.set + 1), 2.0 * f.arc / size, r);
    return blend(inner, outer, f.share);
}

/// Rays of one breadth: at most one in each slot of the arc, and each comes to an end after some millimetres.
double rays(std::uint64_t seed, const Files& f, double radius, double per_mm, double breadth, double length,
            double px_per_mm) {
    double strength = 0.0;
    for (int set = 0; set < 2; ++set) {
        const double share = set == 0 ? 1.0 - f.share : f.share;
        const double scale = set == 0 ? 1.0 : 2.0;
        // Slots hold as many rays on a millimetre of true arc as asked for, whatever the set.
        const double slot_mm = 0.7 / per_mm;
        const double place = f.arc * scale / slot_mm;
        const double slot = std::floor(place);
        const std::uint64_t base = mix(seed, f.set + static_cast<std::uint64_t>(set));
        const double stretch = radius / length + unit(lattice(base + 3, slot));
        const std::uint64_t hash = lattice(base, slot, std::floor(stretch));
        if (unit(hash) > 0.7) {
            continue;
        }
        const double middle = 0.2 + 0.6 * unit(mix(hash, 1)) + 0.05 * noise(base + 7, radius / 1.5, slot);
        const double in_stretch = stretch - std::floor(stretch);
        const double taper = std::min(1.0, 8.0 * std::min(in_stretch, 1.0 - in_stretch));
        const double half = 0.5 * breadth * (0.6 + 0.8 * unit(mix(hash, 2))) * taper;
        const double off = std::abs(place - slot - middle) * slot_mm;
        // A ray thinner than a pixel dims with the share of the pixel that it covers.
        strength += share * std::clamp((half - off) * px_per_mm + 0.5, 0.0, std::min(1.0, 2.0 * half * px_per_mm));
    }
    return strength;
}

Colour stains(const CoreModel& core, Colour colour, const InTissue& at) {
    const Disturbances& d = core.scene.disturbances;
    const std::uint64_t seed = mix(core.scene.seed, 81);
    if (d.blue_stain > 0.0 && at.ring > core.field.count() - core.scene.sapwood_rings) {
        const double patch = smooth_step(-0.1, 0.5, noise(seed, at.core.a / 9.0, at.core.b / 2.2));
        const double streak = 0.75 + 0.25 * noise(seed + 1, at.core.a / 6.0, at.core.b / 0.09);
        colour = blend(colour, colour * Colour{0.72F, 0.78F, 0.84F}, d.blue_stain * patch * streak);
    }
    if (d.resin > 0.0) {
        const double patch = smooth_step(0.28, 0.5, rough_noise(seed + 2, at.core.a / 6.0, at.core.b / 2.5));
        colour = blend(colour, colour * Colour{0.90F, 0.76F, 0.58F}, d.resin * patch);
    }
    if (d.poor_sanding > 0.0) {
        const double patch = smooth_step(-0.1, 0.5, noise(seed + 3, at.core.a / 5.0, at.core.b / 1.8));
        const Colour flat = look_of(core.scene.timber).middle * Colour{1.04F, 1.07F, 1.12F};
        colour = blend(colour, flat, 0.45 * d.poor_sanding * patch);
        colour =
            scaled(colour, 1.0 + 0.16 * d.poor_sanding * patch * noise(seed + 4, at.core.a / 0.07, at.core.b / 0.05));
    }
    return colour;
}

Colour radial_cracks(const CoreModel& core, Colour colour, const InTissue& at) {
    std::uint64_t seed = mix(core.scene.seed, 82);
    for (const RadialCrack& crack : core.scene.disturbances.radial_cracks) {
        ++seed;
        if (at.core.a < crack.from_mm || at.core.a > crack.to_mm) {
            continue;
        }
        const double line =
            crack.across_mm + 0.22 * noise(seed, at.core.a / 5.0) + 0.04 * noise(seed + 40, at.core.a / 0.5);
        const double end = std::min(at.core.a - crack.from_mm, crack.to_mm - at.core.a);
        const double half = 0.5 * crack.width_mm * std::min(1.0, end / 2.0);
        const double cover = std::clamp(0.5 + (half - std::abs(at.core.b - line)) * at.px_per_mm, 0.0, 1.0);
        colour = blend(colour, Colour{48, 34, 25}, 0.92 * cover * std::min(1.0, 2.0 * half * at.px_per_mm));
    }
    return colour;
}

} // namespace

double file_jitter(const CoreModel& core, double radius, double angle) {
    if (core.scene.texture <= 0.0) {
        return 0.0;
    }
    return 0.010 * core.scene.texture *
           file_noise(mix(core.scene.seed, 83), files_at(radius, angle), look_of(core.scene.timber).file_mm, radius,
                      0.3);
}

Colour tissue(const CoreModel& core, Colour colour, const InTissue& at) {
    const Scene& scene = core.scene;
    const TimberLook& look = look_of(scene.timber);
    const std::uint64_t seed = mix(scene.seed, 80);
    const double k = scene.texture;
    // Heartwood begins within a ring or two, and not quite along the rings.
    const double rings_in = core.field.count() - at.ring - scene.sapwood_rings + 1.5 * noise(seed, at.core.b / 1.5);
    colour = blend(colour, colour * look.heartwood, smooth_step(-1.5, 1.5, rings_in));
    if (k > 0.0) {
        const Files files = files_at(at.radius, at.angle);
        const double size = look.file_mm;
        // Latewood is not equally dense along a ring, nor from file to file.
        const std::uint64_t ring_seed = mix(seed + 12, static_cast<std::uint64_t>(at.ring));
        const double density =
            1.0 + k * (0.13 * noise(ring_seed, at.core.b / 0.8) + 0.10 * noise(ring_seed + 1, at.core.b / 0.13) +
                       0.13 * file_noise(seed + 13, files, size, at.radius, 0.25));
        colour = look.early + scaled(colour - look.early, density);
        const auto open =
            static_cast<double>((colour.g - look.late.g) / (look.early.g - look.late.g)); // 1 in earlywood
        const double cells =
            noise(seed + 1, at.core.a / 0.036, at.core.b / 0.03) * blend(0.035, 0.065, std::clamp(open, 0.0, 1.0));
        const double fine = 0.040 * file_noise(seed + 2, files, size, at.radius, 0.5);
        const double bundle = 0.028 * file_noise(seed + 3, files, 3.2 * size, at.radius, 1.8);
        const double broad = 0.022 * noise(seed + 4, at.core.a / 7.0, at.core.b / 1.0) +
                             0.012 * noise(seed + 5, at.core.a / 1.4, at.core.b / 0.35);
        double tone = 1.0 + k * (cells + fine + bundle + broad);
        tone += k * look.ray_tone * rays(seed + 6, files, at.radius, look.rays_per_mm, look.ray_mm, 3.5, at.px_per_mm);
        colour = scaled(colour, tone);
        const auto hue = static_cast<float>(k * 0.018 * noise(seed + 7, at.core.a / 3.0, at.core.b / 1.6));
        colour = colour * Colour{1.0F + 0.3F * hue, 1.0F, 1.0F - hue};
        const auto red = static_cast<float>(k * scene.hue_noise * file_noise(seed + 14, files, size, at.radius, 0.2));
        const auto blue =
            static_cast<float>(k * scene.hue_noise * noise(seed + 15, at.core.a / 0.05, at.core.b / 0.06));
        colour = colour * Colour{1.0F + red, 1.0F, 1.0F + blue};
        colour = core.pores.over(colour, at.core, 1.0 / at.px_per_mm);
        if (look.broad_rays_per_mm > 0.0) {
            const double ray =
                rays(seed + 8, files, at.radius, look.broad_rays_per_mm, look.broad_ray_mm, 28.0, at.px_per_mm);
            const double streak = 1.0 + 0.03 * noise(seed + 9, at.core.a / 0.8, at.core.b / 0.03);
            colour = blend(colour,
                           scaled(blend(look.early, look.middle, 0.25) *
                                      blend(Colour{1, 1, 1}, look.heartwood, 0.5 * smooth_step(-1.5, 1.5, rings_in)),
                                  streak),
                           0.8 * ray);
        }
    }
    // The pith: soft brown tissue.
    const double pith = smooth_step(-0.62, -0.38, -at.radius * (1.0 + 0.15 * noise(seed + 10, 3.0 * at.angle)));
    colour = blend(colour,
                   Colour{142, 102, 68} *
                       static_cast<float>(1.0 + 0.1 * noise(seed + 11, at.core.a / 0.08, at.core.b / 0.08)),
                   0.85 * pith);
    return radial_cracks(core, stains(core, colour, at), at);
}

Colour bark_colour(const CoreModel& core, CorePoint at, double depth_mm) {
    const std::uint64_t seed = mix(core.scene.seed, 84);
    const double share = depth_mm / std::max(core.scene.bark_mm, 0.1);
    // Inner bark pale and layered, outer bark dark, reddish and crumbly.
    const double wander =
        depth_mm + 0.10 * noise(seed, at.b / 0.7) + 0.05 * noise(seed + 4, at.b / 0.2, depth_mm / 0.3);
    const double layers = noise(seed + 1, wander / 0.06, at.b / 0.9);
    const double crumbs = rough_noise(seed + 5, depth_mm / 0.12, at.b / 0.14);
    const double outer = smooth_step(0.3, 0.5, share + 0.15 * noise(seed + 2, at.b / 0.9, depth_mm / 0.5));
    const double fibres = smooth_step(0.05, 0.25, depth_mm) * (0.10 * layers + 0.06 * crumbs);
    const Colour inner_bark = Colour{201, 160, 116} * static_cast<float>(1.0 + fibres);
    const double cork = rough_noise(seed + 3, wander / 0.35, at.b / 0.8);
    const double cleft = smooth_step(0.45, 0.7, rough_noise(seed + 6, wander / 0.22, at.b / 0.6));
    const Colour outer_bark = blend(Colour{92, 60, 43}, Colour{148, 96, 66}, 0.5 + 0.7 * cork) *
                              static_cast<float>((1.0 + 0.20 * crumbs + 0.12 * layers) * (1.0 - 0.55 * cleft));
    return blend(inner_bark, outer_bark, outer);
}

} // namespace pithward::demo
