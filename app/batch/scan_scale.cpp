#include "app/batch/scan_scale.h"

#include "libimaging/calibrate/scale_findings.h"

namespace pithward::batch {

Calibration ScanScale::for_path(const std::vector<ImagePoint>& path) const {
    return rulers ? rulers->for_path(path) : told.value_or(Calibration());
}

void ScanScale::add_findings(Reading& reading) const {
    if (rulers) {
        add_scale_findings(reading, *rulers, told);
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
    std::vector<RulerScale> scales;
    for (const RulerLine& line : task.lines) {
        auto along = task.apart ? scale_between(scan.header(), line, *task.apart, scale.told)
                                : scale_along(scan, line, task.graduation, scale.told);
        if (!along) {
            return tl::unexpected(along.error());
        }
        scales.push_back(std::move(*along));
    }
    if (!scales.empty()) {
        auto rulers = calibration_by_rulers(scan.header(), std::move(scales), scale.told);
        if (!rulers) {
            return tl::unexpected(rulers.error());
        }
        scale.rulers = std::move(*rulers);
    }
    return scale;
}

} // namespace pithward::batch
