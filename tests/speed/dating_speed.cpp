// What dating costs beside the bare matrix products of the same work: see docs/speed.md.
//   dating_speed [SERIES YEARS]    default 1000 300
#include "libcore/dating/crossdate.h"
#include "libcore/dating/pairs.h"

#include <Eigen/Core>

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <random>

namespace {

using namespace pithward::dating;
using Eigen::MatrixXd;

/// Processor seconds of one thread, so that other work on the machine weighs less.
template <typename Work>
double seconds(Work&& work) {
    const std::clock_t begin = std::clock();
    work();
    return static_cast<double>(std::clock() - begin) / CLOCKS_PER_SEC;
}

/// Log-normal widths that share a part of their growth; each its own tree.
std::vector<TreeSeries> made_up_site(int series, int years) {
    std::mt19937 generator(7);
    std::normal_distribution<double> normal;
    Eigen::ArrayXd growth(years);
    for (double& value : growth) {
        value = normal(generator);
    }
    std::vector<TreeSeries> site;
    for (int i = 0; i < series; ++i) {
        TreeSeries one{"S" + std::to_string(i), "S" + std::to_string(i), {1700, Eigen::ArrayXd(years)}};
        for (int y = 0; y < years; ++y) {
            one.widths.values(y) = std::exp(0.3 * (0.6 * growth(y) + 0.8 * normal(generator)));
        }
        site.push_back(std::move(one));
    }
    return site;
}

double fastest_product(const MatrixXd& columns) {
    MatrixXd product;
    double fastest = 1e9;
    for (int run = 0; run < 5; ++run) {
        fastest = std::min(fastest, seconds([&] { product.noalias() = columns.transpose() * columns; }));
    }
    return fastest;
}

double bare_products(const MatrixXd& columns, int least_overlap) {
    MatrixXd product;
    return seconds([&] {
        for (Eigen::Index shift = 0; shift + least_overlap <= columns.rows(); ++shift) {
            const Eigen::Index rows = columns.rows() - shift;
            product.noalias() = columns.topRows(rows).transpose() * columns.bottomRows(rows);
        }
    });
}

} // namespace

int main(int argc, char** argv) {
    constexpr int least_overlap = 30;
    const int series = argc > 2 ? std::atoi(argv[1]) : 1000;
    const int years = argc > 2 ? std::atoi(argv[2]) : 300;
    Eigen::setNbThreads(1);
    const auto site = made_up_site(series, years);
    MatrixXd columns(years, series);
    std::vector<YearSeries> indices;
    std::vector<int> trees;
    for (int i = 0; i < series; ++i) {
        indices.push_back(site[i].widths);
        trees.push_back(i);
        columns.col(i) = site[i].widths.values - site[i].widths.values.mean();
    }
    const int shifts = 2 * (years - least_overlap) + 1;
    const double product = fastest_product(columns);
    std::printf("one centred product %d x %d x %d: %.3f s\n", series, years, series, product);
    std::fflush(stdout);

    CrossdateResult found;
    const double all = seconds([&] { found = crossdate({site, {}, {}}, {}); });
    std::printf("crossdate, %d series, %d shifts, slips: %.2f s, %.1f products for each hundred shifts\n", series,
                shifts, all, all / (product * shifts / 100.0));
    std::fflush(stdout);
    const double slips = seconds([&] { (void)find_slips(site, {}); });
    std::printf("  of it slips: %.2f s\n", slips);

    const SiteTable table = site_table(indices, trees);
    const double bare = bare_products(columns, least_overlap);
    PairMatches matches;
    const double pairs = seconds([&] { matches = every_pair_at_every_shift(table, least_overlap); });
    const double pair_shifts = 0.5 * series * (series - 1.0) * shifts;
    std::printf(
        "every pair at every shift: %.2f s, bare products %.2f s, times %.2f; %.3g pair-shifts, %.3g a second\n", pairs,
        bare, pairs / bare, pair_shifts, pair_shifts / pairs);
    return 0;
}
