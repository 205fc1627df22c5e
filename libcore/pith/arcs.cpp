#include "libcore/pith/arcs.h"

#include "libcore/pith/strays.h"

#include <Eigen/Dense>

#include <algorithm>
#include <cmath>
#include <numeric>
#include <optional>
#include <utility>

namespace pithward::pith {

namespace {

using Eigen::Vector2d;

constexpr std::size_t bins = 6;          ///< An arc is averaged to at most so many points.
constexpr double least_breadth_mm = 1.2; ///< Arcs that are seen over less say nothing of their curve.
constexpr std::size_t least_points = 5;  ///< The same of single points.
constexpr double least_sd_mm = 0.008;    ///< Of a traced point, however smooth the curve.
constexpr double deviation_of_mad = 1.4826;

double median_of(std::vector<double> values) {
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::ranges::nth_element(values, middle);
    return *middle;
}

/// Distances of the points from a cubic through them, along the path, that outliers don't bend (Tukey's biweight).
std::vector<double> off_a_smooth_curve(const std::vector<Vector2d>& points) {
    const auto n = static_cast<Eigen::Index>(points.size());
    const Eigen::Index terms = n >= 8 ? 4 : 3;
    Eigen::MatrixXd basis(n, terms);
    Eigen::VectorXd place(n);
    for (Eigen::Index i = 0; i < n; ++i) {
        const Vector2d& point = points[static_cast<std::size_t>(i)];
        for (Eigen::Index t = 0; t < terms; ++t) {
            basis(i, t) = std::pow(point.y() / 2.5, static_cast<double>(t));
        }
        place(i) = point.x();
    }
    Eigen::VectorXd weight = Eigen::VectorXd::Ones(n);
    Eigen::VectorXd residual = place;
    for (int round = 0; round < 5; ++round) {
        const Eigen::MatrixXd weighted = weight.asDiagonal() * basis;
        const Eigen::VectorXd fit =
            (weighted.transpose() * weighted).ldlt().solve(weighted.transpose() * (weight.asDiagonal() * place));
        residual = place - basis * fit;
        const Eigen::VectorXd size = residual.cwiseAbs();
        const double scale = std::max(deviation_of_mad * median_of({size.begin(), size.end()}), least_sd_mm);
        for (Eigen::Index i = 0; i < n; ++i) {
            const double t = size(i) / (4.685 * scale);
            weight(i) = t < 1.0 ? 1.0 - t * t : 0.0; // its square weighs
        }
    }
    return {residual.begin(), residual.end()};
}

/// Averages neighbouring points, which halves the work and keeps the curve.
void gather_bins(const std::vector<Vector2d>& points, double sd_mm, Arc& arc) {
    const std::size_t count = std::min(bins, points.size());
    for (std::size_t bin = 0; bin < count; ++bin) {
        const std::size_t from = bin * points.size() / count;
        const std::size_t to = (bin + 1) * points.size() / count;
        Vector2d sum = Vector2d::Zero();
        for (std::size_t i = from; i < to; ++i) {
            sum += points[i];
        }
        const auto members = static_cast<double>(to - from);
        arc.points.emplace_back(sum / members);
        arc.variance.push_back(sd_mm * sd_mm / members);
    }
}

bool says_enough(const std::vector<Vector2d>& points) {
    return points.size() >= least_points && points.back().y() - points.front().y() >= least_breadth_mm;
}

/// The points that hang together with the one nearest to the path: beyond a gap a curve may have gone astray.
std::vector<Vector2d> connected(const std::vector<Vector2d>& points, double crossing_y) {
    constexpr double gap_mm = 0.8;
    auto from = std::ranges::min_element(points, {}, [&](const Vector2d& p) { return std::abs(p.y() - crossing_y); });
    auto to = from;
    while (from != points.begin() && from->y() - std::prev(from)->y() < gap_mm) {
        --from;
    }
    while (std::next(to) != points.end() && std::next(to)->y() - to->y() < gap_mm) {
        ++to;
    }
    return {from, std::next(to)};
}

/// A boundary's curve as far as it hangs together; nothing where it says too little.
std::optional<Trace> trace_of(const Boundary& boundary, const InnerFrame& frame, double crack_mm) {
    Trace trace;
    const Vector2d moved(crack_mm, 0.0);
    trace.at = frame.on_wood(boundary.at) + moved;
    for (const ImagePoint& point : boundary.curve) {
        trace.points.emplace_back(frame.on_wood(point) + moved);
    }
    if (trace.points.empty()) {
        return std::nullopt;
    }
    std::ranges::sort(trace.points, {}, [](const Vector2d& p) { return p.y(); });
    trace.points = connected(trace.points, trace.at.y());
    return says_enough(trace.points) ? std::optional(trace) : std::nullopt;
}

std::optional<Arc> arc_of(const Trace& trace) {
    if (!says_enough(trace.points)) {
        return std::nullopt;
    }
    const std::vector<double> off = off_a_smooth_curve(trace.points);
    std::vector<double> size(off);
    std::ranges::transform(size, size.begin(), [](double v) { return std::abs(v); });
    const double sd = std::max(deviation_of_mad * median_of(size), least_sd_mm);
    std::vector<Vector2d> kept;
    for (std::size_t i = 0; i < trace.points.size(); ++i) {
        if (std::abs(off[i]) < 4.0 * sd) {
            kept.push_back(trace.points[i]);
        }
    }
    if (!says_enough(kept)) {
        return std::nullopt;
    }
    Arc arc;
    arc.at = trace.at;
    gather_bins(kept, sd, arc);
    return arc;
}

/// Direction of the path's inner end on the wood: over the last millimetres before the innermost boundary.
Vector2d inward_direction(const std::vector<const Boundary*>& boundaries, const Leg& leg, const Vector2d& scale) {
    constexpr double over_mm = 8.0;
    const auto place = [&](ImagePoint p) { return Vector2d(p.x / scale.x(), p.y / scale.y()); };
    const Vector2d origin = place(boundaries.front()->at);
    for (const Boundary* outer : boundaries) {
        if ((origin - place(outer->at)).norm() >= over_mm) {
            return (origin - place(outer->at)).normalized();
        }
    }
    const Vector2d along = place(leg.points.back()) - place(leg.points.front());
    return along.norm() > 0.0 ? Vector2d(along.normalized()) : Vector2d(1.0, 0.0);
}

/// Cracks on the last leg, as stretches of x; what lies outside lost wood is not to be used.
struct InnerBreaks {
    std::vector<std::pair<double, double>> cracks;
    double lost_from = -1e9;

