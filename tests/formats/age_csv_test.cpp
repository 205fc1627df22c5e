#include "libcore/formats/age_csv.h"
#include "libcore/measure/measure.h"

#include <gtest/gtest.h>

#include <numbers>
#include <sstream>

namespace pithward {
namespace {

/// Rings of 2 and 1 mm of 2003 and 2002, and the pith 3 mm further in.
MeasuredReading aged() {
    Reading reading;
    reading.core = "K1";
    reading.path.legs = {{"core.tif", {{0.0, 50.0}, {1000.0, 50.0}}, {}}};
    reading.calibrations["core.tif"] = {10.0, 10.0, 0.002, Calibration::Source::FileTag};
    reading.last_year = Year(2003);
    for (const double x : {10.0, 30.0, 40.0}) {
        Boundary boundary;
        boundary.id = {static_cast<std::int64_t>(x)};
        boundary.at = {x, 50.0};
        boundary.tangent = std::numbers::pi / 2.0;
        reading.boundaries.push_back(boundary);
    }
    reading.pith = Pith{false, {70.0, 50.0}, Millimetres(3.0), Millimetres(2.0), Millimetres(5.0), 3, 2, 5};
    RingSeries series = measure(reading).value();
    ProjectNote note;
    note.site = "Hill";
    note.tree = "=K";
    return {reading, series, note, HeightAllowance{8.0, 2.0}};
}

TEST(AgeCsv, TellsPithAndEstablishmentWithTheirIntervals) {
    const MeasuredReading readings[] = {aged()};
    std::ostringstream out;
    write_ages_csv(out, readings);
    EXPECT_EQ(out.str(), "site,tree,core,pith_year,pith_year_low,pith_year_high,years_to_height,years_to_height_sd,"
                         "establishment_year,establishment_year_low,establishment_year_high\n"
                         "Hill,'=K,K1,1999,1997,2000,8.0,2.0,1991,1987,1994\n");
}

TEST(AgeCsv, LeavesEmptyWhatIsNotKnown) {
    MeasuredReading undated = aged();
    undated.reading.last_year.reset();
    undated.series = measure(undated.reading).value();
    undated.allowance.reset();
    undated.note.reset();
    const MeasuredReading readings[] = {undated};
    std::ostringstream out;
    write_ages_csv(out, readings);
    EXPECT_TRUE(out.str().ends_with(",,K1,,,,,,,,\n")) << out.str();
}

TEST(AgeCsv, BasalAreaStandsBesideTheWidths) {
    const MeasuredReading readings[] = {aged()};
    std::ostringstream out;
    write_basal_area_csv(out, readings);
    EXPECT_EQ(out.str(), "core,year,ring,width_mm,basal_area_mm2,basal_area_low_mm2,basal_area_high_mm2\n"
                         "K1,2002,2,1.0,21.9911,15.708,34.5575\n"    // pi (16 - 9), (9 - 4), (36 - 25)
                         "K1,2003,1,2.0,62.8319,50.2655,87.9646\n"); // pi (36 - 16), (25 - 9), (64 - 36)
}

} // namespace
} // namespace pithward
