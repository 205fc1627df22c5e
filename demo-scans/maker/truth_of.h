#pragma once

#include "demo-scans/maker/core_model.h"
#include "demo-scans/maker/truth.h"

namespace pithward::demo {

/// What is really there on a placed core: the exact geometry of its rings along its centre line.
/// Properties: boundaries come in path order; the along-path widths add up to the path's length between the outermost
/// and the innermost boundary, less the gaps.
[[nodiscard]] Truth truth_of(const CoreModel& core, int width_px, int height_px);

/// The same on the far side of the pith, from its outer end to the pith, of a core that has one.
[[nodiscard]] Truth far_truth_of(const CoreModel& core, int width_px, int height_px);

/// Adds what the scene did to wood and scan, beside the gaps.
void note_disturbances(const CoreModel& core, Truth& truth);

} // namespace pithward::demo