    InnerBreaks(const Reading& reading, const InnerFrame& frame) {
        for (const Break& stretch : reading.breaks) {
            if (stretch.leg + 1 != reading.path.legs.size()) {
                continue;
            }
            const double a = frame.on_wood(stretch.from).x();
            const double b = frame.on_wood(stretch.to).x();
            if (stretch.kind == Break::Kind::Crack) {
                cracks.emplace_back(std::min(a, b), std::max(a, b));
            } else if (std::max(a, b) <= 0.0) {
                lost_from = std::max(lost_from, std::max(a, b));
            }
        }
    }
    [[nodiscard]] double crack_between(double x, double origin) const {
        double length = 0.0;
        for (const auto& [from, to] : cracks) {
            length += std::max(0.0, std::min(to, origin) - std::max(from, x));
        }
        return length;
    }
};

} // namespace

InnerFrame::InnerFrame(ImagePoint origin, Vector2d inward, const Calibration& calibration)
    : scale_(calibration.px_per_mm_x, calibration.px_per_mm_y)
    , origin_(origin.x / scale_.x(), origin.y / scale_.y())
    , inward_(std::move(inward)) {}

Vector2d InnerFrame::on_wood(ImagePoint at) const {
    const Vector2d away = Vector2d(at.x / scale_.x(), at.y / scale_.y()) - origin_;
    return {away.dot(inward_), -away.x() * inward_.y() + away.y() * inward_.x()};
}

ImagePoint InnerFrame::on_scan(const Vector2d& at) const {
    const Vector2d place = origin_ + at.x() * inward_ + at.y() * Vector2d(-inward_.y(), inward_.x());
    return {place.x() * scale_.x(), place.y() * scale_.y()};
}

InnerArcs inner_arcs(const Reading& reading) {
    const std::size_t last = reading.path.legs.size() - 1;
    const Leg& leg = reading.path.legs[last];
    const Calibration& calibration = reading.calibrations.at(leg.scan);
    std::vector<const Boundary*> boundaries;
    for (auto it = reading.boundaries.rbegin(); it != reading.boundaries.rend() && it->leg == last; ++it) {
        boundaries.push_back(&*it);
    }
    const Vector2d scale(calibration.px_per_mm_x, calibration.px_per_mm_y);
    InnerArcs inner{InnerFrame(boundaries.front()->at, inward_direction(boundaries, leg, scale), calibration)};
    inner.path_end_mm = inner.frame.on_wood(leg.points.back()).x();
    const InnerBreaks breaks(reading, inner.frame);
    std::vector<Trace> traces;
    std::vector<std::size_t> rings;
    std::vector<double> reaches;
    double next = 1e-9; // x at or outside of which the next arc is wanted
    for (std::size_t k = 0; k < boundaries.size() && traces.size() < most_arcs; ++k) {
        const double x = inner.frame.on_wood(boundaries[k]->at).x();
        if (x < -reach_mm || x < breaks.lost_from) {
            break;
        }
        if (x > next) {
            continue;
        }
        if (auto trace = trace_of(*boundaries[k], inner.frame, breaks.crack_between(x, 0.0))) {
            reaches.push_back(std::max(-trace->points.front().y(), trace->points.back().y()));
            traces.push_back(std::move(*trace));
            rings.push_back(k);
            next = x - 0.4 + 0.06 * x; // farther out the arcs tell less, and reach farther
        }
    }
    cut_strays(traces);
    for (std::size_t i = 0; i < traces.size(); ++i) {
        if (auto arc = arc_of(traces[i])) {
            arc->id = boundaries[rings[i]]->id;
            arc->ring = static_cast<double>(rings[i]);
            inner.arcs.push_back(std::move(*arc));
        }
    }
    if (!reaches.empty()) {
        inner.half_breadth_mm = median_of(reaches);
    }
    return inner;
}

} // namespace pithward::pith
