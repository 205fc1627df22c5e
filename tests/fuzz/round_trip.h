#pragma once

#include "libcore/specimen/outcome.h"
#include "libcore/specimen/width_series.h"

#include <cmath>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <initializer_list>
#include <sstream>
#include <string>
#include <vector>

namespace pithward::fuzz {

inline constexpr std::size_t most_bytes = std::size_t{64} * 1024; ///< Larger inputs only cost time,
inline constexpr std::size_t most_values = 300'000; ///< and so do larger tables, which a few bytes can make.

/// Ends the run with a finding, if something that must hold does not.
inline void require(bool holds, const std::string& what) {
    if (!holds) {
        std::fprintf(stderr, "broken: %s\n", what.c_str());
        std::abort();
    }
}

using Reader = Outcome<WidthTable> (*)(std::istream&);
using Writer = Outcome<std::vector<std::string>> (*)(std::ostream&, const WidthTable&);

inline bool contains(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

/// A series without the gaps at its ends, which a table of years down can't hold.
inline WidthSeries without_outer_gaps(WidthSeries series) {
    while (!series.widths.empty() && !series.widths.back()) {
        series.widths.pop_back();
        if (!series.dated) {
            return series; // Undated ones are held by the bark, where their last value is.
        }
    }
    while (series.dated && !series.widths.empty() && !series.widths.front()) {
        series.widths.erase(series.widths.begin());
        series.first_year = series.first_year + 1;
    }
    return series;
}

inline std::string all_comments(const WidthSeries& series) {
    std::string all;
    for (const auto& [year, text] : series.comments) {
        all += (all.empty() ? "" : "; ") + text;
    }
    return all;
}

struct RoundTrip {
    Reader read;
    Writer write;
    bool keeps_outer_gaps = true;
    bool keeps_headers = true;
    bool keeps_comments = false;
    double rounding_mm = 0.0;                     ///< Half of the last digit that is written, and a little more.
    std::vector<std::string> may_refuse_to_write; ///< Parts of the reasons that are right.
};

inline std::size_t values_of(const WidthTable& table) {
    std::size_t values = 0;
    for (const WidthSeries& series : table.series) {
        values += series.widths.size();
    }
    return values;
}

/// Reads hostile bytes. What is read must be written and read back equal, and then be written as the same bytes. A
/// refusal must have a reason and a remedy.
inline int check(const RoundTrip& format, const std::uint8_t* data, std::size_t size) {
    if (size > most_bytes) {
        return 0;
    }
    std::istringstream in(std::string(reinterpret_cast<const char*>(data), size));
    const auto table = format.read(in);
    if (!table) {
        require(!table.error().what.empty() && !table.error().remedy.empty(), "a refusal without reason or remedy");
        return 0;
    }
    require(!table->series.empty(), "a table without series");
    if (values_of(*table) > most_values) {
        return 0;
    }
    std::ostringstream out;
    const auto remarks = format.write(out, *table);
    if (!remarks) {
        bool right = false;
        for (const std::string& reason : format.may_refuse_to_write) {
            right = right || contains(remarks.error().line(), reason);
        }
        require(right, "what was read is refused: " + remarks.error().line());
        return 0;
    }
    bool renamed = false;
    for (const std::string& remark : *remarks) {
        renamed = renamed || contains(remark, "is called");
        require(!remark.ends_with("left out") || !format.keeps_headers, "something is left out: " + remark);
    }
    std::istringstream again(out.str());
    const auto back = format.read(again);
    require(back.has_value(), "what was written is refused: " + (back ? "" : back.error().line()) + "\n" + out.str());
    require(back->series.size() == table->series.size(), "another number of series");
    require(!format.keeps_headers || back->headers == table->headers, "other headers");
    for (std::size_t i = 0; i < table->series.size(); ++i) {
        const WidthSeries before = format.keeps_outer_gaps ? table->series[i] : without_outer_gaps(table->series[i]);
        const WidthSeries after = format.keeps_outer_gaps ? back->series[i] : without_outer_gaps(back->series[i]);
        require(renamed || before.id == after.id, "another identifier: " + before.id + " | " + after.id);
        require(before.first_year == after.first_year, "another first year of " + before.id + "\n" + out.str());
        require(before.widths.size() == after.widths.size(), "another length of " + before.id);
        require(!format.keeps_comments || all_comments(before) == all_comments(after), "other comments");
        for (std::size_t k = 0; k < before.widths.size(); ++k) {
            const auto& a = before.widths[k];
            const auto& b = after.widths[k];
            require(a.has_value() == b.has_value(), "a gap for a width, or a width for a gap");
            require(!a || std::abs(a->value() - b->value()) <= format.rounding_mm, "another width");
            require(!a || (a->value() == 0.0) == (b->value() == 0.0), "an absent ring for a width");
        }
    }
    std::ostringstream twice;
    require(format.write(twice, *back).has_value() && (renamed || twice.str() == out.str()), "written otherwise");
    return 0;
}

} // namespace pithward::fuzz
