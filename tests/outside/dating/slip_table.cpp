// Prints the tables of docs/accuracy.md: how well slips are found on measured sites of the archive.
//   slip_table [DRAWS]    draws of mistakes to add up; default 3
#include "tests/outside/dating/slip_scores.h"

#include <array>
#include <cstdio>
#include <cstdlib>

namespace {

using namespace pithward;
using namespace pithward::test;

std::vector<TrialSeries> trials(const std::vector<NamedSite>& sites, TrialOptions options, int draws) {
    std::vector<TrialSeries> all;
    for (int draw = 0; draw < draws; ++draw) {
        options.seed = static_cast<unsigned>(draw + 1);
        const auto more = run_trial(sites, options);
        all.insert(all.end(), more.begin(), more.end());
    }
    return all;
}

void print_scores(const char* name, const std::vector<TrialSeries>& series, double probability) {
    const SlipScores s = score(series, probability);
    std::printf("| %s | %.2f | %d | %.1f | %.1f | %.1f | %.1f | %.1f | %d | %d | %.2f | %.2f |\n", name, probability,
                s.mistaken, 100 * s.found, 100 * s.within_5, 100 * s.within_2, 100 * s.exact, 100 * s.range_holds,
                s.median_range, s.clean, 100 * s.alarmed, 100 * s.alarmed_without_archive_errors);
}

/// Of the slips told with about one probability, how many are there.
void print_calibration(const std::vector<TrialSeries>& series) {
    constexpr std::array bounds{0.0, 0.3, 0.5, 0.7, 0.9, 0.99, 1.01};
    std::puts("\n| stated probability | told | mean stated | true | true, archive errors counted as true |");
    std::puts("| --- | --- | --- | --- | --- |");
    for (std::size_t b = 0; b + 1 < bounds.size(); ++b) {
        int told = 0;
        int right = 0;
        int with_errors = 0;
        double stated = 0.0;
        for (const TrialSeries& one : series) {
            for (const dating::Slip& slip : one.told) {
                if (slip.probability >= bounds[b] && slip.probability < bounds[b + 1]) {
                    const bool hit = !one.made.empty() && slip.kind == one.made.front().kind &&
                                     std::abs(slip.year - one.made.front().year) <= 20;
                    ++told;
                    right += hit ? 1 : 0;
                    with_errors += hit || one.archive_error ? 1 : 0;
                    stated += slip.probability;
                }
            }
        }
        if (told > 0) {
            std::printf("| %.2f to %.2f | %d | %.3f | %.3f | %.3f |\n", bounds[b], std::min(1.0, bounds[b + 1]), told,
                        stated / told, static_cast<double>(right) / told, static_cast<double>(with_errors) / told);
        }
    }
}

/// Jumps that nobody makes, beside the slips told of the same untouched series: what is told of the one kind is false,
/// and as much of the other should be, by its own stated probabilities.
void print_chance(const std::vector<NamedSite>& sites) {
    constexpr std::array bounds{0.0, 0.3, 0.5, 0.7, 0.9, 0.99, 1.01};
    constexpr std::array jumps{1, 9, 11, 13};
    std::array<std::vector<double>, jumps.size()> told;
    for (std::size_t j = 0; j < jumps.size(); ++j) {
        TrialOptions options;
        options.mistakes = 0;
        options.slips.prior.jump = jumps[j];
        told[j] = likeliest_of_each(run_trial(sites, options));
    }
    std::puts("\n| stated probability | series told of | false by what is stated | jumps of 9 | 11 | 13 years |");
    std::puts("| --- | --- | --- | --- | --- | --- |");
    const auto row = [&](double from, double below) {
        std::printf("| %.2f to %.2f |", from, std::min(1.0, below));
        for (std::size_t j = 0; j < jumps.size(); ++j) {
            int n = 0;
            double wrong = 0.0;
            for (const double p : told[j]) {
                const bool counts = p >= from && p < below;
                n += counts ? 1 : 0;
                wrong += counts ? std::max(0.0, 1.0 - p) : 0.0;
            }
            std::printf(" %d |", n);
            if (j == 0) {
                std::printf(" %.1f |", wrong);
            }
        }
        std::puts("");
    };
    for (std::size_t b = 0; b + 1 < bounds.size(); ++b) {
        row(bounds[b], bounds[b + 1]);
    }
    row(bounds.front(), bounds.back());
}

} // namespace

int main(int argc, char** argv) {
    const int draws = argc > 1 ? std::max(1, std::atoi(argv[1])) : 3;
    const auto sites = archive_sites();
    if (sites.empty()) {
        std::fputs("no archive files; set PITHWARD_ARCHIVE\n", stderr);
        return 2;
    }
    std::puts("| series | from | mistaken | found % | within 5 | within 2 | exact | range holds % | range | clean "
              "| alarmed % | without archive errors % |");
    std::puts("| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |");
    TrialOptions options;
    const auto usual = trials(sites, options, draws);
    for (const double probability : {0.0, 0.3, 0.5, 0.7}) {
        print_scores("r 0.35 and more", usual, probability);
    }
    options.least_r = 0.45;
    const auto better = trials(sites, options, draws);
    for (const double probability : {0.0, 0.3, 0.5}) {
        print_scores("r 0.45 and more", better, probability);
    }
    print_calibration(usual);
    options.least_r = 0.35;
    options.mistakes = 2;
    const PairScores two = score_pairs(trials(sites, options, draws), whatever_told);
    std::printf("\nTwo mistakes in %d series: both found %.1f %%, both within 5 years %.1f %% (same direction %.1f %%, "
                "opposite %.1f %%)\n",
                two.series, 100 * two.both_found, 100 * two.both_within_5, 100 * two.same_within_5,
                100 * two.opposite_within_5);
    print_chance(sites);
    return 0;
}
