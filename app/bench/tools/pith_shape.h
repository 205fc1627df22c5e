#pragma once

#include "app/picture/measured_core.h"

#include <array>
#include <optional>
#include <string>
#include <vector>

namespace pithward::bench {

/// A ring that a person can bend: the innermost boundary's circle about the pith, beyond the wood on either side.
struct PithArc {
    BoundaryId boundary;
    std::vector<ImagePoint> line; ///< From the wood outward.
    ImagePoint handle;            ///< Its outer end.
};

/// What is drawn of a pith, in places of the scan.
struct PithShape {
    ImagePoint centre;
    bool inside = false;
    std::vector<std::vector<ImagePoint>> rings;     ///< Estimated inner rings, off the wood.
    std::optional<std::array<ImagePoint, 2>> range; ///< Where the centre is with 90 %, on the line from the boundary.
    std::vector<PithArc> arcs;
};

/// The shape of a core's pith on a scan; nothing where its last leg lies on another one, or it has no pith. Rings that
/// would lie closer than `least_gap_px` are thinned to every fifth or tenth.
[[nodiscard]] std::optional<PithShape> pith_shape(const picture::MeasuredCore& core, const std::string& scan,
                                                  double least_gap_px);

/// Circles about a centre through the innermost boundaries, across the wood: how a person sees whether a centre fits.
[[nodiscard]] std::vector<std::vector<ImagePoint>> circles_about(const picture::MeasuredCore& core, ImagePoint centre);

} // namespace pithward::bench
