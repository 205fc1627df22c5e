#include "libcore/dating/bark_year.h"

#include <charconv>
#include <cmath>

namespace pithward::dating {

namespace {

constexpr double tropic_deg = 23.44; ///< Latitude of the tropics: the tilt of the earth's axis.
constexpr int months = 12;

/// A time of coring as if it had been north of the equator.
struct Season {
    int year = 0;
    std::optional<int> month;
};

std::optional<int> digits(std::string_view text) {
    int value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    return error == std::errc() && end == text.data() + text.size() ? std::optional(value) : std::nullopt;
}

tl::unexpected<Fault> unknown(const Core& core, std::string what, std::string remedy) {
    return fail(core.id, "its years are not known: " + std::move(what), std::move(remedy));
}

Outcome<Season> season_of(const Site& site, const Core& core) {
    // As the field sheet holds it: YYYY, YYYY-MM or YYYY-MM-DD.
    const auto year = digits(std::string_view(core.date_cored).substr(0, 4));
    if (!year) {
        return unknown(core, "the field sheet has no date of coring", "enter date_cored, or set the year by hand");
    }
    if (!site.latitude) {
        return unknown(core, "the field sheet does not tell the latitude", "enter it, or set the year by hand");
    }
    if (std::abs(*site.latitude) < tropic_deg) {
        return unknown(core, "the site is between the tropics", "set the year by hand");
    }
    Season season{*year, std::nullopt};
    if (core.date_cored.size() > 5) {
        season.month = digits(std::string_view(core.date_cored).substr(5, 2));
    }
    if (*site.latitude < 0.0) {
        if (!season.month) {
            return unknown(core, "the date of coring has no month", "enter it, or set the year by hand");
        }
        season.month = *season.month - months / 2;
        if (*season.month < 1) {
            season.month = *season.month + months;
            --season.year;
        }
    }
    return season;
}

Outcome<Year> complete_ring(const Season& season, const Core& core) {
    constexpr int july = 7;
    if (!season.month) {
        return unknown(core, "the date of coring has no month", "enter it, or set the year by hand");
    }
    if (*season.month == july) {
        return unknown(core, "complete wood in the middle of the season may be of this year or the last",
                       "set the year by hand");
    }
    return Year(*season.month > july ? season.year : season.year - 1);
}

Outcome<Year> ring_before_unfinished(const Season& season, const Core& core) {
    constexpr int march = 3;
    constexpr int november = 11;
    if (season.month && (*season.month < march || *season.month > november)) {
        return unknown(core, "an unfinished ring in the cold season is a contradiction", "look at the wood again");
    }
    return Year(season.year - 1);
}

} // namespace

Outcome<Year> bark_year(const Site& site, const Tree& tree, const Core& core, OuterWood outer) {
    if (!tree.living) {
        return unknown(core, "the field sheet does not tell whether the tree lived",
                       "enter its status, or set the year by hand");
    }
    if (!*tree.living) {
        return unknown(core, "the tree was dead", "date it by the other cores of the site");
    }
    if (outer == OuterWood::Lost || outer == OuterWood::Unknown) {
        return unknown(core, outer == OuterWood::Lost ? "outer wood is lost" : "the outer wood is unknown",
                       "date it by the other cores of the site");
    }
    return season_of(site, core).and_then([&](const Season& season) {
        return outer == OuterWood::Complete ? complete_ring(season, core) : ring_before_unfinished(season, core);
    });
}

} // namespace pithward::dating
