#pragma once

#include <string>
#include <string_view>

namespace pithward::formats {

// A spreadsheet runs a cell that begins with = + - or @ as a formula, also after a tab or a carriage return, and a CSV
// may come from a stranger. So such a text is written with an apostrophe before it, which spreadsheets take as "this is
// text" (common practice; OWASP, "CSV Injection", from memory). A number is what it is and is never altered.

/// The text as it may stand in a cell.
[[nodiscard]] std::string guarded(std::string_view text);

/// What `guarded` was made from; other texts stay as they are, those that begin with an apostrophe included.
[[nodiscard]] std::string_view unguarded(std::string_view cell);

} // namespace pithward::formats
