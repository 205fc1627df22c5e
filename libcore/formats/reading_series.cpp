#include "libcore/formats/reading_series.h"

#include "libcore/formats/json_input.h"
#include "libcore/formats/json_numbers.h"
#include "libcore/formats/remarks.h"
#include "libcore/formats/text_input.h"
#include "libcore/formats/year_columns.h"

#include <algorithm>

namespace pithward::formats {

using nlohmann::json;

namespace {

/// The core's identifier where it is told, else the scan's file name without folders and ending.
std::string name_of(const json& reading, std::size_t index) {
    if (const auto core = short_text(member(reading, "core")); core && !core->empty()) {
        return *core;
    }
    const auto scan = short_text(member(reading, "scan"));
    std::string name = scan.value_or("");
    name.erase(0, name.find_last_of("/\\") == std::string::npos ? 0 : name.find_last_of("/\\") + 1);
    name.erase(std::min(name.rfind('.'), name.size()));
    return name.empty() ? nth("reading", index) : name;
}

} // namespace

Outcome<WidthTable> series_of_readings(const json& list) {
    constexpr std::size_t decimals = 3;
    std::vector<std::string> names;
    for (std::size_t i = 0; i < list.size() && i <= most_series; ++i) {
        names.push_back(name_of(list[i], i));
    }
    if (names.empty() || names.size() > most_series) {
        return fail("readings", "there are none, or more than 20,000", "check that it is the right file");
    }
    YearColumns columns(names);
    Remarks remarks;
    for (std::size_t i = 0; i < list.size(); ++i) {
        const json& rings = member(list[i], "rings");
        const bool dated = std::ranges::any_of(rings, [](const json& r) { return !member(r, "year").is_null(); });
        bool floating = false;
        for (std::size_t k = 0; k < rings.size() && rings.is_array(); ++k) {
            const std::string where = nth("reading", i) + ", " + nth("ring", k);
            const auto width = width_from(member(rings[k], "width_mm"), where);
            const json& number = member(rings[k], dated ? "year" : "ring");
            const auto at = whole_in(number, dated ? least_year : 1, greatest_year);
            if (!width || (!at && !(dated && number.is_null()))) {
                return width ? fail(where, "its number is out of range", "check that it is the right file")
                             : tl::unexpected(width.error());
            }
            floating = floating || !at;
            if (*width && at && dated) {
                columns.put_year(i, *at, (*width)->value(), decimals);
            } else if (*width && at) {
                columns.put_ring(i, *at, (*width)->value(), decimals);
            }
        }
        if (floating) {
            remarks.add("reading " + names[i] + " has rings without a year beyond lost wood: they are left out");
        }
    }
    auto table = columns.table();
    if (table) {
        const auto noticed = remarks.list();
        table->remarks.insert(table->remarks.end(), noticed.begin(), noticed.end());
    }
    return table;
}

} // namespace pithward::formats
