#pragma once

#include "libcore/specimen/outcome.h"
#include "libcore/specimen/site.h"

namespace pithward::dating {

/// The year of the outermost ring with a width, from what the field sheet tells of a core: when it was cored, whether
/// the tree lived, on which side of the equator. `outer` is the wood under the bark as the reading has it.
///
/// North of the equator growth is taken to begin in March to June and to end in July to October; south of it half a
/// year later, and a ring bears the year in which its growth began (common practice, after Schulman). So
///
/// 1. wood that is complete in August to December is that year's, in January to June that of the year before;
/// 2. wood that is unfinished in March to November is that year's, so the outermost ring with a width is of the year
///    before.
///
/// Where the field sheet sets the months of the site's season (growing_season.h), those count instead: before and
/// within the season of year Y the outermost ring with a width is of Y - 1, after it of Y.
///
/// Fails, with what is missing, where these don't tell: complete wood in July, unfinished wood in the cold, lost or
/// unknown outer wood, a tree that was dead or of which it is not said, no date or one without its month where the
/// month matters, no latitude, and between the tropics, where seasons need not follow the sun.
[[nodiscard]] Outcome<Year> bark_year(const Site& site, const Tree& tree, const Core& core, OuterWood outer);

} // namespace pithward::dating
