#pragma once

#include "libcore/dating/crossdate.h"

#include <ostream>
#include <string>

namespace pithward {

/// How a site was crossdated, as words for the output.
struct CrossdateSettings {
    std::string detrend; ///< As `--detrend` takes it.
    bool prewhiten = true;
    std::string reference; ///< File, or empty.
};

/// Writes what `pithward crossdate --json` gives: { "series": [...], "undated": [...], "pairs": [...], "site": {...},
/// "settings": {...}, "remarks": [...] }, every key there, null where nothing is known; never a number that isn't one.
[[nodiscard]] Outcome<void> write_crossdate_json(std::ostream& out, const dating::CrossdateResult& result,
                                                 const CrossdateSettings& settings);

} // namespace pithward
