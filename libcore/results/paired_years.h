#pragma once

#include "libcore/dating/year_series.h"

#include <Eigen/Core>

#include <cstdint>
#include <optional>
#include <random>
#include <vector>

namespace pithward::results {

/// The years that two series have in common, oldest first.
struct PairedYears {
    std::vector<int> years;
    Eigen::ArrayXd growth;
    Eigen::ArrayXd climate;

    [[nodiscard]] int size() const { return static_cast<int>(years.size()); }
};

[[nodiscard]] PairedYears paired_years(const dating::YearSeries& growth, const dating::YearSeries& climate);
/// Those from one year to another.
[[nodiscard]] PairedYears stretch(const PairedYears& pairs, int from, int to);

/// Values less their least-squares line over the years. Requires three values or more.
[[nodiscard]] Eigen::ArrayXd without_line(const std::vector<int>& years, const Eigen::ArrayXd& values);

/// Pearson's correlation; nothing where one of both does not vary.
[[nodiscard]] std::optional<double> correlation(const Eigen::ArrayXd& a, const Eigen::ArrayXd& b);

/// Draws of places in blocks, round the end to the beginning; the same on every machine.
class BlockDraws {
public:
    BlockDraws(int size, int block)
        : size_(size)
        , block_(block) {}

    /// As many places as there are.
    [[nodiscard]] std::vector<int> next();

private:
    int size_;
    int block_;
    std::mt19937_64 generator_{20241109};
};

/// The length of a block for so many years: the cube root, rounded up.
[[nodiscard]] int block_years(int years);

} // namespace pithward::results
