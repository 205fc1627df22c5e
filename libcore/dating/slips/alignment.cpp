#include "libcore/dating/slips/alignment.h"

#include "libcore/dating/slips/alignment_chain.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>
#include <vector>

namespace pithward::dating {

namespace {

constexpr std::array loadings{0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9};
constexpr double usual_loading = 0.55;
constexpr double spread_of_loadings = 0.2;

double log_prior(double loading) {
    const double z = (loading - usual_loading) / spread_of_loadings;
    return -0.5 * z * z;
}

/// The sums for one loading, with the logarithm of its weight.
struct Part {
    AlignmentSums sums;
    double loading = 0.0;
    double weight = 0.0;
};

/// The parts of the mean over loadings, from the one near `near` outward on both sides, as long as they matter: the
/// evidence has one peak.
std::vector<Part> parts_that_count(const RingVariation& variation, const CommonSignal& signal, const SlipPrior& prior,
                                   double near) {
    constexpr double negligible = 7.0; // Logarithm of what a loading lacks to count: 1 in 1,100.
    const auto last = static_cast<int>(loadings.size()) - 1;
    const int middle = std::clamp(static_cast<int>(std::lround((near - loadings.front()) * 10.0)), 0, last);
    std::vector<Part> parts;
    parts.reserve(loadings.size());
    const auto add = [&](int k) {
        AlignmentSums sums(step_factors(variation, signal, loadings[k], prior));
        const double weight = sums.log_evidence() + log_prior(loadings[k]);
        parts.push_back({std::move(sums), loadings[k], weight});
        return weight;
    };
    double greatest = add(middle);
    for (const int step : {-1, 1}) {
        for (int k = middle + step; k >= 0 && k <= last; k += step) {
            const double weight = add(k);
            greatest = std::max(greatest, weight);
            if (weight < greatest - negligible) {
                break;
            }
        }
    }
    std::erase_if(parts, [&](const Part& part) { return part.weight < greatest - negligible; });
    return parts;
}

Alignment without_slip(const RingVariation& variation) {
    Alignment result;
    result.first_year = variation.value.first_year;
    result.missing = Eigen::ArrayXd::Zero(variation.value.size());
    result.extra = result.missing;
    result.shift.setZero(variation.value.size(), shift_count);
    result.shift.col(most_shift).setOnes();
    return result;
}

} // namespace

Alignment align(const RingVariation& variation, const CommonSignal& signal, const SlipPrior& prior, double near) {
    if (!variation.usable()) {
        return without_slip(variation);
    }
    const std::vector<Part> parts = parts_that_count(variation, signal, prior, near);
    const double greatest = std::ranges::max_element(parts, {}, &Part::weight)->weight;
    double sum = 0.0;
    for (const Part& part : parts) {
        sum += std::exp(part.weight - greatest);
    }
    Alignment result;
    for (const Part& part : parts) {
        const double share = std::exp(part.weight - greatest) / sum;
        const Alignment alignment = part.sums.alignment(variation.value.last_year(), prior.jump);
        if (result.shift.size() == 0) {
            result.first_year = alignment.first_year;
            result.missing.setZero(alignment.missing.size());
            result.extra.setZero(alignment.extra.size());
            result.shift.setZero(alignment.shift.rows(), shift_count);
            result.no_slip = 0.0;
        }
        result.missing += share * alignment.missing;
        result.extra += share * alignment.extra;
        result.shift += share * alignment.shift;
        result.no_slip += share * alignment.no_slip;
        result.loading += share * part.loading;
    }
    result.log_evidence = greatest + std::log(sum);
    return result;
}

} // namespace pithward::dating
