#include "app/bench/lanes/series_plot.h"
#include "libcore/measure/measure.h"
#include "tests/app/fake_scan.h"

#include <gtest/gtest.h>

#include <QCoreApplication>

namespace pithward::bench {
namespace {

TEST(SeriesPlotOfASite, ShowsTheMeanOfTheOthersFromThreeOnward) {
    BenchModel model;
    const SeriesPlot plot(model);
    for (int i = 1; i <= 4; ++i) {
        const std::string name = "core" + std::to_string(i) + ".png";
        ReadingRequest request = fake_request(name);
        request.last_year = Year(2020);
        Reading reading = fake_reading(request);
        reading.id = ReadingId{i};
        const int scan = model.add_scan(open_fake(name).value(), request.calibration, true);
        ASSERT_TRUE(model.put_reading(scan, Document::open(reading).value()));
        model.show_scan(scan);
        QCoreApplication::processEvents();
        EXPECT_EQ(plot.others(), i - 1);
        EXPECT_EQ(plot.shows_mean(), i == 4);
    }
}

KeptSeries kept(int number, const char* site, const char* tree, int last_year) {
    Reading reading = fake_reading(fake_request("kept.png"));
    if (last_year > 0) {
        reading.last_year = Year(last_year);
    }
    return {ReadingId{number}, "core" + std::to_string(number), site, tree,
            std::make_shared<const RingSeries>(measure(reading).value())};
}

TEST(SeriesPlotOfAProject, DrawsTheTreesOtherCoresAndTheSitesMeanThoughTheyAreNotOnTheBench) {
    BenchModel model;
    SeriesPlot plot(model);
    ReadingRequest request = fake_request("core1.png");
    request.last_year = Year(2020);
    Reading reading = fake_reading(request);
    reading.id = ReadingId{1};
    const int scan = model.add_scan(open_fake("core1.png").value(), request.calibration, true);
    ASSERT_TRUE(model.put_reading(scan, Document::open(reading).value()));
    model.show_scan(scan);
    QCoreApplication::processEvents();

    const KeptSeries own = kept(1, "Hill", "Hill T1", 2020);
    const KeptSeries sibling = kept(2, "Hill", "Hill T1", 2020);
    const KeptSeries second = kept(3, "Hill", "Hill T2", 2020);
    const KeptSeries third = kept(4, "Hill", "Hill T3", 2020);
    const KeptSeries undated = kept(5, "Hill", "Hill T1", 0);
    const KeptSeries elsewhere = kept(6, "Dale", "Dale T1", 2020);
    plot.show_kept({own, sibling, second, undated, elsewhere});
    EXPECT_EQ(plot.others(), 1) << "the sibling that has years";
    EXPECT_FALSE(plot.shows_mean()) << "two others of the site are too few";
    plot.show_kept({own, sibling, second, third, undated, elsewhere});
    EXPECT_EQ(plot.others(), 1);
    EXPECT_TRUE(plot.shows_mean());
    plot.show_kept({});
    EXPECT_EQ(plot.others(), 0);
    EXPECT_FALSE(plot.shows_mean());
}

} // namespace
} // namespace pithward::bench
