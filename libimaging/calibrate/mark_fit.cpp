#include "libimaging/calibrate/mark_fit.h"

#include "libimaging/calibrate/ruler_band.h"
#include "libimaging/robust/median.h"

#include <Eigen/Dense>

#include <algorithm>
#include <cmath>

namespace pithward::calibrate {

namespace {

constexpr double shape_reach = 0.65;    ///< Of a period: the window and what it may be moved by.
constexpr double window_periods = 0.36; ///< Of a period, on both sides: neighbouring marks stay outside.
constexpr double greatest_shift = 0.25; ///< Of a period.
constexpr double finest_step = 0.25;    ///< Of a sample.
constexpr double least_strength = 0.3;  ///< Of the usual mark's.
constexpr double least_share = 0.4;     ///< Of the variance in the window that the shape must explain.
constexpr double scatter_of_marks =
    0.01; ///< In samples: what the sampling itself costs, however clear the marks (assumed).

/// Whether the whole reach about a place lies on the profile.
bool covered(double place, double reach, std::size_t samples) {
    return place - reach >= 0.0 && place + reach <= static_cast<double>(samples) - 1.0;
}

/// A shape laid onto the samples about a place.
struct Laid {
    double level = 0.0;
    double strength = 0.0;
    double explained = 0.0; ///< Share of the variance.
    double shift = 0.0;     ///< What would improve the fit.
};

Laid lay(const std::vector<double>& profile, const MarkShape& shape, double place, double half) {
    constexpr double h = 0.25;
    const int from = std::max(0, static_cast<int>(std::ceil(place - half)));
    const int to = std::min(static_cast<int>(profile.size()) - 1, static_cast<int>(std::floor(place + half)));
    Eigen::Matrix3d normal = Eigen::Matrix3d::Zero();
    Eigen::Vector3d right = Eigen::Vector3d::Zero();
    double square = 0.0;
    for (int i = from; i <= to; ++i) {
        const double t = i - place;
        const double rise = (shape.value(t + h) - shape.value(t - h)) / (2.0 * h);
        const Eigen::Vector3d terms(1.0, shape.value(t), -rise);
        const double v = profile[static_cast<std::size_t>(i)];
        normal += terms * terms.transpose();
        right += terms * v;
        square += v * v;
    }
    const double n = normal(0, 0);
    const double variance = square - right(0) * right(0) / n;
    const double shape_variance = normal(1, 1) - normal(0, 1) * normal(0, 1) / n;
    const double common = right(1) - normal(0, 1) * right(0) / n;
    if (n < 4.0 || variance < 1e-12 || shape_variance < 1e-12) {
        return {};
    }
    Laid laid;
    laid.strength = common / shape_variance;
    laid.explained = common * common / (shape_variance * variance);
    normal.diagonal().array() += 1e-12;
    const Eigen::Vector3d solution = normal.ldlt().solve(right);
    if (solution(1) > 1e-6) {
        laid.shift = solution(2) / solution(1);
    }
    return laid;
}

} // namespace

MarkShape::MarkShape(const std::vector<double>& profile, const Lattice& lattice)
    : reach_(shape_reach * lattice.period)
    , step_(std::max(finest_step, lattice.period / 400.0)) {
    const int half = static_cast<int>(reach_ / step_);
    reach_ = half * step_;
    std::vector<std::vector<double>> samples(static_cast<std::size_t>(2 * half + 1));
    for (int k = 0; k < lattice.count; ++k) {
        const double place = lattice.place(k);
        if (!covered(place, reach_, profile.size())) {
            continue;
        }
        double level = 0.0;
        for (int i = -half; i <= half; ++i) {
            level += value_at(profile, place + i * step_) / (2 * half + 1);
        }
        for (int i = 0; i <= 2 * half; ++i) {
            samples[static_cast<std::size_t>(i)].push_back(value_at(profile, place + (i - half) * step_) - level);
        }
    }
    for (std::vector<double>& at_one : samples) {
        values_.push_back(at_one.empty() ? 0.0 : median(at_one));
    }
}

double MarkShape::value(double from_place) const {
    return value_at(values_, (from_place + reach_) / step_);
}

double MarkShape::contrast() const {
    const auto [least, greatest] = std::ranges::minmax(values_);
    return greatest - least;
}

MarkShape::Stroke MarkShape::stroke(double period) const {
    const int n = static_cast<int>(values_.size());
    const int half = std::min(n / 2, static_cast<int>(0.5 * period / step_));
    const auto inner = [&](int i) { return *(values_.begin() + n / 2 + i); };
    double least = inner(-half);
    double greatest = least;
    for (int i = -half; i <= half; ++i) {
        least = std::min(least, inner(i));
        greatest = std::max(greatest, inner(i));
    }
    const double level = 0.5 * (least + greatest);
    int below = 0;
    for (int i = -half; i <= half; ++i) {
        below += inner(i) < level ? 1 : 0;
    }
    Stroke stroke;
    stroke.dark = below <= half;
    int deepest = -half;
    for (int i = -half; i <= half; ++i) {
        if (stroke.dark ? inner(i) < inner(deepest) : inner(i) > inner(deepest)) {
            deepest = i;
        }
    }
    const auto in_stroke = [&](int i) {
        return std::abs(i) <= n / 2 && (stroke.dark ? inner(i) < level : inner(i) > level);
    };
    int from = deepest;
    int to = deepest;
    while (in_stroke(from - 1)) {
        --from;
    }
    while (in_stroke(to + 1)) {
        ++to;
    }
    stroke.middle = 0.5 * (from + to) * step_;
    stroke.breadth = (to - from + 1) * step_;
    return stroke;
}

std::vector<LocatedMark> locate_marks(const std::vector<double>& profile, const Lattice& lattice,
                                      const MarkShape& shape) {
    constexpr int tries = 8; // on each side of the place
    constexpr int rounds = 8;
    const double half = window_periods * lattice.period;
    const double most = greatest_shift * lattice.period;
    std::vector<LocatedMark> marks;
    for (int k = 0; k < lattice.count; ++k) {
        const double place = lattice.place(k);
        if (!covered(place, half, profile.size())) {
            continue;
        }
        double best = place;
        double greatest = 0.0;
        for (int i = -tries; i <= tries; ++i) {
            const double at = place + most * i / tries;
            const Laid laid = lay(profile, shape, at, half);
            if (laid.strength > least_strength && laid.explained > greatest) {
                greatest = laid.explained;
                best = at;
            }
        }
        if (greatest < least_share) {
            continue;
        }
        for (int round = 0; round < rounds; ++round) {
            const double shift = lay(profile, shape, best, half).shift;
            best += std::clamp(shift, -most / tries, most / tries);
            if (std::abs(shift) < 1e-5) {
                break;
            }
        }
        if (std::abs(best - place) <= most && lay(profile, shape, best, half).explained >= least_share) {
            marks.push_back({k, best});
        }
    }
    return marks;
}

std::optional<RobustLine> line_through(const std::vector<LocatedMark>& marks, const Lattice& lattice) {
    std::vector<LinePoint> points;
    points.reserve(marks.size());
    for (const LocatedMark& mark : marks) {
        points.push_back({static_cast<double>(mark.index), mark.at});
    }
    return fit_line(points, lattice.first, lattice.period, scatter_of_marks);
}

} // namespace pithward::calibrate
