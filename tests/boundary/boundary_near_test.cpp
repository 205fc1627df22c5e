#include "libimaging/boundary/boundary_near.h"
#include "tests/support/rendered_scan.h"

#include <gtest/gtest.h>

#include <cmath>

namespace pithward::test {
namespace {

/// One clear core of some thirty rings, whose truth is known.
class BoundaryNear : public testing::Test {
protected:
    [[nodiscard]] NearRequest request() const {
        NearRequest request;
        request.calibration = core.calibration;
        request.path = core.truth().path;
        return request;
    }
    [[nodiscard]] double apart_mm(ImagePoint a, ImagePoint b) const {
        return std::hypot(a.x - b.x, a.y - b.y) / core.calibration.px_per_mm();
    }

    TemporaryFolder folder;
    RenderedScan core = rendered_scan(folder, clear_scene(501, 1, 30));
};

TEST_F(BoundaryNear, FindsTheBoundaryThatAPersonPointsAtRoughly) {
    const auto& truth = core.truth();
    int hit = 0;
    int asked = 0;
    for (std::size_t i = 3; i + 3 < truth.boundaries.size(); i += 4) {
        NearRequest near = request();
        const ImagePoint true_place = truth.boundaries[i].at;
        near.at = true_place + ImagePoint{0.08 * core.calibration.px_per_mm(), 0.5 * core.calibration.px_per_mm()};
        const auto found = boundary_near(core.scan, near);
        ASSERT_TRUE(found.has_value()) << found.error().line();
        ++asked;
        if (*found && apart_mm((*found)->at, true_place) < 0.02) {
            ++hit;
            EXPECT_FALSE((*found)->curve.empty());
            EXPECT_GT((*found)->sd.value(), 0.0);
        }
    }
    EXPECT_GE(hit, asked - 1) << "of " << asked;
}

TEST_F(BoundaryNear, FindsNothingInTheMiddleOfAWideRing) {
    const auto& boundaries = core.truth().boundaries;
    std::size_t widest = 1;
    for (std::size_t i = 2; i < boundaries.size(); ++i) {
        if (apart_mm(boundaries[i].at, boundaries[i - 1].at) >
            apart_mm(boundaries[widest].at, boundaries[widest - 1].at)) {
            widest = i;
        }
    }
    NearRequest near = request();
    near.at = (boundaries[widest].at + boundaries[widest - 1].at) * 0.5;
    near.reach_mm = 0.2 * apart_mm(boundaries[widest].at, boundaries[widest - 1].at);
    const auto found = boundary_near(core.scan, near);
    ASSERT_TRUE(found.has_value());
    EXPECT_TRUE(!*found || (*found)->confidence < 0.5);
}

TEST_F(BoundaryNear, RefusesWhatCanNotBeLookedAt) {
    NearRequest near = request();
    near.reach_mm = 0.0;
    EXPECT_FALSE(boundary_near(core.scan, near).has_value());
    near = request();
    near.path.resize(1);
    EXPECT_FALSE(boundary_near(core.scan, near).has_value());
}

} // namespace
} // namespace pithward::test
