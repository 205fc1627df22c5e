#include "demo-scans/maker/pith_cores.h"
#include "libimaging/boundary/inner_end.h"
#include "libimaging/boundary/propose_reading.h"
#include "libimaging/strip/strip_geometry.h"
#include "tests/support/rendered_scan.h"

#include <gtest/gtest.h>

#include <cmath>

namespace pithward::test {
namespace {

/// A ring-porous core that misses the pith by 8 mm, so its innermost rings meet its cut at 50 degrees.
class InnerEnd : public testing::Test {
protected:
    static void SetUpTestSuite() {
        folder_ = std::make_unique<TemporaryFolder>();
        core_ = std::make_unique<RenderedScan>(rendered_scan(*folder_, demo::pith_core(551, 44).scenes.front()));
    }
    static void TearDownTestSuite() {
        core_.reset();
        folder_.reset();
    }
    static const RenderedScan& core() { return *core_; }

    /// Where the wood is said to end beyond a path's end, in mm.
    static double beyond(const std::vector<ImagePoint>& path) {
        const StripGeometry geometry(path, core().calibration);
        const auto lanes = lanes_along(core().scan, geometry, core().calibration.px_per_mm());
        return boundary::inner_end_of_wood(lanes.value(), geometry.length_mm()) - geometry.length_mm();
    }

private:
    static inline std::unique_ptr<TemporaryFolder> folder_;
    static inline std::unique_ptr<RenderedScan> core_;
};

TEST_F(InnerEnd, WoodEndsWhereTheMountBegins) {
    const double at = beyond(core().truth().path);
    EXPECT_GE(at, 0.0);
    EXPECT_LT(at, 0.7); // the path ends up to half a millimetre inside the cut, which is ragged
}

TEST_F(InnerEnd, APathThatEndsInTheWoodKeepsWhatLiesBeyond) {
    std::vector<ImagePoint> path = core().truth().path;
    path.back() = {0.75 * path.back().x + 0.25 * path.front().x, 0.75 * path.back().y + 0.25 * path.front().y};
    EXPECT_TRUE(std::isinf(beyond(path)));
}

TEST_F(InnerEnd, TheInnermostRingIsFoundBesideTheCut) {
    const Reading reading = read_along_truth(core(), OuterWood::Unknown);
    const ImagePoint off = reading.boundaries.back().at - core().truth().boundaries.back().at;
    EXPECT_LT(std::hypot(off.x, off.y) / core().calibration.px_per_mm(), 0.1);
    EXPECT_EQ(reading.boundaries.size(), core().truth().boundaries.size());
}

} // namespace
} // namespace pithward::test
