#include "libimaging/scan/load_image.h"

#include "libimaging/scan/check_file.h"
#include "libimaging/scan/file_header.h"
#include "libimaging/scan/raw_rows.h"
#include "libimaging/scan/scan_file.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <filesystem>
#include <optional>
#include <string_view>
#include <utility>

namespace pithward::scan {

namespace {

/// The loaders that we trust with scans. A new format is one line here.
constexpr std::array loaders{
    std::string_view("VipsForeignLoadTiffFile"),
    std::string_view("VipsForeignLoadPngFile"),
    std::string_view("VipsForeignLoadJpegFile"),
};

constexpr auto copy_anew = "scan again or take an undamaged copy";

/// Nothing where the header makes sense.
std::optional<Fault> fault_of_header(const std::string& path, const FileHeader& header) {
    if (header.kind == FileHeader::Kind::Other) {
        return Fault{path, "this is not an image that can be read", "give a TIFF, PNG or JPEG file"};
    }
    if (header.cut_short) {
        return Fault{path, "the file is cut short: it ends before its header does", copy_anew};
    }
    if (header.size && (header.size->width == 0 || header.size->height == 0)) {
        return Fault{path,
                     "the image claims to be " + std::to_string(header.size->width) + " x " +
                         std::to_string(header.size->height) + " pixels: it has no pixel",
                     copy_anew};
    }
    return std::nullopt;
}

/// What is kept of an image that is opened.
enum class Kept { Nothing, Whole };

/// Opened by libvips, which never goes through files of its own: they would stay behind when the process is ended.
/// What can't be opened at all is told as what it is.
Outcome<VipsHandle> opened(const std::string& path, VipsAccess access, Kept kept) {
    VipsHandle image(vips_image_new_from_file(path.c_str(), "access", access, "memory", kept == Kept::Whole, "fail_on",
                                              VIPS_FAIL_ON_TRUNCATED, nullptr));
    if (!image) {
        return tl::unexpected(damaged(path));
    }
    return image;
}

/// What the file's own tag says. libvips puts in a resolution where there is none, and takes bare numbers for pixels to
/// the millimetre where the tag has no unit: neither is a resolution.
std::optional<double> dots_per_inch(VipsImage* image, const FileHeader& file, double px_per_mm) {
    const bool told = file.kind == FileHeader::Kind::Png ? file.png_resolution
                                                         : vips_image_get_typeof(image, VIPS_META_RESOLUTION_UNIT) != 0;
    if (!told || !std::isfinite(px_per_mm) || px_per_mm <= 0.0) {
        return std::nullopt;
    }
    return px_per_mm * Calibration::millimetres_per_inch;
}

Scan header_of(const std::string& path, VipsImage* image, const FileHeader& file) {
    Scan header;
    header.file = path;
    header.width = vips_image_get_width(image);
    header.height = vips_image_get_height(image);
    header.bands = vips_image_get_bands(image);
    header.bits = vips_image_get_format(image) == VIPS_FORMAT_USHORT ? 16 : 8;
    header.tag_dpi_x = dots_per_inch(image, file, vips_image_get_xres(image));
    header.tag_dpi_y = dots_per_inch(image, file, vips_image_get_yres(image));
    header.orientation = vips_image_get_orientation(image);
    std::error_code ignored;
    header.bytes = static_cast<std::int64_t>(std::filesystem::file_size(path, ignored));
    return header;
}

std::int64_t decoded_bytes(const Scan& header) {
    return std::int64_t{header.width} * header.height * header.bands * (header.bits / 8);
}

std::optional<Fault> fault_of_size(const Scan& header, bool in_passes) {
    const std::string size = std::to_string(header.width) + " x " + std::to_string(header.height) + " pixels";
    if (header.width < 16 || header.height < 16) {
        return Fault{header.file, "the image is only " + size, "give a scan of a core"};
    }
    const auto area = std::int64_t{header.width} * header.height;
    if (header.width > ScanFile::greatest_side || header.height > ScanFile::greatest_side ||
        area > ScanFile::greatest_area) {
        return Fault{header.file, "the image claims to be " + size + ", more than the 1,600 million that can be read",
                     "scan fewer cores at a time, or with a lower resolution"};
    }
    // The densest packing of these formats comes to some 500 pixels a byte on an empty page.
    constexpr std::int64_t small_area = 50'000'000;
    constexpr std::int64_t most_pixels_a_byte = 1500;
    if (area > small_area && area / most_pixels_a_byte > header.bytes) {
        return Fault{header.file,
                     "the image claims to be " + size + ", but the file has only " + std::to_string(header.bytes) +
                         " bytes",
                     copy_anew};
    }
    constexpr std::int64_t most_bytes_in_passes = 1'000'000'000;
    if (in_passes && decoded_bytes(header) > most_bytes_in_passes) {
        return Fault{header.file, "an interlaced or progressive image of " + size + " takes too much memory",
                     "save it anew in one pass, or as a TIFF"};
    }
    return std::nullopt;
}

std::optional<Fault> fault_of_pixels(const Scan& header, VipsImage* image) {
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

Outcome<VipsHandle> made_rgb(const std::string& path, VipsHandle image) {
    VipsHandle rgb = as_rgb(std::move(image));
    if (!rgb) {
        return tl::unexpected(damaged(path));
    }
    return rgb;
}

} // namespace

Fault damaged(const std::string& path) {
    const std::string complaint = vips_complaint();
    if (complaint.find("separate planes not supported") != std::string::npos) {
        return {path, "a TIFF with its colours in separate tiles can't be read",
                "save it anew with the colours pixel by pixel (interleaved)"};
    }
    return {path, "the image data is damaged or cut short" + (complaint.empty() ? "" : " (" + complaint + ")"),
            copy_anew};
}

Outcome<LoadedImage> load_image(const std::string& path, std::int64_t most_memory) {
    if (auto fault = fault_of_file(path)) {
        return tl::unexpected(*fault);
    }
    const FileHeader file = file_header(path);
    if (auto fault = fault_of_header(path, file)) {
        return tl::unexpected(*fault);
    }
    const char* loader = vips_foreign_find_load(path.c_str());
    vips_error_clear();
    if (loader == nullptr || std::ranges::find(loaders, std::string_view(loader)) == loaders.end()) {
        return fail(path, "its header is damaged, or of a kind that can't be read",
                    "save it anew as a TIFF, PNG or JPEG file");
    }
    const bool in_regions = (vips_foreign_flags(loader, path.c_str()) & VIPS_FOREIGN_PARTIAL) != 0;
    auto image = opened(path, VIPS_ACCESS_RANDOM, in_regions ? Kept::Nothing : Kept::Whole);
    if (!image) {
        return tl::unexpected(image.error());
    }
    LoadedImage loaded;
    loaded.header = header_of(path, image->get(), file);
    auto fault = fault_of_size(loaded.header, file.in_passes);
    fault = fault ? fault : fault_of_pixels(loaded.header, image->get());
    if (fault) {
        return tl::unexpected(*fault);
    }
    loaded.in_regions = in_regions || file.raw_at.has_value();
    loaded.one_by_one = in_regions && !file.raw_at.has_value();
    loaded.shrinks = file.kind == FileHeader::Kind::Jpeg && !file.in_passes;
    loaded.needs_scratch = !loaded.in_regions && decoded_bytes(loaded.header) > most_memory;
    loaded.pixels = file.raw_at ? raw_rows(loaded.header, *file.raw_at) : as_rgb(std::move(*image));
    if (!loaded.pixels) {
        return tl::unexpected(damaged(path));
    }
    return loaded;
}

Outcome<VipsHandle> load_top_to_bottom(const std::string& path) {
    return opened(path, VIPS_ACCESS_SEQUENTIAL, Kept::Nothing).and_then([&](VipsHandle image) {
        return made_rgb(path, std::move(image));
    });
}

Outcome<VipsHandle> load_shrunk(const std::string& path, int by) {
    VipsHandle image(vips_image_new_from_file(path.c_str(), "access", VIPS_ACCESS_SEQUENTIAL, "fail_on",
                                              VIPS_FAIL_ON_TRUNCATED, "shrink", by, nullptr));
    if (!image) {
        return tl::unexpected(damaged(path));
    }
    return made_rgb(path, std::move(image));
}

} // namespace pithward::scan
