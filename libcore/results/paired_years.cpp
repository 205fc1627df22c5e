#include "libcore/results/paired_years.h"

#include <algorithm>
#include <cmath>

namespace pithward::results {

PairedYears paired_years(const dating::YearSeries& growth, const dating::YearSeries& climate) {
    PairedYears pairs;
    std::vector<double> a;
    std::vector<double> b;
    for (int k = 0; k < growth.size(); ++k) {
        const int year = growth.first_year + k;
        const double beside = climate.at(year);
        if (!std::isnan(growth.values(k)) && !std::isnan(beside)) {
            pairs.years.push_back(year);
            a.push_back(growth.values(k));
            b.push_back(beside);
        }
    }
    pairs.growth = Eigen::Map<const Eigen::ArrayXd>(a.data(), static_cast<Eigen::Index>(a.size()));
    pairs.climate = Eigen::Map<const Eigen::ArrayXd>(b.data(), static_cast<Eigen::Index>(b.size()));
    return pairs;
}

PairedYears stretch(const PairedYears& pairs, int from, int to) {
    const auto begin = std::ranges::lower_bound(pairs.years, from) - pairs.years.begin();
    const auto end = std::ranges::upper_bound(pairs.years, to) - pairs.years.begin();
    const auto length = std::max<std::ptrdiff_t>(0, end - begin);
    return {{pairs.years.begin() + begin, pairs.years.begin() + begin + length},
            pairs.growth.segment(begin, length),
            pairs.climate.segment(begin, length)};
}

Eigen::ArrayXd without_line(const std::vector<int>& years, const Eigen::ArrayXd& values) {
    Eigen::ArrayXd time(values.size());
    std::ranges::transform(years, time.begin(), [](int year) { return static_cast<double>(year); });
    time -= time.mean();
    const double slope = (time * (values - values.mean())).sum() / time.square().sum();
    return values - values.mean() - slope * time;
}

std::optional<double> correlation(const Eigen::ArrayXd& a, const Eigen::ArrayXd& b) {
    if (a.size() < 3 || a.size() != b.size()) {
        return std::nullopt;
    }
    const Eigen::ArrayXd from_a = a - a.mean();
    const Eigen::ArrayXd from_b = b - b.mean();
    const double spread = std::sqrt(from_a.square().sum()) * std::sqrt(from_b.square().sum());
    // What stays of constants is rounding.
    const double rounding = 1e-12 * (1.0 + a.abs().maxCoeff()) * (1.0 + b.abs().maxCoeff());
    if (!(spread > rounding)) {
        return std::nullopt;
    }
    return std::clamp((from_a * from_b).sum() / spread, -1.0, 1.0);
}

std::vector<int> BlockDraws::next() {
    std::vector<int> places;
    places.reserve(static_cast<std::size_t>(size_));
    while (static_cast<int>(places.size()) < size_) {
        const int begin = static_cast<int>(generator_() % static_cast<std::uint64_t>(size_));
        for (int k = 0; k < block_ && static_cast<int>(places.size()) < size_; ++k) {
            places.push_back((begin + k) % size_);
        }
    }
    return places;
}

int block_years(int years) {
    return std::max(1, static_cast<int>(std::ceil(std::cbrt(static_cast<double>(years)) - 1e-9)));
}

} // namespace pithward::results
