#include "app/picture/lettering.h"
#include "app/picture/marks.h"
#include "app/picture/polyline.h"
#include "app/picture/ring_places.h"
#include "tests/app/fake_scan.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace pithward::picture {
namespace {

using bench::fake_height;
using bench::fake_width;

const QSizeF window(1000, 400);
const std::string scan = "a.png";

MeasuredCore a_core(std::optional<Year> last_year = std::nullopt) {
    ReadingRequest request = bench::fake_request(scan);
    request.last_year = last_year;
    return *measured(bench::fake_reading(request), 2.6);
}

QRectF all_of(const ViewTransform& view) {
    return {QPointF(), view.view()};
}

TEST(Marks, OnlyWhatIsExposedIsShaped) {
    const MeasuredCore core = a_core();
    const ViewTransform whole = ViewTransform::fit(window, {fake_width, fake_height}, 10);
    EXPECT_EQ(visible_marks(core, scan, whole, all_of(whole)).boundaries.size(), core.reading.boundaries.size());
    const ViewTransform close(window, {1000, 100}, 10.0); // 100 px of the scan across
    const auto shown = visible_marks(core, scan, close, all_of(close)).boundaries.size();
    EXPECT_GE(shown, 2U);
    EXPECT_LT(shown, core.reading.boundaries.size());
}

TEST(Marks, TheWoodAtThePathStaysBare) {
    const MeasuredCore core = a_core();
    for (const double scale : {0.5, 2.0, 10.0}) {
        const ViewTransform view(window, {1000, 100}, scale);
        const double on_path = view.to_view({1000, 100}).y();
        const MarkSet marks = visible_marks(core, scan, view, all_of(view));
        ASSERT_FALSE(marks.boundaries.empty());
        for (const BoundaryMark& mark : marks.boundaries) {
            ASSERT_GE(mark.upper.size(), 2);
            ASSERT_GE(mark.lower.size(), 2);
            EXPECT_LE(mark.upper.boundingRect().bottom(), on_path - 5.9);
            EXPECT_GE(mark.lower.boundingRect().top(), on_path + 5.9);
        }
    }
}

TEST(Marks, AMarkFollowsTheTracedCurve) {
    MeasuredCore core = a_core();
    Boundary& bent = core.reading.boundaries[20];
    bent.curve = {bent.at + ImagePoint{-30, -60}, bent.at + ImagePoint{5, -20}, bent.at, bent.at + ImagePoint{-20, 60}};
    const ViewTransform view(window, bent.at, 3.0);
    const MarkSet marks = visible_marks(core, scan, view, all_of(view));
    const auto mark = std::ranges::find(marks.boundaries, bent.id, &BoundaryMark::id);
    ASSERT_NE(mark, marks.boundaries.end());
    EXPECT_LT(foot_of(mark->upper, view.to_view(bent.curve[0])).distance, 1e-6);
    EXPECT_LT(foot_of(mark->lower, view.to_view(bent.curve[3])).distance, 1e-6);
}

TEST(Marks, ConfidenceIsToldByForm) {
    EXPECT_EQ(form_of(0.99, Confirmation::None), LineForm::Whole);
    EXPECT_EQ(form_of(0.9, Confirmation::None), LineForm::Dashed);
    EXPECT_EQ(form_of(0.5, Confirmation::None), LineForm::Sparse);
    EXPECT_EQ(form_of(0.5, Confirmation::LookedAt), LineForm::Whole);
}

TEST(Marks, LetteringStandsBesideTheWood) {
    const MeasuredCore core = a_core(Year(2010));
    for (const double turn : {0.0, 90.0, 180.0, 30.0}) {
        const ViewTransform view(window, {1000, 100}, 1.5, turn);
        int lettered = 0;
        for (const BoundaryMark& mark : visible_marks(core, scan, view, all_of(view)).boundaries) {
            if (mark.lettering) {
                ++lettered;
                const auto apart = distance_to_path(core.reading, scan, view.to_image(mark.lettering->at));
                EXPECT_GT(*apart, core.half_breadth_px) << turn;
            }
        }
        EXPECT_GT(lettered, 0) << turn;
    }
}

TEST(Marks, DecadesAreLetteredWhereThereIsNoRoomForEveryYear) {
    const MeasuredCore core = a_core(Year(2013));
    const ViewTransform view = ViewTransform::fit(window, {fake_width, fake_height}, 10);
    QStringList letters;
    for (const BoundaryMark& mark : visible_marks(core, scan, view, all_of(view)).boundaries) {
        if (mark.lettering) {
            letters << mark.lettering->text;
        }
    }
    EXPECT_EQ(letters, QStringList({"2010", "2000", "1990", "1980", "1970"}));
}

TEST(Marks, EveryYearIsLetteredWhereTheRingsInViewAreWide) {
    ReadingRequest request = bench::fake_request(scan);
    request.last_year = Year(2013);
    Reading reading = bench::fake_reading(request);
    std::erase_if(reading.boundaries, [](const Boundary& one) { return one.at.x > 1100 && one.id.value % 2 == 0; });
    const MeasuredCore core = *measured(reading, 2.6);
    const ViewTransform view(QSizeF(250, 400), {1600, 100}, 0.8); // 32 pixels to a ring near the bark, 64 here
    const MarkSet marks = visible_marks(core, scan, view, all_of(view));
    ASSERT_GT(marks.boundaries.size(), 3U);
    EXPECT_TRUE(std::ranges::all_of(marks.boundaries, [](const auto& mark) { return mark.lettering.has_value(); }));
}

TEST(Marks, NothingIsDrawnOnAnotherScan) {
    const MeasuredCore core = a_core();
    const ViewTransform view = ViewTransform::fit(window, {fake_width, fake_height}, 10);
    const MarkSet marks = visible_marks(core, "b.png", view, all_of(view));
    EXPECT_TRUE(marks.boundaries.empty());
    EXPECT_TRUE(marks.path.empty());
    EXPECT_FALSE(marks.bark);
}

TEST(RingPlaces, APlaceOnARingLeadsBackToIt) {
    const MeasuredCore core = a_core();
    ASSERT_FALSE(core.series.rings.empty());
    for (const Ring& ring : core.series.rings) {
        const auto place = place_of_ring(core, scan, ring.number);
        ASSERT_TRUE(place);
        EXPECT_EQ(ring_at(core, scan, *place, 10.0), ring.number);
    }
    EXPECT_FALSE(ring_at(core, scan, {500, 180}, 10.0)); // beside the wood
    EXPECT_FALSE(ring_at(core, scan, {110, 100}, 10.0)); // outside the first boundary
}

TEST(Polyline, SplittingLeavesTheGapAndNothingElse) {
    const QPolygonF line{{0, 0}, {0, 50}, {50, 50}};
    const auto [one, other] = split_around(line, {1, 40}, 20);
    EXPECT_DOUBLE_EQ(length_of(one), 20.0);
    EXPECT_DOUBLE_EQ(length_of(other), 40.0);
    EXPECT_EQ(other.front(), QPointF(10, 50));
    EXPECT_TRUE(split_around(line, {0, 40}, 500).first.isEmpty());
}

} // namespace
} // namespace pithward::picture
