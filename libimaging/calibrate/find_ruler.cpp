#include "libimaging/calibrate/find_ruler.h"

#include "libimaging/calibrate/ruler_windows.h"

#include <opencv2/imgproc.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace pithward {

namespace {

constexpr double look_px_per_mm = 12.0;      ///< Of the overview; half millimetres are six pixels then.
constexpr double least_look_px_per_mm = 3.5; ///< Millimetres can still be seen.
constexpr double most_pixels = 1e8;          ///< Of the overview.
constexpr double steps_within = 0.04;        ///< Of a step: scatter of the marks.
constexpr double told_within = 0.1;

bool is_ruler(const RulerScale& scale, const Calibration& told) {
    if (!scale.graduation_by_mark_lengths || scale.marks < least_found_marks) {
        return false;
    }
    const double spacing = kind_of(*scale.graduation_by_mark_lengths).spacing.value();
    return scale.scatter_mm < steps_within * spacing &&
           std::abs(scale.px_per_mm / px_per_mm_along(told, scale.normal) - 1.0) < told_within;
}

/// A line through a point as long as asked, or up to the scan's border.
RulerLine through(const Scan& scan, ImagePoint middle, ImagePoint along, double length_px) {
    const auto reach = [&](ImagePoint way) {
        double far = 0.5 * length_px;
        const auto limit = [&](double at, double step, double last) {
            if (step != 0.0) {
                far = std::min(far, ((step > 0.0 ? last : 0.0) - at) / step);
            }
        };
        limit(middle.x, way.x, scan.width - 1.0);
        limit(middle.y, way.y, scan.height - 1.0);
        return middle + way * std::max(0.0, far);
    };
    return {reach(along * -1.0), reach(along)};
}

/// The ruler under a window, measured along as much of it as there is; nothing if it is none.
std::optional<RulerScale> measured_at(const ScanFile& scan, const RulerLine& window, const Calibration& told) {
    const auto first = scale_along(scan, window, std::nullopt, told);
    if (!first) {
        return std::nullopt;
    }
    const ImagePoint middle = (window.from + window.to) * 0.5;
    constexpr std::array lengths_mm{1000.0, 150.0, 80.0, 40.0, 20.0};
    for (const double length : lengths_mm) {
        const RulerLine line = through(scan.header(), middle, first->normal, length * first->px_per_mm);
        const auto scale = scale_along(scan, line, std::nullopt, told);
        if (scale && is_ruler(*scale, told)) {
            return *scale;
        }
    }
    return std::nullopt;
}

} // namespace

Outcome<std::optional<RulerScale>> find_ruler(const ScanFile& scan, const Calibration& told, const Work& work) {
    const Scan& header = scan.header();
    const double fewest = std::sqrt(static_cast<double>(header.width) * header.height / most_pixels);
    const int reduction =
        std::max({1, static_cast<int>(told.px_per_mm() / look_px_per_mm), static_cast<int>(std::ceil(fewest))});
    if (std::min(told.px_per_mm_x, told.px_per_mm_y) / reduction < least_look_px_per_mm) {
        return std::optional<RulerScale>();
    }
    const auto overview = scan.overview(reduction, work);
    if (!overview) {
        return tl::unexpected(overview.error());
    }
    cv::Mat grey;
    cv::cvtColor(*overview, grey, cv::COLOR_RGB2GRAY);
    cv::Mat1f look;
    grey.convertTo(look, CV_32F, 1.0 / 255.0);
    for (const calibrate::RulerWindow& window :
         calibrate::ruler_windows(look, told.px_per_mm_x / reduction, told.px_per_mm_y / reduction)) {
        if (work.stopped()) {
            return fail(header.file, "stopped", "start again when wanted");
        }
        // Pixel i of the overview covers [i * reduction, (i + 1) * reduction) of the scan.
        const auto on_scan = [&](ImagePoint p) {
            return ImagePoint{(p.x + 0.5) * reduction - 0.5, (p.y + 0.5) * reduction - 0.5};
        };
        if (auto ruler = measured_at(scan, {on_scan(window.line.from), on_scan(window.line.to)}, told)) {
            return ruler;
        }
    }
    return std::optional<RulerScale>();
}

} // namespace pithward
