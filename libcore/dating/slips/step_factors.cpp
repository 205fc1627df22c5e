#include "libcore/dating/slips/step_factors.h"

#include <cmath>

namespace pithward::dating {

namespace {

/// Density of Student's t with 4 degrees of freedom, scaled to a variance: (3 / 8) (1 + e^2 / (2 v))^(-5/2) times
/// sqrt(2 / v) for the scale v / 2.
double heavy_tailed(double error, double variance) {
    const double q = 1.0 + error * error / (2.0 * variance);
    return 0.375 * std::sqrt(2.0 / (variance * q)) / (q * q);
}

/// The ratio of the signal's own innovations to its reliability, so that growth of unit variance can be expected.
double innovation_size(const CommonSignal& signal, double persistence) {
    constexpr double known_well = 0.3;
    double squares = 0.0;
    double known = 0.0;
    for (Eigen::Index y = 0; y + 1 < signal.growth.size(); ++y) {
        if (signal.reliability(y) > known_well && signal.reliability(y + 1) > known_well) {
            const double innovation = signal.growth(y) - persistence * signal.growth(y + 1);
            squares += innovation * innovation;
            known += signal.reliability(y);
        }
    }
    return known > 0.0 && squares > 0.0 ? std::sqrt(squares / known) : 1.0;
}

/// Fills the tables. Rings are counted from the bark inward, `i`; shifts from -most_shift, `s`.
class Filler {
public:
    Filler(const RingVariation& variation, const CommonSignal& signal, double loading, const SlipPrior& prior)
        : variation_(variation)
        , prior_(prior)
        , loading_(loading)
        , rings_(variation.value.size())
        , first_(variation.value.first_year - most_shift * prior.jump - 2)
        , growth_(rings_ + 2 * (variation.value.first_year - first_))
        , unknown_(growth_.size())
        , normal_(shift_count, rings_)
        , merged_(shift_count, rings_)
        , split_(shift_count, rings_)
        , variance_(shift_count, rings_) {
        const double size = loading / innovation_size(signal, variation.persistence);
        for (Eigen::Index y = 0; y < growth_.size(); ++y) {
            growth_(y) = size * signal.growth_in(first_ + static_cast<int>(y));
            unknown_(y) = 1.0 - loading * loading * signal.reliability_in(first_ + static_cast<int>(y));
        }
        for (int i = 0; i < rings_; ++i) {
            for (int s = 0; s < shift_count; ++s) {
                expect(s, i);
            }
        }
    }

    [[nodiscard]] StepFactors fill() const {
        StepFactors f;
        for (ShiftTable* table : {&f.stay, &f.lost, &f.merged, &f.after_merged, &f.split, &f.after_split, &f.inserted,
                                  &f.after_inserted, &f.own_way, &f.after_own_way}) {
            table->setZero(shift_count, rings_);
        }
        const bool real = prior_.jump == 1; // Widths tell of a slip only where it is one of neighbouring rings.
        const double merged = real ? prior_.missing * prior_.merged : 0.0;
        const double lost = prior_.missing - merged;
        f.begin_split = real ? prior_.extra * prior_.split : 0.0;
        const double inserted = prior_.extra - f.begin_split;
        const double stay = 1.0 - prior_.missing - prior_.extra - prior_.own_way;
        f.begin_own_way = prior_.own_way;
        f.stay_own_way = 1.0 - prior_.back;
        for (int i = 1; i < rings_; ++i) {
            f.inserted.col(i).setConstant(inserted * any_width(i));
            f.own_way.col(i).setConstant(unrelated(i));
            for (int s = 0; s < shift_count; ++s) {
                const double variance = variance_(s, i);
                const double error = normal_(s, i);
                f.stay(s, i) = stay * density(error, normal_(s, i - 1), variance);
                f.merged(s, i) = merged * density(merged_(s, i), normal_(s, i - 1), variance);
                f.split(s, i) = pair_odds(i) * density(split_(s, i), none, variance);
                f.after_split(s, i) = density(error, split_(s, i - 1), variance);
                f.after_inserted(s, i) = density(error, none, variance);
                f.after_own_way(s, i) = prior_.back * density(error, value(i - 1), variance);
                if (s + 1 < shift_count) {
                    f.lost(s, i) = lost * narrow(s, i) * density(error, normal_(s + 1, i - 1), variance);
                    f.after_merged(s, i) = density(error, merged_(s + 1, i - 1), variance);
                }
            }
        }
        f.start.setZero();
        for (int s = most_shift - 1; s <= most_shift + 1; ++s) {
            const double before = s == most_shift ? 1.0 - prior_.whole_series : 0.5 * prior_.whole_series;
            f.start(s) = before * density(normal_(s, 0), none, variance_(s, 0));
        }
        return f;
    }

private:
    [[nodiscard]] int place(int s, int i) const { // Of the year, in growth_.
        return variation_.value.last_year() - i + (s - most_shift) * prior_.jump - first_;
    }

