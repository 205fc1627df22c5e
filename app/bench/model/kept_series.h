#pragma once

#include "libcore/specimen/ids.h"
#include "libcore/specimen/ring_series.h"

#include <memory>
#include <string>
#include <vector>

namespace pithward::bench {

/// The series of a core that a project keeps, whether the core is on the bench or not.
struct KeptSeries {
    ReadingId reading;
    std::string core;
    std::string site;
    std::string tree; ///< With its site.
    std::shared_ptr<const RingSeries> series;
};

/// What the present core is drawn beside.
struct Companions {
    std::vector<const RingSeries*> drawn; ///< Each as a line.
    std::vector<const RingSeries*> mean;  ///< One of each core, for the mean.
};

/// Of a core that a project keeps: the tree's other cores as lines, all other cores of the site for the mean. Those
/// without years are left out.
[[nodiscard]] Companions companions(const std::vector<KeptSeries>& kept, const KeptSeries& present);

/// The entry of a reading, else of the only core of that name; null where there is none.
[[nodiscard]] const KeptSeries* kept_of(const std::vector<KeptSeries>& kept, ReadingId reading,
                                        const std::string& core);

} // namespace pithward::bench
