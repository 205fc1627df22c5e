#include "libimaging/boundary/sequence.h"

#include <gtest/gtest.h>

#include <bit>
#include <cmath>
#include <limits>
#include <random>

namespace pithward::boundary {
namespace {

/// The score of one sequence by the documented model: the log odds of the marks taken; for each pair of neighbouring
/// rings Student's t of the change of the logarithm of the width, without its constant; an extra cost of narrow rings.
double score_of(const std::vector<std::size_t>& taken, const std::vector<double>& s_mm, const std::vector<double>& odds,
                const SequenceOptions& options) {
    double score = 0.0;
    for (std::size_t k = 0; k < taken.size(); ++k) {
        score += odds[taken[k]];
        if (k == 0) {
            continue;
        }
        const double width = s_mm[taken[k]] - s_mm[taken[k - 1]];
        if (width < options.narrowest_mm) {
            score -= 4.0 * (options.narrowest_mm / width - 1.0);
        }
        if (k > 1) {
            const double before = s_mm[taken[k - 1]] - s_mm[taken[k - 2]];
            const double change = std::log(width / before) / options.width_scale;
            const double f = options.width_freedom;
            score += options.width_weight * -0.5 * (f + 1.0) * std::log(1.0 + change * change / f);
        }
    }
    return score;
}

/// No more than `farthest` marks may be passed over: before the first, between two, after the last.
bool allowed(const std::vector<std::size_t>& taken, std::size_t marks, std::size_t farthest) {
    if (taken.empty() || taken.front() > farthest || marks - 1 - taken.back() > farthest) {
        return false;
    }
    for (std::size_t k = 1; k < taken.size(); ++k) {
        if (taken[k] - taken[k - 1] - 1 > farthest) {
            return false;
        }
    }
    return true;
}

Sequence by_enumeration(const std::vector<double>& s_mm, const std::vector<double>& odds,
                        const SequenceOptions& options) {
    const std::size_t n = s_mm.size();
    std::vector<double> mass(n, 0.0);
    double total = 0.0;
    double best = -std::numeric_limits<double>::infinity();
    Sequence out;
    for (unsigned subset = 1; subset < (1U << n); ++subset) {
        std::vector<std::size_t> taken;
        for (std::size_t k = 0; k < n; ++k) {
            if ((subset >> k & 1U) != 0) {
                taken.push_back(k);
            }
        }
        if (!allowed(taken, n, options.farthest)) {
            continue;
        }
        const double score = score_of(taken, s_mm, odds, options);
        if (score > best) {
            best = score;
            out.chosen = taken;
        }
        total += std::exp(score);
        for (const std::size_t k : taken) {
            mass[k] += std::exp(score);
        }
    }
    for (const double m : mass) {
        out.probability.push_back(m / total);
    }
    return out;
}

TEST(Sequence, EqualsTheEnumerationOfAllSubsets) {
    const unsigned seed = 4711;
    std::mt19937 random(seed);
    std::uniform_real_distribution<double> gap(0.015, 1.5);
    std::normal_distribution<double> odds(0.0, 3.0);
    for (int i = 0; i < 60; ++i) {
        SequenceOptions options;
        if (i % 3 == 1) {
            options.farthest = 1 + random() % 4;
        }
        std::vector<double> s_mm;
        std::vector<double> log_odds;
        const std::size_t n = 1 + random() % 12;
        for (std::size_t k = 0; k < n; ++k) {
            s_mm.push_back((k == 0 ? 0.0 : s_mm.back()) + gap(random));
            log_odds.push_back(odds(random));
        }
        const Sequence found = best_sequence(s_mm, log_odds, options);
        const Sequence expected = by_enumeration(s_mm, log_odds, options);
        ASSERT_EQ(found.chosen, expected.chosen) << "seed " << seed << ", case " << i;
        ASSERT_EQ(found.probability.size(), n);
        for (std::size_t k = 0; k < n; ++k) {
            ASSERT_NEAR(found.probability[k], expected.probability[k], 1e-9)
                << "seed " << seed << ", case " << i << ", mark " << k;
        }
    }
}

TEST(Sequence, OfNoMarksIsEmpty) {
    EXPECT_TRUE(best_sequence({}, {}).chosen.empty());
    EXPECT_TRUE(best_sequence({}, {}).probability.empty());
}

TEST(Sequence, AWeakMarkIsTakenWhereARingWouldBeTwiceAsWideAsItsNeighbours) {
    std::vector<double> s_mm;
    std::vector<double> odds;
    for (int k = 0; k < 20; ++k) {
        s_mm.push_back(k);
        odds.push_back(k == 9 ? -0.5 : 6.0);
    }
    const Sequence even = best_sequence(s_mm, odds);
    EXPECT_EQ(even.chosen.size(), 20U);
    // The same odds half-way between two boundaries are a false ring.
    s_mm.insert(s_mm.begin() + 5, 4.5);
    odds.insert(odds.begin() + 5, -0.5);
    const Sequence with_false = best_sequence(s_mm, odds);
    EXPECT_EQ(with_false.chosen.size(), 20U);
    EXPECT_LT(with_false.probability[5], 0.2);
    EXPECT_GT(with_false.probability[10], 0.5);
}

TEST(Sequence, StaysFiniteOnMarksInOnePlaceAndExtremeOdds) {
    const std::vector<double> s_mm{0.0, 0.0, 0.0, 1.0, 1.0, 2.0};
    const std::vector<double> odds{500.0, -500.0, 3.0, 700.0, 700.0, -700.0};
    for (const double p : best_sequence(s_mm, odds).probability) {
        EXPECT_GE(p, 0.0);
        EXPECT_LE(p, 1.0);
    }
}

} // namespace
} // namespace pithward::boundary
