#pragma once

#include "libcore/specimen/wood.h"
#include "libimaging/boundary/flat_strip.h"
#include "libimaging/boundary/relief.h"
#include "libimaging/strip/lanes.h"

#include <optional>
#include <string>

namespace pithward::boundary {

/// What tells wood with its rings across the path from other things, within 1.6 mm of the path. On rendered cores of
/// all kinds of wood and on pictures of noise, print and cloth see docs/accuracy.md.
struct WoodSigns {
    double across = 1.0;  ///< Mean direction of the gradients: 1 along the path (lines across it), -1 across it.
    double aligned = 1.0; ///< The same where what runs along the path counts like what runs across: -1 for a slant.
    double one_way = 1.0; ///< How far lines run one way in each short stretch: 1 all, 0.28 those of noise.
    /// Correlation of the profiles on both sides of the path, rings made straight: of tone, or of what the kind of wood
    /// is read from, where that is more.
    double agreement = 1.0;
    double regular = 0.0;  ///< Least correlation of the profile with itself, moved by once, twice and thrice a length.
    double paper = 0.0;    ///< Share of the wood that has very nearly one tone, where some is far darker; else 0.
    double contrast = 1.0; ///< Standard deviation of the profile, as a share of brightness.
    /// Median difference between the lanes near the path, rings made straight, as a share of the profile's deviation:
    /// the wood's own grain.
    double grain = 1.0;
    double one_sided = 9.0; ///< How far the sharp changes are of one sign, in standard deviations of chance.
};

[[nodiscard]] WoodSigns wood_signs(const Lanes& lanes, const Relief& relief, const FlatStrip& strip);

/// Why what lies under a path can't be read as rings of wood of that type, in words; nothing when it may be wood. On a
/// path under 25 mm only that its rings run along the path is told.
[[nodiscard]] std::optional<std::string> why_no_wood(const WoodSigns& signs, WoodType type, double path_mm);

} // namespace pithward::boundary
