#include "libcore/dating/slips/alignment.h"
#include "libcore/dating/slips/alignment_chain.h"
#include "tests/dating/made_up.h"

#include <gtest/gtest.h>

#include <cmath>

namespace pithward::test {
namespace {

using namespace dating;

enum class Step { Normal, Merged, OuterPart, InnerPart, Inserted, OwnWay };

/// Adds up all ways through the chain one by one.
class OneByOne {
public:
    explicit OneByOne(const StepFactors& factors)
        : f_(factors) {}

    double total() {
        for (int s = 0; s < shift_count; ++s) {
            follow(Step::Normal, s, 0, f_.start(s), 0.0);
        }
        return total_;
    }
    [[nodiscard]] double missing() const { return missing_ / total_; }
    [[nodiscard]] double shifted(int s) const { return ends_[s] / total_; }

private:
    void follow(Step kind, int s, int i, double product, double missing) {
        if (product == 0.0) {
            return;
        }
        const int next = i + 1;
        if (next == f_.stay.cols()) {
            if (kind != Step::OuterPart) {
                total_ += product;
                missing_ += product * missing;
                ends_[s] += product;
            }
            return;
        }
        const bool up = s + 1 < shift_count;
        const bool down = s > 0;
        switch (kind) {
        case Step::Normal:
            follow(Step::Normal, s, next, product * f_.stay(s, next), missing);
            follow(Step::OwnWay, s, next, product * f_.begin_own_way * f_.own_way(s, next), missing);
            if (down) {
                follow(Step::Normal, s - 1, next, product * f_.lost(s - 1, next), missing + 1);
                follow(Step::Merged, s, next, product * f_.merged(s, next), missing + 1);
            }
            if (up) {
                follow(Step::OuterPart, s, next, product * f_.begin_split, missing);
                follow(Step::Inserted, s + 1, next, product * f_.inserted(s + 1, next), missing);
            }
            break;
        case Step::OwnWay:
            follow(Step::Normal, s, next, product * f_.after_own_way(s, next), missing);
            follow(Step::OwnWay, s, next, product * f_.stay_own_way * f_.own_way(s, next), missing);
            break;
        case Step::Merged:
            follow(Step::Normal, s - 1, next, product * f_.after_merged(s - 1, next), missing);
            break;
        case Step::OuterPart:
            follow(Step::InnerPart, s + 1, next, product * f_.split(s + 1, next), missing);
            break;
        case Step::InnerPart:
            follow(Step::Normal, s, next, product * f_.after_split(s, next), missing);
            break;
        case Step::Inserted:
            follow(Step::Normal, s, next, product * f_.after_inserted(s, next), missing);
            break;
        }
    }

    const StepFactors& f_;
    double total_ = 0.0;
    double missing_ = 0.0;
    std::array<double, shift_count> ends_{};
};

TEST(Alignment, SumsOverAllWaysExactly) {
    const auto site = made_up_site({.trees = 4, .cores = 1, .years = 60});
    std::vector<Voice> voices;
    for (int i = 0; i < 4; ++i) {
        const RingVariation variation = ring_variation(site[i].widths, 20.0);
        voices.push_back({variation.value.values / deviation(variation.value.values), 0.6});
    }
    const CommonSignal signal = signals_of_others(voices, 1800)[0];
    RingVariation variation = ring_variation(site[0].widths, 20.0);
    SlipPrior prior;
    prior.missing = 0.1; // So that every kind of way counts.
    prior.extra = 0.1;
    StepFactors factors = step_factors(variation, signal, 0.6, prior);
    for (ShiftTable* table :
         {&factors.stay, &factors.lost, &factors.merged, &factors.after_merged, &factors.split, &factors.after_split,
          &factors.inserted, &factors.after_inserted, &factors.own_way, &factors.after_own_way}) {
        *table = table->leftCols(8).eval();
    }
    const Alignment sums = AlignmentSums(factors).alignment(1859, 1);
    OneByOne slow(factors);
    EXPECT_NEAR(sums.log_evidence, std::log(slow.total()), 1e-10);
    EXPECT_NEAR(sums.missing.sum(), slow.missing(), 1e-10);
    for (int s = 0; s < shift_count; ++s) {
        EXPECT_NEAR(sums.shift(0, s), slow.shifted(s), 1e-10) << s; // The innermost ring.
    }
}

TEST(Alignment, ProbabilitiesOfShiftsSumToOne) {
    auto site = made_up_site({.trees = 6, .cores = 1, .years = 120});
    merge_rings(site[0].widths, 1860);
    std::vector<Voice> voices;
    for (int i = 1; i < 6; ++i) {
        const RingVariation variation = ring_variation(site[i].widths, 20.0);
        voices.push_back({variation.value.values / deviation(variation.value.values), 0.6});
    }
    voices.push_back({Eigen::ArrayXd::Constant(120, none), 0.6});
    const Alignment found = align(ring_variation(site[0].widths, 20.0), signals_of_others(voices, 1800).back(), {});
    EXPECT_LT((found.shift.rowwise().sum() - 1.0).abs().maxCoeff(), 1e-9);
    EXPECT_GT(found.shift(10, most_shift - 1), 0.99); // Older rings are to be dated a year earlier.
    EXPECT_GT(found.shift(110, most_shift), 0.99);
    EXPECT_LT(found.no_slip, 0.01);
}

TEST(Alignment, OfUnusableSeriesHasNoSlip) {
    const RingVariation constant = ring_variation({1900, Eigen::ArrayXd::Constant(80, 1.0)}, 20.0);
    EXPECT_FALSE(constant.usable());
    const Alignment found = align(constant, {1900, Eigen::ArrayXd::Zero(80), Eigen::ArrayXd::Zero(80)}, {});
    EXPECT_EQ(found.no_slip, 1.0);
    EXPECT_EQ(found.missing.sum() + found.extra.sum(), 0.0);
}

} // namespace
} // namespace pithward::test
