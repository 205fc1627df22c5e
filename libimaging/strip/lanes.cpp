#include "libimaging/strip/lanes.h"

#include "libimaging/strip/lane_sampler.h"
#include "libimaging/strip/straighten.h"

#include <opencv2/core/utility.hpp>
#include <opencv2/imgproc.hpp>

#include <algorithm>
#include <cmath>
#include <mutex>
#include <optional>
#include <vector>

namespace pithward {

namespace {

constexpr int columns_at_once = 1024;

} // namespace

Outcome<Lanes> lanes_along(const ScanFile& scan, const StripGeometry& geometry, double px_per_mm,
                           const LanesOptions& options, const Work& work) {
    Lanes lanes;
    lanes.px_mm = 1.0 / px_per_mm;
    lanes.start_mm = -options.beyond_mm;
    const int rows_per_lane = std::max(2, static_cast<int>(std::lround(options.lane_mm * px_per_mm)));
    lanes.lane_mm = rows_per_lane * lanes.px_mm;
    const int count = 2 * static_cast<int>(options.half_breadth_mm / lanes.lane_mm) + 1;
    const double length = geometry.length_mm() + 2.0 * options.beyond_mm;
    const int columns = static_cast<int>(std::ceil(length * px_per_mm)) + 1;
    for (cv::Mat1f& channel : lanes.rgb) {
        channel.create(count, columns);
    }
    const StripGrid grid{lanes.start_mm, lanes.px_mm, columns, count * rows_per_lane};

    const int blocks = (columns + columns_at_once - 1) / columns_at_once;
    std::mutex guard;
    std::optional<Fault> fault;
    int done = 0;
    cv::parallel_for_(cv::Range(0, blocks), [&](const cv::Range& range) {
        for (int block = range.start; block < range.end && !work.stopped(); ++block) {
            const int from = block * columns_at_once;
            const int to = std::min(columns, from + columns_at_once);
            const auto sampled =
                strip::sample_lanes(scan, geometry, grid, rows_per_lane, from, to, lanes.rgb, options.kept);
            const std::scoped_lock lock(guard);
            if (!sampled) {
                fault = sampled.error();
                return;
            }
            work.report(static_cast<double>(++done) / blocks);
        }
    });
    if (fault) {
        return tl::unexpected(*fault);
    }
    if (work.stopped()) {
        return fail(scan.header().file, "stopped", "start again when wanted");
    }
    return lanes;
}

Lanes coarser(const Lanes& lanes, double px_per_mm) {
    const int step = std::max(1, static_cast<int>(std::lround(1.0 / (px_per_mm * lanes.px_mm))));
    Lanes out = lanes;
    if (step == 1) {
        return out;
    }
    const int columns = lanes.columns() / step;
    for (std::size_t c = 0; c < out.rgb.size(); ++c) {
        cv::resize(lanes.rgb[c].colRange(0, columns * step), out.rgb[c], cv::Size(columns, lanes.count()), 0.0, 0.0,
                   cv::INTER_AREA);
    }
    out.px_mm = lanes.px_mm * step;
    out.start_mm = lanes.start_mm + 0.5 * (step - 1) * lanes.px_mm;
    return out;
}

Lanes without_ends(const Lanes& lanes, double share) {
    const int cut = static_cast<int>(share * lanes.columns());
    Lanes out = lanes;
    for (cv::Mat1f& channel : out.rgb) {
        channel = channel.colRange(cut, lanes.columns() - cut).clone();
    }
    out.start_mm = lanes.s(cut);
    return out;
}

Lanes middle_of(const Lanes& lanes, double half_breadth_mm) {
    const int half = std::min(lanes.centre(), static_cast<int>(half_breadth_mm / lanes.lane_mm));
    Lanes out = lanes;
    for (cv::Mat1f& channel : out.rgb) {
        channel = channel.rowRange(lanes.centre() - half, lanes.centre() + half + 1).clone();
    }
    return out;
}

} // namespace pithward
