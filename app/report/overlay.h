#pragma once

#include "libcore/specimen/outcome.h"
#include "libcore/specimen/reading.h"
#include "libcore/specimen/ring_series.h"

#include <QImage>
#include <span>
#include <string>

namespace pithward::report {

/// A scan as a picture, with what it was reduced from.
struct ScanImage {
    QImage picture;   ///< The whole scan, reduced or not.
    QSize full_size;  ///< Of the scan, in pixels.
    std::string name; ///< As the legs of the readings name it.
};

/// The scan with paths and boundaries as the bench draws them, on a picture of at most `greatest_side` pixels; a scan
/// that is smaller is not enlarged. `readings` and `series` go together one by one. Letters need a QGuiApplication
/// (see OffscreenGui); lines don't.
[[nodiscard]] QImage render_overlay(const ScanImage& scan, std::span<const Reading> readings,
                                    std::span<const RingSeries> series, int greatest_side);

/// The longer side of a picture that can still be looked at in any viewer.
inline constexpr int overlay_side = 12'000;

/// A picture as the bytes of a PNG file. Fails when there is no memory for it.
[[nodiscard]] Outcome<std::string> png_bytes(const QImage& picture);

} // namespace pithward::report
