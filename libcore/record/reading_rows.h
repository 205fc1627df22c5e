#pragma once

#include "libcore/record/connection.h"
#include "libcore/specimen/edit.h"

namespace pithward::record {

/// Writes a whole reading under its id into the tables; `core` is the id of its core's row.
[[nodiscard]] Outcome<void> write_reading(const Connection& connection, const Reading& reading, std::int64_t core);

/// Brings the tables to what an edit makes of a reading. The edit must have been applied to the reading that they hold.
[[nodiscard]] Outcome<void> write_edit(const Connection& connection, ReadingId reading, const Edit& edit);

/// The reading as the tables hold it; its lists in the order of their ids.
[[nodiscard]] Outcome<Reading> read_reading(const Connection& connection, ReadingId reading);

} // namespace pithward::record
