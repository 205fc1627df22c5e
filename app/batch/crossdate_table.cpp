#include "app/batch/crossdate_table.h"

#include <algorithm>
#include <cmath>
#include <cstdio>

namespace pithward::batch {

namespace {

constexpr double in_percent = 100.0;

/// t of series that are the same has no bounds.
double shown_t(double t) {
    constexpr double most = 999.0;
    return std::min(most, t);
}

/// As "97 % sure".
std::string sureness(double probability) {
    constexpr double nearly_all = 0.995;
    return (probability > nearly_all ? "over 99" : std::to_string(std::lround(in_percent * probability))) + " % sure";
}

void add_words(std::string& said, const std::string& words) {
    said += said.empty() ? "" : "; ";
    said += words;
}

std::string said_of(const dating::DatedResult& series) {
    std::string said;
    for (const dating::Slip& slip : series.slips) {
        add_words(said, words_of(slip) + ", " + sureness(slip.probability));
    }
    if (series.whole_shift != 0) {
        add_words(said, "add " + std::to_string(series.whole_shift) + " to its last year" +
                            (series.whole_shift > 0 ? ", or a ring too many at the bark"
                                                    : ", or a ring too few at the bark"));
    }
    for (const std::string& remark : series.remarks) {
        add_words(said, remark);
    }
    constexpr double chance_in_a_hundred = 0.01;
    if (said.empty() && series.agreement.chance > chance_in_a_hundred) {
        said = "tells little: it hardly goes with the others";
    }
    return said;
}

void print_dated(const dating::DatedResult& series) {
    const std::string years = std::to_string(series.first_year) + " to " + std::to_string(series.last_year);
    std::printf("%-12s %-16s", series.id.c_str(), years.c_str());
    if (series.agreement.r) {
        std::printf(" %6.2f %6.1f %6.2f", *series.agreement.r, shown_t(series.agreement.t),
                    series.signs.share.value_or(0.5));
    } else {
        std::printf(" %6s %6s %6s", "-", "-", "-");
    }
    std::printf("  %s\n", said_of(series).c_str());
    for (const auto& places : series.places) {
        for (const dating::SlipPlace& place : places) {
            std::printf("%-12s   look at %s, x %.0f, y %.0f (%.0f %%), ring %d: %s\n", "", place.place.scan.c_str(),
                        place.place.at.x, place.place.at.y, in_percent * place.probability, place.ring_year,
                        place.place.reason.c_str());
        }
    }
}

void print_undated(const dating::UndatedResult& series) {
    std::printf("%-12s %d rings without years%s\n", series.id.c_str(), series.rings,
                series.places.empty() ? ": no position with enough years in common" : ", positions by rank:");
    for (const dating::RankedMatch& place : series.places) {
        std::printf("%-12s best at %d to %d, r %.2f, t %.1f, %d years in common, by chance %.2g\n", "",
                    series.first_year_at(place), series.last_year_at(place), place.match.r, place.match.t,
                    place.match.overlap, place.chance_of_best);
    }
}

void print_site(const dating::SiteResult& site) {
    const auto print = [](const char* name, const std::optional<double>& value) {
        if (value) {
            std::printf(", %s %.2f", name, *value);
        }
    };
    std::printf("%d series of %d trees", site.series, site.trees);
    print("mean r with the others", site.series_intercorrelation);
    print("mean r of pairs", site.variance.r_bar);
    print("EPS", site.variance.eps);
    if (site.variance.eps_low && site.variance.eps_high) {
        std::printf(" (%.2f to %.2f)", *site.variance.eps_low, *site.variance.eps_high);
    }
    print("mean sensitivity", site.mean_sensitivity);
    std::printf("\n");
}

void print_pairs(const std::vector<dating::PairResult>& pairs, const std::vector<dating::DatedResult>& series) {
    std::printf("\n%-12s %-12s %6s %6s %6s  %s\n", "series", "with", "years", "r", "t", "best of all shifts");
    for (const dating::PairResult& pair : pairs) {
        std::printf("%-12s %-12s %6d", series[pair.first].id.c_str(), series[pair.second].id.c_str(), pair.overlap);
        if (pair.r) {
            std::printf(" %6.2f %6.1f", *pair.r, shown_t(pair.t));
        } else {
            std::printf(" %6s %6s", "-", "-");
        }
        if (!pair.best) {
            std::printf("  no shift with %d years in common\n", dating::least_pair_overlap);
        } else if (pair.best->match.shift == 0) {
            std::printf("  as dated, by chance %.2g\n", pair.best->chance_of_best);
        } else {
            std::printf("  %+d, %d years, r %.2f, t %.1f, by chance %.2g\n", pair.best->match.shift,
                        pair.best->match.overlap, pair.best->match.r, shown_t(pair.best->match.t),
                        pair.best->chance_of_best);
        }
    }
}

} // namespace

void print_crossdate(const dating::CrossdateResult& result) {
    if (!result.dated.empty()) {
        std::printf("%-12s %-16s %6s %6s %6s  %s\n", "series", "years", "r", "t", "signs", "what the others say");
    }
    for (const dating::DatedResult& series : result.dated) {
        print_dated(series);
    }
    for (const dating::UndatedResult& series : result.undated) {
        print_undated(series);
    }
    if (!result.dated.empty()) {
        print_site(result.site);
    }
    if (result.pairs) {
        print_pairs(*result.pairs, result.dated);
    }
}

} // namespace pithward::batch
