#pragma once

#include "demo-scans/maker/scene.h"
#include "demo-scans/maker/write.h"
#include "libcore/specimen/reading.h"
#include "libimaging/scan/scan_file.h"
#include "tests/support/temporary_folder.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace pithward::test {

/// A rendered core as a file, opened as any scan is, with its truth.
struct RenderedScan {
    ScanFile scan;
    Calibration calibration;
    std::vector<demo::Truth> truths; ///< One for each core of the picture.

    [[nodiscard]] const demo::Truth& truth() const { return truths.front(); }
};

/// Renders a core into the folder and opens the file. Throws when that fails: a test can't go on then.
[[nodiscard]] RenderedScan rendered_scan(const TemporaryFolder& folder, const demo::Scene& scene,
                                         demo::Format format = demo::Format::Png);

/// The same for several cores on one scan.
[[nodiscard]] RenderedScan rendered_tray(const TemporaryFolder& folder, const std::vector<demo::Scene>& scenes);

/// The scene of a clear conifer core (demo-scans/maker/presets.h), cut to at most so many rings.
[[nodiscard]] demo::Scene clear_scene(std::uint64_t seed, int number, int most_rings = 1000);

/// The program's reading along the true path.
[[nodiscard]] Reading read_along_truth(const RenderedScan& rendered, OuterWood outer = OuterWood::Complete);

/// A long thin strip of even grey, quick to make.
[[nodiscard]] demo::Picture plain_picture(int width, int height, std::uint8_t grey, double dpi);

/// Writes a picture into the folder and opens it.
[[nodiscard]] ScanFile opened(const TemporaryFolder& folder, const demo::Picture& picture);

} // namespace pithward::test
