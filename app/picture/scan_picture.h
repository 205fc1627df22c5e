#pragma once

#include "libcore/specimen/outcome.h"
#include "libcore/specimen/work.h"
#include "libimaging/scan/scan_file.h"

#include <QImage>

namespace pithward::picture {

/// RGB pixels of 8 or 16 bits as a picture for the screen (Format_RGB32); 16 bits lose their lower half.
[[nodiscard]] QImage picture_of(const cv::Mat& rgb);

/// A scan as a picture of at most `greatest_side` pixels on its longer side, reduced by a whole number.
[[nodiscard]] Outcome<QImage> scan_picture(const ScanFile& scan, int greatest_side, const Work& work = {});

/// The least whole reduction that brings a scan under a size.
[[nodiscard]] int reduction_for(const Scan& scan, int greatest_side);

} // namespace pithward::picture
