#include "demo-scans/maker/presets.h"

#include "demo-scans/maker/conditions.h"

#include <algorithm>
#include <array>

namespace pithward::demo {

namespace {

void conifer_troubles(Scene& scene, Random& random) {
    Disturbances& d = scene.disturbances;
    if (random.chance(0.4)) {
        d.narrow.push_back(some_stretch(scene, random.whole(6, 16), random.uniform(0.2, 0.5), random));
    }
    d.absent = random.chance(0.35) ? some_years(scene, 1, random) : std::vector<int>{};
    d.wedging = random.chance(0.4) ? some_years(scene, random.whole(1, 2), random) : std::vector<int>{};
    d.micro = random.chance(0.35) ? some_years(scene, random.whole(1, 3), random) : std::vector<int>{};
    d.pale = random.chance(0.4) ? some_years(scene, random.whole(1, 4), random) : std::vector<int>{};
    if (random.chance(0.55)) {
        for (const int year : some_years(scene, random.whole(1, 5), random)) {
            d.false_rings.push_back({year, random.uniform(0.4, 0.82), random.uniform(0.35, 0.85)});
        }
    }
    if (random.chance(0.2)) {
        d.compression.push_back(some_stretch(scene, random.whole(4, 10), random.uniform(0.6, 1.0), random));
    }
    d.resin = random.chance(0.25) ? random.uniform(0.3, 0.8) : 0.0;
    d.blue_stain = random.chance(0.25) ? random.uniform(0.3, 0.8) : 0.0;
}

void damage(Scene& scene, Random& random) {
    Disturbances& d = scene.disturbances;
    const double length = scene.growth.rings * scene.growth.mean_mm;
    if (random.chance(0.35)) {
        for (const int year : some_years(scene, random.whole(1, 2), random)) {
            d.cracks.push_back({year, random.uniform(0.15, 1.6), random.normal(0.0, 0.12), random.normal(0.0, 0.4)});
        }
    }
    if (random.chance(0.12)) {
        d.lost.push_back({some_stretch(scene, random.whole(1, 4), 1.0, random), random.uniform(0.4, 2.0)});
    }
    if (random.chance(0.25)) {
        const double from = random.uniform(0.1, 0.6) * length;
        d.radial_cracks.push_back(
            {from, from + random.uniform(8.0, 30.0), random.uniform(-1.5, 1.5), random.uniform(0.05, 0.2)});
    }
    if (random.chance(0.25)) {
        d.chunks.push_back(
            {random.uniform(0.1, 0.8) * length, random.uniform(1.0, 4.0), random.uniform(0.15, 0.6), random.sign()});
    }
    d.scratches = random.uniform(0.2, 1.3);
    d.dust = random.uniform(0.1, 1.0);
    d.poor_sanding = random.chance(0.3) ? random.uniform(0.3, 0.9) : 0.0;
    d.pencil_marks = random.chance(0.3) ? random.whole(3, 14) : 0;
    scene.scanner.uneven_light = random.uniform(0.0, 0.12);
    scene.scanner.contrast = random.uniform(0.75, 1.1);
    scene.scanner.blur_px = random.uniform(0.5, 1.1);
    scene.scanner.noise = random.uniform(0.6, 2.5);
    scene.scanner.grey = random.chance(0.12);
}

} // namespace

Order clear_core(std::uint64_t seed, int number) {
    Random random(mix(seed, 200), static_cast<std::uint64_t>(number));
    Scene scene;
    scene.name = numbered("clear-", number);
    scene.seed = random.next();
    scene.timber = some_timber(WoodType::Conifer, random);
    everyday(scene, random);
    give_growth(scene, random);
    scene.growth.mean_mm = std::max(scene.growth.mean_mm, 0.85);
    scene.growth.sensitivity = std::min(scene.growth.sensitivity, 0.28);
    scene.disturbances.scratches = random.uniform(0.1, 0.4);
    scene.disturbances.dust = random.uniform(0.1, 0.4);
    scene.widths_mm = clear_widths(scene, random);
    return {scene.name, "conifer-clear", {scene}, Format::Png};
}

Order varied_core(std::uint64_t seed, int number, std::optional<WoodType> wood) {
    Random random(mix(seed, 201), static_cast<std::uint64_t>(number));
    Scene scene;
    const WoodType kind = wood.value_or(all_wood_types[static_cast<std::size_t>(number) % all_wood_types.size()]);
    scene.name = numbered("varied-", number);
    scene.seed = random.next();
    scene.timber = some_timber(kind, random);
    everyday(scene, random);
    give_growth(scene, random);
    scene.tilt_deg = random.normal(0.0, 1.6);
    scene.bow_mm = random.chance(0.4) ? random.normal(0.0, 0.9) : 0.0;
    scene.pith_offset_mm = random.normal(0.0, 3.5);
    scene.dpi = random.chance(0.7) ? 1200.0 : random.chance(0.5) ? 1600.0 : 2400.0;
    if (scene.dpi > 1200.0) {
        scene.growth.rings = std::min(scene.growth.rings, 60);
    }
    if (random.chance(0.15)) {
        scene.rings_to_pith = 0;
        scene.pith_offset_mm = random.normal(0.0, 0.4);
    }
    if (random.chance(0.3)) {
        scene.unfinished_mm = random.uniform(0.08, 0.5);
    } else if (random.chance(0.15)) {
        scene.lost_outer_mm = random.uniform(0.3, 4.0);
    }
    if (random.chance(0.4)) {
        scene.mount.label =
            std::string(1, static_cast<char>('A' + random.whole(0, 25))) + std::to_string(random.whole(1, 40));
    }
    scene.mount.ruler = random.chance(0.15);
    if (kind == WoodType::Conifer) {
        conifer_troubles(scene, random);
    } else {
        scene.disturbances.chalk =
            random.chance(kind == WoodType::RingPorous ? 0.35 : 0.12) ? random.uniform(0.3, 1.0) : 0.0;
        scene.disturbances.absent = random.chance(0.15) ? some_years(scene, 1, random) : std::vector<int>{};
    }
    damage(scene, random);
    const Format format =
        std::array{Format::Png, Format::Jpeg, Format::TiffLzw}[static_cast<std::size_t>(random.whole(0, 2))];
    return {scene.name, word(kind) + "-varied", {scene}, format};
}

Order past_pith_core(std::uint64_t seed, int number, std::optional<WoodType> wood) {
    Random random(mix(seed, 202), static_cast<std::uint64_t>(number));
    Scene scene;
    const WoodType kind = wood.value_or(all_wood_types[static_cast<std::size_t>(number) % all_wood_types.size()]);
    scene.name = numbered("past-", number);
    scene.seed = random.next();
    scene.timber = some_timber(kind, random);
    everyday(scene, random);
    give_growth(scene, random);
    scene.growth.rings = random.whole(25, 60);
    scene.rings_to_pith = 0;
    scene.pith_offset_mm = random.uniform(-0.4, 0.4) * scene.core_width_mm;
    scene.past_pith_mm = random.chance(0.4) ? 1000.0 : random.uniform(5.0, 30.0);
    scene.disturbances.scratches = random.uniform(0.2, 1.0);
    scene.disturbances.dust = random.uniform(0.1, 0.8);
    scene.disturbances.resin = random.chance(0.2) ? random.uniform(0.3, 0.8) : 0.0;
    scene.scanner.noise = random.uniform(0.6, 2.0);
    scene.scanner.grey = random.chance(0.12);
    return {scene.name, word(kind) + "-past", {scene}, Format::Jpeg};
}

} // namespace pithward::demo
