#pragma once

#include "demo-scans/maker/truth.h"
#include "libcore/specimen/outcome.h"

#include <optional>
#include <string>
#include <vector>

namespace pithward::accuracy {

/// A core of a folder of rendered scans.
struct Case {
    std::string file;            ///< The scan, with its folder.
    std::string category;        ///< What the core is meant to try.
    std::optional<int> strength; ///< Of its disturbances, where its name tells it: CATEGORY-STRENGTH-NUMBER.
    demo::Truth truth;
};

/// All cores of a folder that demo-scans/maker has rendered, in the order of its cases.json. Of the truth only what
/// readings are scored by is read: not the bands and the disturbances.
[[nodiscard]] Outcome<std::vector<Case>> cases_in(const std::string& folder);

} // namespace pithward::accuracy
