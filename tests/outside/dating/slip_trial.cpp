#include "tests/outside/dating/slip_trial.h"

#include "libcore/dating/agreement.h"
#include "libcore/dating/index_series.h"
#include "libcore/dating/trees.h"
#include "libcore/formats/series_formats.h"
#include "tests/outside/archive/archive_support.h"

#include <algorithm>
#include <cmath>

namespace pithward::test {

using namespace dating;

namespace {

std::vector<TreeSeries> site_from(const std::filesystem::path& file) {
    constexpr int fewest_rings = 50;
    std::vector<TreeSeries> site;
    std::vector<std::string> ids;
    const auto table = read_series_file(file);
    for (const WidthSeries& series : table ? table->series : std::vector<WidthSeries>{}) {
        const YearSeries widths = widths_of(series);
        if (widths.size() >= fewest_rings) {
            site.push_back({series.id, series.id, widths});
            ids.push_back(series.id);
        }
    }
    const Trees trees = trees_by_stem(ids);
    for (std::size_t i = 0; i < site.size(); ++i) {
        site[i].tree = trees.of_series[i];
    }
    return site;
}

/// What each series is held against, by plain indices.
struct Plain {
    std::vector<YearSeries> indices;
    std::vector<YearSeries> others;
};

Plain plain_indices(const std::vector<TreeSeries>& site) {
    Plain plain;
    for (const TreeSeries& series : site) {
        plain.indices.push_back(index_series(series.widths, IndexOptions()).index);
    }
    plain.others = means_of_other_trees(site_table(plain.indices, tree_numbers(site)));
    return plain;
}

/// The order in which series are drawn for a mistake.
std::vector<std::size_t> drawn_order(std::size_t n, Lot& lot) {
    std::vector<std::size_t> order(n);
    for (std::size_t i = 0; i < n; ++i) {
        order[i] = i;
    }
    for (std::size_t i = n; i > 1; --i) {
        std::swap(order[i - 1], order[static_cast<std::size_t>(lot.from_to(0, static_cast<int>(i) - 1))]);
    }
    return order;
}

/// Runs one site; `takes_part` says which series count.
std::vector<TrialSeries> run_site(const NamedSite& named, const TrialOptions& options) {
    const std::vector<TreeSeries>& untouched = named.series;
    const Plain plain = plain_indices(untouched);
    const auto takes_part = [&](std::size_t i) {
        constexpr int fewest_rings = 60;
        const auto r = agreement(plain.indices[i], plain.others[i]).r;
        return untouched[i].widths.size() >= fewest_rings && r.value_or(0.0) >= options.least_r;
    };
    unsigned seed = options.seed;
    for (const char c : named.name) {
        seed = seed * 31 + static_cast<unsigned char>(c);
    }
    Lot lot(seed);
    std::vector<TreeSeries> site = untouched;
    std::vector<std::vector<MadeMistake>> made(site.size());
    std::size_t left = options.mistakes == 0 ? 0 : (site.size() + 4) / 5;
    for (const std::size_t i : drawn_order(site.size(), lot)) {
        const int room = options.mistakes > 1 ? 110 : 60;
        if (left > 0 && takes_part(i) && site[i].widths.size() >= room) {
            made[i] = make_mistakes(site[i].widths, options.mistakes, lot);
            --left;
        }
    }
    const std::vector<SeriesSlips> found = find_slips(site, options.slips);
    std::vector<TrialSeries> results;
    for (std::size_t i = 0; i < site.size(); ++i) {
        if (takes_part(i)) {
            const bool look = made[i].empty() && !found[i].slips.empty() && options.slips.prior.jump == 1;
            const bool true_alarm = look && stands_up_to_a_look(untouched[i], plain.others[i], found[i].alignment);
            results.push_back({named.name, site[i].id, made[i], found[i].slips, true_alarm});
        }
    }
    return results;
}

} // namespace

std::vector<NamedSite> archive_sites(int every) {
    std::vector<NamedSite> sites;
    int n = 0;
    for (const auto& file : decadal_files("sites")) {
        if (n++ % every == 0) {
            sites.push_back({file.stem().string(), site_from(file)});
        }
    }
    return sites;
}

std::vector<TrialSeries> run_trial(const std::vector<NamedSite>& sites, const TrialOptions& options) {
    std::vector<TrialSeries> all;
    for (const NamedSite& site : sites) {
        const auto results = run_site(site, options);
        all.insert(all.end(), results.begin(), results.end());
    }
    return all;
}

bool stands_up_to_a_look(const TreeSeries& series, const YearSeries& others, const Alignment& alignment) {
    constexpr int fewest_rings = 10;
    constexpr double deviations = 2.5;
    const YearSeries index = index_series(series.widths, IndexOptions()).index;
    const auto shift_of = [&](int k) {
        int best = 0;
        alignment.shift.row(k).maxCoeff(&best);
        return best - most_shift;
    };
    const int n = static_cast<int>(alignment.shift.rows());
    for (int from = 0; from < n;) {
        int to = from;
        while (to + 1 < n && shift_of(to + 1) == shift_of(from)) {
            ++to;
        }
        const YearSeries part{index.first_year + from, index.values.segment(from, to - from + 1)};
        if (shift_of(from) != 0 && part.size() >= fewest_rings) {
            const Agreement as_told = agreement(part, others, shift_of(from));
            const Agreement as_dated = agreement(part, others);
            const double z = std::atanh(std::min(0.99, as_told.r.value_or(0.0))) - std::atanh(as_dated.r.value_or(0.0));
            if (z * std::sqrt(std::max(0, as_told.overlap - 3) / 2.0) >= deviations) {
                return true;
            }
        }
        from = to + 1;
    }
    return false;
}

} // namespace pithward::test
