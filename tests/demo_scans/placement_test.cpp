#include "demo-scans/maker/core_model.h"
#include "demo-scans/maker/truth_of.h"
#include "tests/demo_scans/scenes.h"

#include <cmath>

namespace pithward::demo {
namespace {

TEST(Frame, StripAndImageAreInverse) {
    for (const double bow : {0.0, 1.3, -0.8}) {
        for (const bool bark_left : {true, false}) {
            Scene scene = short_core();
            scene.bow_mm = bow;
            scene.tilt_deg = 2.5;
            scene.bark_left = bark_left;
            const Frame frame(scene, 80.0, {2100.3, 410.7});
            for (const ImagePoint p :
                 {ImagePoint{200.0, 380.0}, ImagePoint{2000.5, 430.25}, ImagePoint{3900.0, 300.0}}) {
                const Frame::OnStrip strip = frame.to_strip(p);
                const ImagePoint back = frame.to_image(strip.s, strip.b);
                EXPECT_NEAR(back.x, p.x, 1e-6);
                EXPECT_NEAR(back.y, p.y, 1e-6);
                // On the centre line a step along the strip is one of the same length on the scan.
                const ImagePoint ahead = frame.to_image(strip.s + 0.5, 0.0) - frame.to_image(strip.s - 0.5, 0.0);
                EXPECT_NEAR(ahead.x * strip.along.x + ahead.y * strip.along.y, frame.px_per_mm(), 1e-3);
            }
        }
    }
}

TEST(Frame, ThePathOfABowedCoreKeepsToItsCentreLine) {
    Scene scene = short_core();
    scene.bow_mm = 1.5;
    CoreModel core(scene);
    core.place({800.0, 300.0});
    const Truth truth = truth_of(core, 1600, 600);
    ASSERT_GE(truth.path.size(), 3U);
    for (std::size_t i = 0; i + 1 < truth.path.size(); ++i) {
        EXPECT_LT(std::abs(core.in_wood((truth.path[i] + truth.path[i + 1]) * 0.5).core.b), 0.006);
    }
}

TEST(Piece, WoodAndStripAreInverse) {
    const Piece piece{.a_from = 12.0, .a_to = 40.0, .shift = 1.7, .lateral = 0.2, .turn = 0.01};
    const CorePoint strip = on_strip(piece, {20.0, 1.5});
    const CorePoint wood = in_piece(piece, strip.a, strip.b);
    EXPECT_NEAR(wood.a, 20.0, 1e-9);
    EXPECT_NEAR(wood.b, 1.5, 1e-9);
}

} // namespace
} // namespace pithward::demo
