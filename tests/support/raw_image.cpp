#include "tests/support/raw_image.h"

#include "libimaging/scan/vips_image.h"

#include <cmath>
#include <random>
#include <stdexcept>

namespace pithward::test {

namespace {

VipsBandFormat format_of(const cv::Mat& pixels) {
    switch (pixels.depth()) {
    case CV_8U:
        return VIPS_FORMAT_UCHAR;
    case CV_16U:
        return VIPS_FORMAT_USHORT;
    default:
        return VIPS_FORMAT_FLOAT;
    }
}

VipsInterpretation interpretation_of(const cv::Mat& pixels, bool cmyk) {
    const bool deep = pixels.depth() == CV_16U;
    if (cmyk) {
        return VIPS_INTERPRETATION_CMYK;
    }
    if (pixels.channels() < 3) {
        return deep ? VIPS_INTERPRETATION_GREY16 : VIPS_INTERPRETATION_B_W;
    }
    return deep ? VIPS_INTERPRETATION_RGB16 : VIPS_INTERPRETATION_sRGB;
}

VipsForeignTiffCompression compression_of(Written::Packing packing) {
    switch (packing) {
    case Written::Packing::Lzw:
        return VIPS_FOREIGN_TIFF_COMPRESSION_LZW;
    case Written::Packing::Deflate:
        return VIPS_FOREIGN_TIFF_COMPRESSION_DEFLATE;
    case Written::Packing::None:
        break;
    }
    return VIPS_FOREIGN_TIFF_COMPRESSION_NONE;
}

void require(bool done) {
    if (!done) {
        throw std::runtime_error("libvips: " + scan::vips_complaint());
    }
}

} // namespace

void write_raw(const std::string& file, const cv::Mat& pixels, const Written& how) {
    require(scan::start_vips());
    const cv::Mat whole = pixels.clone();
    const scan::VipsHandle raw(vips_image_new_from_memory(whole.data, whole.total() * whole.elemSize(), whole.cols,
                                                          whole.rows, whole.channels(), format_of(whole)));
    require(raw != nullptr);
    VipsImage* out = nullptr;
    const double none = 1.0; // libvips takes 1 px/mm for "not known".
    require(vips_copy(raw.get(), &out, "xres", how.dpi_x > 0.0 ? how.dpi_x / 25.4 : none, "yres",
                      how.dpi_y > 0.0 ? how.dpi_y / 25.4 : none, "interpretation", interpretation_of(whole, how.cmyk),
                      nullptr) == 0);
    const scan::VipsHandle image(out);
    if (how.orientation > 0) {
        vips_image_set_int(image.get(), VIPS_META_ORIENTATION, how.orientation);
    }
    switch (how.kind) {
    case Written::Kind::TiffStrips:
    case Written::Kind::TiffTiles:
        require(vips_tiffsave(image.get(), file.c_str(), "compression", compression_of(how.packing), "tile",
                              how.kind == Written::Kind::TiffTiles ? 1 : 0, "tile_width", 64, "tile_height", 64,
                              "resunit", VIPS_FOREIGN_TIFF_RESUNIT_INCH, nullptr) == 0);
        return;
    case Written::Kind::Png:
        require(vips_pngsave(image.get(), file.c_str(), nullptr) == 0);
        return;
    case Written::Kind::Jpeg:
        require(vips_jpegsave(image.get(), file.c_str(), "Q", how.quality, "subsample_mode", VIPS_FOREIGN_SUBSAMPLE_OFF,
                              nullptr) == 0);
        return;
    }
}

cv::Mat patterned(int width, int height, int type, unsigned seed) {
    cv::Mat pixels(height, width, type);
    std::mt19937 random(seed);
    const int channels = pixels.channels();
    const bool deep = pixels.depth() == CV_16U;
    for (int y = 0; y < height; ++y) {
        for (int x = 0; x < width; ++x) {
            for (int c = 0; c < channels; ++c) {
                const double wave =
                    std::sin(0.21 * x + 0.08 * y * (c + 1) + c) + std::cos(0.013 * x * (c + 2) - 0.11 * y);
                const double share = 0.5 + 0.2 * wave + 0.05 * (static_cast<double>(random()) / 4294967296.0 - 0.5);
                if (deep) {
                    pixels.ptr<std::uint16_t>(y)[x * channels + c] = cv::saturate_cast<std::uint16_t>(65535.0 * share);
                } else {
                    pixels.ptr<std::uint8_t>(y)[x * channels + c] = cv::saturate_cast<std::uint8_t>(255.0 * share);
                }
            }
        }
    }
    return pixels;
}

} // namespace pithward::test
