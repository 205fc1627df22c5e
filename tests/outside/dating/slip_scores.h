#pragma once

#include "tests/outside/dating/slip_trial.h"

namespace pithward::test {

/// What came of a trial, as shares.
struct SlipScores {
    int mistaken = 0;      ///< Series with one mistake.
    int clean = 0;         ///< Untouched series.
    double found = 0.0;    ///< Of the mistaken, with the right kind.
    double within_5 = 0.0; ///< And the year within 5; of all mistaken.
    double within_2 = 0.0;
    double exact = 0.0;
    double range_holds = 0.0;                    ///< Of the found, the 90 % range holds the year.
    int median_range = 0;                        ///< Years.
    double alarmed = 0.0;                        ///< Of the clean.
    double alarmed_without_archive_errors = 0.0; ///< Series whose alarm stands up to a look left out of both.
    int archive_errors = 0;
};

/// A probability that every slip has that is told.
inline constexpr double whatever_told = 0.0;

/// Counts slips of at least this probability.
[[nodiscard]] SlipScores score(const std::vector<TrialSeries>& series, double probability);

/// The highest probability stated of each series of which a slip is told.
[[nodiscard]] std::vector<double> likeliest_of_each(const std::vector<TrialSeries>& series);

/// The same for series with two mistakes.
struct PairScores {
    int series = 0;
    double both_found = 0.0;
    double both_within_5 = 0.0;
    double same_within_5 = 0.0;     ///< Of those in the same direction.
    double opposite_within_5 = 0.0; ///< Of those in opposite directions.
};
[[nodiscard]] PairScores score_pairs(const std::vector<TrialSeries>& series, double probability);

} // namespace pithward::test
