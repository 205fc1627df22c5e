#include "libcore/dating/slips/find_slips.h"

#include "libcore/dating/slips/read_slips.h"

#include <algorithm>
#include <cmath>

namespace pithward::dating {

namespace {

constexpr double first_loading = 0.65; ///< Before anything is known of a series (assumed).
constexpr double sure_of_shift = 0.6;

/// The years that a site spans, with room for shifts.
struct Span {
    int first;
    int years;
};

Span span_of(const std::vector<TreeSeries>& site, int jump) {
    int first = std::numeric_limits<int>::max();
    int last = std::numeric_limits<int>::min();
    for (const TreeSeries& series : site) {
        first = std::min(first, series.widths.first_year);
        last = std::max(last, series.widths.last_year());
    }
    const int room = most_shift * jump + 1;
    return {first - room, last - first + 1 + 2 * room};
}

/// A series' values in the years that its rings have by their alignment; in its own without one.
Eigen::ArrayXd placed(const RingVariation& variation, const Alignment* alignment, const Span& span, int jump) {
    Eigen::ArrayXd values = Eigen::ArrayXd::Constant(span.years, none);
    if (!variation.usable()) {
        return values;
    }
    const double size = deviation(variation.value.values);
    for (int k = 0; k < variation.value.size(); ++k) {
        int shift = most_shift;
        if (alignment != nullptr && alignment->shift.row(k).maxCoeff(&shift) < sure_of_shift) {
            continue;
        }
        const int y = variation.value.first_year + k + (shift - most_shift) * jump - span.first;
        values(y) = variation.value.values(k) / size;
    }
    return values;
}

/// A site's series ready to be aligned, and what each says of the growth in common.
struct Prepared {
    Span span{};
    std::vector<RingVariation> variations;
    std::vector<Voice> voices;
};

Prepared prepare(const std::vector<TreeSeries>& site, const SlipOptions& options) {
    Prepared result;
    result.span = span_of(site, options.prior.jump);
    for (const TreeSeries& series : site) {
        result.variations.push_back(ring_variation(series.widths, options.period));
        result.voices.push_back(
            {placed(result.variations.back(), nullptr, result.span, options.prior.jump), first_loading});
    }
    return result;
}

/// What is assumed of a series beforehand, once the last round has shown a sure slip in it: its own rate is not known
/// but has a gamma distribution about the usual one, so where there is one, another is likelier.
SlipPrior prior_after(const SlipPrior& prior, const Alignment& alignment) {
    constexpr double sure = 0.01;
    constexpr double shape = 0.5; // Assumed: rates of series differ much.
    if (alignment.no_slip > sure) {
        return prior;
    }
    const double usual = prior.missing + prior.extra;
    const double seen = alignment.missing.sum() + alignment.extra.sum();
    const auto rings = static_cast<double>(alignment.shift.rows());
    const double times = (shape + seen) / (shape + usual * rings);
    SlipPrior own = prior;
    own.missing *= times;
    own.extra *= times;
    return own;
}

/// A probability whose odds are multiplied.
double with_odds(double probability, double times) {
    return probability * times / (probability * times + 1.0 - probability);
}

/// What the alignment says, for a person.
void read(SeriesSlips& result, const TreeSeries& series, const SlipOptions& options) {
    const Alignment& alignment = result.alignment;
    result.slips = read_slips(alignment, series.widths.first_year, options.least_probability);
    for (Slip& slip : result.slips) {
        slip.probability = with_odds(slip.probability, options.stated_odds);
    }
    result.whole_shift = alignment.shift.rows() > 0 ? outer_shift(alignment) * options.prior.jump : 0;
}

} // namespace

std::vector<SeriesSlips> find_slips(const std::vector<TreeSeries>& site, const SlipOptions& options, const Work& work) {
    std::vector<SeriesSlips> results(site.size());
    if (site.empty()) {
        return results;
    }
    Prepared made = prepare(site, options);
    const auto n = static_cast<double>(site.size());
    for (int round = 0; round < options.rounds; ++round) {
        const std::vector<CommonSignal> signals = signals_of_others(made.voices, made.span.first);
        for (std::size_t i = 0; i < site.size() && !work.stopped(); ++i) {
            const double near = round == 0 ? made.voices[i].loading : results[i].alignment.loading;
            const SlipPrior prior = round == 0 ? options.prior : prior_after(options.prior, results[i].alignment);
            results[i].alignment = align(made.variations[i], signals[i], prior, near);
            work.report((round + static_cast<double>(i + 1) / n) / options.rounds);
        }
        for (std::size_t i = 0; i < site.size() && !work.stopped(); ++i) {
            Voice& voice = made.voices[i];
            voice.loading = 0.5 * (voice.loading + std::clamp(results[i].alignment.loading, 0.2, 0.9));
            voice.values = placed(made.variations[i], &results[i].alignment, made.span, options.prior.jump);
        }
    }
    for (std::size_t i = 0; i < site.size(); ++i) {
        read(results[i], site[i], options);
    }
    return results;
}

std::vector<SeriesSlips> find_slips_against(const std::vector<TreeSeries>& reference,
                                            const std::vector<TreeSeries>& site, const SlipOptions& options,
                                            const Work& work) {
    std::vector<SeriesSlips> results(site.size());
    if (site.empty() || reference.empty()) {
        return results;
    }
    Prepared made = prepare(reference, options);
    // A series that says nothing hears all the others.
    made.voices.push_back({Eigen::ArrayXd::Constant(made.span.years, none), first_loading});
    const CommonSignal signal = signals_of_others(made.voices, made.span.first).back();
    for (std::size_t i = 0; i < site.size() && !work.stopped(); ++i) {
        const RingVariation variation = ring_variation(site[i].widths, options.period);
        results[i].alignment = align(variation, signal, options.prior);
        if (const SlipPrior own = prior_after(options.prior, results[i].alignment);
            own.missing > options.prior.missing) {
            results[i].alignment = align(variation, signal, own, results[i].alignment.loading);
        }
        read(results[i], site[i], options);
        work.report(static_cast<double>(i + 1) / static_cast<double>(site.size()));
    }
    return results;
}

} // namespace pithward::dating
