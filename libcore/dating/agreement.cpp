#include "libcore/dating/agreement.h"

#include "libcore/dating/student.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace pithward::dating {

namespace {

/// The years that both cover.
struct Overlap {
    int first;
    int last;
};

Overlap overlap_of(const YearSeries& series, const YearSeries& other, int shift) {
    return {std::max(series.first_year + shift, other.first_year),
            std::min(series.last_year() + shift, other.last_year())};
}

double sign(double change) {
    return change > 0.0 ? 1.0 : change < 0.0 ? -1.0 : 0.0;
}

double level_of(double chance) {
    for (const double level : {0.999, 0.99, 0.95}) {
        if (chance <= 1.0 - level) {
            return level;
        }
    }
    return 0.0;
}

} // namespace

Agreement agreement(const YearSeries& series, const YearSeries& other, int shift) {
    const Overlap years = overlap_of(series, other, shift);
    Agreement result;
    double a = 0.0;
    double b = 0.0;
    const auto each = [&](auto&& visit) {
        for (int y = years.first; y <= years.last; ++y) {
            const double x = series.at(y - shift);
            const double z = other.at(y);
            if (!std::isnan(x) && !std::isnan(z)) {
                visit(x, z);
            }
        }
    };
    each([&](double x, double z) {
        ++result.overlap;
        a += x;
        b += z;
    });
    if (result.overlap < 3) {
        return result;
    }
    a /= result.overlap;
    b /= result.overlap;
    double aa = 0.0;
    double bb = 0.0;
    double ab = 0.0;
    each([&](double x, double z) {
        aa += (x - a) * (x - a);
        bb += (z - b) * (z - b);
        ab += (x - a) * (z - b);
    });
    constexpr double constant = 1e-24; // What rounding leaves of equal values.
    if (aa <= constant * result.overlap * a * a || bb <= constant * result.overlap * b * b) {
        return result;
    }
    result.r = std::clamp(ab / std::sqrt(aa * bb), -1.0, 1.0);
    result.t = t_of(*result.r, result.overlap);
    result.chance = student_tail(result.t, result.overlap - 2);
    return result;
}

YearSeries five_year_logarithms(const YearSeries& widths) {
    const Eigen::ArrayXd w = log_widths(widths).values.exp();
    YearSeries result{widths.first_year, Eigen::ArrayXd::Constant(widths.size(), none)};
    for (Eigen::Index i = 2; i + 2 < w.size(); ++i) {
        result.values(i) = std::log(100.0 * w(i) / w.segment<5>(i - 2).mean());
    }
    return result;
}

YearSeries yearly_logarithms(const YearSeries& widths) {
    const Eigen::ArrayXd logs = log_widths(widths).values;
    YearSeries result{widths.first_year, Eigen::ArrayXd::Constant(widths.size(), none)};
    if (logs.size() > 1) {
        result.values.tail(logs.size() - 1) = logs.tail(logs.size() - 1) - logs.head(logs.size() - 1);
    }
    return result;
}

SignAgreement sign_agreement(const YearSeries& series, const YearSeries& other, int shift) {
    const Overlap years = overlap_of(series, other, shift);
    SignAgreement result;
    double same = 0.0;
    for (int y = years.first + 1; y <= years.last; ++y) {
        const double x = series.at(y - shift) - series.at(y - shift - 1);
        const double z = other.at(y) - other.at(y - 1);
        if (!std::isnan(x) && !std::isnan(z)) {
            ++result.changes;
            same += 0.5 * (1.0 + sign(x) * sign(z));
        }
    }
    if (result.changes > 0) {
        result.share = same / result.changes;
        const double deviations = (*result.share - 0.5) * 2.0 * std::sqrt(result.changes);
        result.chance = 0.5 * std::erfc(deviations / std::numbers::sqrt2);
        result.level = level_of(result.chance);
    }
    return result;
}

} // namespace pithward::dating
