#pragma once

#include "libcore/specimen/reading.h"

#include <string>

namespace pithward::picture {

/// Whether a part of the reading's path lies on this scan.
[[nodiscard]] bool lies_on(const Reading& reading, const std::string& scan);

/// The scan that a leg lies on; empty where there is no such leg.
[[nodiscard]] std::string scan_of_leg(const Reading& reading, std::size_t leg);

/// The leg of the finding or boundary that stands at this very place; the first one where there is none.
[[nodiscard]] std::size_t leg_at(const Reading& reading, ImagePoint at);

/// Whether the path of `whole` goes on on another scan along `part`, with boundaries of it.
[[nodiscard]] bool goes_on_in(const Reading& whole, const Reading& part);

} // namespace pithward::picture
