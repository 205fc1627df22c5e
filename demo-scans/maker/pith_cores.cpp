#include "demo-scans/maker/pith_cores.h"

#include "demo-scans/maker/conditions.h"

#include <algorithm>
#include <cmath>

namespace pithward::demo {

namespace {

constexpr double core_length_mm = 30.0; ///< Of the core, about.
constexpr double least_ring_mm = 0.5;
constexpr double greatest_ring_mm = 4.0;
constexpr double greatest_offset_mm = 20.0;

/// Growth whose rings at the core's inner end are about `inner_mm` wide.
Growth inner_growth(double inner_mm, Random& random) {
    Growth growth;
    growth.juvenile = random.uniform(0.0, 1.0);
    growth.trend_years = random.uniform(10.0, 30.0);
    growth.mean_mm = inner_mm / (1.0 + 0.7 * growth.juvenile); // as it is some ten years from the pith
    growth.sensitivity = random.uniform(0.15, 0.35);
    growth.rings = std::clamp(static_cast<int>(core_length_mm / inner_mm), 9, 45);
    return growth;
}

} // namespace

Order pith_core(std::uint64_t seed, int number) {
    Random random(mix(seed, 202), static_cast<std::uint64_t>(number));
    Scene scene;
    scene.name = numbered("pith-", number);
    scene.seed = random.next();
    scene.timber = some_timber(number % 4 == 0 ? WoodType::RingPorous : WoodType::Conifer, random);
    everyday(scene, random);
    scene.bow_mm = 0.0;
    const double ratio = greatest_ring_mm / least_ring_mm;
    scene.growth = inner_growth(least_ring_mm * std::pow(ratio, random.uniform()), random);
    scene.shape.eccentricity = random.uniform(0.0, 0.15);
    scene.shape.ellipticity = random.uniform(0.0, 0.04);
    scene.shape.waviness = random.uniform(0.0, 1.1);
    scene.pith_offset_mm = random.sign() * random.uniform(0.0, greatest_offset_mm);
    scene.rings_to_pith = random.whole(1, 4); // more where that is nearer than the core comes
    if (number % 12 == 1) {
        scene.rings_to_pith = 0;
        scene.pith_offset_mm = random.normal(0.0, 0.6);
    }
    return {scene.name, "pith", {scene}, Format::Png};
}

} // namespace pithward::demo
