#include "libcore/dating/slips/step_factors.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace pithward::dating {

namespace {

/// Density of Student's t with 4 degrees of freedom, scaled to a variance: (3 / 8) (1 + e^2 / (2 v))^(-5/2) times
/// sqrt(2 / v) for the scale v / 2. `half` is 1 / (2 v).
ShiftColumn heavy_tailed(const ShiftColumn& error, const ShiftColumn& half) {
    const ShiftColumn q = 1.0 + error.square() * half;
    return 0.75 * (half * q).sqrt() / q.cube();
}

double heavy_tailed(double error, double variance) {
    const double half = 0.5 / variance;
    const double q = 1.0 + error * error * half;
    return 0.75 * std::sqrt(half * q) / (q * q * q);
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

/// How far the widths of a ring are from what each shift expects of it. A ring without a width differs by NaN from all.
struct Errors {
    ShiftColumn normal;
    ShiftColumn merged;
    ShiftColumn split;
};

/// Fills the tables. Rings are counted from the bark inward, `i`; shifts from -most_shift, `s`.
class Filler {
public:
    Filler(const RingVariation& variation, const CommonSignal& signal, double loading, const SlipPrior& prior)
        : variation_(variation)
        , prior_(prior)
        , loading_(loading)
        , rings_(static_cast<int>(variation.value.size()))
        , first_(variation.value.first_year - (most_shift + 1) * prior.jump - 2)
        , growth_(rings_ + 2 * (variation.value.first_year - first_))
        , unknown_(growth_.size()) {
        const double size = loading / innovation_size(signal, variation.persistence);
        for (Eigen::Index y = 0; y < growth_.size(); ++y) {
            growth_(y) = size * signal.growth_in(first_ + static_cast<int>(y));
            unknown_(y) = 1.0 - loading * loading * signal.reliability_in(first_ + static_cast<int>(y));
        }
    }

    [[nodiscard]] StepFactors fill() {
        StepFactors f;
        for (ShiftTable* table : tables(f)) {
            table->setZero(shift_rows, rings_);
        }
        const double merged = prior_.missing * prior_.merged;
        const double lost = prior_.missing - merged;
        f.begin_split = prior_.extra * prior_.split;
        const double inserted = prior_.extra - f.begin_split;
        const double stay = 1.0 - prior_.missing - prior_.extra - prior_.own_way;
        f.begin_own_way = prior_.own_way;
        f.stay_own_way = 1.0 - prior_.back;
        expect(0);
        f.start.setZero();
        for (int s = most_shift - 1; s <= most_shift + 1; ++s) {
            const double before = s == most_shift ? 1.0 - prior_.whole_series : 0.5 * prior_.whole_series;
            f.start(s) = before * density(errors_.normal, none_)(s);
        }
        for (int i = 1; i < rings_; ++i) {
            const Errors younger = errors_;
            expect(i);
            f.inserted.col(i).setConstant(inserted * any_width(i));
            f.own_way.col(i).setConstant(unrelated(i));
            f.stay.col(i) = stay * density(errors_.normal, younger.normal);
            f.merged.col(i) = merged * density(errors_.merged, younger.normal);
            f.split.col(i) = pair_odds(i) * density(errors_.split, none_);
            f.after_split.col(i) = density(errors_.normal, younger.split);
            f.after_inserted.col(i) = density(errors_.normal, none_);
            f.after_own_way.col(i) = prior_.back * density(errors_.normal, ShiftColumn::Constant(value(i - 1)));
            f.lost.col(i) = lost * narrow_ * density(errors_.normal, from_higher_shift(younger.normal));
            f.after_merged.col(i) = density(errors_.normal, from_higher_shift(younger.merged));
        }
        f.lost.row(shift_count - 1).setZero(); // There is no higher shift to come from.
        f.after_merged.row(shift_count - 1).setZero();
        for (ShiftTable* table : tables(f)) {
            table->row(shift_count).setZero();
        }
        return f;
    }

private:
    static std::array<ShiftTable*, 10> tables(StepFactors& f) {
        return {&f.stay,        &f.lost,     &f.merged,         &f.after_merged, &f.split,
                &f.after_split, &f.inserted, &f.after_inserted, &f.own_way,      &f.after_own_way};
    }

    static ShiftColumn from_higher_shift(const ShiftColumn& column) {
        ShiftColumn moved = column;
        moved.head<shift_count>() = column.tail<shift_count>();
        return moved;
    }

    /// Fills `errors_`, `half_` and `narrow_` for a ring.
    void expect(int i) {
        const int k = rings_ - 1 - i;
        const double scale = variation_.scale(k);
        const double value = variation_.value.values(k);
        const double c = prior_.narrowness * scale;
        const double mean = 0.5 * c * c * loading_ * loading_;
        constexpr double least_unknown = 0.1; // No ring is foretold better than that (assumed).
        ShiftColumn expected;
        ShiftColumn before;  // In the year before, of which the inner one of two rings merged is.
        ShiftColumn of_both; // In the year of the outer part, to which both parts of a ring belong.
        ShiftColumn after;   // Growth in the year after.
        for (int s = 0; s < shift_rows; ++s) {
            const int y = place(s, i);
            expected(s) = scale * growth_(y);
            before(s) = scale * growth_(y - 1);
            of_both(s) = scale * growth_(y + 1 - prior_.jump);
            after(s) = growth_(y + 1);
            half_(s) = 0.5 / (scale * scale * std::max(least_unknown, unknown_(y)));
        }
        errors_.normal = value - expected;
        const ShiftColumn width = expected.exp();
        ShiftColumn inner;
        if (prior_.jump == 1) { // The year before is the one that the next lower shift expects.
            inner(0) = std::exp(before(0));
            inner.tail<shift_count>() = width.head<shift_count>();
        } else {
            inner = before.exp();
        }
        errors_.merged = value - (width + inner).log();
        errors_.split = variation_.pair(k) - of_both;
        // How much rather than others each year's ring is lost: exp(-c e) over its mean for normal e.
        narrow_ = (-c * after - mean).exp();
    }

    [[nodiscard]] int place(int s, int i) const { // Of the year, in growth_.
        return variation_.value.last_year() - i + (s - most_shift) * prior_.jump - first_;
    }

    /// The density of an error of the ring in hand after that of the next younger one; 1 for a ring without a width.
    /// What has no width has none in any shift.
    [[nodiscard]] ShiftColumn density(const ShiftColumn& error, const ShiftColumn& younger) const {
        if (std::isnan(error(0))) {
            return ShiftColumn::Ones();
        }
        return std::isnan(younger(0)) ? heavy_tailed(error, half_)
                                      : heavy_tailed(error - variation_.persistence * younger, half_);
    }

    [[nodiscard]] double value(int i) const { return variation_.value.values(rings_ - 1 - i); }

    /// The density of a ring that has nothing to do with the others.
    [[nodiscard]] double unrelated(int i) const {
        if (std::isnan(value(i))) {
            return 1.0;
        }
        const double scale = variation_.scale(rings_ - 1 - i);
        const double younger = std::isnan(value(i - 1)) ? 0.0 : value(i - 1);
        return heavy_tailed(value(i) - variation_.persistence * younger, scale * scale);
    }

    [[nodiscard]] double pair_odds(int i) const {
        constexpr double without_width = 0.05;
        const int k = rings_ - 1 - i;
        return std::isnan(variation_.pair(k)) ? without_width : variation_.pair_odds(k);
    }

    /// An inserted ring tends to be narrow, and may have any width (assumed).
    [[nodiscard]] double any_width(int i) const {
        return std::isnan(value(i)) ? 1.0 : heavy_tailed(value(i) + 0.3, 0.5);
    }

    const RingVariation& variation_;
    const SlipPrior& prior_;
    double loading_;
    int rings_;
    int first_; ///< First year of the two arrays by year.
    Eigen::ArrayXd growth_;
    Eigen::ArrayXd unknown_;
    const ShiftColumn none_ = ShiftColumn::Constant(none);
    Errors errors_;      ///< Of the ring in hand.
    ShiftColumn half_;   ///< 1 / (2 v) of its variance v.
    ShiftColumn narrow_; ///< How much rather than others the ring of the year after is lost.
};

} // namespace

StepFactors step_factors(const RingVariation& variation, const CommonSignal& signal, double loading,
                         const SlipPrior& prior) {
    return Filler(variation, signal, loading, prior).fill();
}

} // namespace pithward::dating
