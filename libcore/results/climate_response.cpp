#include "libcore/results/climate_response.h"

#include "libcore/results/paired_years.h"

#include <algorithm>
#include <cmath>

namespace pithward::results {

namespace {

constexpr int climate_draws = 1000;

PairedYears detrended_pairs(PairedYears pairs) {
    if (pairs.size() >= least_climate_years) {
        pairs.growth = without_line(pairs.years, pairs.growth);
        pairs.climate = without_line(pairs.years, pairs.climate);
    }
    return pairs;
}

Eigen::ArrayXd taken(const Eigen::ArrayXd& values, const std::vector<int>& places) {
    Eigen::ArrayXd drawn(static_cast<Eigen::Index>(places.size()));
    std::ranges::transform(places, drawn.begin(), [&](int place) { return values(place); });
    return drawn;
}

void add_interval(WindowCorrelation& result, const PairedYears& pairs) {
    BlockDraws draws(pairs.size(), block_years(pairs.size()));
    std::vector<double> drawn;
    for (int k = 0; k < climate_draws; ++k) {
        const std::vector<int> places = draws.next();
        if (const auto r = correlation(taken(pairs.growth, places), taken(pairs.climate, places))) {
            drawn.push_back(*r);
        }
    }
    if (drawn.size() < climate_draws / 2) {
        return; // Nearly constant: most draws say nothing.
    }
    std::ranges::sort(drawn);
    const std::size_t tail = drawn.size() / 20;
    result.low = drawn[tail];
    result.high = drawn[drawn.size() - 1 - tail];
}

WindowCorrelation correlated(const ClimateWindow& window, bool detrended, const PairedYears& pairs) {
    WindowCorrelation result{window, detrended, pairs.size(), {}, {}, {}};
    if (pairs.size() < least_climate_years) {
        return result;
    }
    result.r = correlation(pairs.growth, pairs.climate);
    if (result.r) {
        add_interval(result, pairs);
    }
    return result;
}

/// What was tried, with the series that it was tried on.
struct Trial {
    PairedYears pairs;
    WindowCorrelation found;
};

/// The chance that the greatest correlation of all trials reaches what was found, the growth drawn anew over all its
/// years, so that all trials see the same draw.
double chance_of(double found, const std::vector<Trial>& trials, const dating::YearSeries& chronology,
                 const Work& work) {
    const dating::YearSeries drawn_from = chronology;
    std::vector<int> there;
    for (int k = 0; k < drawn_from.size(); ++k) {
        if (!std::isnan(drawn_from.values(k))) {
            there.push_back(k);
        }
    }
    BlockDraws draws(static_cast<int>(there.size()), block_years(static_cast<int>(there.size())));
    int reached = 0;
    for (int k = 0; k < climate_draws && !work.stopped(); ++k) {
        const std::vector<int> places = draws.next();
        dating::YearSeries drawn = drawn_from;
        for (std::size_t i = 0; i < there.size(); ++i) {
            drawn.values(there[i]) = drawn_from.values(there[static_cast<std::size_t>(places[i])]);
        }
        double greatest = 0.0;
        for (const Trial& trial : trials) {
            Eigen::ArrayXd growth(trial.pairs.size());
            std::ranges::transform(trial.pairs.years, growth.begin(), [&](int year) { return drawn.at(year); });
            if (trial.found.detrended) {
                growth = without_line(trial.pairs.years, growth);
            }
            greatest = std::max(greatest, std::abs(correlation(growth, trial.pairs.climate).value_or(0.0)));
        }
        reached += greatest >= found ? 1 : 0;
        work.report((k + 1.0) / climate_draws);
    }
    return (1.0 + reached) / (1.0 + climate_draws);
}

std::vector<RunningCorrelation> running(const Trial& strongest, const dating::YearSeries& chronology,
                                        const MonthlyClimate& climate) {
    const PairedYears all = paired_years(chronology, window_means(climate, strongest.found.window));
    std::vector<RunningCorrelation> found;
    if (all.years.empty()) {
        return found;
    }
    for (int from = all.years.front(); from + running_years - 1 <= all.years.back(); from += running_step) {
        const int to = from + running_years - 1;
        PairedYears pairs = stretch(all, from, to);
        pairs = strongest.found.detrended ? detrended_pairs(std::move(pairs)) : std::move(pairs);
        found.push_back({from, to, correlated(strongest.found.window, strongest.found.detrended, pairs)});
    }
    return found;
}

} // namespace

ClimateResponse climate_response(const dating::YearSeries& chronology, const MonthlyClimate& climate,
                                 Hemisphere hemisphere, const Work& work) {
    ClimateResponse response;
    std::vector<Trial> trials;
    for (const bool detrended : {false, true}) {
        for (const ClimateWindow& window : climate_windows(hemisphere)) {
            PairedYears pairs = paired_years(chronology, window_means(climate, window));
            pairs = detrended ? detrended_pairs(std::move(pairs)) : std::move(pairs);
            const WindowCorrelation found = correlated(window, detrended, pairs);
            (detrended ? response.detrended : response.as_is).push_back(found);
            if (found.r) {
                trials.push_back({std::move(pairs), found});
            }
        }
    }
    response.tried = static_cast<int>(trials.size());
    if (trials.empty()) {
        return response;
    }
    const auto strongest =
        std::ranges::max_element(trials, {}, [](const Trial& one) { return std::abs(*one.found.r); });
    response.strongest = strongest->found;
    response.block = block_years(strongest->pairs.size());
    response.draws = climate_draws;
    response.chance = chance_of(std::abs(*strongest->found.r), trials, chronology, work);
    response.running = running(*strongest, chronology, climate);
    return response;
}

} // namespace pithward::results
