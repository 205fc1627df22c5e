#pragma once

#include "libcore/specimen/edit.h"
#include "libcore/specimen/reading.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace pithward::review {

// What a second person wants to know of a finding.

/// The candidates that were turned down about a finding: between the nearest ring boundaries on either side of it, not
/// counting the one that it is about. From bark to pith.
[[nodiscard]] std::vector<Candidate> candidates_about(const Reading& reading, const Finding& finding);

/// Who settled a finding as it stands, by the log of its reading's edits; nothing where nobody did.
[[nodiscard]] std::optional<std::string> settled_by(std::span<const EditRecord> log, FindingId id);

} // namespace pithward::review
