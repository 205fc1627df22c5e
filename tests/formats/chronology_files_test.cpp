#include "libcore/formats/chronology_files.h"

#include <gtest/gtest.h>

#include <sstream>

namespace pithward::test {
namespace {

using dating::Chronology;

Chronology three_years() {
    Chronology made;
    made.years = {{1998, 1.0234, 3, 2, std::nullopt, std::nullopt},
                  {1999, std::nullopt, 0, 0, std::nullopt, std::nullopt},
                  {2000, 0.5, 12, 6, 0.45, 0.61}};
    return made;
}

std::string written(Outcome<void> (*write)(std::ostream&, const Chronology&, const std::string&),
                    const Chronology& chronology) {
    std::ostringstream out;
    const auto done = write(out, chronology, "PINE HILL");
    EXPECT_TRUE(done.has_value()) << done.error().line();
    return out.str();
}

TEST(ChronologyFiles, CsvHasAYearALine) {
    EXPECT_EQ(written(write_chronology_csv, three_years()), "year,value,low,high,series,trees\n"
                                                            "1998,1.0234,,,3,2\n"
                                                            "1999,,,,0,0\n"
                                                            "2000,0.5000,0.4500,0.6100,12,6\n");
}

TEST(ChronologyFiles, DecadalFormHasTenOfValueAndDepthALine) {
    const std::string none = "9990  0";
    const std::string text = written(write_chronology_decadal, three_years());
    std::string first = "PINEHI1990";
    for (int i = 0; i < 8; ++i) {
        first += none;
    }
    first += "1023  3" + none + "\n";
    std::string second = "PINEHI2000 500 12";
    for (int i = 0; i < 9; ++i) {
        second += none;
    }
    EXPECT_EQ(text, first + second + "\n");
}

TEST(ChronologyFiles, DecadalFormRefusesWhatHasNoRoom) {
    Chronology made = three_years();
    std::ostringstream out;
    made.years[0].value = 9.9901;
    auto done = write_chronology_decadal(out, made, "A");
    ASSERT_FALSE(done.has_value());
    EXPECT_EQ(done.error().where, "year 1998");
    made.years[0].value = -0.2;
    EXPECT_FALSE(write_chronology_decadal(out, made, "A").has_value());
    EXPECT_FALSE(write_chronology_decadal(out, Chronology(), "A").has_value());
    made = three_years();
    for (int i = 0; i < 3; ++i) {
        made.years[i].year = -1200 + i;
    }
    EXPECT_FALSE(write_chronology_decadal(out, made, "A").has_value());
}

TEST(ChronologyFiles, DecadesGoOnBeforeYearZero) {
    Chronology made = three_years();
    for (int i = 0; i < 3; ++i) {
        made.years[i].year = -12 + i;
    }
    EXPECT_EQ(written(write_chronology_decadal, made).substr(0, 10), "PINEHI -20");
}

TEST(ChronologyFiles, JsonHasNullForWhatIsNotKnown) {
    const std::string text = written(write_chronology_json, three_years());
    EXPECT_NE(text.find("\"eps\": null"), std::string::npos);
    EXPECT_NE(text.find("\"value\": 1.0234"), std::string::npos);
    EXPECT_EQ(text.find("nan"), std::string::npos);
}

TEST(ChronologyFiles, AnUnknownEndingIsNamed) {
    const auto format = chronology_format_of("a.doc");
    ASSERT_FALSE(format.has_value());
    EXPECT_NE(format.error().remedy.find(".crn"), std::string::npos);
    EXPECT_TRUE(chronology_format_of("a.CSV").has_value());
}

} // namespace
} // namespace pithward::test
