#pragma once

#include "libcore/specimen/edit.h"
#include "libcore/specimen/outcome.h"
#include "libcore/specimen/reading.h"

#include <string>

namespace pithward {

// Edits of what is no ring boundary, each a pure function from the reading as it is.

/// A locally absent ring at a boundary, just outside the ring that this one closes.
[[nodiscard]] Outcome<Edit> add_absent_ring(const Reading& reading, BoundaryId at, AbsentRingId fresh,
                                            std::string note = {});
[[nodiscard]] Outcome<Edit> remove_absent_ring(const Reading& reading, AbsentRingId id);

/// `stretch` holds its own fresh id.
[[nodiscard]] Edit add_break(Break stretch);
[[nodiscard]] Outcome<Edit> remove_break(const Reading& reading, BreakId id);
/// Changes the break that has the id of `after`: its ends, its kind, the rings lost, its note.
[[nodiscard]] Outcome<Edit> change_break(const Reading& reading, Break after);

/// Sets the plain fields. Begin with `head_of(reading)` (libcore/edit/reading_head.h).
[[nodiscard]] Edit change_head(const Reading& reading, ReadingHead after);
[[nodiscard]] Edit set_last_year(const Reading& reading, std::optional<Year> year);
/// Dates all rings so many years later. A fault where no year is set.
[[nodiscard]] Outcome<Edit> shift_years(const Reading& reading, int years);
[[nodiscard]] Edit set_note(const Reading& reading, std::string note);
[[nodiscard]] Edit set_state(const Reading& reading, Reading::State state);

/// A path that meets the same boundaries in the same order. To read a core anew use `edits_between`.
[[nodiscard]] Edit change_path(const Reading& reading, Path after);
[[nodiscard]] Edit change_calibration(const Reading& reading, const std::string& scan,
                                      const std::optional<Calibration>& after);

} // namespace pithward
