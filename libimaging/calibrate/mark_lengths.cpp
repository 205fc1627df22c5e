#include "libimaging/calibrate/mark_lengths.h"

#include "libimaging/robust/median.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace pithward::calibrate {

namespace {

constexpr double is_ink = 0.45;      ///< Of the usual strength.
constexpr double bridged = 0.16;     ///< Of a period: shorter gaps in a mark are wear.
constexpr double near_line = 0.2;    ///< Of a period: the rows in which a mark must show.
constexpr double finer_within = 2.0; ///< Periods beside the line in which finer marks are looked for.
constexpr double finer_rows = 0.2;   ///< Of a period: finer marks must be so long ...
constexpr double finer_share = 0.6;  ///< ... and so many of them must show.

constexpr double nothing = std::numeric_limits<double>::quiet_NaN();

double known_median(std::vector<double> values) {
    std::erase_if(values, [](double v) { return !std::isfinite(v); });
    return values.empty() ? nothing : median(std::move(values));
}

/// Mean of a row between two columns.
double mean_of(const Band& band, int row, double from, double to) {
    const int first = static_cast<int>(std::ceil(from));
    const int last = std::max(first, static_cast<int>(std::floor(to)));
    if (first < 0 || last >= band.grey.cols) {
        return nothing;
    }
    double sum = 0.0;
    for (int i = first; i <= last; ++i) {
        sum += static_cast<double>(band.grey(row, i));
    }
    return sum / (last - first + 1);
}

/// Difference between what is left and right of a place and what is at it, brightness of the darker ... brighter side.
double contrast_at(const Band& band, int row, double place, const MarkRows& marks) {
    const double half = std::max(0.5, 0.35 * marks.breadth / band.step);
    const double period = marks.period / band.step;
    const double inner = std::min(0.34 * period, std::max(0.2 * period, 0.8 * marks.breadth / band.step));
    const double outer = 0.44 * period;
    const double at = mean_of(band, row, place - half, place + half);
    const double left = mean_of(band, row, place - outer, place - inner);
    const double right = mean_of(band, row, place + inner, place + outer);
    // The side that is nearer to the mark counts: a numeral or a step beside it makes no mark.
    return marks.dark ? std::min(left, right) - at : at - std::max(left, right);
}

cv::Mat1f contrasts(const Band& band, const MarkRows& marks, double moved) {
    cv::Mat1f out(band.grey.rows, marks.count);
    for (int row = 0; row < out.rows; ++row) {
        for (int k = 0; k < marks.count; ++k) {
            const double place = marks.first + marks.period * (k + moved) + marks.slant * band.across(row);
            out(row, k) = static_cast<float>(contrast_at(band, row, place / band.step, marks));
        }
    }
    return out;
}

int rows_for(const Band& band, const MarkRows& marks, double periods) {
    return std::max(1, static_cast<int>(std::lround(periods * marks.period / band.step)));
}

/// The strength of the usual mark on the line.
double usual(const cv::Mat1f& contrast, const Band& band, const MarkRows& marks) {
    const int reach = std::min(band.middle, rows_for(band, marks, near_line));
    std::vector<double> all;
    for (int row = band.middle - reach; row <= band.middle + reach; ++row) {
        for (int k = 0; k < contrast.cols; ++k) {
            all.push_back(static_cast<double>(contrast(row, k)));
        }
    }
    return known_median(std::move(all));
}

/// The last row with ink from `from` on in steps of 1 or -1, gaps bridged.
int last_ink(const cv::Mat1f& strength, int k, int from, int step, int bridge) {
    int last = from;
    for (int row = from; row >= 0 && row < strength.rows && std::abs(row - last) <= bridge; row += step) {
        if (static_cast<double>(strength(row, k)) > is_ink) {
            last = row;
        }
    }
    return last;
}

} // namespace

cv::Mat1f strengths(const Band& band, const MarkRows& marks, double moved) {
    const cv::Mat1f on_marks = contrasts(band, marks, 0.0);
    const double one = std::max(1e-6, usual(on_marks, band, marks));
    const cv::Mat1f out = moved == 0.0 ? on_marks : contrasts(band, marks, moved);
    return out / one;
}

std::vector<double> mark_lengths(const Band& band, const cv::Mat1f& strength, const MarkRows& marks) {
    const int bridge = rows_for(band, marks, bridged);
    const int reach = std::min(band.middle, rows_for(band, marks, near_line));
    std::vector<double> lengths;
    for (int k = 0; k < marks.count; ++k) {
        int inked = 0;
        int start = band.middle;
        for (int row = band.middle - reach; row <= band.middle + reach; ++row) {
            if (static_cast<double>(strength(row, k)) > is_ink) {
                ++inked;
                start = std::abs(row - band.middle) < std::abs(start - band.middle) || inked == 1 ? row : start;
            }
        }
        if (inked <= reach / 2) {
            lengths.push_back(nothing);
            continue;
        }
        const int rows = last_ink(strength, k, start, 1, bridge) - last_ink(strength, k, start, -1, bridge) + 1;
        lengths.push_back(rows * band.step / marks.period);
    }
    return lengths;
}

std::optional<double> finer_marks_beside(const Band& band, const MarkRows& marks) {
    const cv::Mat1f strength = strengths(band, marks, 0.5);
    const int within = std::min(band.middle, rows_for(band, marks, finer_within));
    const int needed = rows_for(band, marks, finer_rows);
    std::optional<double> nearest;
    int run = 0;
    for (int row = band.middle - within; row <= band.middle + within; ++row) {
        int shown = 0;
        int seen = 0;
        for (int k = 0; k + 1 < strength.cols; ++k) {
            const auto value = static_cast<double>(strength(row, k));
            seen += std::isfinite(value) ? 1 : 0;
            shown += value > is_ink ? 1 : 0;
        }
        run = seen > 0 && shown >= finer_share * seen ? run + 1 : 0;
        if (run >= needed) {
            const double middle = band.across(row) - 0.5 * (run - 1) * band.step;
            if (!nearest || std::abs(middle) < std::abs(*nearest)) {
                nearest = middle;
            }
        }
    }
    return nearest;
}

} // namespace pithward::calibrate
