// A path that passes the pith sideways crosses the rings at a slant; widths stay those square to the rings (design,
// section 4).
#include "libcore/measure/measure.h"
#include "tests/pith/traced_stem.h"

#include <gtest/gtest.h>

#include <cmath>

namespace pithward {
namespace {

TEST(WidthsNearThePith, OnConcentricRingsPassedAtOneToFiveMillimetresAreWithinOnePercent) {
    for (const double beside : {1.0, 2.0, 3.0, 4.0, 5.0}) {
        test::TracedStem stem;
        stem.pith_y_mm = beside;
        stem.pith_x_mm = 0.5; // the innermost boundary is met at up to 84 degrees
        stem.widths_mm = {0.4, 1.3, 0.8, 2.1, 1.0, 0.6, 1.7};
        const RingSeries series = measure(test::traced_reading(stem)).value();
        ASSERT_EQ(series.rings.size(), stem.widths_mm.size());
        for (std::size_t k = 0; k < stem.widths_mm.size(); ++k) {
            const Ring& ring = series.rings[series.rings.size() - 1 - k];
            EXPECT_NEAR(ring.width->value(), stem.widths_mm[k], 0.01 * stem.widths_mm[k])
                << beside << " mm beside, ring " << k << " from the inner end";
            EXPECT_GT(ring.along_path->value(), ring.width->value());
        }
    }
}

} // namespace
} // namespace pithward
