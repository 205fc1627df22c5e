#include "app/picture/view_transform.h"

#include <gtest/gtest.h>

#include <random>

namespace pithward::picture {
namespace {

ViewTransform any_view(std::mt19937& random) {
    std::uniform_real_distribution<double> unit(0.0, 1.0);
    return {QSizeF(200 + 1500 * unit(random), 100 + 900 * unit(random)),
            {20000 * unit(random), 12000 * unit(random)},
            std::pow(2.0, -6 + 10 * unit(random)),
            360 * unit(random)};
}

class ViewTransformTest : public testing::Test {
protected:
    static constexpr unsigned seed = 20240611;
    void SetUp() override { RecordProperty("seed", seed); }
    std::mt19937 random{seed};
    std::uniform_real_distribution<double> place{-500, 2500};
};

TEST_F(ViewTransformTest, GoesThereAndBack) {
    for (int i = 0; i < 1000; ++i) {
        const ViewTransform view = any_view(random);
        const QPointF at(place(random), place(random));
        const QPointF back = view.to_view(view.to_image(at));
        EXPECT_NEAR(back.x(), at.x(), 1e-7);
        EXPECT_NEAR(back.y(), at.y(), 1e-7);
    }
}

TEST_F(ViewTransformTest, PaintsWhereItMaps) {
    for (int i = 0; i < 1000; ++i) {
        const ViewTransform view = any_view(random);
        const ImagePoint p{place(random), place(random)};
        const QPointF painted = view.painter_transform().map(QPointF(p.x, p.y));
        const QPointF mapped = view.to_view(p);
        EXPECT_NEAR(painted.x(), mapped.x(), 1e-6);
        EXPECT_NEAR(painted.y(), mapped.y(), 1e-6);
    }
}

TEST_F(ViewTransformTest, ZoomingKeepsThePointUnderTheCursor) {
    for (int i = 0; i < 1000; ++i) {
        const ViewTransform view = any_view(random);
        const QPointF cursor(place(random), place(random));
        const ImagePoint under = view.to_image(cursor);
        const ViewTransform closer = view.zoomed(1.7, cursor, 1e-3, 100.0);
        const QPointF after = closer.to_view(under);
        EXPECT_NEAR(after.x(), cursor.x(), 1e-6);
        EXPECT_NEAR(after.y(), cursor.y(), 1e-6);
    }
}

TEST_F(ViewTransformTest, ZoomingStopsAtItsLimits) {
    const ViewTransform view({800, 400}, {100, 100}, 1.0);
    EXPECT_DOUBLE_EQ(view.zoomed(1000, {10, 10}, 0.1, 32).scale(), 32);
    EXPECT_DOUBLE_EQ(view.zoomed(0.001, {10, 10}, 0.1, 32).scale(), 0.1);
}

TEST_F(ViewTransformTest, PanningMovesWithTheHand) {
    for (int i = 0; i < 1000; ++i) {
        const ViewTransform view = any_view(random);
        const QPointF from(place(random), place(random));
        const QPointF by(place(random), place(random));
        const QPointF after = view.panned(by).to_view(view.to_image(from));
        EXPECT_NEAR(after.x(), from.x() + by.x(), 1e-6);
        EXPECT_NEAR(after.y(), from.y() + by.y(), 1e-6);
    }
}

TEST_F(ViewTransformTest, FitShowsEveryPixelAtEveryTurn) {
    const QSize flatbed(20000, 900);
    for (const double turn : {0.0, 90.0, 180.0, 270.0, 33.0}) {
        const ViewTransform view = ViewTransform::fit({1400, 500}, flatbed, 20, turn);
        for (const ImagePoint corner :
             {ImagePoint{-0.5, -0.5}, ImagePoint{19999.5, -0.5}, ImagePoint{-0.5, 899.5}, ImagePoint{19999.5, 899.5}}) {
            const QPointF at = view.to_view(corner);
            EXPECT_TRUE(QRectF(19.9, 19.9, 1360.2, 460.2).contains(at)) << at.x() << " " << at.y();
        }
    }
}

TEST_F(ViewTransformTest, TheViewCannotBeLostBesideTheScan) {
    const ViewTransform view = ViewTransform({800, 400}, {100, 100}, 1.0).panned({1e6, -1e6}).kept_on({2000, 200});
    EXPECT_DOUBLE_EQ(view.centre().x, -0.5);
    EXPECT_DOUBLE_EQ(view.centre().y, 199.5);
}

} // namespace
} // namespace pithward::picture
