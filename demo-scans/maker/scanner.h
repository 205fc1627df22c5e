#pragma once

#include "demo-scans/maker/ink.h"
#include "demo-scans/maker/scene.h"

#include <cstdint>

namespace pithward::demo {

/// Columns that a block needs on either side for the blur.
inline constexpr int blur_margin = 6;

/// What the scanner makes of the light: blur, shading, contrast, noise, and the rounding to 8 bits. Writes the block's
/// columns without their margins into the picture.
void scan_block(const Block& block, const Scanner& scanner, std::uint64_t seed, Picture& picture);

} // namespace pithward::demo
