#pragma once

#include <compare>
#include <cstdint>

namespace pithward {

/// A stable number for one object of a reading. Never reused, never a pointer; 0 means "none yet".
template <typename Tag>
struct Id {
    std::int64_t value = 0;
    friend constexpr auto operator<=>(Id, Id) = default;
};

using BoundaryId = Id<struct BoundaryTag>;
using BreakId = Id<struct BreakTag>;
using AbsentRingId = Id<struct AbsentRingTag>;
using FindingId = Id<struct FindingTag>;
using CandidateId = Id<struct CandidateTag>;
using ReadingId = Id<struct ReadingTag>;
using EditId = Id<struct EditTag>;

} // namespace pithward
