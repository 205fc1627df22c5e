#include "demo-scans/maker/write.h"

#include <vips/vips.h>

#include <memory>

namespace pithward::demo {

std::string suffix(Format format) {
    switch (format) {
    case Format::Jpeg:
        return ".jpg";
    case Format::TiffLzw:
    case Format::TiffDeflate:
        return ".tif";
    case Format::Png:
        break;
    }
    return ".png";
}

Outcome<void> write_image(const std::filesystem::path& file, const Picture& picture, Format format) {
    static const bool ready = vips_init("pithward-scan-maker") == 0;
    const auto fault = [&] {
        std::string why = vips_error_buffer();
        vips_error_clear();
        return fail(file.string(), "the image can't be written (" + why.substr(0, why.find('\n')) + ")",
                    "check the folder and the room on the disk");
    };
    if (!ready) {
        return fault();
    }
    const auto drop = [](VipsImage* image) { g_object_unref(image); };
    using Image = std::unique_ptr<VipsImage, decltype(drop)>;
    const Image raw(vips_image_new_from_memory(picture.pixels.data(), picture.pixels.size(), picture.width,
                                               picture.height, 3, VIPS_FORMAT_UCHAR),
                    drop);
    VipsImage* copied = nullptr;
    if (!raw || vips_copy(raw.get(), &copied, "xres", picture.dpi / 25.4, "yres", picture.dpi / 25.4, "interpretation",
                          VIPS_INTERPRETATION_sRGB, nullptr) != 0) {
        return fault();
    }
    const Image image(copied, drop);
    const std::filesystem::path part = file.string() + ".part" + suffix(format);
    int failed = 0;
    switch (format) {
    case Format::Png:
        failed = vips_pngsave(image.get(), part.c_str(), "compression", 6, nullptr);
        break;
    case Format::Jpeg:
        failed = vips_jpegsave(image.get(), part.c_str(), "Q", 92, "subsample_mode", VIPS_FOREIGN_SUBSAMPLE_OFF,
                               "optimize_coding", 1, nullptr);
        break;
    case Format::TiffLzw:
    case Format::TiffDeflate:
        failed = vips_tiffsave(
            image.get(), part.c_str(), "compression",
            format == Format::TiffLzw ? VIPS_FOREIGN_TIFF_COMPRESSION_LZW : VIPS_FOREIGN_TIFF_COMPRESSION_DEFLATE,
            "predictor", VIPS_FOREIGN_TIFF_PREDICTOR_HORIZONTAL, "resunit", VIPS_FOREIGN_TIFF_RESUNIT_INCH, nullptr);
        break;
    }
    std::error_code error;
    if (failed == 0) {
        std::filesystem::rename(part, file, error);
    }
    if (failed != 0 || error) {
        std::filesystem::remove(part, error);
        return fault();
    }
    return {};
}

} // namespace pithward::demo
