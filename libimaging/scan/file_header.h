#pragma once

#include <cstdint>
#include <optional>
#include <string>

namespace pithward::scan {

/// What the first bytes of an image file say by themselves, for what libvips leaves out or says unclearly.
struct FileHeader {
    enum class Kind { Other, Tiff, Png, Jpeg };
    struct Size {
        std::uint64_t width = 0;
        std::uint64_t height = 0;
    };

    Kind kind = Kind::Other;
    bool cut_short = false;      ///< The file ends before its header does.
    std::optional<Size> size;    ///< In pixels, where the header was found.
    bool in_passes = false;      ///< An interlaced PNG or a progressive JPEG: decoded as a whole, in memory.
    bool png_resolution = false; ///< A PNG that tells its pixels to the metre.
    /// Where the pixels of a TIFF begin that holds them as they are: RGB of 8 bit, pixel by pixel, row after row.
    std::optional<std::uint64_t> raw_at;
};

/// Reads a few bytes of a file, whatever is in it. Sources of the layouts: TIFF 6.0 (1992) and its 64-bit sibling,
/// PNG (ISO/IEC 15948), JPEG (ITU-T T.81), all from memory.
[[nodiscard]] FileHeader file_header(const std::string& path);

} // namespace pithward::scan
