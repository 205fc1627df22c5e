#include "libimaging/boundary/propose_reading.h"
#include "libimaging/strip/kept_pieces.h"
#include "libimaging/strip/lanes.h"
#include "tests/support/rendered_scan.h"

#include <gtest/gtest.h>

#include <map>
#include <mutex>
#include <utility>

namespace pithward::test {
namespace {

class KeepsAll : public KeptPieces {
public:
    std::optional<LanePiece> find(const PieceKey& key) override {
        const std::scoped_lock lock(guard_);
        const auto held = held_.find({key.high, key.low});
        (held == held_.end() ? missed : found)++;
        return held == held_.end() ? std::nullopt : std::optional(held->second);
    }
    void keep(const PieceKey& key, const LanePiece& piece) override {
        const std::scoped_lock lock(guard_);
        held_[{key.high, key.low}] = piece;
    }
    int found = 0;
    int missed = 0;

private:
    std::mutex guard_;
    std::map<std::pair<std::uint64_t, std::uint64_t>, LanePiece> held_;
};

bool same_pixels(const Lanes& a, const Lanes& b) {
    for (std::size_t c = 0; c < a.rgb.size(); ++c) {
        if (a.rgb[c].size() != b.rgb[c].size() || cv::countNonZero(a.rgb[c] != b.rgb[c]) > 0) {
            return false;
        }
    }
    return true;
}

/// A clear core with a path of three points, the middle one of which can be moved across.
class KeptPiecesOfAScan : public testing::Test {
protected:
    static std::vector<ImagePoint> path(double moved_px) {
        const std::vector<ImagePoint>& truth = core().truth().path;
        const ImagePoint from = truth.front();
        const ImagePoint to = truth.back();
        return {from, {0.4 * from.x + 0.6 * to.x, 0.4 * from.y + 0.6 * to.y + moved_px}, to};
    }
    static ReadingRequest request(double moved_px) {
        ReadingRequest request;
        request.scan_name = "core";
        request.calibration = core().calibration;
        request.path = path(moved_px);
        request.wood = WoodType::Conifer;
        return request;
    }
    static Lanes lanes(double moved_px, KeptPieces* kept) {
        LanesOptions options;
        options.kept = kept;
        return lanes_along(core().scan, StripGeometry(path(moved_px), core().calibration),
                           core().calibration.px_per_mm(), options)
            .value();
    }
    static const RenderedScan& core() {
        static const TemporaryFolder folder;
        static const RenderedScan rendered = rendered_scan(folder, clear_scene(501, 1, 60));
        return rendered;
    }
};

TEST_F(KeptPiecesOfAScan, GiveTheSamePixels) {
    KeepsAll kept;
    ASSERT_TRUE(same_pixels(lanes(0.0, &kept), lanes(0.0, nullptr)));
    EXPECT_EQ(kept.found, 0);
    const int pieces = kept.missed;
    ASSERT_TRUE(same_pixels(lanes(0.0, &kept), lanes(0.0, nullptr)));
    EXPECT_EQ(kept.found, pieces);
}

TEST_F(KeptPiecesOfAScan, OnlyWhatAMovedPointTouchesIsMadeAnew) {
    KeepsAll kept;
    (void)lanes(0.0, &kept);
    const int pieces = std::exchange(kept.missed, 0);
    ASSERT_GE(pieces, 3);
    EXPECT_TRUE(same_pixels(lanes(5.0, &kept), lanes(5.0, nullptr)));
    EXPECT_GE(kept.found, pieces / 2 - 1) << "what lies bark-ward of the moved point";
    EXPECT_EQ(kept.found + kept.missed, pieces);
    EXPECT_GT(kept.missed, 0);
}

TEST_F(KeptPiecesOfAScan, GiveTheSameReading) {
    KeepsAll kept;
    for (const double moved : {0.0, 5.0, 0.0, -3.0}) {
        const auto with = propose_reading(core().scan, request(moved), {}, &kept);
        const auto without = propose_reading(core().scan, request(moved));
        ASSERT_TRUE(with && without);
        EXPECT_TRUE(*with == *without) << moved;
    }
    EXPECT_GT(kept.found, 0);
}

} // namespace
} // namespace pithward::test
