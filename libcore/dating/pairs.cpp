#include "libcore/dating/pairs.h"

#include <algorithm>
#include <cmath>

namespace pithward::dating {

namespace {

using Eigen::ArrayXd;
using Eigen::ArrayXXd;
using Eigen::Index;
using Eigen::MatrixXd;

/// A table ready for products: values about their series' mean and of unit variance, 0 where there is none.
struct Columns {
    MatrixXd values;
    MatrixXd squares;
    MatrixXd there;
    std::vector<Index> first; ///< By series, rows that it covers.
    std::vector<Index> end;
    bool gaps = false;
};

Columns columns_of(const SiteTable& table) {
    Columns result;
    const Index years = table.values.rows();
    const Index n = table.values.cols();
    result.values.setZero(years, n);
    result.there.setZero(years, n);
    for (Index i = 0; i < n; ++i) {
        const ArrayXd column = table.values.col(i);
        const double middle = mean(column);
        const double size = deviation(column);
        Index first = years;
        Index end = 0;
        for (Index y = 0; y < years; ++y) {
            if (!std::isnan(column(y))) {
                first = std::min(first, y);
                end = y + 1;
                result.there(y, i) = 1.0;
                result.values(y, i) = size > 0.0 ? (column(y) - middle) / size : 0.0;
            }
        }
        result.gaps = result.gaps || (first < end && result.there.col(i).sum() < static_cast<double>(end - first));
        result.first.push_back(std::min(first, end));
        result.end.push_back(end);
    }
    result.squares = result.values.array().square();
    return result;
}

/// Sums over the years that two series have in common.
struct Sums {
    double n;
    double x;
    double y;
    double xx;
    double yy;
    double xy;

    [[nodiscard]] double cross() const { return xy - x * y / n; }
    [[nodiscard]] double square_x() const { return xx - x * x / n; }
    [[nodiscard]] double square_y() const { return yy - y * y / n; }
    [[nodiscard]] bool varies() const {
        constexpr double least = 1e-9;
        return square_x() > least * n && square_y() > least * n;
    }
};

/// The sums of all pairs at one shift.
class SumsAtShift {
public:
    explicit SumsAtShift(const Columns& columns)
        : columns_(columns) {
        const Index years = columns.values.rows();
        const Index n = columns.values.cols();
        running_.setZero(n, years + 1);
        running_squares_.setZero(n, years + 1);
        for (Index y = 0; y < years; ++y) {
            running_.col(y + 1) = running_.col(y) + columns.values.row(y).transpose();
            running_squares_.col(y + 1) = running_squares_.col(y) + columns.squares.row(y).transpose();
        }
    }

    /// The row's series moved by `shift` >= 0 rows toward later years.
    void move_to(Index shift) {
        shift_ = shift;
        const Index rows = columns_.values.rows() - shift;
        const auto x = [&](const MatrixXd& m) { return m.topRows(rows).transpose(); };
        const auto y = [&](const MatrixXd& m) { return m.bottomRows(rows); };
        xy_.noalias() = x(columns_.values) * y(columns_.values);
        if (columns_.gaps) {
            n_.noalias() = x(columns_.there) * y(columns_.there);
            x_.noalias() = x(columns_.values) * y(columns_.there);
            y_.noalias() = x(columns_.there) * y(columns_.values);
            xx_.noalias() = x(columns_.squares) * y(columns_.there);
            yy_.noalias() = x(columns_.there) * y(columns_.squares);
        }
    }

    [[nodiscard]] Sums of(Index i, Index j) const {
        if (columns_.gaps) {
            return {n_(i, j), x_(i, j), y_(i, j), xx_(i, j), yy_(i, j), xy_(i, j)};
        }
        const Index from = std::max(columns_.first[i] + shift_, columns_.first[j]);
        const Index to = std::min(columns_.end[i] + shift_, columns_.end[j]);
        if (to <= from) {
            return {};
        }
        return {static_cast<double>(to - from),
                running_(i, to - shift_) - running_(i, from - shift_),
                running_(j, to) - running_(j, from),
                running_squares_(i, to - shift_) - running_squares_(i, from - shift_),
                running_squares_(j, to) - running_squares_(j, from),
                xy_(i, j)};
    }

private:
    const Columns& columns_;
    Index shift_ = 0;
    MatrixXd running_;
    MatrixXd running_squares_;
    MatrixXd n_, x_, y_, xx_, yy_, xy_;
};

/// Grows with t, and needs no root: t |t|.
double signed_square_of_t(const Sums& s) {
    const double c = s.cross();
    const double unexplained = s.square_x() * s.square_y() - c * c;
    return c * std::abs(c) * (s.n - 2.0) / std::max(unexplained, 1e-12 * s.square_x() * s.square_y());
}

double correlation(const Sums& s) {
    return std::clamp(s.cross() / std::sqrt(s.square_x() * s.square_y()), -1.0, 1.0);
}

} // namespace

PairCorrelations pair_correlations(const SiteTable& table, int least_overlap) {
    const Index n = table.values.cols();
    PairCorrelations result{ArrayXXd::Constant(n, n, none), Eigen::ArrayXXi::Zero(n, n)};
    const Columns columns = columns_of(table);
    SumsAtShift sums(columns);
    sums.move_to(0);
    for (Index j = 0; j < n; ++j) {
        for (Index i = 0; i < n; ++i) {
            const Sums s = sums.of(i, j);
            result.overlap(i, j) = static_cast<int>(s.n);
            if (i != j && s.n >= std::max(3, least_overlap) && s.varies()) {
                result.r(i, j) = correlation(s);
            }
        }
    }
    return result;
}

PairMatches every_pair_at_every_shift(const SiteTable& table, int least_overlap, const Work& work) {
    const Index n = table.values.cols();
    const Index years = table.values.rows();
    PairMatches best{Eigen::ArrayXXi::Zero(n, n), Eigen::ArrayXXi::Zero(n, n), ArrayXXd::Zero(n, n),
                     Eigen::ArrayXXi::Zero(n, n)};
    ArrayXXd score = ArrayXXd::Constant(n, n, -std::numeric_limits<double>::infinity());
    const Columns columns = columns_of(table);
    SumsAtShift sums(columns);
    const int least = std::max(3, least_overlap);
    const auto look = [&](Index i, Index j, const Sums& s, double height, int shift) {
        ++best.positions(i, j);
        if (height > score(i, j)) {
            score(i, j) = height;
            best.shift(i, j) = shift;
            best.overlap(i, j) = static_cast<int>(s.n);
            best.r(i, j) = correlation(s);
        }
    };
    for (Index shift = 0; shift + least <= years && !work.stopped(); ++shift) {
        sums.move_to(shift);
        for (Index j = 0; j < n; ++j) {
            for (Index i = 0; i < n; ++i) {
                if (i == j) {
                    continue;
                }
                const Sums s = sums.of(i, j);
                if (s.n < least || !s.varies()) {
                    continue;
                }
                const double height = signed_square_of_t(s);
                look(i, j, s, height, static_cast<int>(shift));
                if (shift > 0) { // The other way round it is the same pair.
                    look(j, i, s, height, -static_cast<int>(shift));
                }
            }
        }
        work.report(static_cast<double>(shift + 1) / static_cast<double>(years));
    }
    return best;
}

} // namespace pithward::dating
