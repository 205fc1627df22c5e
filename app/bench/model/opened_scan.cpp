#include "app/bench/model/opened_scan.h"

#include "app/picture/scan_picture.h"

#include <filesystem>

namespace pithward::bench {

std::string OpenedScan::name() const {
    return std::filesystem::path(path).filename().string();
}

Outcome<OpenedScan> open_scan(const std::string& path) {
    return ScanFile::open(path).map([&](const ScanFile& file) {
        return OpenedScan{
            path,
            file.header(),
            [file](QRect region, int reduction) {
                return file.read({region.x(), region.y(), region.width(), region.height()}, reduction)
                    .map(picture::picture_of);
            },
            [file](const Calibration& calibration, const Work& work) { return find_cores(file, calibration, work); },
            [file](const ReadingRequest& request, const Work& work) { return propose_reading(file, request, work); },
            [file](const NearRequest& request) { return boundary_near(file, request); },
            [file](const StripRequest& request, const Work& work) {
                return strip_picture(file, request, work).map([](const StripPicture& strip) {
                    return StripImage{picture::picture_of(strip.rgb), strip.light, strip.px_mm * strip.rgb.cols};
                });
            },
            [file] { return file.damage().has_value(); }};
    });
}

} // namespace pithward::bench
