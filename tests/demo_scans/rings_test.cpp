#include "demo-scans/maker/rings.h"
#include "tests/demo_scans/scenes.h"

#include <cmath>

namespace pithward::demo {
namespace {

TEST(RingField, BoundariesAreNestedInEveryDirection) {
    Scene scene;
    scene.shape.eccentricity = 0.2;
    scene.disturbances.absent = {2000};
    scene.disturbances.wedging = {1990};
    const std::vector<PlannedRing> plan = plan_rings(scene);
    const RingField field(scene, plan);
    for (int step = -84; step <= 84; ++step) {
        const double angle = 0.037 * step;
        const RingField::Direction at = field.direction(angle);
        for (int k = 1; k <= field.count(); ++k) {
            // Cubics between the table's directions may overshoot where a ring runs out, by under a micrometre.
            ASSERT_GE(field.radius(k, at), field.radius(k - 1, at) - 1e-3) << "boundary " << k << " at " << angle;
        }
    }
}

TEST(RingField, WidthsOnTheCentreLineAreThePlannedOnes) {
    Scene scene;
    scene.pith_offset_mm = 3.0;
    scene.disturbances.micro = {1990};
    const std::vector<PlannedRing> plan = plan_rings(scene);
    const RingField field(scene, plan);
    for (int k = 1; k <= field.count(); ++k) {
        const auto outer = field.crossing_x(k, field.centre_y());
        const auto inner = field.crossing_x(k - 1, field.centre_y());
        const PlannedRing& ring = plan[static_cast<std::size_t>(k - 1)];
        if (ring.on_core && outer && inner) {
            EXPECT_NEAR(field.width_between(k, {*outer, field.centre_y()}, {*inner, field.centre_y()}), ring.width_mm,
                        0.001)
                << "ring " << ring.year;
        }
    }
}

TEST(RingField, AnAbsentRingHasNoWoodOnThePathAndSomeBesideIt) {
    Scene scene;
    scene.disturbances.absent = {2001};
    const std::vector<PlannedRing> plan = plan_rings(scene);
    const RingField field(scene, plan);
    int k = 0;
    while (plan[static_cast<std::size_t>(k)].year != 2001) {
        ++k;
    }
    const double x = field.crossing_x(k, field.centre_y()).value_or(0.0);
    EXPECT_NEAR(field.crossing_x(k + 1, field.centre_y()).value_or(0.0), x, 1e-4);
    const double beside = field.centre_y() + 4.5;
    EXPECT_GT(*field.crossing_x(k + 1, beside) - *field.crossing_x(k, beside), 0.05);
}

TEST(RingField, WidthOfACircularRingIsTheDifferenceOfItsRadii) {
    Scene scene;
    scene.shape = {.eccentricity = 0.0, .ellipticity = 0.0, .waviness = 0.0};
    scene.pith_offset_mm = 4.0;
    const std::vector<PlannedRing> plan = plan_rings(scene);
    const RingField field(scene, plan);
    const RingField::Direction along = field.direction(0.0);
    for (int k = 12; k <= field.count(); ++k) {
        const TreePoint outer{field.crossing_x(k, field.centre_y()).value_or(0.0), field.centre_y()};
        const TreePoint inner{field.crossing_x(k - 1, field.centre_y()).value_or(0.0), field.centre_y()};
        EXPECT_NEAR(field.width_between(k, outer, inner), field.radius(k, along) - field.radius(k - 1, along), 1e-6);
    }
}

} // namespace
} // namespace pithward::demo
