#pragma once

#include "libcore/specimen/calibration.h"
#include "libimaging/calibrate/ruler_scale.h"

#include <optional>
#include <string>

namespace pithward::bench {

/// What a ruler on a scan says.
struct RulerReading {
    RulerScale scale;
    Calibration calibration;                 ///< For lengths along the ruler.
    std::optional<std::string> disagreement; ///< With the scale in use, in words.
};

} // namespace pithward::bench
