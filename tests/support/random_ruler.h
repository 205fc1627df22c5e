#pragma once

#include "libimaging/calibrate/graduation.h"
#include "libimaging/calibrate/ruler_line.h"
#include "libimaging/scan/scan_file.h"
#include "tests/support/rendered_ruler.h"
#include "tests/support/temporary_folder.h"

namespace pithward::test {

/// A ruler drawn by lot: any of the three graduations, 600 to 4800 dpi, tilt, blur, noise, uneven light, wear,
/// numerals, dark marks on light or the other way round, JPEG or not; and a line along it as a person would place it.
struct RandomRuler {
    RulerLook look;
    Graduation graduation = Graduation::Millimetre;
    double dpi = 1200.0;   ///< What the file's tag says. The truth is in `look`.
    int jpeg_quality = 0;  ///< 0: no JPEG.
    double aside_mm = 0.0; ///< How far the ends of the line are off the middle of the shortest marks.
    double aside_to_mm = 0.0;
};

/// The same for the same seed. What should be finer than `most_dpi` is of that.
[[nodiscard]] RandomRuler random_ruler(std::uint64_t seed, double most_dpi = 4800.0);

struct RulerScan {
    ScanFile scan;
    RulerLine line;
};

/// Its picture as a file, with the line.
[[nodiscard]] RulerScan scanned(const TemporaryFolder& folder, const RandomRuler& ruler);

} // namespace pithward::test
