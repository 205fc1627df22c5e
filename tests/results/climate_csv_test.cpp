#include "libcore/formats/climate_csv.h"

#include <gtest/gtest.h>

#include <sstream>

namespace pithward {
namespace {

Outcome<results::MonthlyClimate> read(const std::string& text) {
    std::istringstream in(text);
    return read_climate_csv(in);
}

const std::string titles = "year,jan,feb,mar,apr,may,jun,jul,aug,sep,oct,nov,dec\n";

TEST(ClimateCsv, TwelveMonthsARow) {
    const auto climate = read(titles + "1950,1,2,3,4,5,6,7.5,8,9,10,11,-12\n1951,NA,,-9999,4,5,6,7,8,9,10,11\n");
    ASSERT_TRUE(climate) << climate.error().line();
    EXPECT_DOUBLE_EQ(*climate->at(1950)[6], 7.5);
    EXPECT_DOUBLE_EQ(*climate->at(1950)[11], -12.0);
    for (const std::size_t month : {0U, 1U, 2U, 11U}) {
        EXPECT_FALSE(climate->at(1951)[month]) << month;
    }
}

TEST(ClimateCsv, AMonthARowAndTitlesByNumberAndOrder) {
    const auto rows = read("month,year,station,value\n7,1950,x,12.5\nAugust,1950,x,11\n09,1950,x,NaN\n");
    ASSERT_TRUE(rows) << rows.error().line();
    EXPECT_DOUBLE_EQ(*rows->at(1950)[6], 12.5);
    EXPECT_DOUBLE_EQ(*rows->at(1950)[7], 11.0);
    EXPECT_FALSE(rows->at(1950)[8]);
    const auto numbered = read("12,11,10,9,8,7,6,5,4,3,2,1,Year\n120,110,100,90,80,70,60,50,40,30,20,10,1950\n");
    ASSERT_TRUE(numbered) << numbered.error().line();
    EXPECT_DOUBLE_EQ(*numbered->at(1950)[0], 10.0);
}

TEST(ClimateCsv, AsSpreadsheetsOfOtherCountriesWriteIt) {
    const auto climate = read("\xEF\xBB\xBFyear;month;value\r\n1950;1;-3,5\r\n");
    ASSERT_TRUE(climate) << climate.error().line();
    EXPECT_DOUBLE_EQ(*climate->at(1950)[0], -3.5);
}

TEST(ClimateCsv, BadFilesAreRefusedWithTheirPlace) {
    const auto fault = [](const std::string& text) {
        const auto climate = read(text);
        return climate ? std::string("read") : climate.error().line();
    };
    EXPECT_NE(fault("year,month,value\n1950,13,1\n").find("line 2"), std::string::npos);
    EXPECT_NE(fault("year,month,value\n1950,0,1\n").find("no month"), std::string::npos);
    EXPECT_NE(fault("year,month,value\n1950,1,warm\n").find("\"warm\" is no climate value"), std::string::npos);
    EXPECT_NE(fault("year,month,value\n1950,1,1e300\n").find("no climate value"), std::string::npos);
    EXPECT_NE(fault("year,month,value\n1950,1,1\n1950,1,2\n").find("there twice"), std::string::npos);
    EXPECT_NE(fault("year,month,value\nsoon,1,1\n").find("no year"), std::string::npos);
    EXPECT_NE(fault("year,month,value\n99999999,1,1\n").find("no year"), std::string::npos);
    EXPECT_NE(fault("year,jan,feb\n1950,1,2\n").find("header row"), std::string::npos);
    EXPECT_NE(fault("year,jan,jan,mar,apr,may,jun,jul,aug,sep,oct,nov,dec\n").find("twice"), std::string::npos);
    EXPECT_NE(fault("year,month,value\n1950,1,\n").find("no climate value in it"), std::string::npos);
    EXPECT_NE(fault("").find("no climate value in it"), std::string::npos);
    EXPECT_NE(fault(std::string("\x00\x01\x02", 3)), "read");
    EXPECT_NE(fault("year,month,value\n1950\n"), "read");
}

} // namespace
} // namespace pithward
