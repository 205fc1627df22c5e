#pragma once

#include "libcore/pith/rings_to_pith.h"
#include "libcore/specimen/outcome.h"
#include "libcore/specimen/reading.h"
#include "libcore/specimen/ring_series.h"

#include <optional>
#include <vector>

namespace pithward {

/// The pith where a person puts it, with what follows from the place: whether it is on the core, its distance from the
/// innermost boundary and the rings to it, both with 90 % intervals.
///
/// On the core it is taken as placed within half a millimetre. Beside it a person tells the place by how rings bend
/// across the wood: the height of an arc as broad as the core has a deviation of 0.05 mm, and 17 % for the form of the
/// stem, as published methods are taken to have (pith/published.h; assumed). Fails where there is no boundary with a
/// scale or no ring with a width, where the place is on the bark's side of the innermost boundary, and where the arc
/// would be so flat that nothing bounds the distance.
[[nodiscard]] Outcome<Pith> pith_by_hand(const Reading& reading, const RingSeries& series, ImagePoint at,
                                         const pith::GrowthBeforehand& growth = {});

/// The centre of the circle that crosses the path where a boundary does, square to its direction there, and that goes
/// through another place: how a person bends a ring's arc until it fits. Nothing where that place lies on the
/// boundary's straight line or at the boundary itself. Its leg has a calibration.
[[nodiscard]] std::optional<ImagePoint> centre_of_arc(const Reading& reading, const Boundary& boundary,
                                                      ImagePoint through);

/// Radii in mm about the pith of the rings between it and the innermost boundary, the boundary's own last. Rings are
/// drawn evenly: where each lies nobody knows. Empty where no rings are missing.
[[nodiscard]] std::vector<double> inner_ring_radii(const Pith& pith);

} // namespace pithward
