#include "libcore/dating/crossdate.h"
#include "libcore/formats/dating_json.h"
#include "tests/dating/made_up.h"

#include <gtest/gtest.h>

#include <sstream>

namespace pithward::test {
namespace {

using namespace dating;

std::string json_of(const CrossdateResult& result) {
    std::ostringstream out;
    EXPECT_TRUE(write_crossdate_json(out, result, {"spline:32", true, ""}).has_value());
    return out.str();
}

/// Every number that a result gives is one.
void expect_numbers(const CrossdateResult& result) {
    for (const DatedResult& series : result.dated) {
        for (const auto& value : {series.agreement.r, series.five_year.r, series.yearly.r, series.signs.share,
                                  series.mean_sensitivity, series.ar1}) {
            EXPECT_TRUE(!value || std::isfinite(*value)) << series.id;
        }
        EXPECT_TRUE(std::isfinite(series.agreement.t) && std::isfinite(series.agreement.chance)) << series.id;
        for (const Segment& segment : series.segments) {
            EXPECT_TRUE((!segment.r || std::isfinite(*segment.r)) && std::isfinite(segment.chance)) << series.id;
        }
        for (const RankedMatch& match : series.best) {
            EXPECT_TRUE(std::isfinite(match.match.r) && std::isfinite(match.match.t) &&
                        std::isfinite(match.chance_of_best));
        }
        for (const Slip& slip : series.slips) {
            EXPECT_TRUE(slip.from <= slip.year && slip.year <= slip.to && slip.probability <= 1.0);
        }
    }
    const std::string text = json_of(result);
    EXPECT_EQ(text.find("nan"), std::string::npos);
    EXPECT_EQ(text.find("inf"), std::string::npos);
}

TEST(Crossdate, HoldsEachSeriesAgainstTheOtherTrees) {
    const auto site = made_up_site({.trees = 8, .cores = 2, .years = 150, .r = 0.7});
    const CrossdateResult found = crossdate({site, {}, {}}, {});
    ASSERT_EQ(found.dated.size(), 16);
    EXPECT_EQ(found.site.trees, 8);
    for (const DatedResult& series : found.dated) {
        EXPECT_GT(*series.agreement.r, 0.4) << series.id;
        EXPECT_EQ(series.best[0].match.shift, 0);
        EXPECT_LT(series.best[0].chance_of_best, 0.001);
        EXPECT_GT(series.five_year.t, 4.0);
        EXPECT_GT(series.yearly.t, 4.0);
        EXPECT_GE(series.signs.level, 0.99);
    }
    EXPECT_EQ(found.step, found.length / 2);
    expect_numbers(found);
}

TEST(Crossdate, PlacesSeriesWithoutYears) {
    const auto site = made_up_site({.trees = 8, .cores = 1, .years = 180, .r = 0.75});
    CrossdateInput input;
    input.dated.assign(site.begin() + 1, site.end());
    input.undated = {{"dead", "dead", {1, site[0].widths.values.segment(40, 70)}}};
    const CrossdateResult found = crossdate(input, {});
    ASSERT_EQ(found.undated.size(), 1);
    const UndatedResult& dead = found.undated[0];
    ASSERT_EQ(dead.places.size(), 5);
    EXPECT_EQ(dead.first_year + dead.places[0].match.shift, 1840);
    EXPECT_LT(dead.places[0].chance_of_best, 0.001);
    EXPECT_GT(dead.places[1].chance_of_best, 0.001);
    EXPECT_NE(json_of(found).find("\"first_year\": 1840"), std::string::npos);
}

TEST(Crossdate, HoldsSeriesAgainstAReference) {
    const auto site = made_up_site({.trees = 8, .cores = 1, .years = 150, .r = 0.75});
    CrossdateInput input;
    input.dated = {site[0]};
    input.dated[0].widths.first_year += 5;
    input.reference.assign(site.begin() + 1, site.end());
    const CrossdateResult found = crossdate(input, {});
    EXPECT_EQ(found.dated[0].best[0].match.shift, -5);
}

/// Sites that nobody would wish for.
std::vector<TreeSeries> with(TreeSeries odd) {
    auto site = made_up_site({.trees = 5, .cores = 1, .years = 100});
    site.push_back(std::move(odd));
    return site;
}

TEST(Crossdate, AnswersToEveryOddSeriesWithNumbersOrARemark) {
    const std::vector<TreeSeries> odd{
        {"apart", "apart", {-3000, Eigen::ArrayXd::LinSpaced(50, 1.0, 2.0).sin() + 2.0}},
        {"constant", "constant", {1820, Eigen::ArrayXd::Constant(60, 0.5)}},
        {"zeros", "zeros", {1820, Eigen::ArrayXd::Zero(60)}},
        {"five", "five", years_from(1850, {1.0, 2.0, 0.5, 1.0, 3.0})},
        {"one", "one", years_from(1850, {1.0})},
        {"gaps", "gaps", {1820, Eigen::ArrayXd::Constant(60, none)}},
    };
    for (const TreeSeries& series : odd) {
        SCOPED_TRACE(series.id);
        const CrossdateResult found = crossdate({with(series), {}, {}}, {});
        expect_numbers(found);
        EXPECT_TRUE(found.dated.back().slips.empty());
        EXPECT_TRUE(found.dated.back().agreement.r || !found.dated.back().remarks.empty());
    }
}

TEST(Crossdate, SaysThatTwoSeriesAreTheSame) {
    auto site = made_up_site({.trees = 5, .cores = 1, .years = 100});
    site.push_back({"again", "again", site[0].widths});
    const CrossdateResult found = crossdate({site, {}, {}}, {});
    EXPECT_EQ(found.dated[5].remarks, std::vector<std::string>{"it has the same widths as " + site[0].id});
    EXPECT_EQ(found.dated[0].remarks, std::vector<std::string>{"it has the same widths as again"});
    expect_numbers(found);
}

TEST(Crossdate, StandsLongSeriesAndYearsBeforeZero) {
    const auto site = made_up_site({.trees = 4, .cores = 1, .first_year = -1500, .years = 3000, .r = 0.7});
    const CrossdateResult found = crossdate({site, {}, {}}, {});
    EXPECT_EQ(found.dated[0].first_year, -1500);
    EXPECT_EQ(found.dated[0].best[0].match.shift, 0);
    expect_numbers(found);
}

TEST(Crossdate, OfOneSeriesOrNoneIsStated) {
    expect_numbers(crossdate({}, {}));
    const auto site = made_up_site({.trees = 1, .cores = 1, .years = 100});
    const CrossdateResult found = crossdate({site, {}, {}}, {});
    EXPECT_FALSE(found.dated[0].agreement.r.has_value());
    EXPECT_FALSE(found.dated[0].remarks.empty());
}

TEST(Crossdate, OptionsThatMakeNoSenseAreNamed) {
    CrossdateOptions options;
    options.length = 5;
    EXPECT_FALSE(options.validate().empty());
    options.length = 50;
    options.step = 0;
    EXPECT_FALSE(options.validate().empty());
}

} // namespace
} // namespace pithward::test
