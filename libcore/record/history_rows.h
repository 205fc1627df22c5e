#pragma once

#include "libcore/edit/document.h"
#include "libcore/record/connection.h"
#include "libcore/record/project_values.h"

namespace pithward::record {

/// What was done that is no edit of a reading.
struct Deed {
    std::optional<CoreId> core = {};
    std::optional<ReadingId> reading = {};
    std::string label;
    std::string body = {};
};

[[nodiscard]] Outcome<void> write_deed(const Connection& connection, const Deed& deed, const EditStamp& stamp);
/// Writes a record of a reading's log.
[[nodiscard]] Outcome<void> write_record(const Connection& connection, CoreId core, ReadingId reading,
                                         const EditRecord& record, const std::string& label);

[[nodiscard]] Outcome<std::vector<HistoryEntry>> read_history(const Connection& connection, std::optional<CoreId> core);
/// The log of a reading's edits, oldest first.
[[nodiscard]] Outcome<std::vector<EditRecord>> read_log(const Connection& connection, ReadingId reading);

} // namespace pithward::record
