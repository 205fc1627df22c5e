#include "demo-scans/maker/graded.h"

#include "demo-scans/maker/conditions.h"

#include <algorithm>
#include <array>

namespace pithward::demo {

namespace {

/// Strength 1 to 3 as a share of the strongest.
double share(int strength) {
    return strength / 3.0;
}

WoodType wood_of(Grade grade) {
    return grade == Grade::RingPorous      ? WoodType::RingPorous
           : grade == Grade::DiffusePorous ? WoodType::DiffusePorous
                                           : WoodType::Conifer;
}

/// The surface and the scanner.
void wear(Scene& scene, double share, Random& random) {
    Disturbances& d = scene.disturbances;
    d.scratches = random.uniform(0.3, 1.3) * share;
    d.dust = random.uniform(0.2, 1.0) * share;
    d.poor_sanding = random.chance(0.3) ? 0.9 * share : 0.0;
    d.pencil_marks = random.chance(0.3) ? random.whole(3, 12) : 0;
    scene.scanner.uneven_light = random.chance(0.4) ? 0.12 * share : 0.02;
    scene.scanner.contrast = 1.0 - random.uniform(0.0, 0.25) * share;
    scene.scanner.blur_px = random.uniform(0.5, 0.6) + random.uniform(0.0, 0.5) * share;
    scene.scanner.noise = 0.8 + random.uniform(0.0, 1.6) * share;
    scene.scanner.grey = random.chance(0.1);
}

/// False, absent, wedging, very narrow and pale rings, reaction wood, resin and stain: one to four kinds for a core.
void trouble_rings(Scene& scene, int strength, Random& random) {
    Disturbances& d = scene.disturbances;
    const double s = share(strength);
    for (int kinds = random.whole(1, 4); kinds > 0; --kinds) {
        switch (random.whole(0, 9)) {
        case 0:
        case 9:
            for (const int year : some_years(scene, random.whole(2, 6), random)) {
                d.false_rings.push_back({year, random.uniform(0.4, 0.8),
                                         (0.4 + 0.5 * random.uniform()) * (0.6 + 0.4 * s), random.uniform(0.7, 1.8),
                                         random.uniform(0.0, 1.0)});
            }
            break;
        case 1:
            d.absent = some_years(scene, strength > 2 ? 2 : 1, random);
            break;
        case 2:
            d.wedging = some_years(scene, strength, random);
            break;
        case 3:
            d.micro = some_years(scene, strength, random);
            break;
        case 4:
            d.pale = some_years(scene, 2 * strength, random);
            break;
        case 5:
            d.compression.push_back(some_stretch(scene, random.whole(4, 10), s, random));
            break;
        case 6:
            d.resin = 0.8 * s;
            break;
        case 7:
            d.blue_stain = 0.8 * s;
            break;
        default:
            d.narrow.push_back(some_stretch(scene, random.whole(5, 12), 0.5 - 0.25 * s, random));
            break;
        }
    }
}

void make_narrow(Scene& scene, int strength, Random& random) {
    scene.growth.mean_mm = random.uniform(0.42, 0.6) - 0.06 * strength;
    scene.growth.rings = random.whole(100, 170);
    scene.growth.juvenile = random.uniform(0.2, 1.0);
    scene.growth.sensitivity = random.uniform(0.2, 0.3);
    scene.dpi = std::array{1600.0, 1600.0, 2400.0}[static_cast<std::size_t>(random.whole(0, 2))];
    if (random.chance(0.4)) {
        scene.disturbances.micro = some_years(scene, strength, random);
    }
}

/// Cracks across the core and along it, lost wood, bites out of its side.
void break_up(Scene& scene, int strength, Random& random) {
    Disturbances& d = scene.disturbances;
    const double s = share(strength);
    const double length = scene.growth.rings * scene.growth.mean_mm;
    for (const int year : some_years(scene, random.whole(1, 3), random)) {
        d.cracks.push_back({year, random.uniform(0.1, 0.4) + 1.2 * s * random.uniform(), random.normal(0.0, 0.15),
                            random.normal(0.0, 2.0)});
    }
    if (random.chance(0.3)) {
        d.lost.push_back({some_stretch(scene, random.whole(1, 4), 1.0, random), random.uniform(0.4, 2.0)});
    }
    if (random.chance(0.5)) {
        const double from = random.uniform(0.1, 0.6) * length;
        d.radial_cracks.push_back({from, from + random.uniform(8.0, 30.0), random.uniform(-1.5, 1.5), 0.07 + 0.13 * s});
    }
    if (random.chance(0.4)) {
        d.chunks.push_back(
            {random.uniform(0.1, 0.8) * length, random.uniform(1.0, 4.0), 0.1 + 0.25 * s, random.sign()});
    }
    scene.mount.ruler = random.chance(0.3);
}

} // namespace

std::span<const GradeName> grades() {
    static constexpr std::array names{
        GradeName{Grade::ConiferClear, "conifer-clear"},   GradeName{Grade::ConiferHard, "conifer-hard"},
        GradeName{Grade::ConiferNarrow, "conifer-narrow"}, GradeName{Grade::RingPorous, "ring-porous"},
        GradeName{Grade::DiffusePorous, "diffuse-porous"}, GradeName{Grade::Broken, "broken"},
    };
    return names;
}

Order graded_core(Grade grade, int strength, std::uint64_t seed, int number) {
    const GradeName& kind = grades()[static_cast<std::size_t>(grade)];
    Random random(mix(mix(seed, 300 + static_cast<std::uint64_t>(grade)), static_cast<std::uint64_t>(strength)),
                  static_cast<std::uint64_t>(number));
    Scene scene;
    scene.name = numbered((kind.name + std::string("-") + std::to_string(strength) + "-").c_str(), number);
    scene.seed = random.next();
    scene.timber = some_timber(wood_of(grade), random);
    everyday(scene, random);
    give_growth(scene, random);
    const double s = share(strength);
    scene.tilt_deg = random.normal(0.0, 1.5 * s);
    scene.bow_mm = random.chance(0.4) ? random.normal(0.0, 0.8 * s) : 0.0;
    scene.pith_offset_mm = random.normal(0.0, 1.0 + 2.0 * s);
    scene.dpi = random.chance(0.7) ? 1200.0 : random.chance(0.5) ? 1600.0 : 2400.0;
    // Before the troubles, which choose among its years.
    if (scene.dpi > 1200.0 && grade != Grade::ConiferNarrow) {
        scene.growth.rings = std::min(scene.growth.rings, 70);
    }
    scene.core_width_mm = random.chance(0.6) ? random.uniform(4.9, 5.2) : random.uniform(4.1, 4.4);
    scene.unfinished_mm = random.chance(0.2) ? random.uniform(0.1, 0.5) : 0.0;
    switch (grade) {
    case Grade::ConiferClear:
        scene.growth.sensitivity = std::min(scene.growth.sensitivity, 0.28);
        scene.disturbances.scratches = random.uniform(0.1, 0.5) * s;
        scene.disturbances.dust = random.uniform(0.1, 0.5) * s;
        scene.scanner.noise = 0.7 + s * random.uniform();
        scene.widths_mm = clear_widths(scene, random);
        break;
    case Grade::ConiferHard:
        wear(scene, s, random);
        trouble_rings(scene, strength, random);
        break;
    case Grade::ConiferNarrow:
        make_narrow(scene, strength, random);
        wear(scene, 0.5 * s, random);
        break;
    case Grade::RingPorous:
    case Grade::DiffusePorous:
        wear(scene, s, random);
        scene.disturbances.chalk = random.chance(grade == Grade::RingPorous ? 0.35 : 0.12) ? s : 0.0;
        scene.hue_noise = random.uniform(0.0, 0.03);
        scene.vessel_tint = random.uniform(0.0, 1.0);
        break;
    case Grade::Broken:
        wear(scene, 0.5 * s, random);
        break_up(scene, strength, random);
        break;
    }
    return {scene.name, kind.name, {scene}, Format::Png};
}

} // namespace pithward::demo
