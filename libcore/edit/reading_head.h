#pragma once

#include "libcore/specimen/edit.h"

namespace pithward {

/// The plain fields of a reading, as one value to change.
[[nodiscard]] ReadingHead head_of(const Reading& reading);

/// Sets the plain fields of a reading, whatever they were. For libcore/edit and for what reads a reading from disk;
/// everybody else changes a head by an edit.
void set_head(Reading& reading, const ReadingHead& head);

/// Calls `visit` with the name of each field of a head and the member that holds it.
template <typename Visit>
void for_each_head_field(Visit visit) {
    visit("analyst", &ReadingHead::analyst);
    visit("state", &ReadingHead::state);
    visit("wood", &ReadingHead::wood);
    visit("outer", &ReadingHead::outer);
    visit("last_year", &ReadingHead::last_year);
    visit("bark_end", &ReadingHead::bark_end);
    visit("wood_edge", &ReadingHead::wood_edge);
    visit("pith", &ReadingHead::pith);
    visit("note", &ReadingHead::note);
}

/// An edit as it is to be made on the reading as it is by now: what changes some fields of its head leaves those alone
/// that others have changed meanwhile. All else stays as it is.
[[nodiscard]] Edit on_present_head(const Reading& reading, const Edit& edit);

} // namespace pithward
