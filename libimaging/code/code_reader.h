#pragma once

#include "libcore/specimen/outcome.h"
#include "libcore/specimen/units.h"
#include "libcore/specimen/work.h"
#include "libimaging/scan/scan_file.h"

#include <opencv2/core.hpp>

#include <string>
#include <vector>

namespace pithward {

/// A code that was read on a scan.
struct CodeOnScan {
    std::string text;  ///< What it holds, in UTF-8; a stranger may have written it.
    ImagePoint at;     ///< Its middle, in pixels of the scan as stored.
    double side = 0.0; ///< Its edge, in pixels.
};

/// Reads the codes (QR code, ISO/IEC 18004) on labels and mounts, up to versions that hold some 350 bytes, turned
/// however, from top to bottom. The scan is looked at reduced, to at most 24 million pixels and about 16 to the
/// millimetre: a code's squares should be 0.2 mm or more. An empty answer means that none was read; one that is damaged
/// beyond its correction is none.
[[nodiscard]] Outcome<std::vector<CodeOnScan>> read_codes(const ScanFile& scan, const Work& work = {});

/// The same on an 8-bit picture, grey or RGB, in its pixels.
[[nodiscard]] std::vector<CodeOnScan> read_codes(const cv::Mat& picture);

} // namespace pithward
