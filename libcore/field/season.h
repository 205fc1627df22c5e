#pragma once

#include "libcore/dating/growing_season.h"
#include "libcore/field/remark.h"
#include "libcore/specimen/site.h"

#include <optional>

namespace pithward::field {

/// A core that was cored in its growing season: its outermost ring is unfinished, so it has a breadth but no width, and
/// the last complete ring is that of the year before. Wood that is said to be complete then is a contradiction. The
/// season is the site's where it is set (dating::season_of), else April to September north of the equator and half a
/// year later south of it (assumed). Nothing for dead trees, dates without a month, lost outer wood, sites without
/// latitude and between the tropics where no season is set.
[[nodiscard]] std::optional<Remark> season_remark(const Site& site, const Tree& tree, const Core& core,
                                                  const Reading& reading);

} // namespace pithward::field
