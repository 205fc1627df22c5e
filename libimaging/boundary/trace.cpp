#include "libimaging/boundary/trace.h"

#include "libimaging/boundary/filters.h"
#include "libimaging/boundary/trace_curve.h"

#include <opencv2/core/utility.hpp>

#include <algorithm>
#include <array>
#include <cmath>

namespace pithward::boundary {

namespace {

constexpr int group = 3;                   ///< Lanes averaged for one shift.
constexpr double farthest_shift_mm = 0.15; ///< A shift is sought up to here.
constexpr int rounds = 3;                  ///< Gauss-Newton steps.
/// Deviation that stays however many lanes agree: pixel grid and the shape of the change. In columns; from rendered
/// cores (tests/accuracy), not from theory.
constexpr double floor_columns = 0.10;

/// A stretch of the profile around the mark with its gradient; weights fall off toward its ends.
struct Shape {
    int from = 0;
    std::vector<double> value;
    std::vector<double> gradient;
    std::vector<double> weight;
};

Shape shape_around(const std::vector<float>& profile, double column, double reach) {
    const int n = static_cast<int>(profile.size());
    Shape shape;
    shape.from = std::max(1, static_cast<int>(std::floor(column - reach)));
    const int to = std::min(n - 2, static_cast<int>(std::ceil(column + reach)));
    for (int i = shape.from; i <= to; ++i) {
        const auto k = static_cast<std::size_t>(i);
        const double t = (i - column) / (reach + 1.0);
        shape.value.push_back(static_cast<double>(profile[k]));
        shape.gradient.push_back(0.5 * static_cast<double>(profile[k + 1] - profile[k - 1]));
        shape.weight.push_back(std::max(0.0, 1.0 - t * t));
    }
    return shape;
}

/// Mean of a group of lanes over the shape's stretch, moved by `shift` columns.
std::vector<double> group_values(const cv::Mat1f& values, int first, const Shape& shape, double shift) {
    std::vector<double> out(shape.value.size(), 0.0);
    for (int lane = first; lane < first + group; ++lane) {
        const float* row = values[lane];
        for (std::size_t i = 0; i < out.size(); ++i) {
            out[i] += static_cast<double>(sample(row, values.cols, shape.from + double(i) + shift)) / group;
        }
    }
    return out;
}

/// Weighted fit of the group to gain * profile + offset; answers with the gain and the residual's variance.
struct Fit {
    double gain = 0.0;
    double variance = 0.0;
    double shift = 0.0; ///< Further shift, columns.
};

Fit fit_group(const std::vector<double>& seen_values, const Shape& shape) {
    double mass = 0.0;
    double mean_p = 0.0;
    double mean_v = 0.0;
    double mean_g = 0.0;
    for (std::size_t i = 0; i < shape.value.size(); ++i) {
        mass += shape.weight[i];
        mean_p += shape.weight[i] * shape.value[i];
        mean_v += shape.weight[i] * seen_values[i];
        mean_g += shape.weight[i] * shape.gradient[i];
    }
    mean_p /= mass;
    mean_v /= mass;
    mean_g /= mass;
    double pp = 1e-12;
    double pv = 0.0;
    double vv = 0.0;
    double gg = 1e-12;
    double gr = 0.0;
    for (std::size_t i = 0; i < shape.value.size(); ++i) {
        const double p = shape.value[i] - mean_p;
        const double v = seen_values[i] - mean_v;
        const double g = shape.gradient[i] - mean_g;
        pp += shape.weight[i] * p * p;
        pv += shape.weight[i] * p * v;
        vv += shape.weight[i] * v * v;
        gg += shape.weight[i] * g * g;
        gr += shape.weight[i] * g * (v - p);
    }
    Fit fit;
    fit.gain = pv / pp;
    fit.variance = std::max(0.0, vv - fit.gain * pv) / mass;
    // seen(i) = profile(i - d): seen - profile = -gradient * d.
    fit.shift = -gr / gg;
    return fit;
}

Shift shift_of_group(const FlatStrip& strip, const cv::Mat1f& values, int first, const Shape& shape, double column) {
    Shift out;
    out.u = strip.u(first + 0.5 * (group - 1));
    double wood = 0.0;
    const int c = std::clamp(static_cast<int>(std::lround(column)), 0, strip.columns() - 1);
    for (int lane = first; lane < first + group; ++lane) {
        wood += static_cast<double>(strip.weight(lane, c)) / group;
    }
    const double farthest = farthest_shift_mm / strip.px_mm;
    Fit fit;
    for (int round = 0; round < rounds; ++round) {
        fit = fit_group(group_values(values, first, shape, out.columns), shape);
        out.columns = std::clamp(out.columns + std::clamp(fit.shift, -2.0, 2.0), -farthest, farthest);
    }
    out.gain = fit.gain;
    const bool usable = wood > 0.5 && fit.gain > 0.15 && std::abs(out.columns) < farthest - 1e-9;
    out.weight = usable ? wood * std::min(1.0, fit.gain) / (fit.variance + 1e-5) : 0.0;
    if (wood <= 0.5) {
        out.gain = std::nan("");
    }
    return out;
}

/// Slope of the ring flow at the path, columns for each mm.
double flow_slope(const FlatStrip& strip, double column) {
    const int half = std::min(3, strip.centre());
    const double up = static_cast<double>(sample(strip.flow_mm[strip.centre() - half], strip.columns(), column));
    const double down = static_cast<double>(sample(strip.flow_mm[strip.centre() + half], strip.columns(), column));
    return (down - up) / (2.0 * half * strip.lane_mm) / strip.px_mm;
}

void trace_mark(const FlatStrip& strip, const cv::Mat1f& values, const std::vector<float>& profile, double reach,
                Mark& mark) {
    const double column = mark.column;
    const Shape shape = shape_around(profile, column, reach);
    if (shape.value.size() < 3) {
        return;
    }
    std::vector<Shift> shifts;
    const int first = (strip.centre() - group / 2) % group;
    for (int lane = first; lane + group <= strip.lanes(); lane += group) {
        shifts.push_back(shift_of_group(strip, values, lane, shape, column));
    }
    const Curve curve = fit_curve(shifts);
    const double widest = strip.u(strip.lanes());
    mark.signs.support = support_of(shifts, -widest, widest);
    mark.signs.support_left = support_of(shifts, -widest, -0.3);
    mark.signs.support_right = support_of(shifts, 0.3, widest);
    mark.column = column + curve.at_path;
    mark.sd_mm = std::hypot(curve.sd, floor_columns) * strip.px_mm;
    mark.slope = (flow_slope(strip, column) + curve.slope) * strip.px_mm;
    mark.trace.clear();
    for (const Shift& shift : shifts) {
        if (shift.weight <= 0.0) {
            continue;
        }
        const double fitted = curve.at_path + curve.slope * shift.u + curve.bend * shift.u * shift.u;
        const double own = std::abs(shift.u) <= curve_reach_mm ? fitted : shift.columns;
        const double lane = shift.u / strip.lane_mm + strip.centre();
        const auto row = static_cast<int>(std::lround(lane));
        const double flow = static_cast<double>(sample(strip.flow_mm[row], strip.columns(), column));
        mark.trace.push_back({strip.s(column + own) + flow, shift.u});
    }
}

} // namespace

void trace_marks(const FlatStrip& strip, const cv::Mat1f& values, const std::vector<float>& profile,
                 const std::vector<double>& reach, std::vector<Mark>& marks) {
    cv::parallel_for_(cv::Range(0, static_cast<int>(marks.size())), [&](const cv::Range& part) {
        for (auto k = static_cast<std::size_t>(part.start); k < static_cast<std::size_t>(part.end); ++k) {
            trace_mark(strip, values, profile, reach[k], marks[k]);
        }
    });
}

} // namespace pithward::boundary
