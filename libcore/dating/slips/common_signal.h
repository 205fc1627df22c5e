#pragma once

#include <Eigen/Core>

#include <vector>

namespace pithward::dating {

/// What one series says of the growth that the site's trees had in common.
struct Voice {
    Eigen::ArrayXd
        values;           ///< Year-to-year variation of unit variance over the site's years; NaN where it says nothing.
    double loading = 0.0; ///< Its correlation with the common growth, between 0 and 1.
    int tree = 0;         ///< Series of one tree have one number.
};

/// The growth in common, year by year, as some of the series tell it.
struct CommonSignal {
    int first_year = 0;
    Eigen::ArrayXd growth;      ///< Its best guess, in units of its own standard deviation; 0 where nobody knows.
    Eigen::ArrayXd reliability; ///< Variance of that guess: 0 where nobody knows, toward 1 with many good series.

    [[nodiscard]] double growth_in(int year) const { return has(year) ? growth(year - first_year) : 0.0; }
    [[nodiscard]] double reliability_in(int year) const { return has(year) ? reliability(year - first_year) : 0.0; }

private:
    [[nodiscard]] bool has(int year) const { return year >= first_year && year - first_year < growth.size(); }
};

/// For each series, the signal in all others. Other cores of its tree count like any: one voice among all, they tell
/// little more of the year than the next tree, but tell it where few others do.
///
/// The best linear guess in the model of one factor, value = loading * growth + noise with the variance 1 - loading^2
/// (regression scores of factor analysis, after Thomson; from memory): with w = loading / (1 - loading^2),
/// growth = sum(w value) / (1 + sum(w loading)), reliability = sum(w loading) / (1 + sum(w loading)). A series that is
/// far from the others in a year counts less there: its weight is that of Student's t with 5 degrees of freedom. So a
/// few misdated series do little harm.
[[nodiscard]] std::vector<CommonSignal> signals_of_others(const std::vector<Voice>& voices, int first_year);

} // namespace pithward::dating
