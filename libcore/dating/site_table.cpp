#include "libcore/dating/site_table.h"

#include "libcore/dating/robust_mean.h"

#include <algorithm>
#include <map>
#include <set>

namespace pithward::dating {

int SiteTable::tree_count() const {
    return static_cast<int>(std::set<int>(trees.begin(), trees.end()).size());
}

std::vector<int> tree_numbers(const std::vector<TreeSeries>& site) {
    std::map<std::string, int> numbers;
    std::vector<int> result;
    result.reserve(site.size());
    for (const TreeSeries& series : site) {
        result.push_back(numbers.try_emplace(series.tree, static_cast<int>(numbers.size())).first->second);
    }
    return result;
}

SiteTable site_table(const std::vector<YearSeries>& series, const std::vector<int>& trees) {
    SiteTable table;
    table.trees = trees;
    int last = std::numeric_limits<int>::min();
    int first = std::numeric_limits<int>::max();
    for (const YearSeries& one : series) {
        if (one.size() > 0) {
            first = std::min(first, one.first_year);
            last = std::max(last, one.last_year());
        }
    }
    const int years = last < first ? 0 : last - first + 1;
    table.first_year = years == 0 ? 0 : first;
    table.values = Eigen::ArrayXXd::Constant(years, static_cast<Eigen::Index>(series.size()), none);
    for (std::size_t i = 0; i < series.size(); ++i) {
        if (series[i].size() > 0) {
            table.values.col(static_cast<Eigen::Index>(i)).segment(series[i].first_year - first, series[i].size()) =
                series[i].values;
        }
    }
    return table;
}

std::vector<YearSeries> means_of_other_trees(const SiteTable& table) {
    const Eigen::Index n = table.values.cols();
    const Eigen::Index years = table.values.rows();
    const Eigen::ArrayXXd there = table.values.unaryExpr([](double v) { return std::isnan(v) ? 0.0 : v; });
    Eigen::ArrayXXd weights(years, n);
    for (Eigen::Index y = 0; y < years; ++y) {
        weights.row(y) = biweight_weights(table.values.row(y).transpose()).transpose();
    }
    std::map<int, std::pair<Eigen::ArrayXd, Eigen::ArrayXd>> own; // Sum of values and of weights by tree.
    for (Eigen::Index i = 0; i < n; ++i) {
        const Eigen::ArrayXd nothing = Eigen::ArrayXd::Zero(years);
        auto& [values, sum] = own.try_emplace(table.trees[i], nothing, nothing).first->second;
        values += weights.col(i) * there.col(i);
        sum += weights.col(i);
    }
    const Eigen::ArrayXd all_values = (weights * there).rowwise().sum();
    const Eigen::ArrayXd all_weights = weights.rowwise().sum();
    std::vector<YearSeries> means;
    for (Eigen::Index i = 0; i < n; ++i) {
        const auto& [values, sum] = own.at(table.trees[i]);
        constexpr double nobody = 1e-9; // What rounding leaves of all weights less all weights.
        const Eigen::ArrayXd others = all_weights - sum;
        means.push_back({table.first_year, (others > nobody).select((all_values - values) / others, none)});
    }
    return means;
}

YearSeries mean_series(const SiteTable& table) {
    YearSeries result{table.first_year, Eigen::ArrayXd::Constant(table.values.rows(), none)};
    for (Eigen::Index y = 0; y < table.values.rows(); ++y) {
        result.values(y) = biweight_mean(table.values.row(y).transpose());
    }
    return result;
}

} // namespace pithward::dating
