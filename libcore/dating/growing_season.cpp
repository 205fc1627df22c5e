#include "libcore/dating/growing_season.h"

#include <charconv>
#include <cmath>
#include <string_view>

namespace pithward::dating {

namespace {

constexpr int december = 12;

std::optional<int> digits(std::string_view text) {
    int value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    return error == std::errc() && end == text.data() + text.size() ? std::optional(value) : std::nullopt;
}

std::optional<int> month_in(const Core& core, const char* column) {
    const auto found = core.others.find(column);
    const auto month = found == core.others.end() ? std::nullopt : digits(found->second);
    return month && *month >= 1 && *month <= december ? month : std::nullopt;
}

} // namespace

bool GrowingSeason::has(int month) const {
    return first <= last ? month >= first && month <= last : month >= first || month <= last;
}

Year GrowingSeason::last_complete_ring(int year, int month) const {
    const bool over_new_year = first > last;
    // The year in which the season began that is on, or was on last.
    const int begun = month >= first ? year : year - 1;
    const bool on = has(month);
    return Year(on && (over_new_year || month >= first) ? begun - 1 : begun);
}

std::optional<GrowingSeason> season_set(const Core& core) {
    const auto first = month_in(core, "season_from");
    const auto last = month_in(core, "season_to");
    return first && last ? std::optional(GrowingSeason{*first, *last}) : std::nullopt;
}

std::optional<GrowingSeason> season_of(const Site& site, const Core& core) {
    constexpr GrowingSeason north{4, 9};
    constexpr GrowingSeason south{10, 3};
    if (const auto set = season_set(core)) {
        return set;
    }
    if (!site.latitude || std::abs(*site.latitude) < tropic_deg) {
        return std::nullopt;
    }
    return *site.latitude > 0.0 ? north : south;
}

std::optional<int> year_cored(const Core& core) {
    // As the field sheet holds it: YYYY, YYYY-MM or YYYY-MM-DD.
    return digits(std::string_view(core.date_cored).substr(0, 4));
}

std::optional<int> month_cored(const Core& core) {
    return core.date_cored.size() > 5 ? digits(std::string_view(core.date_cored).substr(5, 2)) : std::nullopt;
}

} // namespace pithward::dating
