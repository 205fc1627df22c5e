#include "app/bench/scan_view/tile_cache.h"

#include <gtest/gtest.h>

namespace pithward::bench {
namespace {

QImage tile() {
    QImage image(100, 100, QImage::Format_RGB32);
    image.fill(Qt::black);
    return image;
}

constexpr std::int64_t tile_bytes = std::int64_t{100} * 100 * 4;

TEST(TileGrid, TilesOfALevelCoverTheScanOnce) {
    const TileGrid grid({5000, 1300});
    for (int level = 0; level <= grid.coarsest(); ++level) {
        double area = 0.0;
        for (const TileKey key : grid.tiles_in(QRectF(-10, -10, 6000, 2000), level)) {
            const QRectF place = grid.place(key);
            area += place.width() * place.height();
        }
        const int r = TileGrid::reduction(level);
        const QSize whole_pixels(5000 - 5000 % r, 1300 - 1300 % r);
        EXPECT_DOUBLE_EQ(area, double(whole_pixels.width()) * whole_pixels.height()) << level;
    }
}

TEST(TileGrid, ATileHasAnApronOfTrueNeighboursInsideTheScan) {
    const TileGrid grid({5000, 1300});
    EXPECT_EQ(grid.source({0, 0, 0}), QRect(0, 0, 513, 513));
    EXPECT_EQ(grid.source({0, 1, 1}), QRect(511, 511, 514, 514));
    EXPECT_EQ(grid.part({0, 1, 1}), QRectF(1, 1, 512, 512));
    EXPECT_EQ(grid.source({1, 1, 0}), QRect(1022, 0, 1028, 1026));
}

TEST(TileGrid, PlacesAreMapEdgesNotCentres) {
    const TileGrid grid({5000, 1300});
    EXPECT_EQ(grid.place({0, 0, 0}).topLeft(), QPointF(-0.5, -0.5));
    EXPECT_EQ(grid.place({2, 1, 0}).left(), 512 * 4 - 0.5);
}

TEST(TileGrid, ALongThinScanKeepsRowsAtItsCoarsestLevel) {
    const TileGrid grid({1'000'000, 60});
    EXPECT_GE(60 >> grid.coarsest(), 7);
}

TEST(TileGrid, TheLevelHoldsThroughASmallZoom) {
    const TileGrid grid({20000, 12000});
    EXPECT_EQ(grid.level_for(0.5, -1), 1);
    EXPECT_EQ(grid.level_for(1.0, -1), 0);
    EXPECT_EQ(grid.level_for(0.52, 1), 1); // just past the change, and still at level 1
    EXPECT_EQ(grid.level_for(0.9, 1), 0);
    EXPECT_EQ(grid.level_for(8.0, -1), 0);
    EXPECT_EQ(grid.level_for(1e-6, -1), grid.coarsest());
}

TEST(TileCache, KeepsItsBudgetAndLetsTheLongestUnusedGo) {
    TileCache cache(3 * tile_bytes);
    cache.reset(1);
    for (int i = 0; i < 3; ++i) {
        cache.put(1, {0, i, 0}, tile());
    }
    EXPECT_NE(cache.find({0, 0, 0}), nullptr); // used again
    cache.put(1, {0, 3, 0}, tile());
    EXPECT_EQ(cache.bytes(), 3 * tile_bytes);
    EXPECT_TRUE(cache.holds({0, 0, 0}));
    EXPECT_FALSE(cache.holds({0, 1, 0}));
}

TEST(TileCache, NeverLetsGoWhatIsInView) {
    TileCache cache(2 * tile_bytes);
    cache.reset(1);
    std::vector<TileKey> in_view;
    in_view.reserve(5);
    for (int i = 0; i < 5; ++i) {
        in_view.push_back({0, i, 0});
    }
    cache.keep(in_view);
    for (const TileKey key : in_view) {
        cache.put(1, key, tile());
    }
    EXPECT_EQ(cache.count(), 5U);
    cache.put(1, {1, 0, 0}, tile());
    EXPECT_FALSE(cache.holds({1, 0, 0}));
    cache.keep({});
    EXPECT_EQ(cache.bytes(), 2 * tile_bytes);
}

TEST(TileCache, DropsTilesOfAnotherScan) {
    TileCache cache(100 * tile_bytes);
    cache.reset(1);
    cache.put(1, {0, 0, 0}, tile());
    cache.reset(2);
    EXPECT_EQ(cache.count(), 0U);
    EXPECT_FALSE(cache.put(1, {0, 0, 0}, tile()));
    EXPECT_FALSE(cache.holds({0, 0, 0}));
    EXPECT_TRUE(cache.put(2, {0, 0, 0}, tile()));
}

} // namespace
} // namespace pithward::bench
