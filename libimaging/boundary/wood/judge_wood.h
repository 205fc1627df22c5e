#pragma once

#include "libcore/specimen/wood.h"
#include "libimaging/strip/lanes.h"

#include <string>

namespace pithward::boundary {

/// Which kind of wood a strip shows, and why.
struct WoodJudgement {
    WoodType type = WoodType::Conifer;
    double probability = 1.0;
    std::string reason; ///< In words.
};

/// Judges the kind of wood by its grain. In conifers lanes half a millimetre apart show the same profile once the rings
/// are made straight. In hardwoods vessels hide it: where these are large, lanes a tenth of a millimetre apart still
/// share them. The limits come from rendered cores (docs/methods.md).
[[nodiscard]] WoodJudgement judge_wood(const Lanes& lanes);

} // namespace pithward::boundary
