#pragma once

#include "libcore/specimen/edit.h"

namespace pithward {

/// The plain fields of a reading, as one value to change.
[[nodiscard]] ReadingHead head_of(const Reading& reading);

/// Sets the plain fields of a reading, whatever they were. For libcore/edit and for what reads a reading from disk;
/// everybody else changes a head by an edit.
void set_head(Reading& reading, const ReadingHead& head);

} // namespace pithward
