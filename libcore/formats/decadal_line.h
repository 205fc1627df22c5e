#pragma once

#include "libcore/formats/text_input.h"

#include <tl/expected.hpp>

#include <array>
#include <cstddef>
#include <optional>
#include <string>

namespace pithward::formats {

/// Layout of a line of measurements (design, section 6), in columns from 0.
inline constexpr std::size_t identifier_columns = 8;
inline constexpr std::size_t year_end_column = 12;
inline constexpr std::size_t value_columns = 6;
inline constexpr std::size_t values_a_line = 10;
inline constexpr std::size_t comment_column = year_end_column + values_a_line * value_columns;

inline constexpr int greatest_decadal_year = 9'999;
inline constexpr int mark_hundredth = 999;    ///< Ends a series in 0.01 mm.
inline constexpr int mark_thousandth = -9999; ///< Ends a series in 0.001 mm.

[[nodiscard]] constexpr bool is_end_mark(int step) {
    return step == mark_hundredth || step == mark_thousandth;
}

/// The year that begins a year's decade: -1495 and -1490 belong to decades -1500 and -1490.
[[nodiscard]] constexpr int decade_of(int year) {
    return year - ((year % 10) + 10) % 10;
}

/// How many values a line takes that begins with this year and ends with the decade.
[[nodiscard]] constexpr std::size_t room_in_decade(int year) {
    return static_cast<std::size_t>(decade_of(year) + 10 - year);
}

/// One line of measurements as it stands, before anything is made of end marks and codes.
struct DecadalLine {
    /// How clear the layout was.
    enum class Layout { Columns, NotAligned, BySpaces, BlanksAsYears };

    std::size_t number = 0;
    std::string identifier;
    int year = 0; ///< Of the first value.
    /// A minus in column 8 right after other text may be the year's or the identifier's; `year` and `identifier` take
    /// it as the year's.
    bool sign_open = false;
    std::array<std::optional<int>, values_a_line> values; ///< Nothing where the columns are blank between values.
    std::size_t count = 0;
    std::string comment;
    Layout layout = Layout::Columns;

    [[nodiscard]] int end_year() const { return year + static_cast<int>(count); }
    /// What stands there may have been meant as an eleventh value.
    [[nodiscard]] bool comment_begins_with_number() const;
    [[nodiscard]] bool ends_decade() const { return count == room_in_decade(year); }
    [[nodiscard]] bool ends_with_mark() const {
        return count > 0 && values[count - 1] && is_end_mark(*values[count - 1]);
    }
};

/// Where a line stops being one of measurements.
struct Misfit {
    std::size_t column = 1; ///< From 1.
    std::string what;
    bool is_final = false; ///< Reading by spaces would only hide it.
};

/// Reads a line by its columns; where they don't hold, by its spaces and tabs if that leaves no doubt: the values must
/// then fill the decade or end with an end mark.
[[nodiscard]] tl::expected<DecadalLine, Misfit> parse_decadal_line(const Line& line);

/// True for a line that can stand as a header line of a decadal file in this place (1 to 3): one that is no line of
/// measurements and is no broken one either.
[[nodiscard]] bool is_decadal_header(std::string_view text, std::size_t place);
/// True for a line with the marks of a header line: text after a 1, 2 or 3 alone in column 8.
[[nodiscard]] bool is_marked_header(std::string_view text);

} // namespace pithward::formats
