#include "libimaging/scan/scan_file.h"

#include "libimaging/scan/vips_image.h"

#include <opencv2/core/utility.hpp>
#include <opencv2/imgproc.hpp>

#include <algorithm>
#include <array>
#include <atomic>
#include <cmath>
#include <filesystem>
#include <mutex>
#include <string_view>
#include <utility>

namespace pithward {

using scan::VipsHandle;

struct ScanFile::State {
    Scan header;
    VipsHandle pixels; ///< RGB of 8 or 16 bit; decoded when first needed.
};

namespace {

Fault damaged(const std::string& path) {
    const std::string complaint = scan::vips_complaint();
    return {path, "the image data is damaged or cut short" + (complaint.empty() ? "" : " (" + complaint + ")"),
            "scan again or take an undamaged copy"};
}

/// The loaders that we trust with scans. A new format is one line here.
constexpr std::array loaders{
    std::string_view("VipsForeignLoadTiffFile"),
    std::string_view("VipsForeignLoadPngFile"),
    std::string_view("VipsForeignLoadJpegFile"),
};

Outcome<VipsHandle> load(const std::string& path) {
    const char* loader = vips_foreign_find_load(path.c_str());
    vips_error_clear();
    if (loader == nullptr || std::ranges::find(loaders, std::string_view(loader)) == loaders.end()) {
        return fail(path, "this is not an image that can be read", "give a TIFF, PNG or JPEG file");
    }
    VipsHandle image(vips_image_new_from_file(path.c_str(), "access", VIPS_ACCESS_RANDOM, "fail_on",
                                              VIPS_FAIL_ON_TRUNCATED, nullptr));
    if (!image) {
        return tl::unexpected(damaged(path));
    }
    return image;
}

std::optional<double> dots_per_inch(double px_per_mm) {
    // libvips answers with 1 px/mm where a file has no tag.
    if (!std::isfinite(px_per_mm) || px_per_mm <= 0.0 || std::abs(px_per_mm - 1.0) < 1e-9) {
        return std::nullopt;
    }
    return px_per_mm * Calibration::millimetres_per_inch;
}

Scan header_of(const std::string& path, VipsImage* image) {
    Scan header;
    header.file = path;
    header.width = vips_image_get_width(image);
    header.height = vips_image_get_height(image);
    header.bands = vips_image_get_bands(image);
    header.bits = vips_image_get_format(image) == VIPS_FORMAT_USHORT ? 16 : 8;
    header.tag_dpi_x = dots_per_inch(vips_image_get_xres(image));
    header.tag_dpi_y = dots_per_inch(vips_image_get_yres(image));
    header.orientation = vips_image_get_orientation(image);
    std::error_code ignored;
    header.bytes = static_cast<std::int64_t>(std::filesystem::file_size(path, ignored));
    return header;
}

std::optional<Fault> unusable(const Scan& header, VipsImage* image) {
    if (header.width < 16 || header.height < 16) {
        return Fault{header.file,
                     "the image is only " + std::to_string(header.width) + " x " + std::to_string(header.height) +
                         " pixels",
                     "give a scan of a core"};
    }
    const auto area = std::int64_t{header.width} * header.height;
    if (header.width > ScanFile::greatest_side || header.height > ScanFile::greatest_side ||
        area > ScanFile::greatest_area) {
        return Fault{header.file,
                     "the image claims to be " + std::to_string(header.width) + " x " + std::to_string(header.height) +
                         " pixels, which no scan is",
                     "scan again or take an undamaged copy"};
    }
    const VipsBandFormat format = vips_image_get_format(image);
    if (format != VIPS_FORMAT_UCHAR && format != VIPS_FORMAT_USHORT) {
        return Fault{header.file, "its pixels are neither 8 nor 16 bit", "save the scan with 8 or 16 bits a channel"};
    }
    switch (vips_image_get_interpretation(image)) {
    case VIPS_INTERPRETATION_sRGB:
    case VIPS_INTERPRETATION_RGB:
    case VIPS_INTERPRETATION_RGB16:
    case VIPS_INTERPRETATION_B_W:
    case VIPS_INTERPRETATION_GREY16:
        break;
    default:
        return Fault{header.file, "its colour space can't be used", "save the scan in RGB or grey"};
    }
    if (header.bands < 1 || header.bands > 4) {
        return Fault{header.file, "it has " + std::to_string(header.bands) + " colour channels",
                     "save the scan in RGB or grey"};
    }
    return std::nullopt;
}

/// Grey becomes RGB; an alpha channel is dropped.
VipsHandle as_rgb(VipsHandle image) {
    const int bands = vips_image_get_bands(image.get());
    if (bands == 3) {
        return image;
    }
    VipsImage* rgb = nullptr;
    if (bands == 4) {
        vips_extract_band(image.get(), &rgb, 0, "n", 3, nullptr);
        return VipsHandle(rgb);
    }
    VipsImage* first = nullptr;
    if (vips_extract_band(image.get(), &first, 0, nullptr) != 0) {
        return nullptr;
    }
    const VipsHandle grey(first);
    std::array<VipsImage*, 3> same{first, first, first};
    vips_bandjoin(same.data(), &rgb, 3, nullptr);
    return VipsHandle(rgb);
}

int type_of(VipsImage* image) {
    return vips_image_get_format(image) == VIPS_FORMAT_USHORT ? CV_16UC3 : CV_8UC3;
}

/// Averages whole squares of `step` pixels of one stretch of rows into `out`. False on damaged data.
bool average_rows(VipsImage* image, const cv::Rect& rows, int step, cv::Mat out) {
    const scan::VipsRegionHandle region(vips_region_new(image));
    const VipsRect rect{rows.x, rows.y, rows.width, rows.height};
    if (!region || vips_region_prepare(region.get(), &rect) != 0) {
        return false;
    }
    // libvips hands out its own memory: nothing is copied but the result.
    const cv::Mat pixels(rows.height, rows.width, type_of(image), VIPS_REGION_ADDR(region.get(), rows.x, rows.y),
                         VIPS_REGION_LSKIP(region.get()));
    if (step == 1) {
        pixels.copyTo(out);
    } else {
        cv::resize(pixels, out, out.size(), 0.0, 0.0, cv::INTER_AREA);
    }
    return true;
}

/// The region averaged over squares, stretch by stretch so that memory stays bounded. Its sides are whole multiples of
/// the step.
Outcome<cv::Mat> averaged(const std::string& path, VipsImage* image, const cv::Rect& region, int step,
                          const Work& work) {
    constexpr std::int64_t stretch_bytes = 8'000'000;
    cv::Mat out(region.height / step, region.width / step, type_of(image));
    const std::int64_t row_bytes = static_cast<std::int64_t>(region.width) * static_cast<std::int64_t>(out.elemSize());
    const int rows = std::max(1, static_cast<int>(stretch_bytes / (row_bytes * step))); // of the result
    const int stretches = (out.rows + rows - 1) / rows;
    std::atomic<bool> whole = true;
    std::mutex guard;
    int done = 0;
    cv::parallel_for_(cv::Range(0, stretches), [&](const cv::Range& range) {
        for (int k = range.start; k < range.end && whole && !work.stopped(); ++k) {
            const cv::Range part(k * rows, std::min(out.rows, (k + 1) * rows));
            const cv::Rect source(region.x, region.y + part.start * step, region.width, part.size() * step);
            if (!average_rows(image, source, step, out.rowRange(part))) {
                whole = false;
            }
            const std::scoped_lock lock(guard);
            work.report(static_cast<double>(++done) / stretches);
        }
    });
    if (!whole) {
        return tl::unexpected(damaged(path));
    }
    if (work.stopped()) {
        return fail(path, "stopped", "start again when wanted");
    }
    return out;
}

} // namespace

Outcome<ScanFile> ScanFile::open(const std::string& path) {
    if (!scan::start_vips()) {
        return fail(path, "the image library could not be started", "reinstall libvips");
    }
    std::error_code error;
    if (!std::filesystem::is_regular_file(path, error)) {
        return fail(path, "there is no such file", "check the name");
    }
    auto image = load(path);
    if (!image) {
        return tl::unexpected(image.error());
    }
    auto state = std::make_shared<State>();
    state->header = header_of(path, image->get());
    if (auto fault = unusable(state->header, image->get())) {
        return tl::unexpected(*fault);
    }
    state->pixels = as_rgb(std::move(*image));
    if (!state->pixels) {
        return tl::unexpected(damaged(path));
    }
    return ScanFile(std::move(state));
}

const Scan& ScanFile::header() const {
    return state_->header;
}

Outcome<cv::Mat> ScanFile::read(cv::Rect region, int reduction) const {
    const Scan& header = state_->header;
    region &= cv::Rect(0, 0, header.width, header.height);
    const int step = std::max(1, reduction);
    region.width -= region.width % step;
    region.height -= region.height % step;
    if (region.empty()) {
        return fail(header.file, "the region asked for lies outside the scan", "choose a place on the scan");
    }
    return averaged(header.file, state_->pixels.get(), region, step, {});
}

Outcome<cv::Mat> ScanFile::overview(int reduction, const Work& work) const {
    const Scan& header = state_->header;
    const int step = std::clamp(reduction, 1, std::min(header.width, header.height));
    const cv::Rect region(0, 0, header.width - header.width % step, header.height - header.height % step);
    auto whole = averaged(header.file, state_->pixels.get(), region, step, work);
    if (whole && whole->depth() == CV_16U) {
        whole->convertTo(*whole, CV_8U, 1.0 / 257.0);
    }
    return whole;
}

} // namespace pithward
