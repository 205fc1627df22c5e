// What the other cores of a site tell of growth near the pith counts at the bench too.
#include "libcore/measure/measure.h"
#include "libcore/pith/inner_widths.h"
#include "libcore/pith/pith_by_hand.h"
#include "libcore/pith/site_growth.h"
#include "libcore/record/project.h"
#include "tests/project/fake_project.h"

#include <gtest/gtest.h>

#include <QTest>

namespace pithward::bench {
namespace {

/// All four cores are read, and the second tree grew by fits and starts.
class GrowthOfSite : public FakeProject {
protected:
    void SetUp() override {
        FakeProject::SetUp();
        second_ = fake_reading(fake_request("scans/H02A.png"));
        std::vector<Boundary> some;
        for (std::size_t i = 0; i < second_.boundaries.size(); ++i) {
            if (i % 4 < 2) {
                some.push_back(second_.boundaries[i]);
            }
        }
        second_.boundaries = some;
        second_.findings.clear();
        record::Project project = test::opened(file);
        for (int core = 3; core <= 4; ++core) {
            ASSERT_TRUE(
                project.add_reading(record::CoreId{core}, second_, "Propose", test::stamp_by("Ida")).has_value());
        }
    }
    static std::vector<double> widths_of(const Reading& reading) {
        return pith::inner_widths(reading, measure(reading).value());
    }
    Reading second_; ///< Of the second tree.
};

TEST_F(GrowthOfSite, CountsWhereAPithIsPlacedByHand) {
    Appearance appearance;
    MainWindow window{open_fake, appearance};
    open(window, "Ida");
    BenchModel& model = window.control().model();
    const Reading first = model.core()->reading;
    const std::vector others{widths_of(first), widths_of(second_), widths_of(second_)};
    const pith::GrowthBeforehand told = pith::growth_of_site(others);
    ASSERT_TRUE(model.home()->opened->growth);
    EXPECT_EQ(model.home()->opened->growth->scatter, told.scatter);
    EXPECT_GT(told.scatter, pith::GrowthBeforehand().scatter);

    const RingSeries series = model.core()->series;
    const ImagePoint at = first.boundaries.back().at + ImagePoint{300, 100};
    const Pith by_site = pith_by_hand(first, series, at, told).value();
    const Pith assumed = pith_by_hand(first, series, at).value();
    ASSERT_NE(by_site.missing_high - by_site.missing_low, assumed.missing_high - assumed.missing_low);
    window.pith().place(at);
    ASSERT_TRUE(QTest::qWaitFor([&] { return !window.pith().busy() && model.core()->reading.pith.has_value(); }));
    EXPECT_EQ(model.core()->reading.pith->missing_low, by_site.missing_low);
    EXPECT_EQ(model.core()->reading.pith->missing_high, by_site.missing_high);
}

} // namespace
} // namespace pithward::bench
