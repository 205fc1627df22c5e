#include "app/batch/scan_scale.h"

#include "libimaging/calibrate/find_ruler.h"
#include "libimaging/calibrate/scale_findings.h"

namespace pithward::batch {

namespace {

/// The scales along the lines given, or along a ruler found that is to be used.
Outcome<std::vector<RulerScale>> ruler_scales(const ScanFile& scan, const std::optional<Calibration>& told,
                                              const RulerTask& task, const std::optional<RulerScale>& found) {
    std::vector<RulerScale> scales;
    if (task.search == RulerTask::Search::Use && found) {
        scales.push_back(*found);
    }
    for (const RulerLine& line : task.lines) {
        auto along = task.apart ? scale_between(scan.header(), line, *task.apart, told)
                                : scale_along(scan, line, task.graduation, told);
        if (!along) {
            return tl::unexpected(along.error());
        }
        scales.push_back(*along);
    }
    return scales;
}

Outcome<std::optional<RulerScale>> found_ruler(const ScanFile& scan, const std::optional<Calibration>& told,
                                               const RulerTask& task) {
    if (!told || task.search == RulerTask::Search::No || !task.lines.empty()) {
        return std::optional<RulerScale>();
    }
    auto found = find_ruler(scan, *told);
    if (found && !*found && task.search == RulerTask::Search::Use) {
        return fail(scan.header().file, "no ruler was found on the scan",
                    "draw a line along its marks with --ruler \"x,y x,y\"");
    }
    return found;
}

} // namespace

Calibration ScanScale::for_path(const std::vector<ImagePoint>& path) const {
    return rulers ? rulers->for_path(path) : told.value_or(Calibration());
}

void ScanScale::add_findings(Reading& reading) const {
    if (rulers) {
        add_scale_findings(reading, *rulers, told);
    } else if (seen && told) {
        add_seen_ruler_finding(reading, *seen, *told);
    }
}

Outcome<ScanScale> scale_of(const ScanFile& scan, std::optional<double> given_dpi, const RulerTask& task) {
    ScanScale scale;
    const auto believed = believed_calibration(scan.header(), given_dpi);
    if (!believed && (task.lines.empty() || given_dpi)) {
        return tl::unexpected(believed.error());
    }
    if (believed) {
        scale.told = *believed;
    }
    auto found = found_ruler(scan, scale.told, task);
    if (!found) {
        return tl::unexpected(found.error());
    }
    auto scales = ruler_scales(scan, scale.told, task, *found);
    if (!scales) {
        return tl::unexpected(scales.error());
    }
    if (scales->empty()) {
        scale.seen = *found;
        return scale;
    }
    auto rulers = calibration_by_rulers(scan.header(), std::move(*scales), scale.told);
    if (!rulers) {
        return tl::unexpected(rulers.error());
    }
    scale.rulers = std::move(*rulers);
    return scale;
}

} // namespace pithward::batch
