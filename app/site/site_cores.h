#pragma once

#include "libcore/record/project.h"
#include "libcore/specimen/doubtful_place.h"
#include "libcore/specimen/reading.h"
#include "libcore/specimen/ring_series.h"

#include <map>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace pithward::bench {

/// A core of a project by its accepted reading, as dating needs it.
struct SiteCore {
    record::CoreId core;
    std::int64_t revision = 0;
    std::string name; ///< Of the core, with its site's where two sites have it.
    std::string site;
    std::string tree; ///< With its site.
    Reading reading;
    RingSeries series;
    std::vector<DoubtfulPlace> wood; ///< What the wood shows, where its rings have years.
};

/// The cores of a project whose accepted readings can be measured.
struct SiteCores {
    std::vector<std::shared_ptr<const SiteCore>> cores; ///< In the order of the field sheet.
    int without = 0;                                    ///< Cores that have no reading yet.
    std::vector<Fault> left_out;                        ///< Cores whose reading can't be measured.
};

/// Whether both have the same readings, at the same revisions.
[[nodiscard]] bool same_readings(const SiteCores& a, const SiteCores& b);

/// The cores of a project as they were last seen, so that a new look reads only what has changed. Used in the store's
/// thread.
class SiteShelf {
public:
    [[nodiscard]] Outcome<SiteCores> cores(const record::Project& project);

private:
    [[nodiscard]] Outcome<std::shared_ptr<const SiteCore>> core(const record::Project& project,
                                                                const record::CoreEntry& entry, std::int64_t revision,
                                                                const std::string& name);

    std::map<ReadingId, std::shared_ptr<const SiteCore>> seen_;
};

/// Where the ring of a year ends toward the bark; of a year without a place, the next older ring that has one.
[[nodiscard]] std::optional<ImagePoint> place_of_year(const SiteCore& core, int year);
/// Width of a year's ring; nothing where it has none.
[[nodiscard]] const Ring* ring_of_year(const SiteCore& core, int year);

} // namespace pithward::bench
