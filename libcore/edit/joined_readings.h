#pragma once

#include "libcore/specimen/edit.h"
#include "libcore/specimen/outcome.h"
#include "libcore/specimen/reading.h"

#include <cstdint>
#include <optional>
#include <variant>

namespace pithward {

/// Two readings show one and the same ring boundary.
struct MeetAtBoundary {
    BoundaryId on_outer;
    BoundaryId on_inner;
};

/// The wood of the one ends where that of the other begins; a ring that goes over the break is shared by both.
struct MeetAtBreak {
    Break::Kind kind = Break::Kind::Crack;
    std::optional<int> rings_lost = 0; ///< As in Break.
};

using Meeting = std::variant<MeetAtBoundary, MeetAtBreak>;

/// One reading of a core that goes on on another scan, or on another piece: the path of `outer`, the one with the bark,
/// goes on with that of `inner` where they meet; what either shows beyond that is left out. Bark and years are those of
/// `outer`, the pith is that of `inner`. What comes from `inner` is numbered from `fresh` (Document::fresh_id()). Fails
/// where the woods differ, where the place is not there, or where no ring would be left on one side.
[[nodiscard]] Outcome<Reading> joined_readings(Reading outer, Reading inner, const Meeting& meeting,
                                               std::int64_t fresh);
[[nodiscard]] Outcome<Edit> go_on_with(const Reading& outer, const Reading& inner, const Meeting& meeting,
                                       std::int64_t fresh);

} // namespace pithward