    void expect(int s, int i) {
        const int y = place(s, i);
        const int k = rings_ - 1 - i;
        const double scale = variation_.scale(k);
        const double expected = scale * growth_(y);
        const double value = variation_.value.values(k);
        normal_(s, i) = value - expected;
        merged_(s, i) = value - std::log(std::exp(expected) + std::exp(scale * growth_(y - 1)));
        split_(s, i) = variation_.pair(k) - expected;
        constexpr double least_unknown = 0.1; // No ring is foretold better than that (assumed).
        variance_(s, i) = scale * scale * std::max(least_unknown, unknown_(y));
    }

    /// The density of an error after the one of the next younger ring; 1 for a ring without a width.
    [[nodiscard]] double density(double error, double younger, double variance) const {
        if (std::isnan(error)) {
            return 1.0;
        }
        return heavy_tailed(std::isnan(younger) ? error : error - variation_.persistence * younger, variance);
    }

    [[nodiscard]] double value(int i) const { return variation_.value.values(rings_ - 1 - i); }

    /// The density of a ring that has nothing to do with the others.
    [[nodiscard]] double unrelated(int i) const {
        const double scale = variation_.scale(rings_ - 1 - i);
        return density(value(i), value(i - 1), scale * scale);
    }

    [[nodiscard]] double pair_odds(int i) const {
        constexpr double without_width = 0.05;
        const int k = rings_ - 1 - i;
        return std::isnan(variation_.pair(k)) ? without_width : variation_.pair_odds(k);
    }

    /// An inserted ring tends to be narrow, and may have any width (assumed).
    [[nodiscard]] double any_width(int i) const {
        const double value = variation_.value.values(rings_ - 1 - i);
        return std::isnan(value) ? 1.0 : heavy_tailed(value + 0.3, 0.5);
    }

    /// How much rather than others this year's ring is lost: exp(-c e) over its mean for normal e.
    [[nodiscard]] double narrow(int s, int i) const {
        const double scale = variation_.scale(rings_ - 1 - i);
        const double c = prior_.narrowness * scale;
        return std::exp(-c * growth_(place(s, i) + 1) - 0.5 * c * c * loading_ * loading_);
    }

    const RingVariation& variation_;
    const SlipPrior& prior_;
    double loading_;
    int rings_;
    int first_; ///< First year of the two arrays by year.
    Eigen::ArrayXd growth_;
    Eigen::ArrayXd unknown_;
    ShiftTable normal_;
    ShiftTable merged_;
    ShiftTable split_;
    ShiftTable variance_;
};

} // namespace

StepFactors step_factors(const RingVariation& variation, const CommonSignal& signal, double loading,
                         const SlipPrior& prior) {
    return Filler(variation, signal, loading, prior).fill();
}

} // namespace pithward::dating
