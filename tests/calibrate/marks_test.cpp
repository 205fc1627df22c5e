#include "libimaging/calibrate/judge_graduation.h"
#include "libimaging/calibrate/mark_lattice.h"
#include "libimaging/calibrate/prominence.h"
#include "libimaging/calibrate/robust_line.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <random>

namespace pithward::calibrate {
namespace {

/// By the definition, sample by sample.
double depth_by_hand(const std::vector<double>& profile, std::size_t at) {
    const auto rise = [&](int step, bool equal_stops) {
        double highest = profile[at];
        for (int i = static_cast<int>(at) + step; i >= 0 && i < static_cast<int>(profile.size()); i += step) {
            const double value = profile[static_cast<std::size_t>(i)];
            if (value < profile[at] || (equal_stops && value == profile[at])) {
                break;
            }
            highest = std::max(highest, value);
        }
        return highest - profile[at];
    };
    return std::min(rise(-1, true), rise(1, false));
}

TEST(Dips, AreAsDeepAsByTheDefinition) {
    std::mt19937 random(7);
    for (int trial = 0; trial < 50; ++trial) {
        std::vector<double> profile(80);
        for (double& value : profile) {
            value = static_cast<double>(random() % 9); // with many that are equal
        }
        const std::vector<Dip> dips = dips_of(profile, 0.0);
        std::size_t next = 0;
        for (std::size_t i = 0; i < profile.size(); ++i) {
            const double depth = depth_by_hand(profile, i);
            if (depth > 0.0) {
                ASSERT_LT(next, dips.size());
                EXPECT_EQ(dips[next].at, static_cast<int>(i));
                EXPECT_DOUBLE_EQ(dips[next].depth, depth);
                ++next;
            }
        }
        EXPECT_EQ(next, dips.size());
    }
}

/// Dark strokes of these depths at equal steps on a light ground.
std::vector<double> strokes(double first, double period, const std::vector<double>& depths) {
    std::vector<double> profile(static_cast<std::size_t>(first + period * static_cast<double>(depths.size())), 0.8);
    for (std::size_t k = 0; k < depths.size(); ++k) {
        for (std::size_t i = 0; i < profile.size(); ++i) {
            const double off = static_cast<double>(i) - first - period * static_cast<double>(k);
            profile[i] -= depths[k] * std::exp(-0.5 * off * off / 2.0);
        }
    }
    return profile;
}

TEST(Lattice, FindsTheStepAndNotItsMultiples) {
    for (const double period : {6.3, 11.81, 47.24, 188.9}) {
        std::vector<double> depths(40, 0.5);
        for (std::size_t k = 0; k < depths.size(); k += 2) {
            depths[k] = 0.7; // every other one is stronger
        }
        depths[7] = depths[8] = depths[21] = 0.0; // a few are missing
        const auto lattice = find_lattice(strokes(17.4, period, depths));
        ASSERT_TRUE(lattice.has_value());
        EXPECT_NEAR(lattice->period, period, 0.1 * period / 40.0);
        EXPECT_NEAR(std::remainder(lattice->first - 17.4, period), 0.0, 0.1 * period);
        EXPECT_EQ(lattice->count, 40);
    }
}

TEST(Lattice, IsNoneInAFlatOrShortProfile) {
    EXPECT_FALSE(find_lattice({}).has_value());
    EXPECT_FALSE(find_lattice(std::vector<double>(500, 0.5)).has_value());
    EXPECT_FALSE(find_lattice(strokes(10.0, 30.0, std::vector<double>(5, 0.5))).has_value());
}

TEST(RobustLine, IsNotMovedByWrongPoints) {
    std::mt19937 random(3);
    std::normal_distribution<double> error(0.0, 0.1);
    std::vector<LinePoint> points;
    points.reserve(60);
    for (int k = 0; k < 60; ++k) {
        points.push_back({static_cast<double>(k), 3.0 + 12.0 * k + error(random) + (k % 9 == 0 ? 2.5 : 0.0)});
    }
    const auto line = fit_line(points, 2.8, 12.005, 0.01);
    ASSERT_TRUE(line.has_value());
    EXPECT_NEAR(line->slope, 12.0, 4.0 * line->slope_sd);
    EXPECT_NEAR(line->scatter, 0.1, 0.03);
    EXPECT_EQ(line->good, 53);
    EXPECT_FALSE(fit_line({{0.0, 1.0}, {1.0, 2.0}, {2.0, 3.0}}, 1.0, 1.0, 0.01).has_value());
}

TEST(RobustLine, StatesAnHonestDeviation) {
    std::mt19937 random(11);
    std::normal_distribution<double> error(0.0, 0.2);
    double square = 0.0;
    constexpr int trials = 400;
    for (int trial = 0; trial < trials; ++trial) {
        std::vector<LinePoint> points;
        points.reserve(60);
        for (int k = 0; k < 30; ++k) {
            points.push_back({static_cast<double>(k), 5.0 * k + error(random)});
        }
        const auto line = fit_line(points, 0.0, 5.0, 0.01);
        ASSERT_TRUE(line.has_value());
        square += std::pow((line->slope - 5.0) / line->slope_sd, 2.0) / trials;
    }
    EXPECT_GT(std::sqrt(square), 0.8);
    EXPECT_LT(std::sqrt(square), 1.2);
}

std::vector<double> lengths_of(const GraduationKind& kind, int first, int count) {
    std::vector<double> lengths;
    lengths.reserve(static_cast<std::size_t>(count));
    for (int k = 0; k < count; ++k) {
        lengths.push_back(2.0 + 0.6 * kind.rank(first + k));
    }
    return lengths;
}

TEST(JudgeGraduation, KnowsEachKindFromAnyMarkOn) {
    for (const GraduationKind& kind : graduation_kinds()) {
        for (int first = 0; first < kind.cycle(); ++first) {
            const auto judged = judge_graduation(lengths_of(kind, first, kind.cycle() + 6));
            ASSERT_TRUE(judged.has_value());
            EXPECT_EQ(judged->graduation, kind.graduation) << kind.word << " from " << first;
            EXPECT_GE(judged->lead, sure_lead) << kind.word << " from " << first;
        }
    }
}

TEST(JudgeGraduation, BearsWearAndDirt) {
    std::mt19937 random(5);
    for (const GraduationKind& kind : graduation_kinds()) {
        for (int trial = 0; trial < 20; ++trial) {
            std::vector<double> lengths = lengths_of(kind, static_cast<int>(random() % 20), 50);
            for (double& length : lengths) {
                switch (random() % 10) {
                case 0:
                    length *= 0.6;
                    break;
                case 1:
                    length = std::numeric_limits<double>::quiet_NaN();
                    break;
                default:
                    length += 0.04 * static_cast<double>(random() % 5);
                }
            }
            lengths[11] = 16.0;
            const auto judged = judge_graduation(lengths);
            ASSERT_TRUE(judged.has_value());
            EXPECT_EQ(judged->graduation, kind.graduation);
        }
    }
}

TEST(JudgeGraduation, SaysNothingOfMarksThatAreAlike) {
    EXPECT_FALSE(judge_graduation(std::vector<double>(60, 2.0)).has_value());
    std::mt19937 random(9);
    int sure = 0;
    for (int trial = 0; trial < 200; ++trial) {
        std::vector<double> lengths(40);
        for (double& length : lengths) {
            length = 2.0 + 0.005 * static_cast<double>(random() % 200);
        }
        const auto judged = judge_graduation(lengths);
        sure += judged && judged->lead >= sure_lead ? 1 : 0;
    }
    EXPECT_LE(sure, 2);
    EXPECT_FALSE(judge_graduation({}).has_value());
}

} // namespace
} // namespace pithward::calibrate
