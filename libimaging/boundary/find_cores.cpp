#include "libimaging/boundary/find_cores.h"

#include "libimaging/boundary/direction.h"
#include "libimaging/boundary/flat_strip.h"
#include "libimaging/boundary/path_to_pith.h"
#include "libimaging/boundary/pith_crossing.h"
#include "libimaging/boundary/wood/judge_wood.h"
#include "libimaging/boundary/wood/wood_model.h"
#include "libimaging/scan/beside.h"
#include "libimaging/strip/core_finder.h"
#include "libimaging/strip/lanes.h"
#include "libimaging/strip/strip_geometry.h"

#include <algorithm>
#include <cmath>
#include <iterator>

namespace pithward {

namespace {

constexpr double judging_px_per_mm = 24.0;    ///< Coarse enough to be quick, fine enough to tell sharp from soft.
constexpr double directing_half_mm = 1.6;     ///< The bend of the rings is taken within this of the path.
constexpr double worth_asking = -2.0;         ///< Log odds from which a pith on the core is asked about ...
constexpr double path_ends = 0.0;             ///< ... and from which the paths end there.
constexpr double least_side_to_read_mm = 4.0; ///< Less wood past the pith is left out.
constexpr std::size_t most_cores = 60;        ///< More are not on any mount: then it is no wood that was found.
constexpr double most_area_mm2 = 260e3;       ///< Two A3 sheets.

double probability_of(double log_odds) {
    return 1.0 / (1.0 + std::exp(-log_odds));
}

/// A path's strip at judging resolution.
struct Look {
    StripGeometry geometry;
    Lanes lanes;
};

Outcome<Look> look_along(const ScanFile& scan, const Calibration& calibration, const std::vector<ImagePoint>& path,
                         double width_mm) {
    const StripGeometry geometry(path, calibration);
    LanesOptions options;
    options.beyond_mm = 0.0;
    options.half_breadth_mm = 0.5 * width_mm;
    auto lanes = lanes_along(scan, geometry, std::min(judging_px_per_mm, calibration.px_per_mm()), options);
    if (!lanes) {
        return tl::unexpected(lanes.error());
    }
    return Look{geometry, std::move(*lanes)};
}

boundary::FlatStrip flattened(const Look& look, WoodType wood) {
    const Lanes middle = middle_of(look.lanes, directing_half_mm);
    const boundary::Relief relief = boundary::relief_of(middle);
    boundary::Signal signal = boundary::wood_model(wood).signal(relief, middle);
    signal.plan.follow.clear(); // single rings are of no account here
    return boundary::flat_strip(middle, relief, signal, look.geometry.length_mm());
}

/// Which way a strip runs. In diffuse-porous wood sharp changes say nothing of that: vessels and lines lie on either
/// side.
boundary::Direction direction_in(const boundary::FlatStrip& flat, WoodType wood) {
    if (wood == WoodType::DiffusePorous) {
        return {boundary::curvature_log_odds(flat), "curvature"};
    }
    return boundary::direction_of(flat);
}

/// One side of a core with its pith on it. That the path leads to the pith is evidence of the bark end too.
Outcome<FoundCore> side_of(const ScanFile& scan, const Calibration& calibration, FoundCore core, double pith_log_odds) {
    const auto look = look_along(scan, calibration, core.path, core.width_mm);
    if (!look) {
        return tl::unexpected(look.error());
    }
    const boundary::Direction direction = direction_in(flattened(*look, core.wood->type), core.wood->type);
    core.bark_end = {"curvature", probability_of(std::max(0.0, direction.log_odds + pith_log_odds))};
    return core;
}

Outcome<std::vector<FoundCore>> cores_of(const ScanFile& scan, const Calibration& calibration,
                                         const CoreOutline& outline) {
    const auto look = look_along(scan, calibration, outline.path, outline.width_mm);
    if (!look) {
        return tl::unexpected(look.error());
    }
    auto centre = beside([&] { return boundary::round_centre(look->lanes); });
    FoundCore core;
    core.path = outline.path;
    core.width_mm = outline.width_mm;
    core.wood = boundary::judge_wood(look->lanes);
    const boundary::FlatStrip flat = flattened(*look, core.wood->type);
    const auto crossing = boundary::pith_crossing(centre.get(), flat);
    if (crossing && crossing->log_odds > worth_asking) {
        core.pith = PithOnCore{look->geometry.image_point(crossing->at), probability_of(crossing->log_odds)};
    }
    if (!crossing || crossing->log_odds <= path_ends) {
        const boundary::Direction direction = direction_in(flat, core.wood->type);
        core.bark_end = {direction.how, probability_of(std::abs(direction.log_odds))};
        if (direction.log_odds < 0.0) {
            std::ranges::reverse(core.path);
        }
        return std::vector<FoundCore>{core};
    }
    core.pith->path_ends_there = true;
    const double before_mm = crossing->at.s_mm;
    const double after_mm = look->geometry.length_mm() - before_mm;
    std::vector<FoundCore> sides;
    for (const bool forward : {true, false}) {
        if ((forward ? before_mm : after_mm) < std::min(least_side_to_read_mm, std::max(before_mm, after_mm))) {
            continue;
        }
        FoundCore side = core;
        side.path = boundary::path_to_pith(outline.path, calibration, core.pith->at, before_mm, forward);
        auto read = side_of(scan, calibration, std::move(side), crossing->log_odds);
        if (!read) {
            return tl::unexpected(read.error());
        }
        sides.push_back(std::move(*read));
    }
    return sides;
}

} // namespace

Outcome<std::vector<FoundCore>> find_cores(const ScanFile& scan, const Calibration& calibration, const Work& work) {
    const double area_mm2 =
        scan.header().width / calibration.px_per_mm_x * scan.header().height / calibration.px_per_mm_y;
    if (area_mm2 > most_area_mm2) {
        return fail(scan.header().file, "the scan is larger than two A3 sheets, too large to look for cores on it",
                    "check the resolution, or draw the path by hand");
    }
    const Work outlining{work.stop, [&](double done) { work.report(0.7 * done); }};
    const auto outlines = outline_cores(scan, calibration, outlining);
    if (!outlines) {
        return tl::unexpected(outlines.error());
    }
    if (outlines->size() > most_cores) {
        return fail(scan.header().file, "more than 60 places look like cores",
                    "check the resolution, scan fewer cores at a time, or draw the path by hand");
    }
    std::vector<FoundCore> cores;
    double done = 0.0;
    for (const CoreOutline& outline : *outlines) {
        if (work.stopped()) {
            return fail(scan.header().file, "stopped", "start again when wanted");
        }
        auto found = cores_of(scan, calibration, outline);
        if (!found) {
            return tl::unexpected(found.error());
        }
        std::ranges::move(*found, std::back_inserter(cores));
        done += 1.0;
        work.report(0.7 + 0.3 * done / static_cast<double>(outlines->size()));
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
    request.pith = core.pith;
    return request;
}

} // namespace pithward
