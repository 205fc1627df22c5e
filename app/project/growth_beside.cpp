#include "app/project/growth_beside.h"

#include "libcore/measure/measure.h"
#include "libcore/pith/inner_widths.h"
#include "libcore/pith/site_growth.h"

#include <utility>
#include <vector>

namespace pithward::bench {

Outcome<std::optional<pith::GrowthBeforehand>> growth_beside(const record::Project& project,
                                                             const record::CoreEntry& core) {
    constexpr std::size_t most_cores = 60;
    const auto cores = project.cores();
    if (!cores) {
        return tl::unexpected(cores.error());
    }
    std::vector<std::vector<double>> others;
    for (const record::CoreEntry& other : *cores) {
        if (other.id == core.id || other.site.id != core.site.id || !other.accepted || others.size() == most_cores) {
            continue;
        }
        const auto reading = project.reading(*other.accepted);
        if (!reading) {
            return tl::unexpected(reading.error());
        }
        if (const auto series = measure(*reading)) {
            others.push_back(pith::inner_widths(*reading, *series));
        }
    }
    return others.size() < pith::least_site_cores ? std::nullopt : std::optional(pith::growth_of_site(others));
}

} // namespace pithward::bench
