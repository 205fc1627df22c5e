#pragma once

#include "libcore/dating/year_series.h"

#include <Eigen/Core>

#include <string>
#include <vector>

namespace pithward::dating {

/// A series of a site with the tree that it is from.
struct TreeSeries {
    std::string id;
    std::string tree;
    YearSeries widths; ///< In mm; 0 for a locally absent ring.
};

/// Series side by side: a row a year, a column a series, NaN where one has no value.
struct SiteTable {
    int first_year = 0;
    Eigen::ArrayXXd values;
    std::vector<int> trees; ///< By series; series of one tree have one number, from 0.

    [[nodiscard]] int years() const { return static_cast<int>(values.rows()); }
    [[nodiscard]] int series() const { return static_cast<int>(values.cols()); }
    [[nodiscard]] YearSeries column(int series) const { return {first_year, values.col(series)}; }
    [[nodiscard]] int tree_count() const;
};

/// Numbers for the trees of a site, in order of first sight.
[[nodiscard]] std::vector<int> tree_numbers(const std::vector<TreeSeries>& site);

[[nodiscard]] SiteTable site_table(const std::vector<YearSeries>& series, const std::vector<int>& trees);

/// For each series the mean of all others of other trees, with the weights of the biweight mean of all series of the
/// year. So no series has a say in what it is held against but by the weights. NaN where no other tree has a value.
[[nodiscard]] std::vector<YearSeries> means_of_other_trees(const SiteTable& table);

/// The biweight mean of all series, year by year.
[[nodiscard]] YearSeries mean_series(const SiteTable& table);

} // namespace pithward::dating
