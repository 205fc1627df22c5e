// `pithward crossdate` and `pithward chronology` as processes: what they write, what they say, and their exit status.
#include "libcore/formats/series_formats.h"
#include "tests/dating/made_up.h"

#include <gtest/gtest.h>
#include <sys/wait.h>
#include <unistd.h>

#include <cmath>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>

namespace pithward::test {
namespace {

namespace fs = std::filesystem;

WidthSeries as_file_series(const dating::TreeSeries& series, bool dated) {
    WidthSeries result;
    result.id = series.id;
    result.first_year = Year(dated ? series.widths.first_year : 1);
    result.dated = dated;
    for (const double width : series.widths.values) {
        result.widths.emplace_back(Millimetres(std::round(width * 1000.0) / 1000.0));
    }
    return result;
}

class Commands : public testing::Test {
protected:
    Commands() {
        fs::create_directories(folder_);
        auto site = made_up_site({.trees = 8, .cores = 2, .first_year = 1850, .years = 150, .r = 0.75});
        put("clean.rwl", site);
        merge_rings(site[0].widths, 1930);
        put("mistaken.rwl", site);
        put("one.rwl", {site[2]});
        put("dead.csv", {{"dead", "dead", {1, site[4].widths.values.segment(30, 80)}}}, false);
    }
    ~Commands() override { fs::remove_all(folder_); }

    void put(const std::string& name, const std::vector<dating::TreeSeries>& site, bool dated = true) {
        WidthTable table;
        for (const dating::TreeSeries& series : site) {
            table.series.push_back(as_file_series(series, dated));
        }
        ASSERT_TRUE(write_series_file(folder_ / name, true, table).has_value());
    }
    [[nodiscard]] std::string content(const std::string& name) const {
        std::ifstream in(folder_ / name);
        return {std::istreambuf_iterator<char>(in), {}};
    }
    /// Runs it in the folder, with its output in `out_` and its messages in `said_`.
    int run(const std::string& arguments) {
        const std::string command =
            "cd '" + folder_.string() + "' && '" PITHWARD_PROGRAM "' " + arguments + " > out.log 2> said.log";
        const int status = std::system(command.c_str());
        out_ = content("out.log");
        said_ = content("said.log");
        return WEXITSTATUS(status);
    }
    [[nodiscard]] bool one_line() const { return said_.find('\n') == said_.size() - 1; }

