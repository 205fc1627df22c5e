#pragma once

#include "libcore/specimen/outcome.h"
#include "libcore/specimen/reading.h"
#include "libcore/specimen/ring_series.h"

namespace pithward::picture {

/// A reading with what it means, as the bench holds and shows it.
struct MeasuredCore {
    Reading reading;
    RingSeries series;
    double half_breadth_px = 0.0; ///< From the path to the edge of the wood: what lettering has to keep off.

    friend bool operator==(const MeasuredCore&, const MeasuredCore&) = default;
};

/// Measures a reading. `breadth_mm`: breadth of the sanded surface where known, else 0; the traced curves tell as well.
[[nodiscard]] Outcome<MeasuredCore> measured(Reading reading, double breadth_mm = 0.0);

/// A reading with a series that has been measured from it.
[[nodiscard]] MeasuredCore put_together(Reading reading, RingSeries series, double breadth_mm = 0.0);

/// How far the wood reaches on either side of the path, in pixels, as the traced curves show it; 0 without curves.
[[nodiscard]] double half_breadth_px(const Reading& reading);

} // namespace pithward::picture
