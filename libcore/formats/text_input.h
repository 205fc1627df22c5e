#pragma once

#include "libcore/specimen/outcome.h"

#include <cstddef>
#include <istream>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace pithward::formats {

/// Bounds on what a reader takes. Beyond them a file is refused before memory is spent on it.
inline constexpr std::size_t most_bytes = std::size_t{256} << 20;
inline constexpr std::size_t most_lines = 2'000'000;
inline constexpr std::size_t most_series = 20'000;
inline constexpr std::size_t most_values = 20'000'000;
inline constexpr std::size_t longest_identifier = 200;
inline constexpr int least_year = -20'000;
inline constexpr int greatest_year = 20'000;
/// No ring is wider; a greater number is a fault of the file.
inline constexpr double greatest_width_mm = 100'000.0;

/// The whole of a stream as text, without byte order marks and without the end mark of old systems. Fails on more than
/// `limit` bytes, on a stream that breaks off, and on bytes that no text holds.
[[nodiscard]] Outcome<std::string> read_text(std::istream& in, std::size_t limit = most_bytes);

/// The same as UTF-8: bytes that are none, as older spreadsheets write them, are taken as Latin-1.
[[nodiscard]] Outcome<std::string> read_utf8(std::istream& in, std::size_t limit = most_bytes);

/// A text without the byte order marks that stand at its start and, where files were put together, amid it.
[[nodiscard]] std::string without_byte_order_marks(std::string text);

/// One line of a text, without its end.
struct Line {
    std::string_view text;
    std::size_t number = 0; ///< From 1.
};

/// Lines that end with LF, with CR LF or with CR alone; several CR before an LF are one end. Fails on more than
/// `most_lines`.
[[nodiscard]] Outcome<std::vector<Line>> split_lines(std::string_view text);

/// "line 3" and "line 3, column 9", both from 1.
[[nodiscard]] std::string place(std::size_t line);
[[nodiscard]] std::string place(std::size_t line, std::size_t column);

/// The fault with the file named before the place: "core.rwl, line 3, column 9".
[[nodiscard]] Fault in_file(const std::string& file, Fault fault);

/// Text without the given characters at its ends.
[[nodiscard]] std::string_view trimmed(std::string_view text, std::string_view blanks = " \t");
[[nodiscard]] bool is_blank(std::string_view text);
[[nodiscard]] std::string lower_case(std::string_view text);
/// True for the control characters of ASCII, tab and line end included.
[[nodiscard]] bool is_control(char c);
[[nodiscard]] bool has_control(std::string_view text);

/// A whole number: an optional minus and digits, nothing else. Independent of the locale, as all of these are.
[[nodiscard]] std::optional<int> whole_number(std::string_view text);
/// A decimal number with a point, and a comma too where `comma` allows it; finite.
[[nodiscard]] std::optional<double> decimal_number(std::string_view text, bool comma = false);
/// Digits after the decimal sign, as written; 0 where there is none.
[[nodiscard]] std::size_t decimals(std::string_view text);

/// How many columns a text takes: one for each character of well-formed UTF-8, one for each other byte.
[[nodiscard]] std::size_t columns(std::string_view text);
/// Byte offset of the column with this index, from 0; the text's size where it has fewer columns.
[[nodiscard]] std::size_t column_offset(std::string_view text, std::size_t column);
/// The same text as UTF-8: bytes that are none are taken as Latin-1.
[[nodiscard]] std::string as_utf8(std::string_view text);

} // namespace pithward::formats