    fs::path folder_ = fs::path(testing::TempDir()) / ("pithward dating \xC3\xA5r " + std::to_string(::getpid()));
    std::string out_;
    std::string said_;
};

TEST_F(Commands, CrossdateNamesTheRingThatIsMissing) {
    ASSERT_EQ(run("crossdate mistaken.rwl"), 0) << said_;
    EXPECT_NE(out_.find("ring 1929 is missing"), std::string::npos) << out_;
    EXPECT_NE(said_.find("8 trees of 16 series"), std::string::npos);
    EXPECT_EQ(run("crossdate mistaken.rwl --strict --quiet"), 1);
    EXPECT_EQ(said_, "");
    EXPECT_EQ(run("crossdate clean.rwl --strict --quiet"), 0);
}

TEST_F(Commands, CrossdateWritesTheJsonOfTheDesign) {
    ASSERT_EQ(run("crossdate mistaken.rwl --json -"), 0) << said_;
    for (const char* key :
         {"\"series\":", "\"id\": \"T10a\"", "\"tree\": \"T10\"", "\"first_year\": 1851", "\"last_year\": 1999",
          "\"sign_agreement\":", "\"segments\":", "\"best_shift\":", "\"kind\": \"ring missing\"",
          "\"ring_year\": 1929", "\"probability\":", "\"site\":", "\"r_bar\":", "\"eps\":",
          "\"series_intercorrelation\":", "\"mean_sensitivity\":", "\"ar1\":"}) {
        EXPECT_NE(out_.find(key), std::string::npos) << key;
    }
    ASSERT_EQ(run("crossdate clean.rwl --json a.json --length 40 --step 10 --detrend exponential --prewhiten no"), 0);
    EXPECT_NE(content("a.json").find("\"length\": 40"), std::string::npos);
    EXPECT_EQ(run("crossdate clean.rwl --json a.json"), 2);
    EXPECT_TRUE(one_line()) << said_;
    EXPECT_EQ(run("crossdate clean.rwl --json a.json --force"), 0);
}

TEST_F(Commands, CrossdateTellsOfEveryPairWhenAsked) {
    ASSERT_EQ(run("crossdate mistaken.rwl --pairs --quiet"), 0) << said_;
    EXPECT_NE(out_.find("T10b         T11a            150"), std::string::npos) << out_;
    EXPECT_NE(out_.find("as dated, by chance"), std::string::npos) << out_;
    ASSERT_EQ(run("crossdate mistaken.rwl --pairs --json - --quiet"), 0) << said_;
    EXPECT_NE(out_.find("\"first\": \"T10a\",\n   \"second\": \"T10b\",\n   \"same_tree\": true"), std::string::npos);
    EXPECT_NE(out_.find("\"positions\":"), std::string::npos);
    ASSERT_EQ(run("crossdate mistaken.rwl --json - --quiet"), 0) << said_;
    EXPECT_NE(out_.find("\"pairs\": null"), std::string::npos) << "not asked for";
}

TEST_F(Commands, CrossdateFindsAPlaceForSeriesWithoutYears) {
    ASSERT_EQ(run("crossdate dead.csv --against clean.rwl --json -"), 0) << said_;
    EXPECT_NE(out_.find("\"first_year\": 1880"), std::string::npos) << out_;
    ASSERT_EQ(run("crossdate dead.csv --against clean.rwl --quiet"), 0);
    EXPECT_NE(out_.find("best at 1880 to 1959"), std::string::npos) << out_;
}

TEST_F(Commands, CrossdateTellsWhatIsToBeKnownOfASeries) {
    auto site = made_up_site({.trees = 6, .cores = 1, .first_year = 1850, .years = 100, .r = 0.75});
    site.push_back({"twin", "twin", site[0].widths});
    site.push_back({"even", "even", {1850, Eigen::ArrayXd::Constant(100, 1.0)}});
    site.push_back({"old", "old", {1500, site[1].widths.values}});
    put("odd.rwl", site);
    ASSERT_EQ(run("crossdate odd.rwl --quiet"), 0) << said_;
    EXPECT_NE(out_.find("it has the same widths as twin"), std::string::npos) << out_;
    EXPECT_NE(out_.find("don't vary"), std::string::npos) << out_;
    EXPECT_NE(out_.find("fewer than three years in common"), std::string::npos) << out_;
    EXPECT_NE(out_.find("9 series of 9 trees"), std::string::npos) << out_;
}

TEST_F(Commands, PicturesComeInThreeForms) {
    ASSERT_EQ(run("crossdate mistaken.rwl --quiet --picture a.svg --agreement b.pdf"), 0) << said_;
    const std::string svg = content("a.svg");
    EXPECT_NE(svg.find("<svg"), std::string::npos);
    EXPECT_NE(svg.find("ring 1929 is missing"), std::string::npos) << "the slip is named";
    EXPECT_NE(svg.find("T10a"), std::string::npos);
    EXPECT_EQ(svg.find("nan"), std::string::npos);
    EXPECT_TRUE(content("b.pdf").starts_with("%PDF-"));
    ASSERT_EQ(run("crossdate mistaken.rwl --quiet --agreement b.png"), 0) << said_;
    EXPECT_TRUE(content("b.png").starts_with("\x89PNG"));
    ASSERT_EQ(run("chronology clean.rwl --quiet --out c.csv --picture c.svg"), 0) << said_;
    EXPECT_NE(content("c.svg").find("expressed population signal"), std::string::npos);
    EXPECT_EQ(content("c.svg").find("nan"), std::string::npos);
    for (const char* arguments :
         {"crossdate clean.rwl --picture a.gif", "crossdate clean.rwl --picture a.svg",
          "crossdate clean.rwl --agreement -", "chronology clean.rwl --out d.csv --picture d"}) {
        EXPECT_EQ(run(arguments), 2) << arguments;
        EXPECT_TRUE(one_line()) << arguments << ": " << said_;
    }
    EXPECT_FALSE(std::filesystem::exists(folder_ / "d.csv"));
}

TEST_F(Commands, ChronologyWritesEachForm) {
    for (const char* file : {"a.csv", "a.crn", "'a b.json'"}) {
        ASSERT_EQ(run(std::string("chronology clean.rwl --quiet --out ") + file), 0) << said_;
    }
    EXPECT_TRUE(content("a.csv").starts_with("year,value,low,high,series,trees\n1850,"));
    EXPECT_TRUE(content("a.crn").starts_with("a     1850"));
    EXPECT_NE(content("a b.json").find("\"running\":"), std::string::npos);
    EXPECT_EQ(run("chronology clean.rwl --out a.csv"), 2);
    EXPECT_TRUE(one_line()) << said_;
}

TEST_F(Commands, WhatCanNotBeDoneIsToldInOneLine) {
    for (const char* arguments :
         {"crossdate none.rwl", "crossdate one.rwl", "crossdate clean.rwl --detrend parabola",
          "crossdate clean.rwl --detrend spline:1", "crossdate clean.rwl --detrend line:20",
          "crossdate clean.rwl --length 2", "crossdate clean.rwl --step 0", "crossdate one.rwl --against dead.csv",
          "chronology clean.rwl --out a.doc", "chronology dead.csv --out a.csv", "chronology clean.rwl"}) {
        EXPECT_EQ(run(arguments), 2) << arguments;
        EXPECT_TRUE(one_line()) << arguments << ": " << said_;
        EXPECT_NE(said_.find(';'), std::string::npos) << said_;
    }
}

} // namespace
} // namespace pithward::test
