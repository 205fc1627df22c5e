#pragma once

#include <opencv2/core.hpp>

#include <string>

namespace pithward::test {

/// How an image of a test is written. The kinds of file that scanners make.
struct Written {
    enum class Kind { TiffStrips, TiffTiles, Png, Jpeg };
    enum class Packing { None, Lzw, Deflate };

    Kind kind = Kind::TiffStrips;
    Packing packing = Packing::None;
    double dpi_x = 1200.0; ///< 0: no tag where the format can do without.
    double dpi_y = 1200.0;
    bool cmyk = false;   ///< The four channels are ink, not red, green, blue and alpha.
    int orientation = 0; ///< EXIF orientation; 0: no tag.
    int quality = 98;    ///< Of a JPEG, up to 100.
};

/// Writes an image with libvips: 1 to 4 channels of 8 or 16 bit, or float. Throws when that fails.
void write_raw(const std::string& file, const cv::Mat& pixels, const Written& how = {});

/// Made-up pixels: in each channel another slanted wave with a little noise, so that no two places look alike.
/// `type` as OpenCV's, e.g. CV_8UC3 or CV_16UC1.
[[nodiscard]] cv::Mat patterned(int width, int height, int type, unsigned seed = 1);

} // namespace pithward::test
