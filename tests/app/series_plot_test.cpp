#include "app/bench/lanes/series_plot.h"
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

} // namespace
} // namespace pithward::bench
