#pragma once

#include "libcore/specimen/edit.h"
#include "libcore/specimen/outcome.h"
#include "libcore/specimen/reading.h"

#include <cstdint>
#include <string>

namespace pithward {

/// The reading along another shape of its path, of as many legs. Each boundary and candidate goes to where its line
/// crosses the new path, breaks and findings to their feet on it; what the path no longer reaches is taken away. Rings
/// keep their years: where outer boundaries go, the year of the outermost ring falls by as many. Refused where an
/// order would change, or where no boundary is left to one that legs are joined at.
[[nodiscard]] Outcome<Reading> rerouted(Reading reading, const Path& after);
[[nodiscard]] Outcome<Edit> reroute(const Reading& reading, const Path& after, std::string label);

/// Lets the path step sideways along a ring boundary and go on from there, on a leg of its own. `to`: a place that the
/// way on is to pass, near the boundary's line. The boundary gets a second mark, `fresh`, where the new leg begins; it
/// stays one boundary, so that no ring is lost or gained. Refused at the innermost boundary.
[[nodiscard]] Outcome<Edit> step_aside(const Reading& reading, BoundaryId at, ImagePoint to, BoundaryId fresh);

/// What a longer path adds: `read` is the same path as `reading` has, read anew as one leg at the end in question.
/// Takes from it what lies beyond `old_end`, the place where the path ended before; rings keep their years. New objects
/// are numbered from `fresh`.
enum class PathEnd { Bark, Inner };
[[nodiscard]] Reading with_what_is_beyond(Reading reading, const Reading& read, PathEnd end, ImagePoint old_end,
                                          std::int64_t fresh);

} // namespace pithward
