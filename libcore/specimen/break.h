#pragma once

#include "libcore/specimen/ids.h"
#include "libcore/specimen/units.h"

#include <cstddef>
#include <optional>
#include <string>

namespace pithward {

/// A stretch of the path without wood.
struct Break {
    /// A crack lost no wood: its length is taken off. Lost wood: a ring that it touches has no width.
    enum class Kind { Crack, LostWood };

    BreakId id;
    std::size_t leg = 0;
    ImagePoint from; ///< Bark-side edge, on the path.
    ImagePoint to;   ///< Pith-side edge, on the path.
    Kind kind = Kind::Crack;
    /// Whole rings gone with lost wood; nothing where nobody knows: then the series ends here and what is beyond
    /// floats.
    std::optional<int> rings_lost = 0;
    std::string note;
    friend bool operator==(const Break&, const Break&) = default;
};

/// "crack" or "lost wood".
[[nodiscard]] inline std::string word(Break::Kind kind) {
    return kind == Break::Kind::Crack ? "crack" : "lost wood";
}

} // namespace pithward
