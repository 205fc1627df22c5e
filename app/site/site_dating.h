#pragma once

#include "app/site/site_cores.h"
#include "libcore/dating/chronology.h"
#include "libcore/dating/crossdate.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace pithward::bench {

/// A line of the list: a series, and the core that it is of.
struct SiteLine {
    std::size_t core = 0;  ///< In the cores that were dated.
    bool dated = true;     ///< Whether it is one of those with years, else one of those without.
    std::size_t place = 0; ///< In that list.
    /// Of each slip the finding that was made of it and whose proposal was not taken.
    std::vector<std::optional<FindingId>> noted;
};

/// What dating found of a project's cores.
struct SiteDating {
    SiteCores cores;
    dating::CrossdateResult result;
    dating::Chronology chronology;
    std::vector<SiteLine> lines; ///< The worst first.

    [[nodiscard]] const SiteCore& core(const SiteLine& line) const { return *cores.cores[line.core]; }
    /// Null for a series without years.
    [[nodiscard]] const dating::DatedResult* dated(const SiteLine& line) const;
    /// Null for a series with years.
    [[nodiscard]] const dating::UndatedResult* undated(const SiteLine& line) const;
    /// The finding that was made of a slip of a line; null where there is none.
    [[nodiscard]] const Finding* noted(const SiteLine& line, std::size_t slip) const;
    /// Whether a person has said of a slip that it is none, or that it can't be told.
    [[nodiscard]] bool settled(const SiteLine& line, std::size_t slip) const;
};

/// How many dated series it takes: with fewer nobody can tell which of them is wrong.
inline constexpr std::size_t least_dated_series = 3;

/// How many of the cores have rings with years.
[[nodiscard]] std::size_t dated_series(const SiteCores& cores);

/// Crossdates the cores and averages them; for a thread beside the window. Series without a width are left out.
[[nodiscard]] SiteDating date_site(SiteCores cores, const Work& work);

} // namespace pithward::bench
