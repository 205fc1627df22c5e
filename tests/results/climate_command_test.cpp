// `pithward climate` as a process.
#include "tests/support/temporary_folder.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>
#include <sys/wait.h>

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <random>

namespace pithward::test {
namespace {

struct ClimateCommand : testing::Test {
    TemporaryFolder folder;

    int run(const std::string& arguments) {
        const std::string command = "cd '" + folder.file("") + "' && env -u DISPLAY '" PITHWARD_PROGRAM "' " +
                                    arguments + " > out.log 2> said.log";
        const int status = std::system(command.c_str());
        return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
    }
    std::string out() { return bytes_of(folder.file("out.log")); }
    std::string said() { return bytes_of(folder.file("said.log")); }

    /// Rings that follow June to August of their own year; the climate of July 1950 is not known.
    void SetUp() override {
        std::mt19937_64 generator(3);
        std::normal_distribution<double> draw;
        std::string rings = "year,T1A,T2A,T3A\n";
        std::string climate = "year,jan,feb,mar,apr,may,jun,jul,aug,sep,oct,nov,dec\n";
        for (int year = 1900; year < 2000; ++year) {
            climate += std::to_string(year);
            double summer = 0.0;
            for (int month = 1; month <= 12; ++month) {
                const double value = draw(generator);
                summer += month >= 6 && month <= 8 ? value / 3.0 : 0.0;
                climate += ',' + (year == 1950 && month == 7 ? std::string() : std::to_string(value));
            }
            climate += '\n';
            rings += std::to_string(year);
            for (int tree = 0; tree < 3; ++tree) {
                rings += ',' + std::to_string(std::max(0.1, 2.0 + summer + 0.2 * draw(generator)));
            }
            rings += '\n';
        }
        (void)folder.write("rings.csv", rings);
        (void)folder.write("climate.csv", climate);
    }
};

TEST_F(ClimateCommand, FindsTheSeasonAndSaysHowManyWereTried) {
    ASSERT_EQ(run("climate rings.csv --climate climate.csv --json c.json --picture c.svg --quiet"), 0) << said();
    EXPECT_EQ(said(), "");
    const auto json = nlohmann::json::parse(bytes_of(folder.file("c.json")));
    EXPECT_EQ(json.at("strongest").at("months"), "Jun to Aug");
    EXPECT_EQ(json.at("strongest").at("years"), 99);
    EXPECT_GT(json.at("strongest").at("r"), 0.8);
    EXPECT_LT(json.at("chance"), 0.01);
    EXPECT_EQ(json.at("tried"), json.at("windows").size());
    EXPECT_GT(json.at("running").size(), 10U);
    EXPECT_NE(bytes_of(folder.file("c.svg")).find("Jun to Aug"), std::string::npos);
    ASSERT_EQ(run("climate rings.csv --climate climate.csv"), 0) << said();
    EXPECT_NE(out().find("strongest of 48 tried: Jun to Aug"), std::string::npos) << out();
}

TEST_F(ClimateCommand, BadInputIsToldInOneLine) {
    (void)folder.write("text.csv", "nothing of the kind\n");
    (void)folder.write("short.csv", "year,month,value\n1950,7,1\n1951,7,2\n");
    for (const char* arguments :
         {"rings.csv", "rings.csv --climate none.csv", "rings.csv --climate text.csv", "rings.csv --climate short.csv",
          "none.csv --climate climate.csv", "rings.csv --climate climate.csv --json climate.csv --force",
          "rings.csv --climate climate.csv --picture c.gif", "rings.csv --climate climate.csv --hemisphere west",
          "rings.csv --climate climate.csv --detrend magic"}) {
        EXPECT_EQ(run(std::string("climate ") + arguments), 2) << arguments;
        EXPECT_EQ(std::ranges::count(said(), '\n'), 1) << arguments << "\n" << said();
    }
}

} // namespace
} // namespace pithward::test
