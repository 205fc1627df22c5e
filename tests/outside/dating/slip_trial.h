#pragma once

#include "libcore/dating/slips/find_slips.h"
#include "tests/outside/dating/mistakes.h"

#include <filesystem>
#include <string>
#include <vector>

namespace pithward::test {

/// How the search for slips is put to the test on measured sites.
struct TrialOptions {
    double least_r = 0.35; ///< Series that correlate less with the mean of the others are left aside.
    int mistakes = 1;      ///< In each of a fifth of the series; 0: none anywhere.
    unsigned seed = 1;
    int every = 1; ///< Take each so manieth site.
    dating::SlipOptions slips;
};

/// One series of a trial.
struct TrialSeries {
    std::string site;
    std::string id;
    std::vector<MadeMistake> made; ///< Empty for an untouched series.
    std::vector<dating::Slip> told;
    bool archive_error = false; ///< An untouched series whose alarm stands up to a look: see `stands_up_to_a_look`.
};

/// The sites of the archive as dating reads them, each with its name; series under 50 rings are left out.
struct NamedSite {
    std::string name;
    std::vector<dating::TreeSeries> series;
};
[[nodiscard]] std::vector<NamedSite> archive_sites(int every = 1);

/// Puts the mistakes into the sites, looks for slips, and answers with all series that take part.
[[nodiscard]] std::vector<TrialSeries> run_trial(const std::vector<NamedSite>& sites, const TrialOptions& options);

/// Whether an alarm on a series as the archive holds it is likely true. Correlations of plain indices with the mean of
/// the other trees tell, not the model: over a stretch of at least ten rings that is said to be shifted, the
/// correlation is higher there than at the given dates by 2.5 standard deviations of the difference of two (Fisher's
/// z).
[[nodiscard]] bool stands_up_to_a_look(const dating::TreeSeries& series, const dating::YearSeries& others,
                                       const dating::Alignment& alignment);

} // namespace pithward::test
