#include "app/bench/model/opened_scan.h"

#include "app/bench/model/piece_shelf.h"
#include "app/picture/scan_picture.h"
#include "libimaging/calibrate/find_ruler.h"
#include "libimaging/calibrate/scale_findings.h"

#include <filesystem>
#include <memory>

namespace pithward::bench {

namespace {

Outcome<std::optional<RulerScale>> seen_ruler(const ScanFile& file, const std::optional<RulerLine>& line,
                                              const std::optional<Calibration>& told, const Work& work) {
    if (line) {
        return scale_along(file, *line, std::nullopt, told).map([](RulerScale scale) { return std::optional(scale); });
    }
    if (!told) {
        return fail(file.header().file, "a ruler can be looked for only when the scale is roughly known",
                    "give the resolution, or draw a line along the ruler");
    }
    return find_ruler(file, *told, work);
}

Outcome<std::optional<RulerReading>> read_ruler(const ScanFile& file, const std::optional<RulerLine>& line,
                                                const std::optional<Calibration>& told, const Work& work) {
    const auto scale = seen_ruler(file, line, told, work);
    if (!scale) {
        return tl::unexpected(scale.error());
    }
    if (!*scale) {
        return std::optional<RulerReading>();
    }
    return calibration_by_rulers(file.header(), {**scale}, told).map([&](const RulerCalibration& rulers) {
        RulerReading reading{**scale, rulers.for_path({(*scale)->line.from, (*scale)->line.to}), {}};
        if (const auto differs = told ? disagreement(**scale, *told) : std::nullopt) {
            reading.disagreement = differs->reason + differs->otherwise;
        }
        return std::optional(reading);
    });
}

} // namespace

std::string OpenedScan::name() const {
    return named.empty() ? std::filesystem::path(path).filename().string() : named;
}

Outcome<OpenedScan> open_scan(const std::string& path) {
    return ScanFile::open(path).map([&](const ScanFile& file) {
        return OpenedScan{
            path,
            {},
            file.header(),
            field_data_for(path),
            [file](QRect region, int reduction) {
                return file.read({region.x(), region.y(), region.width(), region.height()}, reduction)
                    .map(picture::picture_of);
            },
            [file](int reduction, const std::function<void(int, const QImage&)>& part, const Work& work) {
                return file.stream(
                    reduction, [&](int first, const cv::Mat& rows) { part(first, picture::picture_of(rows)); }, work);
            },
            [file](const Calibration& calibration, const Work& work) { return find_cores(file, calibration, work); },
            [file, shelf = std::make_shared<PieceShelf>()](const ReadingRequest& request, const Work& work) {
                return propose_reading(file, request, work, shelf.get());
            },
            [file](const NearRequest& request) { return boundary_near(file, request); },
            [file](const StripRequest& request, const Work& work) {
                return strip_picture(file, request, work).map([](const StripPicture& strip) {
                    return StripImage{picture::picture_of(strip.rgb), strip.light, strip.px_mm * strip.rgb.cols};
                });
            },
            [file](const std::optional<RulerLine>& line, const std::optional<Calibration>& told, const Work& work) {
                return read_ruler(file, line, told, work);
            },
            [file] { return file.damage().has_value(); }};
    });
}

} // namespace pithward::bench
