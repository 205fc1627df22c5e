#include "libcore/measure/measure.h"
#include "libimaging/boundary/propose_reading.h"
#include "libimaging/scan/threads.h"
#include "tests/support/matching.h"
#include "tests/support/rendered_scan.h"

#include <gtest/gtest.h>

namespace pithward::test {
namespace {

/// One clear core of some thirty rings, rendered once for all tests.
class ProposeReading : public testing::Test {
protected:
    static void SetUpTestSuite() {
        folder_ = std::make_unique<TemporaryFolder>();
        core_ = std::make_unique<RenderedScan>(rendered_scan(*folder_, clear_scene(501, 1, 30)));
    }
    static void TearDownTestSuite() {
        core_.reset();
        folder_.reset();
    }
    static const RenderedScan& core() { return *core_; }

    static ReadingRequest request() {
        ReadingRequest request;
        request.scan_name = "core";
        request.calibration = core().calibration;
        request.path = core().truth().path;
        request.wood = WoodType::Conifer;
        request.outer = OuterWood::Complete;
        request.last_year = core().truth().last_complete_ring_year;
        return request;
    }

    static void expect_refused(const ScanFile& scan, const ReadingRequest& asked, const std::string& what) {
        const auto reading = propose_reading(scan, asked);
        ASSERT_FALSE(reading.has_value());
        EXPECT_NE(reading.error().what.find(what), std::string::npos) << reading.error().line();
        EXPECT_EQ(reading.error().where, scan.header().file);
        EXPECT_FALSE(reading.error().remedy.empty());
    }

private:
    static inline std::unique_ptr<TemporaryFolder> folder_;
    static inline std::unique_ptr<RenderedScan> core_;
};

TEST_F(ProposeReading, GivesAReadingThatCanBeMeasured) {
    const auto reading = propose_reading(core().scan, request());
    ASSERT_TRUE(reading.has_value()) << reading.error().line();
    EXPECT_EQ(reading->state, Reading::State::Proposed);
    EXPECT_EQ(reading->wood, WoodType::Conifer);
    const auto series = measure(*reading);
    ASSERT_TRUE(series.has_value());
    EXPECT_EQ(series->rings.size() + 1, reading->boundaries.size());
    for (const Boundary& boundary : reading->boundaries) {
        EXPECT_GT(boundary.sd.value(), 0.0);
        EXPECT_EQ(boundary.origin, Origin::Program);
        EXPECT_EQ(boundary.confirmation, Confirmation::None);
    }
}

TEST_F(ProposeReading, TangentsAreThoseOfTheTruth) {
    const auto reading = propose_reading(core().scan, request());
    ASSERT_TRUE(reading.has_value());
    std::vector<double> off;
    for (const Match& pair : match(*reading, core().truth()).matches) {
        const double difference =
            degrees(reading->boundaries[pair.boundary].tangent) - core().truth().boundaries[pair.truth].angle_deg;
        off.push_back(std::abs(std::remainder(difference, 180.0)));
    }
    EXPECT_LT(median(off), 1.0);
}

TEST_F(ProposeReading, RefusesAPathOutsideTheScan) {
    ReadingRequest asked = request();
    asked.path.back().x = core().scan.header().width + 10.0;
    expect_refused(core().scan, asked, "the path leaves the scan");
    asked.path.back().x = std::numeric_limits<double>::quiet_NaN();
    expect_refused(core().scan, asked, "the path leaves the scan");
    asked.path.back().x = std::numeric_limits<double>::infinity();
    expect_refused(core().scan, asked, "the path leaves the scan");
}

TEST_F(ProposeReading, RefusesAPathOfOnePoint) {
    ReadingRequest asked = request();
    asked.path.resize(1);
    expect_refused(core().scan, asked, "only one point");
    asked.path.assign(3, asked.path[0]);
    expect_refused(core().scan, asked, "only one point");
    asked.path.clear();
    expect_refused(core().scan, asked, "only one point");
}

TEST_F(ProposeReading, RefusesAPathWithoutWood) {
    const TemporaryFolder folder;
    for (const int grey : {0, 200}) {
        const ScanFile scan = opened(folder, plain_picture(1200, 300, static_cast<std::uint8_t>(grey), 1200.0));
        ReadingRequest asked = request();
        asked.path = {{50.0, 150.0}, {1150.0, 150.0}};
        expect_refused(scan, asked, "no wood");
    }
}

TEST_F(ProposeReading, APathPastTheCoresInnerEndHasNoBreakThere) {
    ReadingRequest asked = request();
    const ImagePoint from = asked.path[asked.path.size() - 2];
    ImagePoint& end = asked.path.back();
    const double length = std::hypot(end.x - from.x, end.y - from.y);
    const double further = 2.0 * core().calibration.px_per_mm() / length;
    end = {end.x + further * (end.x - from.x), end.y + further * (end.y - from.y)};
    const auto reading = propose_reading(core().scan, asked);
    ASSERT_TRUE(reading.has_value()) << reading.error().line();
    EXPECT_TRUE(reading->breaks.empty());
}

TEST_F(ProposeReading, IsTheSameTwiceAndWithOneThreadAndTwo) {
    use_threads(2);
    const auto first = propose_reading(core().scan, request());
    const auto again = propose_reading(core().scan, request());
    use_threads(1);
    const auto alone = propose_reading(core().scan, request());
    use_threads(0);
    ASSERT_TRUE(first && again && alone);
    EXPECT_TRUE(*first == *again);
    EXPECT_TRUE(*first == *alone);
}

TEST_F(ProposeReading, StopsWhenAsked) {
    std::stop_source source;
    source.request_stop();
    const auto reading = propose_reading(core().scan, request(), Work{source.get_token(), {}});
    ASSERT_FALSE(reading.has_value());
    EXPECT_EQ(reading.error().what, "stopped");
}

TEST_F(ProposeReading, TellsHowFarItIs) {
    std::vector<double> shares;
    ASSERT_TRUE(propose_reading(core().scan, request(), Work{{}, [&](double done) { shares.push_back(done); }}));
    ASSERT_GE(shares.size(), 3U);
    EXPECT_DOUBLE_EQ(shares.back(), 1.0);
    EXPECT_TRUE(std::ranges::is_sorted(shares));
}

TEST_F(ProposeReading, ASlightlyOffPathFindsTheSameRings) {
    ReadingRequest asked = request();
    for (ImagePoint& point : asked.path) {
        point.y += 0.4 * core().calibration.px_per_mm_y;
    }
    const auto there = propose_reading(core().scan, request());
    const auto beside = propose_reading(core().scan, asked);
    ASSERT_TRUE(there && beside);
    // The ring nearest to the pith is bent so much that it leaves the path through its end.
    const double end = core().truth().path.back().x;
    const auto before_the_end = [&](const Boundary& boundary) {
        return std::abs(boundary.at.x - end) > 0.5 * core().calibration.px_per_mm();
    };
    EXPECT_EQ(std::ranges::count_if(there->boundaries, before_the_end),
              std::ranges::count_if(beside->boundaries, before_the_end));
}

} // namespace
} // namespace pithward::test
