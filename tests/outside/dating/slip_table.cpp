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
    constexpr std::array bounds{0.5, 0.7, 0.9, 0.99, 1.01};
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

void print_chance(const std::vector<NamedSite>& sites) {
    std::puts("\n| jump, years | series | told at 0.5 % | at 0.9 % | at 0.99 % | sum of stated probabilities |");
    std::puts("| --- | --- | --- | --- | --- | --- |");
    for (const int jump : {7, 9, 11, 13}) {
        TrialOptions options;
        options.mistakes = 0;
        options.slips.prior.jump = jump;
        const auto series = run_trial(sites, options);
        double sum = 0.0;
        for (const TrialSeries& one : series) {
            double most = 0.0;
            for (const dating::Slip& slip : one.told) {
                most = std::max(most, slip.probability);
            }
            sum += most;
        }
        std::printf("| %d | %zu | %.2f | %.2f | %.2f | %.1f |\n", jump, series.size(), 100 * score(series, 0.5).alarmed,
                    100 * score(series, 0.9).alarmed, 100 * score(series, 0.99).alarmed, sum);
    }
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
    for (const double probability : {0.5, 0.6, 0.7, 0.9}) {
        print_scores("r 0.35 and more", usual, probability);
    }
    options.least_r = 0.45;
    const auto better = trials(sites, options, draws);
    for (const double probability : {0.5, 0.6, 0.7}) {
        print_scores("r 0.45 and more", better, probability);
    }
    print_calibration(usual);
    options.least_r = 0.35;
    options.mistakes = 2;
    const PairScores two = score_pairs(trials(sites, options, draws), 0.5);
    std::printf("\nTwo mistakes in %d series: both found %.1f %%, both within 5 years %.1f %% (same direction %.1f %%, "
                "opposite %.1f %%)\n",
                two.series, 100 * two.both_found, 100 * two.both_within_5, 100 * two.same_within_5,
                100 * two.opposite_within_5);
    print_chance(sites);
    return 0;
}
