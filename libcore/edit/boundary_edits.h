#pragma once

#include "libcore/specimen/edit.h"
#include "libcore/specimen/outcome.h"
#include "libcore/specimen/reading.h"

#include <cstdint>
#include <string>

namespace pithward {

// Edits of ring boundaries, each a pure function from the reading as it is. They fail where the object is not there.
// What adds an object takes the number that it gets, `Document::fresh_id()`.

/// A person has looked at this boundary and takes it as annual.
[[nodiscard]] Outcome<Edit> confirm(const Reading& reading, BoundaryId id);
/// Confirms in bulk every boundary that nobody has confirmed yet, is as probable as this, and has no open finding.
[[nodiscard]] Edit confirm_above(const Reading& reading, double confidence);

/// A place for a boundary, with what a refit near it knows of it. By hand alone: `at`, `tangent`, and the rest as it
/// is.
struct BoundaryPlace {
    std::size_t leg = 0;
    ImagePoint at;
    double tangent = 0.0; ///< Radians in [0, pi), as in Boundary.
    Millimetres sd = assumed_boundary_sd;
    bool sd_assumed = true;
    std::vector<ImagePoint> curve;
    std::optional<Millimetres> latewood;
};

/// A boundary by a person's hand, looked at.
[[nodiscard]] Edit add_boundary(const BoundaryPlace& place, BoundaryId fresh);
/// Takes a boundary away, and the locally absent rings that stand at it.
[[nodiscard]] Outcome<Edit> delete_boundary(const Reading& reading, BoundaryId id);
/// Puts a boundary elsewhere on the path. From then on it is the analyst's, looked at.
[[nodiscard]] Outcome<Edit> move_boundary(const Reading& reading, BoundaryId id, const BoundaryPlace& place);
/// Turns a boundary where it is; the curve that was traced no longer holds and goes.
[[nodiscard]] Outcome<Edit> turn_boundary(const Reading& reading, BoundaryId id, double tangent);
/// Says of a boundary that it is a false ring: it goes to the candidates turned down, with this reason.
[[nodiscard]] Outcome<Edit> mark_as_false_ring(const Reading& reading, BoundaryId id, CandidateId fresh,
                                               std::string reason);
/// Takes a candidate that was turned down as a boundary, looked at.
[[nodiscard]] Outcome<Edit> take_candidate(const Reading& reading, CandidateId id, BoundaryId fresh);
[[nodiscard]] Outcome<Edit> annotate(const Reading& reading, BoundaryId id, std::string note);

} // namespace pithward
