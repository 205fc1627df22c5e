#include "libimaging/boundary/find_cores.h"

#include "libimaging/boundary/direction.h"
#include "libimaging/boundary/flat_strip.h"
#include "libimaging/boundary/wood/judge_wood.h"
#include "libimaging/boundary/wood/wood_model.h"
#include "libimaging/strip/core_finder.h"
#include "libimaging/strip/lanes.h"
#include "libimaging/strip/strip_geometry.h"

#include <algorithm>
#include <cmath>

namespace pithward {

namespace {

constexpr double judging_px_per_mm = 24.0; ///< Coarse enough to be quick, fine enough to tell sharp from soft.
constexpr double directing_half_mm = 1.6;  ///< The bend of the rings is taken within this of the path.

Outcome<FoundCore> directed(const ScanFile& scan, const Calibration& calibration, const CoreOutline& outline) {
    const StripGeometry geometry(outline.path, calibration);
    const double px_per_mm = std::min(judging_px_per_mm, calibration.px_per_mm());
    LanesOptions options;
    options.beyond_mm = 0.0;
    options.half_breadth_mm = 0.5 * outline.width_mm;
    const auto lanes = lanes_along(scan, geometry, px_per_mm, options);
    if (!lanes) {
        return tl::unexpected(lanes.error());
    }
    FoundCore core;
    core.wood = boundary::judge_wood(*lanes);
    const Lanes middle = middle_of(*lanes, directing_half_mm);
    const boundary::Relief relief = boundary::relief_of(middle);
    const boundary::WoodModel& model = boundary::wood_model(core.wood->type);
    const boundary::Direction direction = boundary::direction_of(
        boundary::flat_strip(middle, relief, model.signal(relief, middle), geometry.length_mm()));
    core.path = outline.path;
    core.width_mm = outline.width_mm;
    core.bark_end = {direction.how, 1.0 / (1.0 + std::exp(-std::abs(direction.log_odds)))};
    if (direction.log_odds < 0.0) {
        std::ranges::reverse(core.path);
    }
    return core;
}

} // namespace

Outcome<std::vector<FoundCore>> find_cores(const ScanFile& scan, const Calibration& calibration, const Work& work) {
    const Work outlining{work.stop, [&](double done) { work.report(0.7 * done); }};
    const auto outlines = outline_cores(scan, calibration, outlining);
    if (!outlines) {
        return tl::unexpected(outlines.error());
    }
    std::vector<FoundCore> cores;
    for (const CoreOutline& outline : *outlines) {
        if (work.stopped()) {
            return fail(scan.header().file, "stopped", "start again when wanted");
        }
        auto core = directed(scan, calibration, outline);
        if (!core) {
            return tl::unexpected(core.error());
        }
        cores.push_back(std::move(*core));
        work.report(0.7 + 0.3 * static_cast<double>(cores.size()) / static_cast<double>(outlines->size()));
    }
    return cores;
}

ReadingRequest request_for(const FoundCore& core, const std::string& scan_name, const Calibration& calibration) {
    ReadingRequest request;
    request.scan_name = scan_name;
    request.calibration = calibration;
    request.path = core.path;
    request.bark_end = core.bark_end;
    request.breadth_mm = core.width_mm;
    request.judged = core.wood;
    return request;
}

} // namespace pithward
