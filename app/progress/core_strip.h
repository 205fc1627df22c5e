#pragma once

#include "libcore/specimen/reading.h"

#include <QImage>
#include <QSize>

namespace pithward::bench {

/// A reading's first leg as the whole scan, reduced, shows it: laid level, bark to the left, as broad as `size`; no
/// higher than the wood with a little around it, where the reading tells how broad that is. `reduction`: pixels of the
/// scan to a pixel of `whole`. Null where the path has no length.
[[nodiscard]] QImage core_strip(const QImage& whole, int reduction, const Reading& reading, QSize size);

/// A scan of which no reading is known: all of it, its longer side level, as large as it goes into `size`.
[[nodiscard]] QImage whole_strip(const QImage& whole, QSize size);

} // namespace pithward::bench
