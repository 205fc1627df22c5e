#pragma once

#include "libcore/specimen/reading.h"
#include "libimaging/boundary/flat_strip.h"
#include "libimaging/boundary/round_texture.h"
#include "libimaging/strip/lanes.h"

#include <optional>

namespace pithward::boundary {

/// A place on a strip that may be the pith, the core going on beyond it or ending there.
struct PithCrossing {
    StripPoint at;
    double log_odds = 0.0; ///< That it is.
};

/// The place that a strip's texture is laid round (round_texture.h), its edges left out.
[[nodiscard]] std::optional<RoundTexture> round_centre(const Lanes& lanes);

/// Looks for the pith on a core: the place that the texture is laid round and where the bend of the rings turns over,
/// `flat` being the strip with its rings made straight. Log odds from rendered cores, see docs/methods.md. Nothing on a
/// strip too short to tell, or when the texture's centre lies off it.
[[nodiscard]] std::optional<PithCrossing> pith_crossing(const std::optional<RoundTexture>& centre,
                                                        const FlatStrip& flat);

/// How far the bend of the rings turns over at a place: the lesser of the mean curvatures (1/mm, weighted by 1 /
/// distance, up to 0.5) of the rings before it, which bend round it, and after it, which bend round it the other way.
/// Stretches of less than `PithCrossing` needs to count are left out.
[[nodiscard]] double turnover(const FlatStrip& flat, double s_mm);

} // namespace pithward::boundary
