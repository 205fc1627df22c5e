#include "libcore/dating/chronology.h"

#include "libcore/dating/robust_mean.h"

#include <algorithm>
#include <cmath>
#include <random>
#include <set>

namespace pithward::dating {

namespace {

constexpr int draws = 500;
constexpr int fewest_trees = 3;

/// Whole numbers below a bound, the same from every library: the standard leaves the distributions open, not the
/// generator.
class Draw {
public:
    int below(int bound) { return static_cast<int>(generator_() % static_cast<std::uint64_t>(bound)); }

private:
    std::mt19937_64 generator_{20240607};
};

/// The indices of one year, tree by tree.
std::vector<std::vector<double>> by_tree(const SiteTable& table, int y) {
    std::vector<std::vector<double>> trees(table.trees.size());
    for (int i = 0; i < table.series(); ++i) {
        if (!std::isnan(table.values(y, i))) {
            trees[table.trees[i]].push_back(table.values(y, i));
        }
    }
    std::erase_if(trees, [](const auto& tree) { return tree.empty(); });
    return trees;
}

void add_interval(ChronologyYear& year, const std::vector<std::vector<double>>& trees, Draw& draw) {
    std::vector<double> means;
    for (int k = 0; k < draws; ++k) {
        std::vector<double> drawn;
        for (std::size_t n = 0; n < trees.size(); ++n) {
            const auto& tree = trees[draw.below(static_cast<int>(trees.size()))];
            drawn.insert(drawn.end(), tree.begin(), tree.end());
        }
        means.push_back(
            biweight_mean(Eigen::Map<const Eigen::ArrayXd>(drawn.data(), static_cast<Eigen::Index>(drawn.size()))));
    }
    std::ranges::sort(means);
    year.low = means[draws / 20];
    year.high = means[draws - 1 - draws / 20];
}

} // namespace

Chronology chronology(const std::vector<TreeSeries>& site, const IndexOptions& options, const Work& work) {
    Chronology result;
    std::vector<YearSeries> indices;
    std::vector<YearSeries> widths;
    for (const TreeSeries& series : site) {
        IndexSeries index = index_series(series.widths, options);
        if (!index.remark.empty()) {
            result.remarks.push_back("series " + series.id + ": " + index.remark);
        }
        indices.push_back(std::move(index.index));
        widths.push_back(series.widths);
    }
    const std::vector<int> trees = tree_numbers(site);
    const SiteTable table = site_table(indices, trees);
    Draw draw;
    for (int y = 0; y < table.years() && !work.stopped(); ++y) {
        ChronologyYear year;
        year.year = table.first_year + y;
        const auto here = by_tree(table, y);
        year.trees = static_cast<int>(here.size());
        year.series = count(table.values.row(y).transpose());
        if (year.series > 0) {
            year.value = biweight_mean(table.values.row(y).transpose());
        }
        if (year.trees >= fewest_trees) {
            add_interval(year, here, draw);
        }
        result.years.push_back(year);
        work.report(static_cast<double>(y + 1) / table.years());
    }
    result.variance = common_variance(table);
    result.running = running_variance(table);
    result.pointer_years = pointer_years(site_table(widths, trees));
    return result;
}

} // namespace pithward::dating
