#pragma once

#include "libcore/specimen/calibration.h"

#include <cstdint>
#include <optional>
#include <string>

namespace pithward {

/// A scan file, as its header tells of it.
struct Scan {
    std::string file;
    int width = 0;
    int height = 0;
    int bands = 0;
    int bits = 8;                    ///< Bits a sample: 8 or 16.
    std::optional<double> tag_dpi_x; ///< What the file's resolution tag says, believed or not.
    std::optional<double> tag_dpi_y;
    int orientation = 1; ///< EXIF orientation: only turns the view.
    std::string sha256;  ///< Empty until computed.
    std::int64_t bytes = 0;
    friend bool operator==(const Scan&, const Scan&) = default;
};

/// The scale to measure a scan with. The user's word, when given, overrides the file's tag. A tag of 72 or 96 dpi is
/// what programs write when they know nothing, so it is not believed, and neither is a missing one: then this fails and
/// asks for
/// `--dpi`.
[[nodiscard]] Outcome<Calibration> believed_calibration(const Scan& scan, std::optional<double> given_dpi);

} // namespace pithward
