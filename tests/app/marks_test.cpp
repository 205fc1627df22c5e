#include "app/picture/lettering.h"
#include "app/picture/marks.h"
#include "app/picture/polyline.h"
#include "app/picture/ring_places.h"
#include "tests/app/fake_scan.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace pithward::bench {
namespace {

const QSizeF window(1000, 400);
const std::string scan = "a.png";

picture::MeasuredCore a_core(std::optional<Year> last_year = std::nullopt) {
    ReadingRequest request = fake_request(scan);
    request.last_year = last_year;
    return *picture::measured(fake_reading(request), 2.6);
}

QRectF all_of(const picture::ViewTransform& view) {
    return {QPointF(), view.view()};
}

TEST(Marks, OnlyWhatIsExposedIsShaped) {
    const picture::MeasuredCore core = a_core();
    const picture::ViewTransform whole = picture::ViewTransform::fit(window, {fake_width, fake_height}, 10);
    EXPECT_EQ(picture::visible_marks(core, scan, whole, all_of(whole)).boundaries.size(),
              core.reading.boundaries.size());
    const picture::ViewTransform close(window, {1000, 100}, 10.0); // 100 px of the scan across
    const auto shown = picture::visible_marks(core, scan, close, all_of(close)).boundaries.size();
    EXPECT_GE(shown, 2U);
    EXPECT_LT(shown, core.reading.boundaries.size());
}

TEST(Marks, TheWoodAtThePathStaysBare) {
    const picture::MeasuredCore core = a_core();
    for (const double scale : {0.5, 2.0, 10.0}) {
        const picture::ViewTransform view(window, {1000, 100}, scale);
        const double on_path = view.to_view({1000, 100}).y();
        const picture::MarkSet marks = picture::visible_marks(core, scan, view, all_of(view));
        ASSERT_FALSE(marks.boundaries.empty());
        for (const picture::BoundaryMark& mark : marks.boundaries) {
            ASSERT_GE(mark.upper.size(), 2);
            ASSERT_GE(mark.lower.size(), 2);
            EXPECT_LE(mark.upper.boundingRect().bottom(), on_path - 5.9);
            EXPECT_GE(mark.lower.boundingRect().top(), on_path + 5.9);
        }
    }
}

TEST(Marks, AMarkFollowsTheTracedCurve) {
    picture::MeasuredCore core = a_core();
    Boundary& bent = core.reading.boundaries[20];
    bent.curve = {bent.at + ImagePoint{-30, -60}, bent.at + ImagePoint{5, -20}, bent.at, bent.at + ImagePoint{-20, 60}};
    const picture::ViewTransform view(window, bent.at, 3.0);
    const picture::MarkSet marks = picture::visible_marks(core, scan, view, all_of(view));
    const auto mark = std::ranges::find(marks.boundaries, bent.id, &picture::BoundaryMark::id);
    ASSERT_NE(mark, marks.boundaries.end());
    EXPECT_LT(picture::foot_of(mark->upper, view.to_view(bent.curve[0])).distance, 1e-6);
    EXPECT_LT(picture::foot_of(mark->lower, view.to_view(bent.curve[3])).distance, 1e-6);
}

TEST(Marks, ConfidenceIsToldByForm) {
    EXPECT_EQ(picture::form_of(0.99, Confirmation::None), picture::LineForm::Whole);
    EXPECT_EQ(picture::form_of(0.9, Confirmation::None), picture::LineForm::Dashed);
    EXPECT_EQ(picture::form_of(0.5, Confirmation::None), picture::LineForm::Sparse);
    EXPECT_EQ(picture::form_of(0.5, Confirmation::LookedAt), picture::LineForm::Whole);
}

TEST(Marks, LetteringStandsBesideTheWood) {
    const picture::MeasuredCore core = a_core(Year(2010));
    for (const double turn : {0.0, 90.0, 180.0, 30.0}) {
        const picture::ViewTransform view(window, {1000, 100}, 1.5, turn);
        int lettered = 0;
        for (const picture::BoundaryMark& mark : picture::visible_marks(core, scan, view, all_of(view)).boundaries) {
            if (mark.lettering) {
                ++lettered;
                const auto apart = picture::distance_to_path(core.reading, scan, view.to_image(mark.lettering->at));
                EXPECT_GT(*apart, core.half_breadth_px) << turn;
            }
        }
        EXPECT_GT(lettered, 0) << turn;
    }
}

TEST(Marks, DecadesAreLetteredWhereThereIsNoRoomForEveryYear) {
    const picture::MeasuredCore core = a_core(Year(2013));
    const picture::ViewTransform view = picture::ViewTransform::fit(window, {fake_width, fake_height}, 10);
    QStringList letters;
    for (const picture::BoundaryMark& mark : picture::visible_marks(core, scan, view, all_of(view)).boundaries) {
        if (mark.lettering) {
            letters << mark.lettering->text;
        }
    }
    EXPECT_EQ(letters, QStringList({"2010", "2000", "1990", "1980", "1970"}));
}

TEST(Marks, NothingIsDrawnOnAnotherScan) {
    const picture::MeasuredCore core = a_core();
    const picture::ViewTransform view = picture::ViewTransform::fit(window, {fake_width, fake_height}, 10);
    const picture::MarkSet marks = picture::visible_marks(core, "b.png", view, all_of(view));
    EXPECT_TRUE(marks.boundaries.empty());
    EXPECT_TRUE(marks.path.empty());
    EXPECT_FALSE(marks.bark);
}

TEST(RingPlaces, APlaceOnARingLeadsBackToIt) {
    const picture::MeasuredCore core = a_core();
    ASSERT_FALSE(core.series.rings.empty());
    for (const Ring& ring : core.series.rings) {
        const auto place = picture::place_of_ring(core, scan, ring.number);
        ASSERT_TRUE(place);
        EXPECT_EQ(picture::ring_at(core, scan, *place, 10.0), ring.number);
    }
    EXPECT_FALSE(picture::ring_at(core, scan, {500, 180}, 10.0)); // beside the wood
    EXPECT_FALSE(picture::ring_at(core, scan, {110, 100}, 10.0)); // outside the first boundary
}

TEST(Polyline, SplittingLeavesTheGapAndNothingElse) {
    const QPolygonF line{{0, 0}, {0, 50}, {50, 50}};
    const auto [one, other] = picture::split_around(line, {1, 40}, 20);
    EXPECT_DOUBLE_EQ(picture::length_of(one), 20.0);
    EXPECT_DOUBLE_EQ(picture::length_of(other), 40.0);
    EXPECT_EQ(other.front(), QPointF(10, 50));
    EXPECT_TRUE(picture::split_around(line, {0, 40}, 500).first.isEmpty());
}

} // namespace
} // namespace pithward::bench
