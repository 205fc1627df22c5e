#include "libimaging/boundary/sequence.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace pithward::boundary {

namespace {

constexpr double none = -std::numeric_limits<double>::infinity();

double log_add(double a, double b) {
    const double high = std::max(a, b);
    return high == none ? none : high + std::log1p(std::exp(std::min(a, b) - high));
}

/// A chain over pairs (i, j): j is a boundary, i the one before it on the bark side, or i = j when j is the outermost.
class Chain {
public:
    Chain(const std::vector<double>& s_mm, const std::vector<double>& log_odds, const SequenceOptions& options)
        : s_(s_mm)
        , odds_(log_odds)
        , options_(options)
        , n_(s_mm.size())
        , reach_(options.farthest + 1) {}

    [[nodiscard]] Sequence solve() const;

private:
    /// Pair (j - back, j) as one index; back 0 is the start pair.
    [[nodiscard]] std::size_t pair(std::size_t j, std::size_t back) const { return j * (reach_ + 1) + back; }
    [[nodiscard]] std::size_t backs(std::size_t j) const { return std::min(j, reach_); }

    [[nodiscard]] double width_score(double before_mm, double after_mm) const {
        const double change = std::log(after_mm / before_mm) / options_.width_scale;
        const double t = -0.5 * (options_.width_freedom + 1.0) * std::log1p(change * change / options_.width_freedom);
        return options_.width_weight * t + narrow_score(after_mm);
    }
    [[nodiscard]] double narrow_score(double width_mm) const {
        const double lack = options_.narrowest_mm / std::max(width_mm, 1e-4);
        return lack > 1.0 ? -4.0 * (lack - 1.0) : 0.0;
    }
    /// Score of going from pair (i, j) to pair (j, k).
    [[nodiscard]] double step(std::size_t i, std::size_t j, std::size_t k) const {
        const double after = std::max(s_[k] - s_[j], 1e-4);
        const double width = i == j ? narrow_score(after) : width_score(std::max(s_[j] - s_[i], 1e-4), after);
        return odds_[k] + options_.taken + width;
    }
    /// Starting late or ending early passes over marks like any other gap; only the first and last `reach_` may be
    /// passed over.
    [[nodiscard]] bool may_start(std::size_t j) const { return j <= options_.farthest; }
    [[nodiscard]] bool may_end(std::size_t j) const { return n_ - 1 - j <= options_.farthest; }

    const std::vector<double>& s_;
    const std::vector<double>& odds_;
    SequenceOptions options_;
    std::size_t n_;
    std::size_t reach_;
};

Sequence Chain::solve() const {
    std::vector<double> forward(n_ * (reach_ + 1), none);
    std::vector<double> best(forward.size(), none);
    std::vector<std::size_t> from(forward.size(), 0); // `back` of the pair before, along the best way.
    for (std::size_t j = 0; j < n_; ++j) {
        if (may_start(j)) {
            forward[pair(j, 0)] = odds_[j];
            best[pair(j, 0)] = odds_[j];
        }
        for (std::size_t back = 1; back <= backs(j); ++back) {
            const std::size_t i = j - back;
            for (std::size_t earlier = 0; earlier <= backs(i); ++earlier) {
                const double score = step(i - earlier, i, j);
                const std::size_t source = pair(i, earlier);
                forward[pair(j, back)] = log_add(forward[pair(j, back)], forward[source] + score);
                if (best[source] + score > best[pair(j, back)]) {
                    best[pair(j, back)] = best[source] + score;
                    from[pair(j, back)] = earlier;
                }
            }
        }
    }
    std::vector<double> backward(forward.size(), none);
    double total = none;
    double best_end = none;
    std::size_t last = 0;
    std::size_t last_back = 0;
    for (std::size_t j = n_; j-- > 0;) {
        for (std::size_t back = 0; back <= backs(j); ++back) {
            double sum = may_end(j) ? 0.0 : none;
            for (std::size_t k = j + 1; k < std::min(n_, j + 1 + reach_); ++k) {
                sum = log_add(sum, backward[pair(k, k - j)] + step(j - back, j, k));
            }
            backward[pair(j, back)] = sum;
            if (may_end(j)) {
                total = log_add(total, forward[pair(j, back)]);
                if (best[pair(j, back)] > best_end) {
                    best_end = best[pair(j, back)];
                    last = j;
                    last_back = back;
                }
            }
        }
    }
    Sequence out;
    out.probability.assign(n_, 0.0);
    for (std::size_t j = 0; j < n_; ++j) {
        double sum = none;
        for (std::size_t back = 0; back <= backs(j); ++back) {
            sum = log_add(sum, forward[pair(j, back)] + backward[pair(j, back)]);
        }
        out.probability[j] = std::clamp(std::exp(sum - total), 0.0, 1.0);
    }
    while (true) {
        out.chosen.push_back(last);
        if (last_back == 0) {
            break;
        }
        const std::size_t earlier = from[pair(last, last_back)];
        last -= last_back;
        last_back = earlier;
    }
    std::ranges::reverse(out.chosen);
    return out;
}

} // namespace

Sequence best_sequence(const std::vector<double>& s_mm, const std::vector<double>& log_odds,
                       const SequenceOptions& options) {
    if (s_mm.empty()) {
        return {};
    }
    return Chain(s_mm, log_odds, options).solve();
}

} // namespace pithward::boundary
