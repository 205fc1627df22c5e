#include "libcore/dating/bark_year.h"

#include "libcore/dating/growing_season.h"

#include <cmath>

namespace pithward::dating {

namespace {

constexpr int months = 12;

/// A time of coring as if it had been north of the equator.
struct NorthernTime {
    int year = 0;
    std::optional<int> month;
};

tl::unexpected<Fault> unknown(const Core& core, std::string what, std::string remedy) {
    return fail(core.id, "its years are not known: " + std::move(what), std::move(remedy));
}

Outcome<NorthernTime> northern_time(const Site& site, const Core& core) {
    const auto year = year_cored(core);
    if (!year) {
        return unknown(core, "the field sheet has no date of coring", "enter date_cored, or set the year by hand");
    }
    if (!site.latitude) {
        return unknown(core, "the field sheet does not tell the latitude", "enter it, or set the year by hand");
    }
    if (std::abs(*site.latitude) < tropic_deg) {
        return unknown(core, "the site is between the tropics", "set the year by hand");
    }
    NorthernTime season{*year, month_cored(core)};
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

Outcome<Year> complete_ring(const NorthernTime& season, const Core& core) {
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

Outcome<Year> ring_before_unfinished(const NorthernTime& season, const Core& core) {
    constexpr int march = 3;
    constexpr int november = 11;
    if (season.month && (*season.month < march || *season.month > november)) {
        return unknown(core, "an unfinished ring in the cold season is a contradiction", "look at the wood again");
    }
    return Year(season.year - 1);
}

/// By the months in which the site's trees grow.
Outcome<Year> by_season(const GrowingSeason& season, const Core& core, OuterWood outer) {
    const auto year = year_cored(core);
    const auto month = month_cored(core);
    if (!year || !month) {
        return unknown(core, "the date of coring has no month", "enter it, or set the year by hand");
    }
    const bool growing = season.has(*month);
    if (growing && outer == OuterWood::Complete) {
        return unknown(core, "complete wood within the site's season is a contradiction", "look at the wood again");
    }
    if (!growing && outer == OuterWood::Unfinished) {
        return unknown(core, "an unfinished ring outside the site's season is a contradiction",
                       "look at the wood again");
    }
    return season.last_complete_ring(*year, *month);
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
    if (const auto set = season_set(core)) {
        return by_season(*set, core, outer);
    }
    return northern_time(site, core).and_then([&](const NorthernTime& season) {
        return outer == OuterWood::Complete ? complete_ring(season, core) : ring_before_unfinished(season, core);
    });
}

} // namespace pithward::dating
