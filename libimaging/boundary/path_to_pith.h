#pragma once

#include "libcore/specimen/calibration.h"
#include "libcore/specimen/reading.h"
#include "libcore/specimen/units.h"

#include <vector>

namespace pithward {

/// A pith that was seen on a core.
struct PithOnCore {
    ImagePoint at;
    double probability = 1.0;
    bool path_ends_there = false; ///< Else the path goes on, and somebody is to look.
    friend bool operator==(const PithOnCore&, const PithOnCore&) = default;
};

namespace boundary {

/// The part of a core's middle line that leads to a pith on the core, from its outer end: `forward` the one from the
/// line's first point, else the one from its last. It follows the line and turns to the pith over the last millimetres.
/// `s_mm`: where on the line the pith lies.
[[nodiscard]] std::vector<ImagePoint> path_to_pith(const std::vector<ImagePoint>& middle_line,
                                                   const Calibration& calibration, ImagePoint pith, double s_mm,
                                                   bool forward);

/// Notes a pith that was seen on the core in a reading with all its boundaries: a sure one that the path ends at is the
/// reading's pith. One that is not sure is a finding instead, numbered after the others.
void add_seen_pith(Reading& reading, const PithOnCore& pith);

} // namespace boundary

} // namespace pithward
