#include "libcore/dating/slips/common_signal.h"

#include <cmath>

namespace pithward::dating {

namespace {

constexpr double tail_freedom = 5.0;
constexpr int passes = 3; ///< Weights and guess settle within three.

/// Weighted sums from which the guess follows.
struct WeightedSums {
    Eigen::ArrayXd values; ///< sum(w value)
    Eigen::ArrayXd known;  ///< sum(w loading)

    explicit WeightedSums(Eigen::Index years)
        : values(Eigen::ArrayXd::Zero(years))
        , known(Eigen::ArrayXd::Zero(years)) {}

    void add(const Voice& voice, const Eigen::ArrayXd& weights) {
        const double w = voice.loading / (1.0 - voice.loading * voice.loading);
        for (Eigen::Index y = 0; y < values.size(); ++y) {
            if (!std::isnan(voice.values(y))) {
                values(y) += w * weights(y) * voice.values(y);
                known(y) += w * voice.loading;
            }
        }
    }
};

/// How much each year of a series counts, given the guess.
Eigen::ArrayXd weights_of(const Voice& voice, const Eigen::ArrayXd& growth) {
    constexpr double uncertainty_of_guess = 0.1;
    const double variance = 1.0 - voice.loading * voice.loading + uncertainty_of_guess;
    const Eigen::ArrayXd distance = voice.values - voice.loading * growth;
    return (tail_freedom + 1.0) / (tail_freedom + distance.square() / variance);
}

} // namespace

std::vector<CommonSignal> signals_of_others(const std::vector<Voice>& voices, int first_year) {
    if (voices.empty()) {
        return {};
    }
    const Eigen::Index years = voices.front().values.size();
    std::vector<Eigen::ArrayXd> weights(voices.size(), Eigen::ArrayXd::Ones(years));
    WeightedSums all(years);
    for (int pass = 0; pass < passes; ++pass) {
        if (pass > 0) {
            const Eigen::ArrayXd growth = all.values / (1.0 + all.known);
            for (std::size_t i = 0; i < voices.size(); ++i) {
                weights[i] = weights_of(voices[i], growth);
            }
        }
        all = WeightedSums(years);
        for (std::size_t i = 0; i < voices.size(); ++i) {
            all.add(voices[i], weights[i]);
        }
    }
    std::vector<CommonSignal> signals;
    for (std::size_t i = 0; i < voices.size(); ++i) {
        WeightedSums own(years);
        own.add(voices[i], weights[i]);
        const Eigen::ArrayXd known = (all.known - own.known).max(0.0);
        signals.push_back({first_year, (all.values - own.values) / (1.0 + known), known / (1.0 + known)});
    }
    return signals;
}

} // namespace pithward::dating
