#pragma once

#include "libcore/dating/year_series.h"
#include "libcore/results/climate_windows.h"
#include "libcore/specimen/work.h"

#include <optional>
#include <vector>

namespace pithward::results {

/// How a chronology goes with one window of months.
struct WindowCorrelation {
    ClimateWindow window;
    bool detrended = false;    ///< Both series less their straight line over the years in common.
    int years = 0;             ///< In common.
    std::optional<double> r;   ///< Pearson's correlation; nothing for fewer years than `least_climate_years`.
    std::optional<double> low; ///< 90 % interval by the block bootstrap.
    std::optional<double> high;
};

/// The same window over a stretch of years.
struct RunningCorrelation {
    int from = 0;
    int to = 0;
    WindowCorrelation correlation;
};

struct ClimateResponse {
    std::vector<WindowCorrelation> as_is;       ///< One for each window.
    std::vector<WindowCorrelation> detrended;   ///< Likewise.
    int tried = 0;                              ///< Correlations that were computed, of both kinds.
    std::optional<WindowCorrelation> strongest; ///< The greatest in size, of all that were tried.
    /// The probability that the greatest size of all that were tried is as great by chance. Nothing without any.
    std::optional<double> chance;
    std::vector<RunningCorrelation> running; ///< Of the strongest, over stretches of years; none if too short.
    int block = 0;                           ///< Years of a block; 0 where nothing was drawn.
    int draws = 0;
};

/// Fewer years in common tell nothing (ours).
inline constexpr int least_climate_years = 20;
inline constexpr int running_years = 30; ///< Of a stretch (ours).
inline constexpr int running_step = 5;

/// The correlation of a chronology with each window of months, as both are and with their straight lines taken off.
///
/// 1. Intervals: blocks of neighbouring years are drawn with replacement, both series together, 1,000 times from a
/// fixed
///    seed, the years in a ring (circular block bootstrap; H. R. Kuensch 1989, Annals of Statistics 17; D. N. Politis
///    and J. P. Romano 1992; from memory). A block has n^(1/3) years, rounded up: that order is usual (P. Hall, J. L.
///    Horowitz and B.-Y. Jing 1995, Biometrika 82; from memory), its factor of 1 is ours.
/// 2. Chance: the chronology alone is drawn anew in blocks, so that it keeps its persistence and has nothing to do with
///    the climate any more, and the greatest size of all correlations that were tried is noted, 1,000 times; told is
///    (1 + the number that reach what was found) / 1,001 (the maximum of all tests: P. H. Westfall and S. S. Young
///    1993, Resampling-Based Multiple Testing; from memory). Windows overlap and are not independent: this takes them
///    as they are.
[[nodiscard]] ClimateResponse climate_response(const dating::YearSeries& chronology, const MonthlyClimate& climate,
                                               Hemisphere hemisphere, const Work& work = {});

} // namespace pithward::results
