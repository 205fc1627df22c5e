// Work beside the window: each result comes once, in the window's thread, and not after its owner.
#include "app/bench/model/beside_window.h"

#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QElapsedTimer>
#include <QThread>
#include <memory>

namespace pithward::test {
namespace {

using bench::beside_window;

bool comes(const int& seen, int wanted) {
    constexpr int longest_ms = 60'000;
    QElapsedTimer clock;
    clock.start();
    while (seen < wanted && clock.elapsed() < longest_ms) {
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents, 20);
    }
    QCoreApplication::processEvents();
    return seen == wanted;
}

TEST(BesideWindow, EachResultComesOnceHoweverSoonTheWorkEnds) {
    constexpr int times = 3000;
    QThreadPool pool;
    QObject owner;
    int seen = 0;
    int sum = 0;
    for (int i = 0; i < times; ++i) {
        beside_window(
            pool, &owner, [] { return std::make_unique<int>(1); },
            [&](std::unique_ptr<int> result) {
                EXPECT_EQ(QThread::currentThread(), QCoreApplication::instance()->thread());
                sum += *result;
                ++seen;
            });
    }
    EXPECT_TRUE(comes(seen, times)) << seen;
    EXPECT_EQ(sum, times);
}

TEST(BesideWindow, NothingComesToAnOwnerThatIsGone) {
    QThreadPool pool;
    bool came = false;
    auto owner = std::make_unique<QObject>();
    beside_window(
        pool, owner.get(), [] { return 1; }, [&](int) { came = true; });
    owner.reset();
    pool.waitForDone();
    QCoreApplication::processEvents();
    EXPECT_FALSE(came);
}

} // namespace
} // namespace pithward::test
