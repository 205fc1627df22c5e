#include "libcore/pith/rings_to_pith.h"

#include <Eigen/Dense>

#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>
#include <random>
#include <vector>

namespace pithward::pith {

namespace {

constexpr std::size_t most_widths = 20;
constexpr double forgetting = 10.0; ///< Rings outward over which a width's weight falls to 1/e.
constexpr double runs_out = 10.0;   ///< Rings inward over which a trend does.
constexpr double back_over = 10.0;  ///< Rings inward over which growth goes back to the usual.
constexpr double worth_rings = 4.0; ///< Rings that the scatter known beforehand is worth.
constexpr double level_sd = 1.0;    ///< Of ln(width) beforehand: as good as unknown.
constexpr int draws = 4000;
constexpr int most_rings = 2000;
constexpr double wanted_share = 0.9;

/// Bell-shaped numbers that are the same with every library.
class Bell {
public:
    double next() {
        const double radius = std::sqrt(-2.0 * std::log(1.0 - uniform()));
        return radius * std::cos(2.0 * std::numbers::pi * uniform());
    }

private:
    double uniform() { return static_cast<double>(random_() >> 11) * 0x1.0p-53; }
    std::mt19937_64 random_{20261125};
};

/// Level and trend of ln(width), with the covariance of both, and the scatter.
struct GrowthFit {
    Eigen::Vector2d mean = Eigen::Vector2d::Zero();
    Eigen::Matrix2d factor = Eigen::Matrix2d::Zero(); ///< Lower triangle: times two bell-shaped numbers gives a draw.
    double scatter = 0.0;
    double off_usual = 0.0; ///< How far the mean of ln(width) is from the usual one.
};

GrowthFit fit_growth(std::span<const double> widths_mm, const GrowthBeforehand& growth) {
    const auto n = static_cast<Eigen::Index>(std::min(widths_mm.size(), most_widths));
    Eigen::MatrixXd basis(n, 2);
    Eigen::VectorXd value(n);
    Eigen::VectorXd weight(n);
    for (Eigen::Index i = 0; i < n; ++i) {
        basis.row(i) << 1.0, -static_cast<double>(i); // inward is positive
        value(i) = std::log(widths_mm[static_cast<std::size_t>(i)]);
        weight(i) = std::exp(-static_cast<double>(i) / forgetting);
    }
    const double first = value.dot(weight) / weight.sum();
    // Neighbours that are alike tell less than as many independent rings.
    const double alike = (1.0 + growth.persistence) / (1.0 - growth.persistence);
    // Weights say what counts, not how sure it is: as many rings as these weights are worth (Kish's effective size).
    const double worth = weight.sum() / weight.squaredNorm();
    GrowthFit fit;
    fit.scatter = growth.scatter;
    fit.off_usual = value.mean() - std::log(growth.usual_mm);
    for (int round = 0; round < 4; ++round) {
        const double precision = worth / (fit.scatter * fit.scatter * alike);
        Eigen::Matrix2d normal = precision * basis.transpose() * weight.asDiagonal() * basis;
        Eigen::Vector2d pull = precision * basis.transpose() * weight.cwiseProduct(value);
        const Eigen::Vector2d known(1.0 / (level_sd * level_sd), 1.0 / (growth.trend_sd * growth.trend_sd));
        normal += Eigen::Matrix2d(known.asDiagonal());
        pull += known.cwiseProduct(Eigen::Vector2d(first, growth.trend));
        fit.mean = normal.ldlt().solve(pull);
        fit.factor = Eigen::Matrix2d(normal.inverse()).llt().matrixL();
        const Eigen::VectorXd off = value - basis * fit.mean;
        const double sum = off.cwiseProduct(off).dot(weight) + worth_rings * growth.scatter * growth.scatter;
        fit.scatter = std::sqrt(sum / (weight.sum() + worth_rings));
    }
    return fit;
}

/// How many rings fill the distance: the number whose outer edges' sum comes nearest to it.
int lay_rings(double distance_mm, const GrowthFit& fit, const GrowthBeforehand& growth, Bell& bell) {
    const Eigen::Vector2d both = fit.mean + fit.factor * Eigen::Vector2d(bell.next(), bell.next());
    const double kick = std::sqrt(1.0 - growth.persistence * growth.persistence);
    double own = bell.next();
    double filled = 0.0;
    for (int n = 1; n < most_rings; ++n) {
        const double inward = runs_out * (1.0 - std::exp(-n / runs_out));
        const double back = growth.back_to_usual * fit.off_usual * (1.0 - std::exp(-n / back_over));
        const double width = std::exp(both(0) + both(1) * inward - back + fit.scatter * own);
        if (filled + width >= distance_mm) {
            const bool nearer_without = distance_mm - filled < 0.5 * width;
            return std::max(1, nearer_without ? n - 1 : n);
        }
        filled += width;
        own = growth.persistence * own + kick * bell.next();
    }
    return most_rings;
}

/// The interval of whole numbers round the median whose share is nearest to the wanted one.
RingCount interval_of(const std::map<int, int>& counts) {
    const auto share_below = [&](int end) {
        int sum = 0;
        for (const auto& [rings, times] : counts) {
            sum += rings < end ? times : 0;
        }
        return static_cast<double>(sum) / draws;
    };
    int median = counts.begin()->first;
    while (share_below(median + 1) < 0.5) {
        ++median;
    }
    RingCount count{median, median, median};
    while (true) {
        const double share = share_below(count.high + 1) - share_below(count.low);
        const auto low = counts.find(count.low - 1);
        const auto high = counts.find(count.high + 1);
        const int below = low == counts.end() ? 0 : low->second;
        const int above = high == counts.end() ? 0 : high->second;
        const double gain = static_cast<double>(std::max(below, above)) / draws;
        if (gain <= 0.0 || std::abs(share + gain - wanted_share) > std::abs(share - wanted_share)) {
            return count;
        }
        (below > above ? count.low : count.high) += below > above ? -1 : 1;
    }
}

} // namespace

RingCount rings_to_pith(const PithPosterior& pith, std::span<const double> widths_mm, const GrowthBeforehand& growth) {
    const GrowthFit fit = fit_growth(widths_mm, growth);
    Bell bell;
    std::map<int, int> counts;
    std::size_t place = 0;
    double sum = pith.places().front().probability;
    for (int i = 0; i < draws; ++i) {
        const double share = (i + 0.5) / draws;
        while (sum < share && place + 1 < pith.places().size()) {
            sum += pith.places()[++place].probability;
        }
        ++counts[lay_rings(pith.places()[place].distance_mm, fit, growth, bell)];
    }
    return interval_of(counts);
}

int rings_of_mean_width(double distance_mm, std::span<const double> widths_mm) {
    constexpr std::size_t innermost = 5;
    const std::size_t count = std::min(innermost, widths_mm.size());
    double sum = 0.0;
    for (std::size_t i = 0; i < count; ++i) {
        sum += widths_mm[i];
    }
    const double mean = sum / static_cast<double>(count);
    return std::max(1, static_cast<int>(std::lround(distance_mm / mean)));
}

} // namespace pithward::pith
