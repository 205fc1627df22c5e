#include "app/batch/scan_scale.h"

#include "libimaging/calibrate/find_ruler.h"
#include "libimaging/calibrate/scale_findings.h"
#include "libimaging/scan/beside.h"

namespace pithward::batch {

namespace {

/// The scales along the lines given.
Outcome<std::vector<RulerScale>> drawn_rulers(const ScanFile& scan, const std::optional<Calibration>& told,
                                              const RulerTask& task) {
    std::vector<RulerScale> scales;
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

/// The scale along a ruler that is to be found and used.
Outcome<std::vector<RulerScale>> found_ruler(const ScanFile& scan, const Calibration& told) {
    const auto found = find_ruler(scan, told);
    if (!found) {
        return tl::unexpected(found.error());
    }
    if (!*found) {
        return fail(scan.header().file, "no ruler was found on the scan",
                    "draw a line along its marks with --ruler \"x,y x,y\"");
    }
    return std::vector{**found};
}

} // namespace

Calibration ScanScale::for_path(const std::vector<ImagePoint>& path) const {
    return rulers ? rulers->for_path(path) : told.value_or(Calibration());
}

Outcome<void> ScanScale::add_findings(Reading& reading) const {
    if (rulers) {
        add_scale_findings(reading, *rulers, told);
    } else if (seen.valid()) {
        const auto& found = seen.get();
        if (!found) {
            return tl::unexpected(found.error());
        }
        if (*found) {
            add_seen_ruler_finding(reading, **found, *told);
        }
    }
    return {};
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
    const bool look = scale.told && task.lines.empty();
    if (look && task.search == RulerTask::Search::Compare) {
        scale.seen = beside([&scan, told = *scale.told] { return find_ruler(scan, told); }).share();
    }
    auto scales = look && task.search == RulerTask::Search::Use ? found_ruler(scan, *scale.told)
                                                                : drawn_rulers(scan, scale.told, task);
    if (!scales) {
        return tl::unexpected(scales.error());
    }
    if (scales->empty()) {
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
