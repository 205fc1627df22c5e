#pragma once

#include "libcore/specimen/edit.h"
#include "libcore/specimen/outcome.h"

#include <string>
#include <string_view>

namespace pithward {

/// An edit as one line of JSON: {"v": 1, "edit": "ring-boundary-changed", "before": {...}, "after": {...}}. There and
/// back gives the equal edit, to the last bit of every number. Fails on a text that is not UTF-8, on a number that
/// JSON does not have, and on all else that could not be read again, such as a text of more than 20,000 bytes.
[[nodiscard]] Outcome<std::string> edit_to_json(const Edit& edit);

/// Input is hostile: at most 64 MB, groups at most 8 deep, a million parts; a version that is not known is refused.
[[nodiscard]] Outcome<Edit> edit_from_json(std::string_view text);

/// The same for a record of the log: its edit with who, when, by which version, and what it takes back.
[[nodiscard]] Outcome<std::string> record_to_json(const EditRecord& record);
[[nodiscard]] Outcome<EditRecord> record_from_json(std::string_view text);

/// One value of a reading alone: a Break, AbsentRing, Finding, Path or ReadingHead, as a project keeps it.
template <typename T>
[[nodiscard]] Outcome<std::string> value_to_json(const T& value);
template <typename T>
[[nodiscard]] Outcome<T> value_from_json(std::string_view text);

} // namespace pithward
