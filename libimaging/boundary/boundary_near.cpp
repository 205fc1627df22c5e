#include "libimaging/boundary/boundary_near.h"

#include "libcore/specimen/path_check.h"
#include "libimaging/boundary/candidate_of.h"
#include "libimaging/boundary/inner_end.h"
#include "libimaging/boundary/relief.h"
#include "libimaging/boundary/wood/wood_model.h"
#include "libimaging/strip/lanes.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace pithward {

namespace {

constexpr double context_mm = 4.0; ///< Wood on either side that the signs are judged against.
constexpr double sample_mm = 0.25; ///< Step at which the leg is followed.

/// Distance along a leg to its place nearest to a point, to a tenth of a sample and better.
double nearest_s(const StripGeometry& geometry, const Calibration& calibration, ImagePoint at) {
    const auto apart = [&](double s) {
        const ImagePoint away = geometry.image_point({s, 0.0}) - at;
        return std::hypot(away.x / calibration.px_per_mm_x, away.y / calibration.px_per_mm_y);
    };
    double best = 0.0;
    double step = sample_mm;
    double from = 0.0;
    double to = geometry.length_mm();
    for (int round = 0; round < 3; ++round, step /= 10.0) {
        double least = std::numeric_limits<double>::infinity();
        for (int i = 0; from + i * step <= to; ++i) {
            if (const double distance = apart(from + i * step); distance < least) {
                least = distance;
                best = from + i * step;
            }
        }
        from = std::max(0.0, best - step);
        to = std::min(geometry.length_mm(), best + step);
    }
    return best;
}

std::vector<ImagePoint> stretch_of(const StripGeometry& geometry, double from, double to) {
    const int steps = std::max(1, static_cast<int>(std::ceil((to - from) / sample_mm)));
    std::vector<ImagePoint> points;
    points.reserve(static_cast<std::size_t>(steps) + 1);
    for (int i = 0; i <= steps; ++i) {
        points.push_back(geometry.image_point({from + (to - from) * i / steps, 0.0}));
    }
    return points;
}

/// Being near counts as a normal error of pointing with half the reach for its deviation.
double worth(const boundary::Mark& mark, double away_mm, double reach_mm) {
    const double z = 2.0 * away_mm / reach_mm;
    return mark.log_odds - 0.5 * z * z;
}

} // namespace

Outcome<std::optional<Candidate>> boundary_near(const ScanFile& scan, const NearRequest& request, const Work& work) {
    if (auto fault = fault_of_path(request.path, scan.header(), request.calibration)) {
        return tl::unexpected(*fault);
    }
    if (!(request.reach_mm > 0.0 && request.reach_mm <= 2.0) || !std::isfinite(request.at.x + request.at.y)) {
        return fail(scan.header().file, "the place to look near is not sound", "point at the wood on the path");
    }
    const StripGeometry leg(request.path, request.calibration);
    const double pointed_mm = nearest_s(leg, request.calibration, request.at);
    const double from = std::max(0.0, pointed_mm - context_mm);
    const double to = std::min(leg.length_mm(), pointed_mm + context_mm);
    const StripGeometry geometry(stretch_of(leg, from, to), request.calibration);

    LanesOptions options;
    if (request.breadth_mm > 0.0) {
        options.half_breadth_mm = std::min(options.half_breadth_mm, 0.5 * request.breadth_mm + 0.5);
    }
    const auto lanes = lanes_along(scan, geometry, request.calibration.px_per_mm(), options, work);
    if (!lanes) {
        return tl::unexpected(lanes.error());
    }
    const boundary::WoodModel& model = boundary::wood_model(request.wood);
    boundary::Relief relief = boundary::relief_of(*lanes);
    if (model.cut_outdoes_rings) {
        relief = boundary::ending_with_wood(std::move(relief), *lanes, geometry.length_mm());
    }
    const boundary::FlatStrip strip =
        boundary::flat_strip(*lanes, relief, model.signal(relief, *lanes), geometry.length_mm(), work);
    const double wanted_mm = pointed_mm - from;
    const boundary::Mark* best = nullptr;
    const std::vector<boundary::Mark> marks = model.marks(strip);
    const auto away = [&](const boundary::Mark& mark) { return std::abs(strip.s(mark.column) - wanted_mm); };
    for (const boundary::Mark& mark : marks) {
        if (away(mark) <= request.reach_mm && (best == nullptr || worth(mark, away(mark), request.reach_mm) >
                                                                      worth(*best, away(*best), request.reach_mm))) {
            best = &mark;
        }
    }
    if (best == nullptr) {
        return std::nullopt;
    }
    return boundary::candidate_of(*best, 1.0 / (1.0 + std::exp(-best->log_odds)), strip, geometry);
}

} // namespace pithward
