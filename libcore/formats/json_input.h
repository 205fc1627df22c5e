#pragma once

#include "libcore/specimen/outcome.h"
#include "libcore/specimen/units.h"

#include <nlohmann/json.hpp>

#include <cstddef>
#include <istream>
#include <optional>
#include <string>

namespace pithward::formats {

inline constexpr std::size_t most_json_bytes = std::size_t{64} << 20;
inline constexpr std::size_t most_json_items = 10'000'000;
inline constexpr int deepest_json = 32;

/// Parses JSON of bounded size, depth and number of items. A fault of its grammar names line and column.
[[nodiscard]] Outcome<nlohmann::json> read_json(std::istream& in);

/// A member of an object; null where there is none or where this is no object.
[[nodiscard]] const nlohmann::json& member(const nlohmann::json& object, const char* key);
/// A whole number within bounds, else nothing.
[[nodiscard]] std::optional<int> whole_in(const nlohmann::json& value, int least, int greatest);
/// The text of a string; it must be one.
[[nodiscard]] std::string text_from(const nlohmann::json& value);
/// A text without control characters and with at most `longest_identifier` characters, else nothing.
[[nodiscard]] std::optional<std::string> short_text(const nlohmann::json& value);

/// "series 3", for the third of a list.
[[nodiscard]] std::string nth(const char* what, std::size_t index);
/// A width in mm: 0 for a locally absent ring, nothing where there is null. `where` names it in the fault.
[[nodiscard]] Outcome<std::optional<Millimetres>> width_from(const nlohmann::json& value, const std::string& where);

} // namespace pithward::formats
