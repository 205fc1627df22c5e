#include "libcore/pith/strays.h"

#include "libcore/pith/concentric.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace pithward::pith {

namespace {

using Eigen::Vector2d;

constexpr std::size_t least_traces = 4;
constexpr std::size_t neighbours = 4; ///< Nearest traces that are asked, as far as there are so many.
constexpr double most_off_mm = 0.05;
constexpr double off_by_bend = 0.015; ///< More for each mm^2 from the path: the centre is a rough one.
constexpr double apart_mm = 0.3;      ///< Points of neighbours compare within this across the core.

/// How far a trace lies outside its circle at a place across the core; nothing where it was not traced.
std::optional<double> off_circle(const Trace& trace, const Vector2d& centre, double y) {
    const auto after = std::ranges::lower_bound(trace.points, y, {}, [](const Vector2d& p) { return p.y(); });
    const double radius = (trace.at - centre).norm();
    const auto off = [&](const Vector2d& point) { return (point - centre).norm() - radius; };
    if (after == trace.points.end() || after == trace.points.begin()) {
        const bool none = trace.points.empty();
        const Vector2d* end = none ? nullptr : after == trace.points.end() ? &trace.points.back() : &*after;
        return end != nullptr && std::abs(end->y() - y) < apart_mm ? std::optional(off(*end)) : std::nullopt;
    }
    const Vector2d& before = *std::prev(after);
    const double share = (y - before.y()) / std::max(after->y() - before.y(), 1e-9);
    return off(before) + share * (off(*after) - off(before));
}

/// The same as the median of the nearest traces; nothing where fewer than two were traced there.
std::optional<double> off_of_neighbours(std::span<const Trace> traces, std::size_t k, const Vector2d& centre,
                                        double y) {
    std::vector<double> offs;
    for (std::size_t apart = 1; apart < traces.size() && offs.size() < neighbours; ++apart) {
        // Outer neighbours first: they are the surer ones.
        for (const std::size_t other : {k + apart, k - apart}) {
            if (other < traces.size() && offs.size() < neighbours) { // k - apart wraps to a large number below 0
                if (const auto off = off_circle(traces[other], centre, y)) {
                    offs.push_back(*off);
                }
            }
        }
    }
    if (offs.size() < 2) {
        return std::nullopt;
    }
    std::ranges::sort(offs);
    const std::size_t middle = offs.size() / 2;
    return offs.size() % 2 == 1 ? offs[middle] : 0.5 * (offs[middle - 1] + offs[middle]);
}

} // namespace

void cut_strays(std::span<Trace> traces) {
    if (traces.size() < least_traces) {
        return;
    }
    // The innermost trace is the likeliest to be astray.
    std::vector<std::vector<Vector2d>> curves;
    for (const Trace& trace : traces.subspan(1)) {
        curves.push_back(trace.points);
    }
    const auto centre = concentric_centre(curves, traces.front().at + Vector2d(10.0, 0.0));
    if (!centre) {
        return;
    }
    const std::vector<Trace> before(traces.begin(), traces.end());
    for (std::size_t k = 0; k < traces.size(); ++k) {
        const Trace& trace = before[k];
        const double radius = (trace.at - *centre).norm();
        double from = -1e9;
        double to = 1e9;
        for (const Vector2d& point : trace.points) {
            const double across = point.y() - trace.at.y();
            const auto usual = off_of_neighbours(before, k, *centre, point.y());
            if (!usual) {
                continue;
            }
            const double off = (point - *centre).norm() - radius;
            if (std::abs(off - *usual) > most_off_mm + off_by_bend * across * across) {
                (across < 0.0 ? from : to) = across < 0.0 ? std::max(from, point.y()) : std::min(to, point.y());
            }
        }
        std::erase_if(traces[k].points, [&](const Vector2d& p) { return p.y() <= from || p.y() >= to; });
    }
}

} // namespace pithward::pith
