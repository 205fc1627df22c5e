#include "tests/measure/straight_reading.h"

#include "libcore/measure/measure.h"

#include <gtest/gtest.h>

#include <numbers>

namespace pithward::test {

namespace {

constexpr ImagePoint start{100.0, 200.0};
constexpr double length_mm = 40.0;
constexpr int no_year = 9999;

} // namespace

ImagePoint on_straight_path(double s_mm) {
    return {start.x + s_mm * px_per_mm, start.y};
}

Reading straight_reading(const std::vector<double>& places_mm) {
    Reading reading;
    reading.path.legs = {Leg{"scan.tif", {start, on_straight_path(length_mm)}, {}}};
    reading.calibrations["scan.tif"] = {.px_per_mm_x = px_per_mm, .px_per_mm_y = px_per_mm, .relative_sd = 0.002};
    for (const double place : places_mm) {
        Boundary boundary;
        boundary.id = BoundaryId{static_cast<std::int64_t>(reading.boundaries.size()) + 1};
        boundary.at = on_straight_path(place);
        boundary.tangent = 0.5 * std::numbers::pi;
        boundary.sd = Millimetres(0.01);
        reading.boundaries.push_back(boundary);
    }
    return reading;
}

Break break_at(double from_mm, double to_mm, Break::Kind kind, std::optional<int> rings_lost) {
    Break stretch;
    stretch.from = on_straight_path(from_mm);
    stretch.to = on_straight_path(to_mm);
    stretch.kind = kind;
    stretch.rings_lost = rings_lost;
    return stretch;
}

AbsentRing absent_at(std::int64_t boundary) {
    AbsentRing ring;
    ring.at = BoundaryId{boundary};
    return ring;
}

Pith pith_at(double s_mm) {
    Pith pith;
    pith.inside = true;
    pith.at = on_straight_path(s_mm);
    return pith;
}

std::vector<double> widths_mm(const RingSeries& series) {
    std::vector<double> widths;
    for (const Ring& ring : series.rings) {
        widths.push_back(ring.width ? ring.width->value() : -1.0);
    }
    return widths;
}

std::vector<int> ring_years(const RingSeries& series) {
    std::vector<int> years;
    for (const Ring& ring : series.rings) {
        years.push_back(ring.year ? ring.year->value() : no_year);
    }
    return years;
}

std::vector<int> boundary_years(const RingSeries& series) {
    std::vector<int> years;
    for (const PlacedBoundary& boundary : series.boundaries) {
        years.push_back(boundary.year ? boundary.year->value() : no_year);
    }
    return years;
}

RingSeries measured(const Reading& reading) {
    auto series = measure(reading);
    EXPECT_TRUE(series.has_value()) << (series ? "" : series.error().line());
    return series.value_or(RingSeries{});
}

void expect_widths(const RingSeries& series, const std::vector<double>& expected_mm) {
    const std::vector<double> widths = widths_mm(series);
    ASSERT_EQ(widths.size(), expected_mm.size()) << testing::PrintToString(widths);
    for (std::size_t i = 0; i < widths.size(); ++i) {
        EXPECT_NEAR(widths[i], expected_mm[i], 1e-6) << "ring " << i + 1;
    }
}

} // namespace pithward::test
