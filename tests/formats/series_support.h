#pragma once

#include "libcore/specimen/outcome.h"
#include "libcore/specimen/width_series.h"

#include <gtest/gtest.h>

#include <initializer_list>
#include <optional>
#include <sstream>
#include <string>
#include <vector>

namespace pithward::test {

using Reader = Outcome<WidthTable> (*)(std::istream&);
using Writer = Outcome<std::vector<std::string>> (*)(std::ostream&, const WidthTable&);

inline constexpr double gap = -1.0; ///< Stands for a gap in the lists of `series`.

inline WidthSeries series(std::string id, int first_year, std::initializer_list<double> widths,
                          WidthSeries::Unit unit = WidthSeries::Unit::ThousandthMm) {
    WidthSeries result;
    result.id = std::move(id);
    result.first_year = Year(first_year);
    result.unit = unit;
    for (const double width : widths) {
        result.widths.push_back(width < 0.0 ? std::nullopt : std::optional(Millimetres(width)));
    }
    return result;
}

inline Outcome<WidthTable> read_with(Reader reader, const std::string& text) {
    std::istringstream in(text);
    return reader(in);
}

/// The table in a text; the test fails with the reader's line where it is refused.
inline WidthTable table_in(Reader reader, const std::string& text) {
    const auto table = read_with(reader, text);
    EXPECT_TRUE(table.has_value()) << table.error().line();
    return table.value_or(WidthTable());
}

/// The line with which a text is refused.
inline std::string refusal(Reader reader, const std::string& text) {
    const auto table = read_with(reader, text);
    EXPECT_FALSE(table.has_value()) << text;
    return table ? "" : table.error().line();
}

struct WrittenTable {
    std::string text;
    std::vector<std::string> remarks;
};

inline WrittenTable written(Writer writer, const WidthTable& table) {
    std::ostringstream out;
    const auto remarks = writer(out, table);
    EXPECT_TRUE(remarks.has_value()) << remarks.error().line();
    return {out.str(), remarks.value_or(std::vector<std::string>())};
}

inline std::string refusal(Writer writer, const WidthTable& table) {
    std::ostringstream out;
    const auto remarks = writer(out, table);
    EXPECT_FALSE(remarks.has_value());
    return remarks ? "" : remarks.error().line();
}

/// The widths of a series in mm, gaps as `gap`.
inline std::vector<double> widths(const WidthSeries& from) {
    std::vector<double> result;
    for (const auto& width : from.widths) {
        result.push_back(width ? width->value() : gap);
    }
    return result;
}

inline bool mentions(const std::vector<std::string>& remarks, const std::string& words) {
    for (const std::string& remark : remarks) {
        if (remark.find(words) != std::string::npos) {
            return true;
        }
    }
    return false;
}

inline bool contains(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

} // namespace pithward::test
