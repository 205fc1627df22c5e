#include "libcore/dating/slips/alignment.h"

#include "libcore/dating/slips/alignment_chain.h"

#include <algorithm>
#include <array>
#include <cmath>
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

Alignment align(const RingVariation& variation, const CommonSignal& signal, const SlipPrior& prior) {
    if (!variation.usable()) {
        return without_slip(variation);
    }
    std::vector<Alignment> parts;
    std::vector<double> weights;
    for (const double loading : loadings) {
        const StepFactors factors = step_factors(variation, signal, loading, prior);
        parts.push_back(sum_alignments(factors, variation.value.last_year(), prior.jump));
        weights.push_back(parts.back().log_evidence + log_prior(loading));
    }
    const double greatest = *std::ranges::max_element(weights);
    double sum = 0.0;
    for (double& weight : weights) {
        weight = std::exp(weight - greatest);
        sum += weight;
    }
    Alignment result = parts.front();
    result.missing.setZero();
    result.extra.setZero();
    result.shift.setZero();
    result.no_slip = 0.0;
    for (std::size_t k = 0; k < parts.size(); ++k) {
        const double share = weights[k] / sum;
        result.missing += share * parts[k].missing;
        result.extra += share * parts[k].extra;
        result.shift += share * parts[k].shift;
        result.no_slip += share * parts[k].no_slip;
        result.loading += share * loadings[k];
    }
    result.log_evidence = greatest + std::log(sum);
    return result;
}

} // namespace pithward::dating
