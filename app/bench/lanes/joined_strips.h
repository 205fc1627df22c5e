#pragma once

#include "app/bench/model/opened_scan.h"

#include <vector>

namespace pithward::bench {

/// The strips of legs that follow each other, put end to end at the scale of the first.
[[nodiscard]] Outcome<StripImage>
joined_strips(const std::function<Outcome<StripImage>(const StripRequest&, const Work&)>& strip,
              const std::vector<StripRequest>& legs, const Work& work);

} // namespace pithward::bench
