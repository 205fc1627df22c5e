#pragma once

#include <QVariant>
#include <cstdint>
#include <optional>
#include <string>

namespace pithward::record {

// Values on their way to the tables and back; nothing is a null.

[[nodiscard]] QVariant to_sql(const std::string& text);
[[nodiscard]] QVariant to_sql(const std::optional<double>& number);
[[nodiscard]] QVariant to_sql(const std::optional<int>& number);
[[nodiscard]] QVariant to_sql(std::int64_t number);
[[nodiscard]] std::string text_from(const QVariant& value);
/// Whether a value is a number or a null. SQLite lets any column hold a text, which would be read as 0.
[[nodiscard]] bool is_number(const QVariant& value);
[[nodiscard]] std::optional<double> number_from(const QVariant& value);
[[nodiscard]] std::optional<int> whole_from(const QVariant& value);

} // namespace pithward::record
