#pragma once

#include "libcore/measure/age.h"
#include "libcore/specimen/units.h"

#include <optional>
#include <string>

namespace pithward::report {

// Numbers as a report shows them, the same in every locale. What isn't known is a dash.

inline constexpr const char* not_known = "\xE2\x80\x93";

[[nodiscard]] std::string fixed(double value, int digits);
[[nodiscard]] std::string fixed(const std::optional<double>& value, int digits);
[[nodiscard]] std::string fixed(const std::optional<Millimetres>& value, int digits);
/// "1915 (1912 to 1917)".
[[nodiscard]] std::string told(const std::optional<YearRange>& range);
/// "1915 to 2023".
[[nodiscard]] std::string told_years(int first, int last);
/// The text, or a dash for none.
[[nodiscard]] std::string or_dash(const std::string& text);
/// "1 core", "3 cores".
[[nodiscard]] std::string counted(std::size_t count, const std::string& one, const std::string& many);

} // namespace pithward::report
