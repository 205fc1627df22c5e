#include "demo-scans/maker/conditions.h"

#include "demo-scans/maker/growth.h"

#include <algorithm>
#include <array>

namespace pithward::demo {

namespace {

constexpr double least_clear_mm = 0.25;

} // namespace

std::string numbered(const char* stem, int number) {
    return stem + std::string(number < 10 ? "0" : "") + std::to_string(number);
}

/// What every scan has a little of, and differs in.
void everyday(Scene& scene, Random& random) {
    scene.bark_left = random.chance(0.5);
    scene.tilt_deg = random.normal(0.0, 0.7);
    scene.bow_mm = random.chance(0.3) ? random.normal(0.0, 0.5) : 0.0;
    scene.core_width_mm = random.chance(0.75) ? random.uniform(4.6, 5.1) : random.uniform(3.9, 4.3);
    scene.bark_mm = random.uniform(1.0, 3.2);
    scene.pith_offset_mm = random.normal(0.0, 1.6);
    scene.rings_to_pith = random.whole(3, 8);
    scene.shape.eccentricity = random.uniform(0.02, 0.12);
    scene.shape.widest_deg = random.uniform(0.0, 360.0);
    scene.shape.waviness = random.uniform(0.5, 1.3);
    scene.sapwood_rings = random.whole(15, 45);
    scene.last_year = Year(random.whole(1988, 2024));
    scene.mount.width_mm = random.uniform(8.5, 12.0);
    scene.mount.dark_lid = random.chance(0.4);
    scene.mount.kind = random.chance(0.72)  ? Mount::Kind::LightStick
                       : random.chance(0.6) ? Mount::Kind::DarkStick
                                            : Mount::Kind::Card;
    scene.margin_mm = random.uniform(2.0, 4.0);
    scene.scanner.blur_px = random.uniform(0.5, 0.75);
    scene.scanner.noise = random.uniform(0.6, 1.4);
    scene.scanner.brightness = random.uniform(0.94, 1.04);
    scene.scanner.channel_shift_px = random.normal(0.0, 0.06);
    scene.texture = random.uniform(0.8, 1.2);
    scene.disturbances.glue = random.uniform(0.1, 0.6);
}

Timber some_timber(WoodType wood, Random& random) {
    switch (wood) {
    case WoodType::RingPorous:
        return random.chance(0.6) ? Timber::Oak : Timber::Ash;
    case WoodType::DiffusePorous:
        return random.chance(0.5) ? Timber::Maple : Timber::Beech;
    case WoodType::Conifer:
        break;
    }
    return std::array{Timber::Pine, Timber::Spruce, Timber::Larch}[static_cast<std::size_t>(random.whole(0, 2))];
}

void give_growth(Scene& scene, Random& random) {
    Growth& g = scene.growth;
    const bool conifer = wood_type(scene.timber) == WoodType::Conifer;
    g.rings = random.whole(60, 110);
    g.mean_mm = (conifer ? random.uniform(0.7, 1.2) : random.uniform(0.9, 1.5));
    g.juvenile = random.uniform(0.5, 1.6);
    g.sensitivity = random.uniform(0.18, 0.38);
    g.rings = std::min(g.rings, static_cast<int>(105.0 / (g.mean_mm * (1.0 + 0.35 * g.juvenile))));
}

std::vector<double> clear_widths(const Scene& scene, Random& random) {
    std::vector<double> widths = grow(scene.growth, scene.seed, scene.growth.rings, scene.last_year.value());
    std::reverse(widths.begin(), widths.end());
    for (double& w : widths) {
        w = std::max(w, least_clear_mm * (1.0 + 0.3 * random.uniform()));
    }
    return widths;
}

int some_year(const Scene& scene, Random& random) {
    return scene.last_year.value() - random.whole(4, std::max(6, scene.growth.rings - 5));
}

std::vector<int> some_years(const Scene& scene, int count, Random& random) {
    std::vector<int> years;
    for (int i = 0; i < count; ++i) {
        const int year = some_year(scene, random);
        const bool free = std::none_of(years.begin(), years.end(), [&](int y) { return y - year < 3 && year - y < 3; });
        if (free) {
            years.push_back(year);
        }
    }
    return years;
}

Years some_stretch(const Scene& scene, int length, double strength, Random& random) {
    const int from = scene.last_year.value() - random.whole(length + 2, std::max(length + 4, scene.growth.rings - 5));
    return {from, from + length, strength};
}

} // namespace pithward::demo
