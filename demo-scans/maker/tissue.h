#pragma once

#include "demo-scans/maker/core_model.h"

namespace pithward::demo {

/// Where in the wood a pixel lies.
struct InTissue {
    CorePoint core;
    double radius = 0.0; ///< From the pith, mm.
    double angle = 0.0;
    int ring = 0;
    double px_per_mm = 0.0;
};

/// What is finer than a ring: cells, files, rays, canals and vessels, the pith, heartwood, stains, cracks along the
/// core.
[[nodiscard]] Colour tissue(const CoreModel& core, Colour ring_colour, const InTissue& at);

/// How far the ends of a file of cells lie off the smooth boundary, in mm; mean 0, a few micrometres.
[[nodiscard]] double file_jitter(const CoreModel& core, double radius, double angle);

/// Inner and outer bark, `depth_mm` outside the wood.
[[nodiscard]] Colour bark_colour(const CoreModel& core, CorePoint at, double depth_mm);

} // namespace pithward::demo
