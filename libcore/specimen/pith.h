#pragma once

#include "libcore/specimen/units.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace pithward {

/// What another method says of the pith, to compare.
struct OtherPith {
    std::string method;   ///< With its source: "arc height and chord (Duncan 1989)".
    Millimetres distance; ///< From the innermost boundary.
    Millimetres distance_low;
    std::optional<Millimetres> distance_high; ///< Nothing where the method does not bound it.
    int missing_rings = 0;
    friend bool operator==(const OtherPith&, const OtherPith&) = default;
};

/// The pith of a reading, found or estimated. Intervals are 90 %.
struct Pith {
    /// How its place is known: by the curves of the rings, seen in the wood's texture round it, or given by a person.
    enum class Source { Curves, Seen, Hand };

    bool inside = false;  ///< On the core.
    ImagePoint at;        ///< On the scan of the last leg; may lie outside the image.
    Millimetres distance; ///< From the innermost boundary.
    Millimetres distance_low;
    Millimetres distance_high;
    int missing_rings = 0; ///< Rings to the pith: every ring inside the innermost boundary without a width of its own.
    int missing_low = 0;
    int missing_high = 0;
    Source source = Source::Curves;
    std::vector<OtherPith> others = {};
    friend bool operator==(const Pith&, const Pith&) = default;
};

/// "curves", "seen", "hand".
[[nodiscard]] std::string word(Pith::Source source);
[[nodiscard]] std::optional<Pith::Source> pith_source_from(std::string_view word);

} // namespace pithward
