#include "tests/dating/made_up.h"

#include <cmath>
#include <numbers>

namespace pithward::test {

using dating::TreeSeries;
using dating::YearSeries;

Eigen::ArrayXd array(std::initializer_list<double> values) {
    return Eigen::Map<const Eigen::ArrayXd>(values.begin(), static_cast<Eigen::Index>(values.size()));
}

YearSeries years_from(int first_year, std::initializer_list<double> values) {
    return {first_year, array(values)};
}

double Dice::normal() {
    const double radius = std::sqrt(-2.0 * std::log(uniform()));
    return radius * std::cos(2.0 * std::numbers::pi * uniform());
}

std::vector<TreeSeries> made_up_site(const MadeUpSite& how) {
    Dice dice(how.seed);
    Eigen::ArrayXd growth(how.years);
    for (double& value : growth) {
        value = dice.normal();
    }
    constexpr double size = 0.3;
    const double noise = std::sqrt(1.0 - how.r * how.r);
    std::vector<TreeSeries> site;
    for (int tree = 0; tree < how.trees; ++tree) {
        Eigen::ArrayXd own(how.years);
        for (double& value : own) {
            value = dice.normal();
        }
        for (int core = 0; core < how.cores; ++core) {
            TreeSeries series;
            series.tree = "T" + std::to_string(tree + 10);
            series.id = series.tree + static_cast<char>('a' + core);
            series.widths = {how.first_year, Eigen::ArrayXd(how.years)};
            for (int y = 0; y < how.years; ++y) {
                const double trend = 0.5 * std::exp(-y / 60.0);
                const double apart = 0.6 * own(y) + 0.8 * dice.normal();
                series.widths.values(y) = std::exp(trend + size * (how.r * growth(y) + noise * apart));
            }
            site.push_back(std::move(series));
        }
    }
    return site;
}

namespace {

/// Puts `now` in the place of the rings `from` to `to` and holds the last year.
void replace_rings(YearSeries& widths, int from, int to, std::initializer_list<double> now) {
    const int before = from - widths.first_year;
    const int after = widths.last_year() - to;
    Eigen::ArrayXd values(before + static_cast<int>(now.size()) + after);
    values << widths.values.head(before), array(now), widths.values.tail(after);
    widths.first_year += widths.size() - static_cast<int>(values.size());
    widths.values = values;
}

} // namespace

void merge_rings(YearSeries& widths, int year) {
    replace_rings(widths, year - 1, year, {widths.at(year - 1) + widths.at(year)});
}

void split_ring(YearSeries& widths, int year, double outer_share) {
    const double width = widths.at(year);
    replace_rings(widths, year, year, {width * (1.0 - outer_share), width * outer_share});
}

void lose_ring(YearSeries& widths, int year) {
    replace_rings(widths, year, year, {});
}

} // namespace pithward::test
