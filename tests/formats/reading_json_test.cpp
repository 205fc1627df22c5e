// The shape of `pithward measure --json` (design, section 5).
#include "libcore/formats/reading_json.h"
#include "libcore/formats/series_json.h"
#include "libcore/measure/measure.h"
#include "tests/formats/series_support.h"

#include <nlohmann/json.hpp>

#include <numbers>

namespace pithward {
namespace {

using nlohmann::json;

Boundary boundary_at(int id, double x) {
    Boundary boundary;
    boundary.id = {id};
    boundary.at = {x, 50.0};
    boundary.tangent = std::numbers::pi / 2.0;
    boundary.sd = Millimetres(0.0051234);
    boundary.confidence = 0.98;
    return boundary;
}

/// A straight path of 100 mm at 10 px/mm with boundaries at 1, 11, 21 and 41 mm.
Reading plain_reading() {
    Reading reading;
    reading.path.legs = {{"core.tif", {{0.0, 50.0}, {1000.0, 50.0}}, {}}};
    reading.calibrations["core.tif"] = {10.0, 10.0, 0.002, Calibration::Source::FileTag};
    reading.last_year = Year(2024);
    reading.bark_end = {"bark", 0.99};
    reading.boundaries = {boundary_at(1, 10), boundary_at(2, 110), boundary_at(3, 210), boundary_at(4, 410)};
    reading.boundaries[1].flags = {Flag::Faint};
    return reading;
}

json json_of(const Reading& reading) {
    const auto series = measure(reading);
    EXPECT_TRUE(series.has_value()) << series.error().line();
    const MeasuredReading measured[] = {{reading, series.value_or(RingSeries())}};
    std::ostringstream out;
    const auto done = write_readings_json(out, measured);
    EXPECT_TRUE(done.has_value()) << done.error().line();
    return json::parse(out.str()).at("readings").at(0);
}

std::vector<std::string> keys(const json& object) {
    std::vector<std::string> names;
    for (const auto& [name, value] : object.items()) {
        names.push_back(name);
    }
    return names; // In alphabetical order: this JSON type sorts.
}

using Keys = std::vector<std::string>;

TEST(ReadingJson, HasEveryKeyOfTheDesign) {
    Reading reading = plain_reading();
    reading.not_annual.resize(1);
    reading.not_annual[0].at = {60.0, 50.0};
    reading.not_annual[0].reason = "soft on both sides";
    reading.breaks = {{{1}, 0, {300.0, 50.0}, {310.0, 50.0}, Break::Kind::LostWood, std::nullopt, ""}};
    reading.findings.resize(2);
    reading.findings[0].kind = FindingKind::PossiblyOverlooked;
    reading.findings[0].at = {230.0, 50.0};
    reading.findings[0].to = {290.0, 50.0};
    reading.findings[1].boundary = BoundaryId{2};
    reading.findings[1].at = {110.0, 50.0};
    reading.pith = Pith{false, {1200.0, 80.0}, Millimetres(3.1), Millimetres(2.6), Millimetres(3.9), 2, 1, 4};
    reading.pith->others = {{"arc height and chord", Millimetres(3.4), Millimetres(2.0), std::nullopt, 3}};
    const json value = json_of(reading);
    EXPECT_EQ(keys(value), (Keys{"age", "bark_end", "boundaries", "breaks", "calibration", "core", "findings",
                                 "not_annual", "outer_partial_mm", "path", "pith", "rings", "scan", "wood"}));
    EXPECT_EQ(keys(value["calibration"]), (Keys{"px_per_mm_x", "px_per_mm_y", "relative_sd", "source"}));
    EXPECT_EQ(keys(value["boundaries"][0]),
              (Keys{"angle_deg", "confidence", "flags", "origin", "s_mm", "sd_mm", "x", "y", "year"}));
    EXPECT_EQ(keys(value["not_annual"][0]), (Keys{"confidence", "reason", "s_mm", "x", "y"}));
    EXPECT_EQ(keys(value["breaks"][0]), (Keys{"from_mm", "kind", "rings_lost", "to_mm"}));
    EXPECT_EQ(keys(value["rings"][0]),
              (Keys{"absent", "along_path_mm", "basal_area_high_mm2", "basal_area_low_mm2", "basal_area_mm2",
                    "earlywood_mm", "latewood_mm", "ring", "sd_mm", "width_mm", "year"}));
    EXPECT_EQ(keys(value["pith"]), (Keys{"distance_high_mm", "distance_low_mm", "distance_mm", "how", "inside",
                                         "missing_high", "missing_low", "missing_rings", "other_methods", "x", "y"}));
    EXPECT_EQ(keys(value["pith"]["other_methods"][0]),
              (Keys{"distance_high_mm", "distance_low_mm", "distance_mm", "method", "missing_rings"}));
    EXPECT_TRUE(value["pith"]["other_methods"][0]["distance_high_mm"].is_null()) << "nothing bounds it";
    EXPECT_EQ(keys(value["findings"][0]),
              (Keys{"kind", "probability", "proposal", "reason", "s_mm", "s_mm_to", "year"}));
    EXPECT_EQ(keys(value["findings"][1]), (Keys{"kind", "probability", "proposal", "reason", "s_mm", "year"}));
    EXPECT_EQ(value["breaks"][0]["kind"], "lost wood");
    EXPECT_TRUE(value["breaks"][0]["rings_lost"].is_null());
    // The stretch lies in the ring that ends at the third boundary, the other finding is about the second.
    EXPECT_EQ(value["findings"][0]["year"], 2022);
    EXPECT_EQ(value["findings"][0]["s_mm_to"], 29.0);
    EXPECT_EQ(value["findings"][1]["year"], 2023);
}

TEST(ReadingJson, GivesAgeAndBasalAreaWhereThePithIsKnown) {
    Reading reading = plain_reading();
    EXPECT_TRUE(json_of(reading)["age"].is_null());
    EXPECT_TRUE(json_of(reading)["rings"][0]["basal_area_mm2"].is_null());
    reading.pith = Pith{false, {450.0, 50.0}, Millimetres(4.0), Millimetres(3.0), Millimetres(6.0), 2, 1, 4};
    reading.pith->source = Pith::Source::Hand;
    const json value = json_of(reading);
    EXPECT_EQ(value["pith"]["how"], "hand");
    EXPECT_EQ(value["age"]["pith_year"], 2020); // oldest ring 2022
    EXPECT_EQ(value["age"]["pith_year_low"], 2018);
    EXPECT_EQ(value["age"]["pith_year_high"], 2021);
    EXPECT_TRUE(value["age"]["establishment_year"].is_null()) << "nobody gave an allowance";
    EXPECT_NEAR(value["rings"][2]["basal_area_mm2"], std::numbers::pi * (24.0 * 24.0 - 16.0), 1e-3);
    EXPECT_NEAR(value["rings"][2]["basal_area_low_mm2"], std::numbers::pi * (23.0 * 23.0 - 9.0), 1e-3);
}

TEST(ReadingJson, GivesPlacesYearsAndWidths) {
    const json value = json_of(plain_reading());
    EXPECT_EQ(value["scan"], "core.tif");
    EXPECT_EQ(value["wood"], "conifer");
    EXPECT_EQ(value["path"], json::parse("[[0, 50], [1000, 50]]"));
    EXPECT_EQ(value["bark_end"]["how"], "bark");
    const json& boundary = value["boundaries"][1];
    EXPECT_EQ(boundary["s_mm"], 11.0);
    EXPECT_EQ(boundary["sd_mm"], 0.0051);
    EXPECT_EQ(boundary["angle_deg"], 90.0);
    EXPECT_EQ(boundary["flags"], json::parse("[\"faint\"]"));
    EXPECT_EQ(boundary["year"], 2023);
    EXPECT_EQ(boundary["origin"], "program");
    ASSERT_EQ(value["rings"].size(), 3U);
    EXPECT_EQ(value["rings"][0]["year"], 2024);
    EXPECT_EQ(value["rings"][0]["ring"], 1);
    EXPECT_EQ(value["rings"][0]["width_mm"], 10.0);
    EXPECT_EQ(value["rings"][2]["width_mm"], 20.0);
    EXPECT_TRUE(value["pith"].is_null());
    EXPECT_TRUE(value["outer_partial_mm"].is_null());
}

TEST(ReadingJson, WithoutAYearRingsAreNumberedAndYearsAreNull) {
    Reading reading = plain_reading();
    reading.last_year.reset();
    const json value = json_of(reading);
    EXPECT_TRUE(value["rings"][0]["year"].is_null());
    EXPECT_EQ(value["rings"][2]["ring"], 3);
    EXPECT_TRUE(value["boundaries"][0]["year"].is_null());
}

TEST(ReadingJson, AnAngleNeverReaches180) {
    Reading reading = plain_reading();
    reading.boundaries[0].tangent = std::nextafter(std::numbers::pi, 0.0);
    const double angle = json_of(reading)["boundaries"][0]["angle_deg"];
    EXPECT_GE(angle, 0.0);
    EXPECT_LT(angle, 180.0);
}

TEST(ReadingJson, SeveralLegsAreListedAndPointedAt) {
    Reading reading = plain_reading();
    reading.path.legs[0].points[1] = {300.0, 50.0};
    reading.path.legs.push_back({"b.tif", {{0.0, 50.0}, {900.0, 50.0}}, JoinedAtBoundary{{3}, {5}}});
    reading.calibrations["b.tif"] = {20.0, 20.0, 0.002, Calibration::Source::Given};
    reading.boundaries[3] = boundary_at(5, 40);
    reading.boundaries[3].leg = 1;
    reading.boundaries.push_back(boundary_at(6, 240));
    reading.boundaries[4].leg = 1;
    const json value = json_of(reading);
    EXPECT_TRUE(value["path"].is_null());
    ASSERT_EQ(value["legs"].size(), 2U);
    EXPECT_EQ(keys(value["legs"][1]), (Keys{"calibration", "joined_by", "points", "scan"}));
    EXPECT_TRUE(value["legs"][0]["joined_by"].is_null());
    EXPECT_EQ(value["legs"][1]["joined_by"], json::parse(R"({"kind": "boundary", "on_previous": 2, "on_this": 3})"));
    EXPECT_EQ(value["boundaries"][0]["leg"], 0);
    EXPECT_EQ(value["boundaries"][4]["leg"], 1);
    EXPECT_EQ(value["legs"][1]["calibration"]["px_per_mm_x"], 20.0);
}

TEST(ReadingJson, IsReadAsASeries) {
    const Reading reading = plain_reading();
    const MeasuredReading measured[] = {{reading, measure(reading).value()}};
    std::ostringstream out;
    ASSERT_TRUE(write_readings_json(out, measured).has_value());
    const auto table = test::table_in(read_series_json, out.str());
    ASSERT_EQ(table.series.size(), 1U);
    EXPECT_EQ(table.series[0], test::series("core", 2022, {20.0, 10.0, 10.0}));
}

} // namespace
} // namespace pithward
