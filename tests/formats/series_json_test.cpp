#include "libcore/formats/series_json.h"
#include "tests/formats/series_support.h"

namespace pithward {
namespace {

using namespace test;
using Unit = WidthSeries::Unit;

TEST(SeriesJson, EverythingOfATableIsThereAndBack) {
    WidthTable table;
    table.headers = {"XYZ    1 A place  "};
    table.series = {series("A", 1990, {gap, 1.234, 0.0, gap}), series("B", 1, {0.25}, Unit::HundredthMm)};
    table.series[0].comments = {{Year(1990), "a \"note\""}};
    table.series[1].dated = false;
    const auto back = table_in(read_series_json, written(write_series_json, table).text);
    EXPECT_EQ(back.headers, table.headers);
    EXPECT_EQ(back.series, table.series);
}

TEST(SeriesJson, KeysStandInAFixedOrder) {
    WidthTable table;
    table.series = {series("A", 1990, {1.5, gap})};
    EXPECT_EQ(
        written(write_series_json, table).text,
        "{\n \"headers\": [],\n \"series\": [\n  {\n   \"id\": \"A\",\n   \"first_year\": 1990,\n   \"last_year\": "
        "1991,\n   \"step_mm\": 0.001,\n   \"widths_mm\": [\n    1.5,\n    null\n   ]\n  }\n ]\n}\n");
}

TEST(SeriesJson, ReadingsOfTheMeasurementAreRead) {
    const auto table = table_in(read_series_json, R"({"readings": [
        {"scan": "some/where/a 01.tif", "rings": [{"year": 2024, "ring": 1, "width_mm": 1.5, "absent": false},
            {"year": 2023, "ring": 2, "width_mm": 0, "absent": true}, {"year": 2022, "ring": 3, "width_mm": null},
            {"year": 2021, "ring": 4, "width_mm": 2.25}]},
        {"scan": "b.png", "rings": [{"year": null, "ring": 1, "width_mm": 1}, {"year": null, "ring": 2, "width_mm": 2}]},
        {"scan": "tray.png", "core": "tray-3", "rings": [{"year": null, "ring": 1, "width_mm": 1}]}]})");
    ASSERT_EQ(table.series.size(), 3U);
    EXPECT_EQ(table.series[2].id, "tray-3"); // its core's, not its scan's
    EXPECT_EQ(table.series[0], series("a 01", 2021, {2.25, gap, 0.0, 1.5}));
    EXPECT_EQ(table.series[1].id, "b");
    EXPECT_FALSE(table.series[1].dated);
    EXPECT_EQ(widths(table.series[1]), (std::vector{2.0, 1.0}));
}

TEST(SeriesJson, BadInputIsRefusedWithItsPlace) {
    const std::pair<std::string, const char*> all[] = {
        {"", "line 1, column 1: this is not JSON"},
        {"{\n  \"series\": [,]\n}", "line 2, column 14: this is not JSON"},
        {"[]", "there is no series"},
        {"{\"series\": 3}", "there is no series"},
        {R"({"series": [{}]})", "series 1: it has no usable id"},
        {R"({"series": [{"id": "A"}]})", "series 1 (A): it has no list widths_mm"},
        {R"({"series": [{"id": "A", "widths_mm": [1, "x"]}]})", "series 1 (A), width 2: this is no width"},
        {R"({"series": [{"id": "A", "widths_mm": [-1]}]})", "width 1: this is no width"},
        {R"({"series": [{"id": "A", "first_year": 1e3, "widths_mm": [1]}]})", "no usable year"},
        {R"({"series": [{"id": "A", "first_year": 18446744073709551615, "widths_mm": [1]}]})", "no usable year"},
        {R"({"series": [{"id": "A", "first_year": 20000, "widths_mm": [1, 1]}]})", "no usable year"},
        {R"({"series": [{"id": "A", "first_year": 1990, "last_year": 1995, "widths_mm": [1, 1]}]})",
         "series 1 (A), last_year: it should be 1991"},
        {R"({"series": [{"id": "A", "last_year": 1995, "widths_mm": [1]}]})",
         "last_year: it is given, and first_year is not"},
        {R"({"series": [{"id": "A\n", "widths_mm": [1]}]})", "series 1: it has no usable id"},
        {R"({"series": [{"id": "A", "widths_mm": [1e400]}]})", "out of range"},
        {R"({"headers": ["1","2","3","4"], "series": [{"id": "A", "widths_mm": [1]}]})", "at most three"},
        {R"({"readings": [{"rings": [{"ring": 0, "width_mm": 1}]}]})", "reading 1, ring 1"},
        {std::string(1000, '['), "nested too deeply"},
    };
    for (const auto& [text, words] : all) {
        EXPECT_TRUE(contains(refusal(read_series_json, text), words)) << refusal(read_series_json, text) << "\n"
                                                                      << text;
    }
}

} // namespace
} // namespace pithward
