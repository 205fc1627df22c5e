#include "app/bench/scan_view/tile_loader.h"

#include <gtest/gtest.h>

#include <QSignalSpy>
#include <QTest>
#include <mutex>
#include <semaphore>

namespace pithward::bench {
namespace {

/// A source that waits for leave before each tile and notes what was read.
struct Gate {
    std::counting_semaphore<> leave{0};
    std::mutex guard;
    std::vector<QRect> read;

    TileSource source() {
        return [this](QRect region, int reduction) -> Outcome<QImage> {
            {
                const std::scoped_lock lock(guard);
                read.push_back(region);
            }
            leave.acquire();
            return QImage(region.size() / reduction, QImage::Format_RGB32);
        };
    }
    std::size_t count() {
        const std::scoped_lock lock(guard);
        return read.size();
    }
};

const TileGrid grid({4000, 4000});

TEST(TileLoader, ReadsWhatWasAskedForLastAndForgetsTheRest) {
    Gate gate;
    TileLoader loader(1);
    QSignalSpy arrived(&loader, &TileLoader::arrived);
    loader.open(gate.source(), grid, 1);
    loader.want({{0, 0, 0}, {0, 1, 0}, {0, 2, 0}});
    ASSERT_TRUE(QTest::qWaitFor([&] { return gate.count() == 1; }));
    loader.want({{0, 5, 5}});
    gate.leave.release(10);
    ASSERT_TRUE(QTest::qWaitFor([&] { return arrived.count() == 2; }));
    QTest::qWait(20);
    EXPECT_EQ(gate.count(), 2U);
    EXPECT_EQ(gate.read[1], grid.source({0, 5, 5}));
}

TEST(TileLoader, ATileThatIsBeingReadIsNotReadTwice) {
    Gate gate;
    TileLoader loader(1);
    QSignalSpy arrived(&loader, &TileLoader::arrived);
    loader.open(gate.source(), grid, 1);
    loader.want({{0, 0, 0}});
    ASSERT_TRUE(QTest::qWaitFor([&] { return gate.count() == 1; }));
    loader.want({{0, 0, 0}});
    gate.leave.release(10);
    ASSERT_TRUE(QTest::qWaitFor([&] { return arrived.count() == 1; }));
    EXPECT_EQ(gate.count(), 1U);
}

TEST(TileLoader, ALateResultComesWithItsOldGeneration) {
    Gate gate;
    TileLoader loader(1);
    QSignalSpy arrived(&loader, &TileLoader::arrived);
    loader.open(gate.source(), grid, 1);
    loader.want({{0, 0, 0}});
    ASSERT_TRUE(QTest::qWaitFor([&] { return gate.count() == 1; }));
    loader.open(gate.source(), grid, 2);
    gate.leave.release(10);
    ASSERT_TRUE(QTest::qWaitFor([&] { return arrived.count() == 1; }));
    EXPECT_EQ(arrived[0][0].toULongLong(), 1U);
}

TEST(TileLoader, TellsADamagedScanOnce) {
    TileLoader loader(1);
    QSignalSpy failed(&loader, &TileLoader::failed);
    loader.open([](QRect, int) -> Outcome<QImage> { return fail("scan.png", "the file is cut off", "scan it again"); },
                grid, 1);
    loader.want({{0, 0, 0}, {0, 1, 0}});
    ASSERT_TRUE(QTest::qWaitFor([&] { return failed.count() > 0; }));
    QTest::qWait(20);
    EXPECT_EQ(failed.count(), 1);
    EXPECT_EQ(failed[0][1].toString(), "scan.png: the file is cut off; scan it again");
}

} // namespace
} // namespace pithward::bench
