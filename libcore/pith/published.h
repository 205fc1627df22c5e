#pragma once

#include "libcore/pith/arcs.h"

#include <optional>

namespace pithward::pith {

/// A distance with its 90 % interval; no upper end where nothing bounds it.
struct DistanceRange {
    double middle_mm = 0.0;
    double low_mm = 0.0;
    std::optional<double> high_mm;

    /// Whether the two intervals have a place in common.
    [[nodiscard]] bool meets(const DistanceRange& other) const;
};

/// Chord of an arc and its height over it.
struct ChordAndHeight {
    double chord_mm = 0.0;
    double height_mm = 0.0; ///< Positive where the arc bends round a centre on the pith's side.
};

/// Radius of an arc from chord L and height h: L^2 / 8h + h/2 (Duncan 1989, New Zealand Natural Sciences 16:31, who
/// takes the missing radius for it). Exact for a circle. Needs h > 0.
[[nodiscard]] double duncan_radius(const ChordAndHeight& arc);

/// Height of a circle's arc over its chord: the inverse of the above for h up to the radius. Needs L <= 2 r.
[[nodiscard]] double arc_height(double chord_mm, double radius_mm);

/// Chord between the ends of a traced arc, and the height of a parabola fitted to it; nothing for under three points.
[[nodiscard]] std::optional<ChordAndHeight> chord_and_height(const Arc& arc);

/// Standard deviation of an arc's height: the tracing's noise, swells of this height (3 mm broad), and 17 % of the
/// height for the form of the stem (eccentric growth and lobes as nested_rings.h takes them).
[[nodiscard]] double height_sd(const Arc& arc, double swell_mm);

/// Interval of a radius that was told by an arc's height of this deviation.
[[nodiscard]] DistanceRange radius_range(double chord_mm, double radius_mm, double height_sd_mm);

/// Radius of the wood of a stem in mm, from its diameter over bark and the bark's thickness.
[[nodiscard]] double stem_radius(double diameter_cm, double bark_mm);

/// Distance from a core's innermost boundary to the pith, from the stem's radius in mm and the dry length of wood
/// outside that boundary. Shrinkage in drying 4 % (2 to 6 %: common practice of the trade, no source); growth is taken
/// as up to a tenth eccentric (assumed). 0 where the core is longer than the radius.
[[nodiscard]] DistanceRange distance_by_stem(double stem_radius_mm, double wood_length_mm);

} // namespace pithward::pith
